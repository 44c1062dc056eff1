"""Everything a line could become for one athlete, with each load or height that exists (design 6.4)."""

from collections.abc import Iterable, Iterator, Sequence
from math import inf
from typing import NamedTuple

from core.scaling.athlete import NOTHING, Athlete
from core.scaling.fewer import fewer_of
from core.scaling.fit import NEVER_TOO_LIGHT, TOLERANCE, UNCOUNTED, Fit, Task, dull_below, fit, heaviest
from core.scaling.gear import Load
from core.scaling.orders import Orders
from core.scaling.search import BUILD_UP, REST, Option, Search, Slot, placed
from core.scaling.values import Because
from core.scaling.ways import AS_WRITTEN, OTHER_IMPLEMENT, OTHER_LOAD, OTHER_PATTERN, Grip, LinePlan, Way


def options_of(plan: LinePlan, athlete: Athlete, orders: Orders, *, every: bool = False) -> list[Option]:
    """All options of a line, best known first; never empty, as rest is always one.

    Ways come nearest first. A nearer safe option that fits and shares nothing beats every farther one whatever
    the other lines do, so that what fits is looked for first, and misfit is measured only where nothing does.
    With `every` option wanted, the ways that are only for those who ask are among them too. Settings of shared
    things come last, when it is known what they have to be as good as.
    """
    line = _Line(plan, athlete, orders.heavier)
    steady = any(last.written == plan.written for last in orders.last)
    if not (every or orders.volume_first):
        search = Search(fitting=True, steady=steady)
        _look(line, search)
        if search.has_fit:
            return [*search.found, Option(None, REST)]
    search = Search(every=every, volume_first=orders.volume_first, steady=steady or orders.volume_first)
    _look(line, search, every=every)
    return _with_last_resorts(plan, search, athlete)


class _Line(NamedTuple):
    """A line for one athlete. `heavier`: more than is written is allowed."""

    plan: LinePlan
    athlete: Athlete
    heavier: bool


def _look(line: _Line, search: Search, *, every: bool = False) -> None:
    """Goes through the ways; settings of shared things come last."""
    put_off: list[_Settings] = []
    ruled_out, barrier = line.athlete.ruled_out, line.athlete.barrier
    for way in line.athlete.within_reach(line.plan, asked=every):
        if way.distance > search.farthest:
            break
        if (way.skill or way.bars & ruled_out) and barrier(way) is not None:
            continue
        if way.grips:
            put_off += _search_grips(line, way, search)
        else:
            _search_bare(line, way, search)
    for settings in put_off:
        _search_settings(settings, search)


class _Work(NamedTuple):
    """One way of a line as one athlete would do it, at every load. `own_kg`: what is moved without one."""

    line: _Line
    way: Way
    own_kg: float
    task: Task | None

    def limit(self, grip: Grip, beyond: int) -> float:
        """Loads above this are sure to be refused, or too heavy by more than so many steps."""
        if self.task is None:
            return inf
        return (heaviest(self.task, beyond) - self.own_kg) / grip.per_kg

    @property
    def dull_below(self) -> float:
        """Loads moved below this are all alike, within tolerance; none where one may be the written one."""
        return 0.0 if self.task is None or self.way.distance == AS_WRITTEN else dull_below(self.task)

    def at(self, grip: Grip, load: Load) -> tuple[int, Fit, float]:
        """Distance, fit and the load moved with a load."""
        (plan, athlete, _), way, own, task = self
        distance, moved = way.distance, own + grip.per_kg * load.value
        if distance == AS_WRITTEN:
            distance = _distance(plan, grip, load, athlete.pair)
        if task is None:
            return distance, placed(UNCOUNTED, way), moved
        meant = plan.line.loads_kg and distance <= OTHER_LOAD and plan.is_near(load.value, athlete.pair)
        fitting = fit(task, moved, NEVER_TOO_LIGHT if meant else task.lightness)
        return distance, fitting if distance < OTHER_PATTERN else placed(fitting, way), moved


def _work(line: _Line, way: Way) -> _Work:
    plan, athlete, _ = line
    return _Work(line, way, athlete.own_kg(way), athlete.task(plan, way))


def _search_bare(line: _Line, way: Way, search: Search) -> None:
    """Finds the option of a way without a load, unless it is needless."""
    plan, athlete, _ = line
    if search.spares(None, way.kin.movement):
        return
    own, distance = athlete.own_kg(way), way.distance
    if search.fitting:
        least, most = athlete.bounds(way)
        if not least <= own <= most:
            return
    task = athlete.task(plan, way)
    fitting = UNCOUNTED if task is None else fit(task, own, task.lightness)
    if distance == OTHER_PATTERN:
        fitting = placed(fitting, way)
    if search.is_needless(distance, fitting):
        return
    thing, height, _ = athlete.support(way.variant) if way.needs else NOTHING
    breathless = athlete.is_out_of_reach(plan, way)
    search.add(Option(way, distance, fitting, None, None, thing, height, own, breathless), search.slot())


class _Settings(NamedTuple):
    """Settings of shared things that one way could be done at; `slot`: where its options belong."""

    line: _Line
    way: Way
    grip: Grip
    loads: tuple[Load, ...]
    slot: Slot


