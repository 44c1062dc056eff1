"""How many of a movement somebody can do, as an answer: a clause of nothing but that; all else is left over."""

import re
import tomllib
from functools import cache
from pathlib import Path
from typing import Final, NamedTuple

from core.movements.lookup import catalogue
from core.notation.numbers import read_reps
from core.notation.quantities import NUMBER_WORDS
from core.notation.text import plain
from core.notation.unknowing import does_not_know, never_did

_CLAUSE: Final = re.compile(r"(?<=[.!?;\n])\s+|,\s+|\s+(?=but\b)", re.IGNORECASE)
_WORD: Final = re.compile(r"[a-z0-9][a-z0-9'-]*")
_NUMBER: Final = re.compile(r"[0-9]{1,4}(?:-[0-9]{1,4})?(?:ish)?")
_LOAD: Final = re.compile(r"\b(?:with|at|w/)\s+(?:the\s+|a\s+)?[0-9]+(?:\.[0-9]+)?\s?(?:kgs?|kilos?|lbs?)?\b")
# From here on a bare number of a lift with a bar is its load: so many in a row are rare (common practice, no source).
SURELY_A_LOAD: Final = 40
_BARBELL: Final = "barbell"
# `No`, `can't do any`, `never tried`: longer than this it goes on about something else.
_WORDS_OF_NONE: Final = 6


# What a way is called by; `chest` and `overhead` of other variants stand in no answer.
_FROM: Final = frozenset({"knee", "wall", "chair", "bench", "table", "box", "counter", "band"})


class Answer(NamedTuple):
    """`reps`: None where they can't tell. `movement`, `variant`: their ids, where named; `rest`: the other clauses."""

    reps: float | None
    movement: str | None
    variant: str | None
    rest: str


def ability_answer(text: str, movement: str | None = None) -> Answer | None:
    """The answer in these words, of `movement` where it was asked for; None where no clause of them is one."""
    clauses = [one for one in _CLAUSE.split(text.replace("\u2019", "'")) if one.strip()]
    named = {one: name for one in clauses if (name := _answers(one)) is not None}
    answering = ", ".join(named)
    reps = read_reps(_LOAD.sub(" ", answering)) if answering else None
    if reps is None and never_did(text):
        reps = 0.0
    elif reps is None and not does_not_know(text):
        return None
    name = next((one for one in named.values() if one), None)
    found = catalogue().by_name(name) if name else None
    if found and reps is not None and reps >= SURELY_A_LOAD and takes_a_bar(found.movement.id):
        return None
    of = found.movement.id if found else movement
    told_way = found.variant.id if found and found.variant else None
    rest = " ".join(one for one in clauses if one not in named) if reps else ""
    return Answer(reps, found and found.movement.id, told_way or (_way(answering, of) if of else None), rest)


@cache
def takes_a_bar(movement: str) -> bool:
    """Whether some way of it does."""
    variants = catalogue().movement(movement).variants
    return any(hold.implement == _BARBELL for one in variants for hold in one.holds)


def _answers(clause: str) -> str | None:
    """The name of a movement that stands in it, or nothing; None where anything else does."""
    said = _LOAD.sub(" ", plain(clause).casefold())
    words = _WORD.findall(said)
    if len(words) <= _WORDS_OF_NONE and not re.search("[0-9]", said) and read_reps(clause) == 0:
        return ""
    other = [
        one for one in words if one not in _words() and one not in NUMBER_WORDS and not _NUMBER.fullmatch(one)
    ]
    name = " ".join(other)
    return name if not name or catalogue().by_name(name) else None


def _way(words: str, movement: str) -> str | None:
    """`From my knees`, `wall push-ups`: the way of it that is called by what it is done from."""
    said = plain(words).casefold()
    for variant in catalogue().movement(movement).variants:
        stem = variant.id.rpartition("-")[2].removesuffix("s")
        if stem in _FROM and re.search(rf"\b{re.escape(stem)}s?\b", said):
            return variant.id
    return None


@cache
def _words() -> frozenset[str]:
    return frozenset(tomllib.loads(Path(__file__).with_suffix(".toml").read_text(encoding="utf-8"))["words"])
