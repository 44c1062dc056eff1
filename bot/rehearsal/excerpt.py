"""What of a scene is shown: the lines of it that bear its caption out."""

from collections import defaultdict
from collections.abc import Iterable, Sequence
from typing import NamedTuple

from bot.rehearsal.seen import Happening
from bot.rehearsal.transcript import words_of


class Shown(NamedTuple):
    """Some lines of what was said or done."""

    happening: Happening
    lines: list[str]


def excerpt(shows: Iterable[str], happened: Sequence[Happening]) -> list[Shown]:
    """The lines that hold these words, each where it was first said, in the order of saying."""
    lines = defaultdict[int, set[int]](set)
    for words in shows:
        place = _place(words, happened)
        if place is not None:
            before, _, _ = words_of(happened[place]).partition(words)
            first = before.count("\n")
            lines[place] |= set(range(first, first + words.count("\n") + 1))
    return [
        Shown(happened[place], [words_of(happened[place]).split("\n")[line] for line in sorted(lines[place])])
        for place in sorted(lines)
    ]


def missing(shows: Iterable[str], happened: Sequence[Happening]) -> list[str]:
    """Words that nobody said."""
    return [words for words in shows if _place(words, happened) is None]


def _place(words: str, happened: Sequence[Happening]) -> int | None:
    return next((place for place, one in enumerate(happened) if words in words_of(one)), None)
