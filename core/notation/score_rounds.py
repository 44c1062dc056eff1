"""Rounds and repetitions of an amrap in an athlete's words."""

import re

from core.measures import AmountUnit, MassUnit
from core.movements.names import key
from core.notation import asking
from core.notation.flights import in_flights
from core.notation.text import Strip
from core.scores.values import ReadScore, Score
from core.sessions.counting import reps_in_round, reps_of
from core.sessions.values import Block, Line

_SHORTEST_NAME = 3
WHOLE = r"(?<![0-9.:])[0-9]{1,5}(?![0-9]|[.:][0-9])"


def shape(pattern: str) -> re.Pattern[str]:
    return re.compile(re.sub(r"(?<!\?P)<n>", WHOLE, pattern))


ROUND = r"(?:(?:full|complete|whole) )?(?:rounds?|rds?|rnds?|r)\b"
REPS = r"(?:reps?|repetitions?|k?cals?|calories)\b"
_HALF = shape(
    rf"(?P<r><n>)(?:\.5| and (?:a )?half| 1/2)\s?{ROUND}|(?P<r2>(?<![0-9.:])[0-9]{{1,3}})\.5\s?{ROUND}"
    rf"|(?P<r3><n>)\s?{ROUND} and (?:a )?half"
)
_ROUNDS = shape(
    rf"(?P<r><n>)\s?{ROUND}(?:\s?(?:and|\+|plus|&|,|with|then)?\s?(?:an? )?(?:extra |another "
    rf")?(?P<n><n>)\s?(?:{REPS}|extra|more|into \w+)?)?"
)
_PLUS = shape(rf"(?P<r><n>)\s?(?:\+|plus|and|&)\s?(?P<n><n>)(?!\s?[+])(?:\s?{REPS})?")
_LOOSE = shape(r"^\W*(?P<r><n>)\s?[/,\- ]\s?(?P<n><n>)\W*$|^\W*(?P<r2>[0-9]{1,3})\.(?P<n2>[0-9]{2})\W*$")
TOTAL = shape(rf"(?P<n><n>)\s?(?:total )?{REPS}(?: (?:total|in all|altogether))?")
ALONE = shape(r"^[^0-9]*(?P<n><n>)[^0-9]*$")
# `14 min` says how long, not how many rounds.
_OTHER_UNIT = re.compile(
    r"\s?(?:m|k?met(?:er|re)s?|km|s|secs?|seconds?|mins?|minutes?|h|hours?|kgs?|kilos?|lbs?|pounds?|cals?|kcal)\b"
)
_METRES = re.compile(
    r"\s?(?:m|met(?:er|re)s?)\b(?:\s(?:of |into |on )?(?:the )?(?:run|row|walk|ski|carry|swim|bike|ride)\b)?"
)
# `4 rounds n 10 push-ups n 5 swings`: there is more than one number could say.
_MORE_TOLD = re.compile(
    r"\s?(?:and|plus|\+|n|then)\s(?!(?:a )?(?:done|scaled|happy|tired|dead|no|my|felt|was|i|it|half))[a-z]{3}"
    r"|[^.!?;,()0-9]{0,20}\b(?:n|and|plus|then)\s[0-9]{1,3}\s?[a-z]"
)
_OF_WHAT = re.compile(r"^\s*([a-z][a-z \-]{2,40})")


def rounds_score(rounds: int, reps: int, block: Block) -> Score:
    """The score of an amrap; as value the rounds and the part of the next one, if a round can be counted."""
    whole = _in_a_round(block)
    part = reps / whole if whole and reps else 0
    return Score(value=round(rounds + part, 3), unit="rounds", rounds=rounds, reps=reps)


def _in_a_round(block: Block) -> int | None:
    """Repetitions of a round, metres counted like them; None where something else is to be done."""
    if block.scheme or block.partial or not block.lines:
        return None
    counts = [_count_of(line) for line in block.lines]
    return None if None in counts else sum(count for count in counts if count)


def _count_of(line: Line) -> int | None:
    in_metres = line.unit is AmountUnit.METRES and line.amount is not None
    return round(line.amount or 0) * (2 if line.per_side else 1) if in_metres else reps_of(line)


