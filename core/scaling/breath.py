"""How much breath a way takes of one athlete, beside what they keep up and what the line is for."""

from math import log

from core.movements.values import Pattern
from core.scaling.athlete import Athlete
from core.scaling.ways import LinePlan, Near, Way

# A run breathes like the row that it stands for: so many times its rate is the same work (estimate).
AS_MUCH_BREATH = 1.25
# Below that it is make-believe.
HALF_THE_BREATH = 0.4


def is_out_of_reach(plan: LinePlan, way: Way, athlete: Athlete) -> bool:
    """Whether breathing can't keep up with this work where it goes on without a rest.

    What asks for no more breath than the written line is what the coach meant, unless it should be easy.
    """
    met, meant = way.met, plan.ways[0].met
    if not plan.breathless or met is None or met <= athlete.rate.met:
        return False
    return meant is None or met > AS_MUCH_BREATH * meant or athlete.goes_easy(plan.ways[0])


def lost_breath(plan: LinePlan, way: Way, athlete: Athlete) -> float:
    """How much less breath a way takes than what is written, in log units, where that is what it is for."""
    written = plan.ways[0]
    if way.near is Near.WRITTEN or athlete.goes_easy(way) or not written.met or not way.met:
        return 0.0
    return log(written.met / way.met)


def is_make_believe(plan: LinePlan, way: Way, athlete: Athlete) -> bool:
    """Whether it only looks like work to somebody able: nothing resists, or it takes less than half the breath."""
    goes_easily = plan.easy and way.movement.pattern is Pattern.TRAVEL
    if goes_easily or way.near is Near.WRITTEN or athlete.goes_easy(way) or not athlete.gates.is_able:
        return False
    if athlete.sits:
        return way.variant.make_believe
    written = plan.ways[0]
    counts = way.kin.k is not None and written.kin.k is not None
    hardly = written.met is not None and (way.met or 0.0) < HALF_THE_BREATH * written.met
    return (way.variant.make_believe and not _is_asked_for(plan, way)) or (hardly and not counts)


def _is_asked_for(plan: LinePlan, way: Way) -> bool:
    """Whether the coach wrote something of the kind: a march is a march with a hand on the wall, too."""
    written = (one for one in plan.ways if one.near is Near.WRITTEN and one.movement is way.movement)
    return any(one.variant.make_believe for one in written)
