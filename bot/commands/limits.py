"""`bellwether limits`: what an athlete can ask to be spared, and what each limit does."""

from collections.abc import Iterator
from itertools import groupby
from typing import Annotated

import typer

from bot.commands.console import AsJson, print_json, print_text
from bot.commands.given import only_named
from core.desk.reference import Limit
from core.desk.reference import limits as all_limits

KINDS = {
    "joint": "Sore or weak joints",
    "muscle": "Strained muscles",
    "wish": "Things to leave out",
    "condition": "Conditions",
    "state": "For now",
}
SESSIONS = {
    "as-usual": None,
    "coach-first": "the coach's OK comes first",
    "cleared-first": "no session until medical care has cleared it",
    "rest": "no session: rest",
}


def limits(
    name: Annotated[str | None, typer.Argument(help="One of them; all if left out.")] = None,
    as_json: AsJson = False,
) -> None:
    """List the limits: what each rules out and lightens, and its caution. Never a diagnosis."""
    shown = only_named("limit", name, all_limits())
    if as_json:
        print_json({"limits": shown})
    else:
        print_text("\n".join(limit_lines(shown)))


def limit_lines(known: tuple[Limit, ...]) -> Iterator[str]:
    """The limits by kind, each with what it does and its caution."""
    for kind, of_kind in groupby(known, key=lambda one: one.kind):
        yield KINDS[kind]
        for one in of_kind:
            yield f"  {one.id}: {'; '.join(effects_of(one))}"
            yield f"    {one.caution}"


def effects_of(one: Limit) -> Iterator[str]:
    """What a limit does, in a few words each."""
    if session := SESSIONS[one.session]:
        yield session
    if one.rules_out:
        yield f"leaves out {', '.join(one.rules_out)}"
    if one.lightens:
        yield f"keeps light {', '.join(one.lightens)}"
    if one.effort_at_most is not None:
        yield f"effort at most {one.effort_at_most} of 10"
    if not one.rules_out and not one.lightens and one.session == "as-usual":
        yield "a caution"
