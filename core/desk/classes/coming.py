"""See the classes to come, sign up, drop out, and tell whether one was there."""

from datetime import date, datetime
from zoneinfo import ZoneInfo

from core.desk.access import admitted
from core.desk.classes.commands import ComeTo, SeeClasses, StayAway, TellAttended
from core.desk.classes.meetings import Meeting, known_meeting, meetings_to_come, shown
from core.desk.classes.reminding import arm, disarm, habits_for
from core.desk.classes.says import (
    AttendanceNoted,
    ClassDate,
    ClassList,
    SignedUp,
    SignUpDropped,
    SignUpNoted,
)
from core.desk.coached import coached_ids, names_in
from core.desk.errors import StalePress
from core.desk.outcome import Outcome, Say
from core.desk.says import Kindness
from core.desk.visit import Visit
from core.notation.calendar.moments import find_days

# More than that is a calendar, not a message.
_MOST_DATES = 8


@admitted
async def see_classes(visit: Visit, _: SeeClasses) -> Outcome:
    """The next dates of all the visitor's groups, on their own clock."""
    groups, coached = await visit.group_ids(), set(await coached_ids(visit))
    found = (await meetings_to_come(visit.uow, groups, visit.now))[:_MOST_DATES]
    dates = [await seen_by(visit, meeting, coach=meeting.record.group_id in coached) for meeting in found]
    manage = [
        (one.id, one.of.title) for group in sorted(coached) for one in await visit.uow.classes.live(group)
    ]
    return visit.told(ClassList(dates=tuple(dates), manage=tuple(manage), coach=bool(coached)))


async def come_or_stay_away(visit: Visit, words: str, *, coming: bool) -> Outcome:
    """The class of the day that is named, where it is one; else the dates, for a tap. No class, nothing to leave."""
    to_come = await meetings_to_come(visit.uow, await visit.group_ids(), visit.now)
    found = [one for one in to_come if one.occurrence.local.date() in days_named(words, one, visit.now)]
    if not coming and not found and (not to_come or days_named(words, to_come[0], visit.now)):
        return visit.told(Kindness(talk="away"))
    if len(found) != 1:
        return await see_classes(visit, SeeClasses())
    which = {"class_id": found[0].class_id, "slot": found[0].slot}
    done = await come_to(visit, ComeTo(**which)) if coming else await stay_away(visit, StayAway(**which))
    if done.says:
        return done
    about = await seen_by(visit, found[0], coach=False)
    already = SignUpNoted(date=about, again=True) if coming else SignUpDropped(date=about, again=True)
    return visit.told(already)


def days_named(words: str, meeting: Meeting, now: datetime) -> tuple[date, ...]:
    """On the clock of the class."""
    return find_days(words, now.astimezone(ZoneInfo(meeting.record.of.zone)).date())


async def seen_by(visit: Visit, meeting: Meeting, *, coach: bool) -> ClassDate:
    """A date as the visitor sees it: whether they are in; for a coach, who is."""
    habits = await habits_for(visit.uow, visit.person.id, meeting)
    mine = await visit.uow.sign_ups.get(visit.person.id, meeting.class_id, meeting.slot)
    names = await names_of(visit, meeting) if coach else ()
    title, group = meeting.record.of.title, await visit.title_of(meeting.record.group_id)
    return shown(
        meeting,
        habits.zone,
        title=f"{title} in {group}" if group else title,
        coming=mine is not None and mine.coming,
        names=names,
    )


async def names_of(visit: Visit, meeting: Meeting) -> tuple[str, ...]:
    people = await visit.uow.sign_ups.coming(meeting.class_id, meeting.slot)
    names = await names_in(visit.uow, meeting.record.group_id)
    return tuple(names.get(person.id, person.name) for person, _ in people)


@admitted
async def come_to(visit: Visit, command: ComeTo) -> Outcome:
    """In for a date. A press in the group needs no private chat; whoever has one gets a note there."""
    meeting = await known_meeting(visit, command.class_id, command.slot)
    if meeting.occurrence.ends <= visit.now:
        raise StalePress
    new = await visit.uow.sign_ups.put(
        visit.person.id, meeting.class_id, meeting.slot, visit.now, coming=True
    )
    remind_at = await arm(visit.uow, visit.now, visit.person.id, meeting) if new else None
    toast = await signed_up(visit, meeting, coming=True, again=not new)
    note = await noted(visit, meeting, remind_at) if new else Outcome()
    return Outcome(toast=toast) + note


@admitted
async def stay_away(visit: Visit, command: StayAway) -> Outcome:
    meeting = await known_meeting(visit, command.class_id, command.slot)
    changed = await visit.uow.sign_ups.put(
        visit.person.id, meeting.class_id, meeting.slot, visit.now, coming=False
    )
    await disarm(visit.uow, visit.person.id, meeting.class_id, meeting.slot)
    toast = await signed_up(visit, meeting, coming=False, again=not changed)
    if not changed or not visit.private:
        return Outcome(toast=toast)
    dropped = SignUpDropped(date=await seen_by(visit, meeting, coach=False))
    return visit.told(dropped) + Outcome(toast=toast)


async def signed_up(visit: Visit, meeting: Meeting, *, coming: bool, again: bool) -> SignedUp:
    """The short answer, on the person's own clock in the group too: nobody else sees it."""
    private = await visit.uow.chats.private_of(visit.person.id)
    date = await seen_by(visit, meeting, coach=False)
    return SignedUp(date=date, coming=coming, again=again, private=private is not None)


async def noted(visit: Visit, meeting: Meeting, remind_at: datetime | None) -> Outcome:
    """Tell it in private too, where the time is the person's own and a change of mind has its button."""
    chat = await visit.uow.chats.private_of(visit.person.id)
    if chat is None:
        return Outcome()
    date = await seen_by(visit, meeting, coach=False)
    local = remind_at and remind_at.astimezone(date.starts.tzinfo)
    return Outcome((Say(chat.id, SignUpNoted(date=date, remind_at=local)),))


@admitted
async def tell_attended(visit: Visit, command: TellAttended) -> Outcome:
    """Were you there? Only those who signed up are asked; the last answer counts."""
    mine = await visit.uow.sign_ups.get(visit.person.id, command.class_id, command.slot)
    if mine is None or not mine.coming:
        raise StalePress
    await visit.uow.sign_ups.tell_attended(visit.person.id, command.class_id, command.slot, yes=command.yes)
    return visit.told(AttendanceNoted(yes=command.yes)) + Outcome(settles=True)
