"""Numbers with what they count: `16 kg`, `8:43`, `7+12`, `half an hour`, `8/10`, `june 14th`."""

import re
from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from typing import Final

from core.measures import KG_PER_POUND
from core.understanding.lexicon import LONGEST_PHRASE, Lexicon
from core.understanding.text import Token, stem

_HUNDRED, _TEENS, _TENS = 100, 20, 10
_SPAN_S: Final = {"s": 1, "min": 60, "h": 3600, "d": 86_400, "w": 604_800, "mo": 2_592_000, "y": 31_536_000}
_METRES: Final = {"m": 1.0, "km": 1000.0, "mi": 1609.344}
_HEIGHTS: Final = {"cm": 1.0, "in": 2.54}
_STONE_LB: Final = 14
_KG_PER_LB: Final = float(KG_PER_POUND)
_KG: Final = {"kg": 1.0, "lb": _KG_PER_LB, "st": _STONE_LB * _KG_PER_LB, "g": 0.001}
_HARDEST: Final = 10
_LAST_HOUR: Final = 24
_LAST_DAY: Final = 31
# `2.140 m` on the continent: nobody rows two metres.
_THOUSANDS: Final = re.compile(r"[0-9]{1,2}[.][0-9]{3}")
_PRIMES: Final = frozenset("'\"")
_ORDINALS: Final = frozenset({"st", "nd", "rd", "th"})


@dataclass(frozen=True, slots=True)
class Quantity:
    """`value` in kg, metres, cm, seconds, or a plain number; `second`: of `n+m` and `n x m`; `low` of a range."""

    kind: str
    start: int
    end: int
    value: float
    second: float | None = None
    unit: str = ""
    low: float | None = None


@dataclass
class _Reader:
    tokens: Sequence[Token]
    words: Sequence[str]
    known: Lexicon
    found: list[Quantity] = field(default_factory=list)

    def number(self, at: int) -> tuple[float, int] | None:
        """A number in digits or words, `six and a half` too, and its end."""
        told = self.whole(at)
        if told is None or not self.is_and(told[1]):
            return told
        half = self.sense(told[1] + 1, "half_word")
        return (told[0] + 1 / 2, half[2]) if half and told[0] == int(told[0]) else told

    def whole(self, at: int) -> tuple[float, int] | None:
        if at >= len(self.tokens):
            return None
        if self.tokens[at].kind == "number":
            value = self.tokens[at].number or 0.0
            if at + 1 < len(self.tokens) and self.tokens[at + 1].typed in {"½", "¼", "¾"}:
                return value + (self.tokens[at + 1].number or 0.0), at + 2
            return value, at + 1
        return self._spoken(at)

    def _spoken(self, at: int) -> tuple[float, int] | None:
        numbers = self.known.numbers
        first = numbers.get(self.words[at])
        if first is None or self.tokens[at].kind != "word":
            return None
        value, end = first, at + 1
        if self.word(end) in numbers and numbers[self.word(end)] == _HUNDRED and value < _TENS:
            value, end = value * _HUNDRED, end + 1
            end += self.is_and(end) and self.word(end + 1) in numbers
            more = self._spoken(end) if self.word(end) in numbers else None
            return (value + more[0], more[1]) if more and more[0] < _HUNDRED else (value, end)
        ones = end + (self.sense(end, "tens_and") is not None)
        after = numbers.get(self.word(ones))
        if value >= _TEENS and value % _TENS == 0 and after is not None and 0 < after < _TENS:
            return value + after, ones + 1
        return value, end

    def word(self, at: int) -> str:
        return self.words[at] if 0 <= at < len(self.words) else ""

    def is_and(self, at: int) -> bool:
        return self.sense(at, "and_word") is not None

    def typed(self, at: int) -> str:
        return self.tokens[at].typed if 0 <= at < len(self.tokens) else ""

    def sense(self, at: int, *kinds: str) -> tuple[str, str, int] | None:
        """The longest phrase of these kinds at a token: its kind, its value and its end."""
        spelled, found = "", None
        for end in range(at + 1, min(at + LONGEST_PHRASE, len(self.words)) + 1):
            if self.tokens[end - 1].kind not in {"word", "number"}:
                break
            spelled += stem(self.words[end - 1])
            for one in self.known.senses.get(spelled, ()):
                if one.kind in kinds:
                    found = (one.kind, one.value, end)
            if spelled not in self.known.beginnings:
                break
        return found


