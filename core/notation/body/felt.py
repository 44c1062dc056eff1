"""How a session felt, in typed words: `8`, `rpe 8`, `like a 9`; and whether anything hurt: `no`, `just sore legs`.

The words follow the anchors of the 0-10 scale that the question shows (Foster et al. 2001); how people type is common
practice, no source.
"""

import re
from typing import Final

from core.notation.text import plain
from core.scores.values import Hurt

_LONGEST: Final = 80
_LONGEST_WITH_MORE: Final = 300
_MOST: Final = 10
_OF_TEN: Final = re.compile(r"\s?(?:/|out of|of)\s?10\b")
_OF_OTHERS: Final = re.compile(r"\b[0-9]{1,2} (?:out )?of (?:the |all )?(?!10\b)[0-9]{1,3}\b")
_BARE: Final = re.compile(r"^\W*(?:an? |about |around |maybe |like |say |i'?d say )*([1-9]|10)\W*$")
_SPELLED: Final = ("one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten")
# A number, and then what it was like: `9, felt awful`, `8 today, the burpees`; not `9 rounds`, not `5 push-ups short`.
_FIRST: Final = re.compile(
    rf"^\W*(?:an? |about |around |maybe |like |say |i'?d say )*(10|[1-9]|{'|'.join(_SPELLED)})"
    r"(?=\s?[,;.!)(\-](?!\s?[0-9])"
    r"|\s(?:today|for|i|i'm|it|but|and(?! a half)|definitely|felt|feels?|because|cos|haha|lol|maybe|probably|was)\b)"
)
_ABOUT_EFFORT: Final = re.compile(
    r"\b(?:rpe|effort|hard|harder|easy|tough|brutal|heavy|intens\w+|like an?|all i (?:had|got)|all out)\b"
)
_NUMBER: Final = re.compile(r"[0-9]+(?:[.:+][0-9]+)?")
_COUNTED: Final = re.compile(
    r"[0-9]\s?(?:x|kgs?|lbs?|kilos?|pounds?|reps?|rounds?|rds?|min\w*|sec\w*|s|m|k?cals?)\b"
)
_BESIDE: Final = re.compile(
    r"\b(?:rpe|effort)\b\W{0,3}(?:(?:of|was|is|an?|about|like)\s){0,2}(?P<n>10|[1-9])(?![0-9.:])"
    r"|(?<![0-9.:])(?P<m>10|[1-9])\s?rpe\b"
)
_ANCHORS: Final = {
    "easy": 2,
    "moderate": 3,
    "hard": 5,
    "very hard": 7,
    "really hard": 7,
    "all i had": 10,
    "all out": 10,
}
_LEAD: Final = re.compile(r"^\W*(?:(?:it|that|this) (?:was|felt)|felt|was|it's|its|i gave it)\s+")
_TAIL: Final = re.compile(
    r"(?:\s+(?:for me|today|that one|this one|one|session|lol|haha|honestly|tbh|though|tho))+\W*$"
)
_SENTENCE: Final = re.compile(r"[.!?;\n]+(?:\s|$)|,\s|\s-\s|\s(?:but|though|although|and)\s")
_MUSCLES: Final = r"muscles?|legs?|arms?|quads?|glutes|abs"
_HURT: Final = (
    (
        Hurt.NO,
        re.compile(
            r"^\W*(?:(?:pain|hurt)\W+)?(?:no|nope|nah|none|nothing|no pain|not? (?:really|at all))"
            r"(?:\W+(?:hurts?|pain|really|at all|thanks?|thank you|thankfully|luckily|all good|today))*\W*$"
        ),
    ),
    (
        Hurt.SORE,
        re.compile(
            r"^\W*(?:(?:no|nope|yes|just|only|a bit|a little|bit|some|very|really|my|the|normal|i'm|i am|i|are|is)\W+"
            rf"|(?:feel|feeling|got|{_MUSCLES})\W+)*(?:sore|soreness|muscle ache)"
            rf"(?:\W+(?:{_MUSCLES}|that'?s (?:it|all)|lol|today))*\W*$"
        ),
    ),
    (
        Hurt.PAIN,
        re.compile(r"^\W*(?:yes|yeah|yep|yea|y|a bit|a little|something)\b(?!.*\b(?:muscles?|sore)\b)"),
    ),
)

_ALL_TOLD: Final = re.compile(
    r"^\W*(?:(?:no|nope|ok|sorry|i|i'm|im|we|just|only|but|and|all|it)\W+)*"
    r"(?:that(?:'s|s| is| was) (?:it|all|everything)|done|finished|nothing (?:else|more)|no|nope|none|nothing"
    r"|(?:did(?:n'?t| not)|could(?:n'?t| not)|have(?:n'?t| not)|skipped|left out|no|not|ran out of time for|missed)"
    r"(?: (?:do|did|done|get to|manage|finish|score|count))*"
    r"(?: (?:the|any|that|it|second|other|last|next|first|third|rest|more|time for|of it|part|one|block|piece"
    r"|[1-9a-d])\b)+)"
    r"(?:\W+(?:for )?(?:today|now|me|thanks|thank you|sorry))*\W*$"
)


def effort_beside(text: str) -> int | None:
    """`10+12 rpe 8`: how hard it was, named as such beside something else; None where it isn't."""
    found = _BESIDE.search(plain(text).casefold())
    return int(found["n"] or found["m"]) if found else None


def counts_some_of(text: str) -> bool:
    """`Only 3 of 5`: so many of what there was, and no effort, which is out of ten."""
    return _OF_OTHERS.search(plain(text[:_LONGEST_WITH_MORE])) is not None


def says_that_was_all(text: str) -> bool:
    """`That's all`, `no`, `skipped the second part`: the answer to whether another part has a score."""
    return bool(_ALL_TOLD.match(plain(text[:_LONGEST]).replace("\u2019", "'").casefold()))


def read_effort(text: str) -> int | None:
    """1-10, where the words tell an effort and nothing else."""
    words = _OF_TEN.sub(" of-ten", plain(text).replace("\u2019", "'").casefold())
    if len(words) > _LONGEST or words.rstrip(" !").endswith("?") or _COUNTED.search(words):
        return None
    bare = _BARE.match(words.replace(" of-ten", ""))
    if bare:
        return int(bare[1])
    numbers = _NUMBER.findall(words)
    first = _FIRST.match(words)
    if first and len(numbers) == first[1].isdigit():
        return int(first[1]) if first[1].isdigit() else _SPELLED.index(first[1]) + 1
    if not numbers:
        return _ANCHORS.get(_TAIL.sub("", _LEAD.sub("", words)).strip(" .!"))
    told = "of-ten" in words or _ABOUT_EFFORT.search(words)
    one = int(numbers[0]) if len(numbers) == 1 and numbers[0].isdigit() else 0
    return one if told and 1 <= one <= _MOST else None


def effort_told_first(text: str) -> int | None:
    """`Very hard for me. shoulder pain more`, `4 it was grand but the hip was barking`: with more behind it."""
    first, *more = [one for one in _SENTENCE.split(text[:_LONGEST_WITH_MORE]) if one.strip()] or [""]
    return read_effort(first) if more else None


def read_hurt(text: str) -> Hurt | None:
    """The answer to `did anything hurt?`; None where the words may be about something else."""
    words = plain(text).replace("\u2019", "'").casefold()
    if len(words) > _LONGEST or words.rstrip(" !").endswith("?") or _COUNTED.search(words):
        return None
    return next((hurt for hurt, pattern in _HURT if pattern.search(words)), None)
