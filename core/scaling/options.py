"""Everything a line could become for one athlete, with each load or height that exists (design 6.4)."""

from collections.abc import Iterable, Iterator
from decimal import Decimal
from math import ceil, floor, inf, log
from typing import NamedTuple

from core.measures import AmountUnit
from core.movements.values import Hold
from core.scaling.athlete import Athlete
from core.scaling.demand import load_moved
from core.scaling.fit import (
    NEVER_TOO_LIGHT,
    OF_A_LOAD,
    OF_AN_EASIER_WAY,
    OF_AN_UNTRIED_LOAD,
    OF_NO_LOAD_WHERE_ONE_IS_WRITTEN,
    TOLERANCE,
    UNCOUNTED,
    Fit,
    Lightness,
    Task,
    fit,
    steps,
)
from core.scaling.gear import Load
from core.scaling.plan import AS_WRITTEN, OTHER_IMPLEMENT, OTHER_LOAD, OTHER_PATTERN, Grip, LinePlan, Way
from core.scaling.values import Because, Orders

# The pattern belongs to the intent: leaving it counts like a set that costs three times what is meant, or a
# third (estimate), in steps beyond tolerance. By fit alone, a sit-up would replace a doubtful push-up.
LEFT_PATTERN = steps(log(3) - TOLERANCE)

# Misfit, in steps, of the best option that shares nothing, before there is one.
NO_BOUND = 10_000

# A line has a line before it and one after it.
NEIGHBOURS = 2

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


class _Search:
    """Options found so far, and what they make needless.

    `best`: (misfit in steps, distance) of the best safe option that shares nothing: whatever the other lines
    do, nothing above it is chosen. `settled`: settings of shared things at which a nearer way fits already.
    With `every`, nothing is needless. `steady`: last time's choice counts.
    """

    def __init__(self, *, every: bool, volume_first: bool, steady: bool) -> None:
        self.found: list[Option] = []
        self.best = NO_BOUND, REST
        self.settled: set[Load] = set()
        self._every = every
        self._volume_first = volume_first
        self._fewer = True
        self._perfect: set[str] | None = None if every or steady else set()
        self._distance = AS_WRITTEN
        self._seen = 0

    def ends_before(self, way: Way) -> bool:
        """Whether a way, and all after it, can't be better than what was found."""
        if self._every:
            return False
        if way.distance != self._distance:
            self._distance = way.distance
            self._settle()
        least = LEFT_PATTERN if way.distance == OTHER_PATTERN else 0
        return (least, way.distance) > self.best or self._has_enough(way)

    def _has_enough(self, way: Way) -> bool:
        """Whether there are flawless options of more movements than there are neighbours to repeat."""
        return self._perfect is not None and len(self._perfect) > NEIGHBOURS and way.distance == self.best[1]

    def is_needless(self, distance: int, fitting: Fit) -> bool:
        """Whether an option can't be chosen: the best is better, and no repetitions have to come off."""
        if self._every or self._fewer:
            return False
        return fitting.refused is not None or (fitting.beyond, distance) > self.best

    def add(self, option: Option) -> None:
        """Take an option in, and note what it makes needless."""
        self.found.append(option)
        if not option.safe or (option.load is not None and option.load.thing is not None):
            return
        value = option.fit.beyond, option.distance
        if value < self.best:
            self.best = value
            self._perfect = self._perfect if self._perfect is None else set()
        if option.distance < OTHER_PATTERN and option.fit.heavy <= TOLERANCE:
            self._fewer = self._volume_first
        self._note_perfect(option, value)

    def _note_perfect(self, option: Option, value: tuple[int, int]) -> None:
        flawless = value == self.best and option.fit.beyond == option.fit.within == 0 and option.hold is None
        if self._perfect is not None and flawless and option.way is not None and not option.out_of_reach:
            self._perfect.add(option.way.movement.id)

    def _settle(self) -> None:
        """All ways of one distance are through: a setting at which one fits needs no farther way."""
        for option in self.found[self._seen :]:
            if option.safe and option.load is not None and option.load.thing is not None:
                self.settled.update((option.load,) if option.fit.beyond == 0 else ())
        self._seen = len(self.found)


