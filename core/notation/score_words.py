"""The number in an athlete's words, format by format."""

import re
from collections.abc import Callable, Iterator
from decimal import Decimal
from itertools import pairwise

from core.measures import MassUnit
from core.notation import asking
from core.notation.flights import FLIGHTS
from core.notation.quantities import MASS_UNIT, NUMBER, kilograms, metres
from core.notation.score_parts import read_part_of_rounds
from core.notation.score_rounds import (
    ALONE,
    REPS,
    ROUND,
    TOTAL,
    WHOLE,
    read_half_rounds,
    read_loose_rounds,
    read_rounds,
    read_rounds_alone,
    read_total_reps,
    shape,
)
from core.notation.score_times import (
    read_capped,
    read_clock,
    read_doubtful_time,
    read_seconds_alone,
    read_spoken,
    read_stopped,
    time_score,
)
from core.notation.text import Strip
from core.scores.values import ReadScore, Score
from core.sessions.counting import reps_in_round, times_in
from core.sessions.values import Block, Format

Reader = Callable[[Strip, Block, MassUnit], ReadScore | None]

LOAD = re.compile(rf"(?:(?<![0-9.])(?P<c>[12])\s?x\s?)?(?<![0-9.])(?P<a>{NUMBER})\s?(?P<u>{MASS_UNIT})")
_SETS_DONE = re.compile(
    r"(?<![0-9.])[0-9]{1,2}\s?(?:x|sets? (?:of|x))\s?[0-9]{1,3}(?![0-9.])(?:\s?reps?\b)?"
    r"|(?<![0-9.])[0-9]{1,2}\s?(?:full |good |hard |work(?:ing)? )?(?:sets?|series?|rounds?|rds?|min(?:ute)?s?)\b"
)
# `130 x 2`: nobody does so many sets; the load stands before how often it was lifted.
_LOAD_FIRST = re.compile(
    r"(?<![0-9.])(?P<a>(?:[2-9][0-9]|[1-9][0-9]{2})(?:\.[0-9]{1,2})?)\s?x\s?[0-9]{1,2}(?![0-9.])"
)
# What a number counts that is no weight.
_BARE_LOADS = re.compile(
    rf"(?<![0-9.:]){NUMBER}(?![0-9:.]*[0-9]|\s?(?:seconds?|secs?|s|minutes?|mins?|m|met(?:er|re)s?|reps?|k?cals?|%)(?![a-z]))"
)
_SECONDS_TOLD = re.compile(r"[0-9]\s?(?:seconds?|secs?|s)\b")
_BETWEEN_NUMBERS = re.compile(r"(?:[\W_]|and|plus|then|reps?|x)*", re.IGNORECASE)
# What somebody says of every minute: how often they did all of it, and how much of the next one.
_TIMES_DONE = shape(
    rf"(?P<r><n>)\s?(?:{ROUND}|min(?:ute)?s?\b|intervals?\b|times\b)"
    rf"(?:\s?(?:and|\+|plus|&|,|with|then)\s?(?P<n><n>)(?:\s?(?:{REPS}|extra|more))?)?"
    r"|(?P<r2><n>)\s?\+\s?(?P<n2><n>)(?!\s?[+])"
)
_METRES = re.compile(rf"(?<![0-9.:])(?P<a>{NUMBER})\s?(?P<u>km|k|m|met(?:er|re)s?|mi|miles?)\b")
_FLIGHTS = shape(rf"(?:\b(?:climbed|ran|walked|did)(?: up)? )?(?P<n><n>)\s?{FLIGHTS}")
_NUMBERS = re.compile(WHOLE)


def read_number(strip: Strip, block: Block, unit: MassUnit) -> ReadScore | None:
    """The next score of the block's format in the words, taken away from them; None if there is none."""
    for reader in _READERS.get(block.format, ()):
        if read := reader(strip, block, unit):
            return read
    return None


def reps_score(reps: int) -> Score:
    return Score(value=float(reps), unit="reps", reps=reps)


