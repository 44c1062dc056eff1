"""The hours of the day, on the coach's clock in Oslo."""

from datetime import datetime, time, timedelta
from zoneinfo import ZoneInfo

OSLO = ZoneInfo("Europe/Oslo")
# A Tuesday; the day is the Wednesday after it.
EVE = datetime(2026, 3, 3, 19, 0, tzinfo=OSLO)


def eve(clock: str) -> datetime:
    """A moment of the evening before: `19:30`."""
    return datetime.combine(EVE.date(), time.fromisoformat(clock), OSLO)


def today(clock: str) -> datetime:
    return eve(clock) + timedelta(days=1)


def tomorrow(clock: str) -> datetime:
    return eve(clock) + timedelta(days=2)
