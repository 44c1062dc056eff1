"""The coach and single athletes: who needs them, what is decided for whom, and asking back."""

from collections.abc import Mapping
from dataclasses import replace
from typing import Any

from core.athletes.complaints import sides_of
from core.desk.access import admitted
from core.desk.coached import athlete_in, called_in, coached_ids
from core.desk.coaching.commands import (
    AcceptVersion,
    AskAthlete,
    LookAtAthlete,
    MakeStanding,
    OrderLine,
    SeeNeeds,
    SeeWhoGetsWhat,
)
from core.desk.coaching.noting import shown
from core.desk.coaching.says import (
    AnswerPassedOn,
    AthleteAnswers,
    AthleteAsked,
    AthleteCard,
    CoachAsks,
    LineChoices,
    MadeStanding,
    Needing,
    NobodyNeedsYou,
    NothingFurther,
    SessionNamed,
)
from core.desk.commands import MyVersion
from core.desk.days import RECENT
from core.desk.errors import AlreadyDone, StalePress, UnknownThing
from core.desk.outcome import Outcome, Say
from core.desk.sessions.landing import Tried, in_need, try_on_group
from core.desk.sessions.says import WhoGetsWhat
from core.desk.talk.passing_on import seen_of
from core.desk.versions.says import VersionReleased
from core.desk.versions.showing import decided_of, profile_today, written_at
from core.desk.versions.version import my_version, worked_out
from core.desk.versions.waiting import coaches_of, seen_by
from core.desk.visit import Visit
from core.movements.lookup import catalogue
from core.scaling.adjusting import Barred, as_written, easier, harder, something_else
from core.scaling.group import gets_of
from core.scaling.orders import Pin
from core.scaling.values import Spot, Version, VersionLine, Withheld
from core.store.records import CoachOrder, Membership, Person, SessionRecord, SessionState

STEPS = {"easier": easier, "harder": harder, "other": something_else}


@admitted
async def see_needs(visit: Visit, command: SeeNeeds) -> Outcome:
    record = await session_to_oversee(visit, command.session)
    if record.revision != command.revision:
        raise StalePress
    needing = await still_needing(visit, record)
    if needing is None:
        raise AlreadyDone
    return visit.told(needing)


async def still_needing(visit: Visit, record: SessionRecord) -> Needing | None:
    """Who needs the coach for this session; None where nobody does (any more), and nobody was stopped."""
    tried, _ = await try_on_group(visit, record)
    people = tuple(await in_need(visit, record, tried))
    stopped = tuple(one.person.name for one in tried if isinstance(one.version, Withheld))
    if not people and not stopped:
        return None
    return Needing(
        session_id=record.id,
        revision=record.revision,
        of=await named(visit, record),
        people=people,
        stopped=stopped,
    )


async def named(visit: Visit, record: SessionRecord) -> SessionNamed:
    several = len(await coached_ids(visit)) > 1
    return SessionNamed(
        title=record.session.title,
        day=record.day,
        posted=record.state is SessionState.POSTED,
        group=(await visit.group(record.group_id)).title if several else None,
    )


async def who_needs_me(visit: Visit) -> Outcome | None:
    """One answer, however it was asked: of what was posted lately in each group, and of what is about to be."""
    groups = await coached_ids(visit)
    if not groups:
        return None
    posted = [await visit.uow.sessions.latest_posted(one) for one in groups]
    records = [one for one in posted if one and one.posted_at and one.posted_at >= visit.now - RECENT]
    draft = await visit.uow.sessions.newest_draft(visit.person.id, groups)
    records += await visit.uow.sessions.scheduled_in(groups)
    records += [draft] if draft else []
    records.sort(key=lambda one: (one.day < visit.now.date(), one.day))  # what comes next goes first
    found = [one for one in [await still_needing(visit, record) for record in records] if one]
    if not found:
        return visit.told(NobodyNeedsYou(sessions=tuple([await named(visit, one) for one in records])))
    later = (one.model_copy(update={"is_later": True, "stopped": ()}) for one in found[1:] if one.people)
    return sum([visit.told(one) for one in (found[0], *later)], Outcome())


@admitted
async def see_who_gets_what(visit: Visit, command: SeeWhoGetsWhat) -> Outcome:
    record = await session_to_oversee(visit, command.session)
    if record.revision != command.revision:
        raise StalePress
    tried, _ = await try_on_group(visit, record)
    lines = gets_of([one.version for one in tried])
    if not lines:
        raise AlreadyDone
    return visit.told(WhoGetsWhat(lines=lines, units=(await visit.group(record.group_id)).units))


