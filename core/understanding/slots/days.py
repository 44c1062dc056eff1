"""Days, times of day and lengths of time, out of a stretch, as they were said."""

import re
from dataclasses import replace
from itertools import pairwise
from typing import Final

from core.scores.ways import Way, way_of
from core.understanding.marks import Mark
from core.understanding.quantities import Quantity
from core.understanding.slots.stretch import Stretch
from core.understanding.slots.uses import unaccounted

_TONIGHT = "tonight"
_DIGITS = re.compile(r"(\d\d)(\d\d)|(?:(\d\d?)\.(\d\d))")
_NOON, _DAY_H, _HOUR_MIN = 12, 24, 60
# A class at `7` with nothing else said is one of the evening.
_EARLIEST_CLASS = 8
_DAY_S = 86_400
_ORDINAL = {1: "st", 2: "nd", 3: "rd", 21: "st", 22: "nd", 23: "rd", 31: "st"}
_UNITS = {"d": (86_400, "day"), "w": (604_800, "week"), "mo": (2_592_000, "month")}
_COUNTS = dict(
    enumerate(("one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"), start=1)
)
_MONTHS = (
    "january", "february", "march", "april", "may", "june", "july", "august", "september", "october", "november",
    "december",
)  # fmt: skip


def days(stretch: Stretch, *, counted: bool = True) -> list[str]:
    """Every day that is named, in plain words, each once. `counted`: `the 6th` too, which may be of something else."""
    named = stretch.marks("day", "short_day", "date")
    found = [_day(one) for one in named if counted or one.quantity is None or one.quantity.second]
    return list(dict.fromkeys(one for one in found if one))


def wanted(stretch: Stretch) -> list[str]:
    """The days that aren't refused: `thursday, not friday`."""
    named = stretch.marks("day", "short_day", "date")
    found = [_day(one) for one in named if not stretch.is_denied(one.start)]
    return list(dict.fromkeys(one for one in found if one))


def meant(stretch: Stretch) -> list[str]:
    """The days that it is about, without those of `not thursday`, `thursday stays`; all where none is left."""
    named = stretch.marks("day", "short_day", "date")
    aside = {_day(one) for one in named if _is_set_aside(stretch, one)}
    return [one for one in days(stretch) if one not in aside] or days(stretch)


def _is_set_aside(stretch: Stretch, mark: Mark) -> bool:
    if mark.start > stretch.start and stretch.marked.helps(mark.start - 1, "not_the") is not None:
        return True
    return any(stretch.marked.helps(at, "stays") is not None for at in stretch.clause(mark))


def _day(mark: Mark) -> str | None:
    if mark.quantity is None:
        month = mark.value("month")
        return _MONTHS[int(month) - 1] if month else mark.value("day", "short_day")
    number = int(mark.quantity.value)
    day = f"{number}{_ORDINAL.get(number, 'th')}"
    return f"{day} {_MONTHS[int(mark.quantity.second) - 1]}" if mark.quantity.second else day


def day(stretch: Stretch) -> str | None:
    return next(iter(days(stretch)), None)


def until(stretch: Stretch) -> str | None:
    """The day up to which something holds: behind an `until`, or behind the day it begins."""
    found = stretch.marks("day", "short_day", "date", "month")
    for one in found:
        before = range(max(stretch.start, one.start - 2), one.start)
        # `To rest tomorrow`: what somebody is told to do, no day up to which.
        told = [at for at in before if at == one.start - 1 or stretch.word(at) != "to"]
        if any(stretch.marked.helps(at, "until_word") is not None for at in told):
            return _day(one)
    return how_long(stretch)


def how_long(stretch: Stretch, *, bare: bool = False) -> str | None:
    """`for two weeks`, `zwei Wochen lang`; `bare`: without a word for it too."""
    for one in stretch.quantities("span"):
        beside = (one.start - 1, one.start - 2, one.start - 3, one.end)
        count = round(one.value / _UNITS[one.unit][0]) if one.unit in _UNITS else 0
        is_said = bare or any(stretch.marked.helps(at, "for_word") is not None for at in beside if at >= 0)
        if count in _COUNTS and is_said:
            name = _UNITS[one.unit][1]
            return f"{_COUNTS[count]} {name}{'s' if count > 1 else ''}"
    return None


