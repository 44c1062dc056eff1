"""Which lines of a row a load belongs to that is told once."""

from dataclasses import replace

from core.notation.names import Lexicon
from core.notation.pieces import Piece
from core.notation.text import Row


def share_load(pieces: list[Piece], row: Row, lexicon: Lexicon) -> None:
    """`3 power cleans + 2 jerks @ 70 %`: what is done in one go has the share that is told behind all of it."""
    last = pieces[-1] if pieces else None
    if not (last and last.load_rule and last.load_rule.percent):
        return
    for at, piece in enumerate(pieces[:-1]):
        behind = row.text[piece.end : pieces[at + 1].start].strip()
        if behind == "+" and piece.meaning and lexicon.takes_a_load(piece.meaning) and not _is_loaded(piece):
            pieces[at] = replace(piece, load_rule=last.load_rule)


def loaded(pieces: list[Piece], piece: Piece, lexicon: Lexicon) -> int:
    """The line that a load alone belongs to: `5 thrusters + 5 burpees, 40 kg`; else the last."""
    only_load = piece.loads_kg and not piece.amount
    for at in range(len(pieces) - 1, -1, -1) if only_load else ():
        meaning = pieces[at].meaning
        if meaning and not pieces[at].loads_kg and lexicon.takes_a_load(meaning):
            return at
    return len(pieces) - 1


def _is_loaded(piece: Piece) -> bool:
    return bool(piece.loads_kg or piece.load_rule or piece.each_set)
