"""Everything a line could become for one athlete, with each load or height that exists (design 6.4)."""

from collections.abc import Iterable, Iterator
from decimal import Decimal
from math import ceil, floor
from typing import NamedTuple

from core.measures import AmountUnit
from core.movements.values import Hold
from core.scaling.athlete import Athlete
from core.scaling.demand import load_moved
from core.scaling.fit import (
    NEVER_TOO_LIGHT,
    OF_A_LOAD,
    OF_AN_EASIER_WAY,
    TOLERANCE,
    UNCOUNTED,
    Fit,
    Lightness,
    fit,
)
from core.scaling.gear import Load
from core.scaling.plan import AS_WRITTEN, OTHER_IMPLEMENT, OTHER_LOAD, OTHER_PATTERN, LinePlan, Way
from core.scaling.values import Because, Orders

# 35 lb stand in for 16 kg: a load this near to the written one is the written one.
SAME_LOAD = Decimal("0.025")

# A set costing three times as much as meant, or a third, has left the intent (estimate).
FAR_OFF = 1.1

# Distances beyond the substitution graph.
FEWER = 6
BUILD_UP = 20
REST = 21


class Option(NamedTuple):
    """One way, load and height. `way` None is rest. `load` is per implement, of which `hold` says how many.

    `part`: the share of the written amount, below 1 where repetitions were taken off; `build_up`: no amount
    is prescribed, the athlete feels their way up.
    """

    way: Way | None
    distance: int
    fit: Fit = UNCOUNTED
    hold: Hold | None = None
    load: Load | None = None
    support: str | None = None
    height_cm: Decimal | None = None
    moved_kg: float | None = None
    part: float = 1.0
    build_up: bool = False
    out_of_reach: bool = False

    @property
    def implement(self) -> str | None:
        """What is held, else what is leant on."""
        return self.hold.implement if self.hold else self.support

    @property
    def held(self) -> tuple[str, int, Decimal] | None:
        """What is in the hands: taking up another is a change of implement."""
        if self.hold is None or self.load is None:
            return None
        return self.hold.implement, self.hold.count, self.load.kg

    @property
    def safe(self) -> bool:
        return self.way is not None and self.fit.refused is None and not self.build_up


def options_of(plan: LinePlan, athlete: Athlete, orders: Orders) -> list[Option]:
    """All options of a line, best known first; never empty, as rest is always one.

    Ways come nearest first. A nearer safe option that fits and shares nothing beats every farther one
    whatever the other lines do, so the search ends there. The pattern belongs to the intent: another one
    stands in only where this one has nothing near it.
    """
    found: list[Option] = []
    distance = AS_WRITTEN
    for way in plan.ways:
        if way.distance > distance and _ends(plan, way, found):
            break
        distance = way.distance
        if athlete.barrier(way) is None:
            found += _of_way(plan, way, athlete, heavier=orders.heavier)
    return _with_last_resorts(plan, found, athlete, volume_first=orders.volume_first)


def _ends(plan: LinePlan, way: Way, found: Iterable[Option]) -> bool:
    return _settled(found) or (way.distance == OTHER_PATTERN and _keeps_pattern(plan, found))


def _keeps_pattern(plan: LinePlan, found: Iterable[Option]) -> bool:
    """Whether something safe is near the intent; an unloaded line is content with easier."""
    return any(
        option.safe and option.fit.heavy <= FAR_OFF and (not plan.loaded or option.fit.light <= FAR_OFF)
        for option in found
    )


def _settled(found: Iterable[Option]) -> bool:
    return any(o.safe and o.fit.beyond == 0 and (o.load is None or o.load.thing is None) for o in found)


def _of_way(plan: LinePlan, way: Way, athlete: Athlete, *, heavier: bool) -> Iterator[Option]:
    support, height, there = athlete.support(way.variant)
    if not there:
        return
    if not way.variant.holds:
        yield _option(plan, way, athlete, Option(way, way.distance, support=support, height_cm=height))
        return
    for hold in way.variant.holds:
        cap = _heaviest(plan, way, hold, athlete, heavier=heavier)
        for load in athlete.gear.loads(hold.implement, hold.count):
            if cap is None or load.kg <= cap:
                distance = _distance(plan, way, hold, load, athlete)
                blank = Option(way, distance, hold=hold, load=load, support=support, height_cm=height)
                yield _option(plan, way, athlete, blank)


