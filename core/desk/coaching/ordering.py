"""A coach decides in words what one athlete does of a session, or of all that come until some day."""

import re
from collections.abc import Mapping, Sequence

from core.athletes.limits import limit
from core.desk.access import admitted
from core.desk.coached import Roster, athlete_in
from core.desk.coaching.commands import TakeOrdersBack
from core.desk.coaching.holds import Holds, card, for_which, session_with
from core.desk.coaching.ordered_days import allow_again, of_no_line
from core.desk.coaching.ordered_lines import (
    alike,
    as_written_there,
    is_done_so,
    is_so_already,
    owns_load,
    pins_of,
    standing,
    why_not,
    work_of,
)
from core.desk.coaching.ordering_says import NobodyCalled, NothingToLookAt, OrderNotDone, OrdersGone, WhyNot
from core.desk.coaching.overseeing import try_on
from core.desk.coaching.standing import keep, named, ordered
from core.desk.errors import AlreadyDone, UnknownThing
from core.desk.outcome import Outcome
from core.desk.sessions.landing import Tried
from core.desk.versions.showing import EVERY_LINE, spared_as, spared_in, written_at
from core.desk.versions.waiting import seen_by
from core.desk.visit import Visit
from core.scaling.orders import Pin
from core.scaling.values import Because, Version
from core.store.records import CoachOrder, Membership, SessionRecord
from core.understanding.acts import Order


async def carry_out_order(
    visit: Visit, order: Order, athlete: Membership, spared: Sequence[str] = ()
) -> Outcome:
    """What comes of it is shown; what can't be done is said, and nothing of it stays.

    `spared`: limits for whose sake it is ordered; in the one session that it is of, what stands in spares those of
    a part of the body too.
    """
    if order.step == "allowed":
        return await allow_again(visit, order, athlete)
    if order.movement is None and (of_all := await of_no_line(visit, order, athlete)):
        return of_all
    group = await visit.group(athlete.group_id)
    holds = await for_which(visit, order, group)
    shown = holds.record or await session_with(visit, order, group)
    order = as_written_there(order, shown) if shown else order
    try:
        one = await try_on(visit, shown, athlete) if shown else None
    except UnknownThing:
        one = None
    if shown is None or one is None:
        return await untried(visit, order, athlete, holds)
    pins = dict(pins_of(order, shown, one)) if holds.record else standing(order)
    why = why_not(order, holds, pins)
    if why is not None:
        return await not_done(visit, order, athlete, shown, why)
    for meant in (order, *alike(order)):
        pins = dict(pins_of(meant, shown, one)) | sparing(order, spared) if holds.record else standing(meant)
        done = await given(visit, meant, athlete, holds, one, shown, pins)
        if done is not None:
            return done
    has_it = order.step not in {"load", "number"} or owns_load(one.profile, order.amount or 0)
    return await not_done(visit, order, athlete, shown, "nothing_fits" if has_it else "not_theirs")


def sparing(order: Order, spared: Sequence[str]) -> dict[str, Pin]:
    """Never an illness or an operation: whether there is a session at all with these, their own word decides."""
    asked = [one for one in spared if limit(one).of_lines] if order.step in {"out", "other"} else []
    return {spared_as(one): Pin(block=1, line=1) for one in asked}


async def untried(visit: Visit, order: Order, athlete: Membership, holds: Holds) -> Outcome:
    """Before there is a version to look at: what needs none is kept for those to come, and tried in each."""
    pins = standing(order)
    if not pins:
        return nothing_there(visit, athlete)
    kept = [await keep(visit, athlete, holds, movement, pin) for movement, pin in pins.items()]
    return visit.told(ordered(visit, order, athlete, holds, kept[0]))


async def given(
    visit: Visit,
    order: Order,
    athlete: Membership,
    holds: Holds,
    before: Tried,
    shown: SessionRecord,
    pins: Mapping[str, Pin],
) -> Outcome | None:
    """It stays if it can be followed in the session before the coach, as far as it is about that one; else None."""
    earlier = await visit.uow.orders.standing(athlete.group_id, athlete.person_id, shown.id)
    if holds.record is None:
        await let_go_here(visit, athlete, shown, pins)
    kept = [await keep(visit, athlete, holds, movement, pin) for movement, pin in pins.items()]
    here = kept[0].pin.counts_on(shown.day)
    if here and not await is_followed(visit, shown, athlete, pins):
        for one in kept:
            await visit.uow.orders.undo(one.id, visit.now)
        await stand_again(visit, athlete, shown, earlier)
        return None
    so_already = here and work_of(await try_on(visit, shown, athlete)) == work_of(before)
    came = {
        "tried": True,
        "counted": order.step == "other" and bool(re.search("[0-9]", order.text)) and order.until is None,
        "seen": here and not so_already and await seen_by(visit, shown, athlete.person) is not None,
        "so_already": so_already,
        "spares": tuple(limit_id for name in pins if (limit_id := spared_in(name))),
    }
    said = ordered(visit, order, athlete, holds, kept[0]).model_copy(update=came)
    changes = here and not (said.so_already and said.lasts)
    return visit.told(said) + (await card(visit, shown, athlete) if changes else Outcome())


