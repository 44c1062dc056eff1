"""What a coach asks about one athlete's version: `why did Bo get kneeling push-ups`, `is the load right for Cal?`."""

import re
from collections.abc import Iterable
from typing import Final, Literal, NamedTuple

from core.notation.people import find_name

Question = Literal["why", "load", "more"]

_BEFORE: Final = r"^\W*(?:(?:and|but|so|ok|hey|hi|pls|please|btw)\W+)*"
_WHY: Final = re.compile(rf"{_BEFORE}(?:why|how come|what(?:'?s| is) the reason)\b", re.IGNORECASE)
_IS_IT: Final = re.compile(
    rf"{_BEFORE}(?:is|isn'?t|are|aren'?t|will|would|does|(?:do )?you think|think)\b", re.IGNORECASE
)
_HOW_HEAVY: Final = re.compile(
    rf"{_BEFORE}(?:how (?:heavy|light)|(?:what|which|how much) (?:weights?|loads?|kgs?|kilos?))\b",
    re.IGNORECASE,
)
_DONE: Final = re.compile(r"\bdid\b", re.IGNORECASE)
_MORE: Final = re.compile(
    r"\bready (?:for|to)\b|\b(?:getting|got) (?:any )?(?:better|stronger|fitter|faster)\b", re.IGNORECASE
)
_LOAD: Final = re.compile(
    r"\b(?:loads?|weights?|kgs?|kilos?|lbs?|heavy|light|[0-9]+\s?(?:kg|lb)s?)\b", re.IGNORECASE
)
# What somebody gets or does.
_GETS: Final = frozenset(
    re.split(
        " ",
        "get gets got getting given gave give do does doing has have had version written this that it lighter easier"
        " heavier only no not instead so easy hard light heavy little much few less",
    )
)
_AND_WHY: Final = re.compile(r"\band why\W*$", re.IGNORECASE)
# Whether they came, or told a score, is another matter.
_OTHER: Final = re.compile(
    r"\b(?:report|scor|board|show|class|sign|answer|repl|quiet|absent|missing|stop)\w*", re.IGNORECASE
)


class AskedOf(NamedTuple):
    """`name`: of whom; None of whoever was looked at last."""

    name: str | None
    question: Question


def asked_of_version(text: str, names: Iterable[str]) -> AskedOf | None:
    """None where it asks nothing of what somebody does, or is about what they told or whether they came."""
    if "\n" in text.strip() or _OTHER.search(text):
        return None
    found = find_name(text, names)
    name = found.name if found else None
    rest = found.rest if found else text
    if (_WHY.match(rest) or _AND_WHY.search(rest)) and not _GETS.isdisjoint(
        re.findall(r"\w+", rest.casefold())
    ):
        return AskedOf(name, "why")
    if name and _IS_IT.match(rest) and _MORE.search(rest):
        return AskedOf(name, "more")
    if _HOW_HEAVY.match(rest) and not _DONE.search(rest):
        return AskedOf(name, "load")
    return AskedOf(name, "load") if _IS_IT.match(rest) and _LOAD.search(rest) else None
