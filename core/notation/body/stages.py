"""How far a pregnancy is, or how long ago a birth: `24 weeks pregnant`, `week 24`, `5 months, cleared`."""

import re

WEEKS_A_MONTH = 365.25 / 12 / 7

_WEEKS = re.compile(
    r"\b(?:week|wk)\s*(?:no\.?\s*|number\s*)?(\d{1,3})\b"
    r"|\b(\d{1,3})(?:\s*\+\s*\d)?\s*(?:st|nd|rd|th)?\s*(?:weeks?|wks?)\b"
)
_MONTHS = re.compile(r"\b(\d{1,2})\s*months?\b")
_BARE = re.compile(r"\s*(\d{1,3})\b[^\d]*$")
_NOT = re.compile(r"\b(?:not|no|haven't|hasn't|isn't|wasn't|never|don't|yet)\b")
_CLEARED = re.compile(
    r"\b(?:cleared|ok(?:'d)?|okay|okayed|agreed|agrees|allowed|approved|green light|said yes|says yes|fine with)\b"
)


def read_weeks(text: str, *, bare: bool = False) -> int | None:
    """Weeks that the words tell; with `bare`, a number alone is weeks too."""
    words = text.lower()
    found = _WEEKS.search(words)
    if found:
        return int(found[1] or found[2])
    months = _MONTHS.search(words)
    if months:
        return round(int(months[1]) * WEEKS_A_MONTH)
    alone = _BARE.match(words) if bare else None
    return int(alone[1]) if alone else None


def read_cleared(text: str) -> bool | None:
    """Whether somebody who may say so agreed to training; None where the words don't tell."""
    words = text.lower()
    if not _CLEARED.search(words):
        return None
    return not _NOT.search(words)
