"""Words that mean: stop now. Read before anything else is made of a message.

The stop signs follow the list in ACSM's guidance (chest pain or pressure, unusual breathlessness, light-headed,
near-faint, confused; cold clammy skin); how people type them is common practice, no source.
"""

import re

_PAIN = r"(?:pains?|hurts?|hurting|aches?|aching|pressure|tight|tightness|stabbing)"
_CHEST = re.compile(
    rf"\b{_PAIN}\b.{{0,20}}\b(?:chest|heart)\b|\b(?:chest|heart)\b.{{0,20}}\b(?:{_PAIN}|racing)\b",
    re.IGNORECASE,
)
_FAINT = re.compile(
    r"\b(?:i|i'm|im|am|feel|feeling|felt|got|almost|nearly)\b.{0,20}"
    r"\b(?:faint|fainted|fainting|dizzy|light-?headed|passing out)\b"
    r"|\b(?:fainted|passed out|blacked out|collapsed)\b",
    re.IGNORECASE,
)
_BREATH = re.compile(
    r"\b(?:can'?t|cannot|can not|hard to|struggling to) (?:breathe|get (?:my|any) breath)\b", re.IGNORECASE
)
_NOT = re.compile(r"\b(?:no|not|never|without|any|(?:do|did|is|was|have)n'?t)\b", re.IGNORECASE)
_EXERCISE = re.compile(r"\bchest[ -](?:press|fly|day|height|supported|to[ -](?:bar|floor))\b", re.IGNORECASE)
# How far before a sign a "no" still belongs to it.
_NEAR = 25


def is_alarming(text: str) -> bool:
    """Whether somebody tells of a stop sign: `my chest hurts and I feel dizzy`; not `no chest pain`."""
    words = _EXERCISE.sub(" ", text[:1000])
    signs = (match for sign in (_CHEST, _FAINT, _BREATH) for match in sign.finditer(words))
    return any(not _is_denied(words, sign) for sign in signs)


def _is_denied(words: str, sign: re.Match[str]) -> bool:
    before = words[max(0, sign.start() - _NEAR) : sign.end()]
    return bool(_NOT.search(re.split(r"[.!;\n]", before)[-1]))
