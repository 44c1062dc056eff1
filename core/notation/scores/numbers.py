"""Every number of a score in an athlete's words, with what it counts: `8:43`, `7 rounds`, `2 x 8 kg`, `4 of 5`.

The shapes are a table (`wording.toml`); here is what each is worth, and number words become digits.
"""

import re
from collections.abc import Callable, Iterator
from typing import Final, NamedTuple

from core.notation.quantities import NUMBER_WORDS, metres
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
    """Every number, from the left; `words` in lower case, with digits for number words (`in_digits`)."""
    strip = Strip(words)
    return tuple(sorted(_found(strip), key=lambda one: one.start))


def _found(strip: Strip) -> Iterator[Number]:
    for kind, pattern, worth in SHAPES:
        while match := strip.take(pattern):
            value, second = _WORTHS[worth](match)
            told = match.groupdict()
            yield Number(kind, value, match.start(), match.end(), match[0], second, told.get("u") or "")


_ONES: Final = "one|two|three|four|five|six|seven|eight|nine"
_TENS: Final = "twenty|thirty|forty|fourty|fifty|sixty|seventy|eighty|ninety"
_WORTH: Final = {"zero": 0, **NUMBER_WORDS, "fourty": 40, "seventy": 70, "eighty": 80, "ninety": 90}
_SAID: Final = "|".join(
    word for word in _WORTH if " " not in word and word not in {"once", "twice", "both", "couple", "hundred", "one"}
)  # fmt: skip
_COUNTED: Final = (
    r"rounds?|rds?|reps?|sets?|min\w*|sec\w*|hours?|miles?|kilo|kg|lb|short|left|more|extra|and|plus|full|complete"
    r"|of (?:the )?[0-9]"
)
# From the third on.
_NTH: Final = (
    "third",
    "fourth",
    "fifth",
    "sixth",
    "seventh",
    "eighth",
    "ninth",
    "tenth",
    "eleventh",
    "twelfth",
)
_SPOKEN: Final[tuple[tuple[re.Pattern[str], Callable[[re.Match[str]], str]], ...]] = (
    (re.compile(rf"\b({_TENS})[\s-]({_ONES})\b"), lambda one: str(_WORTH[one[1]] + _WORTH[one[2]])),
    (re.compile(rf"\bone\b(?=\s?(?:{_COUNTED})\b)|(?<=\+\s)one\b|(?<=(?:plus|inus) )one\b"
                rf"|(?<=\band )one\b(?=\W*$)"), lambda _: "1"),
    (re.compile(rf"(?:(?<=my )|(?<=the )|(?<=in ))({'|'.join(_NTH)})\b"
                r"(?=\s(?:rounds?|rds?|min|set|interval|one|when)|[,.]|$)"),
     lambda one: f"{_NTH.index(one[1]) + 3}th"),
    (re.compile(rf"\b(?:{_SAID})\b"), lambda one: str(_WORTH[one[0]])),
    (re.compile(r"\bone\s(?=[0-9]{2}\b)"), lambda _: "1 "),
    (re.compile(r"(?<![0-9])\b(?:(?:(?P<n>[1-9])|a|one)\s)?hund(?:red|y)\b(?:\s(?:and\s)?(?P<k>[0-9]{1,2})\b(?!:))?"),
     lambda one: str(int(one["n"] or 1) * 100 + int(one["k"] or 0))),
    (re.compile(r"\b(?:(?:an?|1|one)\s)?minute and a half\b"), lambda _: "1.5 minutes"),
    (re.compile(r"\b(?:(?:an?|1|one)\s)?minute and (?:a|one) quarter\b"), lambda _: "1 min 15 s"),
    (re.compile(r"\b(?:(?:an?|1|one)\s)?minute and (?:three|3) quarters\b"), lambda _: "1 min 45 s"),
    (re.compile(r"^\W*minute (?=[1-5][0-9]\b)"), lambda _: "1 minute "),
    (re.compile(r"\bhalf an hour\b"), lambda _: "30 minutes"),
    (re.compile(r"\b(?:an?|one)\s(?=(?:minute|min|hour|mile|round)\b)"), lambda _: "1 "),
    (re.compile(r"\b([0-9]+) point ([0-9])\b"), lambda one: f"{one[1]}.{one[2]}"),
    (re.compile(r"\b([0-9]+) and a quarter\s(?=min)"), lambda one: f"{one[1]} min 15 s, "),
    (re.compile(r"\b([0-9]+) and three quarters\s(?=min)"), lambda one: f"{one[1]} min 45 s, "),
    (re.compile(r"\b([0-9]+) (?:and )?(?:a half|1/2)\b"), lambda one: f"{one[1]}.5"),
    (re.compile(r"\b([0-9]+) (rounds?|rds?|min(?:ute)?s?|hours?|miles?|km|k) (?:and )?(?:a )?half\b"),
     lambda one: f"{one[1]}.5 {one[2]}"),
    (re.compile(r"\bhalf (?:a|an)\s(?=minute)"), lambda _: "0.5 "),
)  # fmt: skip
_MARKS: Final = str.maketrans({"\N{THUMBS DOWN SIGN}": " failed ", "\N{WHITE HEAVY CHECK MARK}": " done "})


_BETWEEN_CLOCKS: Final = re.compile(r"(?<=:[0-9]{2}),(?=[0-9]{1,2}:[0-9])")
# Slips of the finger inside a number: `1o4`, `28;40`.
_O_FOR_ZERO: Final = re.compile(r"(?<=[0-9])[oO](?=[0-9])|(?<=[0-9]:)[oO](?=[0-9])")
_SEMICOLON: Final = re.compile(r"(?<=[0-9]);(?=[0-5][0-9](?![0-9]))")


def with_signs_told(text: str) -> str:
    """A thumb or a tick says something of the number beside it; a comma between two times parts them.

    Slips of the finger inside a number are put right.
    """
    typed = _SEMICOLON.sub(":", _O_FOR_ZERO.sub("0", text.translate(_MARKS)))
    return _BETWEEN_CLOCKS.sub(", ", typed)


def in_digits(words: str) -> str:
    """Number words as digits: `eight forty-three`, `one hundred and ten`, `9 and a half minutes`."""
    for pattern, said in _SPOKEN:
        words = pattern.sub(said, words)
    return words
