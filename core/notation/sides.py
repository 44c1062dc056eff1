"""On which side something hurts, in words: `my left wrist`, `both knees`, `wrist, the right one`."""

import re
from functools import cache

from core.athletes.limits import limits
from core.athletes.values import Side
from core.notation.text import plain

_ONE: re.Pattern[str] = re.compile(r"\b(?P<side>left|right|both) (?:one|ones|side|sides)\b")
_SIDES: dict[str, Side] = {"left": "left", "right": "right", "both": "both"}


def read_side(text: str) -> Side | None:
    """The side of the one joint that is named; None where there is none, or more than one."""
    words = " ".join(plain(line) for line in text[:1000].splitlines()).casefold()
    found = {match["side"] for pattern in (_before_a_joint(), _ONE) for match in pattern.finditer(words)}
    if {"left", "right"} <= found:
        return "both"
    return _SIDES[found.pop()] if len(found) == 1 else None


@cache
def _before_a_joint() -> re.Pattern[str]:
    """`left wrist`, `right lower back`; `right now` is no side."""
    names = [re.escape(name) for one in limits() if one.kind == "joint" for name in one.names]
    longest_first = "|".join(sorted(names, key=len, reverse=True))
    return re.compile(rf"\b(?P<side>left|right|both) (?:\w+ )?(?:{longest_first})s?\b")
