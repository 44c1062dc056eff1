"""What a coach has ordered for their athletes and still stands, each with a way to take it back."""

from collections.abc import AsyncIterator, Iterator
from datetime import date
from typing import Any

from core.desk.coached import coached_athletes, coached_groups
from core.desk.coaching.absence import AWAY
from core.desk.coaching.ordering_says import HeldNow, InForce, Ordered
from core.desk.days import today_in
from core.desk.outcome import Outcome
from core.desk.versions.showing import AT_MOST, EASY_DAYS, spared_in
from core.desk.visit import Visit
from core.notation.coaching.in_force import asks_what_stands
from core.store.records import CoachOrder, Membership


async def as_in_force(visit: Visit, text: str, _: int | None) -> Outcome | None:
    """`What have I ordered for Cal`: what counts on days to come; None for all else."""
    groups, athletes = await coached_groups(visit), await coached_athletes(visit)
    asked = asks_what_stands(text, tuple(athletes)) if groups else None
    if asked is None:
        return None
    if asked.held:
        return visit.told(HeldNow(names=tuple(one.person.name for one in athletes.everybody if one.held)))
    whose = [athletes[asked.name]] if asked.name else athletes.everybody
    rows = [row for one in whose async for row in standing_for(visit, one)]
    meant = tuple(one for one in rows if not asked.away or one.step == "away")
    return visit.told(InForce(orders=meant, athlete=asked.name, away=asked.away))


async def standing_for(visit: Visit, athlete: Membership) -> AsyncIterator[Ordered]:
    today = today_in(await visit.group(athlete.group_id), visit.now)
    for one in await visit.uow.orders.standing(athlete.group_id, athlete.person_id):
        if one.pin.until is None or one.pin.until >= today:
            yield as_ordered(one, athlete, today)


def as_ordered(kept: CoachOrder, athlete: Membership, today: date) -> Ordered:
    """As it was said when it was ordered."""
    return Ordered(
        athlete=athlete.person.name,
        group=athlete.group_id,
        person=athlete.person_id,
        order=kept.id,
        title=None,
        day=today,
        lasts=True,
        since=kept.pin.since,
        until=kept.pin.until,
        tried=True,
        **dict(asked_by(kept)),
    )


def asked_by(kept: CoachOrder) -> Iterator[tuple[str, Any]]:
    """The fields of the order that this was."""
    pin, special = kept.pin, {EASY_DAYS: "easier", AT_MOST: "at_most", AWAY: "away"}
    limit = spared_in(kept.movement)
    yield "limit", limit
    yield "movement", None if limit or kept.movement in {*special, ""} else kept.movement
    yield "to", pin.movement
    yield "amount", None if pin.load_kg is None else float(pin.load_kg)
    steps = (
        (kept.movement in special, special.get(kept.movement)),
        (limit, "spare"),
        (pin.without, "out"),
        (pin.bare, "bare"),
        (pin.share, "half" if pin.share == 0.5 else "fewer"),  # noqa: PLR2004 - as it is ordered
        (pin.load_kg and not pin.movement, "load"),
    )
    yield "step", next((step for is_so, step in steps if is_so), "other")
