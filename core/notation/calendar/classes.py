"""A coach's words about classes: a new one, one date called off, one date moved."""

import re
from datetime import date, time, timedelta

from core.notation.calendar.moments import (
    BARE_HOUR,
    DATE,
    DAY_WORD,
    RELATIVE_DAY,
    SPAN,
    TIME,
    Clock,
    clock_in,
    date_in,
    days_in,
    days_of_week,
    find_clock,
    find_days,
    minutes_in,
    weekday_of,
    with_figures,
)
from core.notation.text import plain
from core.values import Value

_LONGEST = 300
_LONGEST_TITLE = 60
_LONGEST_CLASS = 12 * 60
_HALF_A_DAY = 12
_WEEK = 7
# Hours in which a class may begin, where only half a clock was told (common practice, no source).
_AWAKE = range(5, 22)
_LINK = re.compile(r"\bhttps?://[^\s<>\"]+", re.IGNORECASE)
_BEGINS = re.compile(
    rf"^\W*(?:(?:please\s)?(?:new|add|set ?up|make|schedule|plan|start)\s(?:an?\s|the\s)?(?:new\s)?)?"
    rf"(?:(?:live|weekly|daily|online|group|video)\s)*"
    rf"(?:class(?:es)?\b(?!\s(?:was|is|were|are)\b)|(?:every|each)\s(?:other\s|second\s)?(?:{DAY_WORD}s?|day|weekday|morning|evening)\b"
    rf"|{DAY_WORD}s\b|weekdays\b|daily\b)",
    re.IGNORECASE,
)
_DAYS = re.compile(rf"\b(?P<day>{DAY_WORD})s?\b", re.IGNORECASE)
_OFTEN = re.compile(rf"\b(?:every|each|weekly|{DAY_WORD}s|daily|weekdays)\b", re.IGNORECASE)
_ALL_WEEK = re.compile(r"\b(?:every\s?day|each day|daily|every (?:morning|evening))\b", re.IGNORECASE)
_WORKDAYS = re.compile(r"\b(?:weekdays?|mon(?:day)?\s?(?:-|to|through|thru)\s?fri(?:day)?)\b", re.IGNORECASE)
_EVERY_OTHER = re.compile(
    r"\b(?:every\s(?:other|second|2nd|two weeks?|2 weeks?)|fortnightly|biweekly)\b", re.IGNORECASE
)
_FILLER = re.compile(
    r"\b(?:class(?:es)?|new|add|set ?up|make|schedule|plan|please|every|each|other|second|weekly|daily"
    r"|fortnightly|biweekly|live|at|on|from|to|until|for|and|in the|the|an?|am|pm|link|here|join"
    r"|starts?|starting|is|o'?clock|weekdays?|every ?day|day|morning|evening|long|lasts?|through|week)\b",
    re.IGNORECASE,
)
# Where it takes place is no name for it.
_PLACE = re.compile(r"\b(?:in|at) (?:the|our|my) (?!morning|evening|afternoon)\w+", re.IGNORECASE)
_ONE_DAY = (
    rf"(?:the\s|our\s|my\s)?(?:this\s|next\s|coming\s)?(?:{DAY_WORD}|today|tomorrow|tonight)"
    r"(?:'s|s(?=.*\binstead\b))?"
)
_OFF = re.compile(
    r"^\W*(?:(?:there(?:'s| is| will be)\s)?no\s(?:\w+\s)?class(?:es)?\b"
    r"|(?:cancel|skip|drop|call off)\s(?:\w+'?s?\s){0,3}?class(?:es)?\b"
    rf"|(?:cancel|skip)\s(?:this\s|next\s)?(?:{DAY_WORD}|today|tomorrow)\b"
    rf"|{_ONE_DAY}\s(?:\w+\s)?class\s(?:is|has been|was|got)\s(?:off|cancell?ed|not happening)\b"
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
_ELSEWHERE = re.compile(r"\b(?:instead|now|moved?|moves)\b", re.IGNORECASE)
# `next Tuesday's class is at 7pm instead`, `let's have tomorrow's class at 8`
_INSTEAD = re.compile(
    rf"^\W*(?:(?:hi|hey|ok|so|sorry|please|just)\W+)*(?:(?P<from>{_ONE_CLASS})\s{_TAKES_PLACE}"
    rf"|(?:let'?s\s(?:have|do|make|hold)|make|set|put|we(?:'ll|\swill)?\s(?:have|do|hold))\s(?P<from2>{_ONE_CLASS}))"
    r"\s(?:now\s|going\sto\sbe\s|already\s|only\s)?(?:at\s|to\s|on\s|from\s)?"
    r"(?P<to>.+?)(?:,?\s(?:instead|now|this time|please|(?:just |only )?this (?:week|wk|once)|only|for once))*[\s.!]*$",
    re.IGNORECASE,
)
# `class at 7 instead`, `tonight's class at 7 instead`: only this once, so days that repeat are something else
_AT_INSTEAD = re.compile(
    rf"^\W*(?:(?:hi|hey|ok|so|sorry|please|just)\W+)*(?P<from>(?:{_ONE_DAY}\s|the\s|our\s|my\s)?(?:live\s)?class)"
    rf"(?:\s{_TAKES_PLACE})?\s(?:at|from)\s(?P<to>(?!.*\b(?:{DAY_WORD}s|every|each)\b).+?),?\sinstead"
    r"(?:,?\s(?:this time|please|today|tonight))*[\s.!]*$",
    re.IGNORECASE,
)


# `class moves to 7pm on the 11th`: where to stands first.
_TO_FIRST = re.compile(
    rf"^\W*(?:(?:hi|hey|ok|so|sorry|please|just)\W+)*(?:the\s|our\s|my\s)?(?:live\s)?class\s{_TAKES_PLACE}\s"
    rf"(?:now\s)?(?:to|at)\s(?P<to>[0-9][0-9:.]*\s?(?:[ap]m|h)?)\s(?P<from>(?:on|for)\s.+?)"
    r"(?:,?\s(?:instead|this time))*[\s.!]*$",
    re.IGNORECASE,
)


# `Class moved to thursdays 19:00`: each of its dates from now on, not one of them.
_FOR_GOOD = re.compile(
    r"^\W*(?:(?:hi|hey|ok|so|sorry|please|just)\W+)*(?:(?:the|our|my)\s)?(?:live\s)?class(?:es)?\s"
    r"(?:(?:is|are|has|have|was|will be|been|gets?|got|now)\s)*"
    r"(?:mov(?:ed|es|ing)|changed|changes|switched|switches|now)\s(?:to\s|on\s)?"
    rf"(?=.*\b(?:{DAY_WORD}s|every|each|from (?:now|next|then)|for good|permanently)\b)",
    re.IGNORECASE,
)
_FROM_NEXT_WEEK = re.compile(
    r"\b(?:from|as of|starting)\s(?:the\s)?(?:next|nxt)\s(?:week|wk)\b", re.IGNORECASE
)


class ReadClass(Value):
    """What a coach wrote of a class. `weekdays` (Monday is 0) every so many `weeks`, or once `on` a date.

    `since`: the first day on which it may be. `at` is None where no time was found, `half_told` false where no half
    of the day was; `minutes`, `link` and `title` are None where they weren't told.
    """

    weekdays: tuple[int, ...] = ()
    weeks: int = 1
    on: date | None = None
    since: date | None = None
    at: time | None = None
    half_known: bool = True
    half_told: bool = True
    minutes: int | None = None
    link: str | None = None
    title: str | None = None

    @property
    def rule(self) -> str | None:
        """The RRULE of RFC 5545; None for a class that is held once."""
        if self.on is not None or not self.weekdays:
            return None
        every = f"INTERVAL={self.weeks};" if self.weeks > 1 else ""
        days = ",".join(("MO", "TU", "WE", "TH", "FR", "SA", "SU")[day] for day in self.weekdays)
        return f"FREQ=WEEKLY;{every}BYDAY={days}"


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


_CALLED = re.compile(
    r"^\W*(?:(?:ok|okay|no|please|pls|and|just)\W+)*(?:call|name|title|rename)\s(?:it|that|the class|this)\s"
    r"(?:to\s|as\s)?"
    r"[\"'\u201c]?(?P<title>[^\n?]{2,60}?)[\"'\u201d]?[\s.!]*$",
    re.IGNORECASE,
)


def read_title(text: str) -> str | None:
    """`Call it evening training`: what a class shall be called."""
    match = _CALLED.match(text)
    return match["title"][:1].upper() + match["title"][1:] if match else None


def read_class(text: str, today: date) -> ReadClass | None:
    """A class from `class Tuesdays 18:30, 45 min, https://...`; None for a text about something else."""
    words = plain(text[:_LONGEST])
    if not _BEGINS.match(words) or words.endswith("?"):
        return None
    return class_in(words, today)


def read_moved_for_good(text: str, today: date) -> ReadClass | None:
    """`Class moved to thursdays 19:00 from next week`: when it is from then on; None for what is something else."""
    words = plain(text[:_LONGEST])
    moved = _FOR_GOOD.match(words)
    if moved is None or words.endswith("?"):
        return None
    later = _FROM_NEXT_WEEK.search(words)
    monday = today + timedelta(days=_WEEK - today.weekday()) if later else None
    read = class_in(_FROM_NEXT_WEEK.sub(" ", words[moved.end() :]), today)
    return read.model_copy(update={"title": None, "since": monday})


def class_in(text: str, today: date) -> ReadClass:
    """Whatever can be read of a class in a text that is known to be about one."""
    told = plain(text[:_LONGEST])
    words = with_figures(told)
    link = _LINK.search(words)
    left = _LINK.sub(" , ", words)
    minutes = [minutes_in(match) for match in SPAN.finditer(left)]
    left = SPAN.sub(" , ", left)
    on, left = _date_of(left, today)
    clock, left = _clock_of(left)
    weekdays = () if on else _weekdays_of(left)
    return ReadClass(
        weekdays=weekdays,
        weeks=2 if _EVERY_OTHER.search(left) else 1,
        on=on,
        at=clock and clock.at,
        half_known=clock is None or (clock.half_known and (clock.half_told or words == told)),
        half_told=clock is None or clock.half_told,
        minutes=next((one for one in minutes if 1 <= one <= _LONGEST_CLASS), None),
        link=link and link[0].rstrip(".,;)"),
        title=_title_of(left),
    )


def _date_of(words: str, today: date) -> tuple[date | None, str]:
    """A date, or a day named once: `tomorrow`, `on Saturday`; and the text without a written date."""
    match = DATE.search(words)
    if match:
        return date_in(match, today), DATE.sub(" , ", words)
    if _OFTEN.search(words) or _WORKDAYS.search(words):
        return None, words
    named = list(RELATIVE_DAY.finditer(words))
    once = len(named) == 1 and (
        named[0]["soon"] or named[0]["which"] or re.search(r"\bon\s$", words[: named[0].start()])
    )
    return (days_in(named[0], today)[0], RELATIVE_DAY.sub(" , ", words)) if once else (None, words)


def _clock_of(words: str) -> tuple[Clock | None, str]:
    match = TIME.search(words) or BARE_HOUR.search(words)
    if match is None:
        return None, words
    return clock_in(match), f"{words[: match.start()]} , {words[match.end() :]}"


def _weekdays_of(words: str) -> tuple[int, ...]:
    if _ALL_WEEK.search(words):
        return tuple(range(7))
    if _WORKDAYS.search(words):
        return tuple(range(5))
    return tuple(sorted({weekday_of(match["day"]) for match in _DAYS.finditer(words)}))


def _title_of(words: str) -> str | None:
    """What is left once days, times and small words are gone."""
    left = _PLACE.sub(" , ", _WORKDAYS.sub(" , ", words))
    for known in (_EVERY_OTHER, _DAYS, _FILLER):
        left = known.sub(" , ", left)
    pieces = [" ".join(piece.split()).strip(" .:;-&()'\"*") for piece in re.split(r"[,;:|]", left)]
    title = " ".join(piece for piece in pieces if re.search(r"[^\W\d_]{2}", piece))[:_LONGEST_TITLE].strip()
    return title[:1].upper() + title[1:] if title else None


def read_called_off(text: str, today: date) -> CalledOff | None:
    """`no class next Tuesday` -> the days that may be meant; None where the text is about something else."""
    words = plain(text[:_LONGEST])
    if not _OFF.match(words) or words.endswith("?"):
        return None
    time_said = TIME.search(words)
    clock = clock_in(time_said) if time_said else None
    return CalledOff(days=find_days(words, today) or days_of_week(words, today), at=clock and clock.at)


def read_moved(text: str, today: date) -> Moved | None:
    """`move Tuesday's class to Wednesday 19:00`, `Tuesday's class is at 7 instead` -> from where, and to where."""
    words = plain(text[:_LONGEST])
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
        days=find_days(left, today),
        to_day=to_days[0] if to_days else None,
        to_time=clock and clock.at,
        half_known=clock is None or clock.half_told,
    )
