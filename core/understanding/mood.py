"""Whether a stretch tells, or only asks or supposes: `is it ok to ...`, `should I`, `what if I`, `I might`.

What is asked or supposed is nothing that happened: no telling may be taken from it without a yes. The words are the
kind `mood` of the lexicon, by how they make it be said.
"""

from collections.abc import Mapping
from typing import Final, Literal

from core.understanding.slots.stretch import Stretch

Mood = Literal["told", "asked", "supposed", "maybe"]

# `hi coach, is it ok`, `ok so should I`: how many words may stand before what makes it a question.
_BEFORE: Final = 3
_GREETS: Final = ("hello", "thanks", "coach", "yes", "no")
# What is wished is often asked for (`can you make it easier?`); these are facts.
_FACTS: Final = frozenset(
    {
        "has",
        "has_nothing",
        "got",
        "lost",
        "shares",
        "condition",
        "weighs",
        "can",
        "scored",
        "corrects",
        "effort",
    }
    | {
        "spares",
        "well_again",
        "nothing_hurt",
        "has_minutes",
        "well",
        "elsewhere",
        "home_again",
        "back_after",
        "trains",
    }
    | {"did_as_written", "did_scaled"}
)
# `Is it normal that my knee hurts?` tells of it all the same, and `I might have hurt it` is heard on the safe side.
_OF_CARE: Final = frozenset({"hurt", "sore", "sick"})
# `Should I come on Friday?` signs nobody up; `can I come on Friday?` is how people do.
_COMING: Final = frozenset({"joins_class", "leaves_class"})
_NO_TELLING: Final[Mapping[Mood, frozenset[str]]] = {
    "told": frozenset(),
    "asked": _FACTS | _COMING,
    "supposed": _FACTS | _OF_CARE | _COMING,
    "maybe": _FACTS - {"spares", "condition", "has_minutes"},
}


def mood(stretch: Stretch) -> Mood:
    """How it is said; what tells something before it asks is a telling: `7+12, is that good?`."""
    for at in range(stretch.start, stretch.end):
        for how in (one.value for one in stretch.marked.helping[at] if one.kind == "mood"):
            found = _as_mood(stretch, at, how)
            if found != "told" and _counts(stretch, at, found):
                return found
    return "told"


def tells(act: str, how: Mood) -> bool:
    """Whether the act may be taken from what is said so."""
    return act not in _NO_TELLING[how]


def _counts(stretch: Stretch, at: int, how: Mood) -> bool:
    """`Is a chair enough` asks, `mine is a chair` doesn't: before a question stands nothing but a hello or an `and`."""
    if how == "maybe":
        return True
    named = [one for one in stretch.marked.within(stretch.start, at) if not _leads_on(stretch, one.start)]
    near = at - stretch.start <= _BEFORE and not named
    return near and (how == "supposed" or all(_leads_on(stretch, one) for one in range(stretch.start, at)))


def _leads_on(stretch: Stretch, at: int) -> bool:
    marked = stretch.marked
    is_word = marked.text.tokens[at].kind == "word"
    return not is_word or marked.helps(at, "joint") is not None or marked.means(at, *_GREETS)


def _as_mood(stretch: Stretch, at: int, how: str) -> Mood:
    """`is` and `would` ask where a number follows at once: `is 7+12 good?`."""
    if how == "of a number":
        after = stretch.marked.mark_at[at + 1] if at + 1 < stretch.end else None
        return "asked" if after is not None and after.quantity else "told"
    return "supposed" if how == "supposed" else "maybe" if how == "maybe" else "asked"
