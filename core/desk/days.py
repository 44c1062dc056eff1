"""Which day it is on a group's own clock, and which clock somebody reads."""

from datetime import date, datetime, timedelta
from zoneinfo import ZoneInfo

from core.notation.moments import find_days
from core.sessions.values import Session
from core.store.records import Group
from core.store.unit import Unit

# How long a session is the one that is meant where none is named.
RECENT = timedelta(hours=36)


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
    return find_days(next(iter((session.title or "").split()), ""), today)


async def clock_of(uow: Unit, person_id: int, group: Group) -> ZoneInfo:
    """What a person goes by in private: their own clock where they told one, else the group's."""
    told = await uow.habits.get(person_id)
    return ZoneInfo(told.zone) if told.zone else zone_of(group)


async def group_clock_named(uow: Unit, person_id: int, group: Group) -> str | None:
    """The group's zone where this person goes by another: a bare time of the group's would mislead them."""
    theirs = zone_of(group)
    return None if await clock_of(uow, person_id, group) == theirs else theirs.key
