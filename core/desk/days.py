"""Which day it is: on a group's own clock."""

from datetime import date, datetime
from zoneinfo import ZoneInfo

from core.store.records import Group


def zone_of(group: Group) -> ZoneInfo:
    return ZoneInfo(group.zone or "UTC")


def today_in(group: Group, now: datetime) -> date:
    return now.astimezone(zone_of(group)).date()
