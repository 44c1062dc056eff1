"""A coach asks what they have ordered that still stands: `what have I ordered for Cal`, `who is away?`."""

import re
from collections.abc import Iterable
from typing import Final, NamedTuple

from core.notation.people import find_name

_BEFORE: Final = r"^\W*(?:(?:and|so|ok|hey|hi|pls|please|btw|show me|list|tell me)\W+)*"
_FOR: Final = r"(?:\s+(?:for|of|about|on|with)\s+(?:@|everybody|everyone|all|them all|the group))?"
_ORDERED: Final = re.compile(
    rf"{_BEFORE}(?:(?:what|which(?: ones?)?|anything)"
    r"\s+(?:have i|did i|i have|i've|do i have|was|is|orders?|stands?|still)\b"
    rf".{{0,20}}?(?:ordered|orders?|stands?|decided|changed|set|in force)\b.{{0,15}}?{_FOR}"
    rf"|(?:what|which)\s+stands?{_FOR}|(?:all )?(?:my|the)\s+(?:standing )?orders{_FOR}|standing orders{_FOR})\W*$",
    re.IGNORECASE,
)
_AWAY: Final = re.compile(
    rf"{_BEFORE}who(?:'?s|\s+is|\s+are|\s+all\s+is)?\s+(?:still\s+|all\s+)?"
    r"(?:away|left out|on holidays?|on vacation|off)"
    r"(?:\s+(?:now|today|this week|at the moment|again))?\W*$",
    re.IGNORECASE,
)


_HELD: Final = re.compile(
    rf"{_BEFORE}(?:who(?:'?s|\s+is|\s+are|\s+all\s+is)?\s+(?:still\s+|all\s+)?"
    r"(?:held|on hold|being held|waiting for my ok)"
    r"|who(?:m)?\s+(?:do|am|did|have)\s+i\s+(?:still\s+)?(?:hold|holding|held|on hold))"
    r"(?:\s+(?:back|now|today|this week|at the moment|again))?\W*$",
    re.IGNORECASE,
)


class AsksInForce(NamedTuple):
    """`name`: of whom, None of everybody; `away`: only who is left out; `held`: whose versions wait for an OK."""

    name: str | None
    away: bool
    held: bool = False


def asks_what_stands(text: str, names: Iterable[str]) -> AsksInForce | None:
    """None where it asks something else."""
    if "\n" in text.strip():
        return None
    words = text.replace("\u2019", "'")
    if _AWAY.match(words):
        return AsksInForce(None, away=True)
    if _HELD.match(words):
        return AsksInForce(None, away=False, held=True)
    found = find_name(words, names)
    return (
        AsksInForce(found.name if found else None, away=False)
        if _ORDERED.match(found.rest if found else words)
        else None
    )
