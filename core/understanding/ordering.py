"""A coach's order for people who are named, or for the one who is looked at: `no burpees for Tove this week`."""

import re
from collections.abc import Iterator, Sequence
from dataclasses import replace
from typing import Any, Final, NamedTuple

from core.notation.people import find_name
from core.understanding.acts import Order
from core.understanding.marks import mark
from core.understanding.slots import body
from core.understanding.slots.orders import order, says
from core.understanding.slots.stretch import Stretch
from core.understanding.values import Context

_ENDS: Final = frozenset(".!;,")


def orders_in(text: str, people: Sequence[str], looked_at: str | None = None) -> tuple[Order, ...]:
    """The orders of a message, without what of it is no order for anybody."""
    return told_in(text, people, looked_at).orders


class Told(NamedTuple):
    """`left`: the words of a message that would order something of nobody who is named beside them."""

    orders: tuple[Order, ...] = ()
    left: tuple[str, ...] = ()


# Behind these, or where nothing joins them, stands another wish.
_SENTENCES: Final = re.compile(r"(?<=[.!;])\s+|\n+")
_WISHES: Final = re.compile(r"\s*(?:,\s*(?:(?:and|n|&|also|then)\s+)?|\s(?:and|n|&|also)\s+)", re.IGNORECASE)
_ALL: Final = re.compile(
    r"\b(?:every(?:one|body)|all of (?:us|them|you)|the (?:whole )?group)\b", re.IGNORECASE
)


def told_in(text: str, people: Sequence[str], looked_at: str | None = None) -> Told:
    """Each order of a message for whom it names: `Ole no rows, Siri 5 runs, and make the run 300 for everyone`.

    `looked_at`: who is meant by `her` and `them`.
    """
    orders: list[Order] = []
    left: list[str] = []
    before = ""
    for words in _by_whom(text, people):
        found = () if _ALL.search(words) else _orders_of(words, people, looked_at)
        if not found and before:  # `Ole's hurt. No running till monday` is of Ole
            found = _orders_of(f"{before} {words}", people)
            left = left[:-1] if found else left
        if not found and not _is_only_why(words, people):
            left.append(words.strip(" .!,;"))
        before = words if not found and find_name(words, people) else ""
        looked_at = found[-1].person if found else looked_at
        orders += found
    return Told(tuple(orders), tuple(left)) if orders else Told()


def _by_whom(text: str, people: Sequence[str]) -> Iterator[str]:
    """The words about each in turn; what names nobody goes with what stands beside it in its sentence."""
    for sentence in _SENTENCES.split(text.strip()):
        at = 0
        for gap in _WISHES.finditer(sentence):
            before, behind = sentence[at : gap.start()], sentence[gap.end() :]
            if _orders_of(before, people) and _begins_another(behind, people):
                yield before.strip()
                at = gap.end()
        if sentence[at:].strip(" .!,"):
            yield sentence[at:].strip()


def _begins_another(words: str, people: Sequence[str]) -> bool:
    """Whether the next thought is an order for somebody of its own, begins with a name, or is about all."""
    thought = _WISHES.split(words, maxsplit=1)[0]
    names = {name.casefold() for name in people}
    first, *more = thought.casefold().split() or [""]
    is_of_another = first.strip(":") in names and len(more) > 1
    return bool(is_of_another or _ALL.search(thought) or _orders_of(thought, people))


def _is_only_why(words: str, people: Sequence[str]) -> bool:
    """`She's had a cold`, beside an order."""
    marked = mark(words, tuple(people), names_small=True)
    stretch = Stretch(marked, 0, len(marked.words), Context(people=tuple(people)))
    return says(stretch, "them") and not stretch.values("person") and not order(stretch)


def _orders_of(text: str, people: Sequence[str], looked_at: str | None = None) -> tuple[Order, ...]:
    """An order for each who is named, in words that say what shall become of which line; none where they don't."""
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
