"""Which day it is on a group's own clock, and which clock somebody reads."""

from datetime import date, datetime, timedelta
from zoneinfo import ZoneInfo

from core.notation.calendar.moments import day_in_front, find_days, names_only_a_weekday
from core.sessions.values import Session
from core.store.records import Group, SessionRecord
from core.store.unit import Unit

# How long a session is the one that is meant where none is named.
RECENT = timedelta(hours=36)
# So far back a day that is named may lie: last Monday, told on a Monday.
LOOKS_BACK = timedelta(days=8)


def zone_of(group: Group) -> ZoneInfo:
    return ZoneInfo(group.zone or "UTC")


def today_in(group: Group, now: datetime) -> date:
    return now.astimezone(zone_of(group)).date()


def day_meant(session: Session, group: Group, now: datetime) -> date:
    """The day a coach writes a session for: its date, the weekday its title begins with, else today."""
    today = today_in(group, now)
    return session.date or next(iter(days_of_title(session, today)), today)


def days_of_title(session: Session, today: date) -> tuple[date, ...]:
    """The day that its title begins with, `Saturday on the quay`; none where it begins with another word."""
    return day_in_front(session.title or "", today)


def own_days(record: SessionRecord) -> tuple[date, ...]:
    """The day on top of it: its date, or the weekday that its title begins with; none where there is none."""
    return (record.session.date,) if record.session.date else days_of_title(record.session, record.day)


def day_to_post(text: str, record: SessionRecord, today: date) -> date | None:
    """The day meant by words about its post; None where neither they nor its title name one.

    `Post wed`, of what is written for Wed 11th, is that day, not the next Wednesday.
    """
    named = find_days(text, today)
    is_its_own = record.day in named or (
        names_only_a_weekday(text) and record.day > today and record.day.weekday() == named[0].weekday()
    )
    if named:
        return record.day if is_its_own else named[0]
    return record.day if own_days(record) and record.day >= today else None


async def clock_of(uow: Unit, person_id: int, group: Group) -> ZoneInfo:
    """What a person goes by in private: their own clock where they told one, else the group's."""
    told = await uow.habits.get(person_id)
    return ZoneInfo(told.zone) if told.zone else zone_of(group)


async def group_clock_named(uow: Unit, person_id: int, group: Group) -> str | None:
    """The group's zone where this person goes by another: a bare time of the group's would mislead them."""
    theirs = zone_of(group)
    return None if await clock_of(uow, person_id, group) == theirs else theirs.key
