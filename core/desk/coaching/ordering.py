"""A coach decides in words what one athlete does of a session, or of all that come until some day."""

import re
from collections.abc import Iterator, Mapping
from datetime import timedelta
from decimal import Decimal
from typing import Any, Final

from core.athletes.easing import WEEK
from core.athletes.values import Profile
from core.desk.access import admitted
from core.desk.coached import athlete_in
from core.desk.coaching.absence import AWAY, count_in_again, leave_out
from core.desk.coaching.commands import CallWeekEasy, HoldAthlete, TakeOrdersBack
from core.desk.coaching.holds import WEEKS, Holds, for_which, is_written, last_day, session_with
from core.desk.coaching.overseeing import card_of, pin_for, try_on
from core.desk.coaching.says import NothingToLookAt, Ordered, OrderNotDone, OrdersGone, WhyNot
from core.desk.coaching.sparing import spare
from core.desk.days import today_in
from core.desk.errors import AlreadyDone, UnknownThing
from core.desk.outcome import Outcome
from core.desk.sessions.landing import Tried
from core.desk.sessions.meant import at_hand, in_hand
from core.desk.today.easy_weeks import call_week_easy
from core.desk.versions.holding import hold_athlete
from core.desk.versions.showing import EVERY_LINE, written_at
from core.desk.versions.waiting import seen_by
from core.desk.visit import Visit
from core.movements.lookup import catalogue
from core.movements.values import Pattern
from core.notation.calendar.moments import find_days
from core.notation.coaching.easing import monday_of
from core.scaling.orders import Pin
from core.scaling.values import Because, Spot, Version, VersionLine
from core.sessions.values import Line
from core.store.records import CoachOrder, Membership, SessionRecord
from core.understanding.acts import Order

# What an order asks of a line whatever it is like; the others are a step from what is shown.
_ASKS: Final[Mapping[str, Any]] = {
    "out": lambda order: {"without": order.called or order.movement},
    "other": lambda order: {"movement": order.to, "variant": order.way},
    "bare": lambda _: {"bare": True},
    "fewer": lambda _: {"share": 0.75},
    "half": lambda _: {"share": 0.5},
    "load": lambda order: {"load_kg": Decimal(f"{order.amount:g}")},
}
_STEPS: Final = frozenset({"easier", "harder", "written"})


async def carry_out_order(visit: Visit, order: Order, athlete: Membership) -> Outcome:
    """What comes of it is shown; what can't be done is said, and nothing of it stays."""
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
        return await ahead(visit, order, athlete, holds)
    pins = dict(pins_of(order, shown, one)) if holds.record else standing(order)
    why = why_not(order, holds, pins)
    if why is not None:
        return await not_done(visit, order, athlete, shown, why)
    for meant in (order, *alike(order)):
        pins = dict(pins_of(meant, shown, one)) if holds.record else standing(meant)
        done = await given(visit, meant, athlete, holds, one, shown, pins)
        if done is not None:
            return done
    has_it = order.step not in {"load", "number"} or owns_load(one.profile, order.amount or 0)
    return await not_done(visit, order, athlete, shown, "nothing_fits" if has_it else "not_theirs")


async def ahead(visit: Visit, order: Order, athlete: Membership, holds: Holds) -> Outcome:
    """Before there is a session to look at: what shall be so in all that come is kept, and tried in each."""
    pins = standing(order) if holds.record is None and (holds.until or order.until == "always") else {}
    if not pins:
        return nothing_there(visit, athlete)
    kept = [await keep(visit, athlete, holds, movement, pin) for movement, pin in pins.items()]
    said = Ordered(
        athlete=athlete.person.name,
        group=athlete.group_id,
        person=athlete.person_id,
        order=kept[0].id,
        step=order.step or "other",
        movement=order.movement,
        title=None,
        day=visit.now.date(),
        lasts=True,
        since=holds.since,
        until=holds.until,
        seen=False,
    )
    return visit.told(said)


async def of_no_line(visit: Visit, order: Order, athlete: Membership) -> Outcome | None:
    """They are away, are held, or have an easy week; None for what becomes of the lines of a session."""
    if order.step == "away" or (order.step == "rest" and order.until not in {None, "always"}):
        return await away(visit, order, athlete)
    if order.step == "back":
        return await count_in_again(visit, athlete)
    if order.step == "rest":
        held = HoldAthlete(group=athlete.group_id, person=athlete.person_id, yes=True)
        return await hold_athlete(visit, held)
    if order.step == "normal":
        return await all_taken_back(visit, athlete)
    if order.limit is not None:
        return await left_out_of_all(visit, order, order.limit, athlete)
    ahead = WEEKS.get(order.day or "")
    return await ease_week(visit, ahead, athlete) if order.step == "easier" and ahead is not None else None


async def left_out_of_all(visit: Visit, order: Order, limit: str, athlete: Membership) -> Outcome:
    group = await visit.group(athlete.group_id)
    holds = await for_which(visit, order, group)
    shown = holds.record or await session_with(visit, order, group)
    days = (holds.since, holds.until)
    told = await spare(visit, athlete, limit, holds.record, shown, days)
    counts = shown is not None and all(a <= shown.day <= b for a, b in [days] if a and b)
    return told + await card_if_any(visit, shown, athlete) if counts else told


async def card_if_any(visit: Visit, shown: SessionRecord | None, athlete: Membership) -> Outcome:
    """Nothing of who has no version yet."""
    try:
        return await card(visit, shown, athlete) if shown else Outcome()
    except UnknownThing:
        return Outcome()


