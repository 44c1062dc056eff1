"""Words that mean: stop now. Read before anything else is made of a message.

The stop signs follow the list in ACSM's guidance (chest pain or pressure, unusual breathlessness, light-headed,
near-faint, confused; cold clammy skin); how people type them is common practice, no source.
"""

import re
from collections.abc import Iterable
from typing import Literal

_PAIN = r"(?:pains?|pians?|hurts?|hurting|aches?|aching|pressure|tight|tightness|stabbing)"
_ODD = (
    r"(?:racing|burn(?:s|ed|ing)?|squeez\w+|skip(?:s|ped|ping)?|flutter\w*|irregular|uneven"
    r"|feel(?:s|ing)? (?:\w+ )?(?:weird|odd|funny|strange|heavy))"
)
_CHEST = re.compile(
    rf"\b{_PAIN}\b.{{0,20}}\b(?:che?st|heart)\b|\b(?:che?st|heart)\b.{{0,20}}\b(?:{_PAIN}|{_ODD})\b"
    r"|\b(?:burning|squeezing) (?:in |of )?(?:my |the )?chest\b|\bpalpitations?\b"
    r"|\b(?:numb(?:ness)?|tingl\w+)\b.{0,15}\b(?:arm|face|jaw)\b"
    r"|\b(?:arm|face|jaw)\b.{0,15}\b(?:numb|tingl\w+)\b|\bcold sweats?\b|\bclammy\b",
    re.IGNORECASE,
)
_FAINT = re.compile(
    r"\bdi+z+(?:y+|ey|iness)\b|\b(?:woozy|light[- ]?head(?:ed|edness))\b"
    r"|\b(?:i|i'm|im|am|feel|feeling|felt|got|almost|nearly)\b.{0,20}\b(?:faint|fainted|fainting|pass(?:ing)? out)\b"
    r"|^\W*faint\W*$|\b(?:a bit|a little|slightly|very|really|so|quite|got|getting|went) faint\b"
    r"|\b(?:fainted|passed out|blacked out|collapsed|(?:everything|it all|all) (?:went|goes|got) (?:black|dark))\b"
    r"|\b(?:head|room|everything)(?: is|'s|s| was| keeps| kept)? spinning\b|\b(?:saw|see|seeing) stars\b"
    r"|\bblurr(?:ed|y) vision\b|\bvision (?:is |was |went |goes |going |got )*(?:blurr\w+|black|dark|fading|going)\b",
    re.IGNORECASE,
)
_AIR = r"(?:breathe|(?:get|catch) (?:my|any|a) breath)"
_BREATH = re.compile(
    rf"\b(?:can'?t|cannot|can (?:not|hardly|barely)|hard to|struggling to) {_AIR}\b|\bshortness of breath\b"
    r"|\b(?:short of breath|breathless)\b.{0,20}\b(?:at rest|sitting|lying|stairs|walking|for no reason|still)\b"
    r"|\b(?:unusually|suddenly|still) (?:so |very )?(?:short of breath|breathless)\b",
    re.IGNORECASE,
)
_NOT = re.compile(r"\b(?:no|not|never|without|any|(?:do|did|is|was|have)n'?t)\b", re.IGNORECASE)
_EXERCISE = re.compile(
    r"\bchest[ -](?:press|fly|day|height|supported|to[ -](?:bar|floor)|strap|belt)\b"
    r"|\bheart[ -]?rate (?:monitor|strap|belt|sensor)\b",
    re.IGNORECASE,
)
# How far before a sign a "no" still belongs to it.
_NEAR = 25


Alarm = Literal["told", "asked", "other"]

