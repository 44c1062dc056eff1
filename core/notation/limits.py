"""An athlete's own words about what to avoid: `sore wrist, no jumping and I'm on beta blockers`."""

import re
from collections.abc import Iterator
from functools import cache
from typing import NamedTuple

from rapidfuzz import process
from rapidfuzz.distance import OSA

from core.athletes.limits import limit, limits
from core.movements.names import key
from core.notation.values import NotUnderstood
from core.values import Value

_PIECE = re.compile(r"(?:(?!\band\b|\bplus\b|\balso\b)[^,;.\n/&+])+", re.IGNORECASE)
_WORD = re.compile(r"[a-z0-9']+")
_CAN_NOT = re.compile(r"\b(?:can ?not|may ?not|must ?not|mustn't|should ?not|shouldn't|unable to|couldn't)\b")
_NO = re.compile(r"\b(?:avoid(?:ing)?|never|without|zero|do not|don't)\b")
_NOTHING = {
    "no", "none", "nothing", "nope", "na", "nolimit", "allgood", "fine", "imfine", "iamfine", "noproblem",
    "nothingtoavoid", "noinjury", "healthy", "imhealthy", "iamhealthy", "nopain", "ok", "allfine", "allok",
}  # fmt: skip
_TROUBLE = {
    "problem",
    "pain",
    "issue",
    "trouble",
    "injury",
    "limit",
    "more",
    "any",
    "no",
    "at",
    "all",
    "anymore",
}
_LONGEST_NAME = 6
_LONGEST_TEXT = 1000
_SHORTEST_SLIP = 5
_TWO_SLIPS = 8


class ReadLimits(Value):
    """What was understood; `limits` None: nothing was; empty: they said there is nothing to avoid."""

    limits: tuple[str, ...] | None
    not_understood: tuple[NotUnderstood, ...] = ()


class _Piece(NamedTuple):
    """A stretch between commas and ands; line and column count from 1."""

    text: str
    line: int
    column: int


def read_limits(text: str) -> ReadLimits:
    """Limit ids out of free words, each once, with the pieces that nobody could make sense of.

    A limit that is named in doubt counts: leaving one out may hurt somebody.
    """
    if key(text) in _NOTHING:
        return ReadLimits(limits=())
    ids: list[str] = []
    unread: list[NotUnderstood] = []
    pieces = list(_pieces(text[:_LONGEST_TEXT]))
    for piece in pieces:
        found = _read_piece(piece.text)
        if found is None:
            unread.append(NotUnderstood(line=piece.line, column=piece.column, text=piece.text))
        else:
            ids += found
    if not pieces or len(unread) == len(pieces):
        return ReadLimits(limits=None, not_understood=tuple(unread))
    return ReadLimits(limits=tuple(dict.fromkeys(ids)), not_understood=tuple(unread))


def _pieces(text: str) -> Iterator[_Piece]:
    for number, line in enumerate(text.splitlines(), 1):
        for match in _PIECE.finditer(line):
            words = match.group().strip()
            if words:
                column = match.start() + len(match.group()) - len(match.group().lstrip()) + 1
                yield _Piece(words, number, column)


def _read_piece(text: str) -> list[str] | None:
    """Ids in one piece; empty where it says that there is nothing; None where it says nothing known."""
    if key(text) in _NOTHING:
        return []
    words = _words(text)
    found, rest = _named(words)
    if found and _is_denied(found, rest):
        return []
    return found or _nearly_named(words) or None


def _words(text: str) -> list[str]:
    plain = text.casefold().replace("\N{RIGHT SINGLE QUOTATION MARK}", "'")
    return _WORD.findall(_NO.sub("no", _CAN_NOT.sub("can't", plain)))


def _named(words: list[str]) -> tuple[list[str], list[str]]:
    """Ids by the longest names first, from the left, and the words that belong to none."""
    found, rest, place = [], [], 0
    while place < len(words):
        for length in range(_LONGEST_NAME, 0, -1):
            limit_id = _ids_by_key().get(key(" ".join(words[place : place + length])))
            if limit_id:
                found.append(limit_id)
                place += length
                break
        else:
            rest.append(words[place])
            place += 1
    return found, rest


def _is_denied(found: list[str], rest: list[str]) -> bool:
    """`no knee pain` names no limit; `no knee bending` does."""
    wishes = any(limit(one).kind == "wish" for one in found)
    return not wishes and "no" in rest and all(key(word) in _TROUBLE for word in rest)


def _nearly_named(words: list[str]) -> list[str]:
    """The id of a slip of the pen, longer stretches first."""
    near = (_near(window) for window in _windows(words))
    return [limit_id for limit_id in near if limit_id][:1]


def _windows(words: list[str]) -> Iterator[str]:
    return (key(" ".join(words[at : at + length])) for length in (3, 2, 1) for at in range(len(words)))


def _near(typed: str) -> str | None:
    """One slip in five to seven letters, two in more; a shorter word leaves no room."""
    slips = 0 if len(typed) < _SHORTEST_SLIP else 1 if len(typed) < _TWO_SLIPS else 2
    if not slips:
        return None
    hit = process.extractOne(typed, _ids_by_key().keys(), scorer=OSA.distance, score_cutoff=slips)
    return _ids_by_key()[hit[0]] if hit else None


@cache
def _ids_by_key() -> dict[str, str]:
    return {key(name): one.id for one in limits() for name in (one.id, one.label, *one.names)}
