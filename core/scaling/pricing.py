"""What one way of a line costs one athlete at one load, with the amount that costs least."""

from collections.abc import Iterator, Sequence
from decimal import Decimal
from math import log
from typing import NamedTuple

from core.movements.values import Hold
from core.scaling.amounts import rounded_to
from core.scaling.athlete import NOTHING, Athlete
from core.scaling.costs import Charge, tenths
from core.scaling.fit import ABOUT, UNCOUNTED, Fit, Task, fit
from core.scaling.gear import Load
from core.scaling.intent import SETS
from core.scaling.orders import Orders
from core.scaling.values import Because
from core.scaling.ways import SAME_LOAD, Grip, LinePlan, Near, Way

# Repetitions come off down to half, and what costs less than half of what was meant is feeble.
HALF = 0.5
FEEBLE = -log(HALF)
# Where an athlete should do less than that of whatever there is, so much is better than a rest (estimate).
LEAST_PART = 1 / 3
FAR_FEWER = -log(LEAST_PART)
# 35 lb stand in for 16 kg, 24 kg for 22.5: so near to the written load the movement is as good as written (estimate).
NEAR_LOAD = 0.08
# A share of a maximum is met as nearly as a bar's small plates allow.
NEAR_A_SHARE = 0.05

# Instead of the few repetitions of a heavy set: eight to fifteen hard ones (common practice, no source), but for what
# is nearly as heavy.
NEARLY = 0.8
FEWEST_LIGHT, MOST_LIGHT = 8, 15
# Whoever goes easy does no heavy single, but so many easy ones.
FEW_EASY = 5
HARD_SET = 0.7

# Whose resistance nobody knows in kilos: it is neither nothing in the hands, nor ever too light.
RESISTS = frozenset({"band"})

Bill = tuple[Charge, ...]


class Option(NamedTuple):
    """One way, load, height and amount, and what they cost. `way` None is rest.

    `load` is per implement, of which `hold` says how many. `part`: of the written amount, below 1 where repetitions
    were taken off, above it where some were added. `build_up`: no amount is prescribed, the athlete feels their way
    up. `exact`: nothing but the amount differs from what was written. `bill`: what `cost` is made of.
    """

    way: Way | None
    cost: int
    bill: Bill = ()
    fit: Fit = UNCOUNTED
    hold: Hold | None = None
    load: Load | None = None
    support: str | None = None
    height_cm: Decimal | None = None
    moved_kg: float | None = None
    part: float = 1.0
    build_up: bool = False
    exact: bool = False
    other: bool = False

    @property
    def implement(self) -> str | None:
        """What is held, else what is leant on."""
        return self.hold.implement if self.hold else self.support

    @property
    def held(self) -> tuple[str, int, float] | None:
        """What is in the hands: taking up another is a change of implement."""
        if self.hold is None or self.load is None:
            return None
        return self.hold.implement, self.hold.count, self.load.value

    @property
    def thing(self) -> int | None:
        """The adjustable or fillable that it takes."""
        return None if self.load is None else self.load.thing

    @property
    def safe(self) -> bool:
        return self.way is not None and self.fit.refused is None and not self.build_up


class Work(NamedTuple):
    """One way of a line as one athlete would do it.

    `own_kg`: what is moved without a load; `meant_kg`: the written load, for them.
    `charges`: what it costs them at any load. `is_hard`: being too light counts. `volume_first`: fewer of what is
    written are as near as all of it.
    """

    plan: LinePlan
    way: Way
    athlete: Athlete
    task: Task | None
    own_kg: float
    meant_kg: float | None
    charges: tuple[Charge, ...]
    support: str | None
    height_cm: Decimal | None
    is_hard: bool
    volume_first: bool

    def moved_kg(self, grip: Grip | None, load: Load | None) -> float:
        return self.own_kg if grip is None or load is None else self.own_kg + grip.per_kg * load.value


def work_of(plan: LinePlan, way: Way, athlete: Athlete, orders: Orders) -> Work:
    """One way of a line as this athlete would do it."""
    thing, height, _ = athlete.support(way.variant) if way.needs else NOTHING
    return Work(
        plan,
        way,
        athlete,
        athlete.task(plan, way),
        athlete.own_kg(way),
        athlete.meant_kg(plan),
        (*way.charges, *_of_the_day(plan, way, athlete)),
        thing,
        height,
        athlete.should_be_hard(plan, way) and not RESISTS.intersection(way.variant.things),
        orders.volume_first,
    )


def at_share(plan: LinePlan, option: Option, athlete: Athlete, share: float) -> Option:
    """The same with a share of the written amount."""
    assert option.way is not None
    task = athlete.task(plan, option.way)
    fitting = UNCOUNTED if task is None else fit(task, option.moved_kg or 0.0, share)
    return option._replace(part=share, fit=fitting)


class _Lift(NamedTuple):
    """A way at one load. `exact`: as written; `light_set`: many of it, instead of the few of a heavy set."""

    work: Work
    grip: Grip | None
    load: Load | None
    moved_kg: float
    exact: bool
    light_set: bool
    task: Task | None