def quantities(tokens: Sequence[Token], words: Sequence[str], known: Lexicon) -> list[Quantity]:
    """Every number of a text with its unit, from the left; spans and days of the month that need no digit too."""
    reader = _Reader(tokens, words, known)
    at = 0
    while at < len(tokens):
        found = next((one for read in _READERS if (one := read(reader, at))), None)
        if found:
            reader.found.append(found)
        at = found.end if found else at + 1
    return reader.found


def _part_of_hour(reader: _Reader, at: int) -> Quantity | None:
    found = reader.sense(at, "part_of_hour")
    return Quantity("span", at, found[2], float(found[1]) * 60, unit="min") if found else None


def _article(reader: _Reader, at: int) -> Quantity | None:
    """`a month`, `an hour`: with nothing counted. `A minute` is one where something is done for it."""
    if not reader.sense(at, "article"):
        return None
    unit = reader.sense(at + 1, "span")
    if unit is None or unit[1] == "s" or (unit[1] == "min" and not _is_done_for(reader, at, unit[2])):
        return None
    return Quantity("span", at, unit[2], float(_SPAN_S[unit[1]]), unit=unit[1])


def _is_done_for(reader: _Reader, at: int, end: int) -> bool:
    """`plank a minute`, `a minute plank`, `hold it for a minute`; not `wait a minute`."""
    before = reader.sense(at - 1, "movement", "for_word") if at else None
    return before is not None or reader.sense(end, "movement") is not None


def _clock(reader: _Reader, at: int) -> Quantity | None:
    """`8:43`, `1:02:10`: a time on a watch, or of the day."""
    token = reader.tokens[at]
    if token.kind != "clock":
        return _primed(reader, at) or _spoken_clock(reader, at)
    parts = [float(part) for part in token.typed.replace(",", ".").split(":")]
    value = parts[0] * 60 + parts[1] if len(parts) == 2 else parts[0] * 3600 + parts[1] * 60 + parts[2]  # noqa: PLR2004
    half = reader.sense(at + 1, "half_day")
    end = half[2] if half else at + 1
    if half and half[1] == "pm" and value < 12 * 60:
        value += 12 * 60
    return Quantity("clock", at, end, value, unit=half[1] if half else "")


def _primed(reader: _Reader, at: int) -> Quantity | None:
    """`8'43"`, `8'`: minutes and seconds as they stand on a stopwatch."""
    told = reader.number(at)
    if told is None or reader.tokens[at].kind != "number" or reader.word(told[1]) != "'":
        return None
    after = reader.number(told[1] + 1)
    if after is None or after[0] >= 60 or not reader.tokens[told[1] + 1].glued:  # noqa: PLR2004 - seconds
        return Quantity("span", at, told[1] + 1, told[0] * 60, unit="min")
    end = after[1]
    while reader.word(end) in _PRIMES:
        end += 1
    return Quantity("clock", at, end, told[0] * 60 + after[0])


def _hour_and_part(reader: _Reader, at: int) -> Quantity | None:
    """`ocho menos cuarto`, `las nueve y media de la tarde`: a part of an hour behind it."""
    told = reader.whole(at)
    part = reader.sense(told[1], "hour_part") if told else None
    if told is None or part is None or not 0 < told[0] <= _LAST_HOUR:
        return None
    half = reader.sense(part[2], "half_day")
    if not half and not reader.sense(at - 1, "hour_article"):
        return None
    minutes = told[0] * 60 + float(part[1])
    later = 12 * 60 if half and half[1] == "pm" and minutes < 12 * 60 else 0
    return Quantity("hour", at, half[2] if half else part[2], minutes + later, unit=half[1] if half else "")


