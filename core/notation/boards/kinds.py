"""Which kind of part one is that nobody put under a heading: what is lifted, and what is easy at both ends."""

import re
from collections.abc import Iterable, Sequence

from core.measures import AmountUnit
from core.notation.lines.pieces import Piece
from core.sessions.values import Block, BlockKind, Format, Line

# So few of something heavy on the clock are for strength (an estimate).
_FEW = 3
# So many things in turn are a circuit (an estimate).
_CIRCUIT = 3
_EASY_WAYS = frozenset(("easy", "brisk-walk"))
# At such a pace nobody races (common practice, no source).
_EASY_PACES = (
    "easy",
    "gentle",
    "steady",
    "slow",
    "relaxed",
    "recovery",
    "conversational",
    "talking pace",
    "zone [12]",
    "z[12]",
)
_EASY_WORDS = ("easy", "gentle", "slow", "loose", "light")
# Done to get ready (common practice, no source).
_READYING = frozenset(
    ("ankle rock", "arm circle", "arm slide", "cat-cow", "ground reach", "hip circle", "inchworm", "leg swing", "march",
     "neck turn", "shoulder pass-through", "shoulder roll", "trunk rotation", "wrist circle", "warm-up flow")
)  # fmt: skip
_CALMING = frozenset(("breathing", "hip opener", "downward dog", "open book"))


def kind_by_lines(
    kind: BlockKind, format_: Format, lines: Iterable[Line], *, in_rounds: bool = False, in_sets: bool = False
) -> BlockKind:
    """Sets are strength work, and so are a few heavy repetitions whenever the clock says.

    `in_rounds`: the sets are told of all lines together. Of many light ones that is a circuit.
    `in_sets`: a line says itself how often.
    """
    if kind is not BlockKind.MAIN:
        return kind
    told = list(lines)
    if (
        format_ is Format.SETS
        and in_rounds
        and len(told) >= _CIRCUIT
        and not any(line.load_rule for line in told)
    ):
        return BlockKind.MAIN
    shared = any(line.load_rule and line.load_rule.percent for line in told)
    if (format_ is Format.MAX_REPS and (shared or in_sets)) or format_ in {Format.SETS, Format.MAX_LOAD}:
        return BlockKind.STRENGTH
    return BlockKind.STRENGTH if format_ is Format.INTERVALS and _is_heavy(told) else kind


def by_place(blocks: Sequence[Block], headed: Sequence[bool]) -> tuple[Block, ...]:
    """The parts; the first is the warm-up and the last the cool-down where they are easy and nobody said else."""
    told = list(blocks)
    if len(told) < 2:  # noqa: PLR2004 - what is done alone is the work itself
        return tuple(told)
    for at, kind, usual in ((0, BlockKind.WARM_UP, _READYING), (-1, BlockKind.COOL_DOWN, _CALMING)):
        block = told[at]
        open_still = block.kind is BlockKind.MAIN and block.format is Format.QUALITY and not headed[at]
        if open_still and all(_is_easy(line, usual, calm=at < 0) for line in block.lines):
            told[at] = block.model_copy(update={"kind": kind})
    return tuple(told)


def _is_heavy(lines: list[Line]) -> bool:
    if any(line.load_rule and line.load_rule.percent and line.unit is AmountUnit.REPS for line in lines):
        return True
    held = any(line.loads_kg or (line.load_rule and line.load_rule.heavy) for line in lines)
    return held and all(line.unit is AmountUnit.REPS and 0 < (line.amount or 0) <= _FEW for line in lines)


def tells_how_much(block: Block) -> bool:
    """Whether a part says how it is done, or how much of anything."""
    said = block.format is not Format.QUALITY or block.rounds or block.minutes or block.scheme
    return bool(said or any(line.amount or line.loads_kg for line in block.lines))


def is_calming(movement: str) -> bool:
    """Whether what is done is for after the work."""
    return movement in _CALMING or movement.endswith("stretch")


def is_readying(piece: Piece) -> bool:
    """Whether it is done to get ready, or to calm down."""
    movement = piece.meaning.movement if piece.meaning else ""
    return movement in _READYING or is_calming(movement)


def is_taken_easy(piece: Piece) -> bool:
    """Whether what goes far is told to be done at one's ease."""
    said = " ".join((*piece.notes, piece.text.lower()))
    easy = piece.meaning is not None and piece.meaning.variant in _EASY_WAYS
    return easy or any(re.search(rf"\b{word}\b", said) for word in _EASY_PACES)


def _is_easy(line: Line, usual: frozenset[str], *, calm: bool) -> bool:
    if line.variant in _EASY_WAYS or any(word in (line.notes or "").lower() for word in _EASY_WORDS):
        return True
    return line.movement in usual or (calm and is_calming(line.movement))
