"""A coach's order for people who are named, or for the one who is looked at: `no burpees for Tove this week`."""

from collections.abc import Iterator, Sequence
from dataclasses import replace
from typing import Any, Final, NamedTuple

from core.understanding.acts import Order
from core.understanding.marks import mark
from core.understanding.slots import body
from core.understanding.slots.orders import order, says
from core.understanding.slots.stretch import Stretch
from core.understanding.values import Context

_ENDS: Final = frozenset(".!;,")


def orders_in(text: str, people: Sequence[str], looked_at: str | None = None) -> tuple[Order, ...]:
    """An order for each who is named, in words that say what shall become of which line; none where they don't.

    `looked_at`: who is meant by `her` and `them`.
    """
    marked = mark(text, tuple(people), names_small=True)
    stretch = Stretch(marked, 0, len(marked.words), Context(people=tuple(people)))
    named = stretch.values("person")
    if not named and looked_at and says(stretch, "them"):
        named = [looked_at]
    if not named or text.strip().endswith("?"):
        return ()
    found = (order(one) for one in (stretch, *_thoughts(stretch)))
    fields = next((one for one in found if one.get("step") not in {None, "shorter"}), None)
    return tuple(Order(text=text.strip(), person=one, **fields) for one in named) if fields else ()


def _thoughts(stretch: Stretch) -> Iterator[Stretch]:
    """What stands between commas and stops: beside an order it may be told why, `he's had a cold`."""
    marks = stretch.marked.marks
    at = stretch.start
    tokens = stretch.marked.text.tokens
    ends = [place for place, one in enumerate(tokens) if one.kind == "mark" and one.word in _ENDS]
    for end in (*ends, stretch.end):
        if ends and end > at and any(at <= one.start < end for one in marks):
            yield replace(stretch, start=at, end=end)
        at = end + 1


class Wanted(NamedTuple):
    """What somebody wants of a line of their own: `movement` goes, `to` comes. `joints`: what hurts in it.

    `weather`: it keeps them from it.
    """

    step: str
    movement: str | None = None
    to: str | None = None
    joints: tuple[str, ...] = ()
    weather: bool = False


def _instead_of_one(stretch: Stretch) -> dict[str, Any]:
    """`What can I do instead of burpees`: anything else."""
    named = stretch.values("movement")
    said = {stretch.marked.helps(at, "instead") for at in stretch.helps("instead")}
    asks = bool(said & {"of", "other"}) or says(stretch, "else")
    return {"step": "out", "movement": named[0]} if len(named) == 1 and asks else {}


# `That's way too light`: some line is, and it isn't said which.
_TOO: Final = frozenset({"easier", "harder"})
_OF_A_LINE: Final = frozenset({"out", "other", "easier", "harder", "fewer", "half"})


def wanted_in(text: str) -> Wanted | None:
    """`can't do the run, it's pouring`, `rows instead of burpees`, `push-ups too hard`; None where no line is named."""
    marked = mark(text, ())
    stretch = Stretch(marked, 0, len(marked.words), Context())
    fields = order(stretch) or _instead_of_one(stretch)
    step = fields.get("step", "")
    if not fields.get("movement") and (step == "shorter" or (step in _TOO and "too" in stretch.words)):
        return Wanted(step)
    if step not in _OF_A_LINE or not (fields.get("movement") or fields.get("to")):
        return None
    return Wanted(
        step,
        fields.get("movement"),
        fields.get("to"),
        body.joints(stretch) if step == "out" else (),
        says(stretch, "weather"),
    )
