"""What the fields of several acts have in common, and what a filler is."""

from collections.abc import Callable, Sequence
from typing import Any, Final

from core.understanding.slots import days
from core.understanding.slots.stretch import Stretch

# `please could you tell the coach that ...`: a later `that` belongs to the matter.
_WORDS_BEFORE_THE_MATTER: Final = 8
_WEEKS: Final = frozenset({"this week", "next week"})
THIS_DAY: Final = frozenset({"today", "tonight"})

Fields = dict[str, Any]
# None: not taken; several: as many acts.
Filler = Callable[[Stretch], Fields | Sequence[Fields] | None]


def movement(stretch: Stretch) -> Fields:
    return {"movement": stretch.named("movement")}


def day(stretch: Stretch) -> Fields:
    return {"day": days.day(stretch)}


def each_day(stretch: Stretch) -> Sequence[Fields]:
    named = days.meant(stretch)
    # `tuesday is off this week only`: the week says which tuesday.
    return [{"day": one} for one in named if one not in _WEEKS] or [{"day": one} for one in named] or [{}]


def maybe_person(stretch: Stretch) -> Sequence[Fields]:
    return [{"person": person} for person in stretch.values("person")] or [
        {"person": stretch.named("person")}
    ]


def passed_on(stretch: Stretch) -> Fields:
    """The words that are for somebody else, without those that say so: `... so tell everyone well done`."""
    passing = list(stretch.helps("passes_on"))
    if passing and (words := _behind(stretch, passing[-1] + 1)):
        return {"text": words}
    colons = [at for at in range(stretch.start, stretch.end) if stretch.word(at) == ":"]
    thats = [at for at in stretch.helps("that_word") if at <= stretch.start + _WORDS_BEFORE_THE_MATTER]
    start = next(iter(thats or colons), None)
    words = stretch.marked.text.words(start + 1, stretch.end) if start is not None else ""
    return {"text": words or stretch.said}


def _behind(stretch: Stretch, at: int) -> str:
    while stretch.word(at) in {",", ":"} or stretch.marked.helps(at, "that_word") is not None:
        at += 1
    return stretch.marked.text.words(at, stretch.end) if at < stretch.end else ""