@admitted
async def look_at_athlete(visit: Visit, command: LookAtAthlete) -> Outcome:
    record = await session_to_oversee(visit, command.session)
    member = await athlete_in(visit.uow, record.group_id, command.person)
    return visit.told(await card_of(visit, record, member), session=record.id, person=member.person_id)


async def card_of(visit: Visit, record: SessionRecord, athlete: Membership) -> AthleteCard:
    one = await try_on(visit, record, athlete)
    assert isinstance(one.version, Version), "who has no version is not looked at"
    ordered = await orders_of(visit, record, athlete.person)
    noted = await visit.uow.faults.standing(record.group_id, athlete.person_id)
    decided = [
        place
        for place, (spot, _) in enumerate(one.version.spots, 1)
        if decided_of(written_at(record.session, spot), ordered)
    ]
    return AthleteCard(
        session_id=record.id,
        revision=record.revision,
        group=record.group_id,
        person=athlete.person_id,
        version=one.version,
        held=athlete.held,
        goes_heavier=athlete.goes_heavier,
        volume_first=athlete.volume_first,
        spares=(one.profile.limits or ()) if athlete.shares_limits else (),
        sides=tuple(sides_of(one.profile).items()) if athlete.shares_limits else (),
        needs=one.version.needs_coach,
        words=await seen_of(visit, athlete),
        faults=tuple([shown(one) for one in noted]),
        ordered=tuple(decided),
        units=(await visit.group(record.group_id)).units,
    )


async def try_on(visit: Visit, record: SessionRecord, athlete: Membership) -> Tried:
    theirs = visit.seen_as(athlete.person)
    profile = await profile_today(theirs, record)
    version = await worked_out(theirs, record, profile)
    if isinstance(version, Withheld):
        raise UnknownThing
    return Tried(athlete.person, profile, version, athlete.held)


@admitted
async def order_line(visit: Visit, command: OrderLine) -> Outcome:
    """Decide about one line of one athlete; the card shows what comes of it."""
    record = await session_to_oversee(visit, command.session)
    member = await athlete_in(visit.uow, record.group_id, command.person)
    one = await try_on(visit, record, member)
    spot, line = place_in(one, command.place)
    if command.step == "menu":
        return visit.told(await choices(visit, record, one, command.place))
    if command.step == "free":
        await free(visit, record, member.person, written_at(record.session, spot))
        return visit.told(await card_of(visit, record, member)) + Outcome(settles=True)
    pin = pin_for(record, one, spot, line, command.step)
    if pin is None:
        return Outcome(toast=NothingFurther())
    await visit.uow.orders.give(
        group_id=record.group_id,
        person_id=member.person_id,
        session_id=record.id,
        movement=written_at(record.session, spot),
        pin=pin.model_copy(update={"by": "coach", "cause": None}),
        by_id=visit.person.id,
        now=visit.now,
    )
    return visit.told(await card_of(visit, record, member)) + Outcome(settles=True)


def pin_for(record: SessionRecord, one: Tried, spot: Spot, line: VersionLine, step: str) -> Pin | None:
    if step == "written":
        pin = as_written(record.session, one.profile, catalogue(), spot)
        return None if isinstance(pin, Barred) else pin
    return STEPS[step](record.session, one.profile, catalogue(), spot, line)


async def choices(visit: Visit, record: SessionRecord, one: Tried, place: int) -> LineChoices:
    spot, line = place_in(one, place)
    orders = await orders_of(visit, record, one.person)
    return LineChoices(
        session_id=record.id,
        person=one.person.id,
        athlete=one.person.name,
        place=place,
        line=line,
        is_ordered=any(order.movement == written_at(record.session, spot) for order in orders),
        units=(await visit.group(record.group_id)).units,
    )


async def free(visit: Visit, record: SessionRecord, athlete: Person, movement: str) -> None:
    """Nothing decided for this movement stands any more, here or always."""
    for order in await orders_of(visit, record, athlete):
        if order.movement == movement:
            await visit.uow.orders.undo(order.id, visit.now)


@admitted
async def make_standing(visit: Visit, command: MakeStanding) -> Outcome:
    record = await session_to_oversee(visit, command.session)
    member = await athlete_in(visit.uow, record.group_id, command.person)
    one = await try_on(visit, record, member)
    spot, _ = place_in(one, command.place)
    movement = written_at(record.session, spot)
    decided = [order for order in await orders_of(visit, record, member.person) if order.movement == movement]
    if not decided:
        raise StalePress
    await visit.uow.orders.give(
        group_id=record.group_id,
        person_id=member.person_id,
        session_id=None,
        movement=movement,
        pin=decided[-1].pin,
        by_id=visit.person.id,
        now=visit.now,
    )
    return visit.told(MadeStanding(athlete=member.person.name, movement=movement)) + Outcome(settles=True)


