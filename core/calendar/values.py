"""Classes and their dates, quiet hours and reminders, as frozen values.

Local times are naive datetimes on the class's own clock, whole minutes or seconds; instants are aware.
"""

import re
from datetime import date, datetime, time
from difflib import get_close_matches
from functools import cache
from typing import Annotated, Self, TypeVar
from zoneinfo import available_timezones

from dateutil.rrule import rrulestr
from pydantic import AfterValidator, Field, model_validator

from core.values import Value

T = TypeVar("T", datetime, time)

# Rules that repeat within a day say nothing a class needs, and would never end.
_FREQUENCIES = ("DAILY", "WEEKLY", "MONTHLY", "YEARLY")
# RFC 5545 3.3.10; BYSETPOS of a day would choose among the hours of one class.
_ONLY_WITH = {
    "BYWEEKNO": ("YEARLY",),
    "BYYEARDAY": ("YEARLY",),
    "BYMONTHDAY": ("YEARLY", "MONTHLY", "DAILY"),
    "BYSETPOS": ("YEARLY", "MONTHLY", "WEEKLY"),
}
_UNTIL = re.compile(r"^\d{8}(?:T\d{6}Z?)?$")
_LONGEST_RULE = 500
_LEAP_YEAR = 2000


@cache
def _zones() -> frozenset[str]:
    """All there are; looking for them searches folders, too slow for each class that is read."""
    return frozenset(available_timezones())


def _known_zone(zone: str) -> str:
    if zone not in _zones():
        near = get_close_matches(zone, _zones(), 1)
        raise ValueError(f"no zone is called {zone!r}" + (f", did you mean {near[0]}?" if near else ""))
    return zone


def _naive(moment: T) -> T:
    if moment.tzinfo is not None:
        raise ValueError("a local time has no offset")
    return moment


def rule_parts(rule: str) -> dict[str, str]:
    """`FREQ=WEEKLY;COUNT=3` -> its parts by name, in capitals. Raises ValueError."""
    parts: dict[str, str] = {}
    for part in rule.removeprefix("RRULE:").split(";"):
        name, equals, value = part.partition("=")
        if not equals or not value or name.upper() in parts:
            raise ValueError(f"not a rule of RFC 5545: {rule[:80]!r}")
        parts[name.upper()] = value.upper()
    return parts


def _lawful_rule(rule: str) -> str:
    if len(rule) > _LONGEST_RULE:
        raise ValueError("the rule is too long")
    parts = rule_parts(rule)
    if parts.get("FREQ") not in _FREQUENCIES:
        raise ValueError("FREQ must be DAILY, WEEKLY, MONTHLY or YEARLY")
    if "UNTIL" in parts and ("COUNT" in parts or not _UNTIL.match(parts["UNTIL"])):
        raise ValueError("UNTIL must be a date or a date and time, and never beside COUNT")
    for name, frequencies in _ONLY_WITH.items():
        if name in parts and parts["FREQ"] not in frequencies:
            raise ValueError(f"{name} goes only with FREQ={' or '.join(frequencies)}")
    _try(parts)
    if not _has_days(parts):
        raise ValueError(f"no date fits the rule {rule[:80]!r}")
    return rule


def _has_days(parts: dict[str, str]) -> bool:
    """Whether its months have its days: a 30th of February would be looked for until the end of time."""
    months, days = _numbers(parts, "BYMONTH"), _numbers(parts, "BYMONTHDAY")
    if not all(1 <= month <= 12 for month in months):  # noqa: PLR2004
        return False
    if not months or not days:
        return True
    longest = max(
        (date(_LEAP_YEAR + month // 12, month % 12 + 1, 1) - date(_LEAP_YEAR, month, 1)).days
        for month in months
    )
    return any(abs(day) <= longest for day in days)


def _numbers(parts: dict[str, str], name: str) -> list[int]:
    return [int(number) for number in parts.get(name, "").split(",") if number]


def _try(parts: dict[str, str]) -> None:
    left = ";".join(f"{name}={value}" for name, value in parts.items() if name != "UNTIL")
    try:
        rrulestr(left, dtstart=datetime(_LEAP_YEAR, 1, 1))  # noqa: DTZ001 - local on purpose
    except (ValueError, TypeError, KeyError, IndexError, AttributeError) as error:
        raise ValueError(f"not a rule of RFC 5545: {error}") from None
    if int(parts.get("INTERVAL", "1")) < 1 or int(parts.get("COUNT", "1")) < 1:
        raise ValueError("INTERVAL and COUNT count from 1")


Zone = Annotated[str, AfterValidator(_known_zone)]
Local = Annotated[datetime, AfterValidator(_naive)]
Wall = Annotated[time, AfterValidator(_naive)]
Rule = Annotated[str, AfterValidator(_lawful_rule)]


class Class(Value):
    """A live meeting at `start` on the clock of `zone`, repeated by `rule` (an RFC 5545 RRULE) or held once.

    `skip`: local dates it leaves out. `moved`: original local start -> where that one meeting went.
    """

    title: str
    zone: Zone
    start: Local
    rule: Rule | None = None
    minutes: Annotated[int, Field(ge=1, le=24 * 60)] = 60
    link: str | None = None
    skip: frozenset[date] = frozenset()
    cancelled: frozenset[Local] = frozenset()
    moved: dict[Local, Local] = {}  # noqa: RUF012 - pydantic copies it


class Occurrence(Value):
    """One meeting. `original`: the local start that the rule gave it, its key for ever (RECURRENCE-ID).

    `local`: its local start now; `starts` and `ends`: the instants, in UTC.
    """

    original: Local
    local: Local
    starts: datetime
    ends: datetime


class Quiet(Value):
    """Hours of the day in which a person is left alone: from `start` up to `end`; equal ends mean none."""

    start: Wall
    end: Wall

    def covers(self, wall: time) -> bool:
        """Whether it is quiet when the clock on the wall shows this. The end itself isn't quiet."""
        if self.start <= self.end:
            return self.start <= wall < self.end
        return wall >= self.start or wall < self.end


class Habits(Value):
    """How a person wants to be reminded: so long before, on their own clock, never in their quiet hours."""

    zone: Zone
    lead_minutes: Annotated[int, Field(ge=0, le=7 * 24 * 60)] = 60
    quiet: Quiet | None = None


class Reminder(Value):
    """When to remind: `due` in UTC, None where no lawful moment exists. `moved`: why it isn't as wished."""

    due: datetime | None
    moved: str | None = None

    @model_validator(mode="after")
    def _has_a_reason(self) -> Self:
        if self.due is None and self.moved is None:
            raise ValueError("no reminder needs a reason")
        return self