def read_half_rounds(strip: Strip, block: Block, _: MassUnit) -> ReadScore | None:
    match = strip.take(_HALF)
    if match is None:
        return None
    whole = reps_in_round(block)
    if not whole:
        return asking.unreadable(block)
    rounds = int(match["r"] or match["r2"] or match["r3"])
    return asking.meant(rounds_score(rounds, whole // 2, block))


def read_rounds(strip: Strip, block: Block, _: MassUnit) -> ReadScore | None:
    match = strip.take(_ROUNDS) or strip.take(_PLUS)
    if match is None:
        return None
    rounds, reps = int(match["r"]), int(match["n"] or 0)
    if match["n"] and (metres := _METRES.match(strip.text, match.end())):
        strip.blank(*metres.span())
        return _part_of_distance(rounds, reps, block)
    before = _reps_before(strip, match.end(), block) if match["n"] else 0
    if before is None:
        return asking.unreadable(block)
    score = rounds_score(rounds, reps + before, block)
    if before or _MORE_TOLD.match(strip.text, match.end()):
        return asking.meant(score)
    return beyond_round(score, block) or ReadScore(score=score, sure=True)


def _part_of_distance(rounds: int, metres: int, block: Block) -> ReadScore:
    """`6 rounds + 60 m`: all that stands before the distance was done too."""
    before = 0
    for line in block.lines:
        count = _count_of(line)
        if count is None:
            break
        if line.unit is AmountUnit.METRES and metres < count:
            score = rounds_score(rounds, before + metres, block)
            return asking.part_of_line(score, rounds, metres, line.movement) if before else sure(score)
        before += count
    return asking.unreadable(block)


def sure(score: Score) -> ReadScore:
    return ReadScore(score=score, sure=True)


def _reps_before(strip: Strip, at: int, block: Block) -> int | None:
    """Repetitions of the lines before the named one (`6 rounds plus 4 squats`); None if uncountable."""
    named = _OF_WHAT.match(strip.text[at:])
    typed = key(in_flights(named[1])) if named else ""
    if named is None or len(typed) < _SHORTEST_NAME:
        return 0
    for index, line in enumerate(block.lines):
        spelling = key(line.movement)
        if typed.startswith(spelling) or spelling.endswith(typed):
            counts = [reps_of(before) for before in block.lines[:index]]
            strip.blank(at, at + named.end())
            return None if None in counts else sum(count for count in counts if count)
    return 0


def beyond_round(score: Score, block: Block) -> ReadScore | None:
    """Repetitions that fill a whole round belong to the rounds: which was meant is asked."""
    whole = _in_a_round(block)
    if not whole or score.rounds is None or score.reps is None or score.reps < whole:
        return None
    more, rest = divmod(score.reps, whole)
    return asking.beyond_round(rounds_score(score.rounds + more, rest, block), _in_words(block, whole))


def _in_words(block: Block, whole: int) -> str:
    """`30 repetitions`, `10 repetitions and 200 m`."""
    metres = sum(_count_of(line) or 0 for line in block.lines if line.unit is AmountUnit.METRES)
    reps = whole - metres
    return " and ".join([*([f"{reps} repetitions"] if reps else []), *([f"{metres} m"] if metres else [])])


def read_loose_rounds(strip: Strip, block: Block, _: MassUnit) -> ReadScore | None:
    match = strip.take(_LOOSE)
    if match is None:
        return None
    score = rounds_score(int(match["r"] or match["r2"]), int(match["n"] or match["n2"]), block)
    return beyond_round(score, block) or asking.meant(score)


def read_total_reps(strip: Strip, block: Block, _: MassUnit) -> ReadScore | None:
    match = strip.take(TOTAL)
    if match is None:
        return None
    whole = reps_in_round(block)
    if not whole:
        return asking.unreadable(block)
    return ReadScore(score=rounds_score(*divmod(int(match["n"]), whole), block), sure=True)


def read_rounds_alone(strip: Strip, block: Block, _: MassUnit) -> ReadScore | None:
    """A bare number is rounds, unless so many rounds would be a slip but so many repetitions not."""
    match = strip.take(ALONE)
    if match is None:
        return None
    if _OTHER_UNIT.match(match[0], match.end("n") - match.start()):
        return asking.unreadable(block)
    number, whole = int(match["n"]), reps_in_round(block)
    if whole and number >= whole and number > _plausible_rounds(block, whole):
        return asking.meant(rounds_score(*divmod(number, whole), block))
    return ReadScore(score=rounds_score(number, 0, block), sure=True)


def _plausible_rounds(block: Block, whole: int) -> float:
    # 23-30 mixed light repetitions a minute are kept up by trained people (common practice, no source).
    return (block.minutes or 60) * 40 / whole
