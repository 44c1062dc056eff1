"""Whether somebody who looks after their health has cleared them to train."""

import re

_DOCTOR = r"(?:doctor|doc|physician|cardiologist|gp|hospital)"
_MIDWIFE = rf"(?:{_DOCTOR}|midwife|obstetrician|gynaecologist|gynecologist|ob-?gyn|health visitor)"
_FINE = r"(?:all )?(?:fine|ok|okay|good|alright|clear)"


def _cleared_by(carer: str) -> re.Pattern[str]:
    return re.compile(
        r"\b(?:i(?:'m| am|'ve been| have been| was| got)? (?:now |all |medically )?cleared\b"
        rf"|cleared by (?:my |the |a )?{carer}\b|i (?:have|'ve got|got|was given) the all[ -]clear\b"
        rf"|{carer}\b.{{0,30}}\b(?:cleared me|all[ -]clear|green light"
        r"|(?:gave|given) me (?:the|an|their) (?:ok|okay|go-ahead)"
        r"|(?:says?|said|thinks) (?:that )?(?:i can|i may|i'm allowed to|i am allowed to) (?:train|exercise|work ?out)"
        rf"|(?:says?|said|thinks) (?:that )?(?:(?:it'?s|its|i'?m|i am|it is|everything'?s|everything is) )?{_FINE}\b))",
        re.IGNORECASE,
    )


_CLEARED = _cleared_by(_DOCTOR)
_CLEARED_TO_CARRY = _cleared_by(_MIDWIFE)
_NOT_YET = re.compile(
    r"\b(?:not|no|n't|hasn'?t|haven'?t|isn'?t|yet|until|when|if|once|before|unless|never)\b|\?", re.IGNORECASE
)


def says_cleared(text: str) -> bool:
    """`My doctor has cleared me`; not `until my doctor has cleared me`."""
    words = text.replace("\u2019", "'")
    return bool(_CLEARED.search(words)) and not _NOT_YET.search(words)


def says_cleared_to_carry(text: str) -> bool:
    """The same of whoever looks after a pregnancy or a birth: `my midwife says it's fine to train`."""
    words = text.replace("\u2019", "'")
    return bool(_CLEARED_TO_CARRY.search(words)) and not _NOT_YET.search(words)
