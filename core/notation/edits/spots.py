"""The lines of a coach's text where they stand, and which of them is meant by a name."""

import re
from collections.abc import Iterator
from dataclasses import dataclass
from itertools import count

from core.measures import MassUnit
from core.movements.names import key
from core.notation.boards.reading import Reading
from core.notation.boards.row_reader import read_row
from core.notation.lines.pieces import Piece
from core.notation.lines.reading import read_piece
from core.notation.names.catalogued import Lexicon
from core.notation.text import rows


@dataclass(frozen=True)
class Spot:
    """A piece of the coach's text that is a line: which one from 0, its row, the columns it takes, the reading."""

    at: int
    row: int
    start: int
    end: int
    piece: Piece
    alone: bool


def piece_of(words: str, known: Lexicon, unit: MassUnit) -> Piece:
    return read_piece(re.sub(r"^(?:the|those|all) ", "", words.lower()), 0, known, unit)


def spot_meant(
    text: str, target: Piece, known: Lexicon, unit: MassUnit, at: int | None = None
) -> Spot | None:
    """The one line that is meant; with its amount where several are of one movement."""
    found = spots_named(text, target, known, unit)
    if at is not None:
        return next((one for one in found if one.at == at), None)
    if len(found) > 1 and target.amount:
        found = [one for one in found if one.piece.amount == target.amount]
    return found[0] if len(found) == 1 else None


def spots_named(text: str, target: Piece, known: Lexicon, unit: MassUnit) -> list[Spot]:
    spots = list(spots_in(text, known, unit))
    exactly = [one for one in spots if _is_named(one.piece, target)]
    called = [one for one in exactly if _says(one.piece, target)]
    return called or exactly or [one for one in spots if _says(one.piece, target)]


def _is_named(piece: Piece, target: Piece) -> bool:
    mine, theirs = piece.meaning, target.meaning
    if mine is None or theirs is None or mine.movement != theirs.movement:
        return False
    return theirs.variant is None or mine.variant in {None, theirs.variant}


def _says(piece: Piece, target: Piece) -> bool:
    """`the squats` are the goblet squats where there are no others."""
    words = key(re.sub("[0-9]", " ", target.text))
    return bool(words) and words in key(piece.text)


def spots_in(text: str, known: Lexicon, unit: MassUnit) -> Iterator[Spot]:
    at = count()
    for number, reading in readings(text, known, unit):
        for piece in reading.pieces:
            if piece.meaning:
                row = reading.row
                end = row.column(piece.end - 1)
                alone = len(reading.pieces) == 1 and not (reading.facts or reading.kind or reading.unread)
                last = len(row.typed) if alone else end
                yield Spot(next(at), number, row.column(piece.start) - 1, last, piece, alone)


def readings(text: str, known: Lexicon, unit: MassUnit) -> Iterator[tuple[int, Reading]]:
    ordinal = 0
    for number, row in enumerate(rows(text)):
        reading = read_row(row, known, unit, ordinal)
        ordinal = reading.number or reading.rest_station or ordinal
        yield number, reading
