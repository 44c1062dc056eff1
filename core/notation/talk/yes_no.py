"""A yes or a no, however it is typed, and what takes an answer back: a slip of the tap, `only asking`."""

import re

_YES = re.compile(
    r"^\W*(?:(?:yes|y|yep|yeah|yea|yup|sure|ok|okay|of course)\b|(?:i do|i am|i have|correct|right|agreed?)\W*$)",
    re.IGNORECASE,
)
_NO = re.compile(
    r"^\W*(?:no|n|nope|nah|never|not|none|i don'?t|i haven'?t|i am not|i'm not)\b", re.IGNORECASE
)
_BUT = re.compile(
    r"\b(?:but|except|apart|only|just (?:an?|my|the)|although|though"
    r"|sometimes|maybe|not sure|don'?t know|no idea|no clue|dunno)\b|\?",
    re.IGNORECASE,
)

_IT_IS_SO = frozenset(
    {"yes", "y", "yes please", "yep", "yeah", "right", "correct", "ok", "really", "yes really", "yes, really"}
    | {"it is", "it was", "it's right", "it is right", "that's right", "true", "it's true", "sure"}
    | {"yes i did", "i did"}
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
