"""One line a step easier or harder, something else, or as written: what an athlete asks for becomes a pin.

Exact and steady: the step is looked up among all safe options of the line, and the same line of the same
person always takes the same step. A step easier is felt (the set costs a tenth less, at least): a lighter
one of the same thing, then another implement, then the nearest easier way, then fewer repetitions. A step
harder goes the same way up, and never beyond the weight that the coach wrote.
"""

from collections.abc import Callable, Sequence
from decimal import Decimal
from functools import partial
from math import ceil, floor, log
from operator import attrgetter
from typing import NamedTuple

from core.athletes.values import Profile
from core.movements.lookup import Catalogue
from core.scaling.amounts import ROUND_TO
from core.scaling.athlete import Athlete
from core.scaling.called_for import leading_to
from core.scaling.either import as_chosen
from core.scaling.fit import ABOUT
from core.scaling.notes import NO_NOTES, notes_of
from core.scaling.obstacles import obstacle_to
from core.scaling.options import is_same, options_of
from core.scaling.orders import Noted, Orders, Pin
from core.scaling.plan import plan_for
from core.scaling.pricing import at_share
from core.scaling.rows import PARTS
from core.scaling.values import Because, Spot, VersionLine
from core.scaling.ways import SAME_LOAD, LinePlan, Near
from core.scaling.works import Option
from core.sessions.values import Session

# At most this share of a set's cost is felt as easier; of the amount a quarter goes at a time (estimates).
FELT = 0.9
LESS = 0.75
# Something else asks about the same: within this many log units (estimate).
ABOUT_THE_SAME = 0.25

Cost = Callable[[Option], float]


class Barred(NamedTuple):
    """Why a line can't be done as written; `about` as in Reason."""

    because: Because
    about: str | None


class _Line(NamedTuple):
    """A line as it is shown: what it is now, and everything safe that it could be at the whole amount."""

    plan: LinePlan
    athlete: Athlete
    now: Option
    others: Sequence[Option]


def easier(
    session: Session,
    profile: Profile,
    catalogue: Catalogue,
    spot: Spot,
    shown: VersionLine,
    faults: Sequence[Noted] = (),
) -> Pin | None:
    """The next easier option of the line at `spot` after the one shown; None where there is none."""
    line = _line(_athlete(session, profile, catalogue, faults), session, spot, shown)
    return None if line is None else _pin(spot, _step_down(line))


def harder(
    session: Session,
    profile: Profile,
    catalogue: Catalogue,
    spot: Spot,
    shown: VersionLine,
    faults: Sequence[Noted] = (),
) -> Pin | None:
    """The next harder option, at most as written by the coach; None where there is none."""
    line = _line(_athlete(session, profile, catalogue, faults), session, spot, shown)
    return None if line is None else _pin(spot, _step_up(line))


def something_else(
    session: Session,
    profile: Profile,
    catalogue: Catalogue,
    spot: Spot,
    shown: VersionLine,
    faults: Sequence[Noted] = (),
) -> Pin | None:
    """Another way that asks about the same, for whoever is bored."""
    line = _line(_athlete(session, profile, catalogue, faults), session, spot, shown)
    return None if line is None else _pin(spot, _beside(line))


def as_written(
    session: Session, profile: Profile, catalogue: Catalogue, spot: Spot, faults: Sequence[Noted] = ()
) -> Pin | Barred:
    """The line as the coach wrote it, or why that isn't safe or possible."""
    athlete = _athlete(session, profile, catalogue, faults)
    plan = _plan(session, spot, athlete)
    fitting = _written(plan, athlete)
    if not fitting and athlete.is_noted and _written(plan, athlete.without_notes):
        return Barred(Because.NOTED, None)
    if not fitting:
        return Barred(*(obstacle_to(plan, athlete) or (Because.NO_SAFE_OPTION, None)))
    pin = _pin(spot, min(fitting, key=attrgetter("cost")))
    assert pin is not None, "there is an option"
    return pin


def _athlete(session: Session, profile: Profile, catalogue: Catalogue, faults: Sequence[Noted]) -> Athlete:
    """The athlete with what their coach noted, which their own wish doesn't undo."""
    notes = notes_of(faults, catalogue) if faults else NO_NOTES
    return Athlete(profile, catalogue, session.date.year if session.date else None, notes)


def _plan(session: Session, spot: Spot, athlete: Athlete, movement: str | None = None) -> LinePlan:
    """`movement`: what it may lead to though the graph doesn't."""
    session = as_chosen(session, athlete, athlete.catalogue)
    block = plan_for(session, athlete.easing, athlete.catalogue, athlete.pair)[spot.block - 1]
    line = block.sections[PARTS.index(spot.part)][spot.line - 1]
    return leading_to(block, line, movement, athlete.catalogue)


def _line(athlete: Athlete, session: Session, spot: Spot, shown: VersionLine) -> _Line | None:
    """None where what is shown is no option any more."""
    plan = _plan(session, spot, athlete, shown.movement)
    options = options_of(plan, athlete, Orders())
    same = next((one for one in options if one.way is not None and _is_shown(one, shown)), None)
    if same is None or same.build_up:
        return None
    others = [
        at_share(plan, one, athlete, 1.0) for one in options if one.way and one.way.near < Near.ELSEWHERE
    ]
    others = [one for one in others if one.safe]
    return _Line(plan, athlete, at_share(plan, same, athlete, _share(plan, same, shown)), others)


