"""What runners ask and tell: a pace, a rest, a treadmill, a best: `5k pace if i run 20:10`, `5k pb 21:40`."""

import re
from typing import Final, NamedTuple

from core.notation.text import plain

_OF_PACE: Final = re.compile(r"\bpace\b|\bper (?:k|km|mile)\b|\bmin ?/ ?km\b|/ ?km\b|\bhow fast\b")
_ASKS: Final = re.compile(r"\?|\b(?:what|whats|what's|which|how|calculate|tell me)\b|^\W*pace (?:for|of)\b")
_BEST: Final = re.compile(r"\b(?:pb|pr|best|fastest|personal record)\b")
_DISTANCE: Final = re.compile(
    r"(?<![0-9.:])(?P<n>[0-9]{1,5}(?:[.,][0-9]{1,2})?)\s?(?P<unit>k|km|kms|m|mi|miles?|metres?|meters?)\b"
    r"|\b(?P<named>half marathon|half|marathon)\b"
)
_CLOCK: Final = re.compile(r"(?<![0-9:])(?:(?P<h>[0-9]):)?(?P<m>[0-9]{1,3}):(?P<s>[0-5][0-9])(?![0-9:])")
_MINUTES: Final = re.compile(r"(?<![0-9.:])(?P<m>[0-9]{1,3})\s?(?:min|mins|minutes)\b(?!\s?/)")
_TREADMILL: Final = re.compile(
    r"\b(?:on|use|using|onto) (?:a |an |the |my |our |that )?(?:\w+ )?(?:tread ?mill|running machine)\b"
)
# `14.32`, as some write a time.
_DOTTED: Final = re.compile(
    r"(?<![0-9.:])(?P<m>[0-9]{1,3})\.(?P<s>[0-5][0-9])(?![0-9.:]|\s?(?:k|km|kms|mi|miles?)\b)"
)
_RAN: Final = re.compile(r"\b(?:ran|jogged|went for)\b")
_ROWED: Final = re.compile(r"\b(?:row|rowed|erg|erged)\b")
_EASY: Final = re.compile(
    r"\b(?:easy|easily|slow|slowly|jog|jogged|jogging|recovery|gentle|relaxed|walk|walked)\b"
)
_WORDS_OF_A_RUN: Final = 12
_MY_TIME: Final = re.compile(
    r"\b(?:what'?s?|what is|what would|what about|how about)\b.{0,12}\b(?:my|a|be my)\b"
    r"|\bhow (?:fast|long) (?:can|could|would|will|should) i\b|\bpredict\b|\b(?:time|pace) for (?:a|my)\b"
)
_NAMED: Final = {"half marathon": 21097.5, "half": 21097.5, "marathon": 42195.0}
_METRES: Final = {
    "k": 1000.0,
    "km": 1000.0,
    "kms": 1000.0,
    "mi": 1609.344,
    "mile": 1609.344,
    "miles": 1609.344,
}

_RESTS: Final = re.compile(
    r"\b(?:do|should|must|can|may|when do) (?:i|we|you) (?:have to |need to |get to )?rest (?:in )?between\b"
    r"|\bhow (?:long|much) (?:do|should|can|may)? ?(?:i|we|is the)? ?rest\b"
    r"|\b(?:what(?:'?s| is) the|is there an?y?) rest\b"
    r"|\brest (?:in )?between (?:\w+ )?(?:sets|rounds|reps)?\W*\?"
)


class FarAndLong(NamedTuple):
    """So far, in metres, in so many seconds."""

    metres: float
    seconds: int


class ToldRun(NamedTuple):
    """`movement`: run or row; `easy`: it shows nothing of what they can do."""

    movement: str
    run: FarAndLong
    easy: bool


def asked_pace(text: str) -> FarAndLong | None:
    """None where no pace is asked for, or a distance and its time aren't both told, each once."""
    words = plain(text).replace("\u2019", "'").casefold()
    return _far_and_long(words) if _OF_PACE.search(words) and _ASKS.search(words) else None


def told_best(text: str) -> FarAndLong | None:
    """`5k pb 21:40`: what somebody ran at their best; None where it isn't called that."""
    words = plain(text).replace("\u2019", "'").casefold()
    return _far_and_long(words) if _BEST.search(words) and not _ASKS.search(words) else None


def asked_time(text: str) -> float | None:
    """`Whats my 10k then`: of how far a time is asked for, in metres; None where one is told."""
    words = plain(text).replace("\u2019", "'").casefold()
    found = list(_DISTANCE.finditer(words))
    told = any(one.search(words) for one in (_CLOCK, _MINUTES))
    return _metres(found[0]) if len(found) == 1 and _MY_TIME.search(words) and not told else None


def told_run(text: str) -> ToldRun | None:
    """`Ran 5k in 23:40 easy`, `2k row 7:40`, and nothing else; None where more than that and its time is told."""
    words = plain(text).replace("\u2019", "'").casefold()
    movement = "run" if _RAN.search(words) else "row" if _ROWED.search(words) else None
    if movement is None or len(words.split()) > _WORDS_OF_A_RUN or "+" in words or _ASKS.search(words):
        return None
    found = _far_and_long(words)
    return found and ToldRun(movement, found, easy=bool(_EASY.search(words)))


def asks_for_rest(text: str) -> bool:
    """How long one rests between the rounds or sets of today, or whether at all."""
    return bool(_RESTS.search(plain(text).replace("\u2019", "'").casefold()))


def names_treadmill(text: str) -> bool:
    """Whether the run is to be, or is, on one; not where it is told what was run, or what there is."""
    words = plain(text).casefold()
    return bool(_TREADMILL.search(words)) and not any(one.isdigit() for one in words)


def _far_and_long(words: str) -> FarAndLong | None:
    distances = list(_DISTANCE.finditer(words))
    times = next((found for one in (_CLOCK, _MINUTES, _DOTTED) if (found := [*one.finditer(words)])), [])
    if len(distances) != 1 or len(times) != 1:
        return None
    metres, told = _metres(distances[0]), times[0].groupdict()
    seconds = int(told.get("h") or 0) * 3600 + int(told["m"]) * 60 + int(told.get("s") or 0)
    return FarAndLong(metres, seconds) if metres > 0 and seconds > 0 else None


def _metres(found: re.Match[str]) -> float:
    if found["named"]:
        return _NAMED[found["named"]]
    return float(found["n"].replace(",", ".")) * _METRES.get(found["unit"], 1.0)