def minutes(stretch: Stretch) -> int | None:
    """A length of time in minutes; the shorter end of a range."""
    found = stretch.quantities("span")
    for one in [*(one for one in found if one.unit == "min"), *found]:
        if one.unit in {"min", "h"} or _HOUR_MIN <= one.value < _DAY_S:
            return round((one.low if one.low is not None else one.value) / _HOUR_MIN)
    return None


# Beside one of these so many minutes are those of work, or of somebody else.
_OF_WORK: Final = (
    *("movement", "plus", "clock", "rounds", "reps", "cal", "distance", "times", "effort", "hour", "person"),
    *("format", "term", "load"),
)


def surely_short(stretch: Stretch) -> bool:
    """`Only 20 min`, with no second length of time; or no more than that, beside what tells of no work."""
    found = [one for one in stretch.marks("span") if one.quantity and one.quantity.unit in {"min", "h"}]
    if len(found) != 1:
        return False
    whole = replace(stretch, start=0, end=len(stretch.marked.words))
    words = [
        one for one in range(stretch.start, stretch.end) if stretch.marked.text.tokens[one].kind != "mark"
    ]
    alone = all(found[0].start <= one < found[0].end for one in words) and len(whole.marks("span")) == 1
    is_beside = alone and len(words) < _words_of(whole) and not _is_of_work(whole)
    return is_beside or stretch.marked.means(found[0].start - 1, "only")


def _is_of_work(whole: Stretch) -> bool:
    """Whether so many minutes may be their score, how long a class takes, or of what else is told."""
    session = whole.context.session
    timed = session is not None and any(one.scored and way_of(one) is Way.TIME for one in session.blocks)
    return timed or bool(whole.marks(*_OF_WORK)) or whole.means("class")


def _words_of(stretch: Stretch) -> int:
    return sum(one.kind != "mark" for one in stretch.marked.text.tokens)


def surely_away(stretch: Stretch) -> bool:
    """`Won't make it Saturday`: a day on which they don't come, and nothing else."""
    named = stretch.marks("day", "short_day", "date")
    return len(named) == 1 and stretch.means("leave") and not unaccounted("leaves_class", stretch)


def in_days(stretch: Stretch) -> int | None:
    found = [one for one in stretch.quantities("span") if one.unit in {"d", "w", "mo", "y"}]
    return round(found[0].value / _DAY_S) if found else None


def clocks(stretch: Stretch, *, evening_first: bool = True) -> tuple[str | None, str | None]:
    """From and to: `from 22 to 7`, `after 9pm`, `before 8`. A bare `9` after `after` is said of the evening."""
    since = to = None
    told = _told_hours(stretch)
    bounds = [one for one in told if _bound(stretch, one[0])]
    if [_bound(stretch, one[0]) for one in bounds] == ["before", "after"]:
        told = bounds  # `woken at 5. nothing before 7 or after 9`
    elif len(told) >= 2:  # noqa: PLR2004 - from and to
        # Of several those that a `till` joins, else the nearest: `not before 7, nothing from 10 at night till 7`.
        one, other = min(pairwise(told), key=lambda pair: _apart(stretch, pair[0][0], pair[1][0]))
        return _from_to(one[1], other[1], sure=(one[2], other[2]), evening_first=evening_first)
    for at, value, sure in told:
        bound = _bound(stretch, at)
        if bound == "after":
            since = _clock(value, sure, evening=evening_first)
        elif bound == "before":
            to = _clock(value, sure, evening=False)
        else:
            since = since or _clock(value, sure, evening=evening_first)
    return since, to


def _bound(stretch: Stretch, at: int) -> str:
    after, before = _last(stretch, at, "after_word"), _last(stretch, at, "before_word")
    return "after" if after > before else "before" if before >= 0 else ""


