"""A yes or a no, however it is typed; and whether somebody is of age."""

import re

_YES = re.compile(
    r"^\W*(?:(?:yes|y|yep|yeah|yea|yup|sure|ok|okay|of course)\b|(?:i do|i am|i have|correct|right|agreed?)\W*$)",
    re.IGNORECASE,
)
_NO = re.compile(
    r"^\W*(?:no|n|nope|nah|never|not|none|i don'?t|i haven'?t|i am not|i'm not)\b", re.IGNORECASE
)
_BUT = re.compile(
    r"\b(?:but|except|although|though|sometimes|maybe|not sure|don'?t know|no idea|no clue|dunno)\b|\?",
    re.IGNORECASE,
)

_IT_IS_SO = frozenset(
    {"yes", "y", "yes please", "yep", "yeah", "right", "correct", "ok", "really", "yes really", "yes, really"}
    | {"it is", "it was", "it's right", "it is right", "that's right", "true", "it's true", "sure"}
    | {"yes i did", "i did"}
)

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
_OF_AGE, _OLDEST = 18, 120
# `I'm 16 reps in` and `I'm 12 kg lighter` are no ages: behind the number stands the end, or what goes on about oneself.
_MINOR = re.compile(
    r"\b(?:i'?m|i am|bin|tengo)\s+(?:(?:only|just|still|actually|a|erst|nur|solo)\s+)*"
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
_BY_MISTAKE = re.compile(
    r"\b(?:(?:pressed|tapped|hit|clicked|chose) (?:the )?wrong|wrong (?:button|one|answer)|by (?:mistake|accident)|"
    r"(?:was|made) a mistake|i meant|typo|misclick\w*|mis-?tapped)\b",
    re.IGNORECASE,
)

_ONLY_ASKING = re.compile(
    r"\b(?:(?:just|only) (?:asking|asked|wondering|curious|a question|a general question|generally)"
    r"|(?:was|it'?s|that'?s) (?:just|only) (?:a|my) (?:\w+ )?question|(?:asking|asked)"
    r" (?:in general|generally|for (?:a|my))"
    r"|(?:wasn'?t|isn'?t|not) (?:about |for )?(?:me|myself)\b|misunderst(?:ood|anding)|got me wrong"
    r"|(?:i'?m|i am|i feel) (?:perfectly |all )?fine|didn'?t mean (?:that|me|it)|just curious)",
    re.IGNORECASE,
)
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


def says_it_is_so(text: str) -> bool:
    """A yes and nothing more, to `really?` and `did you mean ...?`."""
    return text.strip(" .!").lower().replace("\u2019", "'") in _IT_IS_SO


_CALLED_OFF = frozenset(
    {"no", "nope", "nah", "no thanks", "cancel", "stop", "leave it", "forget it", "never mind", "nevermind"}
    | {
        "cancel that",
        "stop it",
        "nothing",
        "none",
        "no score",
        "not mine",
        "skip",
        "not now",
        "don't",
        "no, cancel",
    }
)


def calls_it_off(text: str) -> bool:
    """`No`, `cancel`, `stop`, and nothing more: what was asked about shall not be."""
    return text.strip(" .!").lower().replace("\u2019", "'") in _CALLED_OFF


def says_only_asking(text: str) -> bool:
    """`I was only asking`, `that wasn't about me`."""
    return bool(_ONLY_ASKING.search(text.replace("\u2019", "'")))


def says_cleared(text: str) -> bool:
    """`My doctor has cleared me`; not `until my doctor has cleared me`."""
    words = text.replace("\u2019", "'")
    return bool(_CLEARED.search(words)) and not _NOT_YET.search(words)


def says_cleared_to_carry(text: str) -> bool:
    """The same of whoever looks after a pregnancy or a birth: `my midwife says it's fine to train`."""
    words = text.replace("\u2019", "'")
    return bool(_CLEARED_TO_CARRY.search(words)) and not _NOT_YET.search(words)


def read_age(text: str) -> bool | None:
    """Whether somebody who tells nothing but their age is of age; None where it is no age."""
    told = _AGE.match(text)
    if told is None or not 0 < int(told["years"]) <= _OLDEST:
        return None
    return int(told["years"]) >= _OF_AGE


def age_told(text: str) -> bool | None:
    """Whether somebody who tells their age, or that they are an adult, is of age; None where neither is told."""
    words = text.replace("\u2019", "'")
    alone, amid = read_age(text), _AGE_AMID.search(words)
    if alone is None and amid is None and _ADULT.search(words):
        return True
    if alone is not None or amid is None:
        return alone
    years = int(amid["years"] or amid["old"])
    return years >= _OF_AGE if 0 < years <= _OLDEST else None


def tells_of_a_minor(text: str) -> bool:
    """`I'm 16 but strong`, `im a 15 year old`, `I'm not 18 yet`: of the speaker, wherever it stands."""
    return bool(_MINOR.search(text.replace("\u2019", "'")))


def says_by_mistake(text: str) -> bool:
    """`I pressed wrong`, `that was a mistake`."""
    return bool(_BY_MISTAKE.search(text))


_WRONGLY = re.compile(
    r"\b(?:answer(?:ed)?|tap(?:ped)?|press(?:ed)?|click(?:ed)?|got|put)\b.{0,30}"
    r"\b(?:wrong(?:ly)?|by mistake|by accident|incorrectly)\b"
    r"|\bwrong (?:answer|button|one)\b.{0,40}\b(?:safety|health|questions?|screening)\b"
    r"|\b(?:redo|repeat|change|again)\b.{0,30}\b(?:safety|health|screening) (?:questions?|answers?)\b",
    re.IGNORECASE,
)


def says_answered_wrongly(text: str) -> bool:
    """`I answered the last one wrong`, `redo the safety questions`."""
    return bool(_WRONGLY.search(text[:300]))


def is_in_doubt(text: str) -> bool:
    """`Yes, sometimes`, `no but ...`, or a question: neither a yes nor a no."""
    return bool(_BUT.search(text))


def read_yes_no(text: str) -> bool | None:
    """True or False where the words are clear; None for anything else, doubts included."""
    if is_in_doubt(text):
        return None
    if _NO.match(text):
        return False
    return True if _YES.match(text) else None
