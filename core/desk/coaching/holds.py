"""For which sessions a coach's order counts, and in which of them it can be looked at."""

from calendar import month_name, monthrange
from collections.abc import Mapping
from datetime import date, timedelta
from typing import Final, NamedTuple

from core.athletes.easing import WEEK
from core.desk.coaching.overseeing import card_of
from core.desk.days import today_in
from core.desk.errors import UnknownThing
from core.desk.outcome import Outcome
from core.desk.sessions.meant import at_hand, just_shown, of_day
from core.desk.visit import Visit
from core.notation.calendar.moments import find_days
from core.notation.coaching.easing import monday_of, read_span
from core.scaling.orders import is_called
from core.store.records import Group, Membership, SessionRecord
from core.understanding.acts import Order

WEEKS: Final[Mapping[str, timedelta]] = {"this week": timedelta(0), "next week": WEEK}


_MONTHS: Final = tuple(month_name[number].lower() for number in range(1, 13))


class Holds(NamedTuple):
    """For which sessions an order counts: for one alone, or for all from `since` to `until`, for ever where untold."""

    record: SessionRecord | None = None
    since: date | None = None
    until: date | None = None


async def for_which(visit: Visit, order: Order, group: Group) -> Holds:
    """`this week`, `until friday`, `always`; the session of the day that is named, else the one in hand."""
    today = today_in(group, visit.now)
    if order.until == "always":
        return Holds()
    if order.until is not None:
        return Holds(None, today, last_day(order.until, today))
    if (ahead := WEEKS.get(order.day or "")) is not None:
        monday = monday_of(today) + ahead
        return Holds(None, max(today, monday), monday + WEEK - timedelta(days=1))
    found = await of_day(visit, order.day) if order.day else None
    coming = find_days(order.day, today) if order.day else ()
    if found is None and coming and coming[0] > today:
        return Holds(None, coming[0], coming[0])
    return Holds(found or await session_with(visit, order, group))


def last_day(until: str, today: date) -> date:
    """`sunday`, `two weeks`, `month`, `april` (the day before it begins); a week where it can't be told."""
    if until == "month":
        return today.replace(day=monthrange(today.year, today.month)[1])
    if until in _MONTHS:
        return _before_month(_MONTHS.index(until) + 1, today)
    days = find_days(until, today)
    if not days:
        return today + timedelta(days=read_span(until) or WEEK.days)
    return days[0] + WEEK if days[0] == today and until not in {"today", "tonight"} else days[0]


def _before_month(month: int, today: date) -> date:
    year = today.year if month > today.month else today.year + 1
    return date(year, month, 1) - timedelta(days=1)


async def session_with(visit: Visit, order: Order, group: Group) -> SessionRecord | None:
    """What was just shown, else what comes next; where what is meant isn't in it, the next in which it is."""
    today = today_in(group, visit.now)
    theirs = [one for one in await at_hand(visit) if one.group_id == group.id]
    coming = sorted(
        (one for one in theirs if one.day >= today), key=lambda one: (one.day, one.posted_at is None)
    )
    found = [await just_shown(visit, theirs), *coming, await visit.uow.sessions.latest_posted(group.id)]
    known = [one for one in found if one is not None]
    return next((one for one in known if stands_in(one, order)), next(iter(known), None))


def stands_in(record: SessionRecord, order: Order) -> bool:
    """Whether any line is of what an order is of."""
    return order.movement is None or any(is_meant(order, line.movement) for line in record.session.every_line)


def is_meant(order: Order, movement: str) -> bool:
    """Of no movement, all are; of a family, whatever is called so: `no squats`."""
    if order.movement is None:
        return order.step != "other"
    return movement == order.movement or (order.step == "out" and is_called(order.called, movement))


async def card_if_any(visit: Visit, shown: SessionRecord | None, athlete: Membership) -> Outcome:
    """Nothing of who has no version yet."""
    try:
        return await card(visit, shown, athlete) if shown else Outcome()
    except UnknownThing:
        return Outcome()


async def card(visit: Visit, shown: SessionRecord, athlete: Membership) -> Outcome:
    return visit.told(await card_of(visit, shown, athlete), session=shown.id, person=athlete.person_id)
