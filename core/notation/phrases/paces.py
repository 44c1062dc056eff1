"""How fast a machine, the water or the road is taken: stroke rates, splits and paces, heart rates, zones.

They are kept in the coach's words beside what is done, and are never a rest, a load or a time to work.
Rates of 16-36 strokes a minute and zones called UT2 and UT1 are how rowers say it (common practice, no source).
"""

import re
from collections.abc import Iterable, Iterator
from typing import Final

from core.notation.quantities import DURATION, seconds
from core.notation.text import Row, Strip, replaced

# `last 2 km at race pace` is said of the way that is told before, not of all of it.
OF_A_PART: Final = re.compile(r"\W*(?:the )?(?:last|first|final|middle)\s[0-9]")
_RATE: Final = r"(?:1[6-9]|2[0-9]|3[0-6])"
_RATES: Final = rf"{_RATE}(?:\s?(?:-|to|/)\s?{_RATE}){{0,4}}"
_CLOCK: Final = r"[0-9]{1,2}:[0-5][0-9](?:\.[0-9])?"
_CLOCKS: Final = rf"{_CLOCK}(?:\s?-\s?{_CLOCK})?"
_AT: Final = r"(?:@\s?|\b(?:at|in|on)\s)"
_OVER: Final = (
    r"\s?(?:/|\bper\b|\ba\b|min\s?/)\s?(?:500\s?m?|k(?:m|ilomet(?:re|er))?|mile|100\s?m?|lap)\b|\s?split\b"
)
# What runners could keep up for so long or so far (common practice, no source); `tempo 3110` is a lift's.
_ON_FOOT: Final = (
    r"\b(?:(?:your|the)\s)?(?:(?:lactate )?threshold\b"
    r"|(?:(?<=min\s)|(?<=mins\s)|(?<=utes\s)|(?<=['@]\s)|(?<=[0-9]m\s)|(?<=[0-9]\sm\s)|(?<=[0-9]k\s)|(?<=km\s)"
    r"|(?<=@)|(?<=at\s))tempo\b(?!\s?:?\s?[0-9])|^tempo$"
    r"|(?:tempo|(?:half[\s-]?)?marathon|race|mile|[0-9]{1,2}(?:\.[0-9])?\s?k(?:m)?)(?=[\s-]?(?:pace|effort)\b))"
    r"(?:[\s-]?(?:pace|effort)\b(?:\s(?:minus|plus|less)\s[0-9]{1,2}(?:\s?s(?:ec(?:ond)?s?)?\b)?)?)?"
)
_PACES: Final = re.compile(
    rf"(?:\b(?:first|second|third|fourth|last|next)\s(?:one\s)?)?{_AT}?\b(?:s(?:troke)?[\s/\-]?rate|rate|s/?r)\s?[:=]?\s?(?:of\s)?{_RATES}(?![0-9:%])(?:\s?spm\b)?(?:\s?\({_CLOCKS}\))?"
    rf"|{_AT}?(?<![0-9.\-]){_RATES}\s?(?:spm|strokes?\s?(?:/|per|a)\s?min(?:ute)?)\b"
    r"|\b(?:cadence|rpm)\s?:?\s?[0-9]{2,3}(?:\s?-\s?[0-9]{2,3})?(?:\s?rpm)?\b|\b[0-9]{2,3}\s?rpm\b"
    r"|\b(?:stroke[\s\-])?rate free\b|\bfree rate\b"
    rf"|{_AT}?(?<![0-9:]){_CLOCKS}(?:{_OVER})(?:\s?(?:pace|split)\b)?"
    rf"|@\s?{_CLOCK}(?![0-9:])(?:\s?pace\b)?|@\s?(?:{DURATION})(?![0-9:])"
    r"|\b(?:hr|heart rate|pulse)\s?(?:(?:under|below|at|around|max|up to|<)\s?)?[12][0-9]{2}(?:\s?-\s?[12][0-9]{2})?"
    r"(?:\s?bpm)?\b"
    rf"|{_AT}?[0-9]{{2,3}}(?:\s?-\s?[0-9]{{2,3}})?\s?%\s?(?:of\s)?(?:your\s)?"
    r"(?:hr\s?max|max(?:imum)?\s(?:hr|heart rate)|mhr|ftp|vo2\s?max)\b"
    rf"|{_AT}?\but\s?-?[12]\b(?:\s?(?:-|/|to)\s?(?:ut)?[12]\b)?"
    rf"|{_AT}?{_ON_FOOT}"
)
# `r24`; a rest is told in steps of five seconds.
_SHORT: Final = re.compile(
    rf"(?<![\w&+/])(?<![&+/]\s)r\s?(?=(?P<n>{_RATE})(?:\s?[\-/]\s?{_RATE}){{0,4}}\b(?!\s?(?:m|k|cal|reps?|x|s|sec|min)\b|[.:/%][0-9]))",
    re.IGNORECASE,
)
_STEP_S: Final = 5
_IN_SHORT: Final = re.compile(rf"\br\s?{_RATES}\b", re.IGNORECASE)
_ROWED: Final = re.compile(
    r"\b(?:row(?:ing|er)?|erg(?:o|s|ometer)?|ski|ut\s?-?[12]|spm|stroke rate|paddl\w+)\b|/\s?500\b",
    re.IGNORECASE,
)
_ON_WATER: Final = re.compile(
    rf"\b(?:erg(?:o|s|ometer)?|ut\s?-?[12]|spm|stroke rate|paddl\w+)\b|/\s?500\b|\brate\s{_RATE}\b",
    re.IGNORECASE,
)
_COUNTED_SETS: Final = re.compile(
    r"[0-9]\s?x\s?[0-9]{1,2}(?!\s?(?:m|k|km|min|'|\"|s|sec|[0-9:]))", re.IGNORECASE
)
# What is done once has no rest.
_FAR: Final = re.compile(
    r"(?<![\w.])(?:[0-9]{3,5}\s?m\b|[1-9][0-9]?(?:\.[0-9])?\s?k(?:m)?\b|[0-9]{1,3}\s?(?:min|'(?!')))",
    re.IGNORECASE,
)
_OFTEN: Final = re.compile(r"[0-9]\s?x|\bx\s?[0-9]|\b(?:sets?|rounds?|rds|times|every)\b", re.IGNORECASE)
_STEADY: Final = r"(?:(?:very |nice and )?(?:easy|light|slow|gentle|steady|relaxed|recovery)(?:ly)?)"
_MOVING: Final = r"(?:(?:row|jog|walk|paddl|swim|spin|pedal|rid|ski|float)(?:e|ing|le|ling)?)"
# What is done easily while one rests: `2 min jog between`, `200 m walk recovery`.
RESTING: Final = re.compile(
    rf"(?<![0-9.:\-])(?:(?P<time>{DURATION})|[0-9]{{2,4}}(?:\s?m(?:et(?:re|er)s?)?)?)\s(?:of\s)?"
    rf"(?:{_STEADY}\s?{_MOVING}?|{_MOVING}(?:\s{_STEADY})?)"
    r"\s(?:in\s)?(?:between|btw|rec(?:ov(?:ery|eries)?)?|back)\b(?:\s(?:each|every|the|all|reps?|sets?|rounds?|efforts?|pieces)\b)*"
    rf"|\b(?:rest|recover(?:y)?)\s?:?\s?(?P<behind>{DURATION})\s(?:{_STEADY}\s)?{_MOVING}\b"
    rf"|(?<!w)/\s?(?:(?P<slash>{DURATION})|[0-9]{{2,4}}\s?m)\s(?:{_STEADY}\s)?(?:jog|walk|paddl|float)(?:e|ing|ling)?\b"
    rf"|\bw(?:/|ith)?\s?(?:(?P<beside>{DURATION})|[0-9]{{2,4}}(?:\s?m)?)\s(?:{_STEADY}|{_MOVING})\b(?!\s(?:between|btw|rec|back))"
    rf"|\bbetween\s(?:(?:each|every|the|one|set|run|round|them|you)\s){{0,3}}{_MOVING}\s(?:for\s)?(?P<after>{DURATION})"
)
# The whole of what is done so: `90s jog`, `w/ 400 jog`, `200 m easy jog rec`.
_BETWEEN: Final = re.compile(
    rf"(?:w(?:/|ith)?\s?)?(?:(?P<time>{DURATION})|[0-9]{{2,4}}(?:\s?m)?)\s(?:of\s)?(?:{_STEADY}\s)?{_MOVING}"
    r"(?:\s(?:in\s)?(?:between|btw|rec(?:ov(?:ery|eries)?)?|back)\b[a-z ]*)?",
    re.IGNORECASE,
)
_REST_TOLD: Final = ("time", "behind", "after", "slash", "beside")
WHILE_RESTING: Final = re.compile(
    rf"{RESTING.pattern}|\b(?:walk|jog|stroll)(?:ing)?(?: (?:slowly|easy|easily))?"
    r"(?: back\b| down\b| to (?:the )?(?:start|recover|rest)\b| (?:in )?between\b)"
)


