"""Why a line became what it is: what stood in the way of what was written, as data."""

from core.movements.values import Hold
from core.scaling.athlete import Athlete
from core.scaling.demand import load_moved
from core.scaling.fit import TOLERANCE, UNCOUNTED, Fit
from core.scaling.options import Option, fit_of, is_other_implement, is_written_load
from core.scaling.plan import AS_WRITTEN, OTHER_VARIANT, LinePlan
from core.scaling.values import Because, Keeps, Reason

Obstacle = tuple[Because, str | None]


def reason_for(plan: LinePlan, option: Option, athlete: Athlete) -> Reason:
    """The reason for the chosen option of a line."""
    if option.distance == AS_WRITTEN and option.way is not None:
        light = plan.loaded and option.fit.light > TOLERANCE
        return Reason(because=Because.TOO_LIGHT if light else Because.AS_WRITTEN)
    because, about = _obstacle(plan, athlete) or (_without_obstacle(option), None)
    if option.build_up:
        because, about = Because.UNKNOWN_HEAVY, None
    return Reason(
        because=because, about=about, load_kg=plan.load_kg(athlete.pair), keeps=_keeps(plan, option)
    )


def _without_obstacle(option: Option) -> Because:
    return Because.NO_SAFE_OPTION if option.way is None else Because.ONE_SETTING


def _keeps(plan: LinePlan, option: Option) -> Keeps | None:
    """What stays the same: for a changed amount the movement, for a changed movement the pattern."""
    way = option.way
    if way is None:
        return None
    if way.movement.pattern is not plan.ways[0].movement.pattern:
        return None
    if way.movement is not plan.ways[0].movement:
        return "pattern"
    return "reps" if option.distance == OTHER_VARIANT else "movement"


def _obstacle(plan: LinePlan, athlete: Athlete) -> Obstacle | None:
    """What stands in the way of what was written, first things first; None if only the other lines do."""
    written = plan.ways[0]
    if (barrier := athlete.barrier(written)) is not None:
        return barrier.because, barrier.about
    if not athlete.support(written.variant).there:
        missing = next(thing for thing in written.variant.needs if not athlete.gear.has(thing))
        return Because.NOT_OWNED, missing
    if written.variant.holds and not _is_owned(plan, athlete):
        return Because.NOT_OWNED, plan.line.implement or written.variant.holds[0].implement
    if athlete.goes_easy(written) and _is_heavy(fit := _written_fit(plan, athlete)) and fit.cautious >= 1:
        return Because.LIGHT_DUTY, athlete.spares(written)
    return _misfit(_written_fit(plan, athlete))


def _is_owned(plan: LinePlan, athlete: Athlete) -> bool:
    meant = [hold for hold in plan.ways[0].variant.holds if not is_other_implement(plan, hold, athlete)]
    return any(
        is_written_load(plan, load.kg, athlete)
        for hold in meant
        for load in athlete.gear.loads(hold.implement, hold.count)
    )


def _written_fit(plan: LinePlan, athlete: Athlete) -> Fit:
    written = plan.ways[0]
    if written.set_amount is None:
        return UNCOUNTED
    moved = load_moved(
        written.variant, athlete.body_mass_kg, plan.hold, _written_kg(plan, plan.hold, athlete)
    )
    return fit_of(plan, written, athlete, moved, AS_WRITTEN)


def _written_kg(plan: LinePlan, hold: Hold | None, athlete: Athlete) -> float:
    """The written load; where none is written, the lightest that is there."""
    written = plan.load_kg(athlete.pair)
    if written is not None:
        return float(written)
    loads = athlete.gear.loads(hold.implement, hold.count) if hold else ()
    return float(loads[-1].kg) if loads else 0.0


def _is_heavy(fit: Fit) -> bool:
    return fit.refused is Because.LIGHT_DUTY or fit.heavy > TOLERANCE


def _misfit(fit: Fit) -> Obstacle | None:
    if fit.refused is not None:
        return fit.refused, None
    if fit.heavy > TOLERANCE:
        return Because.TOO_HEAVY, None
    return (Because.TOO_LIGHT, None) if fit.light > fit.lightness.forgiven else None
