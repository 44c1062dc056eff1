"""The number in an athlete's words, format by format."""

import re
from collections.abc import Callable, Iterator
from decimal import Decimal
from itertools import pairwise

from core.measures import AmountUnit, MassUnit
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
    read_dotted,
    read_doubtful_time,
    read_seconds_alone,
    read_spoken,
    read_stopped,
    time_score,
)
from core.notation.text import Strip
from core.scores.values import ReadScore, Score
from core.sessions.counting import is_held_so_long, reps_in_round, times_in
from core.sessions.values import Block, Format

Reader = Callable[[Strip, Block, MassUnit], ReadScore | None]

LOAD = re.compile(rf"(?:(?<![0-9.])(?P<c>[12])\s?x\s?)?(?<![0-9.])(?P<a>{NUMBER})\s?(?P<u>{MASS_UNIT})")
_SETS_DONE = re.compile(
    r"(?<![0-9.])[0-9]{1,2}\s?(?:x|sets? (?:of|x))\s?[0-9]{1,3}(?![0-9.])(?:\s?reps?\b)?"
    r"|(?<![0-9.])[0-9]{1,2}\s?(?:full |good |hard |work(?:ing)? )?"
    r"(?:sets?|series?|rounds?|rds?|min(?:ute)?s?|singles|doubles|triples|times|reps?)\b"
    r"|(?<=;)\s?(?:x|for|the|times|of)\s[0-9]{1,2}(?![0-9.])|(?<![0-9.])[0-9]{1,2}\s?(?:x\s?)?@(?=\s?[0-9;])"
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
# A bare number beyond it may well be in pounds (estimate).
_HEAVY_BARE_KG = 180
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
_CLOCKS = re.compile(r"[0-9][:.][0-5][0-9]")
_ALL = re.compile(r"\b(?:all|every one|each)\b")
# `so 26`, `I write 31`: the number that somebody ends with
_CONCLUDED = shape(r"\b(?:so|i (?:write|count)|count|makes|total)\s(?:it\s|of\s)?(?P<n><n>)[\s.!]*$")
# What is counted otherwise than in repetitions.
_OF_OTHERS = re.compile(r"[0-9]\s?(?:rounds?|rds?|sets?|min(?:ute)?s?|of them)\b")


def read_number(strip: Strip, block: Block, unit: MassUnit) -> ReadScore | None:
    """The next score of the block's format in the words, taken away from them; None if there is none."""
    for reader in _READERS.get(block.format, ()):
        if read := reader(strip, block, unit):
            return read
    return None


def reps_score(reps: int) -> Score:
    return Score(value=float(reps), unit="reps", reps=reps)


def _all_reps(strip: Strip, block: Block, _: MassUnit) -> ReadScore | None:
    """All numbers of one list are added up: `20, 15, 7` or `20+15+7`; asked about with other words between."""
    match = strip.take(TOTAL) or strip.take(_FLIGHTS) or _CONCLUDED.search(strip.text)
    if match:
        strip.blank(0, len(strip.text) if match.re is _CONCLUDED else 0)
        return ReadScore(score=reps_score(int(match["n"])), sure=True)
    found = list(_NUMBERS.finditer(strip.text))
    if not found or _OF_OTHERS.search(strip.text) or _is_timed(block) or _is_in_metres(block):
        return None
    if block.format is Format.INTERVALS and len(found) == 1 and int(found[0][0]) == times_in(block):
        return None  # how often, not how many
    gaps = [strip.text[one.end() : other.start()] for one, other in pairwise(found)]
    while strip.take(_NUMBERS):
        pass
    score = reps_score(sum(int(one[0]) for one in found))
    one_list = all(_BETWEEN_NUMBERS.fullmatch(gap) and ". " not in gap for gap in gaps)
    one_list &= block.format is not Format.MAX_REPS or len(found) in {1, block.rounds or len(found)}
    return ReadScore(score=score, sure=True) if one_list else asking.meant(score)


def _is_timed(block: Block) -> bool:
    """Whether each time is so many metres, so that what is told of it is how long it took."""
    metres = all(line.unit is AmountUnit.METRES and line.amount for line in block.lines)
    return block.format is Format.INTERVALS and metres and not block.work_s


def _is_in_metres(block: Block) -> bool:
    return block.format is Format.MAX_REPS and all(line.unit is AmountUnit.METRES for line in block.lines)


def _times_done(strip: Strip, block: Block, _: MassUnit) -> ReadScore | None:
    """`11 rounds and 8`, where it is written how much each time holds; a lone number is no more than there are."""
    whole, times = reps_in_round(block), times_in(block)
    if not whole or not times or any(line.station for line in block.lines):
        return None  # where turns are taken, nobody can tell whose a number is
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


def _heaviest(strip: Strip, block: Block, unit: MassUnit) -> ReadScore | None:
    """The heaviest of what was lifted: with a unit, before how often, or else too much to be repetitions."""
    loads = [kilograms(match["a"], match["u"], unit) for match in _taken(strip, LOAD)]
    loads += [kilograms(match["a"], None, unit) for match in _taken(strip, _LOAD_FIRST)]
    while strip.take(_SETS_DONE):
        pass
    if not loads and _SECONDS_TOLD.search(strip.text):
        return None
    sure, most = bool(loads), _most_in_a_set(block)
    bare = [match[0] for match in _taken(strip, _BARE_LOADS)]
    # as many as there are repetitions: how heavy isn't told
    loads += [kilograms(number, None, unit) for number in bare if float(number) > most]
    if not loads:
        return None
    score = load_score(max(loads))
    return (
        asking.meant(score) if not sure and max(loads) > _HEAVY_BARE_KG else ReadScore(score=score, sure=True)
    )


def _most_in_a_set(block: Block) -> float:
    """More than so many repetitions of a set are no repetitions; one more than written is done now and then."""
    written = [line.amount_to or line.amount or 0 for line in block.lines if line.unit is AmountUnit.REPS]
    return max((*written, *block.scheme), default=0) + (block.format is Format.SETS)


def _taken(strip: Strip, pattern: re.Pattern[str]) -> Iterator[re.Match[str]]:
    while match := strip.take(pattern):
        yield match


def _holds(strip: Strip, block: Block, unit: MassUnit) -> ReadScore | None:
    """Every set of holds, added up: `48 s, 41 s, 37 s`, `10 10 9`; all of them where it says how long."""
    sets = block.rounds or 1
    if sets == 1:
        return None
    if (
        is_held_so_long(block)
        and len(block.lines) == 1
        and not _NUMBERS.search(strip.text)
        and strip.take(_ALL)
    ):
        return ReadScore(score=time_score(sets * float(block.lines[0].amount or 0)), sure=True)
    if read := _sum_of_times(strip, block, unit):
        return read
    return _bare_list(strip, sets)


def _bare_list(strip: Strip, count: int) -> ReadScore | None:
    found = list(_NUMBERS.finditer(strip.text))
    if len(found) != count:
        return None
    while strip.take(_NUMBERS):
        pass
    return ReadScore(score=time_score(sum(float(one[0]) for one in found)), sure=True)


def _sum_of_times(strip: Strip, block: Block, unit: MassUnit) -> ReadScore | None:
    """Times of every interval, added up; `all 12 minutes` are none where it isn't metres that are timed."""
    times: list[float] = []
    if block.format is Format.INTERVALS and not _is_timed(block) and not _CLOCKS.search(strip.text):
        return None
    while (
        read := read_clock(strip, block, unit)
        or read_dotted(strip, block, unit)
        or read_spoken(strip, block, unit)
    ):
        if read.score is None or not read.sure:
            return read
        times.append(read.score.seconds or 0)
    return ReadScore(score=time_score(sum(times)), sure=True) if times else None


def _far(strip: Strip, block: Block, unit: MassUnit) -> ReadScore | None:
    return _distance(strip, block, unit) if _is_in_metres(block) else None


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
        read_dotted,
        read_spoken,
        read_doubtful_time,
    ),
    Format.TIME_TRIAL: (read_capped, read_clock, read_dotted, read_spoken, read_doubtful_time),
    Format.HOLD: (_holds, read_clock, read_dotted, read_spoken, read_seconds_alone),
    Format.MAX_REPS: (_far, _all_reps),
    Format.MAX_LOAD: (_heaviest,),
    Format.SETS: (_heaviest,),
    Format.INTERVALS: (_times_done, _sum_of_times, _distance, _all_reps),
}
