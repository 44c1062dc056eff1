"""Pain told in free words: `my left wrist hurts`, `the knee is fine again`."""

import re
from collections.abc import Mapping
from typing import Literal, NamedTuple

from core.athletes.values import Side
from core.notation.sides import joints_in, read_sides
from core.notation.text import plain

_HURTS = re.compile(
    r"\b(?:hurts?|hurting|aches?|aching|painful|pain|sore|injured|tweaked|sprained|strained|twisted|swollen"
    r"|(?:acting|playing) up|bothering me|bothers me|killing me)\b"
)
_OVER = re.compile(
    r"\b(?:is|are|feels?|'s) (?:(?:all|completely|totally|quite|now) )*(?:fine|ok|okay|good|healed|well)\b"
    r"|\b(?:doesn't|does not|don't|no longer|not) (?:hurts?|hurting|ache|painful|sore)\b|\bstopped hurting\b"
    r"|\bno (?:more )?pain\b|\b(?:has |have |is )?healed\b"
)
_HEDGED = re.compile(
    r"\b(?:almost|nearly|mostly|if|when|unless|except|until|not (?:fine|ok|okay|good|healed|well)|still|but)\b"
)
# What stands before a joint of one's own; `Bo's wrist` and `I'm back` are something else.
_BEFORE_OWN = re.compile(r"(?:^|\b(?:my|the|sore|painful|swollen|injured|ouch|ow|oh no|and|or)\b)\W*$")
_LONGEST = 160


class ToldPain(NamedTuple):
    """`limits`: the joints, by their limits; `sides` where told."""

    kind: Literal["hurts", "over"]
    limits: tuple[str, ...]
    sides: Mapping[str, Side]


def read_complaint(text: str) -> ToldPain | None:
    """What the speaker says of their own joints; None where it is about something or somebody else."""
    words = plain(text).replace("\u2019", "'").casefold().strip()
    if len(words) > _LONGEST or "\n" in text.strip():
        return None
    own = (joint for joint, match in joints_in(words) if _BEFORE_OWN.search(words[: match.start()]))
    joints = tuple(dict.fromkeys(own))
    if not joints:
        return None
    if _OVER.search(words) and not _HEDGED.search(words):
        return ToldPain("over", joints, read_sides(words))
    return ToldPain("hurts", joints, read_sides(words)) if _HURTS.search(words) else None