def best_of(work: Work, grip: Grip | None, load: Load | None) -> Option | None:
    """The cheapest amount of it; where nothing shows how much is safe, none is named. None where none is safe."""
    lift = _lift(work, grip, load)
    if lift.task is None:
        return _option(lift, UNCOUNTED, _of_load(lift), 1.0)
    whole = fit(lift.task, lift.moved_kg)
    if whole.refused is Because.UNKNOWN_HEAVY:
        return _build_up(lift, whole) if work.way.near is Near.WRITTEN else None
    best: tuple[int, float, Fit, list[Charge]] | None = None
    for part in _parts(lift, whole):
        fitting = whole if part == 1 else fit(lift.task, lift.moved_kg, part)
        if fitting.refused is None:
            charges = [*_of_effort(lift, fitting), *_of_amount(lift, fitting, part)]
            cost = sum(charge.points for charge in charges)
            if best is None or cost < best[0]:
                best = cost, part, fitting, charges
    if best is None:
        return None
    _, part, fitting, charges = best
    return _option(lift, fitting, [*_of_load(lift), *charges], part)


def _lift(work: Work, grip: Grip | None, load: Load | None) -> _Lift:
    written = work.way.near is Near.WRITTEN
    exact = written and (grip is None or load is None or _is_meant(work, grip, load))
    task = work.task
    light_set = work.plan.heavy and work.is_hard and work.way.counts_reps and not exact
    light_set = light_set and not (work.plan.works_up and grip is not None)
    if light_set and task is not None and not _is_nearly(work, grip, load):
        light_set = HARD_SET * task.ability.sure_and_median(work.moved_kg(grip, load))[0] > task.set_amount
        task = task._replace(window=SETS) if light_set else task
    else:
        light_set = False
    return _Lift(work, grip, load, work.moved_kg(grip, load), exact, light_set, task)


def _option(
    lift: _Lift, fitting: Fit, charges: Sequence[Charge], part: float, *, build_up: bool = False
) -> Option:
    work, grip = lift.work, lift.grip
    bill = tuple([charge for charge in (*work.charges, *charges) if charge.points])
    return Option(
        work.way,
        sum([charge.points for charge in bill]),
        bill,
        fitting,
        grip.hold if grip else None,
        lift.load,
        work.support,
        work.height_cm,
        lift.moved_kg,
        part,
        build_up,
        lift.exact,
        grip is not None and grip.other,
    )


def _build_up(lift: _Lift, whole: Fit) -> Option:
    charge = Charge("build_up", lift.work.plan.costs.build_up)
    return _option(lift, whole, [*_of_load(lift), charge], 1.0, build_up=True)


def _is_meant(work: Work, grip: Grip, load: Load) -> bool:
    """Whether this is what is written, as near as a rack comes to it; any load is where none is written."""
    if grip.other:
        return False
    near = SAME_LOAD if work.plan.line.loads_kg else NEAR_A_SHARE
    return work.meant_kg is None or abs(load.value - work.meant_kg) <= near * work.meant_kg


def _is_nearly(work: Work, grip: Grip | None, load: Load | None) -> bool:
    """Whether the same movement is done at nearly the load that is written."""
    if grip is None or load is None or grip.meant is None:
        return False
    return work.meant_kg is None or load.value >= NEARLY * grip.meant * work.meant_kg


def _of_the_day(plan: LinePlan, way: Way, athlete: Athlete) -> Iterator[Charge]:
    if athlete.is_out_of_reach(plan, way):
        yield Charge("breathless", plan.costs.breathless)
    if athlete.is_make_believe(plan, way):
        yield Charge("make_believe", plan.costs.make_believe)
    if athlete.sits and not way.variant.seated and way.near is not Near.WRITTEN:
        yield Charge("off_the_seat", plan.costs.off_the_seat)
    if way.kin.k is None and (lost := athlete.lost_breath(plan, way)) > FEEBLE:
        yield Charge("light", plan.costs.light * tenths(lost - FEEBLE))
    if plan.loaded and not way.grips and not RESISTS.intersection(way.variant.things):
        yield Charge("empty_handed", plan.costs.empty_handed)


def _of_load(lift: _Lift) -> list[Charge]:
    """What a load costs beside the written one."""
    work, grip, load = lift.work, lift.grip, lift.load
    if grip is None or load is None:
        return []
    charges = list(grip.charges)
    if work.meant_kg is None or work.athlete.is_forgiven(work.way):
        return charges
    if grip.meant is None:
        return charges if lift.light_set else [*charges, *_of_other_kilos(work, grip, load)]
    costs, meant = work.plan.costs, grip.meant * work.meant_kg
    if load.value == meant:
        return charges
    log_ratio = log(load.value / meant)
    if abs(log_ratio) <= NEAR_LOAD:
        charges.append(Charge("inexact", costs.inexact))
    elif log_ratio > 0:
        charges.append(Charge("heavier", costs.heavier * tenths(log_ratio)))
    elif lift.light_set:
        # Effort says what light things are worth where many of them are done.
        charges.append(Charge("lighter", min(costs.lighter * tenths(-log_ratio), costs.step)))
    else:
        charges.append(Charge("lighter", costs.lighter * tenths(-log_ratio)))
        charges.append(Charge("half_the_kilos", costs.half_the_kilos if load.value < HALF * meant else 0))
    return charges


