"""A line of a session after what a coach told of it: another amount, load or movement."""

from collections.abc import Callable
from dataclasses import replace

from core.measures import AmountUnit
from core.notation.lines.pieces import Piece, as_line
from core.sessions.values import Line

# A line that takes another's place and has no amount yet -> the same with one. How much one movement is of another
# is no matter of words, so the caller knows it.
Carry = Callable[[Line, Line], Line]
# `2 min plank total` has no sets any more.
_IN_ALL = "total"
_TOLD = ("unit", "loads_kg", "count", "load_rule", "tempo", "sets", "per_side", "most")


def become(old: Piece, told: Piece, carry: Carry | None) -> Piece:
    """The old line with what was told; another movement keeps the amount, but not load and way."""
    if told.meaning and old.meaning and told.meaning.movement != old.meaning.movement:
        return _as_many(old, replace(told, sets=told.sets or old.sets, station=old.station), carry)
    said = {name: getattr(told, name) for name in _TOLD if getattr(told, name)}
    if told.amount and _IN_ALL in told.notes:
        said |= {"sets": None, "notes": tuple(dict.fromkeys((*old.notes, _IN_ALL)))}
    new = replace(old, **said)
    if told.meaning and told.meaning.variant:
        new = replace(new, meaning=told.meaning)
    if told.most:
        return replace(new, amount=None, amount_to=None, unit=None)
    if told.amount is None:
        return new
    upper, second = told.amount_to, told.second_amount
    return replace(new, amount=told.amount, amount_to=upper, second_amount=second, most=False)


def _as_many(old: Piece, new: Piece, carry: Carry | None) -> Piece:
    """The new movement with the old amount, or what stands for it, if it has none of its own."""
    assert new.meaning is not None, "the caller looked"
    if new.amount or new.most:
        return new
    alike = new.meaning.unit is as_line(old).unit or not old.amount
    alike |= old.unit is AmountUnit.SECONDS and new.meaning.goes  # ten minutes are ten minutes on any way
    if carry and old.amount and (old.per_side or not alike):
        return _carried(old, new, carry)
    if not alike:
        return new
    kept = replace(new, amount=old.amount, amount_to=old.amount_to, second_amount=old.second_amount)
    return replace(kept, unit=old.unit, per_side=old.per_side or new.per_side, most=old.most)


def _carried(old: Piece, new: Piece, carry: Carry) -> Piece:
    line = carry(as_line(old), as_line(new))
    amounts = {name: getattr(line, name) for name in ("amount", "amount_to", "second_amount")}
    return replace(new, unit=line.unit, per_side=line.per_side, **amounts)
