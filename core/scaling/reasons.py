"""Why a line became what it is: what stood in the way of what was written, as data."""

from core.movements.values import Hold
from core.scaling.athlete import Athlete
from core.scaling.demand import load_moved
from core.scaling.fit import NEVER_TOO_LIGHT, TOLERANCE, UNCOUNTED, Fit, fit
from core.scaling.options import Option
from core.scaling.plan import AS_WRITTEN, OTHER_VARIANT, LinePlan
from core.scaling.values import Because, Keeps, Reason

Obstacle = tuple[Because, str | None]


def reason_for(plan: LinePlan, option: Option, athlete: Athlete) -> Reason:
    """The reason for the chosen option of a line."""
    if option.distance == AS_WRITTEN and option.way is not None:
        light = plan.loaded and option.fit.light > TOLERANCE
        return Reason(because=Because.TOO_LIGHT if light else Because.AS_WRITTEN)
    because, about = obstacle_to(plan, athlete) or (_without_obstacle(option), None)
    if option.build_up:
        because, about = Because.UNKNOWN_HEAVY, None
    return Reason(because=because, about=about, load_kg=plan.load_kg(athlete.pair), keeps=keeps(plan, option))


def _without_obstacle(option: Option) -> Because:
    return Because.NO_SAFE_OPTION if option.way is None else Because.ONE_SETTING


def keeps(plan: LinePlan, option: Option) -> Keeps | None:
    """What stays the same: for a changed amount the movement, for a changed movement the pattern."""
    way = option.way
    if way is None:
        return None
    if way.movement.pattern is not plan.ways[0].movement.pattern:
        return None
    if way.movement is not plan.ways[0].movement:
        return "pattern"
    return "reps" if option.distance == OTHER_VARIANT else "movement"


def obstacle_to(plan: LinePlan, athlete: Athlete) -> Obstacle | None:
    """What stands in the way of what was written, first things first; None if only the other lines do."""
    written = plan.ways[0]
    if (barrier := athlete.barrier(written)) is not None:
        return barrier.because, barrier.about
    if not athlete.support(written.variant).there:
        missing = next(thing for thing in written.variant.needs if not athlete.gear.has(thing))
        return Because.NOT_OWNED, missing
    if written.variant.holds and not _is_owned(plan, athlete):
        return Because.NOT_OWNED, plan.line.implement or written.variant.holds[0].implement
    if athlete.goes_easy(written) and _is_heavy(would := _written_fit(plan, athlete)) and would.cautious >= 1:
        return Because.LIGHT_DUTY, athlete.spares(written)
    return _misfit(_written_fit(plan, athlete))


def _is_owned(plan: LinePlan, athlete: Athlete) -> bool:
    return any(
        plan.is_written(load.value, athlete.pair)
        for grip in plan.ways[0].grips
        if not grip.other
        for load in athlete.gear.loads(grip.hold.implement, grip.hold.count)
    )


def _written_fit(plan: LinePlan, athlete: Athlete) -> Fit:
    written = plan.ways[0]
    task = athlete.task(plan, written)
    if task is None:
        return UNCOUNTED
    outside = _written_kg(plan, plan.hold, athlete)
    return fit(task, load_moved(written.variant, athlete.body_mass_kg, plan.hold, outside), NEVER_TOO_LIGHT)


def _written_kg(plan: LinePlan, hold: Hold | None, athlete: Athlete) -> float:
    """The written load; where none is written, the lightest that is there."""
    written = plan.load_kg(athlete.pair)
    if written is not None:
        return float(written)
    loads = athlete.gear.loads(hold.implement, hold.count) if hold else ()
    return float(loads[-1].kg) if loads else 0.0


def _is_heavy(would: Fit) -> bool:
    return would.refused is Because.LIGHT_DUTY or would.heavy > TOLERANCE


def _misfit(would: Fit) -> Obstacle | None:
    if would.refused is not None:
        return would.refused, None
    return (Because.TOO_HEAVY, None) if would.heavy > TOLERANCE else None