def is_on_water(text: str) -> bool:
    """Whether a board speaks of strokes, splits or zones as only rowers do."""
    return _ON_WATER.search(text) is not None


def with_rates(rows: Iterable[Row]) -> tuple[Row, ...]:
    """The rows with `r24` told as a rate where it can be no rest: what is rowed, or no step of a clock."""
    told = tuple(rows)
    rowed = any(_ROWED.search(row.text) for row in told)
    return tuple(_with_rates(row, rowed=rowed) for row in told)


def _with_rates(row: Row, *, rowed: bool) -> Row:
    rowed = rowed and not _COUNTED_SETS.search(row.text)
    once = _FAR.search(row.text) is not None and not _OFTEN.search(row.text)

    def said(match: re.Match[str]) -> str:
        no_rest = int(match["n"]) % _STEP_S or row.text[: match.start()].rstrip().endswith("@")
        return "rate " if no_rest or rowed or once else match[0]

    return replaced(row, _SHORT, said)


def take_paces(strip: Strip, row: Row, mark: str) -> Iterator[tuple[int, str]]:
    """Each pace in the coach's own words, with its place, which is filled with `mark`."""
    for match in list(_PACES.finditer(strip.text)):
        start, end = match.span()
        strip.text = strip.text[:start] + mark * (end - start) + strip.text[end:]
        yield (
            start,
            _IN_SHORT.sub(
                lambda short: f"rate {short[0][1:].strip()}", row.own_words(start, end).lstrip("@ ")
            ),
        )


def rest_of(words: str) -> float | None:
    """Seconds of what is done easily while one rests; None where only its distance is told."""
    match = RESTING.search(words.lower())
    told = match and next((match[name] for name in _REST_TOLD if match[name]), None)
    return seconds(told) if told else None


def gone_between(words: str) -> tuple[bool, float | None]:
    """Whether words only tell what is gone at ease between the rounds, and for how many seconds, if told."""
    match = _BETWEEN.fullmatch(words.strip())
    return match is not None, seconds(match["time"]) if match and match["time"] else None


def is_paced(words: str) -> bool:
    """Whether a note tells a pace."""
    return (_PACES.search(words) or _IN_SHORT.search(words)) is not None