def _all_reps(strip: Strip, _block: Block, _: MassUnit) -> ReadScore | None:
    """All numbers of one list are added up: `20, 15, 7` or `20+15+7`; asked about with other words between."""
    match = strip.take(TOTAL) or strip.take(_FLIGHTS)
    if match:
        return ReadScore(score=reps_score(int(match["n"])), sure=True)
    found = list(_NUMBERS.finditer(strip.text))
    if not found:
        return None
    gaps = [strip.text[one.end() : other.start()] for one, other in pairwise(found)]
    while strip.take(_NUMBERS):
        pass
    score = reps_score(sum(int(one[0]) for one in found))
    one_list = all(_BETWEEN_NUMBERS.fullmatch(gap) for gap in gaps)
    return ReadScore(score=score, sure=True) if one_list else asking.meant(score)


def _times_done(strip: Strip, block: Block, _: MassUnit) -> ReadScore | None:
    """`11 rounds and 8`, where it is written how much each time holds; a lone number is no more than there are."""
    whole, times = reps_in_round(block), times_in(block)
    if not whole or not times:
        return None
    if match := strip.take(_TIMES_DONE):
        rounds, more = int(match["r"] or match["r2"]), int(match["n"] or match["n2"] or 0)
        return _done_so_often(rounds, rounds * whole + more)
    alone = ALONE.match(strip.text)
    if alone is None or int(alone["n"]) > times:
        return None
    strip.take(ALONE)
    return _done_so_often(int(alone["n"]), int(alone["n"]) * whole)


def _done_so_often(rounds: int, reps: int) -> ReadScore:
    return ReadScore(score=Score(value=float(reps), unit="reps", rounds=rounds, reps=reps), sure=True)


def load_score(load_kg: Decimal) -> Score:
    return Score(value=float(load_kg), unit="kg", load_kg=load_kg)


def _heaviest(strip: Strip, _block: Block, unit: MassUnit) -> ReadScore | None:
    loads = [kilograms(match["a"], match["u"], unit) for match in _taken(strip, LOAD)]
    loads += [kilograms(match["a"], None, unit) for match in _taken(strip, _LOAD_FIRST)]
    strip.take(_SETS_DONE)
    if loads:
        return ReadScore(score=load_score(max(loads)), sure=True)
    if _SECONDS_TOLD.search(strip.text):
        return None
    bare = [kilograms(match[0], None, unit) for match in _taken(strip, _BARE_LOADS)]
    return ReadScore(score=load_score(max(bare)), sure=True) if bare else None


def _taken(strip: Strip, pattern: re.Pattern[str]) -> Iterator[re.Match[str]]:
    while match := strip.take(pattern):
        yield match


def _sum_of_times(strip: Strip, block: Block, unit: MassUnit) -> ReadScore | None:
    """Times of every interval, added up."""
    times: list[float] = []
    while read := read_clock(strip, block, unit) or read_spoken(strip, block, unit):
        if read.score is None or not read.sure:
            return read
        times.append(read.score.seconds or 0)
    return ReadScore(score=time_score(sum(times)), sure=True) if times else None


def _distance(strip: Strip, _block: Block, _: MassUnit) -> ReadScore | None:
    match = strip.take(_METRES)
    if match is None:
        return None
    return ReadScore(score=Score(value=metres(match["a"], match["u"]), unit="m"), sure=True)


_READERS: dict[Format, tuple[Reader, ...]] = {
    Format.AMRAP: (read_half_rounds, read_rounds, read_total_reps, read_loose_rounds, read_rounds_alone),
    Format.FOR_TIME: (
        read_part_of_rounds,
        read_capped,
        read_stopped,
        read_clock,
        read_spoken,
        read_doubtful_time,
    ),
    Format.TIME_TRIAL: (read_capped, read_clock, read_spoken, read_doubtful_time),
    Format.HOLD: (read_clock, read_spoken, read_seconds_alone),
    Format.MAX_REPS: (_all_reps,),
    Format.MAX_LOAD: (_heaviest,),
    Format.SETS: (_heaviest,),
    Format.INTERVALS: (_times_done, _sum_of_times, _distance, _all_reps),
}
