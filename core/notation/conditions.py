"""What somebody says unasked of their health, or of what they don't do: `I'm pregnant`, `no jumping for me`."""

import re
from typing import Final

from core.athletes.limits import limit
from core.notation.alarm import tells_of_another
from core.notation.limits import read_limits
from core.notation.text import plain
from core.notation.values import ReadLimits

_LONGEST: Final = 160
_SAYS_I: Final = re.compile(
    r"^\W*(?:(?:hi|hey|hello|sorry|so|by the way|btw|fyi|oh|and|also|just)\W+)*"
    r"(?:i|i'm|im|i've|ive|my (?:doctor|gp|midwife)|(?:just )?(?:found out|had|gave birth|got)|pregnant)\b"
)
# Only what is named in full: `this fits me` and `I'm expecting a parcel` tell of no illness.
_NAMED: Final = re.compile(
    r"\b(?:pregnan(?:t|cy)|expecting (?:a |our |my )?(?:\w+ )?(?:baby|child|twins)|(?:high blood|eye) pressure"
    r"|hypertension|beta.?blockers?|insulin|diabet(?:es|ic)|blood thinners?|anticoagula\w+|asthma(?:tic)?"
    r"|epilep(?:sy|tic)|glaucoma|osteopo?(?:rosis|enia)|hernia|(?:gave|given) birth|had (?:a|my|our) baby"
    r"|c-section|concuss(?:ion|ed)|surgery|(?:hip|knee|shoulder|joint) replacement)\b"
)
_WISH: Final = re.compile(
    r"^\W*(?:(?:please|sorry|so)\W+)*(?:no|avoid|i (?:mustn't|must not|shouldn't|should not|may not)) [a-z]"
)
_FOR_NOW: Final = re.compile(r"\b(?:today|tonight|tomorrow|this|next|until|week|days?)\b|[0-9?]")
_DENIED: Final = re.compile(
    r"\b(?:not|isn't|wasn't|never|no longer|no more|don't have|haven't|used to|i was(?! (?:told|diagnosed|just)))\b|\?"
)
_STATES: Final = frozenset({"concussion", "surgery"})


def read_conditions(text: str) -> ReadLimits | None:
    """What to spare from now on, as the speaker tells of themselves; None where it is about something else."""
    words = plain(text).replace("\u2019", "'").casefold().strip()
    if not words or len(words) > _LONGEST or "\n" in text.strip():
        return None
    if _WISH.match(words) and not _FOR_NOW.search(words):
        return _all_of_kind(read_limits(text), "wish")
    if (
        not _SAYS_I.match(words)
        or not _NAMED.search(words)
        or _DENIED.search(words)
        or tells_of_another(words)
    ):
        return None
    read = read_limits(text)
    return read if any(_is_of_health(one) for one in read.limits or ()) else None


def _all_of_kind(read: ReadLimits, kind: str) -> ReadLimits | None:
    wanted = read.limits and not read.not_understood and all(limit(one).kind == kind for one in read.limits)
    return read if wanted else None


def _is_of_health(limit_id: str) -> bool:
    return limit(limit_id).kind == "condition" or limit_id in _STATES
