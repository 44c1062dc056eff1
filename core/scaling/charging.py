"""What is charged by the table of costs: for whoever does it, for a load, for how hard it is, for an amount."""

from collections.abc import Iterator
from math import inf, log

from core.movements.values import Demand
from core.scaling.athlete import Athlete
from core.scaling.barriers import flags
from core.scaling.costs import Charge, tenths
from core.scaling.fit import ABOUT, Fit
from core.scaling.gear import Load
from core.scaling.ways import Grip, LinePlan, Near, Way
from core.scaling.works import FEEBLE, FEW_EASY, FEWEST_LIGHT, HALF, Lift, is_resisted

# 35 lb stand in for 16 kg, 24 kg for 22.5: so near to the written load the movement is as good as written (estimate).
NEAR_LOAD = 0.08

# Whoever goes easy does so few of it, if they must, as soon as another movement (estimate).
FAR_FEWER = log(3)

# Not added to a line for want of something nearer.
RISKS = flags({Demand.OVERHEAD, Demand.FAST_LOAD, Demand.JUMPING, Demand.UPSIDE_DOWN})
JUMP, IMPACT = flags({Demand.JUMPING}), flags({Demand.IMPACT})
# Of these, those that gates of the body keep from whoever isn't ready.
USED_TO = flags({Demand.JUMPING, Demand.UPSIDE_DOWN})

# Somebody's furniture, and what stands in the street.
AT_HOME = frozenset({"table", "chair", "stairs", "seat"})


def of_the_day(plan: LinePlan, way: Way, athlete: Athlete) -> Iterator[Charge]:
    if athlete.is_out_of_reach(plan, way):
        yield Charge("breathless", plan.costs.breathless)
    if athlete.is_make_believe(plan, way):
        yield Charge("make_believe", plan.costs.make_believe)
    if risk := way.demands & RISKS & ~_risked(plan.ways[0]):
        jumps = not risk & ~USED_TO and athlete.is_used_to_jumps
        yield Charge("added_risk", 0 if jumps else plan.costs.added_risk)
        yield Charge("added_jump", plan.costs.added_jump if jumps else 0)
    if plan.pulls and _is_makeshift(way):
        yield Charge("makeshift", plan.costs.makeshift)
    if athlete.sits and not way.variant.seated and way.near is not Near.WRITTEN:
        yield Charge("off_the_seat", plan.costs.off_the_seat)
    if way.kin.k is None and (lost := athlete.lost_breath(plan, way)) > FEEBLE:
        yield Charge("light", plan.costs.light * tenths(lost - FEEBLE))
    if plan.loaded and not way.grips:
        band = is_resisted(way)
        yield Charge(
            "improvised" if band else "empty_handed",
            plan.costs.improvised if band else plan.costs.empty_handed,
        )


def _risked(written: Way) -> int:
    """The risks that are in what the coach wrote: every landing, a running step too, is as much as a small jump."""
    return written.demands | JUMP if written.demands & IMPACT else written.demands


def _is_makeshift(way: Way) -> bool:
    return not way.grips and all(not need.isdisjoint(AT_HOME) for need in way.needs)


def of_load(lift: Lift) -> list[Charge]:
    """What a load costs beside the written one."""
    work, grip, load = lift.work, lift.grip, lift.load
    if grip is None or load is None:
        return []
    charges = list(grip.charges)
    if work.meant_kg is None or work.athlete.is_forgiven(work.way):
        return charges
    if grip.meant is None:
        return [*charges, *_of_other_kilos(lift, grip, load)]
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


def _of_other_kilos(lift: Lift, grip: Grip, load: Load) -> Iterator[Charge]:
    """What is in the hands in another movement is compared, too: nobody throws a heavy bag for a light ball."""
    work, hold = lift.work, lift.work.plan.hold
    if work.meant_kg is None or hold is None:
        return
    costs, ratio = work.plan.costs, load.value * grip.hold.count / (work.meant_kg * hold.count)
    if ratio > 1:
        yield Charge("heavier", costs.heavier * tenths(log(ratio)))
        return
    one_side = 2 if work.way.movement.sides_of(work.way.variant) == "one" else 1
    if lift.light_set:
        yield Charge("lighter", min(costs.lighter * tenths(-log(min(1, ratio * one_side))), costs.step))
    elif work.is_hard and ratio * one_side < HALF:
        yield Charge("half_the_kilos", costs.half_the_kilos)


def of_effort(lift: Lift, fitting: Fit) -> Iterator[Charge]:
    """What it costs that a set is harder or lighter than meant.

    What is written is never too light for the choice, and nothing is for whoever should go easy; an easier way of the
    same movement without a load is never feeble, and where no load is written light counts half.
    """
    costs = lift.work.plan.costs
    if fitting.heavy > ABOUT:
        yield Charge("hard", costs.hard * tenths(fitting.heavy - ABOUT))
    if fitting.light > ABOUT and lift.work.is_hard and (lift.work.plan.works_up or not lift.as_meant):
        light = costs.light * tenths(fitting.light - ABOUT)
        light = light if lift.work.plan.loaded else light // 2
        # Where the heaviest is looked for, it is looked for among what is there, however light that is.
        yield Charge("light", min(light, costs.other_implement) if lift.as_meant else light)
        eased = lift.work.way.near <= Near.VARIANT and not lift.work.plan.loaded
        yield Charge("feeble", costs.feeble if fitting.light > FEEBLE and not (lift.as_meant or eased) else 0)


def of_amount(lift: Lift, fitting: Fit, part: float) -> Iterator[Charge]:
    """What it costs that there are fewer or more than written; of what is light, that there are few."""
    work, costs = lift.work, lift.work.plan.costs
    if lift.light_set:
        few = (work.way.amount or 0) * part < FEWEST_LIGHT and fitting.light > 0
        yield Charge("few_of_light", costs.few_of_light if few else 0)
    elif part < 1 and not (work.volume_first and lift.as_meant):
        far = FAR_FEWER if lift.task is not None and lift.task.light_duty else inf
        yield Charge("fewer", costs.fewer * tenths(min(-log(part), far)))
    elif part > 1 and work.is_hard:
        yield Charge("more", costs.more * tenths(log(part)))
    elif work.plan.heavy and (not work.is_hard or work.athlete.is_new):
        least = FEW_EASY if lift.nearly else FEWEST_LIGHT
        few = round((work.way.amount or 0) * part) < least
        yield Charge("few_of_light", costs.few_of_light if few else 0)
