"""What is expected of somebody, as frozen values."""

from typing import Literal

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
