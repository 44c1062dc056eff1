"""Days, times of day and spans of time in words."""

import re
from collections.abc import Iterator
from datetime import date, time, timedelta

from core.values import Value

WEEKDAYS = ("monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday")
_MONTHS = (
    "january", "february", "march", "april", "may", "june", "july", "august", "september", "october",
    "november", "december",
)  # fmt: skip
_WEEK = 7
_NOON = 12

DAY_WORD = (
    r"(?:mon(?:day)?|tue(?:s(?:day)?)?|wed(?:nesday|s)?|thu(?:rs?(?:day)?)?|fri(?:day)?|sat(?:urday)?"
    r"|sun(?:day)?)"
)
TOMORROW = r"(?:tomorrows?|tomm?orr?ows?|tmrws?|tmrows?|tmrs?|tomoz|tomo|2moro)"
_MONTH_WORD = r"(?:jan|feb|mar|apr|may|june?|july?|aug|sept?|oct|nov|dec)[a-z]*"
DATE = re.compile(
    rf"(?<![\d/])(?P<iso>\d{{4}}-\d{{2}}-\d{{2}})(?!\d)"
    rf"|(?<!\d)(?P<d1>\d{{1,2}})(?:st|nd|rd|th|\.)?\s(?:of\s)?(?P<m1>{_MONTH_WORD})\b\.?(?:\s(?P<y1>\d{{4}}))?"
    rf"|\b(?P<m2>{_MONTH_WORD})\.?\s(?P<d2>\d{{1,2}})(?:st|nd|rd|th)?\b(?![:.]\d)(?:,?\s(?P<y2>\d{{4}}))?"
    rf"|(?<!\d)(?P<d3>\d{{1,2}})\.(?P<m3>\d{{1,2}})\.(?P<y3>\d{{4}})?",
    re.IGNORECASE,
)
RELATIVE_DAY = re.compile(
    rf"\b(?P<soon>today|tonight|{TOMORROW})\b|\b(?:(?P<which>this|next|coming)\s)?(?P<day>{DAY_WORD})(?:'?s)?\b",
    re.IGNORECASE,
)
TIME = re.compile(
    r"(?<![\d:.,/+-])(?P<h>[01]?\d|2[0-3])"
    r"(?:(?:[:.h](?P<m>[0-5]\d))?\s?(?P<half>am|pm|a\.m\.?|p\.m\.?)(?![a-z])"
    r"|[:.h](?P<m2>[0-5]\d)(?:\s?(?:h|hrs?|o\s?'?\s?clock)\b)?|\s?(?:h|o\s?'?\s?clock)\b)(?![\d:])"
    r"|(?<![\d:.,/+-])(?P<h2>0?[1-9]|1[0-2])(?P<m3>[0-5]\d)\s?(?P<half2>am|pm)\b"
    r"|\b(?P<word>noon|midday|midnight)\b",
    re.IGNORECASE,
)
# `1730`, and nothing behind it that would make it a length or a load; 2000 to 2059 may be years, too.
_MILITARY = re.compile(
    r"(?<![\d:.,/+-])(?P<h>[01]\d|2[0-3])(?P<m2>[0-5]\d)(?![\d:.,/%+-]|\s?(?:m|km|k|kg|lb|cal|yd)s?\b)",
    re.IGNORECASE,
)
BARE_HOUR = re.compile(r"(?<![\d:.,/+-])(?P<h>[01]?\d|2[0-3])(?![\d:.,/%+-])", re.IGNORECASE)
_COUNTS = {
    "half an": 0.5, "an": 1, "a": 1, "one": 1, "two": 2, "three": 3, "four": 4, "five": 5, "six": 6,
    "ten": 10, "fifteen": 15, "twenty": 20, "thirty": 30, "forty-five": 45,
}  # fmt: skip
SPAN = re.compile(
    rf"(?:(?<![\d.])(?P<n>\d{{1,4}}(?:[.,]5)?)[\s-]?|\b(?P<word>{'|'.join(_COUNTS)})[\s-])"
    r"(?P<unit>min(?:ute)?s?|m|'|h|hrs?|hours?|days?)(?![a-z])(?P<half>\s(?:and\s(?:a\s)?half))?",
    re.IGNORECASE,
)


class Clock(Value):
    """A time of day. `half_known`: whether it is clear which half of the day is meant.

    `half_told`: and whether that was said; `7:30` is read as the morning, though it may be said of the evening.
    """

    at: time
    half_known: bool
    half_told: bool = True


def weekday_of(word: str) -> int:
    """`Tues` -> 1; Monday is 0."""
    return next(number for number, day in enumerate(WEEKDAYS) if day.startswith(word.lower()[:3]))


