"""What is done on one side after the other: `L 24 R 21`, `left 1:05, right 0:52`. Both together are the score."""

import re
from collections.abc import Iterator
from typing import Final

from core.notation.scores.each import score_of
from core.notation.scores.said import Told
from core.scores.values import ReadScore
from core.scores.ways import TELLINGS, Way, way_of
from core.sessions.values import Block

_OF: Final = r"(?:\s(?:side|arm|leg|hand|foot|one))?"
_LEFT, _RIGHT = rf"\b(?:l|left){_OF}", rf"\b(?:r|right){_OF}"
_WAS: Final = r"\s?(?:was|is|got|did|had|:|=|-)?\s?"
_ON: Final = r"\s?(?:reps?|s|secs?|seconds?)?\s?(?:(?:on|with|for) )?(?:(?:the|my) )?"
_APART: Final = r"(?:\s?(?:reps?|s|secs?|seconds?)\b)?[\s,;./&+-]*(?:and |then )?"
_VALUE: Final = r"(?<![0-9:.])(?:[0-9]{1,2}[:.][0-5][0-9]|[0-9]{1,3})(?![0-9:]|\.[0-9])"


def _told(first: str, second: str) -> tuple[re.Pattern[str], re.Pattern[str]]:
    """Each side named in front of its number, and behind it."""
    return (
        re.compile(rf"{first}{_WAS}(?P<a>{_VALUE}){_APART}{second}{_WAS}(?P<b>{_VALUE})"),
        re.compile(rf"(?P<a>{_VALUE}){_ON}{first}{_APART}(?P<b>{_VALUE}){_ON}{second}\b"),
    )


_LEFT_FIRST, _RIGHT_FIRST = _told(_LEFT, _RIGHT), _told(_RIGHT, _LEFT)
_IN_SIDES: Final = frozenset({Way.HOLD, Way.REPS, Way.SETS_OF_REPS})


def read_sides(said: Told, block: Block) -> ReadScore | None:
    """None unless both sides are told; the last time that they are, counts. Kept in their order, left and right."""
    way = way_of(block)
    if way not in _IN_SIDES or (block.rounds or 1) > 1:
        return None
    found = max(_pairs(said.words), default=None)
    if found is None:
        return None
    return ReadScore(score=score_of([_value(one) for one in found[1:]], TELLINGS[way].unit, block), sure=True)


def _pairs(words: str) -> Iterator[tuple[int, str, str]]:
    """Where each pair stands, and what left and right had."""
    for patterns, turned in ((_LEFT_FIRST, False), (_RIGHT_FIRST, True)):
        for match in (one for pattern in patterns for one in pattern.finditer(words)):
            left, right = (match["b"], match["a"]) if turned else (match["a"], match["b"])
            yield match.start(), left, right


def _value(told: str) -> float:
    """`1:05` and `1.05` are minutes and seconds."""
    minutes, _, seconds = told.replace(".", ":").rpartition(":")
    return int(minutes or 0) * 60.0 + int(seconds)
