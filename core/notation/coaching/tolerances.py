"""What a coach lets count as written: `10% lighter counts as written`, `another implement counts too`."""

import re
from typing import NamedTuple

from core.scores.values import EXACTLY, Tolerance

_ABOUT = re.compile(r"\bcount\w*\b.*\bas written\b|\bas written\b.*\bcounts?\b|\btoleran\w+\b")
_ASKS = re.compile(r"^(?:what|which|how)\b|^(?:my |the |our )?tolerance$|\?\s*$")
_PERCENT = re.compile(r"\b(\d{1,3})\s?(?:%|percent|per cent)")
_NO_LESS = re.compile(r"\b(?:only|just|nothing but|no tolerance|exact(?:ly)?|zero tolerance)\b")
_OTHER = re.compile(
    r"\b(?:(?:an)?other|any|different|swapp?ed|whatever|either) (?:implement|thing|tool|equipment|weight)s?\b"
    r"|\b(?:dumbbell|kettlebell|barbell|backpack|bar|bell)s?\b.*\b(?:instead of|for|in place of)\b"
)
_NOT = re.compile(r"\b(?:not|no longer|never|doesn't|don't|does not|do not|isn't)\b")
_MOST = 50


class ToleranceWish(NamedTuple):
    """`wanted` None: only asked about, or not understood."""

    wanted: Tolerance | None


def read_tolerance(text: str, now: Tolerance) -> ToleranceWish | None:
    """What shall count instead of what counts `now`; None for a text that is about something else."""
    words = text.strip().lower().replace("\u2019", "'")
    if "\n" in words or not _ABOUT.search(words):
        return None
    if _ASKS.search(words):
        return ToleranceWish(None)
    changes: dict[str, int | bool] = {}
    if percent := _PERCENT.search(words):
        changes["lighter_percent"] = 0 if _NOT.search(words) else int(percent[1])
    if _OTHER.search(words):
        changes["other_implement"] = not _NOT.search(words)
    if changes:
        return ToleranceWish(_within_reason(now.model_copy(update=changes)))
    return ToleranceWish(EXACTLY if _NO_LESS.search(words) else None)


def _within_reason(wanted: Tolerance) -> Tolerance | None:
    return wanted if wanted.lighter_percent <= _MOST else None