async def all_taken_back(visit: Visit, athlete: Membership) -> Outcome:
    """`Bente normal again`: whatever was ordered of them and stands."""
    every = await standing_of(visit, athlete)
    for one in every:
        await visit.uow.orders.undo(one.id, visit.now)
    shown = await in_hand(visit)
    theirs = shown if shown and shown.group_id == athlete.group_id else None
    gone = OrdersGone(athlete=athlete.person.name, none=not every)
    return visit.told(gone) + await card_if_any(visit, theirs, athlete)


async def standing_of(visit: Visit, athlete: Membership) -> list[CoachOrder]:
    """All that was ordered of them and stands, for one session or for more; who is away stays so."""
    at = (athlete.group_id, athlete.person_id)
    sessions = [None, *(one.id for one in await at_hand(visit))]
    found = [one for session in sessions for one in await visit.uow.orders.standing(*at, session)]
    return [*{one.id: one for one in found if one.movement != AWAY}.values()]


def owns_load(profile: Profile, kg: float) -> bool:
    """Whether they have anything that weighs so much, or can be made to."""
    return any(
        kg in {float(load) for load in one.loads_kg}
        or (one.to_kg is not None and float(one.from_kg or 0) <= kg <= float(one.to_kg))
        for one in profile.equipment or ()
    )


def as_written_there(order: Order, shown: SessionRecord) -> Order:
    """`No rows`, where bent-over rows are all the rows that stand there: these are meant."""
    if order.movement is None or is_written(shown, order.movement):
        return order
    written = {line.movement for line in shown.session.every_line}
    called = [one for one in written if one.split()[-1] == order.movement.split()[-1]]
    if len(called) != 1:
        return order
    return order.model_copy(update={"movement": called[0], "called": order.movement})


def alike(order: Order) -> Iterator[Order]:
    """The same with what is called like it: rows may be on a machine, with a bell or under a table."""
    if order.step != "other" or order.to is None or order.movement is None or travels(order.movement):
        return
    called = order.to.split()[-1]
    others = (one.id for one in catalogue().movements if one.id.split()[-1] == called)
    yield from (order.model_copy(update={"to": one}) for one in others if one != order.to)


def travels(movement: str) -> bool:
    return catalogue().movement(movement).pattern is Pattern.TRAVEL


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


async def ease_week(visit: Visit, ahead: timedelta, athlete: Membership) -> Outcome:
    """`Finn needs to take it easier this week` is an easy week of theirs."""
    monday = monday_of(today_in(await visit.group(athlete.group_id), visit.now)) + ahead
    called = CallWeekEasy(
        group=athlete.group_id, monday=monday.toordinal(), yes=True, person=athlete.person_id
    )
    return await call_week_easy(visit, called)


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
    asked: Line = getattr(record.session.blocks[spot.block - 1], spot.part)[spot.line - 1]
    if order.step == "number":
        return pin_for_number(order, spot, asked)
    written = asked.amount
    if order.step != "amount" or order.amount is None or not written or order.amount > written:
        return None
    return Pin(**spot._asdict(), share=order.amount / written)


def pin_for_number(order: Order, spot: Spot, asked: Line) -> Pin | None:
    """`16 not 24`, of the line that has that load or that many; None of all others."""
    new, old = order.amount or 0, order.instead_of
    if old in {float(one) for one in asked.loads_kg}:
        return Pin(**spot._asdict(), load_kg=Decimal(f"{new:g}"))
    is_less = asked.amount == old and 0 < new <= (old or 0)
    return Pin(**spot._asdict(), share=new / asked.amount) if is_less and asked.amount else None


def why_not(order: Order, holds: Holds, pins: Mapping[str, Pin]) -> WhyNot | None:
    """Why nothing can come of an order; None where something can."""
    if pins:
        return None
    if order.step in {"rounds", "number"}:
        return "rounds" if order.step == "rounds" else "no_number"
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
    before: Tried,
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
        counted=order.step == "other" and bool(re.search("[0-9]", order.text)) and order.until is None,
        seen=here and await seen_by(visit, shown, athlete.person) is not None,
        so_already=here and work_of(await try_on(visit, shown, athlete)) == work_of(before),
    )
    return visit.told(said) + (await card(visit, shown, athlete) if here else Outcome())


def work_of(one: Tried) -> list[tuple[Any, ...]]:
    """What they do of each line, whatever it is for."""
    assert isinstance(one.version, Version), "who has no version is not looked at"
    return [
        (line.movement, line.variant, line.implement, line.count, line.load_kg, line.amount, line.scheme)
        for _, line in one.version.spots
    ]


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


def is_so_already(pin: Pin, line: VersionLine) -> bool:
    """Whether the line is what was ordered by whatever else: their own wish of the day goes first."""
    asks = pin.without is not None or pin.movement is not None or pin.bare
    as_named = is_done_so(pin, line) and not pin.leaves_out(line.movement)
    return asks and as_named and not (pin.bare and line.load_kg)


def is_done_so(pin: Pin, line: VersionLine) -> bool:
    """The movement and the way that are named, where they are."""
    return pin.movement in {None, line.movement} and pin.variant in {None, line.variant}


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
        athlete=athlete.person.name,
        why=why,
        movement=order.movement,
        to=order.to,
        title=shown.session.title,
        way=order.way is not None,
        amount=order.instead_of if why == "no_number" else order.amount,
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
