"""A coach decides in words what one athlete does of a session, or of all that come until some day."""

from collections.abc import Iterator, Mapping
from datetime import date, timedelta
from decimal import Decimal
from typing import Any, Final, NamedTuple

from core.athletes.easing import WEEK
from core.desk.access import admitted
from core.desk.coached import athlete_in
from core.desk.coaching.commands import HoldAthlete, TakeOrdersBack
from core.desk.coaching.overseeing import card_of, pin_for, try_on
from core.desk.coaching.says import NothingToLookAt, Ordered, OrderNotDone, OrdersGone, WhyNot
from core.desk.days import today_in
from core.desk.errors import AlreadyDone, UnknownThing
from core.desk.outcome import Outcome
from core.desk.sessions.landing import Tried
from core.desk.sessions.meant import in_hand, of_day
from core.desk.versions.holding import hold_athlete
from core.desk.versions.showing import EVERY_LINE, written_at
from core.desk.versions.waiting import seen_by
from core.desk.visit import Visit
from core.movements.lookup import catalogue
from core.movements.values import Pattern
from core.notation.easing import monday_of
from core.notation.moments import find_days
from core.scaling.orders import Pin
from core.scaling.values import Because, Spot, Version, VersionLine
from core.store.records import CoachOrder, Group, Membership, SessionRecord
from core.understanding.acts import Order

# What an order asks of a line whatever it is like; the others are a step from what is shown.
_ASKS: Final[Mapping[str, Any]] = {
    "out": lambda order: {"without": order.movement},
    "other": lambda order: {"movement": order.to},
    "bare": lambda _: {"bare": True},
    "fewer": lambda _: {"share": 0.75},
    "half": lambda _: {"share": 0.5},
    "load": lambda order: {"load_kg": Decimal(f"{order.amount:g}")},
}
_STEPS: Final = frozenset({"easier", "harder", "written"})


class Holds(NamedTuple):
    """For which sessions an order counts: for one alone, or for all from `since` to `until`, for ever where untold."""

    record: SessionRecord | None = None
    since: date | None = None
    until: date | None = None


async def carry_out_order(visit: Visit, order: Order, athlete: Membership) -> Outcome:
    """What comes of it is shown; what can't be done is said, and nothing of it stays."""
    if order.step == "rest":
        held = HoldAthlete(group=athlete.group_id, person=athlete.person_id, yes=True)
        return await hold_athlete(visit, held)
    group = await visit.group(athlete.group_id)
    holds = await for_which(visit, order, group)
    shown = holds.record or await session_with(visit, order, group)
    try:
        one = await try_on(visit, shown, athlete) if shown else None
    except UnknownThing:
        one = None
    if shown is None or one is None:
        return nothing_there(visit, athlete)
    pins = dict(pins_of(order, shown, one)) if holds.record else standing(order)
    why = why_not(order, holds, pins)
    if why is not None:
        return await not_done(visit, order, athlete, shown, why)
    for meant in (order, *alike(order)):
        pins = dict(pins_of(meant, shown, one)) if holds.record else standing(meant)
        done = await given(visit, meant, athlete, holds, shown, pins)
        if done is not None:
            return done
    return await not_done(visit, order, athlete, shown, "nothing_fits")


def alike(order: Order) -> Iterator[Order]:
    """The same with what is called like it: rows may be on a machine, with a bell or under a table."""
    if order.step != "other" or order.to is None or order.movement is None or travels(order.movement):
        return
    called = order.to.split()[-1]
    others = (one.id for one in catalogue().movements if one.id.split()[-1] == called)
    yield from (order.model_copy(update={"to": one}) for one in others if one != order.to)


def travels(movement: str) -> bool:
    return catalogue().movement(movement).pattern is Pattern.TRAVEL


async def for_which(visit: Visit, order: Order, group: Group) -> Holds:
    """`this week`, `until friday`, `always`; the session of the day that is named, else the one in hand."""
    today = today_in(group, visit.now)
    if order.until == "always":
        return Holds()
    if order.until is not None:
        return Holds(None, today, next(iter(find_days(order.until, today)), today + WEEK))
    if order.day in {"this week", "next week"}:
        monday = monday_of(today) + (WEEK if order.day == "next week" else timedelta(0))
        return Holds(None, max(today, monday), monday + WEEK - timedelta(days=1))
    found = await of_day(visit, order.day) if order.day else None
    coming = find_days(order.day, today) if order.day else ()
    if found is None and coming and coming[0] > today:
        return Holds(None, coming[0], coming[0])
    return Holds(found or await session_with(visit, order, group))


