"""What a coach says of the work goes with it: words behind a line that are no work, nor for people, are its note."""

import re
from dataclasses import replace

from core.notation.drafts import Draft
from core.notation.labels.facts import is_remark, is_said_to_people, is_surely_of_work
from core.notation.paces import is_paced
from core.notation.reading import Reading
from core.notation.text import Row
from core.notation.unread import Stretch

# Whom or what it depends on, or when people meet, and nothing to do: `If you are dizzy, skip this one`, `meet 12:15`.
_ON_CONDITION = re.compile(
    r"^\W*(?:if|unless|whoever|anyone|anybody|who (?:has|is|can)|those (?:who|with|without))\b(?! time)"
    r"|\b(?:meet(?:ing)?|see (?:you|u|ya)|kick[ -]?off|doors|be there)\b[a-z ,]{0,20}[0-9]{1,2}[:.][0-9]{2}\b",
    re.IGNORECASE,
)
_SAID = re.compile(r"[^\W\d_]{2}")


def is_on_condition(words: str) -> bool:
    """Whether a sentence says what is done by some, or in some case, or when people meet: it is no work of all."""
    return _ON_CONDITION.search(words) is not None


def is_said_of_work(words: str) -> bool:
    """Whether words without a number are neither something to do nor said to people."""
    said = words.lower()
    plain = _SAID.search(said) is not None and not any(map(str.isnumeric, said))
    return plain and is_remark(said) and not is_said_to_people(said)


def keep_beside(reading: Reading) -> None:
    """Unread words of a row go to the line in front of them; where a row says how its part is done, to the part."""
    heads = bool(reading.facts) and not any(piece.meaning for piece in reading.pieces)
    for stretch in tuple(reading.unread):
        words = reading.row.own_words(stretch.start, stretch.end)
        at = _line_of(reading, stretch)
        inside = [one for one in reading.pieces if not one.meaning and one.start < stretch.end <= one.end]
        if at is None and not (heads and is_surely_of_work(words.lower())):
            continue
        if stretch.looks_like == "work" or not is_said_of_work(words):
            continue
        if any(piece.says_anything for piece in inside):
            continue
        if at is None:
            reading.notes.append(words)
        else:
            line = reading.pieces[at]
            reading.pieces[at] = replace(line, notes=(*line.notes, words))
        reading.unread.remove(stretch)
        reading.pieces = [piece for piece in reading.pieces if piece not in inside]


def _line_of(reading: Reading, stretch: Stretch) -> int | None:
    lines = (at for at, piece in enumerate(reading.pieces) if piece.meaning and piece.start < stretch.start)
    return max(lines, default=None)


def keep_paces(draft: Draft, notes: list[str]) -> list[str]:
    """Gives paces in a row of their own to the line above them; the other notes are left."""
    paces = [note for note in notes if is_paced(note.lower())] if draft.lines else []
    if paces:
        last = draft.lines[-1]
        draft.lines[-1] = last._replace(piece=replace(last.piece, notes=(*last.piece.notes, *paces)))
    return [note for note in notes if note not in paces]


def keep_behind(draft: Draft | None, row: Row) -> bool:
    """Whether a part of a row is said of the line before it in the same row, whose note it is then."""
    words = row.own_words(len(row.text) - len(row.text.lstrip()), len(row.text))
    if draft is None or not draft.lines or not is_said_of_work(words):
        return False
    last = draft.lines[-1]
    if last.row.number != row.number:
        return False
    draft.lines[-1] = last._replace(piece=replace(last.piece, notes=(*last.piece.notes, words)))
    return True
