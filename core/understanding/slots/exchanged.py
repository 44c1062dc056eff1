"""What came and what went, clause by clause: `sold the 12 bell, got a 16 instead`, `swapped the bench for a box`."""

from collections.abc import Iterator
from dataclasses import replace
from typing import Final, Literal, NamedTuple

from core.athletes.values import Equipment
from core.movements.lookup import catalogue
from core.understanding.slots.equipment import equipment
from core.understanding.slots.item import parts_at
from core.understanding.slots.stretch import Stretch

Verb = Literal["got", "lost", "has", "alone"]
# Work that was done, or a score, beside a thing: nothing that came.
_OF_WORK: Final = ("person", "plus", "clock", "rounds", "reps", "cal", "effort", "times")
# `Oh, and I got a bench`: no overhead squats.
_WORD: Final = 3


class Exchange(NamedTuple):
    """What came (`got`), went (`lost`) or is there (`has`), by what one clause or several say."""

    verb: Verb
    things: tuple[Equipment, ...]


def exchanged(stretch: Stretch) -> tuple[Exchange, ...]:
    """What each clause says of its things; empty where one verb is said of all of them.

    A clause with no verb goes on with the one before it; a weight with no thing is of what another clause names.
    """
    told = list(_by_verb(stretch))
    if len({verb for verb, _ in told}) < 2:  # noqa: PLR2004 - one verb of all
        return ()
    changes = [
        (verb, things_in(part, stretch, gone=verb == "lost")) for verb, part in told if verb != "alone"
    ]
    return tuple(Exchange(verb, things) for verb, things in changes if things)


def surely_came_or_went(stretch: Stretch) -> bool:
    """Whether a clause says so plainly, of a thing or of a bare weight, and nothing of it is work that was done.

    Asked what there is, `got a chair` is what there is.
    """
    named = [one for one in stretch.marks("movement") if not one.value("thing")]
    lifts = [one for one in named if len(stretch.marked.words[one.start]) >= _WORD]
    if lifts or stretch.marks(*_OF_WORK) or not equipment(stretch, gone=True):
        return False
    verbs = {verb for verb, _ in _by_verb(stretch)}
    if len(verbs) > 1:
        return verbs != {"got", "has"}
    plain = {"lost"} if stretch.context.question == "equipment" else {"got", "lost"}
    return bool(verbs & plain) and bool(stretch.marks("thing"))


def surely_went(stretch: Stretch) -> bool:
    return surely_came_or_went(stretch) and {verb for verb, _ in _by_verb(stretch)} == {"lost"}


def _by_verb(stretch: Stretch) -> Iterator[tuple[Verb, Stretch]]:
    """The clauses with their verbs; those that have none are put to the one before."""
    verb: Verb | None = None
    start = end = stretch.start
    for part in _clauses(stretch):
        own = _verb(part)
        if own and verb and own != verb:
            yield verb, replace(stretch, start=start, end=end)
            start = part.start
        verb, end = own or verb, part.end
    if verb:
        yield verb, replace(stretch, start=start, end=end)


def _clauses(stretch: Stretch) -> Iterator[Stretch]:
    """Cut at commas and joints, and where one thing is given for another."""
    start = stretch.start
    traded = False
    for at in range(stretch.start, stretch.end):
        if _is_another_verb(replace(stretch, start=start, end=at), stretch, at):
            yield replace(stretch, start=start, end=at)
            start, traded = at, False
        traded = traded or stretch.marked.means(at, "traded")
        gives = traded and _gives(stretch, at)
        if gives or parts_at(stretch, at):
            yield replace(stretch, start=start, end=at)
            start, traded = at, False
            if gives:
                start = _end_of_clause(stretch, at + 1)
                yield replace(stretch, start=at, end=start)
    yield replace(stretch, start=start, end=stretch.end)


def _is_another_verb(so_far: Stretch, stretch: Stretch, at: int) -> bool:
    """The `got` of `sold the 8 got a 16`: what went before has its verb and its thing."""
    ahead = replace(stretch, start=at, end=min(at + 1, stretch.end))
    own, now = _verb(so_far), _verb(ahead)
    named = so_far.marks("thing", "other_thing", "load", "number") or any(map(str.isdigit, so_far.words))
    return bool(named) and own in {"lost", "got"} and now in {"lost", "got"} and now != own


def _gives(stretch: Stretch, at: int) -> bool:
    """The `for` of `swapped it for a box`, the `to` of `upgraded the 16 to a 24`."""
    return stretch.marked.helps(at, "for_word") is not None or stretch.marked.means(at, "until")


def _end_of_clause(stretch: Stretch, at: int) -> int:
    return next((one for one in range(at, stretch.end) if parts_at(stretch, one)), stretch.end)


def _verb(part: Stretch) -> Verb | None:
    no_more = part.means("no_more") and any(True for _ in part.helps("denial"))
    if no_more and part.means("sharing"):
        return "alone"
    if part.means("went", "traded") or no_more:
        return "lost"
    if part.means("came") or _gives(part, part.start):
        return "got"
    return "has" if part.means("own") else None


def things_in(part: Stretch, whole: Stretch, *, gone: bool = False) -> tuple[Equipment, ...]:
    """What a part names; a bare weight in it is of the thing that is named first in the whole."""
    found = equipment(part, gone=gone)
    named = [one.value("thing") or "" for one in whole.marks("thing") if _is_held(one.value("thing"))]
    if part.marks("thing", "other_thing") or not named:
        return found
    return tuple(one.model_copy(update={"implement": named[0]}) for one in found)


def _is_held(implement: str | None) -> bool:
    return any(one.id == implement and one.kind == "held" for one in catalogue().implements)