def _option(plan: LinePlan, way: Way, athlete: Athlete, blank: Option) -> Option:
    moved = load_moved(
        way.variant,
        athlete.body_mass_kg,
        blank.hold,
        float(blank.load.kg) if blank.load else 0.0,
        float(blank.height_cm) if blank.height_cm is not None else None,
    )
    if way.set_amount is None:
        return blank._replace(moved_kg=moved, out_of_reach=False)
    return blank._replace(moved_kg=moved, fit=fit_of(plan, way, athlete, moved, blank.distance))


def fit_of(
    plan: LinePlan, way: Way, athlete: Athlete, moved_kg: float, distance: int, part: float = 1.0
) -> Fit:
    """Fit of a way at a load, at the written amount or a `part` of it."""
    assert way.set_amount is not None
    return fit(
        athlete.ability(way),
        moved_kg,
        way.set_amount * part,
        athlete.window(plan, way),
        counts_reps=way.unit is AmountUnit.REPS,
        lightness=_lightness(plan, way, athlete, distance),
        light_duty=athlete.goes_easy(way),
    )


def _lightness(plan: LinePlan, way: Way, athlete: Athlete, distance: int) -> Lightness:
    """How being too light counts for a line; with no load written, none is as written."""
    load_is_open = plan.loaded and plan.load_kg(athlete.pair) is None
    if athlete.goes_easy(way) or (distance == AS_WRITTEN and not load_is_open):
        return NEVER_TOO_LIGHT
    return OF_A_LOAD if plan.loaded else OF_AN_EASIER_WAY


def _heaviest(plan: LinePlan, way: Way, hold: Hold, athlete: Athlete, *, heavier: bool) -> Decimal | None:
    """Heaviest load allowed, per implement: never above what is written, unless the coach allows."""
    written = plan.load_kg(athlete.pair)
    if heavier or written is None or plan.hold is None or way.movement is not plan.ways[0].movement:
        return None
    outside = float(written) * plan.hold.count * plan.hold.factor
    return Decimal(outside / (hold.count * hold.factor)) * (1 + SAME_LOAD)


def _distance(plan: LinePlan, way: Way, hold: Hold, load: Load, athlete: Athlete) -> int:
    if way.distance != AS_WRITTEN:
        return way.distance
    if is_other_implement(plan, hold, athlete):
        return OTHER_IMPLEMENT
    return AS_WRITTEN if is_written_load(plan, load.kg, athlete) else OTHER_LOAD


def is_written_load(plan: LinePlan, kg: Decimal, athlete: Athlete) -> bool:
    """Whether a load counts as the written one; any does where the coach wrote none."""
    written = plan.load_kg(athlete.pair)
    return written is None or abs(kg - written) <= SAME_LOAD * written


def is_other_implement(plan: LinePlan, hold: Hold, athlete: Athlete) -> bool:
    """Where the coach named none, any implement made for it is as written; an improvised one never is."""
    named = plan.line.implement
    if named is not None and hold.implement != named:
        return True
    if plan.hold is not None and hold.count != plan.hold.count:
        return True
    return named is None and athlete.improvised(hold.implement)


def _with_last_resorts(
    plan: LinePlan, found: list[Option], athlete: Athlete, *, volume_first: bool
) -> list[Option]:
    safe = [option for option in found if option.safe]
    options = list(safe)
    if volume_first or all(option.fit.heavy > TOLERANCE for option in safe):
        options += _fewer(plan, found, athlete)
    if not options:
        options += [
            option._replace(distance=BUILD_UP, build_up=True)
            for option in found
            if option.fit.refused is Because.UNKNOWN_HEAVY
        ]
    return [*options, Option(None, REST)]


def _fewer(plan: LinePlan, found: Iterable[Option], athlete: Athlete) -> Iterator[Option]:
    """The same with as many repetitions as fit: the more are taken off, the further from what was written."""
    for option in found:
        part = _fitting_part(plan, option, athlete)
        if part is None or option.way is None or option.moved_kg is None:
            continue
        less = fit_of(plan, option.way, athlete, option.moved_kg, option.distance, part)
        yield option._replace(distance=FEWER + ceil(10 * (1 - part)), part=part, fit=less)


def _fitting_part(plan: LinePlan, option: Option, athlete: Athlete) -> float | None:
    """Largest share of the written amount that fits, in whole repetitions (five seconds of a hold)."""
    way, fitted = option.way, option.fit
    if way is None or way.set_amount is None or way.amount is None or fitted.unbroken is None:
        return None
    if fitted.refused not in {None, Because.LIGHT_DUTY}:
        return None
    wanted = athlete.window(plan, way).high * fitted.cautious / way.set_amount
    step = 5 if way.unit is AmountUnit.SECONDS else 1
    fewer = step * floor(way.amount * wanted / step)
    return fewer / way.amount if 0 < fewer < way.amount else None
