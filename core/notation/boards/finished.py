"""From the draft of one part to its block: its format, its clock and its lines, and what is missing."""

import re
from collections.abc import Iterator
from dataclasses import replace
from decimal import Decimal
from typing import NamedTuple

from core.measures import AmountUnit
from core.notation.boards.counted import as_counted
from core.notation.boards.drafts import Draft, Placed
from core.notation.boards.formats import (
    UNSCORED,
    in_turn_s,
    rests_behind_each_s,
    which_format,
    worked_in_turn_s,
)
from core.notation.boards.kinds import kind_by_lines
from core.notation.boards.unread import Stretch, named, whole
from core.notation.lines.pieces import Piece, as_line
from core.notation.names.catalogued import Meaning
from core.notation.phrases.aims import Facts
from core.notation.phrases.efforts import effort_of_all
from core.notation.quantities import MINUTE_S
from core.notation.text import Row
from core.notation.values import LooksLike, NotUnderstood
from core.sessions.values import Block, BlockKind, Format, Line

# What is offered where somebody counts turns of no told length (a lap of a track; a guess for a hill).
_LAP_M, _SPRINT_M, _MOST_TURNS = 400, 100, 30
# What lasts, and can be counted all the same.
_BREATHS = re.compile(r"\bbreaths?\b")


class Problem(NamedTuple):
    """What is missing or can't be meant, in a line or, without a `piece`, in the whole block."""

    row: Row
    piece: Piece | None = None
    guess: str | None = None
    looks_like: LooksLike = "work"

    def named(self) -> NotUnderstood:
        if self.piece is None:
            return whole(self.row, self.guess, self.looks_like)
        return named(self.row, Stretch(self.piece.start, self.piece.end, self.guess))


def block_of(draft: Draft) -> tuple[Block, list[Problem]]:
    """The block of a draft that is one part, and what is missing in it or can't be meant."""
    draft = as_counted(draft)
    problems = list(_check_lines(draft))
    draft, facts = _with_lines_settled(draft)
    said = which_format(draft)
    if said is None:
        problems.append(Problem(draft.row, guess="for time", looks_like="score"))
    format_ = said or Format.QUALITY
    if format_ is Format.MAX_REPS and draft.only and _is_time(draft.only):
        draft = _with_only(draft, replace(draft.only, most=True))
    facts |= {"format": format_, "rounds": facts.get("rounds") or _sets(draft)}
    if format_ is Format.INTERVALS:
        _settle_turns(facts, draft)
    _settle_minutes(facts, draft)
    problems += _missing(draft, facts)
    return _finished(draft, facts), problems


def _with_lines_settled(draft: Draft) -> tuple[Draft, Facts]:
    """The draft, and its facts with what the lines say of the whole of it."""
    facts = effort_of_all(draft.pieces) | draft.facts
    if _is_of_lines_alone(draft):
        draft = replace(draft, lines=[_all_at_once(placed) for placed in draft.lines])
    if facts.pop("most", False):
        draft = replace(draft, lines=[_as_much_as_goes(placed) for placed in draft.lines])
    if "work_s" in facts and "every_s" in facts and "minutes" not in facts:
        draft = replace(draft, lines=[_whole_time(placed, facts) for placed in draft.lines])
    only = draft.only
    # Three minutes of rope in a warm-up are how much of it is done.
    played = draft.kind not in UNSCORED and facts.get("format") in {None, Format.QUALITY}
    practised = draft.kind is BlockKind.SKILL or played
    if practised and only and _is_played(only) and not facts.get("minutes"):
        facts["minutes"] = (only.amount or 0) / MINUTE_S
        draft = _with_only(draft, replace(only, amount=None, unit=None))
    return draft, facts


def _is_of_lines_alone(draft: Draft) -> bool:
    """Whether some lines have sets that are not how often all of it is done: `for time: 50 squats, 6 x 400 m run`."""
    told = draft.facts.get("format") not in {None, Format.SETS} or "rounds" in draft.facts
    with_sets = [bool(piece.sets) for piece in draft.pieces]
    return told and any(with_sets) and not all(with_sets) and not stands_for_its_row(draft)