def _spoken_clock(reader: _Reader, at: int) -> Quantity | None:
    if told_hour := _hour_and_part(reader, at):
        return told_hour
    past = reader.sense(at, "past_hour")
    if past and (told := reader.number(past[2])) and told[0] <= _LAST_HOUR:
        half = reader.sense(told[1], "half_day")
        minutes = told[0] * 60 + float(past[1])
        later = 12 * 60 if half and half[1] == "pm" and minutes < 12 * 60 else 0
        return Quantity(
            "hour", at, half[2] if half else told[1], minutes + later, unit=half[1] if half else ""
        )
    found = reader.sense(at, "clock")
    if found is None:
        return None
    hour, minute = found[1].split(":")
    return Quantity("hour", at, found[2], float(hour) * 60 + float(minute), unit="told")


def _effort(reader: _Reader, at: int) -> Quantity | None:
    """`8/10`, `7 out of 10`, `rpe 8`."""
    if reader.sense(at, "effort_word"):
        start = at + 1
        while start < at + 4 and (
            reader.sense(start, "small_word") or reader.typed(start) in {":", "=", "~"}
        ):
            start += 1
        told = reader.number(start)
        if told and 0 <= told[0] <= _HARDEST:
            ten = _of_ten(reader, told[1]) or told[1]
            return Quantity("effort", at, ten, told[0])
        return None
    told = reader.number(at)
    if told is None or told[0] > _HARDEST:
        return None
    end = _of_ten(reader, told[1])
    return Quantity("effort", at, end, told[0]) if end else None


def _of_ten(reader: _Reader, at: int) -> int | None:
    """The end of `/10`, `out of ten`."""
    of = reader.sense(at, "of_ten")
    end = at + 1 if reader.word(at) == "/" else of[2] if of else None
    ten = reader.number(end) if end is not None else None
    return ten[1] if ten and ten[0] == _HARDEST else None


def _pair(reader: _Reader, at: int) -> Quantity | None:
    """`7+12`, `2 x 10`, `2 to 24`; each with the unit behind it."""
    first = reader.number(at)
    if first is None:
        return None
    end, sign = first[1], reader.word(first[1])
    if sign == "-" or reader.sense(end, "range_word"):
        sign = "-"
    second = reader.number(end + 1) if sign in {"+", "x", "*", "-"} else None
    if second is None:
        return None
    if sign == "+":
        return Quantity("plus", at, second[1], first[0], second[0])
    if sign == "-":
        return _range(reader, at, first[0], *second)
    unit = reader.sense(second[1], "mass")
    value = second[0] * _KG[unit[1]] if unit else second[0]
    return Quantity(
        "times", at, unit[2] if unit else second[1], first[0], value, unit=unit[1] if unit else ""
    )


def _range(reader: _Reader, at: int, low: float, high: float, end: int) -> Quantity | None:
    if high < low:
        return None
    unit = reader.sense(end, "mass", "span", "unit")
    if unit is None:
        return Quantity("range", at, end, high, low=low)
    factor = _KG[unit[1]] if unit[0] == "mass" else _SPAN_S[unit[1]] if unit[0] == "span" else 1.0
    kind = {"mass": "load_range", "span": "span", "unit": unit[1]}[unit[0]]
    return Quantity(kind, at, unit[2], high * factor, unit=unit[1], low=low * factor)


def _with_unit(reader: _Reader, at: int) -> Quantity | None:
    """`16 kg`, `400 m`, `20 minutes`, `8m43`, `7 rounds`, `6 pm`."""
    told = reader.number(at)
    if told is None:
        return None
    value, unit_at = told
    unit = reader.sense(unit_at, "mass", "length", "span", "unit", "half_day", "hour_word")
    if unit is None:
        return None
    kind, name, end = unit
    if reader.word(unit_at) == "m":
        return _metres_or_minutes(reader, at, value, end)
    if kind == "unit":
        return Quantity(name, at, end, value)
    if kind in {"half_day", "hour_word"}:
        return _hour(at, value, name, end)
    read = {"mass": _mass, "length": _length, "span": _span}[kind]
    return read(reader, at, value, name, end)


def _length(_: _Reader, at: int, value: float, name: str, end: int) -> Quantity:
    if name in _HEIGHTS:
        return Quantity("height", at, end, value * _HEIGHTS[name], unit="cm")
    return Quantity("distance", at, end, value * _METRES[name], unit=name)


