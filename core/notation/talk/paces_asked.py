"""A runner asks for a pace, or tells a best: `whats 5k pace if i run 20:10`, `5k pb 21:40`."""

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
_NAMED: Final = {"half marathon": 21097.5, "half": 21097.5, "marathon": 42195.0}
_METRES: Final = {
    "k": 1000.0,
    "km": 1000.0,
    "kms": 1000.0,
    "mi": 1609.344,
    "mile": 1609.344,
    "miles": 1609.344,
}


class FarAndLong(NamedTuple):
    """So far, in metres, in so many seconds."""

    metres: float
    seconds: int


def asked_pace(text: str) -> FarAndLong | None:
    """None where no pace is asked for, or a distance and its time aren't both told, each once."""
    words = plain(text).replace("\u2019", "'").casefold()
    return _far_and_long(words) if _OF_PACE.search(words) and _ASKS.search(words) else None


def told_best(text: str) -> FarAndLong | None:
    """`5k pb 21:40`: what somebody ran at their best; None where it isn't called that."""
    words = plain(text).replace("\u2019", "'").casefold()
    return _far_and_long(words) if _BEST.search(words) and not _ASKS.search(words) else None


def _far_and_long(words: str) -> FarAndLong | None:
    distances, times = (
        list(_DISTANCE.finditer(words)),
        [*_CLOCK.finditer(words)] or [*_MINUTES.finditer(words)],
    )
    if len(distances) != 1 or len(times) != 1:
        return None
    metres, told = _metres(distances[0]), times[0].groupdict()
    seconds = int(told.get("h") or 0) * 3600 + int(told["m"]) * 60 + int(told.get("s") or 0)
    return FarAndLong(metres, seconds) if metres > 0 and seconds > 0 else None


def _metres(found: re.Match[str]) -> float:
    if found["named"]:
        return _NAMED[found["named"]]
    return float(found["n"].replace(",", ".")) * _METRES.get(found["unit"], 1.0)
