"""A score in whole rounds and repetitions, and whether a round has as many as are told."""

import re
from typing import Final

from core.measures import AmountUnit
from core.notation.quantities import NUMBER_WORDS
from core.notation.scores import asking
from core.notation.scores.lines_told import count_of, in_a_round
from core.notation.scores.wording import says
from core.scores.values import ReadScore, Score
from core.sessions.values import Block

# Of as many rounds or intervals as are written.
ALL_BUT: Final = says("all_but")
# Nobody tells how far they ran more exactly.
_TENS_OF_METRES: Final = 10


def so_many_left(but: re.Match[str]) -> int:
    """How many weren't done, by a match of `ALL_BUT`: one, where no number is told."""
    left = but["n"] or "one"
    return int(left) if left.isdigit() else NUMBER_WORDS[left]


def rounds_score(rounds: int, reps: int, block: Block) -> Score:
    """As value the rounds and the part of the next one, if a round can be counted."""
    whole = in_a_round(block)
    part = reps / whole if whole and reps else 0
    return Score(value=round(rounds + part, 3), unit="rounds", rounds=rounds, reps=reps)


def beyond_round(score: Score, block: Block) -> ReadScore | None:
    """Repetitions that fill a whole round belong to the rounds: which was meant is asked."""
    whole = in_a_round(block)
    if not whole or score.rounds is None or score.reps is None:
        return None
    reps, metres = _parts_of_round(block)
    in_words = " and ".join(
        [*([f"{reps} repetitions"] if reps else []), *([f"{metres} m"] if metres else [])]
    )
    if score.reps < whole:
        run = block.lines[-1]
        into = score.reps - (whole - (count_of(run) or 0))
        if run.unit is not AmountUnit.METRES or not reps or into <= 0:
            return None
        if into % _TENS_OF_METRES:
            return asking.how_far_in_round(score.rounds, in_words)
        return asking.part_of_line(score, score.rounds, into, run.movement)
    more, rest = divmod(score.reps, whole)
    return asking.asks_of_a_round(rounds_score(score.rounds + more, rest, block), in_words)


def _parts_of_round(block: Block) -> tuple[int, int]:
    metres = sum(count_of(line) or 0 for line in block.lines if line.unit is AmountUnit.METRES)
    return (in_a_round(block) or 0) - metres, metres
