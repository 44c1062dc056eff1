"""Words that mean: stop now. Read before anything else is made of a message.

The stop signs follow the list in ACSM's guidance (chest pain or pressure, unusual breathlessness, light-headed,
near-faint, confused; cold clammy skin); how people type them is common practice, no source.
"""

import re
from typing import Literal

_PAIN = r"(?:pains?|hurts?|hurting|aches?|aching|pressure|tight|tightness|stabbing)"
_CHEST = re.compile(
    rf"\b{_PAIN}\b.{{0,20}}\b(?:chest|heart)\b|\b(?:chest|heart)\b.{{0,20}}\b(?:{_PAIN}|racing)\b",
    re.IGNORECASE,
)
_FAINT = re.compile(
    r"\b(?:i|i'm|im|am|feel|feeling|felt|got|almost|nearly)\b.{0,20}"
    r"\b(?:faint|fainted|fainting|dizzy|light[- ]?headed|passing out)\b"
    r"|(?:^\W*|\b(?:a bit|a little|slightly|very|really|so|quite|got|getting|went) )(?:dizzy|faint|light[- ]?headed)\b"
    r"|\bdizziness\b|\b(?:fainted|passed out|blacked out|collapsed)\b",
    re.IGNORECASE,
)
_BREATH = re.compile(
    r"\b(?:can'?t|cannot|can not|hard to|struggling to) (?:breathe|get (?:my|any) breath)\b", re.IGNORECASE
)
_NOT = re.compile(r"\b(?:no|not|never|without|any|(?:do|did|is|was|have)n'?t)\b", re.IGNORECASE)
_EXERCISE = re.compile(r"\bchest[ -](?:press|fly|day|height|supported|to[ -](?:bar|floor))\b", re.IGNORECASE)
# How far before a sign a "no" still belongs to it.
_NEAR = 25


Alarm = Literal["told", "asked", "other"]

_OTHER = (
    r"(?:somebody|someone|anyone|anybody|people|he|she|they|(?:a|my|our|your) (?:friend|mum|mom|mother|dad|father|wife"
    r"|husband|partner|son|daughter|kid|child|sister|brother|colleague|neighbou?r|buddy|client|athlete)s?)"
)
_OF_ANOTHER = re.compile(
    rf"\b{_OTHER}\b.{{0,20}}\b(?:faint(?:s|ed|ing)?|(?:pass|black)(?:es|ed|ing)? out|collapse[sd]?|dizzy|light-?headed"
    r"|chest (?:pains?|pressure|hurts?)|can'?t breathe)\b",
    re.IGNORECASE,
)
_OTHERS = re.compile(rf"\b{_OTHER}\b", re.IGNORECASE)
# `Should I` and `what do I do` ask for advice; every other word for oneself tells.
_ONESELF = re.compile(
    r"(?<!should )(?<!can )(?<!what do )(?<!could )\b(?:i|i'?m|i'?ve|im|me|my|mine|myself)\b", re.IGNORECASE
)
_QUESTION = re.compile(
    r"^\W*(?:(?:hi|hey|hello|so|and|ok|quick question|question|just curious|out of curiosity)\W+)*"
    r"(?:is|are|should|what|why|can|does|do|how|could|would|when|will)\b|\?\W*$",
    re.IGNORECASE,
)


def read_alarm(text: str) -> Alarm | None:
    """A stop sign that is told, is asked about with no word of whose it is, or is somebody else's; or None.

    `Why do I feel dizzy?` tells of it.
    """
    words = _EXERCISE.sub(" ", text[:1000].replace("\u2019", "'"))
    own = bool(_ONESELF.search(_OTHERS.sub(" ", words)))
    if _OF_ANOTHER.search(words) and not own:
        return "other"
    signs = (match for sign in (_CHEST, _FAINT, _BREATH) for match in sign.finditer(words))
    if all(_is_denied(words, sign) for sign in signs):
        return None
    return "asked" if _QUESTION.search(words) and not own else "told"


def _is_denied(words: str, sign: re.Match[str]) -> bool:
    before = words[max(0, sign.start() - _NEAR) : sign.end()]
    return bool(_NOT.search(re.split(r"[.!;\n]", before)[-1]))
