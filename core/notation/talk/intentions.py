"""What a coach asks how to do: `how do I change a session I already posted` is about changing one."""

import re
import tomllib
from collections import Counter
from collections.abc import Container, Mapping
from functools import cache
from pathlib import Path
from typing import Any, Final, Literal, cast, get_args

from core.notation.text import plain

Intention = Literal[
    "change", "halves", "old", "pregnant", "young", "join", "score", "post", "habit", "class", "announce", "word",
    "outside", "line", "easy", "hurt", "away", "look", "trained", "withdraw", "remove", "hold", "units", "write",
]  # fmt: skip
_LONGEST: Final = 140
_ASKS_HOW: Final = re.compile(
    r"^\W*(?:(?:hi|hey|hello|so|ok|okay|um|and|but|wait|sorry|pls|please)\W+)*"
    r"(?:how (?:do|can|could|would|should|might) (?:i|we|you|u)\b|how to\b|(?:is|are) there (?:a|any) way"
    r"|what (?:can|do|could) (?:you|u) do\b|what (?:do|should|can) (?:i|we) do (?:about|with|for|if|when)\b"
    r"|what about\b"
    r"|what happens (?:if|when|with|to)\b|what if i have\b|.{3,60}[,?] how (?:do|can) (?:i|we)\b"
    r"|can (?:you|u) (?:handle|deal|cope|work)\b|do (?:you|u) (?:do|work|handle|support)\b"
    r"|help(?: me)?(?: with)?\s+\w)",
    re.IGNORECASE,
)
_ENDINGS: Final = re.compile(r"(?:e?s|ed|ing|e)$")
# So much of what was asked has to be of one intention, words that few share counting most (estimate).
_ENOUGH: Final = 0.5
_AT_MOST: Final = 2


@cache
def _table() -> Mapping[str, Any]:
    table = tomllib.loads(Path(__file__).with_suffix(".toml").read_text(encoding="utf-8"))
    words = {intention: frozenset(map(_bare, said)) for intention, said in table["coach"].items()}
    shared = Counter(word for said in words.values() for word in said)
    return {"words": words, "shared": shared, "beside": frozenset(table["words"]["beside"])}


def asks_how(text: str) -> bool:
    """Whether words ask how something is done, or what can be done for somebody; `can you make it 5` orders it."""
    return len(text) <= _LONGEST and "\n" not in text.strip() and bool(_ASKS_HOW.match(plain(text)))


_OF_SOMEBODY: Final = re.compile(
    r"\?\W*$|\b(?:can|should|is|could|may) (?:he|she|they|@)\b|^(?:is|can|should|could|may) @", re.IGNORECASE
)
_GONE: Final = re.compile(
    r"@ (?:is |has |'s )?(?:gone|left|quit)\b(?!.{0,30}\bweek)|\btake (?:him|her|them) out of (?:it|the group)\b",
    re.IGNORECASE,
)
# `Is @ old enough, she's only 14`: an age, and neither a score nor a load.
_CHILDS_AGE: Final = re.compile(
    r"\b(?:is|only|just|turns|aged?) (?:[5-9]|1[0-7])\b(?![+:.,]?[0-9]|\s?[+x/%])"
    r"(?!\s(?:kg|lb|rounds?|reps?|min(?:ute)?s?|sec(?:ond)?s?|weeks?|months?|days?|times|sets?)\b)",
    re.IGNORECASE,
)
# `In her 5th month`, `at 5 months`, `6 months gone`, and an age that is told of somebody.
_MONTH_OF_ONE: Final = re.compile(
    r"\b(?:[1-9](?:st|nd|rd|th)|first|second|third|fourth|fifth|sixth|seventh|eighth|ninth) month\b"
    r"|\bat [1-9] months\b|\b[1-9] months? (?:along|gone|in\b)",
    re.IGNORECASE,
)
_OLD_AGE: Final = re.compile(
    r"(?:\b|(?='))(?:(?:over|is|'s|past|turned|aged?) (?:[5-9][0-9])\b(?![+:.,]?[0-9]|\s?[+x/%a-z]))",
    re.IGNORECASE,
)
# Of somebody who is named these tell neither a body nor an age: `is the hold over for Cal?`, `Bo under 12?`.
_ALONE_NOTHING: Final = re.compile(r"[0-9]+|\b(?:over|under|expect(?:s|ed|ing)?)\b", re.IGNORECASE)
# What only somebody's own word, or the coach's, settles.
_OF_BODIES: Final = frozenset({"old", "pregnant", "young", "hurt"})


def wondered_of(text: str, named: str) -> tuple[Intention, ...]:
    """What is wondered about somebody's body or age, or that they left. `named`: the words with `@` for the name."""
    if len(text) > _LONGEST or "\n" in text.strip():
        return ()
    if _GONE.search(named):
        return ("remove",)
    if _CHILDS_AGE.search(named) and _OF_SOMEBODY.search(named):
        return ("young",)
    if not _OF_SOMEBODY.search(named):
        return ()
    told = _OLD_AGE.sub(" old", _MONTH_OF_ONE.sub("trimester", plain(text)))
    return intentions_in(_ALONE_NOTHING.sub("", told), _OF_BODIES)


def intentions_in(text: str, among: Container[str] | None = None) -> tuple[Intention, ...]:
    """What is most likely wanted (`among` these, where told), the two that are as likely, or nothing."""
    folded = plain(text).casefold().replace("\u2019", "'").replace("'", "")
    said = {_bare(word) for word in re.findall(r"\w+", folded) if word not in _table()["beside"]}
    shared = _table()["shared"]
    weights = {
        intention: sum(1 / shared[word] for word in said & words)
        for intention, words in _table()["words"].items()
        if among is None or intention in among
    }
    most = max(weights.values())
    found = [cast("Intention", one) for one, weight in weights.items() if weight == most]
    return tuple(found) if most >= _ENOUGH and len(found) <= _AT_MOST else ()


def _bare(word: str) -> str:
    return _ENDINGS.sub("", word) if len(word) > 3 else word  # noqa: PLR2004 - `his`, `get`


INTENTIONS: Final = get_args(Intention)
