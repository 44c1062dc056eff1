"""What one way of a line costs one athlete at one load, with the amount that costs least."""

from collections.abc import Iterator, Sequence
from math import inf
from typing import NamedTuple

from core.movements.values import Demand
from core.scaling.athlete import Athlete
from core.scaling.by_person import of_the_day
from core.scaling.careful import is_for_speed
from core.scaling.charging import chooses_its_load, of_amount, of_effort, of_load
from core.scaling.costs import Charge
from core.scaling.enough import (
    careful_of,
    enough_of,
    few_of,
    goes_often,
    least_of,
    longest_of,
    most_new,
    most_of,
    most_shown,
    share_at_once,
)
from core.scaling.fit import ABOUT, UNCOUNTED, Fit, Task, fit, likely
from core.scaling.gear import Load
from core.scaling.heaviest import meant_kg, sure_kg
from core.scaling.intent import QUALITY
from core.scaling.orders import Orders
from core.scaling.support import NOTHING
from core.scaling.values import Because
from core.scaling.ways import SAME_LOAD, Grip, LinePlan, Near, Way
from core.scaling.works import (
    FEEBLE,
    FEW_EASY,
    FEWEST_LIGHT,
    HALF,
    MOST_FRESH,
    MOST_LIGHT,
    SOME_EASY,
    Lift,
    Option,
    Work,
)

# Where an athlete should do less than half of whatever there is, so much is better than a rest (estimate).
LEAST_PART = 1 / 3
# A share of a maximum is met as nearly as a bar's small plates allow.
NEAR_A_SHARE = 0.05
# So near to what is meant it is as hard or light as meant.
ABOUT_MEANT = 0.08

# What is nearly as heavy as a heavy set: no more of it are done than written. For whoever goes easy that is less
# (estimates).
NEARLY = 0.8
NEARLY_EASY = 0.35
SOME_WEIGHT = 0.5
HARD_SET = 0.8
# Less than so much of all that goes is no heavy set, however short the rest (estimate).
SOME_OF_ALL = 0.35
# What is done for speed is hardly made up by number (estimate).
FAST_MORE = 1.5
# What is worked up to is at least so near to all that goes; else so many are done of it as are hard.
WORKED_UP_TO = 0.3
# With a load that nobody wrote the longest set of a ladder goes without a break, by what they showed (estimate).
OWN_RUNG = 0.85


def work_of(plan: LinePlan, way: Way, athlete: Athlete, orders: Orders, most: float = inf) -> Work | None:
    """One way of a line as this athlete would do it; None where it costs more than `most` at any load."""
    charges = [*way.charges, *(charge for charge in of_the_day(plan, way, athlete) if charge.points)]
    least = sum([charge.points for charge in charges])
    if least > most:
        return None
    thing, height, _ = athlete.support(way.variant) if way.needs else NOTHING
    return Work(
        plan,
        way,
        athlete,
        None if way.near is not Near.WRITTEN and way.resists else athlete.task(plan, way),
        athlete.own_kg(way),
        meant_kg(athlete, plan),
        tuple(charges),
        least,
        thing,
        height,
        athlete.should_be_hard(plan, way) and not way.resists,
        orders.volume_first,
        way.near is Near.VARIANT and athlete.spares_a_joint(plan.ways[0]),
        orders.heavier and not athlete.goes_no_heavier,
    )


def at_share(plan: LinePlan, option: Option, athlete: Athlete, share: float) -> Option:
    """The same with a share of the written amount."""
    assert option.way is not None
    task = athlete.task(plan, option.way)
    fitting = UNCOUNTED if task is None else fit(task, option.moved_kg or 0.0, share)
    return option._replace(part=share, fit=fitting)


class Dose(NamedTuple):
    """A share of the written amount that is safe at one load, and what it costs by itself."""

    part: float
    fit: Fit
    charges: Sequence[Charge] = ()
    cost: int = 0
    build_up: bool = False


def best_of(lift: Lift) -> Option | None:
    """The cheapest amount of it; where nothing shows how much is safe, none is named. None where none is safe."""
    best = None
    for dose in _doses(lift):
        if best is None or dose.cost < best.cost:
            best = dose
        if not dose.cost:
            break
    return None if best is None else _option(lift, best)


def every_of(lift: Lift) -> Iterator[Option]:
    """Each amount of it that is safe, the whole first."""
    return (_option(lift, dose) for dose in _doses(lift))


