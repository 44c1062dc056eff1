"""A coach calls one date of a class off, or moves it; whoever was in is told."""

from collections.abc import Sequence
from datetime import date, datetime, time
from zoneinfo import ZoneInfo

from core.calendar.occurrences import instant
from core.calendar.slots import local_of, slot_of
from core.desk.access import admitted
from core.desk.classes.coming import seen_by
from core.desk.classes.commands import CancelDate, MoveDate
from core.desk.classes.meetings import Meeting, known_meeting, meetings_on, meetings_to_come, shown
from core.desk.classes.reminding import arm, disarm, habits_for
from core.desk.classes.says import AskWhichDate, ClassDate, DateCalledOff, DateMoved, NoSuchDate
from core.desk.errors import StalePress
from core.desk.outcome import Outcome, Said, Say
from core.desk.visit import Visit
from core.notation.calendar.class_dates import CalledOff, Moved
from core.store.records import Group, Person, Purpose

_MOST_DATES = 4


async def call_off_in_words(visit: Visit, read: CalledOff, groups: Sequence[Group]) -> Outcome:
    """Show the dates that may be meant; a press calls one off."""
    found = await meant(visit, read.days, groups, read.at)
    if not found:
        return await no_such_date(visit, read.days, groups)
    return visit.told(AskWhichDate(dates=tuple([await seen_by(visit, one, coach=True) for one in found])))


async def move_in_words(visit: Visit, read: Moved, groups: Sequence[Group]) -> Outcome:
    """Show the dates that may be meant and where each would go; a press moves one."""
    found = await meant(visit, read.days, groups, None)
    places = [(one, moved_to(one, read)) for one in found]
    possible = [
        (one, to)
        for one, to in places
        if instant(to, one.record.of.zone) > visit.now and to != one.occurrence.local
    ]
    if read.to_day and not read.days:
        possible = nearest(possible)
    if not possible:
        return await no_such_date(visit, read.days, groups)
    dates = tuple([await seen_by(visit, one, coach=True) for one, _ in possible])
    moves = zip(possible, dates, strict=True)
    to = tuple((slot_of(to), on_clock(to, one, date.zone)) for (one, to), date in moves)
    return visit.told(AskWhichDate(dates=dates, to=to))


def nearest(moves: Sequence[tuple[Meeting, datetime]]) -> list[tuple[Meeting, datetime]]:
    """Of each class the date that goes the least far: `move the class to thursday` is no word of next week's."""
    found: dict[int, tuple[Meeting, datetime]] = {}
    for move in sorted(moves, key=lambda one: abs(one[1] - one[0].occurrence.local)):
        found.setdefault(move[0].class_id, move)
    return list(found.values())


def moved_to(meeting: Meeting, read: Moved) -> datetime:
    """The new local start: what isn't named stays, the half of the day too."""
    local = meeting.occurrence.local
    return datetime.combine(read.to_day or local.date(), read.time_near(local.time()))


def on_clock(local: datetime, meeting: Meeting, zone: str) -> datetime:
    """A local start of the class, on the clock of `zone`."""
    return instant(local, meeting.record.of.zone).astimezone(ZoneInfo(zone))


async def meant(
    visit: Visit, days: Sequence[date], groups: Sequence[Group], at: time | None
) -> list[Meeting]:
    """The dates on one of these days, else the next ones; at this time where one was named."""
    if not days:
        return (await meetings_to_come(visit.uow, [group.id for group in groups], visit.now))[:_MOST_DATES]
    found = [one for day in days for group in groups for one in await meetings_on(visit.uow, group.id, day)]
    coming = [one for one in found if one.occurrence.starts > visit.now]
    return [one for one in coming if at is None or one.occurrence.local.time() == at] or coming


async def no_such_date(visit: Visit, days: Sequence[date], groups: Sequence[Group]) -> Outcome:
    coming = await meetings_to_come(visit.uow, [group.id for group in groups], visit.now)
    dates = tuple([await seen_by(visit, one, coach=True) for one in coming[:_MOST_DATES]])
    return visit.told(NoSuchDate(day=days[0] if days else None, next=dates))


@admitted
async def cancel_date(visit: Visit, command: CancelDate) -> Outcome:
    """No class on that date."""
    meeting = await own_meeting(visit, command.class_id, command.slot)
    people = await visit.uow.sign_ups.coming(meeting.class_id, meeting.slot)
    await visit.uow.classes.cancel(meeting.class_id, meeting.occurrence.original, visit.now)
    for person, _ in people:
        await disarm(visit.uow, person.id, meeting.class_id, meeting.slot)
    key = f"off:{meeting.class_id}:{meeting.slot}"
    told = [
        await to_person(visit, person, DateCalledOff(date=await for_person(visit, person, meeting)), key)
        for person, _ in people
    ]
    off = DateCalledOff(date=await seen_by(visit, meeting, coach=False), told=len(people))
    to_all = await to_group(visit, meeting, DateCalledOff(date=shown(meeting)), key)
    return visit.told(off) + to_all + everybody(told)


@admitted
async def move_date(visit: Visit, command: MoveDate) -> Outcome:
    """Another time for that date; who was in stays in, and is reminded for the new one."""
    meeting = await own_meeting(visit, command.class_id, command.slot)
    to, was = as_local(command.to), meeting.occurrence.starts
    if instant(to, meeting.record.of.zone) <= visit.now:
        raise StalePress
    await visit.uow.classes.move(meeting.class_id, meeting.occurrence.original, to, visit.now)
    moved = await known_meeting(visit, command.class_id, command.slot)
    people = await visit.uow.sign_ups.coming(moved.class_id, moved.slot)
    for person, _ in people:
        await arm(visit.uow, visit.now, person.id, moved, late=True)
    key = f"moved:{moved.class_id}:{moved.slot}:{command.to}"
    told = [
        await to_person(visit, person, said_moved(await for_person(visit, person, moved), was), key)
        for person, _ in people
    ]
    seen = said_moved(await seen_by(visit, moved, coach=False), was)
    done = visit.told(seen.model_copy(update={"told": len(people)}))
    return done + await to_group(visit, moved, said_moved(shown(moved), was), key) + everybody(told)


def said_moved(date_: ClassDate, was: datetime) -> DateMoved:
    return DateMoved(date=date_, was=was.astimezone(date_.starts.tzinfo))


def as_local(slot: int) -> datetime:
    try:
        return local_of(slot)
    except ValueError:
        raise StalePress from None


async def own_meeting(visit: Visit, class_id: int, slot: int) -> Meeting:
    """A date that hasn't begun, of a class that the visitor coaches."""
    meeting = await known_meeting(visit, class_id, slot)
    if meeting.occurrence.starts <= visit.now:
        raise StalePress
    return meeting


async def for_person(visit: Visit, person: Person, meeting: Meeting) -> ClassDate:
    """The date on this person's own clock."""
    return shown(meeting, (await habits_for(visit.uow, person.id, meeting)).zone)


async def to_person(visit: Visit, person: Person, said: Said, key: str) -> Outcome:
    chat = await visit.uow.chats.private_of(person.id)
    if chat is None:
        return Outcome()
    return Outcome((Say(chat.id, said, Purpose.REMINDER, key=f"{key}:{person.id}"),))


async def to_group(visit: Visit, meeting: Meeting, said: Said, key: str) -> Outcome:
    group = await visit.group(meeting.record.group_id)
    return Outcome((Say(group.chat_id, said, Purpose.POST, key=key),))


def everybody(told: Sequence[Outcome]) -> Outcome:
    """All that is told to them, and the coach's message settled."""
    return sum(told, Outcome(settles=True))
