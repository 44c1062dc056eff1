"""A change that says where it is meant: `make Friday's push-ups 8`, `in minute 3 do a hollow hold`."""

import re
from collections.abc import Iterator
from dataclasses import dataclass
from typing import Final

from core.measures import MassUnit
from core.movements.lookup import Catalogue
from core.notation.boards.clauses import clauses
from core.notation.boards.headings import day
from core.notation.boards.session import read_session
from core.notation.calendar.moments import DAY_WORD
from core.notation.edits.retelling import part_named
from core.notation.text import Row, plain, rows

_LONGEST: Final = 160
_DAYS: Final = ("mon", "tue", "wed", "thu", "fri", "sat", "sun")
_DAY: Final = re.compile(
    rf"\b(?:(?:on|in|for|of)\s)?(?P<day>{DAY_WORD})(?:'?s)?\b[,:]?\s?",
    re.IGNORECASE,
)
_TURN: Final = re.compile(
    r"\b(?:(?:in|at|on|for|of)\s)?(?:the\s)?(?:minute|min|station)\s(?P<n>[1-9][0-9]?)\b[,:]?\s?",
    re.IGNORECASE,
)
_PART: Final = re.compile(
    r"\b(?:in|of|for|from)\s(?:the\s|my\s)?(?P<part>[a-z][\w\- ]{1,20})$", re.IGNORECASE
)
_AT: Final = re.compile(r"^[\W_]*(?:minute|min|station)\s(?P<n>[1-9][0-9]?)\b", re.IGNORECASE)
# What stands in front of what shall be done in a turn that has one thing to do.
_DONE: Final = re.compile(
    r"^(?:(?:no|sorry|ok|actually|make|let'?s)\W+)*(?:(?:it|that)\s)?(?:an?\s)?"
    r"(?:(?:do|is|be|becomes|should be|must be|have|put|its|it's)\s|(?:swap|change|replace)(?: it)? (?:for|to|with)\s)?"
    r"(?:an?\s)?(?P<new>[^,;]+?)(?:,? (?:not|instead of) [^,;]+)?(?: instead)?$",
    re.IGNORECASE,
)


@dataclass(frozen=True)
class Scope:
    """The stretch of a text that is meant, from one place to another, and the wish without the words for where."""

    whole: str
    start: int
    end: int
    words: str

    @property
    def text(self) -> str:
        return self.whole[self.start : self.end]

    def put(self, text: str) -> str:
        """All of the text with other words in the place of the stretch."""
        return self.whole[: self.start] + text + self.whole[self.end :]


def scopes_of(text: str, message: str, movements: Catalogue, unit: MassUnit = MassUnit.KG) -> Iterator[Scope]:
    """Where a message may mean to change a text, if it says so at all."""
    words = plain(message[: _LONGEST + 1]).strip(" .!")
    if len(words) > _LONGEST or "\n" in message.strip():
        return
    for shape, found in ((_DAY, _of_day), (_TURN, _of_turn)):
        match = shape.search(words)
        span = found(text, match) if match else None
        if match and span:
            yield Scope(text, *span, _without(words, match))
    if match := _PART.search(words):
        read = read_session(text, movements, unit)
        at = part_named(match["part"].lower(), read.session) if read.session else None
        mine = [row for row, part in read.rows if at is not None and part == at + 1]
        if mine:
            yield Scope(text, *_lines(text, min(mine) - 1, max(mine)), _without(words, match))


def in_its_place(scope: Scope) -> str | None:
    """The wish for a stretch that has one thing to do, as it would be said of that: `swap plank for hollow hold`."""
    match = _DONE.match(scope.words)
    return match and match["new"].strip()


def _without(words: str, match: re.Match[str]) -> str:
    return " ".join(f"{words[: match.start()]} {words[match.end() :]}".split()).strip(" ,:")


def _of_day(text: str, match: re.Match[str]) -> tuple[int, int] | None:
    """From the row that begins with the day to the next that begins with one."""
    told = [(number, _named_day(row)) for number, row in enumerate(rows(text))]
    begun = [(number, name) for number, name in told if name]
    wanted = match["day"].lower()[:3]
    if len(begun) < 2 or [name for _, name in begun].count(wanted) != 1:  # noqa: PLR2004 - several days, one of them meant
        return None
    at = [name for _, name in begun].index(wanted)
    last = begun[at + 1][0] if at + 1 < len(begun) else len(told)
    return _lines(text, begun[at][0], last)


def _named_day(row: Row) -> str | None:
    words = row.text.lower()
    start = words.lstrip(" *_#-")[:3]
    return start if start in _DAYS and day(words, bare=True) else None


def _of_turn(text: str, match: re.Match[str]) -> tuple[int, int] | None:
    """What is done in the turn of that number: its clause without the words for the turn."""
    found = []
    for row in rows(text):
        for clause in clauses((row,)):
            told = _AT.match(clause.row.text)
            if told and told["n"] == match["n"]:
                found.append(_of_clause(text, clause.row))
    return found[0] if len(found) == 1 else None


def _of_clause(text: str, row: Row) -> tuple[int, int]:
    before, _ = _lines(text, row.number - 1, row.number)
    words = row.text.rstrip(" ,;")
    first = len(row.text) - len(row.text.lstrip())
    return before + row.column(first) - 1, before + row.column(len(words) - 1)


def _lines(text: str, first: int, last: int) -> tuple[int, int]:
    """Where the lines from one to before another stand, the last line break left out."""
    told = text.splitlines(keepends=True)
    start = sum(map(len, told[:first]))
    return start, start + len("".join(told[first:last]).rstrip("\n"))