def _search_grips(line: _Line, way: Way, search: Search) -> Iterator[_Settings]:
    """Finds the loaded options of one way that share nothing, but for what is needless; the others are put off."""
    parts, work = line.athlete.gear.parts, None
    bounds = _loads_to_fit(line, way) if search.fitting else None
    for grip in way.grips:
        if grip.held not in parts:
            continue
        fixed, settings = parts[grip.held]
        if bounds is not None:
            fixed, settings = _within(bounds, grip, fixed), _within(bounds, grip, settings)
        slot = search.slot()
        if settings:
            yield _Settings(line, way, grip, settings, slot)
        if fixed:
            work = work or _work(line, way)
            _search_fixed(work, grip, fixed, slot, search)


def _loads_to_fit(line: _Line, way: Way) -> tuple[float, float]:
    """Between which loads moved, beside the body, a set may fit."""
    own, (least, most) = line.athlete.own_kg(way), line.athlete.bounds(way)
    return least - own, most - own


def _within(bounds: tuple[float, float], grip: Grip, loads: tuple[Load, ...]) -> tuple[Load, ...]:
    """Of loads that go from heavy to light, those that lie between."""
    if not loads:
        return ()
    least, most = bounds[0] / grip.per_kg, bounds[1] / grip.per_kg
    if loads[0].value < least or loads[-1].value > most:
        return ()
    if loads[-1].value >= least and loads[0].value <= most:
        return loads
    return tuple([load for load in loads if least <= load.value <= most])


def _search_fixed(work: _Work, grip: Grip, loads: Sequence[Load], slot: Slot, search: Search) -> None:
    """Loads up to what is written; after them those that lie a little above."""
    allowed = work.line.athlete.most(work.way, grip, heavier=work.line.heavier)
    limit = work.limit(grip, search.most_beyond(work.way.distance))
    _lift(work, grip, _up_to(min(allowed[0], limit), loads), slot, search)
    near = _a_little_above(allowed, limit, loads)
    if near:
        _lift(work, grip, near, search.slot(), search)


def _search_settings(settings: _Settings, search: Search) -> None:
    line, way, grip, loads, slot = settings
    beyond = search.most_beyond(way.distance)
    if beyond < 0:
        return
    search.reach(way.distance)
    work, mixed = _work(line, way), bool(slot)
    limit, allowed = work.limit(grip, beyond), line.athlete.most(way, grip, heavier=line.heavier)
    _lift(work, grip, _up_to(min(allowed[0], limit), loads), slot, search)
    if mixed:
        slot.sort(key=_rank)
    near = _a_little_above(allowed, limit, loads)
    if near:
        _lift(work, grip, near, search.slot(), search)


def _up_to(limit: float, loads: Sequence[Load]) -> Sequence[Load]:
    """Of loads that go from heavy to light, those that are no heavier."""
    return loads if loads[0].value <= limit else [load for load in loads if load.value <= limit]


def _a_little_above(allowed: tuple[float, float], limit: float, loads: Sequence[Load]) -> Sequence[Load]:
    """Of loads that go from heavy to light, those above the first that is allowed, up to the second."""
    most, nearly = allowed
    if loads[0].value <= most:
        return ()
    return [load for load in loads if most < load.value <= min(nearly, limit)]


def _rank(option: Option) -> tuple[float, bool, int]:
    assert option.load is not None
    return option.load.rank


def _lift(work: _Work, grip: Grip, loads: Iterable[Load], slot: Slot, search: Search) -> None:
    """Takes in loads that go from heavy to light: what is too light to be needed, and no more, ends them."""
    (plan, athlete, _), way, *_ = work
    thing, height, _ = athlete.support(way.variant) if way.needs else NOTHING
    breathless = athlete.is_out_of_reach(plan, way)
    dull_below = work.dull_below
    # Where more than written is allowed, what is written comes after what is heavier, and is never too light.
    may_be_meant = work.line.heavier and way.distance == AS_WRITTEN
    for load in loads:
        if search.settled and load.setting in search.settled:
            continue
        dull = work.own_kg + grip.per_kg * load.value < dull_below
        if search.spares((grip.held, load.setting), way.kin.movement, dull=dull):
            continue
        distance, fitting, moved = work.at(grip, load)
        if not search.is_needless(distance, fitting):
            search.add(
                Option(way, distance, fitting, grip.hold, load, thing, height, moved, breathless), slot
            )
        elif (
            not may_be_meant and fitting.light > 0 and fitting.heavy <= TOLERANCE and fitting.refused is None
        ):
            return


def _distance(plan: LinePlan, grip: Grip, load: Load, pair: int) -> int:
    if grip.other:
        return OTHER_IMPLEMENT
    return AS_WRITTEN if plan.is_written(load.value, pair) else OTHER_LOAD


def _with_last_resorts(plan: LinePlan, search: Search, athlete: Athlete) -> list[Option]:
    found = search.found
    options = [option for option in found if option.safe]
    if search.wants_fewer:
        options += fewer_of(plan, found, athlete, first=search.volume_first)
    if not options:
        options += [
            option._replace(distance=BUILD_UP, build_up=True)
            for option in found
            if option.fit.refused is Because.UNKNOWN_HEAVY
        ]
    return [*options, Option(None, REST)]