def _all_at_once(placed: Placed) -> Placed:
    """`6 x 400 m` among what is done once is as much in all, and how it is told stands beside it."""
    piece = placed.piece
    if not piece.sets or not piece.amount:
        return placed
    unit = "" if piece.unit in {None, AmountUnit.REPS} else f" {piece.unit}"
    said = f"{piece.sets} x {piece.amount:g}{unit}"
    return placed._replace(
        piece=replace(piece, sets=None, amount=piece.sets * piece.amount, notes=(*piece.notes, said))
    )


def _whole_time(placed: Placed, facts: Facts) -> Placed:
    """`Plank jacks, 8 min` on a clock of 15 s is how long the clock runs."""
    piece = placed.piece
    if not _is_time(piece) or (piece.amount or 0) <= facts["every_s"]:
        return placed
    facts["minutes"] = (piece.amount or 0) / MINUTE_S
    return placed._replace(piece=replace(piece, amount=None, unit=None))


def _with_only(draft: Draft, piece: Piece) -> Draft:
    return replace(draft, lines=[draft.lines[0]._replace(piece=piece)])


def _settle_turns(facts: Facts, draft: Draft) -> None:
    """How long each turn takes: what the only line says, or all do; a rest behind the round is none of its turns."""
    only = draft.only
    if only and only.sets and _is_time(replace(only, sets=None)):
        facts.setdefault("work_s", only.amount)
    if work_s := rests_behind_each_s(draft) or worked_in_turn_s(draft):
        facts.setdefault("work_s", work_s)
    if "work_s" not in facts or "rest_s" not in facts:
        return
    behind_round = (
        draft.rests_behind and draft.pauses == 1 and "every_s" not in facts and bool(facts["rounds"])
    )
    facts["behind_round"] = behind_round
    facts.setdefault("every_s", facts["work_s"] + (0 if behind_round else facts["rest_s"]))


def _finished(draft: Draft, facts: Facts) -> Block:
    told = dict(facts)
    amount, amount_to = told.pop("amount", None), told.pop("amount_to", None)
    in_turn, in_kcal = told.pop("in_turn", False), told.pop("in_kcal", False)
    behind_round = told.pop("behind_round", False)
    format_ = told["format"]
    pieces = _at_stations(draft.pieces, format_, resting=bool(draft.rests))
    pieces = _one_each(pieces) if in_turn and format_ is Format.INTERVALS else pieces
    pieces = _for_calories(pieces) if in_kcal else pieces
    kept = format_ is Format.INTERVALS and all(piece.station for piece in pieces)
    notes = draft.notes + [rest.row.text.strip() for rest in draft.rests if not kept]
    around = ([placed.piece for placed in some] for some in (draft.buy_in, draft.cash_out))
    lines, buy_in, cash_out = (
        tuple(_line(piece, told, amount, amount_to) for piece in some) for some in (pieces, *around)
    )
    if behind_round:
        del told["work_s"]
    return Block.model_validate(
        {
            "kind": _kind(draft, format_, lines),
            "name": draft.name,
            "scored": format_ is not Format.QUALITY and draft.kind not in UNSCORED,
            "rest_stations": tuple(sorted({rest.station for rest in draft.rests})) if kept else (),
            "notes": "; ".join(notes) or None,
            "partial": draft.broken,
        }
        | _of_block(told)
        | {"lines": lines, "buy_in": buy_in, "cash_out": cash_out}
    )


def _kind(draft: Draft, format_: Format, lines: tuple[Line, ...]) -> BlockKind:
    if draft.headed:
        return draft.kind
    in_sets = any(piece.sets for piece in draft.pieces)
    return kind_by_lines(draft.kind, format_, lines, in_rounds=_in_rounds(draft), in_sets=in_sets)


def _of_block(facts: Facts) -> Facts:
    """In what it is counted only where neither the format nor the lines say it."""
    told = facts["format"] is Format.INTERVALS and facts.get("counted_in") is not AmountUnit.SECONDS
    return {name: value for name, value in facts.items() if told or name != "counted_in"}


