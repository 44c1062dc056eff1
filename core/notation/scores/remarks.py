"""What an athlete says beside the number: scaled, pain, approximate, and everything else as a note."""

import re
from dataclasses import dataclass
from itertools import pairwise

from core.notation.scores.wording import says
from core.notation.text import Strip

_SCALED = re.compile(
    r"\b(?<!have )(?<!should've )(?:scaled|scale|modified|not (?:rx|rx'?d|as written|as prescribed))\b"
)
_AS_WRITTEN = re.compile(r"\b(?:rx'?d?|as (?:written|prescribed|posted))\b")
_NO_PAIN = says("beside_no_pain")
_HURT = says("beside_hurt")
_BODY = (
    r"(?:(?:my|the|left|right|lower|upper|bad)\s){0,3}"
    r"(?:wrists?|elbows?|shoulders?|neck|back|spine|hips?|knees?|ankles?|foot|feet|groin|hamstrings?|calf"
    r"|calves"
    r"|quads?|forearms?|hands?|fingers?|thumbs?|achilles|shins?|ribs?|chest|head)"
)
_PART_ALONE = re.compile(
    rf"^(?:because of |due to |bc |cause |cos )?{_BODY}(?: (?:again|issue|problem|trouble|acting up|gave "
    rf"(?:out|up)))?$"
)
_SORE = re.compile(r"\bsore(?:ness)?\b|\bstiff\b|\bdoms\b")
# A joint has no muscle to be sore; in the plural, shoulders and hips mostly mean those around them.
_SORE_JOINT = says("beside_sore_joint")
_NOT_SORE = re.compile(r"\b(?:not|isn'?t|aren'?t|wasn'?t|weren'?t|no longer|never) (?:\w+ )?(?:sore|stiff)\b")
_FROM_THE_BODY = re.compile(rf"\b(?:(?:sore|painful|sharp pain in) )?{_BODY}\b[^0-9]*$")
# Of all that they say, not of one number.
_ABOUT = re.compile(
    r"\b(?:not sure|no idea|can'?t remember|don'?t remember|lost count|or maybe|possibly|give or take)\b"
)
_PARTS = re.compile(r"[,;.!()|]|\s-\s|\b(?:but|because|bc)\b")


@dataclass(frozen=True)
class Remarks:
    scaled: bool
    pain: str | None
    about: bool
    as_written: bool = False


def take_remarks(strip: Strip) -> Remarks:
    """Takes `scaled` and the like away; pain stays in the text and is found part by part."""
    scaled = strip.take(_SCALED) is not None
    as_written = strip.take(_AS_WRITTEN) is not None and not scaled
    about = _ABOUT.search(strip.text) is not None
    return Remarks(scaled=scaled, pain=_pain(strip), about=about, as_written=as_written)


def _pain(strip: Strip) -> str | None:
    """The part of the text that speaks of pain. A body part alone counts, sore muscles and `no pain` don't."""
    marks = [(0, 0), *(match.span() for match in _PARTS.finditer(strip.text)), (len(strip.text),) * 2]
    hurting = []
    for (_, start), (end, _) in pairwise(marks):
        words = strip.text[start:end].replace(Strip.MARK, " ").strip(" ,;.!()|-")
        if _is_pain(words):
            hurting.append(_without_the_score(words))
            if not re.search("[0-9]", words):
                strip.blank(start, end)
    return ", ".join(hurting) or None


def _without_the_score(words: str) -> str:
    """`7+12 my wrist hurts` tells of `my wrist hurts`."""
    told = _FROM_THE_BODY.search(words) if re.search("[0-9]", words) else None
    return told[0] if told else words


def _is_pain(words: str) -> bool:
    if _NO_PAIN.search(words) or _NOT_SORE.search(words):
        return False
    if _SORE.search(words):
        return bool(_SORE_JOINT.search(words))
    return bool(_HURT.search(words) or _PART_ALONE.match(words))


def note(left: str) -> str | None:
    """The words that are left, if there are any."""
    words = " ".join(left.split()).strip(" ,;.:!-+()")
    return words if re.search("[a-z0-9]{3}", words) else None
