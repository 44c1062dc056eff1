"""What a stretch of text says of a line, and how pieces come together to one."""

import re
from dataclasses import dataclass, replace
from decimal import Decimal
from typing import Literal

from core.measures import AmountUnit, MassUnit
from core.notation.names.catalogued import Meaning
from core.notation.quantities import kilograms
from core.sessions.values import Line, LoadRule

# `2x12s`: two bells of 12
_BELLS = re.compile(r"(?:@\s?)?2\s?x\s?[0-9.]{1,4}s", re.IGNORECASE)
_BRACKET = re.compile(r"[()\[\]{}]")
# What is done in one go: a rule for its load where no other is told.
UNBROKEN = "unbroken"
FAR = frozenset((AmountUnit.METRES, AmountUnit.KCAL))
EachSet = LoadRule | Decimal
Side = Literal["left", "right", "alternating"]


@dataclass
class Piece:
    """What a stretch of text says of a line. Without a name it completes the line before it.

    `listed`: its number in a numbered list. `bare_pair`: a pair of numbers that was taken for a load, but had
    no unit; `bare_share`: a number behind `@` that may be a share of one's best. `in_kcal`: as many calories as
    can be. `each_far`: how far each of them goes, in the coach's words. `maybe_kg`: the load that its amount
    is, if the amount is told elsewhere (`thrusters 43` under a scheme). `each_set`: what changes from set to
    set, `each_said` in the coach's words. `is_loose`: its name was found among words that may say more. `others`: what
    may be done instead, whoever has or can do that.
    """

    start: int
    text: str
    end: int = 0
    amount: float | None = None
    amount_to: float | None = None
    second_amount: float | None = None
    unit: AmountUnit | None = None
    per_side: bool = False
    side: Side | None = None
    station: int | None = None
    listed: int | None = None
    count: int | None = None
    loads_kg: tuple[Decimal, ...] = ()
    bare_pair: tuple[str, str] | None = None
    bare_share: float | None = None
    load_rule: LoadRule | None = None
    each_set: tuple[EachSet, ...] = ()
    each_said: str = ""
    tempo: str | None = None
    notes: tuple[str, ...] = ()
    implement: str | None = None
    sets: int | None = None
    most: bool = False
    in_kcal: bool = False
    each_far: str = ""
    maybe_kg: Decimal | None = None
    meaning: Meaning | None = None
    is_loose: bool = False
    unread: str = ""
    others: tuple["Piece", ...] = ()

    @property
    def says_anything(self) -> bool:
        return any(
            (self.amount, self.per_side, self.side, self.loads_kg, self.load_rule, self.tempo, self.notes)
        ) or bool(self.each_set or self.sets or self.most or self.implement)


def completes(piece: Piece, line: Piece) -> bool:
    """Whether a nameless piece says only what the line before it left open."""
    if piece.meaning or piece.unread or not piece.says_anything:
        return False
    if piece.unit is AmountUnit.METRES and line.meaning and line.meaning.unit is AmountUnit.REPS:
        return False  # nobody does burpees by the metre
    if _is_half_of(piece, line):
        return True
    if piece.load_rule and piece.load_rule.percent and line.meaning and not line.meaning.held:
        return False  # a share of one's best is said of what is lifted
    pairs = (
        (piece.amount, line.amount),
        (piece.loads_kg, line.loads_kg),
        (piece.load_rule, line.load_rule),
        (piece.each_set, line.each_set),
        (piece.tempo, line.tempo),
        (piece.sets, line.sets),
    )
    return not any(new and old for new, old in pairs)


def names_again(piece: Piece, line: Piece) -> bool:
    """Whether it tells how much of what the line before only names: `breathing - 5 slow breaths`."""
    same = piece.meaning and line.meaning and piece.meaning.movement == line.meaning.movement
    return bool(same and piece.amount and not line.says_anything and not line.most)


_HALF = re.compile(
    r"(?P<n>[0-9]{1,3})\s?(?:(?:(?:on |to |for )?(?:each|per|a)\s?|/\s?)(?:side|leg|arm|hand|foot)?|\+\s?(?P=n))"
)


def halved(line: Piece, note: str) -> Piece | None:
    """The line where a note only says how many of it are for each side: `12 lunges (6 each leg)`, `10 cleans (5+5)`."""
    match = _HALF.fullmatch(note.strip().lower())
    half = match is not None and line.amount == 2 * float(match["n"])
    return replace(line, amount=float(match["n"]), per_side=True) if match and half else None


