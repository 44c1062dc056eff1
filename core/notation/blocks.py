"""From what the rows of a block say to the finished block: its format, and what is missing."""

from collections.abc import Callable, Iterator
from dataclasses import dataclass, field, replace
from itertools import groupby
from typing import NamedTuple

from core.measures import AmountUnit
from core.notation.phrases import Facts
from core.notation.pieces import Piece, as_line
from core.notation.reading import not_understood
from core.notation.text import Row
from core.notation.values import NotUnderstood
from core.sessions.values import Block, BlockKind, Format, Line

UNSCORED = {BlockKind.WARM_UP, BlockKind.COOL_DOWN, BlockKind.SKILL}
_MOST_IN_A_SET = 12


class Placed(NamedTuple):
    """A piece and the row it stands in."""

    piece: Piece
    row: Row


@dataclass
class Draft:
    """A block while its rows are read."""

    row: Row
    kind: BlockKind = BlockKind.MAIN
    headed: bool = False
    facts: Facts = field(default_factory=dict)
    lines: list[Placed] = field(default_factory=list)
    buy_in: list[Placed] = field(default_factory=list)
    cash_out: list[Placed] = field(default_factory=list)
    notes: list[str] = field(default_factory=list)
    broken: bool = False

    @property
    def placed(self) -> list[Placed]:
        return self.buy_in + self.lines + self.cash_out

    @property
    def is_empty(self) -> bool:
        return not (self.placed or self.facts or self.notes or self.broken)


class Problem(NamedTuple):
    row: Row
    start: int
    text: str
    guess: str | None = None

    def named(self) -> NotUnderstood:
        return not_understood(self.row, self.start, self.text, self.guess)


def finish(draft: Draft) -> tuple[list[Block], list[NotUnderstood]]:
    """The blocks a draft holds (sets of different counts part it), and what it leaves open.

    A draft with a row that was not understood gets no further complaint about what that row may have said.
    """
    if draft.is_empty:
        return [], []
    if not draft.lines:
        open_end = [] if draft.broken else [_whole(draft, None)]
        return [], [problem.named() for problem in open_end]
    blocks: list[Block] = []
    problems: list[Problem] = []
    for part in _parts(draft):
        block, found = _block(part)
        blocks.append(block)
        problems += found
    return blocks, [problem.named() for problem in problems if not (draft.broken and problem.start < 0)]


def _parts(draft: Draft) -> Iterator[Draft]:
    """One draft per run of lines with the same number of sets, if the lines say how many sets."""
    sets = [placed.piece.sets for placed in draft.lines]
    if draft.facts.get("format") not in {None, Format.SETS} or None in sets or len(set(sets)) == 1:
        yield draft
        return
    for _, run in groupby(draft.lines, key=lambda placed: placed.piece.sets):
        yield replace(draft, lines=list(run))


def _block(draft: Draft) -> tuple[Block, list[Problem]]:
    problems = list(_check_lines(draft))
    facts = dict(draft.facts)
    amount = facts.pop("amount", None)
    format_ = _format(draft)
    if format_ is None:
        problems.append(_whole(draft, "for time"))
        format_ = Format.QUALITY
    facts |= {"format": format_, "rounds": facts.get("rounds") or _sets(draft)}
    _settle_minutes(facts, draft)
    problems += _missing(draft, facts)
    unscored = format_ is Format.QUALITY or draft.kind in UNSCORED
    lines = {
        name: tuple(_line(placed.piece, facts, amount) for placed in getattr(draft, name))
        for name in ("lines", "buy_in", "cash_out")
    }
    block = Block.model_validate(
        {
            "kind": draft.kind,
            "scored": not unscored,
            "notes": "; ".join(draft.notes) or None,
            "partial": draft.broken,
        }
        | facts
        | lines
    )
    return block, problems


def _sets(draft: Draft) -> int | None:
    return next((placed.piece.sets for placed in draft.lines if placed.piece.sets), None)


def _format(draft: Draft) -> Format | None:
    """The format that was said, or the one that the shape of the block leaves no doubt about."""
    said = draft.facts.get("format")
    for rule in _RULES:
        if found := rule(draft, said):
            return found
    return said or _silent(draft)


def _most(draft: Draft, said: Format | None) -> Format | None:
    """`max push-ups`, `max plank`, and `2 min amrap: push-ups`."""
    only = _only(draft)
    if only is None or only.sets or said not in {None, Format.AMRAP, Format.MAX_REPS}:
        return None
    if not (only.most or (said is Format.AMRAP and not only.amount)):
        return None
    held = only.meaning and only.meaning.unit is AmountUnit.SECONDS
    return Format.HOLD if held and said is None else Format.MAX_REPS


def _distance(draft: Draft, said: Format | None) -> Format | None:
    only = _only(draft)
    alone = only and only.unit is AmountUnit.METRES and only.amount and not only.sets and not only.loads_kg
    plain = not (draft.facts.keys() & {"rounds", "scheme", "every_s", "minutes", "rest_s"})
    if alone and plain and said in {None, Format.FOR_TIME} and draft.kind not in UNSCORED:
        return Format.TIME_TRIAL
    return None


