"""One line of a version as work: how long one of it takes, and what it leaves behind."""

from collections.abc import Mapping
from typing import NamedTuple

import numpy as np

from core.forecast.fatigue import Floats, slow_share
from core.forecast.people import OVERDRAFT_S, People
from core.measures import AmountUnit
from core.movements.values import Movement, Variant
from core.scaling.amounts import SECONDS_PER_KCAL, STEP_M
from core.scaling.values import VersionLine

# Of bodyweight work with no rate of its own (2024 Adult Compendium 02057, body-weight resistance, high intensity).
USUAL_MET = 6.5
# What a machine's calories are reckoned over, to know how fast they go (estimate).
METRES_OF_KCAL = 500.0
# Breathing recovers from all work; its slow part is that of `WHOLE_BODY`.
SLOW_BREATH = 0.4933
WITHOUT_END = 1e6


class Work(NamedTuple):
    """`amount` as one counts it, None where the coach wrote none. Arrays: for each of the people.

    `seconds` of one; `debt`: of one, for each reserve and the whole body last; `slow`: of that the slow share;
    `unbroken`: so many go fresh. `counted`: repetitions of one of it, 0 where it isn't counted in any.
    `for_seconds`: it lasts so long, however many go; `whole`: it comes in whole ones.
    """

    line: int
    movement: str
    amount: float | None
    seconds: Floats
    debt: Floats
    slow: Floats
    unbroken: Floats
    counted: float
    station: int | None = None
    for_seconds: float | None = None
    whole: bool = True


def reserves_of(lines: tuple[VersionLine, ...], people: People) -> tuple[str, ...]:
    """The reserves that the lines draw on, but for those that another is always ahead of: they never end a set."""
    drawn = [dict(people.catalogue.variant(_way(line))[1].reserves) for line in lines]
    names = list(dict.fromkeys(name for one in drawn for name in one))
    shares = {name: [one.get(name, 0.0) for one in drawn] for name in names}
    return tuple(name for name in names if not any(_is_ahead(shares, other, name) for other in names))


def _is_ahead(shares: Mapping[str, list[float]], other: str, name: str) -> bool:
    if other == name or any(one < two for one, two in zip(shares[other], shares[name], strict=True)):
        return False
    return shares[other] != shares[name] or list(shares).index(other) < list(shares).index(name)


def work_of(line: VersionLine, reserves: tuple[str, ...], people: People) -> Work:
    """What a line asks, its amount as the version tells it."""
    movement, variant = people.catalogue.variant(_way(line))
    if movement.k is None:
        return _travel(line, variant, reserves, people)
    unbroken = people.unbroken(_way(line), line.load_moved_kg or 0.0)
    own = movement.unit_of(variant)
    of_own, seconds = _in_own(line.unit, own, variant)
    sides = _sides(line, movement, variant)
    each = of_own * sides.share / unbroken
    took = (
        seconds
        * sides.times
        * (np.ones_like(unbroken) if own is AmountUnit.SECONDS else people.tempo_of(movement.id))
    )
    holds = line.unit is AmountUnit.SECONDS
    timed = line.amount * sides.times if holds and own is not AmountUnit.SECONDS and line.amount else None
    if timed is not None:  # so long, in repetitions
        each, took = sides.share / unbroken, variant.seconds.value * people.tempo_of(movement.id)
    debt = np.stack(
        [variant.reserves.get(name, 0.0) * each for name in reserves] + [_breath(variant, took, people)]
    )
    is_counted = line.unit is AmountUnit.REPS or timed is not None
    return Work(
        line=line.line,
        movement=line.movement,
        amount=None if timed is not None else line.amount,
        seconds=took,
        debt=debt,
        slow=np.stack([*[slow_share(unbroken)] * len(reserves), np.full_like(unbroken, SLOW_BREATH)]),
        unbroken=unbroken / (of_own * sides.share),
        counted=sides.times if is_counted else 0.0,
        station=line.station,
        for_seconds=timed,
        whole=line.unit is AmountUnit.REPS,
    )


class _Sides(NamedTuple):
    """`times`: what is told is done so often; `share`: of one told, so much falls on a side."""

    times: float
    share: float


def _sides(line: VersionLine, movement: Movement, variant: Variant) -> _Sides:
    if movement.sides_of(variant) == "both":
        return _Sides(1.0, 1.0)
    return _Sides(2.0, 1.0) if line.per_side else _Sides(1.0, 0.5)


def _in_own(unit: AmountUnit, own: AmountUnit, variant: Variant) -> tuple[float, float]:
    """One of what is told, in what the movement counts by itself; and its seconds."""
    one = variant.seconds.value
    if unit is own:
        return 1.0, one
    if unit is AmountUnit.METRES:
        return 1 / STEP_M, one / STEP_M
    if unit is AmountUnit.KCAL:
        return SECONDS_PER_KCAL / one, SECONDS_PER_KCAL
    return 1.0, one


def _breath(variant: Variant, seconds: Floats, people: People) -> Floats:
    """What one of it overdraws of what the whole body keeps up; 0 for what is easier than that."""
    met = variant.met.value if variant.met else USUAL_MET
    return np.maximum(0.0, met / people.steady_met - 1) * seconds / OVERDRAFT_S


def _travel(line: VersionLine, variant: Variant, reserves: tuple[str, ...], people: People) -> Work:
    """Covering ground: at the rate that is kept up for so far, whatever it leaves of anything else."""
    seconds = _seconds_of_travel(line, variant, people)
    over = np.maximum(0.0, people.kept_up_met / people.steady_met - 1)
    debt = np.zeros((len(reserves) + 1, len(seconds)))
    debt[-1] = over * seconds / OVERDRAFT_S
    lasts = line.unit is AmountUnit.SECONDS
    return Work(
        line=line.line,
        movement=line.movement,
        amount=None if lasts else line.amount,
        seconds=seconds,
        debt=debt,
        slow=np.full((len(reserves) + 1, len(seconds)), SLOW_BREATH),
        unbroken=np.full_like(seconds, WITHOUT_END),
        counted=1.0 if line.unit is AmountUnit.KCAL else 0.0,
        station=line.station,
        for_seconds=line.amount if lasts else None,
        whole=False,
    )


def _seconds_of_travel(line: VersionLine, variant: Variant, people: People) -> Floats:
    of_a_metre = variant.seconds.value
    if line.unit is AmountUnit.KCAL:
        return people.travel_s(line.movement, of_a_metre, METRES_OF_KCAL) * SECONDS_PER_KCAL / of_a_metre
    far = line.amount if line.unit is AmountUnit.METRES and line.amount else METRES_OF_KCAL
    return people.travel_s(line.movement, of_a_metre, far, line.variant)


def _way(line: VersionLine) -> str:
    return f"{line.movement}/{line.variant}"
