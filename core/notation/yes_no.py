"""A yes or a no, however it is typed; and whether somebody is of age."""

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

_AGE = re.compile(
    r"^\W*(?:yes\W+|no\W+|sorry\W+)*(?:i'?m|i am|im|age)?\W*(?P<years>[0-9]{1,3})(?: years?(?: old)?| yo)?\W*$",
    re.IGNORECASE,
)
_OF_AGE, _OLDEST = 18, 120
_BY_MISTAKE = re.compile(
    r"\b(?:(?:pressed|tapped|hit|clicked|chose) (?:the )?wrong|wrong (?:button|one|answer)|by (?:mistake|accident)|"
    r"(?:was|made) a mistake|misclick\w*|mis-?tapped|(?:i'?m|i am) (?:an adult|of age|over 18|18 or older))\b",
    re.IGNORECASE,
)


def read_age(text: str) -> bool | None:
    """Whether somebody who tells nothing but their age is of age; None where it is no age."""
    told = _AGE.match(text)
    if told is None or not 0 < int(told["years"]) <= _OLDEST:
        return None
    return int(told["years"]) >= _OF_AGE


def says_by_mistake(text: str) -> bool:
    """`I pressed wrong`, `that was a mistake`, `I'm an adult`."""
    return bool(_BY_MISTAKE.search(text))


def read_yes_no(text: str) -> bool | None:
    """True or False where the words are clear; None for anything else, doubts included."""
    if _BUT.search(text):
        return None
    if _NO.match(text):
        return False
    return True if _YES.match(text) else None
