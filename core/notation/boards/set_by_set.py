"""A line whose loads or shares change from set to set becomes a line for each of its sets."""

from dataclasses import replace

from core.notation.boards.drafts import Draft, Placed
from core.notation.lines.pieces import EachSet, Piece
from core.sessions.values import Format, LoadRule


def set_by_set(draft: Draft) -> Draft:
    """The part with a line for each set, where as many are told as there are sets; else the list is a note."""
    lines = [placed for one in draft.lines for placed in _of_line(one, draft)]
    if len(lines) == len(draft.lines):
        return replace(draft, lines=lines)
    facts = {name: told for name, told in draft.facts.items() if name not in {"scheme", "rounds"}}
    return replace(draft, lines=lines, facts=facts | {"format": Format.SETS})


def _of_line(placed: Placed, draft: Draft) -> list[Placed]:
    piece = placed.piece
    if not piece.each_set:
        return [placed]
    scheme = draft.facts.get("scheme", ())
    sets = piece.sets or len(scheme) or draft.facts.get("rounds") or len(piece.each_set)
    told = draft.only is not None and draft.facts.get("format") in {None, Format.SETS}
    if not told or sets != len(piece.each_set) or (scheme and len(scheme) != sets):
        return [placed._replace(piece=replace(piece, notes=(*piece.notes, piece.each_said), each_set=()))]
    amounts = scheme or (piece.amount,) * sets
    return [
        placed._replace(piece=_one_set(piece, amount, each))
        for amount, each in zip(amounts, piece.each_set, strict=True)
    ]


def _one_set(piece: Piece, amount: float | None, each: EachSet) -> Piece:
    told = replace(piece, amount=amount and float(amount), sets=None, each_set=())
    return replace(told, load_rule=each) if isinstance(each, LoadRule) else replace(told, loads_kg=(each,))
