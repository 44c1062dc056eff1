"""Whether every number that may be of a score is in it, or is the session's own: what is left over is a doubt."""

from collections import Counter
from collections.abc import Iterable, Iterator, Sequence
from functools import lru_cache
from typing import Final

from core.measures import KG_PER_POUND
from core.notation.scores.lines_told import count_of, first_named, in_a_round
from core.notation.scores.numbers import Number
from core.notation.scores.said import Told
from core.scores.values import Score
from core.scores.ways import OWN, Way, way_of
from core.sessions.values import Block

# What only says something of a number beside it.
_SAID: Final = ("best", "worst", "each", "average", "about", "effort", "stretch", "device")
# These tell how far it was from there, or which one it was.
_FROM_THERE: Final = frozenset({"left", "turn", "of", "span"})
_MINUTE_S: Final = 60
_NEAR: Final = 0.06
_BLOCKS, _SCORES = 64, 512


def left_over(said: Told, score: Score, block: Block, *, alone: bool = True) -> tuple[Number, ...]:
    """The numbers in the kind of its scores that nothing accounts for. `alone`: no other part is scored."""
    known = accounted(score, block)
    found = said.of("bare", *OWN[way_of(block)])
    if any(_is_whole(one, found, said) and is_near(one, known) for one in found):
        return ()
    behind = [one.value for one in found[1:]]
    if score.rounds is not None and sum(behind) in {score.reps, (score.reps or 0) % (in_a_round(block) or 1)}:
        return ()  # line by line of the round that was begun
    return tuple(
        one
        for one in found
        if one.kind not in _FROM_THERE
        and not said.is_said(one, *_SAID)
        and not _is_known(one, known, said, score, block, alone=alone)
    )


def _is_whole(one: Number, found: Sequence[Number], said: Told) -> bool:
    """`38 total, 25 in the first half`: what is told to be all, and no more comes behind it than a part of it."""
    behind = sum(other.value for other in found if other.start > one.start)
    return said.is_said(one, "sum") and behind <= one.value


def accounts_for(one: Number, score: Score, block: Block) -> bool:
    """Whether a number is the score's, or the session's own."""
    return is_near(one, accounted(score, block))


def is_of_part(one: Number, said: Told, score: Score, block: Block) -> bool:
    """Whether a number is the score's or the session's own, a lighter set of it, or tells how far somebody got."""
    known = accounted(score, block)
    return one.kind in _FROM_THERE or _is_known(one, known, said, score, block, alone=True)


@lru_cache(_SCORES)
def accounted(score: Score, block: Block) -> frozenset[float]:
    """Every number that is the score's, in whichever way it is told, or the session's own."""
    return frozenset(_of_score(score, block)) | _of_block(block)


def _of_score(score: Score, block: Block) -> Iterator[float]:
    told = (
        score.value,
        score.reps,
        score.seconds,
        score.load_kg,
        score.load_kg and score.load_kg / KG_PER_POUND,
        len(score.sets),
        sum(score.sets),
        *score.sets,
        *Counter(score.sets).values(),
    )
    yield from (float(one) for one in told if one is not None)
    for seconds in (score.seconds, *score.sets):
        if seconds is not None:
            minutes, rest = divmod(seconds, _MINUTE_S)
            yield from (minutes, rest, minutes * 100 + rest, minutes + rest / 100, seconds / _MINUTE_S)
    rounds, whole = score.rounds, in_a_round(block)
    if rounds is None and score.reps is not None and whole:
        yield from divmod(score.reps, whole)
        rounds = score.reps // whole
    if rounds is not None:
        yield from (rounds, rounds + 1, (score.reps or 0) + rounds * (whole or 0))


@lru_cache(_BLOCKS)
def _of_block(block: Block) -> frozenset[float]:
    lines = block.every_line
    told = (
        block.rounds,
        block.minutes,
        block.cap_s,
        block.every_s,
        block.work_s,
        block.rest_s,
        *block.scheme,
        (block.cap_s or 0) / _MINUTE_S,
        *(one for line in lines for one in (line.amount, line.amount_to, *line.loads_kg)),
    )
    return frozenset(float(one) for one in told if one)


def _is_known(
    one: Number, known: Iterable[float], said: Told, score: Score, block: Block, *, alone: bool
) -> bool:
    if is_near(one, known):
        return True
    if way_of(block) is Way.LOAD and alone:
        return score.load_kg is None or one.value <= score.load_kg
    named = first_named(said.behind(one), block)
    return named is not None and named.start <= 1 and one.value <= (count_of(block.lines[named.line]) or 0)


def is_near(one: Number, known: Iterable[float]) -> bool:
    values = [value for value in (one.value, one.second, one.value * 1000) if value]
    return not values or any(abs(value - other) < _NEAR for value in values for other in known)