@admitted
async def accept_version(visit: Visit, command: AcceptVersion) -> Outcome:
    """Fine as proposed: what waited for it goes out; who has seen a version sees what was decided since.

    Where nobody waits, the coach is going through the group, and is shown who is left.
    """
    record = await session_to_oversee(visit, command.session)
    if record.revision != command.revision:
        raise StalePress
    member = await athlete_in(visit.uow, record.group_id, command.person)
    asked = await visit.uow.versions.current(record.id, member.person_id)
    seen = await seen_by(visit, record, member.person)
    await give_ok(visit, record, member.person_id)
    if asked is None:
        return Outcome(settles=True) + await going_on(visit, record, member)
    if seen and not await orders_of(visit, record, member.person):
        return Outcome(settles=True)
    told = Outcome() if seen else visit.told(VersionReleased(athlete=member.person.name))
    return told + await send_version(visit, record, member) + Outcome(settles=True)


async def going_on(visit: Visit, record: SessionRecord, looked_at: Membership) -> Outcome:
    """What follows an OK for somebody who doesn't wait: that it is kept where they are held, and who is left."""
    name, left = looked_at.person.name, await still_needing(visit, record)
    told = visit.told(VersionReleased(athlete=name, asked=False)) if looked_at.held else Outcome()
    return told + visit.told(left) if left and left.people else told


async def give_ok(visit: Visit, record: SessionRecord, person_id: int) -> None:
    await visit.uow.oks.give(
        session_id=record.id,
        revision=record.revision,
        person_id=person_id,
        by_id=visit.person.id,
        now=visit.now,
    )


async def send_version(visit: Visit, record: SessionRecord, athlete: Membership) -> Outcome:
    """The athlete's version as it is now, into their own chat."""
    chat = await visit.uow.chats.private_of(athlete.person_id)
    if chat is None:
        raise UnknownThing
    themselves = replace(athlete.person, name=athlete.own_name)
    return await my_version(visit.seen_as(themselves, chat.id), MyVersion(session=record.id))


@admitted
async def ask_athlete(visit: Visit, command: AskAthlete) -> Outcome:
    """The athlete is asked in private; what they write next goes back to this coach."""
    record = await session_to_oversee(visit, command.session)
    member = await athlete_in(visit.uow, record.group_id, command.person)
    one = await try_on(visit, record, member)
    chat = await visit.uow.chats.private_of(member.person_id)
    if chat is None or not isinstance(one.version, Version):
        raise UnknownThing
    written = tuple(need.written for need in one.version.needs_coach if need.written)
    refs = {"chat": visit.chat, "coach": visit.person.id, "group": record.group_id}
    await visit.uow.questions.ask(chat.id, "coach", refs, visit.now)
    asked = Say(chat.id, CoachAsks(coach=visit.person.name, written=written))
    return visit.told(AthleteAsked(athlete=member.person.name)) + Outcome((asked,), settles=True)


async def answer_coach(visit: Visit, refs: Mapping[str, Any], text: str) -> Outcome:
    """What the athlete wrote, passed on as it is, to who asked; to the other coaches if that one coaches no more."""
    await visit.uow.questions.close(visit.chat)
    group: int = refs["group"]
    coaches = await coaches_of(visit, group)
    chats = [await visit.uow.chats.private_of(one.person_id) for one in coaches]
    reached = [chat.id for chat in chats if chat is not None]
    asked = [one for one in reached if one == refs["chat"]]
    what = AthleteAnswers(athlete=await called_in(visit, group), text=text)
    says = tuple(Say(chat, what) for chat in asked or reached)
    return (visit.told(AnswerPassedOn()) if says else Outcome()) + Outcome(says)


async def orders_of(visit: Visit, record: SessionRecord, athlete: Person) -> list[CoachOrder]:
    return await visit.uow.orders.standing(record.group_id, athlete.id, record.id, record.day)


def place_in(one: Tried, place: int) -> tuple[Spot, VersionLine]:
    assert isinstance(one.version, Version), "who has no version is not looked at"
    if not 1 <= place <= len(one.version.spots):
        raise UnknownThing
    return one.version.spots[place - 1]


async def session_to_oversee(visit: Visit, session_id: int) -> SessionRecord:
    """A session that may be done, of a group that the visitor coaches."""
    record = await visit.uow.sessions.find(session_id, await coached_ids(visit))
    if record is None or record.state in {SessionState.DISCARDED, SessionState.WITHDRAWN}:
        raise UnknownThing
    return record
