"""How many repetitions a block holds, as they are counted on the floor."""

from core.measures import AmountUnit
from core.sessions.values import Block, Format, Line

# Calories are counted one by one like repetitions (common practice, no source); metres and seconds are not.
COUNTED = {AmountUnit.REPS, AmountUnit.KCAL}


def is_in_kcal(block: Block) -> bool:
    """Whether a number told of it can only be calories."""
    return all(line.unit is AmountUnit.KCAL for line in block.every_line)


def is_held_so_long(block: Block) -> bool:
    """Whether its holds last as long as it says, not as long as they go."""
    return block.format is Format.HOLD and all(line.amount is not None for line in block.lines)


def reps_of(line: Line, round_reps: int | None = None) -> int | None:
    """Repetitions of a line in one round, both sides together; None where it isn't counted in any.

    `round_reps` is the scheme's number for this round, taken where the line has no amount of its own.
    """
    amount = line.amount if line.amount is not None else round_reps
    if amount is None or line.unit not in COUNTED:
        return None
    return round(amount) * (2 if line.per_side else 1)


def reps_in_round(block: Block) -> int | None:
    """Repetitions of one round; None where a line is not counted in repetitions or the rounds differ."""
    if block.scheme or block.partial:
        return None
    counts = [reps_of(line) for line in block.lines]
    return None if None in counts or not counts else sum(count for count in counts if count)


def times_in(block: Block) -> int | None:
    """How often an interval begins; None where that isn't written."""
    if block.minutes is None or not block.every_s:
        return block.rounds
    return int(block.minutes * 60 // block.every_s)


def reps_in_all(block: Block) -> int | None:
    """Repetitions from start to end, buy-in and cash-out included; None where they can't be counted."""
    if block.partial:
        return None
    rounds = block.scheme * (block.rounds or 1) if block.scheme else (None,) * (block.rounds or 1)
    counts = [reps_of(line, round_reps) for round_reps in rounds for line in block.lines]
    counts += [reps_of(line) for line in block.buy_in + block.cash_out]
    return None if None in counts else sum(count for count in counts if count)
