"""Scores told in company: `did it with Bo, he got 3+2, me 6+20`. What somebody else reached is theirs."""

import re
from collections.abc import Sequence
from typing import Final, NamedTuple

from core.notation.talk.chat import is_like_a_score
from core.notation.text import plain

_CLAUSE: Final = re.compile(r"[,;.!?\n]+\s+|\s+(?:and|but|while)\s+", re.IGNORECASE)
_KIN: Final = (
    r"(?:(?:big|little|older|younger|best|old) )*(?:sister|brother|wife|husband|partner|mate|friend|mum|mom|mother|dad"
    r"|father|son|daughter|kid|dog|cat|baby|coach|teammate|gran\w*|girlfriend|boyfriend|buddy|flatmate|neighbou?r|colleague|cousin)s?"
)
_REACHED: Final = (
    r"(?:(?:only|just|even|also|then) )*(?:got|did|had|made|scored|finished|managed|reached|hit)"
)
_ME: Final = re.compile(
    r"^\W*(?:(?:and|but) )?(?:me|mine|myself|i)\b(?: (?:was|is|got|did|had|made|managed))?\W*", re.IGNORECASE
)


class InCompany(NamedTuple):
    """`own`: what the speaker tells of themselves, "" where nothing; `others`: what is told of somebody else."""

    own: str
    others: str


def in_company(text: str, names: Sequence[str] = ()) -> InCompany | None:
    """None where nobody else's score is told."""
    people = "|".join(
        [r"he|she|they", rf"(?:my|our|the) {_KIN}", *(re.escape(one.casefold()) for one in names)]
    )
    of_another = re.compile(
        rf"^\W*(?:(?:and|but|where) )?(?:{people})(?:,? {_REACHED}|:| -)? (?P<score>.*[0-9].*)$"
    )
    own: list[str] = []
    others: list[str] = []
    for clause in _CLAUSE.split(text.strip()):
        found = of_another.match(plain(clause).casefold())
        (others if found and is_like_a_score(found["score"]) else own).append(clause)
    if not others:
        return None
    told = [_ME.sub("", one) for one in own if re.search("[0-9]", one)]
    return InCompany(", ".join(told), ", ".join(others))
