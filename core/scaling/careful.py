"""Who should take care with what nothing rules out: a weight that is swung, low hands, a high step, the floor."""

from typing import Final

from core.athletes.limits import limit, limits
from core.movements.values import Demand, Pattern
from core.scaling.athlete import Athlete
from core.scaling.barriers import flags
from core.scaling.ways import Way

CAUGHT = flags({Demand.FAST_LOAD})
QUICK = flags({Demand.FAST_LOAD, Demand.FAST_PULL})
HURRIED = flags({Demand.UP_AND_DOWN, Demand.JUMPING})
ON_HANDS = flags({Demand.WRIST_BENT})
HIGH_STEP = flags({Demand.BALANCE, Demand.DEEP_KNEE_BEND, Demand.STANDING})
DOWN = flags({Demand.FLOOR, Demand.KNEELING})
UP_AND_DOWN = flags({Demand.UP_AND_DOWN})
BOLD, BALANCE = flags({Demand.BOLD}), flags({Demand.BALANCE})
RACKED = flags({Demand.RACKED})
LEANT = flags({Demand.LEANT})
UNHELD = flags({Demand.UNHELD})
QUICK_STEPS = flags({Demand.QUICK_STEPS})
HANGS_BACK = flags({Demand.DOORWAY, Demand.GRIP})
OF_A_LEG: Final = frozenset({Demand.DEEP_KNEE_BEND, Demand.IMPACT})
CLIMBED: Final = frozenset({"chair", "bench", "box"})
LOWER = ("stairs",)
# Who needs a high hold for their hands has one here.
HIGH = ("table",)


def is_for_speed(way: Way) -> bool:
    """Whether it is done for speed, and so fresh: a jump, or a weight that is thrown up or caught."""
    pattern = way.movement.pattern
    return pattern is Pattern.JUMP or (pattern is Pattern.LIFT and bool(way.demands & QUICK))


def is_too_quick(way: Way, athlete: Athlete) -> bool:
    """Whether a weight is swung, caught or drawn up fast by whoever had better move it slowly.

    The unsteady, frail or sore, or who would rather leave it for a joint; the new and those with a condition that
    lightens it, unless they have shown it. And whether somebody held to a moderate effort hurries to the floor and up
    with a jump.
    """
    if way.demands & HURRIED == HURRIED and athlete.is_held_back:
        return True
    if not way.demands & QUICK:
        return False
    if athlete.is_unsteady or athlete.is_frail or athlete.is_sore(way) or athlete.shuns(way):
        return True
    if athlete.capacity.knows(way.movement):
        return False
    minds = is_of_care(athlete.spares(way))
    return minds or athlete.goes_gently or (athlete.is_unused and bool(way.demands & CAUGHT))


def is_of_care(about: str | None) -> bool:
    """Whether it is a condition or a state; not a joint, a wish, or a muscle that is sore today."""
    return any(one.id == about and one.kind in {"condition", "state"} for one in limits())


def is_too_bold(way: Way, athlete: Athlete) -> bool:
    """Whether the body is trusted to furniture, one leg or the toes by whoever takes care and hasn't shown it.

    Or to steps with nothing to hold, by whoever isn't young and light; to a door frame by whoever mustn't fall.
    """
    if not athlete.takes_care or athlete.capacity.knows(way.movement):
        return False
    if way.demands & (BOLD | RACKED) or (athlete.is_frail and way.demands & HANGS_BACK == HANGS_BACK):
        return True
    freely = way.demands & UNHELD or (way.steps and not way.needs)
    steps_freely = way.demands & QUICK_STEPS or (freely and way.demands & BALANCE)
    return bool(steps_freely) and not athlete.gates.may_pound


def times_unheld(way: Way, athlete: Athlete) -> int:
    """How much it counts that no hand is free to hold on: for the frail or unsteady, twice for who might fall so."""
    once = athlete.is_frail or athlete.is_unsteady
    return int(once) + int(athlete.may_fall and athlete.is_unsteady) if way.demands & UNHELD else 0


def steps_onto_a_sore_leg(written: Way, athlete: Athlete) -> bool:
    """Whether what is written isn't steps, and a leg is spared for which it is left: one leg carries them, then."""
    if written.steps or not athlete.spares_a_joint(written):
        return False
    barrier = athlete.barrier(written)
    return barrier is not None and not OF_A_LEG.isdisjoint(limit(barrier.about or "").rules_out)


def is_unseen_hold(way: Way, athlete: Athlete) -> bool:
    """Whether somebody who takes care holds themselves up over the floor, and nobody knows for how long they can."""
    return (
        way.is_hold
        and bool(way.demands & DOWN)
        and athlete.takes_care
        and not athlete.capacity.knows(way.movement)
    )


def climbs_high(way: Way, athlete: Athlete) -> bool:
    """Whether a high and narrow thing is stepped on by whoever would fall hard, or is careful for a condition.

    Or has something to spare, and a stair.
    """
    if way.demands & HIGH_STEP != HIGH_STEP or CLIMBED.isdisjoint(way.variant.things):
        return False
    minds = is_of_care(athlete.spares(way))
    has_lower = athlete.goes_no_heavier and athlete.gear.first_of(LOWER) is not None
    return minds or has_lower or athlete.is_unused or not athlete.gates.is_able


def leans_low(way: Way, athlete: Athlete) -> bool:
    """Whether the hands lean on something lower than the table that is there, by whoever needs it high."""
    on_the_floor = way.demands & DOWN and athlete.takes_care and not athlete.gates.may_lean_low
    below = way.needs or on_the_floor
    on_hands = way.demands & ON_HANDS or Demand.WRIST_BENT in way.variant.spares
    if not on_hands or way.demands & LEANT or not below or athlete.gear.first_of(HIGH) is None:
        return False
    if athlete.gates.may_lean_low and athlete.effort_at_most is None and not athlete.is_unused:
        return False
    return athlete.support(way.variant).implement not in HIGH


def goes_down(way: Way, athlete: Athlete) -> bool:
    """Whether it is done down there by whoever gets up with effort: for age, for weight, for what rules that out."""
    if not way.demands & DOWN:
        return False
    return not athlete.gates.may_pound or bool(athlete.ruled_out & UP_AND_DOWN)


def goes_down_again(way: Way, athlete: Athlete) -> bool:
    """Whether in rounds without a rest it would be down and up again for whoever mustn't fall.

    Or has what rules that out and hasn't shown push-ups from the floor, or is heavy or no more young and new to it.
    """
    if not way.demands & DOWN:
        return False
    learns = athlete.is_new and not athlete.gates.may_pound
    minds = bool(athlete.ruled_out & UP_AND_DOWN) and not athlete.gates.may_lean_low
    return athlete.is_frail or learns or minds
