"""Every number of a score in an athlete's words, with what it counts: `8:43`, `7 rounds`, `2 x 8 kg`, `4 of 5`.

The shapes are a table (`wording.toml`); here is what each is worth.
"""

import re
from collections.abc import Callable, Iterator
from typing import Final, NamedTuple

from core.notation.quantities import metres
from core.notation.scores.wording import SHAPES
from core.notation.text import Strip

_MINUTE_S, _HOUR_S = 60.0, 3600.0


class Number(NamedTuple):
    """`value` in what the kind counts: seconds, metres, or just so many. `second`: of two that belong together."""

    kind: str
    value: float
    start: int
    end: int
    text: str
    second: float | None = None
    unit: str = ""

    @property
    def whole(self) -> int:
        return int(self.value)


_Worth = Callable[[re.Match[str]], tuple[float, float | None]]


def _plain(match: re.Match[str]) -> tuple[float, float | None]:
    told = match.groupdict()
    return float(told["n"] or 0), float(told["k"]) if told.get("k") else None


def _clock(match: re.Match[str]) -> tuple[float, float | None]:
    """Seconds; `second` is set where it is a slip: minutes or seconds of sixty and more."""
    told = match.groupdict()
    hours, minutes = float(told.get("h") or 0), float(told.get("m") or 0)
    seconds = float((told.get("s") or "0").replace(",", "."))
    slips = seconds >= _MINUTE_S or (hours > 0 and minutes >= _MINUTE_S)
    return hours * _HOUR_S + minutes * _MINUTE_S + seconds, 1.0 if slips else None


def _minutes(match: re.Match[str]) -> tuple[float, float | None]:
    """`18.30 min` are 18:30; `11.5 min` eleven and a half."""
    whole, _, part = match["n"].partition(".")
    if len(part) == 2 and float(part) < _MINUTE_S:  # noqa: PLR2004 - two digits are seconds
        return float(whole) * _MINUTE_S + float(part), None
    return float(match["n"]) * _MINUTE_S, None


def _seconds(match: re.Match[str]) -> tuple[float, float | None]:
    return float(match["n"]), None


def _far(match: re.Match[str]) -> tuple[float, float | None]:
    return metres(match["n"].replace(" ", ""), match["u"]), None


def _thousands(match: re.Match[str]) -> tuple[float, float | None]:
    """`2.140 m` on the continent: nobody rows two metres."""
    return float(match["n"].replace(".", "")), None


def _kilometres_and_more(match: re.Match[str]) -> tuple[float, float | None]:
    """`7k4` is seven and four tenths."""
    return float(f"{match['n']}.{match['k']}") * 1000, None


def _hours(match: re.Match[str]) -> tuple[float, float | None]:
    return float(match["n"]) * _HOUR_S, None


def _nothing(_: re.Match[str]) -> tuple[float, float | None]:
    return 0.0, None


def _decimal(match: re.Match[str]) -> tuple[float, float | None]:
    """`1.52.3` is no number, but a time: its first two parts."""
    return float(".".join(match["n"].replace(",", ".").split(".")[:2])), None


_WORTHS: Final[dict[str, _Worth]] = {
    "plain": _plain,
    "clock": _clock,
    "minutes": _minutes,
    "seconds": _seconds,
    "hours": _hours,
    "far": _far,
    "thousands": _thousands,
    "kilometres_and_more": _kilometres_and_more,
    "decimal": _decimal,
    "nothing": _nothing,
}


def numbers_in(words: str) -> tuple[Number, ...]:
    """Every number, from the left; `words` in lower case, with digits for number words (`spoken.py`)."""
    strip = Strip(words)
    return tuple(sorted(_found(strip), key=lambda one: one.start))


def _found(strip: Strip) -> Iterator[Number]:
    for kind, pattern, worth in SHAPES:
        while match := strip.take(pattern):
            value, second = _WORTHS[worth](match)
            told = match.groupdict()
            yield Number(kind, value, match.start(), match.end(), match[0], second, told.get("u") or "")