def _last(stretch: Stretch, at: int, kind: str) -> int:
    """The last place of such a word shortly before a place; -1 where none is."""
    before = range(max(stretch.start, at - 3), at)
    return max((one for one in before if stretch.marked.helps(one, kind) is not None), default=-1)


def _from_to(
    since: float, to: float, *, sure: tuple[bool, bool], evening_first: bool
) -> tuple[str | None, str | None]:
    """What isn't told of either is the half of the day that makes the time between shorter."""
    half = _NOON * _HOUR_MIN
    since_sure, to_sure = sure
    if since_sure and not to_sure and to < half:
        to = min((to, to + half), key=lambda end: (end - since) % (2 * half))
    elif to_sure and not since_sure and since < half:
        since = min((since, since + half), key=lambda start: (to - start) % (2 * half))
        evening_first = False
    return _clock(since, sure=since_sure, evening=evening_first), _clock(to, sure=True, evening=False)


def _apart(stretch: Stretch, one: int, other: int) -> tuple[bool, int]:
    joined = any(stretch.marked.helps(at, "until_word") is not None for at in range(one, other))
    return not joined, other - one


def _told_hours(stretch: Stretch) -> list[tuple[int, float, bool]]:
    """Minutes of the day with their place, and whether their half is told."""
    found: list[tuple[int, float, bool]] = []
    for one in stretch.quantities("clock", "hour", "range", "number"):
        if one.kind in {"clock", "hour"}:
            found.append((one.start, one.value, bool(one.unit) or one.value >= _NOON * _HOUR_MIN))
        elif one.kind == "range" and (one.low or 0) <= _DAY_H and one.value <= _DAY_H:
            found += [
                (one.start, (one.low or 0) * _HOUR_MIN, (one.low or 0) >= _NOON),
                (one.start, one.value * _HOUR_MIN, one.value >= _NOON),
            ]
        elif one.kind == "number" and (minutes := _in_digits(stretch, one)) is not None:
            four = "." not in stretch.marked.text.tokens[one.start].typed
            found.append((one.start, minutes, four or minutes >= _NOON * _HOUR_MIN))
        elif one.kind == "number" and one.value <= _DAY_H:
            found.append((one.start, one.value * _HOUR_MIN, one.value >= _NOON))
    return found


def _in_digits(stretch: Stretch, one: Quantity) -> float | None:
    """`0600`, `6.30`: a time of day as some write it."""
    found = _DIGITS.fullmatch(stretch.marked.text.tokens[one.start].typed)
    if found is None:
        return None
    hours, minutes = (int(one) for one in found.groups() if one is not None)
    return hours * _HOUR_MIN + minutes if hours < _DAY_H and minutes < _HOUR_MIN else None


def _clock(value: float, sure: bool, *, evening: bool) -> str:
    hours, rest = divmod(round(value), _HOUR_MIN)
    if evening and not sure and _NOON // 2 <= hours < _NOON:
        hours += _NOON
    return f"{hours % _DAY_H:02}:{rest:02}"


def one_clock(stretch: Stretch, *, of_class: bool = False) -> str | None:
    """The first time of day that is named; people train together in the evening unless they say otherwise."""
    told = [one for one in _told_hours(stretch) if _is_time(stretch, one[0])]
    if not told:
        return None
    late = _TONIGHT in days(stretch) or any(
        stretch.marked.helps(at, "half_day") == "pm" for at in range(stretch.start, stretch.end)
    )
    value, sure = told[0][1:]
    late = late or (of_class and not sure and value < _EARLIEST_CLASS * _HOUR_MIN)
    return _clock(
        value + _NOON * _HOUR_MIN if late and value < _NOON * _HOUR_MIN else value, sure=True, evening=False
    )


def _is_time(stretch: Stretch, at: int) -> bool:
    mark = stretch.marked.mark_at[at]
    one = mark.quantity if mark else None
    if one is None:
        return False
    before = range(max(stretch.start, at - 2), at)
    at_word = any(stretch.marked.helps(place, "at_word") is not None for place in before)
    return one.kind in {"clock", "hour"} or _in_digits(stretch, one) is not None or at_word
