"""A coach leaves out of somebody's lines what is in many of them: `no jumping for Odd`, for reasons of their own."""

from datetime import date

from core.desk.coaching.says import Ordered
from core.desk.outcome import Outcome
from core.desk.versions.showing import spared_as
from core.desk.versions.waiting import seen_by
from core.desk.visit import Visit
from core.scaling.orders import Pin
from core.store.records import Membership, SessionRecord


async def spare(
    visit: Visit,
    athlete: Membership,
    limit: str,
    record: SessionRecord | None,
    shown: SessionRecord | None,
    days: tuple[date | None, date | None] = (None, None),
) -> Outcome:
    """In one session, or in all of some days; it is none of what the athlete told of themselves.

    `shown`: the session that they may have seen.
    """
    since, until = days
    order = await visit.uow.orders.give(
        group_id=athlete.group_id,
        person_id=athlete.person_id,
        session_id=record.id if record else None,
        movement=spared_as(limit),
        pin=Pin(block=1, line=1, since=since, until=until),
        by_id=visit.person.id,
        now=visit.now,
    )
    said = Ordered(
        athlete=athlete.person.name,
        group=athlete.group_id,
        person=athlete.person_id,
        order=order.id,
        step="spare",
        movement=None,
        limit=limit,
        title=record.session.title if record else None,
        day=record.day if record else visit.now.date(),
        lasts=record is None,
        since=since,
        until=until,
        seen=shown is not None and await seen_by(visit, shown, athlete.person) is not None,
    )
    return visit.told(said)
