"""Words of other languages on a board, made English before it is read: `4 rondas`, `10 Kniebeugen pro Seite`.

A language is a file: `movements` and `words` -> the English in their place.
"""

import re
import tomllib
from functools import cache
from pathlib import Path

from core.notation.text import Row, replaced

_FOLDER = Path(__file__).parent


def in_english(row: Row) -> Row:
    """The row with the words of other languages in English, every character at its typed column."""
    known = _known()
    return replaced(row, _pattern(), lambda match: known[match[0].lower()])


@cache
def _known() -> dict[str, str]:
    found: dict[str, str] = {}
    for path in sorted(_FOLDER.glob("*.toml")):
        for words in tomllib.loads(path.read_text(encoding="utf-8")).values():
            found |= words
    return found


@cache
def _pattern() -> re.Pattern[str]:
    longest_first = sorted(_known(), key=len, reverse=True)
    return re.compile(rf"(?<![\w\-])(?:{'|'.join(map(re.escape, longest_first))})(?![\w\-])", re.IGNORECASE)
