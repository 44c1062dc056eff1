"""Whether somebody gets better: beside their own forecasts, and in sessions that came again."""

from collections.abc import Iterable, Sequence
from datetime import date
from math import log
from statistics import fmean
from typing import NamedTuple

from core.ability.capacity import Capacity
from core.forecast.learning import came_to_in
from core.forecast.values import COMPARABLE, FOUR_IN_FIVE, Again, Believed, Beside, Forecast, Trend
from core.measures import AmountUnit
from core.movements.lookup import Catalogue
from core.scaling.values import Change, VersionBlock, VersionLine
from core.scores.values import Score

# A single score counts for so many spreads at most, or it would say all.
MOST = 2.0
# So far from the forecast, on average of the last six, nobody comes by chance more than once in six (one spread of one
# score is 1 / sqrt(6) of six).
TELLING = 0.4
# All of six so far above what was expected: either the tests were told too low, or the scores are wrong.
SUSPICIOUS = 1.3
_NARROWEST = 0.03
# Nobody says of themselves that they can do more in one go; beyond it a model only reckons on (estimates).
_MOST_SAID = {AmountUnit.REPS: 50, AmountUnit.SECONDS: 180}
# A wider range says that it isn't known.
_WIDEST = 3.0


class Scored(NamedTuple):
    """A block that was done: on a day, as which part of a version, what it came to and what was expected."""

    on: date
    block: VersionBlock
    score: Score
    foreseen: Forecast | None


def beside_forecasts(done: Iterable[Scored]) -> tuple[Beside, ...]:
    """Every score that can be compared with what was expected of it, the earliest first."""
    found = ((one.on, _better(one)) for one in sorted(done, key=lambda one: one.on))
    return tuple(Beside(on=on, better=better) for on, better in found if better is not None)


def trend_of(beside: Sequence[Beside]) -> Trend | None:
    """Of the last six."""
    if len(beside) < COMPARABLE:
        return None
    middle = fmean(one.better for one in beside[-COMPARABLE:])
    if middle > TELLING:
        return Trend.UP
    return Trend.DOWN if middle < -TELLING else Trend.STEADY


def is_suspicious(beside: Sequence[Beside]) -> bool:
    """Whether the last six are all far above what was expected: for the coach's eyes only."""
    return len(beside) >= COMPARABLE and all(one.better > SUSPICIOUS for one in beside[-COMPARABLE:])


def done_again(done: Iterable[Scored]) -> tuple[Again, ...]:
    """Sessions that came more than once just alike, the one that was done last first."""
    alike: dict[tuple[object, ...], list[Scored]] = {}
    for one in sorted(done, key=lambda one: one.on):
        alike.setdefault(_same(one.block), []).append(one)
    again = [found for found in alike.values() if len(found) > 1]
    return tuple(_again(found) for found in sorted(again, key=lambda found: found[-1].on, reverse=True))


def is_best(one: Scored, others: Iterable[Scored]) -> bool:
    """Whether it is better than every other time that the same was done; never where it wasn't."""
    same = [other for other in others if _same(other.block) == _same(one.block)]
    return bool(same) and _again([*same, one]).is_best


def believed_of(
    lines: Iterable[VersionLine], capacity: Capacity, catalogue: Catalogue
) -> tuple[Believed, ...]:
    """What is thought of somebody's ability in lines that they did, each way of a movement once."""
    found: dict[tuple[object, ...], Believed] = {}
    for line in lines:
        key = line.movement, line.variant, line.load_kg
        if key not in found and (believed := _believed(line, capacity, catalogue)) is not None:
            found[key] = believed
    return tuple(found.values())


def _better(one: Scored) -> float | None:
    if one.foreseen is None or one.foreseen.expected <= 0 or one.foreseen.low <= 0:
        return None
    came_to = came_to_in(one.foreseen.unit, one.score, one.block)
    if not came_to:
        return None
    spread = max(log(one.foreseen.high / one.foreseen.low) / FOUR_IN_FIVE, _NARROWEST)
    better = log(came_to / one.foreseen.expected) / spread * (-1 if one.foreseen.unit == "s" else 1)
    return max(-MOST, min(MOST, better))


def _same(block: VersionBlock) -> tuple[object, ...]:
    """What makes two parts the same work: the format with its numbers, and every line as it was done."""
    form = block.format, block.minutes, block.rounds, block.scheme, block.every_s, block.work_s, block.rest_s
    ways = ((one.movement, one.variant, one.load_kg, one.amount, one.unit) for one in block.every_line)
    return (*form, *ways)


def _again(found: Sequence[Scored]) -> Again:
    *before, last = found
    values = [value for one in before if (value := one.score.value) is not None]
    told = last.score.value
    sooner = last.score.unit == "s" and not last.score.capped
    best = told is not None and bool(values) and (told < min(values) if sooner else told > max(values))
    lines = tuple(line for line in last.block.every_line if line.change is not Change.REST)
    return Again(lines=lines, scores=tuple((one.on, one.score) for one in found), is_best=best)


def _believed(line: VersionLine, capacity: Capacity, catalogue: Catalogue) -> Believed | None:
    way = f"{line.movement}/{line.variant}"
    movement, variant = catalogue.variant(way)
    countable = line.unit in {AmountUnit.REPS, AmountUnit.SECONDS} and line.change is not Change.REST
    if movement.k is None or not countable or not line.load_moved_kg:
        return None
    ability = capacity.of(movement, variant, way)
    low, middle, high = (
        ability.unbroken(line.load_moved_kg, z) for z in (-FOUR_IN_FIVE / 2, 0.0, FOUR_IN_FIVE / 2)
    )
    is_told = 1 <= middle <= _MOST_SAID[line.unit] and high <= _WIDEST * low
    return Believed(line=line, low=low, expected=middle, high=high) if is_told else None
