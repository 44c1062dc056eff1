"""What a coach's note makes of a line: told by what would be done there, alone, without any note."""

from core.scaling.athlete import Athlete
from core.scaling.lines import change_of
from core.scaling.options import cheapest
from core.scaling.orders import Orders
from core.scaling.reasons import keeps, reason_for
from core.scaling.values import Because, Change, Reason
from core.scaling.ways import LinePlan
from core.scaling.works import Option


def without_notes(plan: LinePlan, athlete: Athlete, orders: Orders) -> Option | None:
    """What a line would be alone if nothing were noted; None where nothing is."""
    if not athlete.is_noted:
        return None
    return cheapest(plan, athlete.without_notes, orders)


def bound(athlete: Athlete, free: Option | None) -> Athlete:
    """The athlete as a note binds them: where a cap takes away what would be done, no load below it is too light."""
    return athlete.forgiven if free is not None and _is_over_a_cap(athlete, free) else athlete


def reason_beside(plan: LinePlan, option: Option, athlete: Athlete, free: Option | None) -> Reason:
    """The reason for the chosen option: the note's, where without it something else would be done."""
    if free is None:
        return reason_for(plan, option, athlete)
    if not _is_noted(athlete, free) or _done(option) == _done(free):
        return reason_for(plan, option, athlete.without_notes)
    kept = None if change_of(plan, option) is Change.NONE else keeps(plan, option)
    return Reason(because=Because.NOTED, load_kg=plan.load_kg(athlete.pair), keeps=kept)


def _done(option: Option) -> tuple[object, ...]:
    return option.way and option.way.id, option.hold, option.load and option.load.kg, option.part


def _is_noted(athlete: Athlete, free: Option) -> bool:
    """Whether a note stands against what would be done: a cap that it is over, or that it should cost less."""
    eased = free.way is not None and free.way.movement.pattern in athlete.notes.eased
    return eased or _is_over_a_cap(athlete, free)


def _is_over_a_cap(athlete: Athlete, free: Option) -> bool:
    if free.way is None or free.hold is None or free.load is None:
        return False
    return free.load.value > athlete.notes.cap(free.way.movement.pattern, free.hold.count)
