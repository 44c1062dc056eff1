"""`bellwether implements`: the things that somebody may have, and how each is handled."""

from collections.abc import Iterator
from typing import Any

from bot.commands.console import AsJson, print_json, print_text
from core.desk.reference import catalogue
from core.movements.values import Implement

_KINDS = {
    "held": "To hold: their loads are told in kg",
    "there": "To stand there: to lean on, hang from, carry or run with",
}


def implements(as_json: AsJson = False) -> None:
    """List the things to lift or use, by the names that a roster takes, with other names and a caution each."""
    known = catalogue().implements
    if as_json:
        print_json({"implements": [_document(one) for one in known]})
    else:
        print_text("\n".join(_lines(known)))


def _document(one: Implement) -> dict[str, Any]:
    told = one.model_dump(exclude={"height_cm"})
    return told | {"height_cm": one.height_cm and one.height_cm.model_dump()}


def _lines(known: tuple[Implement, ...]) -> Iterator[str]:
    for kind, title in _KINDS.items():
        yield title
        for one in known:
            if one.kind == kind:
                yield f"  {one.id}" + (f" (also: {', '.join(one.names)})" if one.names else "")
                yield f"    {one.caution}"
