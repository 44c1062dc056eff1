"""What of a scene is shown: the lines of it that bear its caption out."""

from collections import defaultdict
from collections.abc import Iterable, Sequence
from itertools import pairwise
from typing import NamedTuple

from bot.rehearsal.day.scene import Shows, Through
from bot.rehearsal.seen import Happening
from bot.rehearsal.transcript import words_of


class Shown(NamedTuple):
    """Some lines of what was said or done."""

    happening: Happening
    lines: list[str]


def excerpt(shows: Iterable[Shows], happened: Sequence[Happening]) -> list[Shown]:
    """The lines that hold these words, each where it was first said, in the order of saying."""
    lines = defaultdict[int, set[int]](set)
    for words in shows:
        place = _place(words, happened)
        if place is not None:
            lines[place] |= _lines(words, words_of(happened[place]))
    return [
        Shown(happened[place], _cut(words_of(happened[place]).split("\n"), lines[place]))
        for place in sorted(lines)
    ]


def _cut(said: list[str], shown: set[int]) -> list[str]:
    """The shown lines, each marked behind which others are left out."""
    spoken = [place for place, line in enumerate(said) if line.strip()]
    follows = dict(pairwise([*spoken, None]))
    return [
        said[line] if (after := follows[line]) is None or after in shown else f"{said[line]} …"
        for line in sorted(shown)
    ]


def missing(shows: Iterable[Shows], happened: Sequence[Happening]) -> list[Shows]:
    """Words that nobody said."""
    return [words for words in shows if _place(words, happened) is None]


def _place(words: Shows, happened: Sequence[Happening]) -> int | None:
    return next((place for place, one in enumerate(happened) if _lines(words, words_of(one))), None)


def _lines(words: Shows, said: str) -> set[int]:
    """Which lines of a message hold the words, the empty ones left out; none where it doesn't hold them."""
    first, last = words if isinstance(words, Through) else (words, words)
    before, found, behind = said.partition(first)
    start = before.count("\n")
    if isinstance(words, Through):
        between, found, _ = behind.partition(last)
        end = start + f"{first}{between}{last}".count("\n")
    else:
        end = start + words.count("\n")
    return {line for line in range(start, end + 1) if said.split("\n")[line].strip()} if found else set()
