"""`bellwether implements`: the things that somebody may have, and how each is handled."""

from collections.abc import Iterator
from typing import Annotated, Any

import typer

from bot.commands.console import AsJson, print_json, print_text
from bot.commands.given import only_named
from core.desk.reference import catalogue
from core.movements.values import Implement

_KINDS = {
    "held": "To hold: their loads are told in kg",
    "there": "To stand there: to lean on, hang from, carry or run with",
}


def implements(
    name: Annotated[str | None, typer.Argument(help="One of them; all if left out.")] = None,
    as_json: AsJson = False,
) -> None:
    """List the things to lift or use, by the names that a roster takes, with other names and a caution each."""
    known = only_named("implement", name, catalogue().implements)
    if as_json:
        print_json({"implements": [_document(one) for one in known]})
    else:
        print_text("\n".join(_lines(known)))


def _document(one: Implement) -> dict[str, Any]:
    told = one.model_dump(exclude={"height_cm"})
    return told | {"height_cm": one.height_cm and one.height_cm.model_dump()}


def _lines(known: tuple[Implement, ...]) -> Iterator[str]:
    for kind, title in _KINDS.items():
        of_kind = [one for one in known if one.kind == kind]
        yield from [title] if of_kind else []
        for one in of_kind:
            yield f"  {one.id}" + (f" (also: {', '.join(one.names)})" if one.names else "")
            yield f"    {one.caution}"
