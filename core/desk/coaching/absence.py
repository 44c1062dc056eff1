"""A coach leaves somebody out for a while, who is on holiday: they are waited for and looked after by nobody."""

from collections.abc import Collection
from datetime import date
from typing import Final

from core.desk.coaching.ordering_says import AwayTold, BackTold
from core.desk.outcome import Outcome
from core.desk.visit import Visit
from core.scaling.orders import Pin
from core.store.records import Membership
from core.store.unit import Unit

# It stands among the orders of the coach, in the place of a movement; no line is written so.
AWAY: Final = "*away*"


async def leave_out(visit: Visit, athlete: Membership, since: date, until: date | None) -> Outcome:
    """From a day to another, both in it; without one until the coach takes it back."""
    order = await visit.uow.orders.give(
        group_id=athlete.group_id,
        person_id=athlete.person_id,
        session_id=None,
        movement=AWAY,
        pin=Pin(block=1, line=1, since=since, until=until),
        by_id=visit.person.id,
        now=visit.now,
    )
    said = AwayTold(
        athlete=athlete.person.name,
        group=athlete.group_id,
        person=athlete.person_id,
        order=order.id,
        since=since,
        until=until,
    )
    return visit.told(said)


async def count_in_again(visit: Visit, athlete: Membership) -> Outcome:
    """Whatever was said of an absence of theirs is over."""
    told = await visit.uow.orders.standing_for(athlete.group_id, AWAY)
    theirs = [one for one in told if one.person_id == athlete.person_id]
    for one in theirs:
        await visit.uow.orders.undo(one.id, visit.now)
    return visit.told(BackTold(athlete=athlete.person.name, was_away=bool(theirs)))


async def away_on(uow: Unit, group: int, day: date) -> Collection[int]:
    """Who is left out on that day: person ids."""
    told = await uow.orders.standing_for(group, AWAY)
    return frozenset(one.person_id for one in told if one.person_id and one.pin.counts_on(day))
