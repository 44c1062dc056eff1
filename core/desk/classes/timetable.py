"""Which classes take place between two dates, and when each athlete is reminded, with nothing stored."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import date

from core.calendar.occurrences import occurrences
from core.calendar.reminders import reminder
from core.calendar.values import Class, Habits, Occurrence, Reminder


@dataclass(frozen=True, slots=True)
class Meeting:
    """One date of a class."""

    of: Class
    occurrence: Occurrence


@dataclass(frozen=True, slots=True)
class Reminded:
    """When `athlete` is reminded of a meeting."""

    athlete: str
    habits: Habits
    meeting: Meeting
    reminder: Reminder


def meetings(classes: Sequence[Class], first: date, last: date) -> tuple[Meeting, ...]:
    """All dates between two class-local dates, both inclusive, in order of time."""
    found = [Meeting(of, one) for of in classes for one in occurrences(of, first, last)]
    return tuple(sorted(found, key=lambda meeting: meeting.occurrence.starts))


def reminders(held: Sequence[Meeting], athletes: Sequence[tuple[str, Habits]]) -> Iterator[Reminded]:
    """Every athlete's reminder of every meeting, in the order of the meetings."""
    for meeting in held:
        for name, habits in athletes:
            yield Reminded(name, habits, meeting, reminder(meeting.occurrence.starts, habits))