def options_of(plan: LinePlan, athlete: Athlete, orders: Orders, *, every: bool = False) -> list[Option]:
    """All options of a line, best known first; never empty, as rest is always one.

    Ways come nearest first. A nearer safe option that fits and shares nothing beats every farther one
    whatever the other lines do, so the search ends there, unless `every` option is wanted: then the ways that
    are only for those who ask are among them too.
    """
    steady = any(line.written == plan.written for line in orders.last)
    search = _Search(every=every, volume_first=orders.volume_first, steady=steady or orders.volume_first)
    for way in (*plan.ways, *plan.harder) if every else plan.ways:
        if search.ends_before(way):
            break
        if athlete.barrier(way) is None:
            _search_way(plan, way, athlete, orders, search)
    return _with_last_resorts(plan, search.found, athlete, volume_first=orders.volume_first)


def _search_way(plan: LinePlan, way: Way, athlete: Athlete, orders: Orders, search: _Search) -> None:
    """Finds the options of one way, but for what is needless."""
    support, height, there = athlete.support(way.variant)
    if not there or not _can_hold(way, athlete):
        return
    lean = None if height is None else float(height)
    own = load_moved(way.variant, athlete.body_mass_kg, height_cm=lean)
    task, lightness = athlete.task(plan, way), _lightness(plan, way, athlete)
    if not way.grips:
        fitting = _fit(task, own, lightness, way)
        if not search.is_needless(way.distance, fitting):
            found = Option(way, way.distance, fitting, None, None, support, height, own)
            search.add(found._replace(out_of_reach=athlete.is_out_of_reach(plan, way)))
    for grip in way.grips:
        lifts = _Lifts(plan, way, athlete, grip, own, task, lightness)
        for loads in _loads(grip, athlete, lifts.too_heavy_from, heavier=orders.heavier):
            for option in _lifted(lifts, loads, search):
                breathless = athlete.is_out_of_reach(plan, way)
                search.add(option._replace(support=support, height_cm=height, out_of_reach=breathless))


def _lifted(lifts: "_Lifts", loads: Iterable[Load], search: _Search) -> Iterator[Option]:
    """Options at loads that go from heavy to light: what is too light to be needed ends them."""
    for load in loads:
        if load in search.settled:
            continue
        distance, fitting = lifts.at(load)
        if not search.is_needless(distance, fitting):
            yield Option(lifts.way, distance, fitting, lifts.grip.hold, load, moved_kg=lifts.moved(load))
        elif fitting.light > 0:
            return


def _can_hold(way: Way, athlete: Athlete) -> bool:
    """Whether anything is there to hold, where something must be."""
    if not way.grips:
        return True
    return any(athlete.gear.loads(grip.hold.implement, grip.hold.count) for grip in way.grips)


class _Lifts(NamedTuple):
    """One way with one grip, at every load."""

    plan: LinePlan
    way: Way
    athlete: Athlete
    grip: Grip
    own_kg: float
    task: Task | None
    lightness: Lightness

    @property
    def too_heavy_from(self) -> float:
        """Loads above this are sure to be refused."""
        if self.task is None:
            return inf
        return (self.task.ability.too_heavy_from - self.own_kg) / self.grip.per_kg

    def moved(self, load: Load) -> float:
        return self.own_kg + self.grip.per_kg * load.value

    def at(self, load: Load) -> tuple[int, Fit]:
        """Distance and fit."""
        distance = self.way.distance or _distance(self.plan, self.grip, load, self.athlete)
        written = distance == AS_WRITTEN and self.plan.line.loads_kg
        lightness = NEVER_TOO_LIGHT if written else self.lightness
        return distance, _fit(self.task, self.moved(load), lightness, self.way)