def _in_rounds(draft: Draft) -> bool:
    """Whether how often is told of all lines together, and by no letters."""
    return "rounds" in draft.facts and not (draft.in_turn or draft.is_complex)


def _as_much_as_goes(placed: Placed) -> Placed:
    """`1 min at each station`: of what tells no amount."""
    open_still = placed.piece.amount is None
    return placed._replace(piece=replace(placed.piece, most=True)) if open_still else placed


def _is_played(piece: Piece) -> bool:
    """`Handstand kick-ups, 10 min`: the time is how long they are practised."""
    counted = piece.meaning is not None and piece.meaning.unit is AmountUnit.REPS
    return counted and _is_time(piece) and (piece.amount or 0) > MINUTE_S


def _is_time(piece: Piece) -> bool:
    """`walk 20 min, how far?`: the time is how long there is."""
    return piece.unit is AmountUnit.SECONDS and bool(piece.amount) and not piece.sets


def _at_stations(pieces: list[Piece], format_: Format, *, resting: bool) -> list[Piece]:
    """In intervals a numbered list says what is done when; elsewhere it is only a list."""
    numbers = {piece.listed for piece in pieces}
    alone = len(numbers) == 1 and not resting
    told = any(piece.station for piece in pieces)
    if format_ is not Format.INTERVALS or told or None in numbers or alone:
        return pieces
    return [replace(piece, station=piece.listed) for piece in pieces]


def _for_calories(pieces: list[Piece]) -> list[Piece]:
    """`Max calories in 10 min` stands above a row that names only the machine."""
    return [
        replace(one, most=True, in_kcal=True) if one.amount is None or one.most else one for one in pieces
    ]


def _one_each(pieces: list[Piece]) -> list[Piece]:
    """Said to alternate, each has a minute of its own."""
    if any(piece.station for piece in pieces):
        return pieces
    return [replace(piece, station=number) for number, piece in enumerate(pieces, 1)]


def _sets(draft: Draft) -> int | None:
    return next((placed.piece.sets for placed in draft.lines if placed.piece.sets), None)


def _settle_minutes(facts: Facts, draft: Draft) -> None:
    """A time beside `for time` is its cap, a cap beside an amrap its length; `2 min max` is one too."""
    only = draft.only
    if facts["format"] is Format.MAX_REPS and only and only.most and only.unit is AmountUnit.SECONDS:
        facts["minutes"] = (only.amount or 0) / 60
    if facts["format"] is Format.MAX_REPS and "minutes" not in facts and "work_s" in facts:
        facts["minutes"] = facts.pop("work_s") / MINUTE_S
    if facts["format"] is Format.INTERVALS and "every_s" not in facts:
        facts |= {"every_s": every_s} if (every_s := in_turn_s(draft)) else {}
    if facts["format"] is Format.AMRAP and "minutes" not in facts and "cap_s" in facts:
        facts["minutes"] = facts.pop("cap_s") / 60
    if facts["format"] is Format.FOR_TIME and "minutes" in facts:
        facts.setdefault("cap_s", facts.pop("minutes") * 60)


def _line(piece: Piece, facts: Facts, amount: int | None, amount_to: int | None) -> Line:
    if piece.maybe_kg and facts.get("scheme"):
        piece = replace(piece, amount=None, loads_kg=(piece.maybe_kg,))
    if facts.get("scheme") and (loads := _pair_of_loads(piece)):
        piece = replace(piece, amount=None, second_amount=None, loads_kg=loads)
    line = as_line(piece)
    is_far = piece.amount is None and facts["format"] is Format.MAX_REPS and "counted_in" in facts
    if piece.most or is_far:
        usual = piece.meaning.unit if piece.meaning else line.unit
        told = AmountUnit.KCAL if piece.in_kcal else facts.get("counted_in", usual)
        return line.model_copy(update={"amount": None, "unit": told})
    if line.amount is None and amount:
        upper = None if amount_to is None else float(amount_to)
        return line.model_copy(update={"amount": float(amount), "amount_to": upper, "unit": AmountUnit.REPS})
    if line.amount is None and facts.get("work_s"):
        counted = ("for calories",) if line.unit is AmountUnit.KCAL else ()
        notes = "; ".join(filter(None, (line.notes, *counted))) or None
        return line.model_copy(update={"amount": facts["work_s"], "unit": AmountUnit.SECONDS, "notes": notes})
    return line


