"""What a way costs one athlete at any load: for their body, for the risks in it, for the things that are there."""

from collections.abc import Iterator
from math import log

from core.movements.values import Demand, Part, Pattern
from core.scaling.athlete import Athlete
from core.scaling.barriers import VIGOROUS_MET, flags, is_made_harder
from core.scaling.breath import is_make_believe, is_out_of_reach, lost_breath
from core.scaling.careful import (
    DOWN,
    climbs_high,
    goes_down,
    goes_down_again,
    is_too_bold,
    is_too_quick,
    is_unseen_hold,
    leans_low,
    steps_onto_a_sore_leg,
    times_unheld,
)
from core.scaling.costs import Charge, tenths
from core.scaling.seated import of_a_seat
from core.scaling.ways import LinePlan, Near, Way
from core.scaling.works import FEEBLE

# Down and up again in every round is so many times as bad for whoever had better not.
FLOOR_AGAIN = 3

# A run that a limit lightens goes at so much of its breath: a jog (estimate).
GENTLY = 0.7

# Not added to a line for want of something nearer.
RISKS = flags({Demand.OVERHEAD, Demand.FAST_LOAD, Demand.JUMPING, Demand.UPSIDE_DOWN})
OVERHEAD = flags({Demand.OVERHEAD})
JUMP, IMPACT = flags({Demand.JUMPING}), flags({Demand.IMPACT})
# Of these, those that gates of the body keep from whoever isn't ready.
USED_TO = flags({Demand.JUMPING, Demand.UPSIDE_DOWN})

PULLS = frozenset({Part.ROW, Part.PULL})

# Steps and hops: more of them go, and never harder. What is lifted fast may be jumped.
FOR_BREATH = frozenset({Pattern.JUMP, Pattern.TRAVEL, Pattern.MOBILITY})

# Somebody's furniture, and what stands in the street.
AT_HOME = frozenset({"table", "chair", "stairs", "seat"})


def of_the_day(plan: LinePlan, way: Way, athlete: Athlete) -> Iterator[Charge]:
    """What a way costs this athlete at any load."""
    if is_out_of_reach(plan, way, athlete):
        yield Charge("breathless", plan.costs.breathless)
    if is_make_believe(plan, way, athlete):
        yield Charge("make_believe", plan.costs.make_believe)
    yield from _of_risks(plan, way, athlete)
    if athlete.shuns(way):
        yield Charge("tender", plan.costs.tender)
    if way.near is not Near.WRITTEN:
        yield from _of_a_body(plan, way, athlete)
    if way.kin.k is None and (lost := lost_breath(plan, way, athlete)) > FEEBLE:
        yield Charge("light", plan.costs.light * tenths(lost - FEEBLE))
    if way.kin.k is None and way.met and athlete.must_spare(way):
        yield Charge(
            "hard", plan.costs.hard * tenths(log(way.met / (GENTLY * (plan.ways[0].met or way.met))))
        )
    elif _should_go_easily(plan, way, athlete) and way.met and way.met > VIGOROUS_MET:
        yield Charge("hard", plan.costs.hard * tenths(log(way.met / VIGOROUS_MET)))
    yield from _of_things(plan, way, athlete)


def _should_go_easily(plan: LinePlan, way: Way, athlete: Athlete) -> bool:
    """Whether a way to go should be no vigorous work: an easy ride is no run, and no comeback needs a new one."""
    added = athlete.goes_gently and way.near > Near.VARIANT and way.movement.pattern is Pattern.TRAVEL
    return added or _goes_easily(plan.ways[0])


def _goes_easily(written: Way) -> bool:
    """Whether what is written is a way to go that is no vigorous work."""
    return written.movement.pattern is Pattern.TRAVEL and (written.met or VIGOROUS_MET) < VIGOROUS_MET


