"""A reading of a message: a score, and what each of its numbers is in it."""

import itertools
from collections.abc import Iterator, Sequence
from typing import Final, NamedTuple

from core.measures import MassUnit
from core.notation.scores.numbers import Number
from core.notation.scores.said import Told
from core.scores.values import Score
from core.sessions.values import Block

# More numbers than that nobody tells of one part.
MOST_NUMBERS: Final = 14


class Reading(NamedTuple):
    """`uses`: what numbers are in it, by their index (the others are nothing); `how`: the way it was put together."""

    score: Score
    uses: tuple[tuple[int, str], ...]
    how: str


Uses = tuple[tuple[int, str], ...]


class Heard(NamedTuple):
    """What readings are made of: a message, and the block that it is read for. Bare loads are in `unit`."""

    said: Told
    block: Block
    unit: MassUnit = MassUnit.KG

    @property
    def numbers(self) -> tuple[Number, ...]:
        return self.said.numbers[:MOST_NUMBERS]


def runs(places: Sequence[int]) -> Iterator[tuple[int, ...]]:
    """Those that follow each other, among the numbers that may be of one list."""
    for first, last in itertools.combinations(range(len(places) + 1), 2):
        yield tuple(places[first:last])


def as_uses(places: Sequence[int], role: str) -> Uses:
    return tuple((at, role) for at in places)
