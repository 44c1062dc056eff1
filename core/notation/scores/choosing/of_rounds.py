"""Rounds and repetitions of an amrap, in every way in which numbers tell them; how far somebody got in a round."""

import itertools
import re
from collections.abc import Iterator, Sequence
from typing import Final, NamedTuple

from core.measures import AmountUnit
from core.notation.scores.choosing.candidates import Heard, Reading, Uses
from core.notation.scores.lines_told import Named, before_line, count_of, in_a_round, named_lines, total
from core.notation.scores.numbers import Number
from core.notation.scores.round_counts import rounds_score
from core.sessions.counting import reps_in_round
from core.sessions.values import Block

_MOST_ROUNDS: Final = 99
# More lines than these nobody names of one round.
_MOST_NAMED: Final = 5
# So many rounds' repetitions beside whole rounds may be a slip, and are asked about.
_SLIPS: Final = 3
_TO_NAME: Final = re.compile(r"\s?(?:of (?:the |my )?|x |the |more )?")


class Place(NamedTuple):
    """How far somebody got: whole rounds, and repetitions of the next."""

    rounds: int
    reps: int
    uses: Uses
    how: str


def as_rounds(heard: Heard) -> Iterator[Reading]:
    for place in places(heard):
        yield Reading(rounds_score(place.rounds, place.reps, heard.block), place.uses, place.how)
    whole = reps_in_round(heard.block)
    for at, one in enumerate(heard.numbers):
        if whole and one.value == one.whole and one.kind != "clock":
            yield Reading(rounds_score(*divmod(one.whole, whole), heard.block), ((at, "total"),), "total")


def places(heard: Heard) -> Iterator[Place]:
    """Of each number as rounds that were done, or the one that was begun, with each other one as what was more."""
    lines = tuple(upto_lines(heard))
    for at, one in enumerate(heard.numbers):
        if one.kind == "clock" or one.value > _MOST_ROUNDS:
            continue
        if one.value == one.whole:
            yield from _from_rounds(at, heard, lines)
        elif whole := in_a_round(heard.block):
            yield Place(one.whole, whole // 2, ((at, "rounds"),), "half a round")


def _from_rounds(at: int, heard: Heard, lines: Sequence[tuple[Uses, int]]) -> Iterator[Place]:
    told = heard.numbers[at].whole
    yield Place(told, 0, ((at, "rounds"),), "rounds alone")
    if told:
        yield Place(told - 1, 0, ((at, "nth"),), "in a round")
    more = [*_more(at, heard), *((uses, reps, "lines") for uses, reps in lines if at not in dict(uses))]
    for uses, reps, how in more:
        yield Place(told, reps, ((at, "rounds"), *uses), f"rounds and {how}")
        if told:
            yield Place(told - 1, reps, ((at, "nth"), *uses), f"in a round, and {how}")
    for line, without in _all_but(heard) if told else ():
        yield Place(told - 1, without, ((at, "rounds"),), f"all but a line {line}")
    if whole := in_a_round(heard.block) if told else None:
        for uses, reps, _ in more:
            if 0 < reps < whole and len(uses) == 1 and uses[0][1] == "more":
                yield Place(told - 1, whole - reps, ((at, "rounds"), (uses[0][0], "short")), "rounds less")


def _more(rounds: int, heard: Heard) -> Iterator[tuple[Uses, int, str]]:
    most = _SLIPS * (in_a_round(heard.block) or _MOST_ROUNDS)
    for at, one in enumerate(heard.numbers):
        if at == rounds or one.kind == "clock" or one.value != one.whole or one.value >= most:
            continue
        yield ((at, "more"),), one.whole, "more"
        if one.kind == "metres" and (reps := _into_distance(one.whole, heard.block)) is not None:
            yield ((at, "of a line"),), reps, "part of a distance"


def _into_distance(metres: int, block: Block) -> int | None:
    """`6 rounds + 60 m`: all that stands before the distance was done too."""
    for at, line in enumerate(block.lines):
        before, own = before_line(block, at), count_of(line)
        if line.unit is AmountUnit.METRES and own and before is not None and metres < own:
            return before + metres
    return None


def _all_but(heard: Heard) -> Iterator[tuple[int, int]]:
    """`7 rounds minus the run`: of the last one all but that."""
    lines = heard.block.lines
    counts = [0 if line.unit is AmountUnit.METRES else count_of(line) for line in lines]
    whole = total(counts)
    for named in named_lines(heard.said.words, heard.block) if whole else ():
        yield int(named.line == len(lines) - 1), (whole or 0) - (counts[named.line] or 0)


def upto_lines(heard: Heard) -> Iterator[tuple[Uses, int]]:
    """How far in a round, by the lines that are named: those with a number so far, the others done."""
    named = list(named_lines(heard.said.words, heard.block))[:_MOST_NAMED]
    mentions = [(one.line, _number_beside(one, heard)) for one in named]
    for first, last in itertools.combinations(range(len(mentions) + 1), 2):
        told = mentions[first:last]
        if (done := _upto(told, heard)) is not None:
            yield tuple((at, "of a line") for _, at in told if at is not None), done


def _upto(told: Sequence[tuple[int, int | None]], heard: Heard) -> int | None:
    done = 0
    for line, at in told:
        before, own = before_line(heard.block, line), count_of(heard.block.lines[line])
        so_far = own if at is None else heard.numbers[at].whole
        if before is None or own is None or so_far is None or so_far > own:
            return None
        in_metres = at is None and heard.block.lines[line].unit is AmountUnit.METRES
        done = max(done, before) + (0 if in_metres else so_far)
    return done


def _number_beside(named: Named, heard: Heard) -> int | None:
    for at, one in enumerate(heard.numbers):
        if one.end <= named.start and _TO_NAME.fullmatch(heard.said.words[one.end : named.start]):
            return at if _is_counted(one) else None
    return None


def _is_counted(one: Number) -> bool:
    return one.kind != "clock" and one.value == one.whole
