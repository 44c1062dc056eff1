"""A coach's words about a class: when it is, how long, where, and its name."""

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
    find_clock,
    in_part_of_day,
    minutes_in,
    weekday_of,
    with_figures,
)
from core.notation.text import plain
from core.values import Value

LONGEST = 300
_LONGEST_TITLE = 60
_LONGEST_CLASS = 12 * 60
_HALF_A_DAY = 12
_WEEK = 7
# `5h` and more is an hour of the day: hardly anybody holds a class as long (estimate).
_LONGEST_SPAN = 4 * 60
LINK = re.compile(r"\bhttps?://[^\s<>\"]+", re.IGNORECASE)
_BEGINS = re.compile(
    r"^\W*(?:(?:hi|hello|hey|good (?:morning|evening)|ok|so|please|pls)\W+)*"
    r"(?:(?:i|we)\s(?:want|need|like|wanna|plan|would like|'d like)\s(?:to\s)?|i'd like\s(?:to\s)?"
    r"|(?:can|could) (?:you|we|i)\s|let'?s\s)?"
    rf"(?:(?:please\s)?(?:new|add|set ?up|make|have|do|create|schedule|plan|start)\s(?:an?\s|the\s)?(?:new\s)?)?"
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
# Said about the telling, not of the class.
_ASIDE = re.compile(
    r"\b(?:hi|hello|hey|(?:i|we)(?:'d| would)? (?:want|need|like|wanna|plan)(?: to)?|(?:can|could) (?:you|we|i)"
    r"|have|do|create|(?:fix|correct|change|update|sort)\s(?:it|that|this|them)|pls|thanks|thx|cheers|sorry|actually"
    r"|rather|i\smeant?|should\sbe|instead|but|no|ok|okay|make\sit|it(?:['\u2019]?s|\s(?:is|lasts?|takes))|long)\b",
    re.IGNORECASE,
)
# `Not 18:15 but 19`: what it isn't.
_DENIED = re.compile(
    rf"\bnot\s(?:(?:at|on)\s)?(?:[0-9]{{1,2}}(?:[:.h][0-5][0-9])?\s?(?:[ap]m|h|min(?:utes?)?)?|{DAY_WORD}s?)\b",
    re.IGNORECASE,
)
# Where it takes place is no name for it.
_PLACE = re.compile(r"\b(?:in|at) (?:the|our|my) (?!morning|evening|afternoon)\w+", re.IGNORECASE)
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

    def put_right(self, later: "ReadClass") -> "ReadClass":
        """What was told later counts; days and a date tell the same thing."""
        told = {one: value for one in _TOLD if (value := getattr(later, one)) is not None}
        if later.at is not None:
            told |= {"half_known": later.half_known, "half_told": later.half_told}
        if later.tells_days:
            told |= {"weekdays": later.weekdays, "weeks": later.weeks, "on": later.on}
        return self.model_copy(update=told)

    @property
    def tells_days(self) -> bool:
        return bool(self.weekdays) or self.on is not None

    @property
    def rule(self) -> str | None:
        """The RRULE of RFC 5545; None for a class that is held once."""
        if self.on is not None or not self.weekdays:
            return None
        every = f"INTERVAL={self.weeks};" if self.weeks > 1 else ""
        days = ",".join(("MO", "TU", "WE", "TH", "FR", "SA", "SU")[day] for day in self.weekdays)
        return f"FREQ=WEEKLY;{every}BYDAY={days}"


# What may be told or not, each by itself.
_TOLD = ("since", "at", "minutes", "link", "title")


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
    words = plain(text[:LONGEST])
    if not _BEGINS.match(words) or words.endswith("?"):
        return None
    return class_in(words, today)


def read_moved_for_good(text: str, today: date) -> ReadClass | None:
    """`Class moved to thursdays 19:00 from next week`: when it is from then on; None for what is something else."""
    words = plain(text[:LONGEST])
    moved = _FOR_GOOD.match(words)
    if moved is None or words.endswith("?"):
        return None
    later = _FROM_NEXT_WEEK.search(words)
    monday = today + timedelta(days=_WEEK - today.weekday()) if later else None
    read = class_in(_FROM_NEXT_WEEK.sub(" ", words[moved.end() :]), today)
    return read.model_copy(update={"title": None, "since": monday})


def class_in(text: str, today: date) -> ReadClass:
    """Whatever can be read of a class in a text that is known to be about one."""
    told = plain(_DENIED.sub(" , ", text[:LONGEST]))
    words = with_figures(told)
    link = LINK.search(words)
    minutes, left = _minutes_of(with_lengths(LINK.sub(" , ", words)))
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


def told_of_it(text: str, today: date) -> ReadClass | None:
    """`Not 18:15 but 19`, `make it 45 min`: what is told of a class that both know of, and nothing else."""
    read = class_in(text, today)
    tells = read.tells_days or read.at or read.minutes or read.link
    return read if tells and read.title is None and not text.rstrip().endswith("?") else None


def _minutes_of(words: str) -> tuple[list[int], str]:
    """How long it is said to be, and the words without that; `18h` is an hour of the day."""
    minutes: list[int] = []

    def hidden(match: re.Match[str]) -> str:
        told = minutes_in(match)
        if told > _LONGEST_SPAN and match[0].lower().endswith("h"):
            return match[0]
        minutes.append(told)
        return " , "

    return minutes, SPAN.sub(hidden, words)


# `18:30-19:15`, `7-7:30am`, `from 6 to 7pm`: one of the two is plainly an hour.
_HOUR = r"[0-9]{1,2}(?:[:.][0-5][0-9])?"
_FROM_TO = re.compile(
    rf"(?<![\d:.,/+-])(?P<begins>{_HOUR})\s?(?P<half>[ap]m|h)?\s?(?:-|to|until|till)\s?(?P<ends>{_HOUR})\s?(?P<half2>[ap]m|h)?"
    r"(?![\d:./%a-z-])",
    re.IGNORECASE,
)


def with_lengths(words: str) -> str:
    """`18:30-19:15` as `18:30 , 45 min`: when it ends tells how long it is."""

    def told(match: re.Match[str]) -> str:
        begins, ends = (
            match["begins"] + (match["half"] or match["half2"] or ""),
            match["ends"] + (match["half2"] or ""),
        )
        first, last = find_clock(begins), find_clock(ends)
        if first is None or last is None or not re.search(r"[:.]|[ap]m|h", match[0], re.IGNORECASE):
            return match[0]
        minutes = (_minute(last.at) - _minute(first.at)) % (_HALF_A_DAY * 60)
        return f"{begins} , {minutes} min" if minutes else match[0]

    return _FROM_TO.sub(told, words)


def _minute(at: time) -> int:
    return at.hour * 60 + at.minute


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
    return in_part_of_day(clock_in(match), words), f"{words[: match.start()]} , {words[match.end() :]}"


def _weekdays_of(words: str) -> tuple[int, ...]:
    if _ALL_WEEK.search(words):
        return tuple(range(7))
    if _WORKDAYS.search(words):
        return tuple(range(5))
    return tuple(sorted({weekday_of(match["day"]) for match in _DAYS.finditer(words)}))


def _title_of(words: str) -> str | None:
    """What is left once days, times and small words are gone: whatever reads as one of these is no name."""
    left = words
    for known in (TIME, _WORKDAYS, _ASIDE, _PLACE, _EVERY_OTHER, _DAYS, _FILLER):
        left = known.sub(" , ", left)
    pieces = [" ".join(piece.split()).strip(" .:;-&()'\"*") for piece in re.split(r"[,;:|]", left)]
    title = " ".join(piece for piece in pieces if re.search(r"[^\W\d_]{2}", piece))[:_LONGEST_TITLE].strip()
    return title[:1].upper() + title[1:] if title else None