def _doses(lift: Lift) -> Iterator[Dose]:
    work, task = lift.work, lift.task
    if task is None:
        most = most_shown(lift) / work.way.amount if work.way.amount and work.way.resists else inf
        yield Dose(min(_of_a_band(work), most), UNCOUNTED)
        return
    whole = fit(task, lift.moved_kg)
    bounded = _bounded(lift, whole)
    if bounded is not None:
        yield from bounded
        return
    if whole.refused is Because.UNKNOWN_HEAVY:
        if work.way.near is Near.WRITTEN:
            points = work.plan.costs.build_up
            yield Dose(1.0, whole, (Charge("build_up", points),), points, build_up=True)
        return
    for part in _parts(lift, whole):
        fitting = whole if part == 1 else fit(task, lift.moved_kg, part)
        if fitting.refused is None:
            charges = _charges(lift, fitting, part)
            done = part if part <= 1 else min(part, longest_of(work, light_set=lift.light_set))
            yield _dose(done, fitting if done == part else fit(task, lift.moved_kg, done), charges)


def _bounded(lift: Lift, whole: Fit) -> tuple[Dose, ...] | None:
    """The one amount that a rule leaves them, none where not even that is safe; None where no rule asks for less.

    Whoever isn't used to it does less of the same way that they would do all of.
    """
    assert lift.task is not None
    safe, enough, few = most_of(lift.work), enough_of(lift.work), few_of(lift.work)
    part, least = min(safe, enough, careful_of(lift, whole), few), least_of(lift.work)
    brief = whole if part == 1 else fit(lift.task, lift.moved_kg, part)
    if brief.light > 0 and part < least:
        part, brief = least, fit(lift.task, lift.moved_kg, least)
    if part == 1:
        return None
    if brief.refused is not None:
        return ()
    own = part >= HALF and lift.work.athlete.capacity.has_tried(lift.work.way.id)
    charges = list(of_effort(lift, whole if safe == few == 1 and not own else brief))
    return (_dose(part, brief, [*charges, *(of_amount(lift, brief, part) if part == few else ())]),)


def _charges(lift: Lift, fitting: Fit, part: float) -> list[Charge]:
    charges: list[Charge] = []
    if fitting.heavy > (0.0 if chooses_its_load(lift) else lift.about(fitting)) or fitting.light > ABOUT:
        charges += of_effort(lift, fitting)
    if part != 1 or lift.light_set or lift.work.plan.heavy:
        charges += of_amount(lift, fitting, part)
    return charges


def _dose(part: float, fitting: Fit, charges: Sequence[Charge]) -> Dose:
    return Dose(part, fitting, charges, sum([charge.points for charge in charges]))


def _of_a_band(work: Work) -> float:
    """How much of the amount is done against a band, as hard as it is pulled: as many as of what is light.

    For oneself, pulled up, or where there is a rest.
    """
    amount = work.way.amount
    if not amount or not work.way.resists or work.way.near is Near.WRITTEN or not work.way.counts_reps:
        return 1.0
    if work.plan.heavy:
        return max(1.0, MOST_LIGHT / amount)
    plan = work.plan
    for_pull_ups = plan.pulls and not plan.loaded
    in_rests = not plan.breathless and (plan.pulls or not plan.loaded)
    more = (for_pull_ups or in_rests) and work.way.near > Near.VARIANT
    return round(amount * min(work.plan.most_more, longest_of(work))) / amount if more else 1.0


def lift_of(work: Work, grip: Grip | None, load: Load | None) -> Lift:
    """A way at one load, with what that costs at any amount."""
    written, task, moved = work.way.near is Near.WRITTEN, work.task, work.moved_kg(grip, load)
    exact = written and (grip is None or load is None or _is_meant(work, grip, load))
    as_meant = exact or (
        written and grip is not None and load is not None and _is_meant(work, grip, load, ABOUT_MEANT)
    )
    nearly = work.plan.heavy and _is_heavy_enough(work, grip, load, exact=exact)
    light_set = False
    if work.plan.heavy and work.is_hard and work.way.counts_reps and task is not None and not nearly:
        light_set = _is_light_set(task, moved)
        task = task._replace(window=QUALITY if is_for_speed(work.way) else work.plan.hard_set)
    exact, as_meant = exact and not light_set, as_meant and not light_set
    if work.plan.again and grip and task is not None and not as_meant and work.is_shown:
        task = task._replace(window=task.window.under(OWN_RUNG))
    more = of_load(work, grip, load, light_set=light_set)
    least = work.least + sum([charge.points for charge in more])
    charges = (*work.charges, *more)
    return Lift(work, grip, load, moved, exact, as_meant, light_set, nearly, task, charges, least)


