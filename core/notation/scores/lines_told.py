"""How far somebody got in a round, told by what is done in it: `plus the thrusters`, `10 push-ups and 5 swings`."""

import re
from collections.abc import Iterator, Sequence
from functools import lru_cache
from typing import Final, NamedTuple

from core.measures import AmountUnit
from core.movements.lookup import catalogue
from core.movements.names import key
from core.notation.lines.flights import in_flights
from core.notation.names.catalogued import lexicon
from core.sessions.counting import reps_of
from core.sessions.values import Block, Line

_SHORTEST_NAME: Final = 3
_LONGEST_NAME: Final = 3
_WORD: Final = re.compile(r"[a-z][a-z'-]*")
_BEFORE_NAME: Final = re.compile(r"^[^a-z]*")


class Named(NamedTuple):
    """A line that is named, by its index, and where in the words."""

    line: int
    start: int
    end: int


def count_of(line: Line) -> int | None:
    """Repetitions of a line, metres counted like them; None where it is held, or goes as far as it goes."""
    in_metres = line.unit is AmountUnit.METRES and line.amount is not None
    return round(line.amount or 0) * (2 if line.per_side else 1) if in_metres else reps_of(line)


def in_a_round(block: Block) -> int | None:
    """Repetitions of a round, metres counted like them; None where something else is to be done."""
    if block.scheme or block.partial or not block.lines:
        return None
    return total([count_of(line) for line in block.lines])


def before_line(block: Block, index: int) -> int | None:
    """Repetitions of a round before one of its lines, metres left out."""
    counts = [0 if line.unit is AmountUnit.METRES else reps_of(line) for line in block.lines[:index]]
    return total(counts)


def total(counts: Sequence[int | None]) -> int | None:
    return None if None in counts else sum(count for count in counts if count)


# A message is read stretch by stretch, and of each by several: so many of its stretches and words are kept.
_STRETCHES, _NAMES, _BLOCKS = 256, 2048, 64


@lru_cache(_STRETCHES)
def named_lines(words: str, block: Block) -> tuple[Named, ...]:
    """The lines that the words name, from the left."""
    return tuple(_named(words, block))


def first_named(words: str, block: Block) -> Named | None:
    return next(iter(named_lines(words, block)), None)


def _named(words: str, block: Block) -> Iterator[Named]:
    found = list(_WORD.finditer(words))
    at = 0
    while at < len(found):
        size, line = _named_at(words, found, at, block)
        if line is not None:
            yield Named(line, found[at].start(), found[at + size - 1].end())
        at += size


def _named_at(words: str, found: Sequence[re.Match[str]], at: int, block: Block) -> tuple[int, int | None]:
    for size in range(min(_LONGEST_NAME, len(found) - at), 0, -1):
        name = words[found[at].start() : found[at + size - 1].end()]
        if (line := line_called(name, block)) is not None:
            return size, line
    return 1, None


@lru_cache(_NAMES)
def line_called(name: str, block: Block) -> int | None:
    """The index of the line that a name means: its movement, its own spelling on the board, or the end of either."""
    typed = key(in_flights(name))
    if len(typed) < _SHORTEST_NAME and name not in {"gm", "du", "dl"}:
        return None
    names = lexicon(catalogue())
    meant = names.exact(name) or names.exact(names.written_out(name)[0])
    for index, (movement, spellings) in enumerate(_spellings(block)):
        if meant and meant.movement == movement:
            return index
        if any(one == typed or (len(typed) > _SHORTEST_NAME and one.endswith(typed)) for one in spellings):
            return index
    return None


@lru_cache(_BLOCKS)
def _spellings(block: Block) -> tuple[tuple[str, tuple[str, str]], ...]:
    """Of each line its movement, and its names without what stands between words: the movement's and the board's."""
    return tuple(
        (line.movement, (key(line.movement), key(_BEFORE_NAME.sub("", line.written.lower()))))
        for line in block.lines
    )
