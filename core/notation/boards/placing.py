"""Where what a row says belongs: a line of its own, more of the one before, the load of all; else it is shown."""

from dataclasses import replace
from typing import NamedTuple

from core.measures import AmountUnit, MassUnit
from core.notation.boards.drafts import Draft, Placed, goes_on
from core.notation.boards.going import goes_that_way, is_far, not_fast, take_metres, way_for
from core.notation.boards.reading import Reading
from core.notation.boards.rows import COLON, frames
from core.notation.boards.sharing import is_carried, is_load_alone, load_all, take_pair, take_same
from core.notation.boards.unread import Stretch, named
from core.notation.lines.choices import also, begins_with_or
from core.notation.lines.pieces import Piece, completes
from core.notation.lines.segments import is_in_stages
from core.notation.names.catalogued import Lexicon, Meaning
from core.notation.phrases.efforts import effort_of, take_effort
from core.notation.values import NotUnderstood


class Around(NamedTuple):
    """What is known beside a row: `unit` of bare loads, the `way` in which all of a board goes, the lines `before`."""

    lexicon: Lexicon
    unit: MassUnit
    way: Meaning | None
    before: list[Piece]


def go_the_way(reading: Reading, draft: Draft | None, around: Around) -> None:
    """Gives what names nothing the way in which all of the board goes."""
    for piece in reading.pieces:
        gone = (one.text.lower() for one in reading.pieces if one.meaning and one.meaning.goes)
        take_metres(piece, (*reading.notes, *gone), around.way)
        heads = COLON.match(reading.row.text, piece.end) or frames(piece, reading, draft)
        if goes_that_way(piece, around.way) and not (heads or _is_awaited(piece, draft)):
            piece.meaning = way_for(piece, around.way, around.lexicon)
        not_fast(piece, around.lexicon)


def _is_awaited(piece: Piece, draft: Draft | None) -> bool:
    """Whether the line before waits for what a nameless piece tells."""
    return draft is not None and bool(draft.lines) and completes(piece, draft.lines[-1].piece)


def place(draft: Draft, reading: Reading, around: Around) -> list[NotUnderstood]:
    """Puts the pieces of a row into the part; gives back those that belong nowhere."""
    lines: list[Placed] = getattr(draft, draft.where if reading.where == "lines" else reading.where)
    _name_stages(reading, lines)
    nameless = not any(piece.meaning for piece in reading.pieces)
    left: list[NotUnderstood] = []
    for piece in reading.pieces:
        if not piece.meaning:
            take_pair(piece, around.unit)
        if lines and begins_with_or(piece) and lines[-1].row.number < reading.row.number:
            lines[-1] = lines[-1]._replace(piece=also(lines[-1].piece, piece))
        elif piece.meaning:
            piece.station = piece.station or draft.station
            take_same(piece, draft.pieces or around.before)
            lines.append(Placed(piece, reading.row))
        elif not lines and is_load_alone(piece):
            draft.held = piece
        elif (nameless or is_carried(piece)) and load_all(piece, lines, around.lexicon):
            continue
        elif not (lines and goes_on(lines, piece, reading.row, around.unit)):
            left += _take_nameless(piece, reading, lines, around)
    return left


def _name_stages(reading: Reading, lines: list[Placed]) -> None:
    """`Rower`, `1-2-3-2-1 min hard`: what stands above and only says what is done is done in all of them."""
    name = lines[-1].piece if lines else None
    stages = [piece for piece in reading.pieces if not (piece.meaning or piece.unread)]
    if name and not replace(name, notes=()).says_anything and is_in_stages(stages):
        lines.pop()
        for piece in stages:
            piece.meaning, piece.notes = name.meaning, (*name.notes, *piece.notes)


def _take_nameless(
    piece: Piece, reading: Reading, lines: list[Placed], around: Around
) -> list[NotUnderstood]:
    """An effort above the lines is that of the part; what else has no name and no line to belong to is given back."""
    counted = piece.amount and piece.unit is AmountUnit.REPS and not (piece.sets or piece.unread)
    if not (lines or piece.amount or piece.unread) and (told := effort_of(piece)):
        take_effort(reading.facts, told)
    elif not lines and counted:
        reading.facts.setdefault("amount", int(piece.amount or 0))
        if piece.amount_to:
            reading.facts.setdefault("amount_to", int(piece.amount_to))
    elif is_far(piece):
        piece.meaning = way_for(piece, around.way, around.lexicon)
        lines.append(Placed(piece, reading.row))
    elif not piece.unread:
        goes = goes_that_way(piece, around.lexicon.exact("run"))
        guess = f"{piece.text} run" if goes else None  # `easy 45'`: nothing says how
        left = named(reading.row, Stretch(piece.start, piece.end, guess))
        return [left.model_copy(update={"after": len(lines)})]
    return []