def _option(lift: Lift, dose: Dose) -> Option:
    work, grip = lift.work, lift.grip
    return Option(
        work.way,
        lift.least + dose.cost,
        (*lift.charges, *[charge for charge in dose.charges if charge.points]),
        dose.fit,
        grip.hold if grip else None,
        lift.load,
        work.support,
        work.height_cm,
        lift.moved_kg,
        dose.part,
        dose.build_up,
        lift.exact,
        grip is not None and grip.other,
        grip is not None and not lift.light_set and not dose.part > 1 and _can_work_up(work, grip),
    )


def _is_meant(work: Work, grip: Grip, load: Load, near: float | None = None) -> bool:
    """Whether this is what is written, as near as a rack comes to it; any load is where none is written."""
    if grip.other:
        return False
    if near is None:
        near = SAME_LOAD if work.plan.line.loads_kg else NEAR_A_SHARE
    return work.meant_kg is None or abs(load.value - work.meant_kg) <= near * work.meant_kg


def _is_heavy_enough(work: Work, grip: Grip | None, load: Load | None, *, exact: bool) -> bool:
    """Whether a heavy set is one with this: near the written load, or one that can be worked up to."""
    if _is_unseen(work, grip) and _is_light_set(work.task, work.moved_kg(grip, load)):
        return False
    chooses = work.is_hard and work.meant_kg is None and grip is not None and grip.other
    finds_out = work.plan.works_up or chooses
    if finds_out and grip is not None and work.task is not None:
        heaviest = work.moved_kg(grip, work.athlete.gear.loads(*grip.held)[0])
        return work.task.set_amount >= WORKED_UP_TO * work.task.ability.unbroken(heaviest)
    if not work.is_hard and work.meant_kg is None:
        return grip is not None and not grip.other and _is_some_weight(work, grip, load)
    if _is_feeble(work, grip, load):
        return False
    if exact or not work.is_hard:
        return exact or _is_nearly(work, grip, load, NEARLY_EASY)
    return _is_nearly(work, grip, load, NEARLY) and not _is_easy(work, grip, load)


def _is_some_weight(work: Work, grip: Grip | None, load: Load | None) -> bool:
    """Whether a few of it are a set for whoever goes easy, where no load is written: not of what is next to nothing."""
    if grip is None or load is None or grip.meant is None or not work.way.set_amount:
        return False
    sure = sure_kg(work.athlete, work.way, work.way.set_amount)
    return load.value * grip.per_kg >= SOME_WEIGHT * sure


def _is_light_set(task: Task | None, moved_kg: float) -> bool:
    """Whether so many of it go that a few are no heavy set."""
    return task is not None and HARD_SET * likely(fit(task, moved_kg)) > task.set_amount


def _is_unseen(work: Work, grip: Grip | None) -> bool:
    """Whether nobody wrote a load, it isn't what the coach means, and they never showed anything heavy."""
    if work.meant_kg is not None or work.task is None or grip is None or work.task.ability.heavy_shown:
        return False
    if work.plan.works_up:
        return False
    return grip.other or work.way.near is not Near.WRITTEN


def _is_feeble(work: Work, grip: Grip | None, load: Load | None) -> bool:
    """Whether a set with a weight that nobody wrote is less than half of what is meant."""
    if work.task is None or load is None or work.meant_kg is not None or work.plan.works_up:
        return False
    return fit(work.task, work.moved_kg(grip, load)).light > FEEBLE


def _is_easy(work: Work, grip: Grip | None, load: Load | None) -> bool:
    """Whether a set of so many is less than what is meant, though it need not be, so that more of it are done."""
    if work.task is None or work.spares:
        return False
    found = fit(work.task, work.moved_kg(grip, load))
    stands_in = work.way.near is not Near.WRITTEN and work.plan.line.load_rule is None
    return found.light > ABOUT or (stands_in and (found.cost or 1.0) < SOME_OF_ALL)


