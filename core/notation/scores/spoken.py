"""Numbers as words become digits: `eight forty-three`, `a minute and a half`, `half a dozen`, `thirthy`."""

import re
from collections.abc import Callable
from typing import Final

from core.notation.quantities import NUMBER_WORDS

_ONES: Final = "one|two|three|four|five|six|seven|eight|nine"
_TENS: Final = "twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety"
_WORTH: Final = {"zero": 0, **NUMBER_WORDS, "seventy": 70, "eighty": 80, "ninety": 90}
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
# How numbers are misspelt (from memory, no source); what is a word of its own, like `thirsty`, isn't among them.
_MISSPELT: Final = {
    "twelf": "twelve", "twelv": "twelve", "thirten": "thirteen", "threeteen": "thirteen", "forteen": "fourteen",
    "fiveteen": "fifteen", "fiften": "fifteen", "sixten": "sixteen", "seventen": "seventeen", "eightteen": "eighteen",
    "eigthteen": "eighteen", "nineten": "nineteen", "twentie": "twenty", "twety": "twenty", "thirthy": "thirty",
    "tirty": "thirty", "thrity": "thirty", "fourty": "forty", "fivty": "fifty", "fity": "fifty", "sixthy": "sixty",
    "eigthy": "eighty", "eightty": "eighty", "ninty": "ninety", "ninthy": "ninety", "eigth": "eight",
    "hunderd": "hundred",
}  # fmt: skip
_SLIPPED: Final = re.compile(rf"\b(?:{'|'.join(_MISSPELT)})\b")
_QUARTERS: Final = {
    "a quarter": ".25",
    "one quarter": ".25",
    "1 quarter": ".25",
    "3 quarters": ".75",
    "three quarters": ".75",
}
_FAR: Final = r"(?:miles?|km|kilomet(?:er|re)s?|laps?|lengths?)"
_SPOKEN: Final[tuple[tuple[re.Pattern[str], Callable[[re.Match[str]], str]], ...]] = (
    (re.compile(rf"\b({_TENS})[\s-]({_ONES})\b"), lambda one: str(_WORTH[one[1]] + _WORTH[one[2]])),
    (re.compile(rf"\bone\b(?=\s?(?:{_COUNTED})\b)|(?<=\+\s)one\b|(?<=(?:plus|inus) )one\b"
                rf"|(?<=\band )one\b(?=\W*$)"), lambda _: "1"),
    (re.compile(rf"(?:(?<=my )|(?<=the )|(?<=in ))({'|'.join(_NTH)})\b"
                r"(?=\s(?:rounds?|rds?|min|set|interval|one|when)|[,.]|$)"),
     lambda one: f"{_NTH.index(one[1]) + 3}th"),
    (re.compile(r"\bhalf (?:a )?dozen\b"), lambda _: "6"),
    (re.compile(rf"\b(?:{_SAID})\b"), lambda one: str(_WORTH[one[0]])),
    (re.compile(r"\bone\s(?=[0-9]{2}\b)"), lambda _: "1 "),
    (re.compile(r"(?<![0-9])\b(?:(?:(?P<n>[1-9])|a|one)\s)?hund(?:red|y)\b(?:\s(?:and\s)?(?P<k>[0-9]{1,2})\b(?!:))?"),
     lambda one: str(int(one["n"] or 1) * 100 + int(one["k"] or 0))),
    (re.compile(r"(?<![0-9.])\b(?:([1-9]|a|one) )?thousand\b(?: (?:and )?([0-9]{1,3})\b(?!:))?"),
     lambda one: str(int(one[1] if (one[1] or "a").isdigit() else 1) * 1000 + int(one[2] or 0))),
    (re.compile(r"\b([0-9]{1,3}) (?:comma|point) ([0-9])\b"), lambda one: f"{one[1]}.{one[2]}"),
    (re.compile(r"\b([0-9]{1,2}) and ([0-9]) tenths\b"), lambda one: f"{one[1]}.{one[2]}"),
    (re.compile(rf"\b([0-9]{{1,2}}) and ({'|'.join(_QUARTERS)}) (?={_FAR})"),
     lambda one: f"{one[1]}{_QUARTERS[one[2]]} "),
    (re.compile(rf"\b(an?|one|[0-9]{{1,2}}) ({_FAR}) and ({'|'.join(_QUARTERS)})\b"),
     lambda one: f"{one[1] if one[1].isdigit() else 1}{_QUARTERS[one[3]]} {one[2]}"),
    (re.compile(r"\bhalf (?:a )?(?=mile\b)"), lambda _: "0.5 "),
    (re.compile(r"\b(?:(?:an?|1|one)\s)?minute and a half\b"), lambda _: "1.5 minutes"),
    (re.compile(r"\b(?:(?:an?|1|one)\s)?minute and (?:a|one) quarter\b"), lambda _: "1 min 15 s"),
    (re.compile(r"\b(?:(?:an?|1|one)\s)?minute and (?:three|3) quarters\b"), lambda _: "1 min 45 s"),
    (re.compile(r"^\W*minute (?=[1-5][0-9]\b)"), lambda _: "1 minute "),
    (re.compile(r"\bhalf an hour\b"), lambda _: "30 minutes"),
    (re.compile(r"\b(?:an?|one)\s(?=(?:minute|min|hour|mile|round)\b)"), lambda _: "1 "),
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


_SIDES: Final = tuple(
    (
        re.compile(
            rf"\b{one}([\s:=-]+[0-9:.]+(?:\s?(?:s|secs?|reps?)\b)?[\s,;/&.]+(?:and )?){other}(?=[\s:=-]+[0-9])"
        ),
        told,
    )
    for one, other, told in (("l", "r", r"left\1right"), ("r", "l", r"right\1left"))
)


def in_digits(words: str) -> str:
    """Number words as digits: `eight forty-three`, `one hundred and ten`, `9 and a half minutes`."""
    words = _SLIPPED.sub(lambda one: _MISSPELT[one[0]], words)
    for pattern, told in _SIDES:
        words = pattern.sub(told, words)
    for pattern, said in _SPOKEN:
        words = pattern.sub(said, words)
    return words