def _repeated(draft: Draft, said: Format | None) -> Format | None:
    """`5 x 5 back squats` are sets; `5 x 200 m run` are intervals."""
    if said or not draft.lines or any(not placed.piece.sets for placed in draft.lines):
        return None
    if draft.kind in UNSCORED - {BlockKind.SKILL}:
        return Format.QUALITY
    only = _only(draft)
    runs = only and only.unit in {AmountUnit.METRES, AmountUnit.KCAL} and not only.loads_kg
    return Format.INTERVALS if runs else Format.SETS


_RULES: tuple[Callable[[Draft, Format | None], Format | None], ...] = (_most, _distance, _repeated)


def _only(draft: Draft) -> Piece | None:
    return draft.lines[0].piece if len(draft.lines) == 1 else None


def _silent(draft: Draft) -> Format | None:
    """The format of a block that doesn't say it; None where it must be asked."""
    facts = draft.facts
    if "cap_s" in facts:
        return Format.FOR_TIME
    if draft.kind in UNSCORED:
        return Format.QUALITY
    scheme = facts.get("scheme", ())
    if scheme:
        heavy = max(scheme) <= _MOST_IN_A_SET and len(draft.lines) == 1
        return Format.SETS if heavy or draft.kind is BlockKind.STRENGTH else Format.FOR_TIME
    if draft.kind is BlockKind.STRENGTH and "rounds" in facts:
        return Format.SETS
    return None


def _settle_minutes(facts: Facts, draft: Draft) -> None:
    """A time beside `for time` is its cap, a cap beside an amrap its length; `2 min max` is one too."""
    only = _only(draft)
    if facts["format"] is Format.MAX_REPS and only and only.most and only.unit is AmountUnit.SECONDS:
        facts["minutes"] = (only.amount or 0) / 60
    if facts["format"] is Format.AMRAP and "minutes" not in facts and "cap_s" in facts:
        facts["minutes"] = facts.pop("cap_s") / 60
    if facts["format"] is Format.FOR_TIME and "minutes" in facts:
        facts.setdefault("cap_s", facts.pop("minutes") * 60)


def _line(piece: Piece, facts: Facts, amount: int | None) -> Line:
    line = as_line(piece)
    if piece.most:
        return line.model_copy(
            update={"amount": None, "unit": piece.meaning.unit if piece.meaning else line.unit}
        )
    if line.amount is None and amount:
        return line.model_copy(update={"amount": float(amount), "unit": AmountUnit.REPS})
    if line.amount is None and facts.get("work_s"):
        return line.model_copy(update={"amount": facts["work_s"], "unit": AmountUnit.SECONDS})
    return line


_COUNTED = {Format.AMRAP, Format.FOR_TIME, Format.SETS, Format.INTERVALS, Format.TIME_TRIAL}


def _missing(draft: Draft, facts: Facts) -> Iterator[Problem]:
    """What the format needs and nobody said."""
    if facts["format"] is Format.AMRAP and not facts.get("minutes"):
        yield _whole(draft, "12 min amrap")
    given = facts.get("scheme") or facts.get("work_s") or draft.facts.get("amount")
    if facts["format"] not in _COUNTED or given:
        return
    for piece, row in draft.placed:
        if not piece.amount and not piece.most:
            yield Problem(row, piece.start, piece.text, f"10 {piece.text}")


def _check_lines(draft: Draft) -> Iterator[Problem]:
    """Lines that can't be meant as they stand."""
    some_sets = any(placed.piece.sets for placed in draft.lines) and not _is_circuit(draft)
    for piece, row in draft.placed:
        if (
            (piece.amount_to and piece.amount and piece.amount_to < piece.amount)
            or piece.amount == 0
            or piece.sets == 0
            or any(load == 0 for load in piece.loads_kg)
        ):
            yield Problem(row, piece.start, piece.text)
        elif piece.meaning and piece.amount and piece.unit is None and not piece.most:
            yield from _unit_missing(piece, row)
        if some_sets and not piece.sets:
            yield Problem(row, piece.start, piece.text, f"3 x {piece.text}")


def _is_circuit(draft: Draft) -> bool:
    """`5 x 200 m run, 10 burpees, 15 sit-ups` in one row: the number stands for the whole of it."""
    first, *others = draft.lines
    in_one_row = all(placed.row == first.row and not placed.piece.sets for placed in others)
    return bool(draft.facts.get("format")) or (bool(first.piece.sets and others) and in_one_row)


def _unit_missing(piece: Piece, row: Row) -> Iterator[Problem]:
    """`30 plank` may be seconds; only what is counted needs no unit."""
    if piece.meaning and piece.meaning.unit is not AmountUnit.REPS:
        said = f"{piece.amount:g} {piece.meaning.unit} {piece.meaning.spelling}"
        yield Problem(row, piece.start, piece.text, said)


def _whole(draft: Draft, guess: str | None) -> Problem:
    return Problem(draft.row, -1, draft.row.text.strip(), guess)