def _is_half_of(piece: Piece, line: Piece) -> bool:
    """Whether `five on each side` only says how the ten of the line before it are shared."""
    halves = piece.amount and line.amount == 2 * piece.amount and piece.unit in {None, line.unit}
    return bool(
        halves and piece.per_side and line.meaning and not (piece.meaning or piece.unread or piece.loads_kg)
    )


def awaits(piece: Piece, line: Piece) -> bool:
    """Whether `max calories` of a piece is for the line behind it: `max calories in 10 min on the rower`."""
    open_line = line.meaning and not (line.unread or line.amount or line.most)
    return bool(piece.most and piece.in_kcal and not piece.meaning and not piece.unread and open_line)


def repeats(piece: Piece, line: Piece) -> bool:
    """Whether a nameless piece is one more set of the line before it, or more of them: `5 @ 60%, 5 @ 70%`."""
    loads = [one.load_rule or one.loads_kg for one in (piece, line)]
    other_side = piece.side and line.side and piece.side != line.side
    next_turn = piece.station is not None and line.station == piece.station - 1
    nameless = not piece.meaning and not piece.unread and bool(piece.sets) is bool(line.sets)
    return bool(
        nameless and line.meaning and piece.amount and line.amount and (all(loads) or other_side or next_turn)
    )


def loads_of(piece: Piece, line: Piece, unit: MassUnit) -> tuple[Decimal, ...]:
    """What a bare number behind a line that has its own amount is: `3 x 30 s, 10` and `4 x 40 m, 2 x 32` tell loads."""
    open_line = line.meaning and line.meaning.held and line.amount and not (line.loads_kg or line.load_rule)
    bells = piece.unit is AmountUnit.SECONDS and _BELLS.fullmatch(piece.text)
    plain = piece.unit is None or bells
    bare = piece.amount and plain and not (piece.meaning or piece.unread or piece.amount_to)
    if not (open_line and bare) or piece.sets not in {None, 1, 2}:
        return ()
    told = [number for number in (piece.amount, piece.second_amount) if number]
    return tuple(kilograms(f"{number:g}", None, unit) for number in told)


def complete(line: Piece, piece: Piece) -> Piece:
    """The line with what `piece` adds."""
    return replace(
        line,
        text=f"{line.text}, {piece.text}",
        amount=piece.amount if _is_half_of(piece, line) else line.amount or piece.amount,
        amount_to=line.amount_to or piece.amount_to,
        second_amount=line.second_amount or piece.second_amount,
        unit=line.unit or piece.unit,
        per_side=line.per_side or piece.per_side,
        side=line.side or piece.side,
        count=line.count or piece.count,
        loads_kg=line.loads_kg or piece.loads_kg,
        load_rule=line.load_rule or piece.load_rule,
        each_set=line.each_set or piece.each_set,
        each_said=line.each_said or piece.each_said,
        tempo=line.tempo or piece.tempo,
        notes=line.notes + piece.notes,
        implement=line.implement or piece.implement,
        sets=line.sets or piece.sets,
        most=line.most or piece.most,
        in_kcal=line.in_kcal or piece.in_kcal,
    )


def as_line(piece: Piece) -> Line:
    """The finished line; the piece must have a meaning."""
    assert piece.meaning is not None
    in_one_go = UNBROKEN in piece.notes and not (piece.most or piece.load_rule or piece.each_set)
    notes = tuple(one for one in piece.notes if one != UNBROKEN) if in_one_go else piece.notes
    return Line(
        written=piece.text,
        movement=piece.meaning.movement,
        variant=piece.meaning.variant,
        implement=piece.implement,
        amount=piece.amount,
        amount_to=piece.amount_to,
        second_amount=piece.second_amount,
        unit=piece.unit or (AmountUnit.REPS if piece.amount else piece.meaning.unit),
        per_side=piece.per_side,
        side=piece.side,
        station=piece.station,
        count=piece.count,
        loads_kg=piece.loads_kg,
        load_rule=LoadRule(unbroken=True) if in_one_go else piece.load_rule,
        tempo=piece.tempo,
        notes=_noted(notes),
        choices=tuple(map(as_line, piece.others)),
    )


def _noted(notes: tuple[str, ...]) -> str | None:
    """All notes in one, without brackets, as it stands in one itself."""
    return " ".join(_BRACKET.sub(" ", "; ".join(notes)).split()) or None
