"""Days, times of day and lengths of time, out of a stretch, as they were said."""

from core.understanding.marks import Mark
from core.understanding.slots.stretch import Stretch

_NOON, _DAY_H, _HOUR_MIN = 12, 24, 60
_DAY_S = 86_400
_ORDINAL = {1: "st", 2: "nd", 3: "rd", 21: "st", 22: "nd", 23: "rd", 31: "st"}
_MONTHS = (
    "january", "february", "march", "april", "may", "june", "july", "august", "september", "october", "november",
    "december",
)  # fmt: skip


def days(stretch: Stretch) -> list[str]:
    """Every day that is named, in plain words, each once."""
    found = [_day(one) for one in stretch.marks("day", "date")]
    return list(dict.fromkeys(one for one in found if one))


def _day(mark: Mark) -> str | None:
    if mark.quantity is None:
        return mark.value("day")
    number = int(mark.quantity.value)
    day = f"{number}{_ORDINAL.get(number, 'th')}"
    return f"{day} {_MONTHS[int(mark.quantity.second) - 1]}" if mark.quantity.second else day


def day(stretch: Stretch) -> str | None:
    return next(iter(days(stretch)), None)


def until(stretch: Stretch) -> str | None:
    """The day up to which something holds: behind an `until`, or behind the day it begins."""
    found = stretch.marks("day", "date")
    for one in found:
        before = range(max(stretch.start, one.start - 2), one.start)
        if any(stretch.marked.helps(at, "until_word") is not None for at in before):
            return _day(one)
    return None


def minutes(stretch: Stretch) -> int | None:
    """A length of time in minutes; the shorter end of a range."""
    for one in stretch.quantities("span"):
        if one.unit in {"min", "h", "s"} or one.value < _DAY_S:
            return round((one.low if one.low is not None else one.value) / _HOUR_MIN)
    return None


def in_days(stretch: Stretch) -> int | None:
    found = [one for one in stretch.quantities("span") if one.unit in {"d", "w", "mo", "y"}]
    return round(found[0].value / _DAY_S) if found else None


def clocks(stretch: Stretch, *, evening_first: bool = True) -> tuple[str | None, str | None]:
    """From and to: `from 22 to 7`, `after 9pm`, `before 8`. A bare `9` after `after` is said of the evening."""
    since = to = None
    told = _told_hours(stretch)
    if len(told) >= 2:  # noqa: PLR2004 - from and to
        first, second = told[0][1:], told[1][1:]
        return _clock(*first, evening=evening_first), _clock(*second, evening=False)
    for at, value, sure in told:
        before = range(max(stretch.start, at - 3), at)
        if any(stretch.marked.helps(place, "after_word") is not None for place in before):
            since = _clock(value, sure, evening=evening_first)
        elif any(stretch.marked.helps(place, "before_word") is not None for place in before):
            to = _clock(value, sure, evening=False)
        else:
            since = since or _clock(value, sure, evening=evening_first)
    return since, to


def _told_hours(stretch: Stretch) -> list[tuple[int, float, bool]]:
    """Minutes of the day with their place, and whether their half is told."""
    found: list[tuple[int, float, bool]] = []
    for one in stretch.quantities("clock", "hour", "range", "number"):
        if one.kind in {"clock", "hour"}:
            found.append((one.start, one.value, bool(one.unit) or one.value >= _NOON * _HOUR_MIN))
        elif one.kind == "range" and (one.low or 0) <= _DAY_H and one.value <= _DAY_H:
            found += [
                (one.start, (one.low or 0) * _HOUR_MIN, False),
                (one.start, one.value * _HOUR_MIN, False),
            ]
        elif one.kind == "number" and one.value <= _DAY_H:
            found.append((one.start, one.value * _HOUR_MIN, False))
    return found


def _clock(value: float, sure: bool, *, evening: bool) -> str:
    hours, rest = divmod(round(value), _HOUR_MIN)
    if evening and not sure and _NOON // 2 <= hours < _NOON:
        hours += _NOON
    return f"{hours % _DAY_H:02}:{rest:02}"


def one_clock(stretch: Stretch) -> str | None:
    """The first time of day that is named."""
    told = [one for one in _told_hours(stretch) if stretch.quantities("clock", "hour")]
    return _clock(told[0][1], sure=True, evening=False) if told else None