def _can_work_up(work: Work, grip: Grip) -> bool:
    """Whether the load is what is looked for, and there are several to look among."""
    return work.plan.works_up and len(work.athlete.gear.loads(*grip.held)) > 1


def _is_nearly(work: Work, grip: Grip | None, load: Load | None, enough: float) -> bool:
    """Whether the same movement is done at nearly the load that is written."""
    if grip is None or load is None or grip.meant is None:
        return False
    return work.meant_kg is None or load.value >= enough * grip.meant * work.meant_kg


def _parts(lift: Lift, whole: Fit) -> Iterator[float]:
    """The shares of the amount that may be best: all of it, as many as fit, half, a third; or more of what is light."""
    yield 1.0
    work, task = lift.work, lift.task
    amount = work.way.amount
    if task is None or not amount:
        return
    if work.plan.heavy and (task.light_duty or work.athlete.is_new):
        some = FEWEST_LIGHT if work.athlete.is_sore(work.way) else SOME_EASY
        new = max(most_new(lift, whole), FEW_EASY)  # so few would be done had the coach written them
        most = min(most_shown(lift), new, MOST_FRESH if is_for_speed(work.way) else inf)
        most = min(most, FEWEST_LIGHT) if Demand.OVERHEAD in work.way.variant.demands else most
        yield from (few / amount for few in (FEW_EASY, some, FEWEST_LIGHT) if amount < few <= most)
    if lift.light_set:
        yield _of_a_light_set(lift, task, whole, amount)
    elif whole.light > ABOUT:
        if (
            work.is_hard
            and not (lift.exact or _has_its_kilos(lift))
            and (work.plan.loaded or work.plan.pulls or whole.light > FEEBLE)
            and not work.athlete.does_no_more
        ):
            yield from _more(lift, task, whole, amount)
    elif whole.heavy > lift.about(whole) or whole.refused is not None:
        yield from _fewer(work.way, task, whole, amount)


def _has_its_kilos(lift: Lift) -> bool:
    """Whether as many kilos as are written are in the hands, whatever is done with them."""
    work, grip, load = lift.work, lift.grip, lift.load
    if grip is None or load is None or work.meant_kg is None or work.plan.hold is None:
        return False
    return load.value * grip.hold.count >= (1 - ABOUT_MEANT) * work.meant_kg * work.plan.hold.count


def _of_a_light_set(lift: Lift, task: Task, whole: Fit, amount: float) -> float:
    """Eight to fifteen hard ones, or as many as are hard of what is hard by itself; of jumps a few, fresh.

    Ten are enough for whoever isn't used to it, and overhead eight for whoever drives with their shoulders.
    """
    way = lift.work.way
    share = min(HARD_SET, lift.work.plan.hard_set.high, share_at_once(lift.work.athlete))
    hard = round(share * likely(whole) / task.set_amount * amount)
    hard = max(hard, FEWEST_LIGHT) if goes_often(lift, whole) and not lift.work.athlete.takes_care else hard
    overhead = lift.work.athlete.sits and Demand.OVERHEAD in way.variant.demands
    few = SOME_EASY if lift.work.athlete.is_unused else FEWEST_LIGHT if overhead else MOST_LIGHT
    most = MOST_FRESH if is_for_speed(way) else few
    return min(max(hard, 1), most, most_shown(lift), most_new(lift, whole)) / amount


def _more(lift: Lift, task: Task, whole: Fit, amount: float) -> Iterator[float]:
    if amount not in {lift.work.plan.line.amount, lift.work.plan.ways[0].amount}:
        return
    most = FAST_MORE if is_for_speed(lift.work.way) else inf
    enough = min(task.window.low * whole.cautious / task.set_amount, lift.work.plan.most_more, most)
    more = _rounded(amount * enough, lift.work.way.step, up=False)
    if more > amount:
        yield more / amount


def _fewer(way: Way, task: Task, whole: Fit, amount: float) -> Iterator[float]:
    fits, step = task.window.high * whole.cautious / task.set_amount, way.step
    fewer = {_rounded(amount * part, step, up=True) for part in (HALF, LEAST_PART)}
    fewer.add(_rounded(amount * fits, step, up=False))
    yield from (one / amount for one in sorted(fewer) if 0 < one < amount)


def _rounded(amount: float, step: float, *, up: bool) -> float:
    whole = amount / step
    return step * (int(whole + 1 - 1e-9) if up else int(whole + 1e-9))
