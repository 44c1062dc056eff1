"""What each interval took, or each hold lasted."""

import re
from collections.abc import Iterator, Sequence
from typing import Final

from core.measures import MassUnit
from core.notation.scores import asking
from core.notation.scores.each import (
    ALL,
    BOTH_SIDES,
    STOPPED,
    TOO_SHORT_S,
    Value,
    counted,
    is_one_list,
    of_all,
    read_values,
    score_of,
    times_of,
)
from core.notation.scores.numbers import Number
from core.notation.scores.round_counts import ALL_BUT, so_many_left
from core.notation.scores.said import Told
from core.notation.scores.times import MINUTE_S, bare_times, dotted
from core.scores.values import ReadScore, Score
from core.scores.ways import Way, way_of
from core.sessions.counting import is_held_so_long
from core.sessions.values import Block


def read_holds(said: Told, block: Block, _: MassUnit) -> ReadScore | None:
    """Every set of holds, added up: `48 s, 41 s`, `10 10 9`; all of them where it says how long; of tries the best."""
    values = _holds_in(said)
    if way_of(block) is Way.HOLD:
        return _best_hold(said, values, block)
    sets = block.rounds or 1
    if is_held_so_long(block) and len(values) <= 1 and said.has(ALL):
        return ReadScore(score=score_of([float(block.lines[0].amount or 0)] * sets, "s", block), sure=True)
    if times := said.of("times"):
        return ReadScore(score=score_of([times[0].second or 0] * times[0].whole, "s", block), sure=True)
    read = read_values(said, values, "s", block)
    is_one = len(values) == 1 and not said.is_said(values[0][1], "each", "sum")
    if read and read.score and is_one and block.counts is None:
        return None
    return read


def _holds_in(said: Told) -> list[Value]:
    plain = [(one.value, one) for one in said.of("clock", "span") if not one.second]
    bare = said.of("bare")
    both = said.of("clock", "span", "bare")
    if plain and bare and is_one_list(said, both):
        return [(dotted(one) or one.value, one) for one in both]  # `1:20 1:05 55`, `1:20 1.05`
    if plain:
        return plain
    times = [(seconds, one) for seconds, one, is_plain in bare_times(said) if is_plain]
    is_one = said.is_spoken and len(times) == 1 and len(bare) == 2  # noqa: PLR2004 - `one forty-five`
    if len(bare) > 1 and len(times) != len(bare) and not is_one:
        return [(dotted(one) or one.value, one) for one in bare]
    return times or [(one.value, one) for one in bare]


def _best_hold(said: Told, values: Sequence[Value], block: Block) -> ReadScore | None:
    if not values:
        return None
    best = [value for value in values if said.is_said(value[1], "best")] or list(values)
    if len(best) > 1 and (said.has(BOTH_SIDES) or block.lines[0].per_side):
        return asking.which_number(tuple(counted(value, "s") for value, _ in best[:2]))
    value, one = max(best, key=lambda pair: pair[0])
    score = counted(value, "s").model_copy(
        update={"sets": tuple(v for v, _ in values) if len(values) > 1 else ()}
    )
    doubtful = one.kind == "bare" and value < TOO_SHORT_S
    return asking.meant(score) if doubtful else ReadScore(score=score, sure=True)


def read_splits(said: Told, block: Block, _: MassUnit) -> ReadScore | None:
    """The time of each interval; `did 4 of 5` where nobody timed them."""
    clocks = [(one.value, one) for one in said.of("clock", "span") if not one.second]
    values = clocks or [(seconds, one) for seconds, one, plain in _split_times(said) if plain]
    values = [pair for pair in values if not _is_rest(pair[1], said)]
    if values and (read := read_values(said, values, "s", block)):
        if read.score and read.sure and said.has(STOPPED):
            return read.model_copy(update={"score": _one_less(read.score, values, block)})
        if read.sure or not _held(said, block):
            return read
    return _held(said, block)


def _one_less(score: Score, values: Sequence[Value], block: Block) -> Score:
    """Who says that they left the fifth out, of whose five times four are told, missed one."""
    every = times_of(block)
    return (
        score.model_copy(update={"capped": True, "rounds": len(values)})
        if every and len(values) < every
        else score
    )


def _is_rest(one: Number, said: Told) -> bool:
    return bool(re.match(r"\s?(?:rest|off|between)\b", said.behind(one)))


def _split_times(said: Told) -> Iterator[tuple[float, Number, bool]]:
    """`2.08 2.10`, `1 55 x3, 1 57`; lone numbers under a minute are seconds."""
    bare = said.of("bare", "load")
    at = 0
    while at < len(bare):
        one, other = bare[at], bare[at + 1] if at + 1 < len(bare) else None
        paired = (
            other
            and said.gap(one, other) == " "
            and one.value <= MINUTE_S
            and re.match(r"[0-5][0-9]", other.text)
        )
        if (seconds := dotted(one)) is not None:
            yield seconds, one, True
        elif paired and other and one.value < MINUTE_S / 4:
            yield one.value * MINUTE_S + other.value, other, True
            at += 1
        elif one.value >= TOO_SHORT_S:
            yield one.value, one, True
        at += 1


def _held(said: Told, block: Block) -> ReadScore | None:
    """How many of them were done, where nobody timed them: `all five`, `did 4 of 5`."""
    every = times_of(block)
    if every is None:
        return None
    done = _how_many(said, every)
    if done is None or done > every:
        return None
    score = Score(value=float(done), unit="rounds", rounds=done, capped=done < every)
    return ReadScore(score=score, sure=True)


_DID: Final = re.compile(r"\b(?:did|only|managed|got)\s(?:the )?(?:first )?[0-9]")


def _how_many(said: Told, every: int) -> int | None:
    if of := of_all(said, every):
        return of[0].whole if of[0].second in {every, None} else None
    if found := said.of("rounds", "sets"):
        return found[-1].whole
    bare = [one for one in said.of("bare") if one.value == one.whole]
    if (
        len(bare) == 1
        and bare[0].whole <= every
        and (re.match(r"\s?of them\b", said.behind(bare[0])) or said.has(ALL) or said.has(_DID))
    ):
        return bare[0].whole
    if but := ALL_BUT.search(said.words):
        return every - so_many_left(but)
    return every if not bare and not said.of("left", "turn") and said.has(ALL) else None
