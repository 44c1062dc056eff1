"""On which dates a class takes place, by RFC 5545, on its own wall clock."""

from collections.abc import Iterator
from datetime import UTC, date, datetime, time, timedelta
from zoneinfo import ZoneInfo

from dateutil.rrule import rrulestr

from core.calendar.values import Class, Occurrence, rule_parts


def occurrences(of: Class, first: date, last: date) -> tuple[Occurrence, ...]:
    """Meetings whose local date lies between `first` and `last`, both inclusive, in order of time."""
    found = [
        occurrence(of, original)
        for original in _originals(of, first, last)
        if original.date() not in of.skip and original not in of.cancelled
    ]
    return tuple(
        sorted((one for one in found if first <= one.local.date() <= last), key=lambda one: one.starts)
    )


def occurrence(of: Class, original: datetime) -> Occurrence:
    """The meeting of this original local start, wherever it was moved to."""
    local = of.moved.get(original, original)
    starts = instant(local, of.zone)
    return Occurrence(
        original=original, local=local, starts=starts, ends=starts + timedelta(minutes=of.minutes)
    )


def instant(local: datetime, zone: str) -> datetime:
    """When the clock of `zone` shows `local`, in UTC.

    In a spring gap the offset before it counts, in a fold the first of the two (RFC 5545 3.3.5).
    """
    return local.replace(tzinfo=ZoneInfo(zone), fold=0).astimezone(UTC)


def takes_place(of: Class, original: datetime) -> bool:
    """Whether the class's rule has this original local start, and it was not called off."""
    day = of.moved.get(original, original).date()
    return any(one.original == original for one in occurrences(of, day, day))


def _originals(of: Class, first: date, last: date) -> Iterator[datetime]:
    """Original local starts within the dates, and those that were moved there from elsewhere."""
    begins, ends = datetime.combine(first, time.min), datetime.combine(last, time.max)
    within = list(_by_rule(of, begins, ends))
    yield from within
    yield from (one for one in of.moved if one not in within and any(_by_rule(of, one, one)))


def _by_rule(of: Class, begins: datetime, ends: datetime) -> Iterator[datetime]:
    if of.rule is None:
        return iter([of.start] if begins <= of.start <= ends else [])
    parts = rule_parts(of.rule)
    until = parts.pop("UNTIL", None)
    text = ";".join(f"{name}={value}" for name, value in parts.items())
    # RFC 5545 3.3.10: the week starts on Monday unless the rule says otherwise, whatever the library thinks.
    rule = rrulestr(text if "WKST" in parts else f"{text};WKST=MO", dtstart=of.start)
    found: list[datetime] = rule.between(begins, ends, inc=True)
    return (one for one in found if until is None or _is_until(one, until, of.zone))


def _is_until(local: datetime, until: str, zone: str) -> bool:
    """Whether `local` comes no later than UNTIL: a date, a local time, or an instant in UTC (with a Z)."""
    if until.endswith("Z"):
        return instant(local, zone) <= datetime.strptime(until, "%Y%m%dT%H%M%SZ").replace(tzinfo=UTC)
    if "T" in until:
        return local <= datetime.strptime(until, "%Y%m%dT%H%M%S")  # noqa: DTZ007 - local
    return f"{local:%Y%m%d}" <= until
