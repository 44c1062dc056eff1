"""What is expected of somebody, as frozen values."""

from typing import Literal

from core.sessions.values import Aim
from core.values import Value

ScoreUnit = Literal["rounds", "s", "reps", "kg", "m"]


class Forecast(Value):
    """Four in five such days end between `low` and `high`; `expected` is the middle.

    `unit`: rounds with decimals, seconds, repetitions in all, kg in the hands or metres.
    `low <= expected <= high` as numbers, for times too.
    """

    unit: ScoreUnit
    low: float
    expected: float
    high: float


class Broken(Value):
    """A line that is better done in parts from the start; `line` counts from 1 in its block."""

    line: int
    movement: str
    parts: tuple[int, ...]


class Pacing(Value):
    """How to get there: seconds a round, when half of it is done, and what to break up."""

    round_s: float | None = None
    half_s: float | None = None
    broken: tuple[Broken, ...] = ()


class Outlook(Value):
    """A block's forecast, and the pace that it comes from."""

    forecast: Forecast
    pacing: Pacing = Pacing()


class Foreseen(Value):
    """What was expected of each block of a version when it was first shown; it stays as it was."""

    blocks: tuple[Forecast | None, ...]


class OfOne(Value):
    """What is expected of an athlete by name."""

    name: str
    forecast: Forecast


class GroupOutlook(Value):
    """Of the part that most have a forecast of. `block` counts from 1; `aim`: the coach's, in the same unit.

    `unknown`: of whom nothing is expected, or in another unit.
    """

    block: int
    unit: ScoreUnit
    rows: tuple[OfOne, ...]
    aim: Aim | None = None
    unknown: tuple[str, ...] = ()

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
