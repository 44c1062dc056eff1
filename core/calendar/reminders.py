"""When to remind somebody of a class: early by their lead, and never in their quiet hours."""

from datetime import UTC, datetime, timedelta
from zoneinfo import ZoneInfo

from core.calendar.values import Habits, Reminder

# What is still of use before a class: time to put the shoes on and open the link.
LEAST = timedelta(minutes=10)
_MINUTE = timedelta(minutes=1)


def reminder(starts: datetime, habits: Habits) -> Reminder:
    """When to remind of a class that `starts` at this instant.

    A moment in quiet hours moves to their end if ten minutes before the class remain, else to the last whole
    minute before them.
    """
    due = starts.astimezone(UTC) - timedelta(minutes=habits.lead_minutes)
    if not is_quiet(due, habits):
        return Reminder(due=due)
    after = _nearest_unquiet(due, habits, _MINUTE)
    if after is not None and starts - after >= LEAST:
        return Reminder(due=after, moved=f"to the end of the quiet hours ({_hours(habits)})")
    before = _nearest_unquiet(due, habits, -_MINUTE)
    if before is None:
        return Reminder(
            due=None, moved=f"no moment within a day is outside the quiet hours ({_hours(habits)})"
        )
    return Reminder(due=before, moved=f"to before the quiet hours ({_hours(habits)})")


def outside_quiet(moment: datetime, habits: Habits) -> datetime:
    """The moment, or the end of the quiet hours that it falls in, in UTC: for what has time."""
    utc = moment.astimezone(UTC)
    return (_nearest_unquiet(utc, habits, _MINUTE) or utc) if is_quiet(utc, habits) else utc


def is_quiet(moment: datetime, habits: Habits) -> bool:
    """Whether the clock on the person's wall shows one of their quiet hours."""
    if habits.quiet is None:
        return False
    return habits.quiet.covers(moment.astimezone(ZoneInfo(habits.zone)).time())


def _nearest_unquiet(moment: datetime, habits: Habits, step: timedelta) -> datetime | None:
    """The nearest whole minute, on or back by `step`, that isn't quiet; None if there is none within a day.

    Minute by minute, since the wall skips and repeats an hour when clocks change.
    """
    whole = moment.replace(second=0, microsecond=0)
    minutes = (whole + number * step for number in range(1, 24 * 60 + 1))
    return next((minute for minute in minutes if not is_quiet(minute, habits)), None)


def _hours(habits: Habits) -> str:
    assert habits.quiet is not None, "only quiet hours move a reminder"
    return f"{habits.quiet.start:%H:%M}-{habits.quiet.end:%H:%M}"