def _written(plan: LinePlan, athlete: Athlete) -> list[Option]:
    options = options_of(plan, athlete, Orders())
    whole = [at_share(plan, one, athlete, 1.0) for one in options if one.exact]
    return [one for one in whole if one.safe]


def _is_shown(option: Option, shown: VersionLine) -> bool:
    return is_same(option, shown) and (option.hold.count if option.hold else None) == shown.count


def _share(plan: LinePlan, option: Option, shown: VersionLine) -> float:
    """The share of the written amount that is shown."""
    assert option.way is not None
    amount = max(shown.scheme, default=None) if plan.scheme else shown.amount
    if amount is None or not option.way.amount:
        return 1.0
    return amount / option.way.amount


def _step_down(line: _Line) -> Option | None:
    now = _cost(line.now)
    lighter = [one for one in line.others if 0 < _cost(one) <= FELT * now]
    return _nearest(line, lighter, line.athlete.catalogue.below, partial(max, key=_cost)) or _less(line)


def _step_up(line: _Line) -> Option | None:
    if line.now.part < 1:
        return _more(line)
    now = _cost(line.now)
    line = line._replace(
        others=[one for one in line.others if _is_near(line, one) and _is_allowed(line, one)]
    )
    heavier = [one for one in line.others if FELT * _cost(one) >= now > 0 and _is_fair(one)]
    return _nearest(line, heavier, line.athlete.catalogue.above, partial(min, key=_cost))


def _is_near(line: _Line, option: Option) -> bool:
    """The same movement, or one that the graph names as harder: nobody asked for something else."""
    assert line.now.way is not None
    assert option.way is not None
    named = option.way.id in line.athlete.catalogue.above(line.now.way.id)
    return named or option.way.movement is line.now.way.movement


def _is_allowed(line: _Line, option: Option) -> bool:
    """No more weight in the hands than the coach wrote, whatever the movement."""
    written = line.plan.load_kg(line.athlete.pair)
    if written is None or line.plan.hold is None or option.hold is None or option.load is None:
        return True
    most = float(written) * line.plan.hold.count * (1 + SAME_LOAD)
    return option.load.value * option.hold.count <= most


def _is_fair(option: Option) -> bool:
    """Fits the intent, or goes through in one set: an athlete who asks may take the harder end."""
    return option.fit.heavy <= ABOUT or _cost(option) <= 1


def _nearest(
    line: _Line,
    group: Sequence[Option],
    climb: Callable[[str], Sequence[str]],
    pick: Callable[[Sequence[Option]], Option],
) -> Option | None:
    """Of the same thing, of the same way, of the ways nearest on the ladder, of the rest."""
    now = line.now
    assert now.way is not None
    same_way = [one for one in group if one.way and one.way.id == now.way.id]
    same_thing = [one for one in same_way if one.hold == now.hold]
    named = [_of_way(line, group, way_id) for way_id in climb(now.way.id)]
    rest = [one for one in group if one not in same_way]
    return next((pick(some) for some in (same_thing, same_way, *named, rest) if some), None)


def _of_way(line: _Line, group: Sequence[Option], way_id: str) -> Sequence[Option]:
    """Options of a way; where nothing can be counted the graph's word is enough."""
    of_way = [one for one in line.others if one.way and one.way.id == way_id]
    return [one for one in of_way if one in group or one.fit.cost is None or line.now.fit.cost is None]


def _beside(line: _Line) -> Option | None:
    assert line.now.way is not None
    now, here = _cost(line.now), line.now.way.id
    others = [one for one in line.others if one.way and one.way.id != here and _cost(one) > 0 and now > 0]
    near = [one for one in others if abs(log(_cost(one) / now)) <= ABOUT_THE_SAME]
    # Rounded, so that of equals the first is taken whatever the last digit says.
    return min(
        near,
        key=lambda one: (one.way.near if one.way else Near.ELSEWHERE, round(abs(log(_cost(one) / now)), 9)),
        default=None,
    )


def _cost(option: Option) -> float:
    return option.fit.cost or 0.0


def _less(line: _Line) -> Option | None:
    """A quarter of the amount off, in whole repetitions, five seconds or ten metres."""
    return _at(line, lambda amount, step: max(step, step * floor(amount * LESS / step)))


def _more(line: _Line) -> Option | None:
    """A quarter back on, up to the whole."""
    return _at(line, lambda amount, step: step * ceil(amount / LESS / step))


def _at(line: _Line, change: Callable[[float, int], float]) -> Option | None:
    way = line.now.way
    assert way is not None
    if not way.amount:
        return None
    step = ROUND_TO.get(way.unit, 1)
    amount = min(way.amount, change(round(way.amount * line.now.part, 6), step))
    share = amount / way.amount
    if share == line.now.part:
        return None
    changed = at_share(line.plan, line.now, line.athlete, share)
    return changed if changed.safe else None


def _pin(spot: Spot, option: Option | None) -> Pin | None:
    if option is None or option.way is None:
        return None
    load: Decimal | None = option.load.kg if option.load else None
    return Pin(
        block=spot.block,
        part=spot.part,
        line=spot.line,
        movement=option.way.movement.id,
        variant=option.way.variant.id,
        implement=option.implement,
        count=option.hold.count if option.hold else None,
        load_kg=load,
        share=option.part,
        by="athlete",
    )
