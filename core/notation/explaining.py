"""Somebody asks what a word means, or how a movement is done: `what's amrap?`, `how do i do a situp`."""

import re
from typing import Final, Literal

from core.notation.text import plain

Term = Literal[
    "amrap", "emom", "for time", "cap", "rounds", "reps", "scaled", "as written", "unbroken", "buy-in", "cash-out",
    "superset", "dumbbell", "kettlebell", "effort", "ladder",
]  # fmt: skip

_LONGEST: Final = 80
_SPELLINGS: Final[dict[str, Term]] = {
    "amraps": "amrap", "emoms": "emom", "e.m.o.m": "emom", "ft": "for time", "rft": "for time", "time cap": "cap",
    "tc": "cap", "capped": "cap", "round": "rounds", "rep": "reps", "repetitions": "reps", "scale": "scaled",
    "scaling": "scaled", "rx": "as written", "rxd": "as written", "buy in": "buy-in", "buyin": "buy-in",
    "cash out": "cash-out", "cashout": "cash-out", "super set": "superset", "supersets": "superset", "db": "dumbbell",
    "dbs": "dumbbell", "dumbbells": "dumbbell", "kb": "kettlebell", "kbs": "kettlebell", "kettlebells": "kettlebell",
    "rpe": "effort",
    "amrap": "amrap", "emom": "emom", "for time": "for time", "cap": "cap", "rounds": "rounds", "reps": "reps",
    "scaled": "scaled", "as written": "as written", "unbroken": "unbroken", "buy-in": "buy-in", "cash-out": "cash-out",
    "superset": "superset", "dumbbell": "dumbbell", "kettlebell": "kettlebell", "effort": "effort", "ladder": "ladder",
}  # fmt: skip
_HI: Final = r"^\W*(?:(?:hi|hey|ok|so|sorry|and|but|wait|um+|eh+)\W+)*"
_THING: Final = r"\W*(?P<thing>[a-z0-9][a-z0-9 .'\-]{1,40}?)"
_MEANS: Final = re.compile(
    rf"{_HI}(?:what(?:'?s| is| are| does| do)|whats|wtf is|explain|define|meaning of)(?: (?:an?|the)\b)?{_THING}"
    r"(?:(?: even)? means?| stand for| again| here)*\W*$"
)
_HOW: Final = re.compile(
    rf"{_HI}(?:(?:can you |could you |please )*(?:show|tell|explain)(?: to)?(?: me)? )?how (?:(?:do|can|should|would) "
    rf"(?:i|you|u|we|one) |to |are |is )?(?:(?:do|make|perform) )?(?:an? |the |these |those )?{_THING}"
    r"(?: (?:correctly|properly|right|done|work))*\W*$"
)


def term_asked(text: str) -> Term | None:
    """The word of the trade that is asked about; None for anything else."""
    match = _MEANS.match(_words(text))
    return _SPELLINGS.get(match["thing"].strip()) if match else None


def movement_asked(text: str) -> str | None:
    """What may be the name of a movement that somebody wants to see; None where nothing is asked."""
    words = _words(text)
    match = _HOW.match(words) or _MEANS.match(words)
    return match["thing"].strip() if match else None


def _words(text: str) -> str:
    words = plain(text).replace("\u2019", "'").casefold()
    return "" if len(words) > _LONGEST or "\n" in text.strip() else words
