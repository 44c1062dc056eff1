"""How much one athlete is to hold: what is meant for them, and the most that ease, breath or sight allow."""

from math import exp, inf

from core.ability.capacity import CAUTIOUS
from core.ability.gates import LONG_OFF
from core.movements.values import Demand, Pattern
from core.scaling.athlete import Athlete
from core.scaling.barriers import flags
from core.scaling.ways import SAME_LOAD, Grip, LinePlan, Way

# Of what goes once, whoever should go easy lifts at most so much, and so much whoever must not hold their breath: above
# it nobody lifts without (estimates).
EASY_SHARE = 0.55
BREATHING_SHARE = 0.66
# Whoever comes back after some weeks, and has nothing else to mind.
BACK_SHARE = 0.7
# What the coach calls light is half of what they surely do so often, and a third under a cap on their effort; what is
# sore under such a cap is only moved, ten times in place of a heavy few (estimates).
LIGHT_SHARE, CAPPED_SHARE, SORE_SHARE, SORE_REPS = 1 / 2, 0.35, 1 / 3, 10.0
LIGHT_OF_ALL = 2 / 3
# Whoever goes easy does at least so many in place of a heavy few, with so much of what they surely hold so often.
EASY_REPS, EASY_OF_SHOWN = 8.0, 0.7
# Overhead what is too heavy falls on somebody, where a squat or a row only stays down: of what nobody saw whoever goes
# easy or has a cap on their effort lifts at most half of what goes once, and so does whoever was written something
# else; whoever takes care half of what goes so often, and half as much of a bag who isn't used to it (estimates). A bag
# for what was never shown is filled to two thirds in the first days, to half where it should go easy (estimates).
UNSEEN_SHARE, KIN_SHARE, BAG_SHARE = 1 / 2, 2 / 3, 1 / 4
FIRST_FILL, EASY_FILL = 2 / 3, 1 / 2
# A bag that is swung by its loop (estimate).
SWUNG_KG = 10.0
OVERHEAD = flags({Demand.OVERHEAD})
FAST = flags({Demand.FAST_LOAD, Demand.FAST_PULL})


def heaviest_of(athlete: Athlete, plan: LinePlan, grip: Grip) -> float:
    """The most per implement that they are given where no more was shown; inf where no load is written."""
    return heaviest_beside(athlete, meant_kg(athlete, plan), grip)


def heaviest_beside(athlete: Athlete, meant: float | None, grip: Grip) -> float:
    """The same, where the load that is meant is known."""
    if meant is None:
        return inf
    return meant * (grip.written * (1 + SAME_LOAD) if athlete.goes_no_heavier else grip.heaviest)


def meant_kg(athlete: Athlete, plan: LinePlan) -> float | None:
    """The load that is meant for them, per implement of the written hold; None where none is.

    A share of a maximum is arithmetic: of the median of what was shown, or cautiously of what is believed.
    """
    written, rule = plan.load_kg(athlete.pair), plan.line.load_rule
    if written is not None:
        return float(written)
    if rule is None or rule.percent is None or plan.hold is None or plan.ways[0].kin.k is None:
        return None
    way = plan.ways[0]
    ability = athlete.ability(way)
    if not ability.heavy_shown:
        return None
    sure = 1.0 if athlete.capacity.knows(way.movement) else exp(CAUTIOUS * ability.spread)
    once = ability.strength_kg * sure / (1 + 1 / ability.k) - athlete.own_kg(way)
    return max(0.0, once * rule.percent / 100 / (plan.hold.factor * plan.hold.count)) or None


def _easy_share(athlete: Athlete) -> float:
    was_long_off = (athlete.profile.weeks_off or LONG_OFF) >= LONG_OFF
    return BACK_SHARE if athlete.comes_back and not was_long_off else EASY_SHARE


def most_kg(athlete: Athlete, plan: LinePlan, way: Way, grip: Grip) -> float:
    """The most per implement that may be held for the sake of ease, of held breath, or of what a coach wants."""
    cap = athlete.notes.cap(way.movement.pattern, grip.hold.count)
    if way.kin.k is None:
        return cap
    begins = athlete.goes_easy(way) and not athlete.is_trained
    counts = begins or athlete.light_duty or athlete.catalogue.implement(grip.hold.implement).improvised
    often = max(way.set_amount or 1.0, EASY_REPS) if counts and _is_unseen(athlete, way) else None
    cap = min(cap, _filled_kg(athlete, way, grip), _light_of_all(athlete, plan, way, grip))
    cap = min(cap, _of_shown_kg(athlete, way) / grip.per_kg)
    once = _share_of_once(athlete, plan, way, grip) * sure_kg(athlete, way, often or 1.0)
    return min(cap, max(0.0, min(once, _light_kg(athlete, plan, way)) / grip.per_kg))