def _loads(grip: Grip, athlete: Athlete, too_heavy_from: float, *, heavier: bool) -> Iterator[list[Load]]:
    """Loads that may be taken, the heaviest first; after them those that lie a little above the written one."""
    loads = athlete.gear.loads(grip.hold.implement, grip.hold.count)
    if not loads:
        return
    most, nearly = (inf, inf) if heavier else grip.most(athlete.pair)
    yield [load for load in loads if load.value <= min(most, too_heavy_from)]
    if loads[0].value > most:
        yield [
            load for load in loads if most < load.value <= min(nearly, too_heavy_from) and load.thing is None
        ]


def _fit(task: Task | None, moved_kg: float, lightness: Lightness, way: Way, part: float = 1.0) -> Fit:
    fitting = UNCOUNTED if task is None else fit(task, moved_kg, lightness, part)
    if way.distance == OTHER_PATTERN and fitting.beyond < LEFT_PATTERN:
        return fitting._replace(beyond=LEFT_PATTERN)
    return fitting


def _lightness(plan: LinePlan, way: Way, athlete: Athlete) -> Lightness:
    """How being too light counts for a way, but for the load that is written."""
    if plan.loaded and not athlete.goes_easy(way):
        untried = OF_AN_UNTRIED_LOAD if way.grips else OF_NO_LOAD_WHERE_ONE_IS_WRITTEN
        return OF_A_LOAD if athlete.is_tested(way) else untried
    return NEVER_TOO_LIGHT if way.distance == AS_WRITTEN else OF_AN_EASIER_WAY


def _distance(plan: LinePlan, grip: Grip, load: Load, athlete: Athlete) -> int:
    if grip.other:
        return OTHER_IMPLEMENT
    return AS_WRITTEN if plan.is_written(load.value, athlete.pair) else OTHER_LOAD


def _with_last_resorts(
    plan: LinePlan, found: list[Option], athlete: Athlete, *, volume_first: bool
) -> list[Option]:
    options = [option for option in found if option.safe]
    in_pattern = [option for option in options if option.distance < OTHER_PATTERN]
    if volume_first or all(option.fit.heavy > TOLERANCE for option in in_pattern):
        options += _fewer(plan, found, athlete)
    if not options:
        options += [
            option._replace(distance=BUILD_UP, build_up=True)
            for option in found
            if option.fit.refused is Because.UNKNOWN_HEAVY
        ]
    return [*options, Option(None, REST)]


def at_share(plan: LinePlan, option: Option, athlete: Athlete, share: float) -> Option:
    """The same with a share of the written amount."""
    assert option.way is not None
    task = athlete.task(plan, option.way)
    fitting = _fit(task, option.moved_kg or 0.0, _lightness(plan, option.way, athlete), option.way, share)
    distance = option.distance if share == 1 else FEWER + ceil(10 * (1 - share))
    return option._replace(part=share, distance=distance, fit=fitting)


def _fewer(plan: LinePlan, found: Iterable[Option], athlete: Athlete) -> Iterator[Option]:
    """The same with as many repetitions as fit: the more are taken off, the further from what was written."""
    for option in found:
        task = athlete.task(plan, option.way) if option.way else None
        part = _fitting_part(task, option)
        if part is None or task is None or option.way is None or option.moved_kg is None:
            continue
        less = _fit(task, option.moved_kg, _lightness(plan, option.way, athlete), option.way, part)
        yield option._replace(distance=FEWER + ceil(10 * (1 - part)), part=part, fit=less)


def _fitting_part(task: Task | None, option: Option) -> float | None:
    """Largest share of the written amount that fits, in whole repetitions (five seconds of a hold)."""
    way, fitted = option.way, option.fit
    if task is None or way is None or way.amount is None or fitted.refused not in {None, Because.LIGHT_DUTY}:
        return None
    most = task.window.high * fitted.cautious / task.set_amount
    step = 5 if way.unit is AmountUnit.SECONDS else 1
    fewer = step * floor(way.amount * most / step)
    return fewer / way.amount if 0 < fewer < way.amount else None
