"""Whether somebody tells their age, and is of age."""

import re

_AGE = re.compile(
    r"^\W*(?:yes\W+|no\W+|sorry\W+)*(?:i'?m|i am|im|age)?\W*(?P<years>[0-9]{1,3})(?: years?(?: old)?| yo)?\W*$",
    re.IGNORECASE,
)
# Amid a sentence it is told of oneself, and counts nothing else: not `I'm 80 kg`.
_AGE_AMID = re.compile(
    r"\b(?:i'?m|i am|im|aged?|turn(?:ed)?)\s+(?:(?:already|now|only|just) )*(?P<years>[0-9]{1,3})"
    r"(?:\s+(?:years?|yrs?|yo)\b|(?=\s*(?:$|[,.;!)](?!\d)|(?:and|but|so|now|already|this|next|haven'?t|never|old)\b)))"
    r"|\b(?P<old>[0-9]{1,3})[- ]?(?:(?:years?|yrs?)[- ]old|years? of age)\b",
    re.IGNORECASE,
)
# Where it was asked for, anything but what counts something may stand behind it: `im 73 pet`, `im 14 my mam is in it`.
_AGE_ASKED = re.compile(
    r"\b(?:i'?m|i am|im|aged?|turn(?:ed)?)\s+(?:(?:already|now|only|just|nearly|almost|still) )*(?P<years>[0-9]{1,3})\b"
    r"(?!\s*(?:[.:/+%]\d|kgs?\b|kilos?\b|lbs?\b|pounds?\b|stones?\b|st\b|cm\b|weeks?\b|wks?\b|months?\b|days?\b|reps?\b"
    r"|rounds?\b|min|sec|hours?\b|in\b|into\b|down\b|short\b|%))",
    re.IGNORECASE,
)
# The number alone, before all else that is told: `45, and I have asthma`.
_AGE_FIRST = re.compile(
    r"^\W*(?:yes\W+)?(?P<years>[0-9]{1,3})(?: years?(?: old)?| yo)?(?=\s*[,.;!](?!\d)|\s+(?:and|but)\b)",
    re.IGNORECASE,
)
_OF_AGE, _OLDEST = 18, 120
# `I'm 16 reps in` and `I'm 12 kg lighter` are no ages: behind the number stands the end, or what goes on about oneself.
_MINOR = re.compile(
    r"\b(?:i'?m|im|i am|bin|tengo)\s+(?:(?:only|just|still|actually|a|erst|nur|solo)\s+)*"
    r"(?:(?:[89]|1[0-7])(?:[- ]?(?:years?(?:[- ]old)?|yrs?(?: old)?|y\.?o\.?|jahre(?: alt)?|años)\b"
    r"|(?=\s*(?:$|[,.;!?)](?!\d)|(?:and|but|so|ok|okay|btw|tho|though|if|is|can|und|aber|y|pero)\b)))"
    r"|under ?age\b|a minor\b|minderjährig\b|menor de edad\b|(?:under|below|not(?: yet)?) (?:18|eighteen)\b)",
    re.IGNORECASE,
)
_ADULT = re.compile(
    r"\b(?:i'?m|i am|im|yes)\s+(?:(?:an?|already|definitely|well|of course|clearly|obviously) )*"
    r"(?:adult|grown[- ]?up|of age|over (?:18|eighteen)|18 or older|older than 18)\b",
    re.IGNORECASE,
)


def read_age(text: str) -> bool | None:
    """Whether somebody who tells nothing but their age is of age; None where it is no age."""
    told = _AGE.match(text)
    if told is None or not 0 < int(told["years"]) <= _OLDEST:
        return None
    return int(told["years"]) >= _OF_AGE


def age_told(text: str, *, asked: bool = False) -> bool | None:
    """Whether somebody who tells their age, or that they are an adult, is of age; None where neither is told.

    `asked`: it was asked for, so that whatever may be an age is one.
    """
    words = text.replace("\u2019", "'")
    alone, amid = read_age(text), _AGE_AMID.search(words)
    loosely = _AGE_ASKED.search(words) or _AGE_FIRST.match(words) if asked and amid is None else None
    if alone is None and amid is None and loosely is None and _ADULT.search(words):
        return True
    if alone is not None or (amid is None and loosely is None):
        return alone
    years = int(loosely["years"] if loosely else (amid and (amid["years"] or amid["old"])) or 0)
    return years >= _OF_AGE if 0 < years <= _OLDEST else None


def tells_of_a_minor(text: str) -> bool:
    """`I'm 16 but strong`, `im a 15 year old`, `I'm not 18 yet`: of the speaker, wherever it stands."""
    return bool(_MINOR.search(text.replace("\u2019", "'")))


_PLAIN_NO = re.compile(
    r"^\W*(?:(?:no|nope|nah|not?|not yet|yet|i'?m|i am|im|under|below|over|older|sorry|really|afraid|quite"
    r"|18|eighteen|an?|adult|still|only|just|minor|thanks|thank|you|ok|or)\b\W*)+$",
    re.IGNORECASE,
)


def is_plainly_no(text: str) -> bool:
    """A no to one's age with nothing else behind it; `no just a dicky hip` answers something else."""
    return bool(_PLAIN_NO.match(text.replace("\u2019", "'")))