def _of_shown_kg(athlete: Athlete, way: Way) -> float:
    """Of what they showed whoever goes easy holds so much of what surely goes so often.

    Judged by the way that they showed: a chair to sit down on is no reason for more in the hands.
    """
    if way.set_amount is None or not athlete.goes_easy(way):
        return inf
    return EASY_OF_SHOWN * athlete.capacity.shown_kg(way.movement, max(way.set_amount, EASY_REPS))


def _filled_kg(athlete: Athlete, way: Way, grip: Grip) -> float:
    """How full a bag is filled for what was never shown: by a loop it is swung lightly; who is new fills no brim."""
    loads = athlete.gear.loads(*grip.held)
    brim = athlete.catalogue.implement(grip.hold.implement).improvised and loads
    if not brim or athlete.capacity.knows(way.movement):
        return inf
    is_swung = way.movement.pattern is Pattern.HINGE and bool(way.demands & FAST)
    swung = max(SWUNG_KG, EASY_FILL * loads[0].value) if is_swung else inf
    share = EASY_FILL if athlete.goes_easy(way) else FIRST_FILL
    return min(swung, max(share * loads[0].value, loads[-1].value) if athlete.is_new else inf)


def _share_of_once(athlete: Athlete, plan: LinePlan, way: Way, grip: Grip) -> float:
    """How much of what goes once they lift at most: less of what nobody saw go overhead."""
    goes_easy = athlete.goes_easy(way)
    added = not plan.ways[0].demands & OVERHEAD
    careful = goes_easy or added or athlete.effort_at_most is not None
    if careful and _is_unseen(athlete, way):
        if athlete.catalogue.implement(grip.hold.implement).improvised:
            return BAG_SHARE if athlete.is_unused else UNSEEN_SHARE
        return KIN_SHARE if _is_press(way) and _has_pushed(athlete) else UNSEEN_SHARE
    return _easy_share(athlete) if goes_easy else BREATHING_SHARE if athlete.must_breathe else inf


def _light_of_all(athlete: Athlete, plan: LinePlan, way: Way, grip: Grip) -> float:
    """What is light among the weights that are there, where it should be: of several never the heaviest.

    Nor overhead, unseen, for whoever has a joint to mind in it.
    """
    loads = athlete.gear.loads(*grip.held)
    light = plan.light or (_is_unseen(athlete, way) and athlete.joint_in(way) is not None)
    return max(LIGHT_OF_ALL * loads[0].value, loads[-1].value) if light and loads else inf


def _light_kg(athlete: Athlete, plan: LinePlan, way: Way) -> float:
    """What is light for them beside their own body, where it should be.

    Of an easy line the coach's own kilos are for whoever has shown the lift.
    """
    is_capped = athlete.effort_at_most is not None
    if way.set_amount and is_capped and athlete.is_sore(way):
        return SORE_SHARE * sure_kg(athlete, way, max(way.set_amount, SORE_REPS))
    light = plan.light or (plan.easy and way.counts_reps and not athlete.capacity.knows(way.movement))
    if not way.set_amount or not light:
        return inf
    bound = is_capped or athlete.goes_easy(way)
    share = CAPPED_SHARE if bound else LIGHT_SHARE
    return (1 + SAME_LOAD) * share * sure_kg(athlete, way, way.set_amount)


def sure_kg(athlete: Athlete, way: Way, reps: float) -> float:
    """So much beside their own body surely goes so often."""
    return athlete.ability(way).too_heavy_from(reps) - athlete.own_kg(way)


def _is_press(way: Way) -> bool:
    """Whether nothing but the arms drives it overhead."""
    return way.kin.pattern == Pattern.VERTICAL_PUSH and not way.kin.limits


def _has_pushed(athlete: Athlete) -> bool:
    """Whether they showed how strong their arms push, if not overhead."""
    return any(one.reps > 0 and one.kin.pattern == Pattern.HORIZONTAL_PUSH for one in athlete.capacity.tests)


def _is_unseen(athlete: Athlete, way: Way) -> bool:
    """Whether it goes overhead, and they never showed how much of it they lift."""
    return bool(way.demands & OVERHEAD) and not athlete.capacity.knows(way.movement)
