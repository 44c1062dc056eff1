"""An order of a coach is kept, for one session or for those of some days, and it is said what stands."""

from decimal import Decimal

from core.desk.coaching.holds import Holds
from core.desk.coaching.ordering_says import Ordered
from core.desk.versions.waiting import seen_by
from core.desk.visit import Visit
from core.scaling.orders import Pin
from core.store.records import CoachOrder, Membership, SessionRecord
from core.understanding.acts import Order


async def keep(visit: Visit, athlete: Membership, holds: Holds, movement: str, pin: Pin) -> CoachOrder:
    return await visit.uow.orders.give(
        group_id=athlete.group_id,
        person_id=athlete.person_id,
        session_id=holds.record.id if holds.record else None,
        movement=movement,
        pin=pin.model_copy(update={"by": "coach", "cause": None, "since": holds.since, "until": holds.until}),
        by_id=visit.person.id,
        now=visit.now,
    )


def named(order: Order) -> str | None:
    """As the coach calls what goes: the one movement, or all that are called so."""
    return order.called if order.step == "out" and order.called else order.movement


def ordered(visit: Visit, order: Order, athlete: Membership, holds: Holds, kept: CoachOrder) -> Ordered:
    """What is said of an order that stands, before anybody looks at what comes of it."""
    return Ordered(
        athlete=athlete.person.name,
        group=athlete.group_id,
        person=athlete.person_id,
        order=kept.id,
        step=order.step or "other",
        movement=named(order),
        limit=order.limit,
        to=order.to,
        amount=order.amount,
        title=holds.record.session.title if holds.record else None,
        day=holds.record.day if holds.record else visit.now.date(),
        lasts=holds.record is None,
        since=holds.since,
        until=holds.until,
    )


async def keep_of_all(
    visit: Visit,
    order: Order,
    athlete: Membership,
    holds: Holds,
    movement: str,
    shown: SessionRecord | None,
) -> Ordered:
    """What is of no line in particular, in the place of a `movement`; `shown`: the session that they may have seen."""
    kg = Decimal(f"{order.amount:g}") if order.step == "at_most" else None
    kept = await keep(visit, athlete, holds, movement, Pin(block=1, line=1, load_kg=kg))
    seen = shown is not None and await seen_by(visit, shown, athlete.person) is not None
    return ordered(visit, order, athlete, holds, kept).model_copy(
        update={"seen": seen, "tried": shown is not None}
    )