def clock_in(match: re.Match[str]) -> Clock | None:
    """The time of day of a match of TIME or BARE_HOUR; None for 13 pm."""
    said = match.groupdict()
    if said.get("word"):
        return Clock(at=time(0 if said["word"].lower() == "midnight" else _NOON), half_known=True)
    figures = said.get("h") or said["h2"]
    hour, minute = int(figures), int(said.get("m") or said.get("m2") or said.get("m3") or 0)
    half = (said.get("half") or said.get("half2") or "").lower()[:1]
    if not half:
        told = hour > _NOON or figures.startswith("0")
        return Clock(at=time(hour, minute), half_known=told or bool(said.get("m2")), half_told=told)
    if not 1 <= hour <= _NOON:
        return None
    return Clock(at=time(hour % _NOON + (_NOON if half == "p" else 0), minute), half_known=True)


def minutes_in(match: re.Match[str]) -> int:
    """Minutes of a match of SPAN."""
    count = _COUNTS[match["word"].lower()] if match["word"] else float(match["n"].replace(",", "."))
    unit = match["unit"].lower()
    each = 24 * 60 if unit.startswith("d") else 60 if unit.startswith("h") else 1
    return round((count + (0.5 if match["half"] else 0)) * each)


def date_in(match: re.Match[str], today: date) -> date | None:
    """The date of a match of DATE, the next one where no year is named; None for a 31st of April."""
    if match["iso"]:
        return _date(match["iso"])
    day = match["d1"] or match["d2"] or match["d3"]
    month = _month_of(match["m1"] or match["m2"] or match["m3"])
    year = match["y1"] or match["y2"] or match["y3"]
    years = [int(year)] if year else [today.year, today.year + 1]
    found = (_date(f"{one:04}-{month:02}-{int(day):02}") for one in years)
    return next((one for one in found if one and (year or one >= today)), None)


def _month_of(word: str) -> int:
    if word.isdigit():
        return int(word)
    return next(number for number, month in enumerate(_MONTHS, 1) if month.startswith(word.lower()[:3]))


def _date(text: str) -> date | None:
    try:
        return date.fromisoformat(text)
    except ValueError:
        return None


def days_in(match: re.Match[str], today: date) -> tuple[date, ...]:
    """The days that a match of RELATIVE_DAY may mean, the nearer first: people part over `next Tuesday`."""
    if match["soon"]:
        return (today + timedelta(days=0 if match["soon"].lower() in {"today", "tonight"} else 1),)
    ahead = (weekday_of(match["day"]) - today.weekday()) % _WEEK
    coming = today + timedelta(days=ahead)
    if (match["which"] or "").lower() != "next":
        return (coming,)
    following = coming + timedelta(days=_WEEK)
    return (following,) if ahead == 0 else (coming, following)


def find_days(text: str, today: date) -> tuple[date, ...]:
    """The one day named in a text, or the days it may mean; none if no day is named."""
    return next(_days(text, today), ())


# `The 11th`, in no month: the next one. Others are the first round or the fifth set.
_OF_A_MONTH = re.compile(
    rf"(?:^|\b(?:the|on|till|until|til|by|from|before|{DAY_WORD})\s)\W*(?:the\s)?(?P<d>[1-9]|[12]\d|3[01])(?:st|nd|rd|th)\b"
    r"(?!\s(?:of\b|round|set|rep|min|line|part|one|time|place|station|block))",
    re.IGNORECASE,
)
_MONTHS_AHEAD = 12


def _next_of_month(day: int, today: date) -> date | None:
    """The next day of that number, today too."""
    for ahead in range(_MONTHS_AHEAD):
        months = today.month - 1 + ahead
        found = _date(f"{today.year + months // 12:04}-{months % 12 + 1:02}-{day:02}")
        if found and found >= today:
            return found
    return None


def _days(text: str, today: date) -> Iterator[tuple[date, ...]]:
    for match in DATE.finditer(text):
        found = date_in(match, today)
        yield (found,) if found else ()
    for match in _OF_A_MONTH.finditer(DATE.sub(" ", text)):
        found = _next_of_month(int(match["d"]), today)
        yield (found,) if found else ()
    for match in RELATIVE_DAY.finditer(text):
        yield days_in(match, today)


