"""What is denied: `I didn't lift 78`, `no i not lift 78, this is my weight`, `78 kg is not my score`."""

import re
from typing import Final

from core.notation.scores.corrections import read_correction
from core.notation.text import plain

_LONGEST: Final = 160
# What somebody can't do they tell of themselves, and no score was meant.
_ISNT: Final = r"(?:did|do|does|is|was|are|were|has|have|had|ai)n'?t"
_NOT: Final = rf"(?:{_ISNT}|not|never|no)"
_NUMBER: Final = r"[0-9]+(?:[.,:+][0-9]+)*"
_DONE: Final = (
    r"(?:lift|do|did|done|score|get|got|make|made|press|pull|push|use|squat|deadlift|say|said|mean|meant|write|wrote|run|ran"
    r"|row|reach|manage|finish)(?:s|ed|ted|ing)?"
)
_SCORE: Final = r"(?:scores?|results?|lifts?|times?|reps?|rounds?|load|mine|me|right|true|correct)"
_DENIED: Final = (
    # `I didn't lift 78`, `i not lift 78`, `I never did the 78`
    re.compile(rf"\b{_NOT}\s+(?:(?:i|he|she|we|have|has|really|actually|even|to|ever)\s+)*{_DONE}\b[^0-9,.;]{{0,20}}{_NUMBER}"),
    # `78 is not my score`, `the 78 wasn't me`, `78 kg is wrong`
    re.compile(
        rf"{_NUMBER}\s?(?:kgs?|kilos?|lbs?|pounds?|reps?|rounds?)?(?:,? (?:that|it|this))?\s?(?:'?s|is|was|are)?\s?"
        rf"(?:(?:{_NOT}\s+|{_ISNT}\s+)(?:(?:a|an|my|the|from|for|what|i)\s+)*(?:{_SCORE}|{_DONE})|wrong|false|incorrect)\b"
    ),
    # `it's not 78`, `not 78, I weigh that`, `that is no score, 78 is my weight`
    re.compile(rf"\b(?:that|this|it|score)\s?(?:'?s|is|was|are)?\s?{_NOT}\s+(?:(?:a|my|the)\s+)*(?:{_SCORE}\b|{_NUMBER})"),
    re.compile(rf"^\W*not\s+{_NUMBER}"),
)  # fmt: skip
_NO_FIRST: Final = re.compile(
    r"^\W*(?:no|not|wrong|nope|that'?s (?:wrong|not right)|it'?s (?:wrong|not right))\b"
)
_WEIGHT: Final = re.compile(
    r"\b(?:my|the|is|of)\W+(?:own )?(?:body ?)?weight\b|\bbody ?weight\b|\bweight (?:of )?(?:my )?body\b"
    r"|\bi (?:do )?weigh(?:t|ts|s)?\b"
)


def denies(text: str) -> frozenset[str] | None:
    """The numbers that the words deny; None where they deny none, or tell another in its place.

    A number is left where it is told what it is instead: a weight of the body.
    """
    words = plain(text).lower().replace("\u2019", "'").strip()
    if len(words) > _LONGEST or words.endswith("?") or read_correction(text) is not None:
        return None
    if _NO_FIRST.match(words) and tells_weight(text):
        return frozenset(re.findall(_NUMBER, words)) or None
    found = next((match for one in _DENIED if (match := one.search(words))), None)
    if found is None:
        return None
    denied = frozenset(re.findall(_NUMBER, found[0]))
    beside = frozenset(re.findall(_NUMBER, words[: found.start()] + " " + words[found.end() :]))
    if tells_weight(text):
        return denied or beside
    return denied if denied and beside <= denied else None


def numbers_in(text: str) -> frozenset[str]:
    """As they are compared: `78 kilo` and `the 78` tell the same."""
    return frozenset(re.findall(_NUMBER, plain(text).lower()))


def tells_weight(text: str) -> bool:
    """Whether it is said of a number that it is the weight of one's body."""
    return bool(_WEIGHT.search(plain(text).lower()))
