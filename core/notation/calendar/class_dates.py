"""A coach's words about single dates of a class: one called off, one moved."""

import re
from datetime import date, time
from typing import Final

from core.notation.calendar.classes import LONGEST, read_class
from core.notation.calendar.moments import (
    DAY_WORD,
    TIME,
    clock_in,
    days_of_week,
    find_clock,
    find_days,
)
from core.notation.text import plain
from core.values import Value

_HALF_A_DAY = 12
# Hours in which a class may begin, where only half a clock was told (common practice, no source).
_AWAKE = range(5, 22)
_DAYS = re.compile(rf"\b(?P<day>{DAY_WORD})s?\b", re.IGNORECASE)
_ONE_DAY = (
    rf"(?:the\s|our\s|my\s)?(?:this\s|next\s|coming\s)?(?:{DAY_WORD}|today|tomorrow|tonight)"
    r"(?:'s|s(?=.*\binstead\b))?"
)
_OFF = re.compile(
    r"^\W*(?:(?:there(?:'s| is| will be)\s)?no\s(?:\w+\s)?class(?:es)?\b"
    r"|(?:cancel|skip|drop|call off)\s(?:\w+'?s?\s){0,3}?class(?:es)?\b"
    rf"|(?:cancel|skip)\s(?:this\s|next\s)?(?:{DAY_WORD}|today|tomorrow)\b"
    rf"|{_ONE_DAY}\s(?:\w+\s)?class\s(?:is|has been|was|got)\s(?:off|cancell?ed|not happening)\b"
    rf"|(?:class\s(?:on\s)?{_ONE_DAY}|{_ONE_DAY}\sclass)\s(?:off|cancell?ed|out)\b"
    r"|class\b.*\b(?:is|are)\s(?:off|cancell?ed|not happening)\b)",
    re.IGNORECASE,
)
_MOVE = re.compile(
    rf"^\W*(?:please\s)?(?:move|shift|postpone|reschedule|change|push|switch|bring)\s(?P<from>.*?\bclass\b.*?|(?:this\s|next\s)?{DAY_WORD}(?:'s)?|today|tomorrow)"
    r"\s(?:to|until|till)\s(?P<to>.+)$",
    re.IGNORECASE,
)


_ONE_CLASS = (
    rf"(?:{_ONE_DAY}\s(?:\w+\s)?class|(?:the\s|our\s|my\s)?class\s(?:on\s|for\s)?{_ONE_DAY}(?![a-z'])"
    rf"|(?:the\s|our\s|my\s)?class\son\s(?!{DAY_WORD}s?\b)[^,]{{3,20}}?)"
)
_TAKES_PLACE = (
    r"(?:is|will\sbe|'ll\sbe|should\sbe|has\sto\sbe|starts?|begins?|will\s(?:start|begin)|moves?|goes|takes\splace"
    r"|(?:(?:is|has|was|gets|got)\s)?moved)"
)
# Of one date, not of each: `this week`, `for once`.
_ONCE = r"(?:instead|(?:just\s|only\s)*this\s(?:week|wk|time|once)(?:\sonly)?|for\sonce|(?:just|only)\sonce)"
_ELSEWHERE = re.compile(rf"\b(?:now|moved?|moves|{_ONCE})\b", re.IGNORECASE)
# `next Tuesday's class is at 7pm instead`, `let's have tomorrow's class at 8`
_INSTEAD = re.compile(
    rf"^\W*(?:(?:hi|hey|ok|so|sorry|please|just)\W+)*(?:(?P<from>{_ONE_CLASS})\s{_TAKES_PLACE}"
    rf"|(?:let'?s\s(?:have|do|make|hold)|make|set|put|we(?:'ll|\swill)?\s(?:have|do|hold))\s(?P<from2>{_ONE_CLASS}))"
    r"\s(?:now\s|going\sto\sbe\s|already\s|only\s)?(?:at\s|to\s|on\s|from\s)?"
    rf"(?P<to>.+?)(?:,?\s(?:now|please|only|{_ONCE}))*[\s.!]*$",
    re.IGNORECASE,
)
# `class at 7 instead`, `tonight's class at 7 instead`: only this once, so days that repeat are something else
_AT_INSTEAD = re.compile(
    rf"^\W*(?:(?:hi|hey|ok|so|sorry|please|just)\W+)*(?P<from>(?:{_ONE_DAY}\s|the\s|our\s|my\s)?(?:live\s)?class(?:\s(?:on\s)?{_ONE_DAY})?)"
    rf"(?:\s{_TAKES_PLACE})?\s(?:at|from)\s(?P<to>(?!.*\b(?:{DAY_WORD}s|every|each)\b).+?),?\s{_ONCE}"
    rf"(?:,?\s(?:please|today|tonight|{_ONCE}))*[\s.!]*$",
    re.IGNORECASE,
)


