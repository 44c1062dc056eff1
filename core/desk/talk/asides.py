"""What is said beside the matter, and how the day goes so far for a coach who asks."""

import re
from collections import Counter
from collections.abc import Mapping
from datetime import date, timedelta
from typing import Final

from core.athletes.easing import WEEK
from core.desk.classes.meetings import Meeting, meetings_on, shown
from core.desk.coached import coached_groups, names_in
from core.desk.coaching.absence import away_on
from core.desk.coaching.digest import digest_of
from core.desk.coaching.digest_says import ClassSignUps, WhoIsIn, WhoTrained
from core.desk.days import clock_of, today_in
from core.desk.outcome import Outcome
from core.desk.says import Kindness, Welcome
from core.desk.today.elsewhere import before_them
from core.desk.today.pain import done_lately
from core.desk.visit import Visit
from core.notation.calendar.moments import find_days
from core.notation.coaching.easing import monday_of
from core.notation.talk.small_talk import read_small_talk
from core.store.records import Group, Role


async def be_kind(visit: Visit, text: str) -> Outcome | None:
    """What was said for its own sake gets a short answer of its own kind; a stranger is shown the way in instead."""
    talk = read_small_talk(text)
    if talk is None or not await visit.memberships():
        return None
    if talk == "thanks":
        return visit.told(Welcome())
    unscored = await before_them(visit) is not None and await done_lately(visit) is None
    return visit.told(Kindness(talk=talk, unscored=unscored))


async def how_it_goes(visit: Visit) -> Outcome | None:
    """The digest before its hour, of each group; None for whoever coaches none."""
    outcome = None
    for group in await coached_groups(visit):
        clock = await clock_of(visit.uow, visit.person.id, group)
        found = await digest_of(visit.uow, visit.now, group, today_in(group, visit.now), clock)
        outcome = (outcome or Outcome()) + visit.told(found.model_copy(update={"so_far": True}))
    return outcome


# The weeks of which it can be asked who trained, and how many days before this one's Monday they began.
WEEKS_BACK: Final[Mapping[str, timedelta]] = {"this week": timedelta(0), "last week": WEEK}
# What tells that a day that is named lies behind.
_BEHIND: Final = re.compile(
    r"\b(?:did|didn'?t|had|hasn'?t|has|was|were|went|got|done|trained|last)\b", re.IGNORECASE
)


async def who_trained(visit: Visit, group: Group, text: str) -> WhoTrained:
    """Of the week that is named who told scores, on how many days, and who told none; without who is away."""
    today = today_in(group, visit.now)
    last = "last week" in text.casefold()
    monday = monday_of(today) - WEEKS_BACK["last week" if last else "this week"]
    until = min(monday + WEEK - timedelta(days=1), today)
    days = [monday + timedelta(days=ahead) for ahead in range((until - monday).days + 1)]
    clock = await clock_of(visit.uow, visit.person.id, group)
    counts: Counter[str] = Counter()
    for day in days:
        told = await digest_of(visit.uow, visit.now, group, day, clock)
        counts.update({one.name for session in told.sessions for one in session.trained})
    away = await away_on(visit.uow, group.id, until)
    athletes = await visit.uow.groups.members(group.id, role=Role.ATHLETE)
    none = (
        one.person.name for one in athletes if one.person_id not in away and one.person.name not in counts
    )
    return WhoTrained(group=group.title, last=last, trained=tuple(counts.most_common()), none=tuple(none))


def day_asked_about(text: str, today: date) -> date:
    """Of a weekday that lies behind the last one; today where no day is named."""
    if "yesterday" in text.casefold():
        return today - timedelta(days=1)
    day = next(iter(find_days(text, today)), today)
    return day - WEEK if day > today and _BEHIND.search(text) and "tomorrow" not in text.casefold() else day


# Who isn't in is asked about as well.
_WHO_IS_NOT: Final = re.compile(r"\b(?:not|\w+n['\u2019]?t|cannot|missing|out|absent)\b", re.IGNORECASE)


async def who_is_in(visit: Visit, group: Group, text: str) -> WhoIsIn:
    today = today_in(group, visit.now)
    day = day_asked_about(text, today)
    clock = await clock_of(visit.uow, visit.person.id, group)
    meetings = await meetings_on(visit.uow, group.id, day)
    return WhoIsIn(
        group=group.title,
        day=day,
        today=day == today,
        classes=tuple([await sign_ups_of(visit, one, clock.key, text) for one in meetings]),
        sessions=(await digest_of(visit.uow, visit.now, group, day, clock)).sessions,
    )


async def sign_ups_of(visit: Visit, meeting: Meeting, clock: str, text: str) -> ClassSignUps:
    people = await visit.uow.sign_ups.coming(meeting.class_id, meeting.slot)
    names = await names_in(visit.uow, meeting.record.group_id)
    called = tuple(names.get(person.id, person.name) for person, _ in people)
    asked = _WHO_IS_NOT.search(text)
    athletes = await visit.uow.groups.members(meeting.record.group_id, role=Role.ATHLETE) if asked else ()
    others = tuple(one.person.name for one in athletes if one.person.name not in called)
    return ClassSignUps(date=shown(meeting, clock), names=called, others=others)