def _of_other_kilos(work: Work, grip: Grip, load: Load) -> Iterator[Charge]:
    """What is in the hands in another movement is compared, too: nobody throws a heavy bag for a light ball."""
    hold = work.plan.hold
    if work.meant_kg is None or hold is None:
        return
    ratio = load.value * grip.hold.count / (work.meant_kg * hold.count)
    if ratio > 1:
        yield Charge("heavier", work.plan.costs.heavier * tenths(log(ratio)))
    elif work.is_hard and ratio < HALF / (2 if work.way.movement.sides_of(work.way.variant) == "one" else 1):
        yield Charge("half_the_kilos", work.plan.costs.half_the_kilos)


def _of_effort(lift: _Lift, fitting: Fit) -> Iterator[Charge]:
    """What it costs that a set is harder or lighter than meant.

    What is written is never too light for the choice, and nothing is for whoever should go easy.
    """
    costs = lift.work.plan.costs
    if fitting.heavy > ABOUT:
        yield Charge("hard", costs.hard * tenths(fitting.heavy - ABOUT))
    if fitting.light > ABOUT and lift.work.is_hard and (lift.work.plan.works_up or not lift.exact):
        light = costs.light * tenths(fitting.light - ABOUT)
        # Where the heaviest is looked for, it is looked for among what is there, however light that is.
        yield Charge("light", min(light, costs.other_implement) if lift.exact else light)
        yield Charge("feeble", costs.feeble if fitting.light > FEEBLE and not lift.exact else 0)


def _of_amount(lift: _Lift, fitting: Fit, part: float) -> Iterator[Charge]:
    """What it costs that there are fewer or more than written; of what is light, that there are few."""
    work, costs = lift.work, lift.work.plan.costs
    if lift.light_set:
        few = (work.way.amount or 0) * part < FEWEST_LIGHT and fitting.light > 0
        yield Charge("few_of_light", costs.few_of_light if few else 0)
    elif part < 1 and not (work.volume_first and lift.exact):
        yield Charge("fewer", costs.fewer * tenths(min(-log(part), FAR_FEWER)))
    elif part > 1 and work.is_hard:
        yield Charge("more", costs.more * tenths(log(part)))
    elif part == 1 and work.plan.heavy and not work.is_hard:
        yield Charge("few_of_light", costs.few_of_light if (work.way.amount or 0) < FEW_EASY else 0)


def _parts(lift: _Lift, whole: Fit) -> Iterator[float]:
    """The shares of the amount that may be best: all of it, as many as fit, half, a third; or more of what is light."""
    yield 1.0
    work, task = lift.work, lift.task
    amount = work.way.amount
    if task is None or not amount:
        return
    if lift.light_set:
        yield _of_a_light_set(task, whole, amount)
    elif whole.light > ABOUT:
        if work.is_hard and not lift.exact and (work.plan.loaded or whole.light > FEEBLE):
            yield from _more(lift, task, whole, amount)
    elif whole.heavy > ABOUT or whole.refused is not None:
        yield from _fewer(work.way, task, whole, amount)
    elif work.plan.heavy and amount < FEW_EASY and task.light_duty:
        yield FEW_EASY / amount


def _of_a_light_set(task: Task, whole: Fit, amount: float) -> float:
    """Eight to fifteen hard ones, or as many as are hard of what is hard by itself."""
    hard = round(HARD_SET * whole.cautious / task.set_amount * amount)
    return min(max(hard, 1), MOST_LIGHT) / amount


def _more(lift: _Lift, task: Task, whole: Fit, amount: float) -> Iterator[float]:
    if amount not in {lift.work.plan.line.amount, lift.work.plan.ways[0].amount}:
        return
    enough = min(task.window.low * whole.cautious / task.set_amount, lift.work.plan.most_more)
    more = _rounded(amount * enough, _step(lift.work.way), up=False)
    if more > amount:
        yield more / amount


def _fewer(way: Way, task: Task, whole: Fit, amount: float) -> Iterator[float]:
    fits, step = task.window.high * whole.cautious / task.set_amount, _step(way)
    fewer = {_rounded(amount * part, step, up=True) for part in (HALF, LEAST_PART)}
    fewer.add(_rounded(amount * fits, step, up=False))
    yield from (one / amount for one in sorted(fewer) if 0 < one < amount)


def _step(way: Way) -> int:
    return rounded_to(way.unit, (way.movement, way.variant), per_side=way.per_side)


def _rounded(amount: float, step: float, *, up: bool) -> float:
    whole = amount / step
    return step * (int(whole + 1 - 1e-9) if up else int(whole + 1e-9))
