"""Remind those who signed up, once, at their own lead and outside their quiet hours; ask them afterwards."""

from collections.abc import Mapping
from datetime import datetime, timedelta
from typing import Any

from core.calendar.reminders import is_quiet, outside_quiet, reminder
from core.calendar.slots import slot_of
from core.calendar.values import Habits
from core.desk.classes.meetings import Meeting, find_meeting, shown
from core.desk.classes.says import AskAttended, ClassReminder
from core.desk.outcome import DueWish, Outcome, Say
from core.store.groups import LEAD_MINUTES
from core.store.records import Purpose
from core.store.unit import Unit

REMIND, ATTENDANCE = "remind", "attendance"
# After that nobody remembers, and the day's digest is long out.
_ASKED_FOR = timedelta(days=2)


def key_of(kind: str, person_id: int, class_id: int, slot: int) -> str:
    """The one key of what is due to a person about a date, however often it is planned anew."""
    return f"{kind}:{person_id}:{class_id}:{slot}"


async def habits_of(uow: Unit, person_id: int, group_id: int, zone: str) -> Habits:
    """How this person is reminded in this group; `zone` is the clock of who told none."""
    told = await uow.habits.get(person_id)
    member = await uow.groups.membership(person_id, group_id)
    lead = member.lead_minutes if member else LEAD_MINUTES
    return Habits(zone=told.zone or zone, lead_minutes=lead, quiet=told.quiet)


async def habits_for(uow: Unit, person_id: int, meeting: Meeting) -> Habits:
    record = meeting.record
    return await habits_of(uow, person_id, record.group_id, record.of.zone)


async def arm(
    uow: Unit, now: datetime, person_id: int, meeting: Meeting, *, late: bool = False
) -> datetime | None:
    """Plan the reminder of a date, and the question after it; what was done before stays done.

    Returns when it is due, or None. `late`: a moment that has just passed is made up for at once.
    """
    habits = await habits_for(uow, person_id, meeting)
    refs = {"person": person_id, "class": meeting.class_id, "slot": meeting.slot}
    after = outside_quiet(meeting.occurrence.ends, habits)
    await uow.dues.arm(key_of(ATTENDANCE, person_id, meeting.class_id, meeting.slot), ATTENDANCE, after, refs)
    key = key_of(REMIND, person_id, meeting.class_id, meeting.slot)
    due = reminder(meeting.occurrence.starts, habits).due
    if late and due is not None and due <= now < meeting.occurrence.starts:
        due = now
    if due is None or due < now or (due == now and not late):
        await uow.dues.drop(key)
        return None
    await uow.dues.arm(key, REMIND, due, refs)
    return due


async def disarm(uow: Unit, person_id: int, class_id: int, slot: int) -> None:
    """Neither remind nor ask."""
    for kind in (REMIND, ATTENDANCE):
        await uow.dues.drop(key_of(kind, person_id, class_id, slot))


async def arm_all_of(uow: Unit, now: datetime, person_id: int) -> None:
    """Plan anew whatever this person comes to, after their habits changed."""
    yesterday = slot_of((now - timedelta(days=2)).replace(tzinfo=None))
    for sign_up in await uow.sign_ups.of_person(person_id, yesterday):
        record = await uow.classes.get(sign_up.class_id)
        meeting = find_meeting(record, sign_up.slot) if record else None
        if meeting is not None and meeting.occurrence.starts > now:
            await arm(uow, now, person_id, meeting, late=True)


async def remind_due(uow: Unit, now: datetime, refs: Mapping[str, Any]) -> Outcome:
    """The moment of a reminder; silent where the date was called off or the person dropped out since."""
    found = await _still_meant(uow, refs)
    if found is None or found[0].occurrence.ends <= now:
        return Outcome()
    meeting, chat, habits = found
    if is_quiet(now, habits):
        return _later(REMIND, refs, outside_quiet(now, habits), meeting.occurrence.starts)
    record = meeting.record
    session = await uow.sessions.posted_on(record.group_id, meeting.occurrence.local.date())
    left = meeting.occurrence.starts - now
    said = ClassReminder(
        date=shown(meeting, habits.zone),
        minutes_left=round(left.total_seconds() / 60),
        session=session.id if session else None,
    )
    key = key_of(REMIND, refs["person"], record.id, meeting.slot)
    lasts = meeting.occurrence.ends - now
    return Outcome((Say(chat, said, Purpose.REMINDER, key=key, expires_after=lasts),))


async def attendance_due(uow: Unit, now: datetime, refs: Mapping[str, Any]) -> Outcome:
    """A class is over: ask who signed up whether they were there."""
    found = await _still_meant(uow, refs)
    if found is None:
        return Outcome()
    meeting, chat, habits = found
    until = meeting.occurrence.ends + _ASKED_FOR
    if is_quiet(now, habits):
        return _later(ATTENDANCE, refs, outside_quiet(now, habits), until)
    key = key_of(ATTENDANCE, refs["person"], meeting.class_id, meeting.slot)
    said = AskAttended(date=shown(meeting, habits.zone))
    return Outcome(
        (Say(chat, said, Purpose.REMINDER, key=key, expires_after=until - now),) if until > now else ()
    )


def _later(kind: str, refs: Mapping[str, Any], at: datetime, until: datetime) -> Outcome:
    """A process that was down comes back in quiet hours: after them, if that still helps."""
    if at >= until:
        return Outcome()
    key = f"{key_of(kind, refs['person'], refs['class'], refs['slot'])}:later:{at:%Y%m%d%H%M}"
    return Outcome(due=(DueWish(key=key, kind=kind, at=at, refs=dict(refs)),))


async def _still_meant(uow: Unit, refs: Mapping[str, Any]) -> tuple[Meeting, int, Habits] | None:
    """The date, the private chat and the habits of somebody who is in; None for anything else."""
    person, class_id, slot = refs["person"], refs["class"], refs["slot"]
    sign_up = await uow.sign_ups.get(person, class_id, slot)
    record = await uow.classes.get(class_id)
    meeting = find_meeting(record, slot) if record else None
    if sign_up is None or not sign_up.coming or meeting is None:
        return None
    chat = await uow.chats.private_of(person)
    member = await uow.groups.membership(person, meeting.record.group_id)
    if chat is None or member is None:
        return None
    return meeting, chat.id, await habits_for(uow, person, meeting)
