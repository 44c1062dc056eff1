"""What training did to somebody's body: it made them feel sick, or a muscle cramped.

`felt a bit sick after`, `nearly threw up in the last round`, `got a cramp in my calf`.
"""

import re
from typing import Final, Literal, NamedTuple

from core.notation.text import plain

Happened = Literal["queasy", "cramp"]
_QUEASY: Final = re.compile(
    r"\b(?:felt|feel|feeling|was|got|am|i'?m|made me(?: feel)?)(?: \w+){0,3} (?:sick|nauseous|nauseated|queasy|ill)\b"
    r"(?! (?:of|with|today|since|from|yesterday|all|for))"
    r"|\bnausea\b|\b(?:threw|throw(?:ing)?|chucked) up\b|\bpuked?\b|\bvomit(?:ed|ing)?\b"
)
# Of training, else it is an illness or something eaten.
_OF_TRAINING: Final = re.compile(
    r"\b(?:after|afterwards|during|round|rounds|set|sets|session|workout|training|stop|stopped|halfway|end|finish|run|reps?)\b"
)
# Of a muscle, else it is a period, or something eaten.
_MUSCLE: Final = (
    r"(?:calf|calves|hamstrings?|quads?|thighs?|foot|feet|toes?|legs?|arms?|hands?|glutes?|shins?)"
)
_CRAMP: Final = re.compile(
    rf"\b(?:(?:i |still |keep |just )*(?:got|had|have|get|getting|gets?) )?(?:(?:a|bad|the|my|some) )*(?:{_MUSCLE} )?"
    rf"cramp(?:s|ed|ing)?(?: up)?(?: (?:in|of|on) (?:my |the |both |one |left |right )*{_MUSCLE}\b)?"
)
_CRAMPED_UP: Final = re.compile(r"\bcramp(?:ed|ing) up\b")
_NAMES_MUSCLE: Final = re.compile(rf"\b{_MUSCLE}\b")
_DENIED: Final = re.compile(
    r"\b(?:no|not|never|didn'?t|don'?t|without)\b[^,;.!?]*\b(?:sick|nause\w+|queasy|threw|throw\w*|puke\w*|vomit\w*|cramp\w*)"
)
_CLAUSE: Final = re.compile(r"(?<=[.!?;,\n])\s+|\s+\b(?:but|and)\s+")
_LEFT_OPEN: Final = re.compile(r"[\s,;]+(?:but|and)?\s*$", re.IGNORECASE)


class During(NamedTuple):
    """What happened, the clause that tells it, what else that tells (`3+2 felt sick after`), and all but the clause."""

    what: Happened
    clause: str
    beside: str
    rest: str


def told_of_training(text: str) -> During | None:
    """None where training did nothing of that kind."""
    words = _small(text)
    if _DENIED.search(words):
        return None
    for clause in _CLAUSE.split(text):
        said = _small(clause)
        if _QUEASY.search(said) and _OF_TRAINING.search(words):
            return _during("queasy", text, clause, _QUEASY)
        if _CRAMP.search(said) and (_NAMES_MUSCLE.search(said) or _CRAMPED_UP.search(said)):
            return _during("cramp", text, clause, _CRAMP)
    return None


def _during(what: Happened, text: str, clause: str, told: re.Pattern[str]) -> During:
    beside = told.sub(" ", _small(clause)).strip()
    return During(what, clause, beside, _LEFT_OPEN.sub("", text.replace(clause, " ").strip()))


def _small(text: str) -> str:
    return plain(text).replace("\u2019", "'").casefold()
