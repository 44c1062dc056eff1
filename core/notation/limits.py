"""An athlete's own words about what to avoid -> ids of limits."""

import re
from collections.abc import Iterator
from functools import cache

from core.athletes.limits import limits
from core.notation.text import plain
from core.notation.values import ReadLimits

LONGEST = 1000
_NOTHING = re.compile(
    r"^\W*(?:none|no|nope|nothing|nil|nada|no limits?|all good|i'?m (?:fine|good|ok|okay|healthy)|fine|not? (?:really|at all|that i know(?: of)?))"
    r"(?: (?:limits?|injur(?:y|ies)|pain|problems?|issues?|at all|really|thanks?|thank you|here|that i know of|to avoid))*\W*$"
)
_PARTING = re.compile(r"[,;.\n!]+|\b(?:and|also|plus|but)\b|\s&\s|\s\+\s")
_OVER = re.compile(
    r"\b(?:fine|ok|okay|healed|better|gone|no (?:more|longer|pain|problems?)|used to|years ago|in the past|was)\b|^\W*no\b(?! \w+ing\b)"
)
_FILLER = re.compile(
    r"\b(?:my|i|i'm|am|have|a|an|the|bad|sore|hurts?|painful|pain|left|right|both|with|in|is|are|bit|little|some|issues?|problems?|injury|weak|old|of|please|avoid|from|to|had|got|on|it|stiff|trouble|suffer|when)\b"
)


def read_limits(text: str) -> ReadLimits:
    """Reads what must be avoided. Something said to be over is given back as not understood: a person decides."""
    words = plain(text[:LONGEST]).lower()
    if _NOTHING.match(words):
        return ReadLimits(limits=())
    found: dict[str, None] = {}
    unread: list[str] = []
    for part in _PARTING.split(words):
        ids, left = _read_part(part)
        found |= dict.fromkeys(ids)
        if left:
            unread.append(left)
    return ReadLimits(limits=tuple(found) or None, not_understood=tuple(unread))


def _read_part(part: str) -> tuple[list[str], str]:
    """The limits a part names, and the part itself if something in it stays unexplained."""
    ids: list[str] = []
    left = part
    for pattern, limit_id in _spellings():
        if pattern.search(left):
            ids.append(limit_id)
            left = pattern.sub(" ", left)
    wish = any(spelling.search(part) for spelling, limit_id in _spellings() if limit_id.startswith("no-"))
    if ids and not wish and _OVER.search(part):
        return [], part.strip()
    unexplained = re.search("[a-z]{3}", _FILLER.sub(" ", left))
    return ids, part.strip() if unexplained and not ids else ""


@cache
def _spellings() -> tuple[tuple[re.Pattern[str], str], ...]:
    """Every spelling as a pattern, the longest first: `joint replacement` before `knee`."""
    return tuple(
        (re.compile(rf"\b{re.escape(name).replace(chr(92) + ' ', '[ -]')}(?:e?s)?\b"), limit_id)
        for name, limit_id in sorted(_names(), key=lambda pair: -len(pair[0]))
    )


def _names() -> Iterator[tuple[str, str]]:
    for limit in limits():
        for name in (limit.id.replace("-", " "), limit.label.lower(), *limit.names):
            yield name.lower(), limit.id
