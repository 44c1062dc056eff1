"""What nobody scores, or of which nobody could read how: what is told in its own unit, or that it is done."""

import itertools
import re
from typing import Final

from core.measures import MassUnit
from core.notation.scores import asking
from core.notation.scores.each import counted, score_of
from core.notation.scores.loads import read_load
from core.notation.scores.round_counts import rounds_score
from core.notation.scores.said import Told
from core.notation.scores.wording import says
from core.scores.values import ReadScore, Score
from core.sessions.values import Block

_DONE: Final = says("no_score_done")
_NOT_YET: Final = re.compile(
    r"\b(?:not|n't|dont|didnt|tomorrow|later|will|can'?t|couldn'?t|skip|unfortunately|when|if)\b|\?"
)
# In more words than these something else is told too.
_FEW_WORDS: Final = 6
_ALL: Final = re.compile(r"\b(?:all|every)\b")


def read_done(said: Told, block: Block, unit: MassUnit) -> ReadScore | None:
    for reader in (_rounds, _loads, _list, _done):
        if score := reader(said, block, unit):
            # Which of several counts, or that all do, nobody has said.
            return asking.meant(score) if len(score.sets) > 1 else ReadScore(score=score, sure=True)
    return None


def _rounds(said: Told, block: Block, _: MassUnit) -> Score | None:
    rounds = said.of("rounds")
    bare = [one for one in said.of("bare") if one.whole == block.rounds]
    if not rounds and bare and said.has(_ALL):
        rounds = tuple(bare)
    if not rounds or (block.rounds and rounds[0].whole > block.rounds):
        return None
    stopped = bool(block.rounds and rounds[0].whole < block.rounds)
    return rounds_score(rounds[0].whole, 0, block).model_copy(update={"capped": stopped})


def _loads(said: Told, block: Block, unit: MassUnit) -> Score | None:
    told = [one for one in said.of("load", "hands") if one.unit or one.second]
    read = read_load(said, block, unit) if told else None
    return read.score if read and read.sure else None


def _list(said: Told, block: Block, _: MassUnit) -> Score | None:
    """A list of at least two whole numbers, or one with `reps` behind it."""
    if reps := said.of("reps"):
        return counted(sum(one.value for one in reps), "reps")
    if block.partial:
        return None  # what was counted nobody knows
    bare = said.of("bare")
    gaps = [said.gap(*pair) for pair in itertools.pairwise(bare)]
    listed = len(bare) > 1 and all(re.fullmatch(r"(?:[\s,;/-]|and)*", gap) for gap in gaps)
    return score_of([one.value for one in bare], "reps", block) if listed else None


def _done(said: Told, _: Block, __: MassUnit) -> Score | None:
    short = len(said.words.split()) <= _FEW_WORDS and not said.numbers
    is_told = short and said.has(_DONE) and not said.has(_NOT_YET)
    return Score(value=None, unit="done") if is_told else None
