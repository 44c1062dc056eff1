"""Which session a coach's words mean: the one of the day that is named, else what is in hand."""

import re
from collections.abc import Sequence
from datetime import date, timedelta
from typing import Final

from core.athletes.easing import WEEK
from core.desk.coached import coached_groups, coached_ids
from core.desk.days import RECENT, days_of_title, today_in, zone_of
from core.desk.visit import Visit
from core.notation.calendar.moments import DAY_WORD, find_days, names_only_a_weekday
from core.store.records import Group, SessionRecord, SessionState

# So far back a day that is named may lie.
A_WEEK: Final = timedelta(days=8)
_YESTERDAY: Final = re.compile(r"\b(?:yesterday|last night)", re.IGNORECASE)
_MADE: Final = re.compile(r"\b(?:make|change|set|turn)(?=\s+(?:to\s+|into\s+)?[0-9])", re.IGNORECASE)
_OF_DAY: Final = re.compile(
    rf"\b(?:(?:on|of|for|from|in)\s+)?(?:the\s+)?(?:{DAY_WORD}|today|tonight|tomorrow|yesterday)(?:['\u2019]?s)?\b"
    r"(?:\s+(?:session|one|draft|workout|post)\b)?",
    re.IGNORECASE,
)


async def at_hand(visit: Visit) -> list[SessionRecord]:
    """What may be meant: one's own drafts, what is to be posted, then what was posted lately, the newest first."""
    groups = await coached_ids(visit)
    drafts = await visit.uow.sessions.drafts(visit.person.id, groups)
    coming = await visit.uow.sessions.scheduled_in(groups)
    return [*drafts, *coming, *await posted_lately(visit)]


async def posted_lately(visit: Visit) -> list[SessionRecord]:
    """What stands in their groups, the newest first."""
    return [
        one
        for group in await coached_ids(visit)
        for one in await visit.uow.sessions.posted_since(group, visit.now - A_WEEK)
        if one.state is SessionState.POSTED
    ]


async def in_hand(visit: Visit) -> SessionRecord | None:
    """What the coach is about to post, else what was posted last and is still new."""
    unposted = await visit.uow.sessions.newest_unposted(visit.person.id, await coached_ids(visit))
    found = [one for one in await at_hand(visit) if one.posted_at and one.posted_at >= visit.now - RECENT]
    return unposted or next(iter(found), None)


async def of_day(
    visit: Visit, text: str, among: Sequence[SessionRecord] | None = None
) -> SessionRecord | None:
    """The session of the day that is named, `among` all at hand; None where no day is named, or has none."""
    ahead: list[SessionRecord] = []
    for one in await at_hand(visit) if among is None else among:
        group = await visit.group(one.group_id)
        today = today_in(group, visit.now)
        named = days_named(text, today, past=one.state is SessionState.POSTED)
        if not days_of(one, group).isdisjoint(named):
            return one
        if is_of_that_weekday(text, one, today):
            ahead.append(one)
    return min(ahead, key=lambda one: one.day, default=None)


def is_of_that_weekday(text: str, record: SessionRecord, today: date) -> bool:
    """Whether a bare `wed` may mean what is written for a Wednesday further on; the nearer one goes first."""
    named = find_days(text, today) if names_only_a_weekday(text) else ()
    return bool(named) and record.day > today and record.day.weekday() == named[0].weekday()


def days_named(text: str, today: date, *, past: bool) -> set[date]:
    """The days that a text may mean. `past`: of a weekday also the last one; `yesterday`."""
    found = set(find_days(text, today))
    back = {one - WEEK for one in found} if past else set()
    return found | back | ({today - timedelta(days=1)} if past and _YESTERDAY.search(text) else set())


def days_of(record: SessionRecord, group: Group) -> set[date]:
    """The day that it is for, the one on which it goes out, and the weekday its title begins with."""
    out = record.post_at or record.posted_at
    goes_out = {out.astimezone(zone_of(group)).date()} if out else set[date]()
    return {record.day, *days_of_title(record.session, record.day)} | goes_out


def without_day(text: str) -> str:
    """The words without those that name the session: `make fridays push-ups 8`; what it shall be is said of it."""
    words = re.sub(r"\s{2,}", " ", _OF_DAY.sub(" ", text)).strip(" ,:")
    return _MADE.sub(r"\g<0> it", words, count=1)


async def meant(visit: Visit, text: str) -> SessionRecord | None:
    """Of the day that is named, else what is in hand."""
    return await of_day(visit, text) or await in_hand(visit)


async def names_a_day(visit: Visit, text: str) -> bool:
    today = [today_in(one, visit.now) for one in await coached_groups(visit)]
    return any(days_named(text, one, past=True) for one in today)