_HOURS = (
    "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve",
)  # fmt: skip
# `Half 6` is said for half past five in some countries; here as in English.
_PARTS = re.compile(
    r"\b(?:(?P<half>half)(?: past)?|(?:a )?quarter past|(?P<to>(?:a )?quarter to))\s"
    rf"(?P<h>1[0-2]|[1-9]|(?:{'|'.join(_HOURS)})\b)(?![\d:.])"
    r"(?!\s?(?:min|h(?:ou)?rs?\b))",
    re.IGNORECASE,
)


def _in_figures(match: re.Match[str]) -> str:
    """`quarter to 7` -> `6:45`."""
    told = match["h"].lower()
    hour = _HOURS.index(told) + 1 if told in _HOURS else int(told)
    if match["to"]:
        return f"{(hour - 2) % 12 + 1}:45"
    return f"{hour}:30" if match["half"] else f"{hour}:15"


def with_figures(text: str) -> str:
    """`half 7` as 7:30, where no figures say more than these words: `half past nine, so 21:30`."""
    return text if TIME.search(_PARTS.sub(" ", text)) else _PARTS.sub(_in_figures, text)


_THIS_WEEK = re.compile(r"\b(?P<which>this|next)\s(?:whole\s)?(?:week|wk)\b", re.IGNORECASE)


def days_of_week(text: str, today: date) -> tuple[date, ...]:
    """The days of the week that is named, of this one those to come; () where none is, or a day of it is."""
    match = _THIS_WEEK.search(text)
    if match is None or find_days(text, today):
        return ()
    monday = today - timedelta(days=today.weekday())
    first = today if match["which"].lower() == "this" else monday + timedelta(days=_WEEK)
    until = monday + timedelta(days=_WEEK if match["which"].lower() == "this" else 2 * _WEEK)
    return tuple(first + timedelta(days=ahead) for ahead in range((until - first).days))


_PART_OF_DAY = re.compile(r"\b(?:(?P<late>evening|afternoon|tonight)|morning)s?\b", re.IGNORECASE)


def find_clock(text: str) -> Clock | None:
    """The time of day in a text: one that is plainly a time, else a number that stands alone.

    `5.30 in the evening`: the part of the day that is named says which half is meant.
    """
    text = with_figures(text)
    match = TIME.search(text)
    if match is None:
        left = DATE.sub(" ", SPAN.sub(" ", text))
        match = _MILITARY.search(left) or BARE_HOUR.search(left)
    return in_part_of_day(clock_in(match) if match else None, text)


def in_part_of_day(clock: Clock | None, text: str) -> Clock | None:
    """The hour in the part of the day that is named beside it, where nothing else tells which half is meant."""
    part = _PART_OF_DAY.search(text)
    if clock is None or part is None or clock.half_told:
        return clock
    hour = clock.at.hour % _NOON + _NOON if part["late"] else clock.at.hour
    return Clock(at=clock.at.replace(hour=hour), half_known=True)


_HINTS_AT_AN_HOUR = re.compile(
    r"\d|\b(?:half|quarter|past|morning|evening|afternoon|tonight|o'?\s?clock|am|pm)\b", re.IGNORECASE
)


def hints_at_an_hour(text: str) -> bool:
    """Whether words tell some time of day beside the days they name, in a form that may not be understood."""
    return bool(_HINTS_AT_AN_HOUR.search(_OF_A_MONTH.sub(" ", DATE.sub(" ", text))))


def names_only_a_weekday(text: str) -> bool:
    """`Wed`, in no week: neither `this wed` nor `wed 11th`."""
    match = RELATIVE_DAY.search(text)
    told = DATE.search(text) or _OF_A_MONTH.search(text)
    return match is not None and match["day"] is not None and match["which"] is None and not told


# `Wed 11th`, `Wednesday, 11 March`, `11 March`, `Saturday on the quay`.
_DAY_IN_FRONT = re.compile(
    r"^\W*(?:(?:change of plans?|new plan) for\s)?"
    rf"(?:{DAY_WORD}\b\W{{0,2}}(?:the\s)?\d{{1,2}}(?:st|nd|rd|th)\b(?:\s(?:of\s)?{_MONTH_WORD}\b)?"
    rf"|(?:{DAY_WORD}\b\W{{0,2}})?(?:\d{{1,2}}(?:st|nd|rd|th)?\s(?:of\s)?{_MONTH_WORD}|{_MONTH_WORD}\s\d{{1,2}}(?:st|nd|rd|th)?)\b"
    r"|\S+)",
    re.IGNORECASE,
)


def day_in_front(text: str, today: date) -> tuple[date, ...]:
    """The day that a text begins with, with its date where one is told; none where it begins with another word."""
    front = _DAY_IN_FRONT.match(text)
    return find_days(re.sub(r"\W+", " ", front[0]), today) if front else ()
