"""What a coach takes back while typing: `8 wall push-ups... no, chair leans`, `towel pull-ups? lol no`.

Only words for a slip of one's own behind dots, a dash or a question mark take something back: `3 attempts, no
more` doesn't.
"""

import re
from typing import Final

from core.notation.boards.unread import Stretch
from core.notation.text import Row, blanked

_HUMS: Final = r"(?:(?:hmm*|er+m?|oh|lol|haha|ah|argh|eh|wait|ok)[\s,.]{1,4}){0,2}"
_MOST_REPAIRS: Final = 8
# Behind the first, words up to the next mark say why; behind the second comes what is meant.
_TAKES_BACK: Final = re.compile(
    r"\s{0,2}(?:\.{2,4}|\?|(?<=\w)\s?-|-(?=\s)"
    r"|,(?=\s?(?:scratch|sorry|i mean|make that|joking|kidding|or rather)\b))\)?\s{0,2}"
    rf"{_HUMS}"
    r"(?:(?P<why>(?:no,? )?(?:scrap|leave|skip|scratch|forget|drop|ignore) (?:that|it|those)\b"
    r"|no(?:pe)?\b|(?:->\s?)?crossed out\b|(?:just )?(?:joking|kidding)\b"
    r"|(?:(?:i|we) )?(?:don'?t|dont|do not) have (?:one|any|it|that|them)\b)"
    r"|(?P<next>sorry\b|i mean(?:t)?\b|make (?:that|it)\b|or rather\b|actually\b))",
    re.IGNORECASE,
)
_BEHIND_NO: Final = re.compile(
    r"\s(?:(?P<somebody>i|we|you|they|not|that|this|it|lol)\b|(?P<word>[^\W\d_]+))", re.IGNORECASE
)
_NEXT_MARK: Final = re.compile(r"[.,;:!?](?=\s|$)|\s-\s")
# What is taken back begins behind these, or behind the number of a list.
_BEGINS: Final = re.compile(
    r"(?:[.,;:!?]\s|\s[&+/|-]\s|^[\s*\-]*(?:[a-z]?[1-9]?[).:]|[a-z][1-9])\s)+", re.IGNORECASE
)
_AMOUNT: Final = re.compile(
    r"\s*[0-9]{1,4}(?:\s?[x\-/]\s?[0-9]{1,4})?(?:\s?(?:k?m|s|secs?|min|cals?)\b)?\s", re.IGNORECASE
)
_FIRST_WORDS: Final = re.compile(r"\W*([0-9]{1,4}\s?\w*\s\w+)")


def mended(row: Row) -> tuple[Row, list[Stretch]]:
    """The row without what was taken back in it, and where that stood."""
    stretches: list[Stretch] = []
    for _ in range(_MOST_REPAIRS):
        match = next((one for one in _TAKES_BACK.finditer(row.text) if _is_meant(row.text, one)), None)
        if match is None:
            break
        start, end = _taken_back(row.text, match)
        row = blanked(row, start, end)
        stretches = [one for one in stretches if one.start < start or one.end > end]
        stretches.append(Stretch(start, end, looks_like="note"))
    return row, stretches


def _is_meant(text: str, match: re.Match[str]) -> bool:
    """Whether something is taken back: `3 rounds... no rest` only says what there isn't."""
    said = (match["why"] or "").lower()
    if not said.startswith("no"):
        return True
    behind = _BEHIND_NO.match(text, match.end())
    asked = match[0].lstrip().startswith("?")
    dots = match[0].lstrip().startswith("..")
    if behind is None:
        return asked or dots
    again = re.search(rf"\b{behind['word']}", text[: match.start()], re.IGNORECASE)
    return asked or (dots and bool(behind["somebody"] or again))


def _taken_back(text: str, match: re.Match[str]) -> tuple[int, int]:
    """The stretch that doesn't count: what is taken back, but for an amount that goes on, and the words for it."""
    goes_on = match.end() if match["next"] else _end_of_reason(text, match.end())
    start = _start(text, match.start(), text[goes_on:])
    amount = _AMOUNT.match(text, start, match.start())
    follows = re.search(r"[^\W_]", text[goes_on:])
    if amount and follows and not follows[0].isdigit() and _says_more(text[goes_on:]):
        start = amount.end()
    return start, goes_on


def _end_of_reason(text: str, start: int) -> int:
    mark = _NEXT_MARK.search(text, start)
    return mark.end() if mark else len(text)


def _start(text: str, end: int, after: str) -> int:
    """Where what is taken back begins: where it was said as it is said anew, or else behind the last mark."""
    again = _FIRST_WORDS.match(after)
    said = text.lower().rfind(again[1].lower(), 0, end) if again else -1
    if said >= 0:
        return said
    return max(
        (begins.end() for begins in _BEGINS.finditer(text, 0, end)), default=len(text) - len(text.lstrip())
    )


def _says_more(after: str) -> bool:
    """Whether words for something to do follow at once, not another item of a list."""
    return re.match(r"[\s,]*[^\W\d_]", after) is not None
