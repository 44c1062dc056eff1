"""A person's words about reminders: how early, when to be left alone, whose clock, when the digest comes."""

import re
from datetime import time

from core.notation.calendar.moments import BARE_HOUR, SPAN, TIME, Clock, clock_in, find_clock, minutes_in
from core.notation.calendar.zones import read_zone
from core.notation.text import plain
from core.values import Value

_LONGEST = 160
_LONGEST_LEAD = 7 * 24 * 60
_REMIND = re.compile(r"\bremind(?:er|ers)?\b|\bping me\b|\btell me\b", re.IGNORECASE)
_BEFORE = re.compile(r"\b(?:before|ahead|early|earlier|in advance|prior|lead)\b", re.IGNORECASE)
_QUIET = re.compile(
    r"\bquiet\b|\b(?:no|don'?t (?:send|write)(?: me)?(?: any)?|never send) (?:messages?|reminders?)\b"
    r"|\bdo not disturb\b"
    r"|\bdon'?t (?:disturb|write|message|ping) (?:me)?\b|\bleave me (?:alone|in peace)\b|\bi sleep\b",
    re.IGNORECASE,
)
_NO_QUIET = re.compile(
    r"\b(?:no|without|stop|end|delete|remove) (?:the |my )?quiet (?:hours|time)\b", re.IGNORECASE
)
_ZONE = re.compile(
    r"^\W*(?:(?:my|the)\s(?:time ?)?(?:zone|clock)\s(?:is|=)|(?:time ?)?zone:?"
    r"|i(?:'m| am)\s(?:now\s|travelling\s)?in|i(?:'ve| have)?\s(?:live|moved|move)\s(?:in|to|near)"
    r"|use|set my (?:time ?)?(?:zone|clock) to)\s(?P<place>.+?)(?:\s(?:time|now|today|this week))?\W*$",
    re.IGNORECASE,
)
_DIGEST = re.compile(
    r"\b(?:digests?|evening (?:summar(?:y|ies)|reports?|notes?|overviews?))\b", re.IGNORECASE
)
_OFF = re.compile(
    r"\b(?:no|not|off|stop|end|without|never|none|cancel|disable|mute|unsubscribe|dont)\b|n't\b",
    re.IGNORECASE,
)
_ON = re.compile(r"\b(?:on|again|back|start|resume|yes|want|like|send|please)\b", re.IGNORECASE)
_LATE, _MORNING = range(6, 12), range(3, 12)


class Lead(Value):
    """So many minutes before a class."""

    minutes: int


class QuietHours(Value):
    """From `start` to `end`; None for no quiet hours at all."""

    start: time | None
    end: time | None


class OwnZone(Value):
    """The zones that may be meant."""

    zones: tuple[str, ...]


class DigestHour(Value):
    at: time


class DigestWanted(Value):
    """Whether the evening digest is to come at all."""

    yes: bool


Wish = Lead | QuietHours | OwnZone | DigestHour | DigestWanted


def read_wish(text: str) -> Wish | None:
    """What a person wishes for their reminders; None where the text is about something else."""
    words = plain(text)
    if not words or len(words) > _LONGEST or words.endswith("?"):
        return None
    return _quiet(words) or _lead(words) or read_digest(words, named=True) or _zone(words)


def read_lead(text: str) -> int | None:
    """Minutes from `2 hours`, `an hour and a half`, `45`; None where it can't be told."""
    words = plain(text[:_LONGEST])
    match = SPAN.search(words)
    bare = re.fullmatch(r"\W*(\d{1,4})\W*", words)
    minutes = minutes_in(match) if match else int(bare[1]) if bare else None
    return minutes if minutes is not None and 0 <= minutes <= _LONGEST_LEAD else None


def read_quiet(text: str) -> QuietHours | None:
    """Hours from `22 to 7`, `10pm - 7am`, `none`; None where it can't be told."""
    words = plain(text[:_LONGEST])
    if _NO_QUIET.search(words) or re.fullmatch(r"\W*(?:none|no|off|never)\W*", words, re.IGNORECASE):
        return QuietHours(start=None, end=None)
    found = _clocks(words)
    if len(found) != 2:  # noqa: PLR2004 - from and to
        return None
    return QuietHours(start=_evening(*found), end=found[1].at)


def names_an_hour(text: str) -> bool:
    """`Remind me at 6pm`: a time of day, not how long before."""
    return bool(_clocks(plain(text[:_LONGEST])))


def _clocks(words: str) -> list[Clock]:
    """All times of day, in order."""
    spaced = re.sub(r"(?<=\d)\s?-\s?(?=\d)|(?<=[ap]m)\s?-\s?(?=\d)", " to ", words, flags=re.IGNORECASE)
    taken = [(match.start(), clock_in(match)) for match in TIME.finditer(spaced)]
    left = TIME.sub(lambda match: " " * len(match[0]), spaced)
    taken += [(match.start(), clock_in(match)) for match in BARE_HOUR.finditer(left)]
    return [clock for _, clock in sorted(taken, key=lambda one: one[0]) if clock is not None]


def _evening(start: Clock, end: Clock) -> time:
    """`10 to 7` are hours of the night: quiet hours begin in the evening where nothing else is said."""
    if start.half_known or start.at.hour not in _LATE or end.at.hour not in _MORNING:
        return start.at
    return start.at.replace(hour=start.at.hour + 12)


def _quiet(words: str) -> QuietHours | None:
    return read_quiet(words) if _QUIET.search(words) else None


def _lead(words: str) -> Lead | None:
    if not _REMIND.search(words) or not _BEFORE.search(words):
        return None
    minutes = read_lead(words)
    return None if minutes is None else Lead(minutes=minutes)


def read_digest(text: str, *, named: bool = False) -> DigestHour | DigestWanted | None:
    """An hour, or whether it is wanted, from `9`, `off`, `no more`; None where it can't be told.

    `named`: only where the text speaks of the digest.
    """
    words = plain(text[:_LONGEST])
    if named and not _DIGEST.search(words):
        return None
    if _OFF.search(words):
        return DigestWanted(yes=False)
    clock = find_clock(words)
    if clock is None:
        return DigestWanted(yes=True) if _ON.search(words) else None
    evening = not clock.half_known and 1 <= clock.at.hour < 12  # noqa: PLR2004 - noon
    return DigestHour(at=clock.at.replace(hour=clock.at.hour + 12) if evening else clock.at)


def _zone(words: str) -> OwnZone | None:
    match = _ZONE.match(words)
    zones = read_zone(match["place"]) if match else ()
    return OwnZone(zones=zones[:4]) if zones else None