async def stand_again(
    visit: Visit, athlete: Membership, shown: SessionRecord, earlier: Sequence[CoachOrder]
) -> None:
    """What gave way to an order that came to nothing: nothing has changed."""
    left = await visit.uow.orders.standing(athlete.group_id, athlete.person_id, shown.id)
    for one in earlier:
        if one.id not in {each.id for each in left}:
            await visit.uow.orders.give(
                group_id=one.group_id,
                person_id=athlete.person_id,
                session_id=one.session_id,
                movement=one.movement,
                pin=one.pin,
                by_id=visit.person.id,
                now=visit.now,
            )


async def let_go_here(
    visit: Visit, athlete: Membership, shown: SessionRecord, pins: Mapping[str, Pin]
) -> None:
    """What was decided before for this session alone gives way to the newer word for all."""
    before = await visit.uow.orders.standing(athlete.group_id, athlete.person_id, shown.id)
    for one in before:
        if one.session_id is not None and (EVERY_LINE in pins or one.movement in pins):
            await visit.uow.orders.undo(one.id, visit.now)


async def is_followed(
    visit: Visit, shown: SessionRecord, athlete: Membership, pins: Mapping[str, Pin]
) -> bool:
    """Whether any of the lines that are meant is so now; nothing has to be where none is."""
    after = await try_on(visit, shown, athlete)
    assert isinstance(after.version, Version), "who has no version is not looked at"
    written = [(written_at(shown.session, spot), line) for spot, line in after.version.spots]
    meant = [(pins.get(name) or pins.get(EVERY_LINE), line) for name, line in written]
    found = [(pin, line) for pin, line in meant if pin is not None]
    return not found or any(
        is_so_already(pin, line)
        or (pin.without is None and is_done_so(pin, line) and line.reason.because is Because.COACH)
        for pin, line in found
    )


async def not_done(
    visit: Visit, order: Order, athlete: Membership, shown: SessionRecord, why: WhyNot
) -> Outcome:
    """Said before their version, where it can be done by a tap."""
    said = OrderNotDone(
        athlete=athlete.person.name,
        why=why,
        movement=named(order),
        to=order.to,
        title=shown.session.title,
        way=order.way is not None,
        amount=order.instead_of if why == "no_number" else order.amount,
    )
    return visit.told(said) + await card(visit, shown, athlete)


async def not_clear(visit: Visit, order: Order, athlete: Membership) -> Outcome:
    """Their version, where it can be done by a tap; nothing that is only half understood is carried out."""
    shown = await session_with(visit, order, await visit.group(athlete.group_id))
    try:
        return (
            await not_done(visit, order, athlete, shown, "unclear")
            if shown
            else nothing_there(visit, athlete)
        )
    except UnknownThing:
        return nothing_there(visit, athlete)


def nobody_called(visit: Visit, names: Sequence[str], athletes: Roster) -> Outcome:
    """Nobody shall think that something was ordered for somebody who isn't there."""
    known = tuple(dict.fromkeys(one.person.name for one in athletes.everybody))
    return visit.told(NobodyCalled(names=tuple(names), known=known)) if names else Outcome()


def nothing_there(visit: Visit, athlete: Membership) -> Outcome:
    return visit.told(NothingToLookAt(athlete=athlete.person.name))


@admitted
async def take_orders_back(visit: Visit, command: TakeOrdersBack) -> Outcome:
    """All that was ordered of them in the same words."""
    athlete = await athlete_in(visit.uow, command.group, command.person)
    order = await visit.uow.orders.find(command.order, command.group, command.person)
    if order is None:
        raise UnknownThing
    every = await visit.uow.orders.standing(command.group, command.person, order.session_id)
    gone = [one for one in every if one.made_at == order.made_at]
    if not gone:
        raise AlreadyDone
    for one in gone:
        await visit.uow.orders.undo(one.id, visit.now)
    return visit.told(OrdersGone(athlete=athlete.person.name)) + Outcome(settles=True)
