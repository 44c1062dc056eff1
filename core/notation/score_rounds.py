"""Rounds and repetitions of an amrap in an athlete's words."""

import re

from core.measures import MassUnit
from core.movements.names import key
from core.notation import asking
from core.notation.text import Strip
from core.scores.values import ReadScore, Score
from core.sessions.counting import reps_in_round, reps_of
from core.sessions.values import Block

_SHORTEST_NAME = 3
WHOLE = r"(?<![0-9.:])[0-9]{1,5}(?![0-9]|[.:][0-9])"


def shape(pattern: str) -> re.Pattern[str]:
    return re.compile(re.sub(r"(?<!\?P)<n>", WHOLE, pattern))


ROUND = r"(?:(?:full|complete|whole) )?(?:rounds?|rds?|rnds?|r)\b"
REPS = r"(?:reps?|repetitions?)\b"
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
_OF_WHAT = re.compile(r"^\s*([a-z][a-z \-]{2,40})")


def rounds_score(rounds: int, reps: int, block: Block) -> Score:
    """The score of an amrap; as value the rounds and the part of the next one, if a round can be counted."""
    whole = reps_in_round(block)
    part = reps / whole if whole and reps else 0
    return Score(value=round(rounds + part, 3), unit="rounds", rounds=rounds, reps=reps)


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
    before = _reps_before(strip, match.end(), block) if match["n"] else 0
    if before is None:
        return asking.unreadable(block)
    score = rounds_score(rounds, reps + before, block)
    if before:
        return asking.meant(score)
    return beyond_round(score, block) or ReadScore(score=score, sure=True)


def _reps_before(strip: Strip, at: int, block: Block) -> int | None:
    """Repetitions of the lines before the named one (`6 rounds plus 4 squats`); None if uncountable."""
    named = _OF_WHAT.match(strip.text[at:])
    typed = key(named[1]) if named else ""
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
    whole = reps_in_round(block)
    if not whole or score.rounds is None or score.reps is None or score.reps < whole:
        return None
    more, rest = divmod(score.reps, whole)
    return asking.beyond_round(rounds_score(score.rounds + more, rest, block), whole)


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
    number, whole = int(match["n"]), reps_in_round(block)
    if whole and number >= whole and number > _plausible_rounds(block, whole):
        return asking.meant(rounds_score(*divmod(number, whole), block))
    return ReadScore(score=rounds_score(number, 0, block), sure=True)


def _plausible_rounds(block: Block, whole: int) -> float:
    # 23-30 mixed light repetitions a minute are kept up by trained people (common practice, no source).
    return (block.minutes or 60) * 40 / whole
