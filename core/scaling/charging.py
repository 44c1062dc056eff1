"""What is charged by the table of costs for a load, for how hard it is, for an amount; for who does it, `by_person`."""

from collections.abc import Iterator
from math import inf, log

from core.movements.values import Pattern
from core.scaling.careful import QUICK, is_for_speed
from core.scaling.costs import Charge, tenths
from core.scaling.enough import goes_often, most_new, most_shown
from core.scaling.fit import ABOUT, Fit, fit
from core.scaling.gear import Load
from core.scaling.ways import Grip, Near
from core.scaling.works import FEEBLE, FEW_EASY, FEWEST_LIGHT, HALF, Lift, Work

# 35 lb stand in for 16 kg, 24 kg for 22.5: so near to the written load the movement is as good as written (estimate).
NEAR_LOAD = 0.08

# What is too hard counts so many times where a limit rules out the easier way, so that none is done at the most that
# goes for want of it (estimate).
NOTHING_BELOW = 2

# Where it should be easy, and what they showed says how heavy that is, no more of the kilos is asked for (estimate).
ABOUT_HALF = 0.45

# A skill that they have is broken into two or three sets before it is left (estimate).
SOON_BROKEN = log(3)

# The hips lift so much more than is held in front of the chest (estimate): of their kilos this share counts.
HIPS_LIFT = 1 / 2

# Many of what is light are never farther from a heavy set than so many steps, however light (estimate).
MOST_LIGHTER = 2

# Whoever goes easy does so few of it, if they must, as soon as another movement (estimate).
FAR_FEWER = log(3)

# So little more than their best is written (estimate).
A_LITTLE_MORE = 1.2

# What is done for speed is done fresh, so that a few are enough.
LEAST_FRESH = {Pattern.JUMP: 0, Pattern.LIFT: FEW_EASY}


def is_light_enough(work: Work, grip: Grip, load: Load) -> bool:
    """Whether a load is no more than what is meant, so that a lighter one costs no less."""
    hold = work.plan.hold
    if work.meant_kg is None or (grip.meant is None and hold is None):
        return True
    meant = grip.meant if grip.meant is not None or hold is None else hold.count / grip.hold.count
    return load.value <= (meant or 0.0) * work.meant_kg


def of_load(work: Work, grip: Grip | None, load: Load | None, *, light_set: bool) -> list[Charge]:
    """What a load costs beside the written one; `light_set`: many of what is light, instead of a heavy few."""
    if grip is None or load is None:
        return []
    if work.meant_kg is None or work.athlete.is_forgiven(work.way):
        return list(grip.charges)
    beside = _of_other_kilos if grip.meant is None else _of_kilos
    charges = [*grip.charges, *beside(work, grip, load, light_set=light_set)]
    if _is_light_of_two(work, grip, load):
        charges.append(Charge("one_of_two", work.plan.costs.one_of_two))
    return charges


def _is_light_of_two(work: Work, grip: Grip, load: Load) -> bool:
    """Whether one of two is lifted where both sides are to work at once, and both are no more than written together."""
    hold, written = work.plan.hold, work.plan.ways[0]
    one_sided = written.movement.sides_of(written.variant) == "one" or _sides_at_once(work) > 1
    of_the_hips = work.way.movement.pattern is Pattern.HINGE
    if work.meant_kg is None or hold is None or grip.hold.count > 1 or one_sided or not of_the_hips:
        return False
    ways = (*written.movement.variants, *work.way.movement.variants)
    if not any(one.count > 1 for variant in ways for one in variant.holds):
        return False
    both = work.athlete.gear.loads(grip.hold.implement, 2)
    return 2 * load.value <= hold.count * work.meant_kg and any(one.kg == load.kg for one in both)


def _of_kilos(work: Work, grip: Grip, load: Load, *, light_set: bool) -> Iterator[Charge]:
    """What another load of the same movement costs; of many of what is light effort says what it is worth."""
    assert work.meant_kg is not None
    assert grip.meant is not None
    costs, meant = work.plan.costs, grip.meant * work.meant_kg
    log_ratio = log(load.value / meant)
    if load.value == meant:
        return
    if abs(log_ratio) <= NEAR_LOAD:
        yield Charge("inexact", costs.inexact)
    elif log_ratio > 0:
        yield Charge("heavier", 0 if work.may_go_heavier else costs.heavier * tenths(log_ratio))
    elif light_set:
        yield Charge("lighter", min(costs.lighter * tenths(-log_ratio), MOST_LIGHTER * costs.step))
    else:
        yield Charge("lighter", costs.lighter * tenths(-log_ratio))
        if load.value < grip.enough * meant:
            yield Charge("half_the_kilos", costs.half_the_kilos)