# `class moves to 7pm on the 11th`: where to stands first.
_TO_FIRST = re.compile(
    rf"^\W*(?:(?:hi|hey|ok|so|sorry|please|just)\W+)*(?:the\s|our\s|my\s)?(?:live\s)?class\s{_TAKES_PLACE}\s"
    rf"(?:now\s)?(?:to|at)\s(?P<to>[0-9][0-9:.]*\s?(?:[ap]m|h)?)\s(?P<from>(?:on|for)\s.+?)"
    r"(?:,?\s(?:instead|this time))*[\s.!]*$",
    re.IGNORECASE,
)


class CalledOff(Value):
    """No class on one of these days; `at` where a time was named. No day: it wasn't told which."""

    days: tuple[date, ...]
    at: time | None = None


class Moved(Value):
    """The class of one of these days goes to another day, another time, or both.

    `half_known`: whether it is clear which half of the day the time is of.
    """

    days: tuple[date, ...]
    to_day: date | None = None
    to_time: time | None = None
    half_known: bool = True

    def time_near(self, before: time) -> time:
        """The new time for a class that was at `before`: `7` is 19:00 for one in the evening."""
        if self.to_time is None:
            return before
        later = self.to_time.replace(hour=(self.to_time.hour + _HALF_A_DAY) % 24)
        if self.half_known or later.hour not in _AWAKE:
            return self.to_time
        return min(self.to_time, later, key=lambda one: (one.hour not in _AWAKE, _apart(one, before)))


def _apart(one: time, other: time) -> int:
    return abs((one.hour - other.hour) * 60 + one.minute - other.minute)


def read_called_off(text: str, today: date) -> CalledOff | None:
    """`no class next Tuesday` -> the days that may be meant; None where the text is about something else."""
    words = plain(text[:LONGEST])
    if not _OFF.match(words) or words.endswith("?"):
        return None
    time_said = TIME.search(words)
    clock = clock_in(time_said) if time_said else None
    return CalledOff(days=find_days(words, today) or days_of_week(words, today), at=clock and clock.at)


# `I won't make it Saturday`, `can't do saturday`: of a coach, whose class it is.
_NOT_THERE: Final = re.compile(
    r"^\W*(?:(?:sorry|hi|hey|ok|so|unfortunately|guys|folks|all)\W+)*(?:(?:i|we)(?:['\u2019]?m| am| are)?\s)?"
    r"(?:can(?:['\u2019]?t|not| not)|won['\u2019]?t|will not|not able to|unable to)\s(?:be able to\s)?"
    r"(?:make(?: it)?|do(?: it)?|come|be (?:there|in|around|here)|teach|coach|hold|run|give)\b(?!.*\?)",
    re.IGNORECASE,
)


def tells_not_there(text: str) -> bool:
    """Whether somebody tells of themselves that they won't come; on which day stands in the rest."""
    return bool(_NOT_THERE.match(plain(text[:LONGEST])))


def read_moved(text: str, today: date) -> Moved | None:
    """`move Tuesday's class to Wednesday 19:00`, `Tuesday's class is at 7 instead` -> from where, and to where."""
    words = plain(text[:LONGEST])
    shapes = (_MOVE, _INSTEAD, _AT_INSTEAD, _TO_FIRST)
    match = next((found for one in shapes if (found := one.match(words))), None)
    if match is None or words.endswith("?"):
        return None
    if read_class(words, today) and not _ELSEWHERE.search(words):
        return None  # `class on Thursday is at 7pm` makes a class
    said = match.groupdict()
    left = _DAYS.sub(r"\g<day>", said["from"] or said.get("from2") or "")
    clock = find_clock(match["to"])
    to_days = find_days(match["to"], today)
    if clock is None and not to_days:
        return None
    return Moved(
        days=find_days(left, today) or days_of_week(words, today),
        to_day=to_days[0] if to_days else None,
        to_time=clock and clock.at,
        half_known=clock is None or clock.half_told,
    )