_OTHER = (
    r"(?:somebody|someone|anyone|anybody|people|he|she|they|(?:a|my|our|your) (?:friend|mum|mom|mother|dad|father|wife"
    r"|husband|partner|son|daughter|kid|child|sister|brother|colleague|neighbou?r|buddy|client|athlete)s?"
    r"|(?:a|the|this|that|some|my|our|one) (?:guy|girl|man|woman|lady|boy|teammate|classmate|roommate|flatmate))"
)
# Said of what was seen of another, not of oneself.
_SEEN = re.compile(
    rf"\bi (?:just )?(?:think|believe|guess|saw|see|heard|noticed) (?:that )?(?={_OTHER}\b)", re.IGNORECASE
)
# What can only follow the name of somebody else: `Bo fainted`; not `May faint`.
_NAMED = (
    r"(?:(?:just|has|is|was|says|feels|felt|got|gets|looks|nearly|almost|can'?t|cannot)\b"
    r"|(?:faint|collaps)(?:s|es|ed)\b|(?:pass|black)(?:es|ed) out\b)"
)
_OF_ANOTHER = re.compile(
    rf"\b{_OTHER}\b.{{0,20}}\b(?:faint(?:s|ed|ing)?|(?:pass|black)(?:es|ed|ing)? out|collapse[sd]?|dizzy|light-?headed"
    r"|chest (?:pains?|pressure|hurts?)|can'?t breathe)\b",
    re.IGNORECASE,
)
_OTHERS = re.compile(rf"\b{_OTHER}\b", re.IGNORECASE)
# `Should I` and `what do I do` ask for advice; every other word for oneself tells.
_ONESELF = re.compile(
    r"(?<!should )(?<!can )(?<!what do )(?<!could )(?<!if )\b(?:i|i'?m|i'?ve|im|me|my|mine|myself)\b",
    re.IGNORECASE,
)
_QUESTION = re.compile(
    r"^\W*(?:(?:hi|hey|hello|so|and|ok|quick question|question|just curious|out of curiosity)\W+)*"
    r"(?:is|are|should|what|why|can|does|do|how|could|would|when|will)\b|\?\W*$",
    re.IGNORECASE,
)


def name_others(text: str, names: Iterable[str]) -> str:
    """The words with `somebody` in place of the names of others, where one is plainly who it is told of."""
    words = text[:1000].replace("\u2019", "'")
    known = "|".join(re.escape(name) for name in names if name)
    return re.sub(rf"\b(?:{known})(?= {_NAMED})", "somebody", words, flags=re.IGNORECASE) if known else words


def read_alarm(text: str) -> Alarm | None:
    """A stop sign that is told, is asked about with no word of whose it is, or is somebody else's; or None.

    `Why do I feel dizzy?` tells of it.
    """
    words = _EXERCISE.sub(" ", text[:1000].replace("\u2019", "'"))
    own = bool(_ONESELF.search(_OTHERS.sub(" ", _SEEN.sub(" ", words))))
    if _OF_ANOTHER.search(words) and not own:
        return "other"
    signs = (match for sign in (_CHEST, _FAINT, _BREATH) for match in sign.finditer(words))
    if all(_is_denied(words, sign) for sign in signs):
        return None
    return "asked" if _QUESTION.search(words) and not own else "told"


def tells_of_another(text: str) -> bool:
    """Whether somebody else is spoken of: `my wife`, `a friend`."""
    return bool(_OTHERS.search(text))


def _is_denied(words: str, sign: re.Match[str]) -> bool:
    before = words[max(0, sign.start() - _NEAR) : sign.end()]
    return bool(_NOT.search(re.split(r"[.!;\n]|\bbut\b", before)[-1]))


# The signs to stop at in a pregnancy and after a birth follow ACOG's list (from memory) and this program's own
# limits; how people type them is common practice, no source.
_BIRTH = re.compile(
    r"(?<!muscle )\bcontractions?\b|\bwaters? (?:just |have |has )?(?:broke|broken)\b|\bleaking (?:\w+ )?fluid\b"
    r"|\bfluid (?:is )?leaking\b|\bvaginal bleeding\b|\bbleeding down there\b",
    re.IGNORECASE,
)
_WHILE_EXPECTING = re.compile(
    r"\b(?:bleed(?:s|ing)?|bled|spotting|leaking|bulge|cramps?|cramping|tightenings?|headaches?|flickering)\b"
    r"|\bcalf\b.{0,15}\b(?:pain|hurts|swollen|swelling)\b|\b(?:swollen|sore|painful) calf\b",
    re.IGNORECASE,
)


_BABY = re.compile(r"\bbaby\b.{0,20}\b(?:less|not moving|isn'?t moving|stopped)\b", re.IGNORECASE)


def read_birth_sign(text: str) -> Literal["sign", "sign if expecting"] | None:
    """A stop sign of a pregnancy or after a birth: for anybody, or only for who is known to be there; or None."""
    words = text[:1000].replace("\u2019", "'")
    if _OTHERS.search(words) and not _ONESELF.search(_OTHERS.sub(" ", words)):
        return None
    if _is_told(_BIRTH, words):
        return "sign"
    return "sign if expecting" if _BABY.search(words) or _is_told(_WHILE_EXPECTING, words) else None


def _is_told(sign: re.Pattern[str], words: str) -> bool:
    return any(not _is_denied(words, match) for match in sign.finditer(words))