def _metres_or_minutes(reader: _Reader, at: int, value: float, end: int) -> Quantity:
    if _THOUSANDS.fullmatch(reader.typed(at)):
        return Quantity("distance", at, end, value * 1000, unit="m")
    after = reader.number(end)
    if after and end < len(reader.tokens) and reader.tokens[end].glued and after[0] < 60:  # noqa: PLR2004 - seconds
        return Quantity("span", at, after[1], value * 60 + after[0], unit="min", second=after[0])
    return Quantity("distance", at, end, value, unit="m")


def _mass(reader: _Reader, at: int, value: float, name: str, end: int) -> Quantity:
    kilos = value * _KG[name]
    after = end + reader.is_and(end)
    if name == "st" and (more := reader.number(after)) and more[0] < _STONE_LB:
        unit = reader.sense(more[1], "mass")
        return Quantity("load", at, unit[2] if unit else more[1], kilos + more[0] * _KG_PER_LB, unit="st")
    return Quantity("load", at, end, kilos, unit=name)


def _span(reader: _Reader, at: int, value: float, name: str, end: int) -> Quantity:
    """A length of time; `8 min 40 s`, `nine minutes forty`, `an hour and a half` go on."""
    seconds = value * _SPAN_S[name]
    step = end + (reader.is_and(end))
    half = reader.sense(step, "half_word")
    if half:
        return Quantity("span", at, half[2], seconds + _SPAN_S[name] / 2, unit=name)
    more = reader.number(step) if name in {"min", "h"} else None
    if more is None or more[0] >= 60:  # noqa: PLR2004 - seconds of a minute
        return Quantity("span", at, end, seconds, unit=name)
    unit = reader.sense(more[1], "span", "unit", "mass", "length")
    smaller = {"min": "s", "h": "min"}[name]
    if unit and (unit[0] != "span" or unit[1] != smaller):
        return Quantity("span", at, end, seconds, unit=name)
    return Quantity(
        "span",
        at,
        unit[2] if unit else more[1],
        seconds + more[0] * _SPAN_S[smaller],
        unit=name,
        second=more[0],
    )


def _hour(at: int, value: float, half: str, end: int) -> Quantity | None:
    if value > _LAST_HOUR:
        return None
    hours = int(value)
    minutes = hours * 60 + round((value - hours) * 100)
    if half == "pm" and hours < 12:  # noqa: PLR2004 - noon
        minutes += 12 * 60
    if half == "am" and hours == 12:  # noqa: PLR2004 - noon
        minutes -= 12 * 60
    return Quantity("hour", at, end, minutes, unit=half)


def _date(reader: _Reader, at: int) -> Quantity | None:
    """`june 14th`, `14 june`, `the 15th`: the day of the month, and the month where it is told."""
    month = reader.sense(at, "month")
    told = reader.number(month[2] if month else at)
    if told is None or told[0] != int(told[0]) or not 1 <= told[0] <= _LAST_DAY:
        return None
    day, end = told
    if month:
        counts = reader.sense(end, "unit", "mass", "span") is not None
        end += reader.word(end) in _ORDINALS
        return None if counts else Quantity("date", at, end, day, second=float(month[1]))
    ordinal = reader.word(end) in _ORDINALS and reader.tokens[end].glued
    end += ordinal
    counts = reader.sense(end, "unit", "mass", "span", "length", "half_day", "hour_word") is not None
    ordinal = ordinal or (reader.sense(at - 1, "date_word") is not None and not counts and at > 0)
    after = end + (reader.sense(end, "of_ten") is not None) + (reader.word(end) == ".")
    month = reader.sense(after, "month")
    if month:
        return Quantity("date", at, month[2], day, second=float(month[1]))
    return Quantity("date", at, end, day) if ordinal else None


def _alone(reader: _Reader, at: int) -> Quantity | None:
    told = reader.number(at)
    return Quantity("number", at, told[1], told[0]) if told else None


_READERS: Final[tuple[Callable[[_Reader, int], Quantity | None], ...]] = (
    _part_of_hour,
    _article,
    _clock,
    _effort,
    _date,
    _pair,
    _with_unit,
    _alone,
)