def _of_other_kilos(work: Work, grip: Grip, load: Load, *, light_set: bool) -> Iterator[Charge]:
    """What is in the hands in another movement is compared, too: nobody throws a heavy bag for a light ball.

    Half the kilos are half as bad there.
    """
    hold = work.plan.hold
    if work.meant_kg is None or hold is None:
        return
    costs, ratio = work.plan.costs, load.value * grip.hold.count / (work.meant_kg * hold.count)
    ratio *= HIPS_LIFT if is_lifted_by_hips_instead(work) else 1.0
    if ratio > 1:
        yield Charge("heavier", costs.heavier * tenths(log(ratio)))
        return
    one_side = _sides_at_once(work)
    lighter = costs.lighter * tenths(-log(min(1, ratio * one_side)))
    if light_set:
        yield Charge("lighter", min(lighter, MOST_LIGHTER * costs.step))
    elif work.is_hard:
        yield Charge("lighter", min(lighter, costs.other_count))
        if ratio * one_side < HALF:
            yield Charge("half_the_kilos", costs.half_the_kilos // 2)
    elif (
        ratio < (ABOUT_HALF if work.is_shown else HALF) and work.athlete.gates.is_able and not work.plan.heavy
    ):
        yield Charge("half_the_kilos", costs.half_the_kilos)


def is_lifted_by_hips_instead(work: Work) -> bool:
    """Whether the hips lift from the floor what the line holds up: a deadlift for a goblet squat."""
    held_up = work.plan.ways[0].movement.pattern is Pattern.SQUAT
    lifts = work.way.movement.pattern is Pattern.HINGE and not work.way.demands & QUICK
    return held_up and lifts and not work.athlete.sits


def of_effort(lift: Lift, fitting: Fit) -> Iterator[Charge]:
    """What it costs that a set is harder or lighter than meant: what is written is never too light for the choice."""
    costs, plan = lift.work.plan.costs, lift.work.plan
    if fitting.heavy > lift.about(fitting) and not _is_soon_broken(lift, fitting):
        times = NOTHING_BELOW if lift.work.athlete.is_kept_from_easier(lift.work.way) else 1
        yield Charge("hard", times * costs.hard * tenths(fitting.heavy - lift.about(fitting)))
    elif fitting.heavy > 0 and chooses_its_load(lift):
        yield Charge("a_little_hard", costs.a_little_hard)
    asked_for_more = plan.works_up or not lift.as_meant or lift.work.may_go_heavier
    if fitting.light > ABOUT and lift.work.is_hard and asked_for_more:
        soft = _should_be_a_heavy_set(lift)
        in_full = soft or lift.work.may_go_heavier
        light = costs.soft * tenths(fitting.light) if in_full else costs.light * tenths(fitting.light - ABOUT)
        light = light if plan.loaded or _should_be_as_hard(lift) else light // 2
        yield Charge("light", int(min(light, _most_for_light(lift))))
        if fitting.light > FEEBLE and not (lift.as_meant or _may_be_feeble(lift)):
            yield Charge("feeble", costs.feeble)
    elif fitting.light > FEEBLE and not lift.as_meant:
        # For whoever goes easy it decides between weights, and between ways of what they have shown; never against a
        # movement.
        if lift.load is not None:
            light = costs.light * (tenths(fitting.light) if plan.heavy else 1)
            yield Charge("light", min(light, costs.step))
        elif lift.work.is_shown:
            yield Charge("light", costs.light * tenths(fitting.light - FEEBLE))


def _is_soon_broken(lift: Lift, fitting: Fit) -> bool:
    """Whether a skill that is written is broken as it comes: no more of it than their best in a row.

    Where they told of it and not how many, what goes in two or three sets.
    """
    way, skills = lift.work.way, lift.work.athlete.capacity.skills
    if not (way.skill and way.near is Near.WRITTEN and way.id in skills) or way.holds:
        return False
    if lift.work.is_shown:
        return fitting.cost is not None and fitting.cost <= 1
    return fitting.heavy <= SOON_BROKEN


def chooses_its_load(lift: Lift) -> bool:
    """Whether nobody wrote how heavy a hard set is, in kilos or as an effort, and no heaviest is looked for.

    What is only believed of somebody is taken cautiously as it is.
    """
    work = lift.work
    told = work.meant_kg is not None or work.plan.line.load_rule is not None
    chosen = lift.load is not None and not told and not work.plan.works_up
    return chosen and work.is_hard and lift.task is not None and lift.task.ability.tested_kg is not None


def _most_for_light(lift: Lift) -> float:
    """Where the heaviest is looked for, it is looked for among what is there, however light that is.

    And whoever isn't used to it leaves no movement because it is light.
    """
    costs, work = lift.work.plan.costs, lift.work
    if lift.as_meant and not work.may_go_heavier:
        return costs.other_implement
    return costs.step if work.athlete.is_unused and work.way.near <= Near.VARIANT else inf


def _should_be_a_heavy_set(lift: Lift) -> bool:
    """Whether many of what is light stand for a heavy set: not where they may be light."""
    return lift.light_set and not (lift.work.athlete.is_unused or _may_be_many_light(lift))


def _may_be_many_light(lift: Lift) -> bool:
    """Whether many of something are done for the sake of a joint, or by whoever is held to a moderate effort."""
    athlete = lift.work.athlete
    return lift.light_set and (
        athlete.spares_a_joint(lift.work.plan.ways[0]) or (athlete.is_held_back and lift.grip is None)
    )


def _should_be_as_hard(lift: Lift) -> bool:
    """Whether light counts in full where no load is written: in a stand-in for whoever trains."""
    return lift.work.way.near > Near.VARIANT and lift.work.athlete.is_trained


def _may_be_feeble(lift: Lift) -> bool:
    """Whether less than half of what is meant is as it should be.

    For a carry, for an easier way of the same without a load, for whoever can't do what ordinary training asks or isn't
    used to it, and for many of something that may be light.
    """
    work = lift.work
    is_carried = work.way.movement.pattern is Pattern.CARRY
    if work.way.near <= Near.VARIANT and (work.athlete.is_unused or is_carried or not work.plan.loaded):
        return True
    return _may_be_many_light(lift) or not (work.athlete.gates.is_able or work.plan.heavy)


def of_amount(lift: Lift, fitting: Fit, part: float) -> Iterator[Charge]:
    """What it costs that there are fewer or more than written; of what is light, that there are few."""
    work, costs = lift.work, lift.work.plan.costs
    if lift.light_set or _is_half_as_heavy(lift):
        least = LEAST_FRESH.get(work.way.movement.pattern, FEWEST_LIGHT)
        safe = max(FEW_EASY, min(most_new(lift, fitting), most_shown(lift)))
        few = (work.way.amount or 0) * part < min(least, safe)
        yield Charge("few_of_light", costs.few_of_light if few and _may_do_more(lift, fitting) else 0)
    elif part < 1 and not (work.volume_first and lift.as_meant):
        far = FAR_FEWER if lift.task is not None and lift.task.light_duty else inf
        fewer = costs.fewer * tenths(min(-log(part), far))
        yield Charge("fewer", fewer // 2 if _is_of_their_best(lift) else fewer)
    elif part > 1 and work.is_hard and not (work.plan.heavy and work.athlete.is_new):
        yield Charge("more", costs.more * tenths(log(part)))
    elif work.plan.heavy and (not work.is_hard or work.athlete.is_new):
        least = FEW_EASY if lift.nearly or is_for_speed(work.way) else FEWEST_LIGHT
        done = round((work.way.amount or 0) * part)
        times = 2 if _would_be_too_much(lift, fitting, least / max(done, 1)) else 1
        yield Charge("few_of_light", costs.few_of_light // times if done < least else 0)


def _is_of_their_best(lift: Lift) -> bool:
    """Whether all of it would come near the best that they told: whoever has eight pull-ups does some of them."""
    whole = None if lift.task is None else fit(lift.task, lift.moved_kg)
    return whole is not None and (whole.cost or 0.0) <= A_LITTLE_MORE and lift.is_near_their_best(whole)


def _would_be_too_much(lift: Lift, fitting: Fit, times: float) -> bool:
    """Whether so many times what is done is more than whoever goes easy may do, and nothing lighter is there."""
    work, grip, load = lift.work, lift.grip, lift.load
    if grip is not None and load is not None and load != work.athlete.gear.loads(*grip.held)[-1]:
        return False
    return lift.task is not None and fitting.cost is not None and times * fitting.cost > lift.task.at_most


def _is_half_as_heavy(lift: Lift) -> bool:
    """Whether it stands for a heavy set with less than half of its kilos, however hard it may be for them."""
    work, grip, load = lift.work, lift.grip, lift.load
    if not (work.plan.heavy and work.is_hard and grip and load and work.plan.hold) or lift.nearly:
        return False
    if work.meant_kg is None:
        return grip.other
    return _sides_at_once(work) * grip.hold.count * load.value < HALF * work.plan.hold.count * work.meant_kg


def _may_do_more(lift: Lift, fitting: Fit) -> bool:
    """Whether more of it would be as well: it is light for them or in the hands, or they are to begin with that."""
    athlete = lift.work.athlete
    light = fitting.light > ABOUT or _is_half_as_heavy(lift) or goes_often(lift, fitting)
    return light or athlete.is_unused or not athlete.gates.is_able


def _sides_at_once(work: Work) -> int:
    """What one leg or one arm lifts by itself counts twice, beside what both do at once."""
    variant = work.way.variant
    return 2 if work.way.movement.sides_of(variant) == "one" and not variant.one_handed else 1
