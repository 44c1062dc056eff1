"""Whose else a thing is: `an adjustable dumbbell that I share with Bo`, `Bo and I share it`, `we share it`."""

import re
from typing import Final, NamedTuple

# Stands in a text for whose else a thing is; a letter tells which partner.
PARTNER: Final = "ispartnered"
SHARED: Final = re.compile(rf"{PARTNER}(?P<which>[a-z])")

_NAME: Final = r"(?P<n>(?:my |our |the )?[^\W\d_][\w'-]*)"
# In front of a thing, and behind it; what is told with it in one stretch is shared.
_BEFORE: Final = re.compile(
    rf"\b{_NAME} and (?:i|me) (?:both )?(?:share|use)\b|\b(?:i|we) share\b", re.IGNORECASE
)
_BEHIND: Final = re.compile(
    r",? ?\(?(?:that |which )?(?:(?:i|we)(?:'re|'m| am| are)? )?(?:share|shared|sharing)(?: it)?"
    rf"(?:,? (?:together )?with {_NAME}\)?|\s?\)?(?=\s*(?:[,;.\n]|$)))"
    rf"|,? the (?:same )?one (?:that )?{_NAME.replace('n>', 'o>')} (?:has|owns|uses)\b"
    rf"|,? (?:together|in common) with {_NAME.replace('n>', 't>')}",
    re.IGNORECASE,
)
_THING_BETWEEN: Final = re.compile(
    rf"\bshare (?!(?:it|them|that) )(?P<thing>[^,;\n]+?) with {_NAME}", re.IGNORECASE
)
NOBODY_NAMED: Final = ""


class Marked(NamedTuple):
    """The text with a mark in the stretch of each shared thing, and the partners by their marks."""

    text: str
    partners: tuple[str, ...]


def mark_shared(text: str) -> Marked:
    """Put a mark of letters in place of words of sharing."""
    partners: list[str] = []

    def mark(match: re.Match[str]) -> str:
        named = next((name for name in match.groups() if name), NOBODY_NAMED)
        partners.append(_called(named))
        return f" {PARTNER}{chr(ord('a') + len(partners) - 1)} "

    told = _THING_BETWEEN.sub(r"\g<thing> shared with \g<n>", text)
    told = _BEFORE.sub(mark, _BEHIND.sub(mark, told))
    return Marked(told, tuple(partners))


def _called(name: str) -> str:
    """As one says it back: `my wife` is your wife."""
    mine = re.match(r"(?:my|our) ", name, re.IGNORECASE)
    return f"your {name[mine.end() :]}" if mine else name[:1].upper() + name[1:]
