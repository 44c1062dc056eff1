"""Stretches of a row that were not understood: in whose words, and whether they ask for something to be done."""

import re
from collections.abc import Iterable, Iterator
from typing import NamedTuple

from core.notation.text import Row
from core.notation.values import LooksLike, NotUnderstood

LONGEST = 120
# Letters of what may be short for a movement: `sq - pu - bur - pl` (an estimate).
LONGEST_SHORTHAND = 3
_TRIMMED = " .,:;*-"
_NO_TALK_FROM = 7
# What coaches say beside the work; no movement is called so (common practice, no source).
_TALK = re.compile(
    r"\b(?:your?|you'(?:re|ll|ve)|we|us|our|let'?s|is|are|be|been|this|that|these|if|don'?t|never|not|it'?s?"
    r"|everybody|everyone|guys|team|folks|please|as|my|i|i'?m|have|has|will|can|should|enjoy|focus|breath"
    r"|breathe|breathing|keep|stay|remember|good|great|nice|luck|fun|thanks?|technique|love|try|make|take"
    r"|use|choose|pick|drink|water|scale|scaling|share|post|send|see|finish|well|done|relax|listen|today"
    r"|tomorrow|smile|record|film|mind|careful|attention|form|quality|partner|others?|hello|hi|morning"
    r"|welcome|happy|bring|wear|beware|before|after|between|because|so|when|while|until|needed|optional)\b"
)
_LETTER = re.compile(r"[^\W\d_]")
_AMOUNT = re.compile(r"^[\W_]*[0-9]")


class Stretch(NamedTuple):
    """Where something unread stands in its row's plain text."""

    start: int
    end: int
    guess: str | None = None
    looks_like: LooksLike = "work"


def is_talk(words: str) -> bool:
    """Whether words without an amount are rather said to people than done."""
    said = words.lower()
    if _AMOUNT.match(said):
        return False
    return "!" in said or bool(_TALK.search(said)) or len(said.split()) >= _NO_TALK_FROM


def begins_with_amount(words: str) -> bool:
    return _AMOUNT.match(words) is not None


def guessed_kind(words: str) -> LooksLike:
    """What a row or piece is of which nothing was understood."""
    if begins_with_amount(words) or not _LETTER.search(words):
        return "work" if re.search("[0-9]", words) else "note"
    return "note" if is_talk(words) else "movement"


def named(row: Row, stretch: Stretch) -> NotUnderstood:
    """The stretch at its place, as it was typed."""
    start, end = max(stretch.start, 0), stretch.end
    while start < end and row.text[start : start + 1] in _TRIMMED:
        start += 1
    return NotUnderstood(
        line=row.number,
        column=row.column(start),
        text=row.own_words(start, end)[:LONGEST],
        guess=stretch.guess,
        looks_like=stretch.looks_like,
    )


def whole(row: Row, guess: str | None = None, looks_like: LooksLike = "work") -> NotUnderstood:
    """The whole row."""
    start = len(row.text) - len(row.text.lstrip())
    return named(row, Stretch(start, len(row.text.rstrip()), guess, looks_like))


def with_whole(found: Iterable[NotUnderstood], rows: Iterable[Row]) -> list[NotUnderstood]:
    """What was found, with rows (or clauses of rows) of which nothing counts as a whole instead."""
    lost = [whole(row) for row in rows]
    within = {(one.line, one.column + at) for one in lost for at in range(len(one.text))}
    return [*(one for one in found if (one.line, one.column) not in within), *lost]


def joined(stretches: Iterable[Stretch], text: str) -> Iterator[Stretch]:
    """Neighbours of one kind with nothing between them but marks are one stretch."""
    before: Stretch | None = None
    for stretch in sorted(stretches):
        if before and _belong_together(before, stretch, text):
            before = before._replace(end=max(before.end, stretch.end), guess=before.guess and stretch.guess)
            continue
        if before:
            yield before
        before = stretch
    if before:
        yield before


def _belong_together(one: Stretch, other: Stretch, text: str) -> bool:
    return one.looks_like == other.looks_like == "note" and not re.search(r"\w", text[one.end : other.start])
