"""A yes or a no, however it is typed."""

import re

_YES = re.compile(
    r"^\W*(?:yes|y|yep|yeah|yea|yup|sure|ok|okay|of course|i do|i am|i have|correct|right|agreed?)\b",
    re.IGNORECASE,
)
_NO = re.compile(
    r"^\W*(?:no|n|nope|nah|never|not|none|i don'?t|i haven'?t|i am not|i'm not)\b", re.IGNORECASE
)
_BUT = re.compile(
    r"\b(?:but|except|although|though|sometimes|maybe|not sure|don'?t know)\b|\?", re.IGNORECASE
)


def read_yes_no(text: str) -> bool | None:
    """True or False where the words are clear; None for anything else, doubts included."""
    if _BUT.search(text):
        return None
    if _NO.match(text):
        return False
    return True if _YES.match(text) else None
