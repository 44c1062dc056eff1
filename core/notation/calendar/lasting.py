"""From when to when something is so: `next week`, `from monday to friday`, `until 12 march`, `for three days`."""

import re
from collections.abc import Callable
from datetime import date, timedelta
from typing import Final, NamedTuple

from core.notation.calendar.moments import DAY_WORD, TOMORROW, find_days

_ENDS: Final = r"(?=$|[,;.]|\b(?:with|only|no|just|i|i'm|i'll|i've|we|on|onwards|to|until|till?)\b)"
_FROM: Final = re.compile(
    rf"\b(?:from|starting(?: on)?|as of)\s(?P<day>.{{3,20}}?)(?:\s(?:on|onwards))?\s?{_ENDS}"
)
_ON: Final = re.compile(rf"\bon\s(?P<day>(?:next |this )?[a-z0-9. ]{{3,15}}?)\s?{_ENDS}")
_TOMORROW: Final = re.compile(rf"\b{TOMORROW}\b")
# A day alone is that day.
_DAY_ALONE: Final = re.compile(rf"\b(?:this |next |coming )?(?P<day>{DAY_WORD})s?\b(?!'s)")
_NEXT_WEEK: Final = re.compile(r"\b(?:for )?(?:all |the whole )?(?:of )?next week\b")
_UNTIL: Final = re.compile(
    rf"\b(?:until|till|til|through|back on|back|to(?= (?:{DAY_WORD}\b|[0-9])))\s(?P<day>.{{3,20}}?)"
    r"(?=$|,|\bwith\b|\bonly\b|\bno\b|\bjust\b|\bi\b)"
)
_DAYS: Final = re.compile(
    r"\bfor (?:the next |another |the )?(?P<n>[0-9]{1,2}|a|one|two|three|four|five|six|few)\s(?P<unit>days?|weeks?)\b"
)
_WEEK: Final = re.compile(r"\b(?:this|all|the whole) week\b")
_TODAY: Final = re.compile(r"\b(?:for )?today\b")
_NUMBERS: Final = {"a": 1, "one": 1, "two": 2, "three": 3, "few": 3, "four": 4, "five": 5, "six": 6}
_DAY: Final = timedelta(days=1)
_WEEK_LONG: Final = 7

Reader = Callable[[re.Match[str], date], date | None]


class Lasting(NamedTuple):
    """`since`: the first day, None where it is so already; `until`: the last one, None where none was told.

    `rest`: the other words.
    """

    since: date | None
    until: date | None
    rest: str


def read_lasting(words: str, today: date) -> Lasting:
    """What lower-case words say of its days. What begins some day and has no end told is taken for a week."""
    if week := _NEXT_WEEK.search(words):
        monday = today + timedelta(days=_WEEK_LONG - today.weekday())
        return Lasting(monday, monday + 6 * _DAY, _cut(words, week))
    since, left = _first((_FROM, _named_day), (_TOMORROW, _tomorrow), words=words, today=today)
    began = since or today
    until, rest = _first(
        (_UNTIL, _named_day), (_DAYS, _after_days), (_WEEK, _end_of_week), words=left, today=began
    )
    if since is None and until is None:
        since, rest = _first((_ON, _named_day), (_DAY_ALONE, _named_day), words=left, today=today)
        until = since
    if since is None or since <= today:
        return Lasting(None, until, _TODAY.sub(" ", rest) if until is None else rest)
    return Lasting(since, until or (since if _TOMORROW.search(words) else since + 6 * _DAY), rest)


def names_days(words: str, today: date) -> bool:
    """Whether the words say on which days: `today` does, too."""
    told = read_lasting(words, today)
    return told.until is not None or bool(_TODAY.search(words))


def _first(*readers: tuple[re.Pattern[str], Reader], words: str, today: date) -> tuple[date | None, str]:
    """The day of the first that fits, and the words without it."""
    for pattern, day_of in readers:
        match = pattern.search(words)
        day = day_of(match, today) if match else None
        if match is not None and day is not None:
            return day, _cut(words, match)
    return None, words


def _cut(words: str, match: re.Match[str]) -> str:
    return f"{words[: match.start()]} {words[match.end() :]}"


def _named_day(match: re.Match[str], today: date) -> date | None:
    return next(iter(find_days(match["day"], today)), None)


def _tomorrow(_: re.Match[str], today: date) -> date:
    return today + _DAY


def _after_days(match: re.Match[str], today: date) -> date:
    count = int(_NUMBERS.get(match["n"]) or match["n"])
    return today + timedelta(days=count * (_WEEK_LONG if match["unit"].startswith("week") else 1) - 1)


def _end_of_week(_: re.Match[str], today: date) -> date:
    return today + timedelta(days=6 - today.weekday())
