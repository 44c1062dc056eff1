"""Near spellings of the words of formats, put right: `amarp`, `ruonds`."""

import re
from dataclasses import replace

from rapidfuzz import process
from rapidfuzz.distance import OSA

from core.notation.lines.pieces import Piece
from core.notation.names.beside import ORDINARY
from core.notation.names.catalogued import Lexicon
from core.notation.names.spellings import allowed_slips
from core.notation.text import Row
from core.notation.values import Corrected

_VOCABULARY = [
    "amrap", "emom", "rounds", "round", "minutes", "minute", "seconds", "reps", "time", "rest",
    "between", "target", "score", "scored", "warm", "strength", "skill", "cooldown", "warmup",
    "possible", "every", "unbroken", "alternating", "heavy", "side", "each", "scheme", "quality",
]  # fmt: skip
_TOKEN = re.compile(r"[A-Za-z]{4,20}")


def respelled(row: Row, lexicon: Lexicon) -> tuple[Row, list[Corrected]]:
    """The row with what looks like a slip put right, every character at its typed column, and the slips."""
    text, columns, slips, done = "", row.columns[:0], [], 0
    for match in _TOKEN.finditer(row.text):
        meant = _meant(match[0].lower(), lexicon)
        if meant is None:
            continue
        column = row.column(match.start())
        slips.append(Corrected(line=row.number, column=column, text=match[0], read_as=meant))
        text += row.text[done : match.start()] + meant
        columns += row.columns[done : match.start()] + (column,) * len(meant)
        done = match.end()
    return replace(row, text=text + row.text[done:], columns=columns + row.columns[done:]), slips


def _meant(word: str, lexicon: Lexicon) -> str | None:
    """The one word of formats spelled nearly so; None for a word that means something by itself."""
    if word in ORDINARY:
        return None
    slips = allowed_slips(word) or 1
    hits = process.extract(word, _VOCABULARY, scorer=OSA.distance, score_cutoff=slips, limit=2)
    if not hits or hits[0][1] == 0 or lexicon.knows(word):
        return None
    return None if len(hits) > 1 and hits[1][1] == hits[0][1] else str(hits[0][0])


def slip(row: Row, piece: Piece) -> Corrected:
    """A movement that was told by its misspelt name."""
    assert piece.meaning is not None
    return Corrected(
        line=row.number, column=row.column(piece.start), text=piece.text, read_as=piece.meaning.name
    )
