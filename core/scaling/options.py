"""Everything a line could become for one athlete, with each load or height that exists, and what it costs."""

from collections.abc import Iterator, Sequence
from math import inf

from core.scaling.athlete import Athlete
from core.scaling.by_person import is_of_another_line
from core.scaling.charging import HIPS_LIFT, is_lifted_by_hips_instead, is_light_enough
from core.scaling.costs import Charge
from core.scaling.gear import Load
from core.scaling.heaviest import heaviest_beside, most_kg
from core.scaling.orders import Orders
from core.scaling.pricing import best_of, every_of, lift_of, work_of
from core.scaling.values import VersionLine
from core.scaling.ways import Grip, LinePlan, Near
from core.scaling.works import Option, Work

# What is done a step easier for the sake of a sore place is lighter, too: at most so much of what is meant (estimate).
SPARING = 0.85

# Whatever costs more than any line can: for whoever wants every option.
EVERY = 1_000_000


def options_of(
    plan: LinePlan, athlete: Athlete, orders: Orders, slack: int = EVERY, only: str | None = None
) -> list[Option]:
    """The options of a line that cost up to `slack` more than its cheapest, the cheapest first, and rest.

    With every option wanted the ways that are only for those who ask are among them, too. Ways come cheapest first,
    and a lighter load of the same thing never costs less once a heavier one is light: so that the search may end.
    `only`: the one way that is asked about.
    """
    rest = Charge("rest", plan.costs.rest)
    found = [Option(None, rest.points, (rest,))]
    last = [line for line in orders.last if line.written == plan.written]
    limit = rest.points if slack < EVERY else EVERY
    for way in athlete.within_reach(plan, asked=slack == EVERY):
        if way.base > limit:
            break
        if way.least > limit or (only is not None and way.id != only) or athlete.barrier(way) is not None:
            continue
        work = work_of(plan, way, athlete, orders, limit)
        for option in () if work is None else _of_way(work, orders, limit):
            one = _spread(_steadied(option, last, plan), orders, plan)
            found.append(one)
            limit = min(limit, one.cost + slack)
    kept = [one for one in found if one.cost <= limit or one.way is None]
    return sorted(kept, key=_rank)


def _rank(option: Option) -> tuple[int, int, float]:
    """The cheapest first; of those that cost the same what is nearest by itself, with the most in the hands."""
    return option.cost, option.way.base if option.way else 0, -option.kilos


def every_option(plan: LinePlan, athlete: Athlete, orders: Orders) -> Iterator[Option]:
    """Every amount of every option of a line that anybody may be given, and rest: to see what other points would do."""
    for way in athlete.within_reach(plan, asked=False):
        if athlete.barrier(way) is not None:
            continue
        work = work_of(plan, way, athlete, orders)
        assert work is not None, "it costs what it may"
        for grip in way.grips or (None,):
            for load in (None,) if grip is None else _there(work, grip, orders):
                yield from every_of(lift_of(work, grip, load))
    rest = Charge("rest", plan.costs.rest)
    yield Option(None, rest.points, (rest,))


def cheapest(plan: LinePlan, athlete: Athlete, orders: Orders) -> Option:
    """What a line would be by itself."""
    return options_of(plan, athlete, orders, slack=0)[0]


def is_same(option: Option, line: VersionLine) -> bool:
    """Whether an option is what a line was last time."""
    way = option.way
    if way is None:
        return False
    return (
        way.movement.id == line.movement
        and way.variant.id == line.variant
        and option.implement == line.implement
        and (option.load.kg if option.load else None) == line.load_kg
    )


def _steadied(option: Option, last: Sequence[VersionLine], plan: LinePlan) -> Option:
    if not last or any(is_same(option, line) for line in last):
        return option
    charge = Charge("unlike_last_time", plan.costs.unlike_last_time)
    return option._replace(cost=option.cost + charge.points, bill=(*option.bill, charge))


def _spread(option: Option, orders: Orders, plan: LinePlan) -> Option:
    """What stood in for something else in an earlier part gives way to what didn't, where neither is for the same."""
    way, written = option.way, plan.line.written
    if way is None or way.near is not Near.ELSEWHERE:
        return option
    stood_in = any(one == way.movement.id and of != written for one, of in orders.stood_in)
    if not stood_in or is_of_another_line(plan, way):
        return option
    charge = Charge("again", plan.costs.again)
    return option._replace(cost=option.cost + charge.points, bill=(*option.bill, charge))


def _of_way(work: Work, orders: Orders, limit: int) -> Iterator[Option]:
    """The options of one way up to a limit: at each load, with the amount that costs least."""
    if not work.way.grips:
        option = best_of(lift_of(work, None, None))
        if option is not None:
            yield option
    for grip in work.way.grips:
        yield from _of_grip(work, grip, _there(work, grip, orders), limit)


def _of_grip(work: Work, grip: Grip, loads: Sequence[Load], limit: int) -> Iterator[Option]:
    """At loads that go from heavy to light: once a light one costs too much by itself, a lighter one does as well."""
    for load in loads:
        lift = lift_of(work, grip, load)
        if lift.least > limit and is_light_enough(work, grip, load):
            return
        option = best_of(lift) if lift.least <= limit else None
        if option is not None and option.cost <= limit:
            yield option


def _there(work: Work, grip: Grip, orders: Orders) -> Sequence[Load]:
    """The loads that are there, the heaviest first: no heavier than a limit or a note allows.

    Nor heavier by far than written, unless so much was shown or is allowed; at all, for whoever has to be careful.
    """
    loads = work.athlete.gear.loads(*grip.held)
    if not loads:
        return ()
    athlete = work.athlete
    cap = most_kg(athlete, work.plan, work.way, grip)
    most = inf if orders.heavier else _heaviest(work, grip)
    if loads[0].value <= min(cap, most):
        return loads
    bound = work.spares or athlete.goes_no_heavier
    return [
        load
        for load in loads
        if load.value <= cap
        and (
            load.value <= most
            or (not bound and athlete.has_shown(work.task, work.way, work.moved_kg(grip, load)))
        )
    ]


def _heaviest(work: Work, grip: Grip) -> float:
    most = heaviest_beside(work.athlete, work.meant_kg, grip)
    if is_lifted_by_hips_instead(work) and not work.athlete.takes_care:
        most /= HIPS_LIFT
    return min(most, SPARING * work.meant_kg) if work.spares and work.meant_kg is not None else most
