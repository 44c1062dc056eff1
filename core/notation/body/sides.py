"""On which side something hurts, in words: `my left wrist`, `both knees`, `wrist, the right one`."""

import re
from collections.abc import Iterator, Mapping
from functools import cache

from core.athletes.complaints import WITHOUT_SIDES
from core.athletes.limits import limits
from core.athletes.values import Side
from core.notation.text import plain

_ONE = r"\b(?P<side>left|right|both) (?:one|ones|side|sides)\b"
_ALONE = re.compile(
    r"^\W*(?:(?:it'?s|it is|on|the|my|only|just)\s)*(?P<side>left|right|both)(?: (?:one|ones|side|sides|of them))?\W*$"
)
_SIDES: dict[str, Side] = {"left": "left", "right": "right", "both": "both"}
_LONGEST_TEXT = 1000


def read_sides(text: str) -> Mapping[str, Side]:
    """The side of each joint that is named with one, by the joint's limit."""
    words = " ".join(plain(line) for line in text[:_LONGEST_TEXT].splitlines()).casefold()
    found: dict[str, set[str]] = {}
    for joint, side in _told(words):
        found.setdefault(joint, set()).add(side)
    named = list(dict.fromkeys(joint for joint, _ in joints_in(words)))
    if len(named) == 1:
        found.setdefault(named[0], set()).update(match["side"] for match in re.finditer(_ONE, words))
    return {
        joint: _SIDES[sides.pop()] if len(sides) == 1 else "both"
        for joint, sides in found.items()
        if sides and joint not in WITHOUT_SIDES
    }


def read_side_alone(text: str) -> Side | None:
    """`Left`, `the right one`: a side and nothing else."""
    match = _ALONE.match(plain(text[:_LONGEST_TEXT]).casefold())
    return _SIDES[match["side"]] if match else None


def names_a_side(text: str) -> bool:
    """`The left one`, `it's on the left`; a bare `right` may be a yes."""
    return len(plain(text[:_LONGEST_TEXT]).split()) > 1 and read_side_alone(text) is not None


def joints_in(words: str) -> Iterator[tuple[str, re.Match[str]]]:
    """Every joint that is named, by its limit, and where."""
    for match in _joint().finditer(words.casefold()):
        yield _limit_of()[match["joint"]], match


def _told(words: str) -> Iterator[tuple[str, str]]:
    """`left wrist`, `left and right wrist`, `wrist (left)`; `right now` is no side."""
    for joint, match in joints_in(words):
        for side in (match["side"], match["other"], match["after"], match["behind"]):
            if side:
                yield joint, side


@cache
def _joint() -> re.Pattern[str]:
    longest_first = "|".join(sorted(map(re.escape, _limit_of()), key=len, reverse=True))
    return re.compile(
        r"(?:\b(?P<side>left|right|both)(?:\s?(?:and|or|&|\+|/)\s?(?P<other>left|right))? (?:\w+ )?)?"
        rf"\b(?P<joint>{longest_first})s?\b"
        r"(?:,? (?:on the |on my |\()(?P<after>left|right)\b(?! (?:after|now|when|hand))"
        # `My shoulder right have pain`; but `my shoulder, right?`, `my knee right at the end`.
        r"| (?P<behind>left|right)\b(?!\s?\?)"
        r"(?= (?:ha[sv]e?|is|hurts?|pains?|makes?|does|do|it|sore|very|too|also|side)\b|\W*$))?"
    )


@cache
def _limit_of() -> Mapping[str, str]:
    return {name: one.id for one in limits() if one.may_hurt for name in one.names}
