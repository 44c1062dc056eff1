"""What is expected of somebody, as frozen values."""

from datetime import date
from enum import StrEnum
from typing import Literal

from core.scaling.values import VersionLine
from core.scores.values import Score
from core.sessions.values import Aim
from core.values import Value

ScoreUnit = Literal["rounds", "s", "reps", "kg", "m"]
MarkKind = Literal["split", "ready", "rest", "work", "halfway", "last_minute", "start", "end"]
# A range wider than this says that little is known; to share one's strength by it the pace is near enough up to this
# (estimates).
_TELLING, _TO_PACE_BY = 1.6, 2.0
# Nobody plans by times that lie so far apart; of hours a quarter does no harm (estimates).
_WIDE_S, _OF_HOURS = 480.0, 1.25
# Four in five of what falls by chance lie so many spreads apart: from this far below the middle to as far above.
FOUR_IN_FIVE = 2 * 1.2815515655446004
# Fewer scores beside their forecasts say nothing (an estimate).
COMPARABLE = 6


class Forecast(Value):
    """Four in five such days end between `low` and `high`; `expected` is the middle.

    `unit`: rounds with decimals, seconds, repetitions in all, kg in the hands or metres.
    `low <= expected <= high` as numbers, for times too.
    """

    unit: ScoreUnit
    low: float
    expected: float
    high: float

    @property
    def is_telling(self) -> bool:
        """Whether the range is narrow enough to be of use to whoever is about to begin."""
        return self.high <= _TELLING * self.low

    @property
    def is_to_plan_with(self) -> bool:
        """Whether both ends are worth telling: else the pace says more than they."""
        apart = self.high - self.low
        return self.is_telling and not (
            self.unit == "s" and apart > _WIDE_S and self.high > _OF_HOURS * self.low
        )


class Broken(Value):
    """A line that is better done in parts from the start; `line` counts from 1 in its block."""

    line: int
    movement: str
    variant: str
    parts: tuple[int, ...]


class Pacing(Value):
    """How to get there: seconds a round, when half of it, or all rounds, are done, and what to break up.

    `rest`: whether the rest after a round is in its time, or comes on top; None where there is none.
    """

    round_s: float | None = None
    rest: Literal["in", "on top"] | None = None
    half_s: float | None = None
    rounds_s: float | None = None
    broken: tuple[Broken, ...] = ()


class Outlook(Value):
    """A block's forecast, and the pace that it comes from. `is_foregone`: what is asked will simply be done."""

    forecast: Forecast
    pacing: Pacing = Pacing()
    is_foregone: bool = False

    @property
    def is_telling(self) -> bool:
        """Whether it says something to whoever is about to begin."""
        return self.forecast.is_telling and not self.is_foregone

    @property
    def is_to_pace_by(self) -> bool:
        """Whether its pace helps, though what it comes to may not be known nearly enough."""
        return self.forecast.high <= _TO_PACE_BY * self.forecast.low and not self.is_foregone


class Mark(Value):
    """Something that sounds. `at_s`: seconds after the start, before it negative; `split`: a round done as planned."""

    at_s: float
    kind: MarkKind


class Clock(Value):
    """The clock of a block. `marks` rise by their moments; of what falls together only the greater sounds.

    `turns`: so many, one each `every_s`. `ends_s`: None where it goes on until it is done.
    """

    marks: tuple[Mark, ...]
    turns: int = 1
    every_s: float | None = None
    ends_s: float | None = None

    def of(self, kind: MarkKind) -> tuple[float, ...]:
        """When that sounds, in seconds after the start."""
        return tuple(mark.at_s for mark in self.marks if mark.kind == kind)


class Foreseen(Value):
    """What was expected of each block of a version when it was first shown; it stays as it was."""

    blocks: tuple[Forecast | None, ...]


class OfOne(Value):
    """What is expected of an athlete by name."""

    name: str
    forecast: Forecast


class Trend(StrEnum):
    UP = "up"
    STEADY = "steady"
    DOWN = "down"


class Beside(Value):
    """A score beside its forecast: so many spreads better, at most two."""

    on: date
    better: float


class Again(Value):
    """The same session at two times or more, the earliest first; `is_best`: the last is better than all before."""

    lines: tuple[VersionLine, ...]
    scores: tuple[tuple[date, Score], ...]
    is_best: bool


class Believed(Value):
    """What somebody is thought to be able to do of a line without a break: repetitions or seconds."""

    line: VersionLine
    low: float
    expected: float
    high: float


class Progress(Value):
    """`beside`: the earliest first. `trend`: None while there are fewer than six to compare."""

    beside: tuple[Beside, ...]
    trend: Trend | None
    again: tuple[Again, ...] = ()
    believed: tuple[Believed, ...] = ()


class GroupOutlook(Value):
    """Of the part that most have a forecast of. `block` counts from 1; `aim`: the coach's, in the same unit.

    `unknown`: of whom nothing is expected, or in another unit. `through`: of what is capped, how many of how many are
    expected to be through before the cap.
    """

    block: int
    unit: ScoreUnit
    rows: tuple[OfOne, ...]
    aim: Aim | None = None
    unknown: tuple[str, ...] = ()
    through: tuple[int, int] | None = None

    @property
    def inside(self) -> int:
        """How many are expected inside the aim."""
        return sum(_is_inside(one.forecast.expected, self.aim) for one in self.rows)

    @property
    def edges(self) -> tuple[float, float]:
        """The least and the most that is expected of anybody."""
        found = [one.forecast.expected for one in self.rows]
        return min(found), max(found)


def _is_inside(expected: float, aim: Aim | None) -> bool:
    if aim is None:
        return False
    return (aim.low is None or expected >= aim.low) and (aim.high is None or expected <= aim.high)
