"""What an athlete says beside the number: scaled, pain, approximate, and everything else as a note."""

import re
from dataclasses import dataclass
from itertools import pairwise

from core.notation.text import Strip

_SCALED = re.compile(
    r"\b(?:scaled|scale|modified|not (?:rx|rx'?d|as written|as prescribed)|(?:a )?(?:lighter|easier)(?: "
    r"one| weight| version)?)\b"
)
# These say what was done, so they stay in the note.
_MADE_EASIER = re.compile(
    r"\b(?:(?:empty|just the|only the) bar|bar only|became"
    r"|(?:without|no) jump(?:s|ing)?|but normal|(?:green|red|blue|black|thick) band"
    r"|on the (?:spot|place)|on (?:my |the )?knees|instead|subbed|swapped|replaced"
    r"|(?:with|using|w/) (?:a |the )?bands?|jumping pull ?-?ups|step ?-?ups (?:not|instead of) jumps|tucked"
    r"|(?:hands|feet) on (?:an? |the |my )?(?:\w+ )?(?:table|bench|chair|wall|box|sofa|counter|worktop|couch|step))\b"
)
_AS_WRITTEN = re.compile(r"\b(?:rx'?d?|as (?:written|prescribed|posted))\b")
_NO_PAIN = re.compile(
    r"\b(?:no|without(?: any)?|zero|not any|didn'?t) (?:\w+ )?(?:pain|hurt)\b|\bpain[ -]free\b"
    r"|\b(?:didn'?t|doesn'?t|not|nothing) hurt(?:ing)?\b"
)
_HURT = re.compile(
    r"\b(?:hurts?|hurting|pains?|painful|ached?|aching|aches|twinged?|tweaked?|pulled|pinch(?:ed|ing)?"
    r"|sharp|injured|strained|popped|ouch|dizzy|light ?headed|chest)\b"
)
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
_SORE_JOINT = re.compile(
    r"\b(?:wrists?|elbows?|knees?|ankles?|shoulder|hip|neck)\b.{0,20}\bsore\b"
    r"|\bsore (?:\w+ )?(?:wrists?|elbows?|knees?|ankles?|shoulder|hip|neck)\b"
)
_NOT_SORE = re.compile(r"\b(?:not|isn'?t|aren'?t|wasn'?t|weren'?t|no longer|never) (?:\w+ )?(?:sore|stiff)\b")
_FROM_THE_BODY = re.compile(rf"\b(?:(?:sore|painful|sharp pain in) )?{_BODY}\b[^0-9]*$")
_ABOUT = re.compile(
    r"\b(?:more than|at least|less than|(?:over|under)(?= [0-9])|somewhere|about|around|roughly"
    r"|approx(?:imately)?|maybe|probably|possibly|perhaps|ish"
    r"|i (?:think|guess|believe|reckon|suppose)|almost|nearly|not "
    r"sure|or so|ca|circa)\b|~|(?<=[0-9])ish\b|(?<=[0-9])\s?[a-z]{0,7}\?|\blike(?= [0-9])"
)
_PARTS = re.compile(r"[,;.!()|]|\s-\s|\b(?:but|because|bc)\b")


@dataclass(frozen=True)
class Remarks:
    scaled: bool
    pain: str | None
    about: bool


def take_remarks(strip: Strip) -> Remarks:
    """Takes `scaled` and the like away; pain stays in the text and is found part by part."""
    scaled = strip.take(_SCALED) is not None or _MADE_EASIER.search(strip.text) is not None
    strip.take(_AS_WRITTEN)
    about = strip.take(_ABOUT) is not None
    return Remarks(scaled=scaled, pain=_pain(strip), about=about)


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
