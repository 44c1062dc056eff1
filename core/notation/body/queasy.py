"""Whether training made somebody feel sick: `felt a bit sick after`, `nearly threw up in the last round`."""

import re
from typing import Final

from core.notation.text import plain

_QUEASY: Final = re.compile(
    r"\b(?:felt|feel|feeling|was|got|am|i'?m|made me(?: feel)?)(?: \w+){0,3} (?:sick|nauseous|nauseated|queasy|ill)\b"
    r"(?! (?:of|with|today|since|from|yesterday|all|for))"
    r"|\bnausea\b|\b(?:threw|throw(?:ing)?|chucked) up\b|\bpuked?\b|\bvomit(?:ed|ing)?\b"
)
# Of training, else it is an illness or something eaten.
_OF_TRAINING: Final = re.compile(
    r"\b(?:after|afterwards|during|round|rounds|set|sets|session|workout|training|stop|stopped|halfway|end|finish|run|reps?)\b"
)
_DENIED: Final = re.compile(
    r"\b(?:no|not|never|didn'?t|don'?t|without)\b[^,;.!?]*\b(?:sick|nause\w+|queasy|threw|throw\w*|puke\w*|vomit\w*)"
)
_CLAUSE: Final = re.compile(r"(?<=[.!?;,\n])\s+|\s+\bbut\s+")


def without_queasy(clause: str) -> str:
    """What else the clause tells: `3+2 felt sick after`."""
    return _QUEASY.sub(" ", plain(clause).casefold()).strip()


def felt_queasy(text: str) -> str | None:
    """The clause that tells it; None where nobody felt sick of training."""
    words = plain(text).replace("\u2019", "'").casefold()
    if not _OF_TRAINING.search(words) or _DENIED.search(words):
        return None
    return next((one for one in _CLAUSE.split(text) if _QUEASY.search(plain(one).casefold())), None)