def _of_risks(plan: LinePlan, way: Way, athlete: Athlete) -> Iterator[Charge]:
    risk = way.demands & RISKS & ~_risked(plan.ways[0], way, athlete)
    if way.resists:
        risk &= ~OVERHEAD  # a band falls on nobody
    if risk and not (athlete.sits and athlete.capacity.knows(way.movement)):
        jumps = not risk & ~USED_TO and athlete.is_used_to_jumps
        yield Charge("added_risk", 0 if jumps else plan.costs.added_risk)
        yield Charge("added_jump", plan.costs.added_jump if jumps else 0)
    if is_too_bold(way, athlete) or (athlete.is_frail and way.steps and not plan.ways[0].steps):
        yield Charge("bold", plan.costs.bold)
    if way.near is Near.WRITTEN and is_unseen_hold(way, athlete):
        yield Charge("unseen_hold", plan.costs.unseen_hold)
    if is_too_quick(way, athlete):
        yield Charge("quick", plan.costs.quick)
    if climbs_high(way, athlete):
        yield Charge("high_step", plan.costs.high_step)
    yield Charge("unheld", times_unheld(way, athlete) * plan.costs.unheld)
    yield Charge("down", _times_down(plan, way, athlete) * plan.costs.down)
    if way.steps and (athlete.is_frail or steps_onto_a_sore_leg(plan.ways[0], athlete)):
        yield Charge("stepping", plan.costs.stepping)


def _times_down(plan: LinePlan, way: Way, athlete: Athlete) -> int:
    if plan.breathless and goes_down_again(way, athlete):
        return FLOOR_AGAIN
    return int(not plan.ways[0].demands & DOWN and goes_down(way, athlete))


def is_of_another_line(plan: LinePlan, way: Way) -> bool:
    """Whether what isn't for the same as the line is for what another line of the session is for."""
    return way.near is Near.ELSEWHERE and way.movement.main_of(way.variant) in plan.trained


def _of_a_body(plan: LinePlan, way: Way, athlete: Athlete) -> Iterator[Charge]:
    """What isn't made for whoever does it: steps for the unsteady, fists for a wrist that isn't sore."""
    if is_of_another_line(plan, way):
        yield Charge("again", plan.costs.again)
    strengthens = plan.ways[0].movement.pattern not in {Pattern.LIFT, *FOR_BREATH} and not plan.breathless
    if strengthens and way.movement.pattern in FOR_BREATH and not (athlete.takes_care or athlete.sits):
        yield Charge("for_breath", plan.costs.for_breath)
    if leans_low(way, athlete):
        yield Charge("low_hold", plan.costs.low_hold)
    if is_made_harder(way.variant) and (athlete.is_new or athlete.goes_easy(plan.ways[0])):
        yield Charge("made_harder", plan.costs.made_harder)
    if not athlete.spared.issuperset(way.variant.spares):
        yield Charge("spared_in_vain", plan.costs.spared_in_vain)
    if athlete.is_new and way.grips and _is_parted(plan.ways[0], way):
        yield Charge("one_sided", plan.costs.one_sided)
    if athlete.sits:
        yield from of_a_seat(plan, way)


def _is_parted(written: Way, way: Way) -> bool:
    """Whether one side lifts after the other what the coach lifts with both: nothing to begin with."""
    one, both = (each.movement.sides_of(each.variant) for each in (way, written))
    return one == "one" and both == "both"


def _of_things(plan: LinePlan, way: Way, athlete: Athlete) -> Iterator[Charge]:
    """What it costs to leave the weights that a line is for, or that are there, for furniture, a band or nothing.

    A band pulls whoever sits with a straight back, where a weight makes them lean over it.
    """
    if plan.pulls and _is_makeshift(way):
        yield Charge("makeshift", plan.costs.makeshift)
    pulls = plan.pulls or way.movement.main_of(way.variant) in PULLS
    has_weights = athlete.has_weights and not (athlete.sits and pulls)
    if way.resists and has_weights:
        yield Charge("band", plan.costs.band)
    if plan.loaded and not way.grips:
        entry = "improvised" if way.resists and not has_weights else "empty_handed"
        yield Charge(entry, getattr(plan.costs, entry))
        nothing = way.near <= Near.VARIANT and athlete.should_be_hard(plan, way)
        half = has_weights and (way.resists or nothing)
        yield Charge("half_the_kilos", plan.costs.half_the_kilos if half else 0)


def _risked(written: Way, way: Way, athlete: Athlete) -> int:
    """The risks that are in what the coach wrote: every landing, a running step too, is as much as a small jump.

    For whoever should go gently no jump for its own sake stands for another; skipping is for breath.
    """
    if athlete.goes_gently and way.movement.main_of(way.variant) is Part.JUMP:
        return written.demands & ~JUMP
    return written.demands | JUMP if written.demands & IMPACT else written.demands


def _is_makeshift(way: Way) -> bool:
    return not way.grips and all(not need.isdisjoint(AT_HOME) for need in way.needs)
