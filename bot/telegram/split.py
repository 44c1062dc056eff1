"""Cut a long HTML text into messages that the platform takes."""

import html
import re

from telegram.constants import MessageLimit

from bot.words.text import escape

_TAG = re.compile(r"<[^>]*>")


def split(text: str, limit: int = MessageLimit.MAX_TEXT_LENGTH) -> list[str]:
    """Parts of at most `limit` characters, cut between lines. Our markup never spans a line that is cut."""
    parts: list[str] = []
    for line in text.split("\n"):
        for piece in _fitting(line, limit):
            if parts and _length(parts[-1]) + 1 + _length(piece) <= limit:
                parts[-1] += f"\n{piece}"
            else:
                parts.append(piece)
    return [part for part in parts if part.strip()]


def shorten(text: str, limit: int = MessageLimit.MAX_TEXT_LENGTH) -> str:
    """The first part that fits, marked where something is left out: an edit can't become two messages."""
    if _length(text) <= limit:
        return text
    return split(text, limit - 2)[0] + "\n…"


def _fitting(line: str, limit: int) -> list[str]:
    if _length(line) <= limit:
        return [line]
    plain = html.unescape(_TAG.sub("", line))
    step = limit // 10  # escaping makes a character up to five long, UTF-16 two
    return [escape(plain[start : start + step]) for start in range(0, len(plain), step)]


def _length(text: str) -> int:
    """Length as the platform counts, in UTF-16 units; markup counted too, so never too low."""
    return len(text.encode("utf-16-le")) // 2
