"""A coach's orders of no single line: somebody is away, is held, has easy days, or is spared what is in many lines."""

from datetime import timedelta
from itertools import chain

from core.athletes.easing import WEEK
from core.athletes.limits import ruled_out_by
from core.desk.coaching.absence import AWAY, count_in_again, leave_out
from core.desk.coaching.commands import HoldAthlete
from core.desk.coaching.holds import WEEKS, Holds, card_if_any, for_which, last_day, session_with
from core.desk.coaching.ordering_says import OrdersGone
from core.desk.coaching.standing import keep_of_all
from core.desk.coaching.telling_for import offer_to_tell
from core.desk.days import today_in
from core.desk.outcome import Outcome
from core.desk.sessions.meant import at_hand, in_hand
from core.desk.versions.holding import hold_athlete
from core.desk.versions.showing import AT_MOST, EASY_DAYS, spared_as, spared_in
from core.desk.visit import Visit
from core.movements.lookup import catalogue
from core.notation.calendar.moments import find_days
from core.notation.coaching.easing import monday_of
from core.store.records import CoachOrder, Membership
from core.understanding.acts import Order
from core.understanding.ordering import movements_named
from core.understanding.several import sentences_of


async def of_no_line(visit: Visit, order: Order, athlete: Membership) -> Outcome | None:
    """They are away, are held, or have an easy week; None for what becomes of the lines of a session."""
    is_dated = order.day is not None or order.until not in {None, "always"}
    if order.step == "away" or (order.step == "rest" and is_dated):
        return await away(visit, order, athlete)
    if order.step == "back":
        return await count_in_again(visit, athlete)
    if order.step == "rest":
        held = HoldAthlete(group=athlete.group_id, person=athlete.person_id, yes=True)
        return await hold_athlete(visit, held)
    if order.step == "normal":
        return await all_taken_back(visit, athlete)
    holds = await for_which(visit, order, await visit.group(athlete.group_id))
    is_step = order.step == "easier" and holds.record is not None
    place = None if is_step else place_of(order)
    return None if place is None else await of_all_lines(visit, order, athlete, place, holds)


def place_of(order: Order) -> str | None:
    """What stands in the place of a movement for what is of all lines; None for what is of single ones."""
    if order.step == "easier":
        return EASY_DAYS
    if order.step == "at_most":
        return AT_MOST
    return spared_as(order.limit) if order.limit else None


async def of_all_lines(
    visit: Visit, order: Order, athlete: Membership, movement: str, holds: Holds
) -> Outcome:
    """What is in many lines is left out, or the days are easy: none of it is what the athlete told of themselves."""
    shown = holds.record or await session_with(visit, order, await visit.group(athlete.group_id))
    said = await keep_of_all(visit, order, athlete, holds, movement, shown)
    counts = shown is not None and said.counts_on(shown.day)
    return visit.told(said) + (await card_if_any(visit, shown, athlete) if counts else Outcome())


async def all_taken_back(visit: Visit, athlete: Membership) -> Outcome:
    """`Bente normal again`: whatever was ordered of them and stands."""
    every = await standing_of(visit, athlete)
    for one in every:
        await visit.uow.orders.undo(one.id, visit.now)
    shown = await in_hand(visit)
    theirs = shown if shown and shown.group_id == athlete.group_id else None
    gone = OrdersGone(athlete=athlete.person.name, none=not every)
    return visit.told(gone) + await card_if_any(visit, theirs, athlete)


async def allow_again(visit: Visit, order: Order, athlete: Membership) -> Outcome:
    """`Jonas can run again`: what the coach ruled out of it; where that is nothing, only Jonas can have told it."""
    assert order.movement is not None, "who may do everything again is normal again"
    demands = catalogue().movement(order.movement).variants[0].demands
    ruled = [
        one
        for one in await standing_of(visit, athlete)
        if one.movement == order.movement
        or one.pin.leaves_out(order.movement)
        or ((name := spared_in(one.movement)) and ruled_out_by([name], demands))
    ]
    for one in ruled:
        await visit.uow.orders.undo(one.id, visit.now)
    if not ruled:
        thoughts = chain.from_iterable(sentences_of(order.text))
        told = next((one for one in thoughts if order.movement in movements_named(one)), order.text)
        return await offer_to_tell(visit, athlete, told)
    shown = await session_with(visit, order, await visit.group(athlete.group_id))
    gone = OrdersGone(athlete=athlete.person.name, movement=order.movement)
    return visit.told(gone) + await card_if_any(visit, shown, athlete)


async def standing_of(visit: Visit, athlete: Membership) -> list[CoachOrder]:
    """All that was ordered of them and stands, for one session or for more; who is away stays so."""
    at = (athlete.group_id, athlete.person_id)
    sessions = [None, *(one.id for one in await at_hand(visit))]
    found = [one for session in sessions for one in await visit.uow.orders.standing(*at, session)]
    return [*{one.id: one for one in found if one.movement != AWAY}.values()]


async def away(visit: Visit, order: Order, athlete: Membership) -> Outcome:
    """Until the day that is told, for the week or on the day that is."""
    today = today_in(await visit.group(athlete.group_id), visit.now)
    if order.until is not None and order.until != "always":
        return await leave_out(visit, athlete, today, last_day(order.until, today))
    if (ahead := WEEKS.get(order.day or "")) is not None:
        monday = monday_of(today) + ahead
        return await leave_out(visit, athlete, max(today, monday), monday + WEEK - timedelta(days=1))
    day = next(iter(find_days(order.day, today)), None) if order.day else None
    return await leave_out(visit, athlete, day or today, day)