def _pair_of_loads(piece: Piece) -> tuple[Decimal, ...]:
    """`goblet squat, 12/8` under a scheme, which tells how many."""
    first, second = piece.amount, piece.second_amount
    behind = not piece.text[:1].isdigit()
    told = behind and first and second and first > second and not (piece.unit or piece.loads_kg or piece.sets)
    return (Decimal(f"{first:g}"), Decimal(f"{second:g}")) if told else ()


_COUNTED = {Format.AMRAP, Format.FOR_TIME, Format.SETS, Format.INTERVALS, Format.TIME_TRIAL}


def _missing(draft: Draft, facts: Facts) -> Iterator[Problem]:
    """What the format needs and nobody said."""
    if facts["format"] is Format.AMRAP and not facts.get("minutes"):
        yield Problem(draft.row, guess="12 min amrap")
    given = facts.get("scheme") or facts.get("work_s") or draft.facts.get("amount")
    if facts["format"] not in _COUNTED or given:
        return
    for piece, row in draft.placed:
        if piece.amount is None and not piece.most:
            yield Problem(row, piece, _with_an_amount(piece))


def _with_an_amount(piece: Piece) -> str:
    """How the line may be meant: `10 burpees`, `6 x 100 m strides`."""
    if piece.sets and piece.meaning and piece.meaning.unit is AmountUnit.METRES:
        return f"{piece.sets} x 100 m {piece.meaning.spelling}"
    return f"10 {piece.text}"


def _check_lines(draft: Draft) -> Iterator[Problem]:
    """Lines that can't be meant as they stand."""
    own = is_circuit(draft) or _is_of_lines_alone(draft)
    some_sets = any(placed.piece.sets for placed in draft.lines) and not own
    for piece, row in draft.placed:
        if piece.amount_to and piece.amount and piece.amount_to < piece.amount:
            yield Problem(row, piece)
        elif piece.meaning and piece.amount and piece.unit is None and not piece.most:
            yield from _unit_missing(piece, row)
        if some_sets and not piece.sets:
            yield Problem(row, piece, f"3 x {piece.text}")


def is_circuit(draft: Draft) -> bool:
    """`5 x 200 m run, 10 burpees, 15 sit-ups` in one row: the number stands for the whole of it."""
    return bool(draft.facts.get("format")) or stands_for_its_row(draft)


def stands_for_its_row(draft: Draft) -> bool:
    """Whether the sets in front of a row of several things are of all of them."""
    first, *others = draft.lines
    in_one_row = all(placed.row == first.row and not placed.piece.sets for placed in others)
    return bool(first.piece.sets and others) and in_one_row


def _with_its_unit(piece: Piece, meaning: Meaning) -> str:
    """`5 laps` and `8 x hill sprint` are as many, each of some length; `30 plank` are seconds."""
    if meaning.unit is AmountUnit.METRES and meaning.goes and (piece.amount or 0) <= _MOST_TURNS:
        lap = meaning.spelling.startswith("lap")
        return f"{piece.amount:g} x {_LAP_M if lap else _SPRINT_M} m {'run' if lap else meaning.spelling}"
    return f"{piece.amount:g} {meaning.unit} {meaning.spelling}"


def _unit_missing(piece: Piece, row: Row) -> Iterator[Problem]:
    """`30 plank` may be seconds; only what is counted needs no unit."""
    counted = _BREATHS.search(piece.text.lower())
    if piece.meaning and piece.meaning.unit is not AmountUnit.REPS and not counted:
        yield Problem(row, piece, _with_its_unit(piece, piece.meaning))
