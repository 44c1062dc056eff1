"""A version's block as work that is done, line by line, on a floor of its own."""

from collections.abc import Iterator
from itertools import chain, repeat

import numpy as np

from core.forecast.fatigue import Floats
from core.forecast.floor import CHANGE_S, Floor
from core.forecast.people import People
from core.forecast.work import Work, reserves_of, work_of
from core.scaling.values import VersionBlock


class Done:
    """A block as work, on a floor of its own."""

    def __init__(self, block: VersionBlock, people: People, *, stops_at: float | None = None) -> None:
        reserves = reserves_of(block.every_line, people)
        self.block = block
        self.buy_in, self.lines, self.cash_out = (
            tuple(work_of(line, reserves, people) for line in lines) for _, lines in block.parts
        )
        more = {} if stops_at is None else {"stops_at": stops_at}
        self.floor = Floor(len(reserves), people.speed, **more)
        self._tempo = people.tempo

    def line(self, work: Work, round_reps: float | None = None) -> Floats:
        """Do it once; returns how many repetitions it came to."""
        if work.for_seconds is not None:
            done = self.floor.do_for(work, work.for_seconds)
            return np.floor(done) * work.counted if work.whole else done * work.counted
        amount = work.amount if work.amount is not None else round_reps or 0.0
        self.floor.do(work, amount)
        return np.full_like(self.floor.time, amount * work.counted)

    def change(self) -> None:
        self.floor.rest(CHANGE_S * self._tempo)

    def lines_once(self, lines: tuple[Work, ...], round_reps: float | None = None) -> None:
        for work in lines:
            self.line(work, round_reps)
            self.change()


def rounds_of(block: VersionBlock) -> Iterator[float | None]:
    """The repetitions of each round where a scheme gives them."""
    times = block.rounds or 1
    yield from (chain.from_iterable(repeat(block.scheme, times)) if block.scheme else repeat(None, times))


def in_order(done: Done, rounds: tuple[float | None, ...]) -> Iterator[tuple[Work, float | None]]:
    yield from ((work, None) for work in done.buy_in)
    for place, reps in enumerate(rounds):
        for work, line in zip(done.lines, done.block.lines, strict=True):
            own = line.scheme[place % len(line.scheme)] if line.scheme else reps
            yield work, own
    yield from ((work, None) for work in done.cash_out)