async def session_with(visit: Visit, order: Order, group: Group) -> SessionRecord | None:
    """What is in hand; where the movement isn't in it, what was posted last."""
    found = [await in_hand(visit), await visit.uow.sessions.latest_posted(group.id)]
    known = [one for one in found if one is not None and one.group_id == group.id]
    return next((one for one in known if is_written(one, order.movement)), next(iter(known), None))


def is_written(record: SessionRecord, movement: str | None) -> bool:
    blocks = record.session.blocks
    lines = (line for block in blocks for line in (*block.buy_in, *block.lines, *block.cash_out))
    return movement is None or any(line.movement == movement for line in lines)


def standing(order: Order) -> dict[str, Pin]:
    """What counts wherever the movement is written; nothing where it is a step from what is shown."""
    asks = _ASKS.get(order.step or "")
    if asks is None or (order.step == "other" and order.movement is None):
        return {}
    return {order.movement or EVERY_LINE: Pin(block=1, line=1, **asks(order))}


def pins_of(order: Order, record: SessionRecord, one: Tried) -> Iterator[tuple[str, Pin]]:
    """Each movement that is written and meant, with what its line becomes."""
    assert isinstance(one.version, Version), "who has no version is not looked at"
    for spot, line in one.version.spots:
        written = written_at(record.session, spot)
        meant = order.movement in {written, line.movement} or (
            order.movement is None and order.step != "other"
        )
        pin = pin_of(order, record, one, spot, line) if meant else None
        if pin is not None:
            yield written, pin


def pin_of(order: Order, record: SessionRecord, one: Tried, spot: Spot, line: VersionLine) -> Pin | None:
    """None where there is no such step, or it would be more than is written."""
    if order.step is not None and order.step in _STEPS:
        return pin_for(record, one, spot, line, order.step)
    asks = _ASKS.get(order.step or "")
    if asks is not None:
        return Pin(**spot._asdict(), **asks(order))
    written = getattr(record.session.blocks[spot.block - 1], spot.part)[spot.line - 1].amount
    if order.step != "amount" or order.amount is None or not written or order.amount > written:
        return None
    return Pin(**spot._asdict(), share=order.amount / written)


def why_not(order: Order, holds: Holds, pins: Mapping[str, Pin]) -> WhyNot | None:
    """Why nothing can come of an order; None where something can."""
    if pins:
        return None
    if order.step == "rounds":
        return "rounds"
    if order.step is None or (order.step == "other" and order.movement is None):
        return "unclear"
    if holds.record is None:
        return "one_session"
    if order.movement is not None and not is_written(holds.record, order.movement):
        return "no_line"
    return "more" if order.step == "amount" else "no_step"


async def given(
    visit: Visit,
    order: Order,
    athlete: Membership,
    holds: Holds,
    shown: SessionRecord,
    pins: Mapping[str, Pin],
) -> Outcome | None:
    """It stays if it can be followed in the session before the coach, as far as it is about that one; else None."""
    if holds.record is None:
        await let_go_here(visit, athlete, shown, pins)
    kept = [await keep(visit, athlete, holds, movement, pin) for movement, pin in pins.items()]
    here = kept[0].pin.counts_on(shown.day)
    if here and not await is_followed(visit, shown, athlete, pins):
        for one in kept:
            await visit.uow.orders.undo(one.id, visit.now)
        return None
    said = Ordered(
        athlete=athlete.person.name,
        group=athlete.group_id,
        person=athlete.person_id,
        order=kept[0].id,
        step=order.step or "other",
        movement=order.movement,
        title=shown.session.title,
        day=shown.day,
        lasts=holds.record is None,
        since=holds.since,
        until=holds.until,
        seen=here and await seen_by(visit, shown, athlete.person) is not None,
    )
    return visit.told(said) + (await card(visit, shown, athlete) if here else Outcome())


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
        is_so_already(pin, line) or (pin.without is None and line.reason.because is Because.COACH)
        for pin, line in found
    )


def is_so_already(pin: Pin, line: VersionLine) -> bool:
    """Whether the line is what was ordered by whatever else: their own wish of the day goes first."""
    asks = pin.without is not None or pin.movement is not None or pin.bare
    as_named = pin.movement in {None, line.movement} and pin.without != line.movement
    return asks and as_named and not (pin.bare and line.load_kg)


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


async def not_done(
    visit: Visit, order: Order, athlete: Membership, shown: SessionRecord, why: WhyNot
) -> Outcome:
    """Said before their version, where it can be done by a tap."""
    said = OrderNotDone(
        athlete=athlete.person.name, why=why, movement=order.movement, to=order.to, title=shown.session.title
    )
    return visit.told(said) + await card(visit, shown, athlete)


async def card(visit: Visit, shown: SessionRecord, athlete: Membership) -> Outcome:
    return visit.told(await card_of(visit, shown, athlete), session=shown.id, person=athlete.person_id)


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
