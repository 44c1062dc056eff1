"""How a piece of a row joins those before it: one more, the rest of the last one, or what is said of that."""

import re
from dataclasses import replace

from core.measures import AmountUnit
from core.notation.boards.reading import Reading
from core.notation.boards.respelling import slip
from core.notation.boards.sharing import is_carried, is_load_alone, loaded, says_same
from core.notation.boards.unread import LONGEST_SHORTHAND, Stretch, guessed_kind, is_talk
from core.notation.labels.facts import is_remark
from core.notation.lines.pieces import Piece, awaits, complete, completes, halved, repeats
from core.notation.names.beside import QUALIFYING
from core.notation.names.catalogued import Lexicon
from core.sessions.values import Format

_LETTER = re.compile(r"[^\W\d_]")


def keep(reading: Reading, piece: Piece, lexicon: Lexicon) -> None:
    """Takes a piece in, behind those of its row."""
    last = reading.pieces[-1] if reading.pieces else None
    if last and last.meaning and (_is_said_of_it(piece, last, lexicon) or says_same(piece.unread)):
        reading.pieces[-1] = replace(last, notes=(*last.notes, piece.text))
        return
    if piece.unread:
        reading.unread.append(_unread(reading, piece, last, lexicon))
    if last and (awaits(last, piece) or _heads(last, piece, reading)):
        reading.pieces[-1] = complete(piece, last)
        return
    if last and repeats(piece, last):
        piece.meaning, piece.implement = last.meaning, last.implement
    stays = is_carried(piece) or (is_load_alone(piece) and last and not last.meaning)
    stays = stays or (last is not None and _is_gone(piece, last))
    if last and completes(piece, last) and not stays and not _is_time_to_find(reading, piece):
        at = loaded(reading.pieces, piece, lexicon)
        reading.pieces[at] = complete(reading.pieces[at], piece)
    elif piece.meaning or piece.unread or piece.says_anything:
        reading.pieces.append(piece)
    if piece.meaning and piece.meaning.near:
        reading.corrected.append(slip(reading.row, piece))


def _is_gone(piece: Piece, unknown: Piece) -> bool:
    """Whether metres in sets are run, whatever words that nobody knows stand before them: `drills, 5 x 1k`."""
    return unknown.meaning is None and bool(piece.sets) and piece.unit is AmountUnit.METRES


def _is_said_of_it(piece: Piece, last: Piece, lexicon: Lexicon) -> bool:
    """Whether words behind a line only say something of it: `10 bridges, hold the chair`."""
    if not _LETTER.search(piece.unread) or piece.meaning or piece.says_anything:
        return False
    if is_talk(piece.text) and not last.says_anything:
        return False  # `Breathe, everybody!`
    if len(piece.unread) <= LONGEST_SHORTHAND and not last.says_anything:
        return False
    if all(word in QUALIFYING for word in piece.unread.split()):
        return True  # `band row, seated`
    return not lexicon.guess(piece.unread) and is_remark(piece.text.lower())


def _heads(last: Piece, piece: Piece, reading: Reading) -> bool:
    """Whether what stands before a line and its colon only says how that is done: `alternating legs: 10 lunges`."""
    how = (last.side or last.per_side) and not (last.amount or last.sets or last.loads_kg or last.most)
    nameless = not (last.meaning or last.unread)
    return bool(how and nameless and piece.meaning and ":" in reading.row.text[last.end : piece.start + 1])


def _is_time_to_find(reading: Reading, piece: Piece) -> bool:
    """`up to a heavy double, 12 min`: a time beside the heaviest is how long there is for it."""
    return reading.facts.get("format") is Format.MAX_LOAD and piece.unit is AmountUnit.SECONDS


def _unread(reading: Reading, piece: Piece, last: Piece | None, lexicon: Lexicon) -> Stretch:
    """Where the unread name of a piece stands, with a guess, and what it looks like."""
    at = reading.row.text.lower().find(piece.unread, piece.start, piece.end)
    found = at >= 0 and piece.says_anything
    start, end = (at, at + len(piece.unread)) if found else (piece.start, piece.end)
    guess = lexicon.guess(piece.unread)
    if _LETTER.search(piece.unread) and (piece.says_anything or (guess and not is_talk(piece.text))):
        return Stretch(start, end, guess, "movement")
    # Words behind a movement are most often a remark: in brackets they are taken as one.
    remark = f"({piece.unread})" if last and last.meaning else None
    kinds = any(lexicon.is_kind(word) for word in piece.unread.split())
    looks_like = "note" if remark and not kinds else guessed_kind(piece.text)
    return Stretch(start, end, guess or remark, looks_like)


def annotate(reading: Reading, notes: list[str]) -> None:
    """Gives notes to the last piece of a row; where there is none, to the row."""
    if notes and reading.pieces:
        last = reading.pieces[-1]
        half = halved(last, notes[0]) if len(notes) == 1 else None
        reading.pieces[-1] = half or replace(last, notes=last.notes + tuple(notes))
    else:
        reading.notes += notes
