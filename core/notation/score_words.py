"""The number in an athlete's words, format by format."""

import re
from collections.abc import Callable, Iterator
from decimal import Decimal

from core.measures import MassUnit
from core.movements.names import key
from core.notation import asking
from core.notation.quantities import MASS_UNIT, NUMBER, kilograms, metres
from core.notation.text import Strip
from core.scores.values import Doubt, ReadScore, Score
from core.sessions.counting import reps_in_all, reps_in_round, reps_of
from core.sessions.values import Block, Format

Reader = Callable[[Strip, Block, MassUnit], ReadScore | None]


_WHOLE = r"(?<![0-9.:])[0-9]{1,5}(?![0-9]|[.:][0-9])"


def _c(pattern: str) -> re.Pattern[str]:
    return re.compile(re.sub(r"(?<!\?P)<n>", _WHOLE, pattern))


_ROUND = r"(?:(?:full|complete|whole) )?(?:rounds?|rds?|rnds?|r)\b"
_REPS = r"(?:reps?|repetitions?)\b"
_HALF = _c(
    rf"(?P<r><n>)(?:\.5| and (?:a )?half| 1/2)\s?{_ROUND}|(?P<r2>(?<![0-9.:])[0-9]{{1,3}})\.5\s?{_ROUND}|(?P<r3><n>)\s?{_ROUND} and (?:a )?half"
)
_ROUNDS = _c(
    rf"(?P<r><n>)\s?{_ROUND}(?:\s?(?:and|\+|plus|&|,|with|then)?\s?(?:an? )?(?:extra |another )?(?P<n><n>)\s?(?:{_REPS}|extra|more|into \w+)?)?"
)
_PLUS = _c(rf"(?P<r><n>)\s?(?:\+|plus|and|&)\s?(?P<n><n>)(?!\s?[+])(?:\s?{_REPS})?")
_LOOSE = _c(r"^\W*(?P<r><n>)\s?[/,\- ]\s?(?P<n><n>)\W*$|^\W*(?P<r2>[0-9]{1,3})\.(?P<n2>[0-9]{2})\W*$")
_TOTAL = _c(rf"(?P<n><n>)\s?(?:total )?{_REPS}(?: (?:total|in all|altogether))?")
_ALONE = _c(r"^[^0-9]*(?P<n><n>)[^0-9]*$")
_OF_WHAT = re.compile(r"^\s*([a-z][a-z \-]{2,40})")

_CLOCK = re.compile(
    r"(?<![0-9:.])(?:(?P<h>[0-9]{1,2}):)?(?P<m>[0-9]{1,3}):(?P<s>[0-9]{2}(?:\.[0-9]{1,2})?)(?![0-9:])"
)
_SPOKEN = re.compile(
    r"(?<![0-9:.])(?P<m>[0-9]{1,3})\s?(?:minutes?|mins?|m|')(?![a-z'])\.?\s?(?:and\s)?"
    r"(?:(?P<s>[0-9]{1,2})(?![0-9:.])\s?(?:seconds?\b|secs?\b|s\b|''|\"|(?!\s?[a-z])|(?=\s))?)?"
)
_SECONDS = re.compile(r"(?<![0-9:.])(?P<s>[0-9]{1,4}(?:\.[0-9])?)\s?(?:seconds?|secs?|s|'')(?![a-z])")
_DOTTED = re.compile(r"(?<![0-9:.])(?P<m>[0-9]{1,2})[. ](?P<s>[0-5][0-9])(?![0-9:.])")
_RUN_ON = re.compile(r"(?<![0-9:.])(?P<m>[0-9]{1,2})(?P<s>[0-5][0-9])(?![0-9:.])")

_CAPPED = re.compile(
    r"\b(?:time[ -]?)?capped\b(?:\s(?:out|it))?|\b(?:hit |at |reached )?(?:the )?(?:time )?cap\b|\btc'?d?\b|\bdnf\b"
    r"|\b(?:did ?n[o']?t|not|un) ?finish(?:ed)?\b|\b(?:ran )?out of time\b|\btimed out\b"
)
_AT_TIME = re.compile(
    r"^[;\s]*(?:at|@|of)\s?(?:[0-9]{1,3}:[0-5][0-9]|[0-9]{1,3}\s?(?:minutes?|mins?|m|')?)(?![0-9a-z])(?!\s?rep)"
)
_LEFT = _c(rf"(?P<n><n>)\s?(?:{_REPS})?\s?(?:left|to go|remaining|short|missing)\b")
_DONE = _c(rf"(?P<n><n>)\s?{_REPS}(?:\s?(?:done|completed|in|finished))?|(?P<n2><n>)\s?(?:done|completed)\b")
_STOPPED = _c(
    r"\b(?:stopped|quit|gave up|bailed|had to stop|pulled out|ended)\b(?:\s(?:at|after|on))?\s?(?P<t>[0-9]{1,3}:[0-9]{2}|<n>\s?(?:reps?|min(?:ute)?s?)?)?"
)

LOAD = re.compile(rf"(?:(?<![0-9.])(?P<c>[12])\s?x\s?)?(?<![0-9.])(?P<a>{NUMBER})\s?(?P<u>{MASS_UNIT})")
_SETS_DONE = re.compile(r"(?<![0-9.])[0-9]{1,2}\s?(?:x|sets? (?:of|x))\s?[0-9]{1,3}(?![0-9.])(?:\s?reps?\b)?")
_METRES = re.compile(rf"(?<![0-9.:])(?P<a>{NUMBER})\s?(?P<u>km|k|m|met(?:er|re)s?|mi|miles?)\b")
_NUMBERS = re.compile(_WHOLE)


def read_number(strip: Strip, block: Block, unit: MassUnit) -> ReadScore | None:
    """The next score of the block's format in the words, taken away from them; None if there is none."""
    for reader in _READERS.get(block.format, ()):
        if read := reader(strip, block, unit):
            return read
    return None


# amrap --------------------------------------------------------------------------------------------------------


def rounds_score(rounds: int, reps: int, block: Block) -> Score:
    """The score of an amrap; as value the rounds with the part of the next one, where a round can be counted."""
    whole = reps_in_round(block)
    part = reps / whole if whole and reps else 0
    return Score(value=round(rounds + part, 3), unit="rounds", rounds=rounds, reps=reps)


def _half_rounds(strip: Strip, block: Block, _: MassUnit) -> ReadScore | None:
    match = strip.take(_HALF)
    if match is None:
        return None
    whole = reps_in_round(block)
    if not whole:
        return asking.unreadable(block)
    rounds = int(match["r"] or match["r2"] or match["r3"])
    return asking.meant(rounds_score(rounds, whole // 2, block))


def _rounds(strip: Strip, block: Block, _: MassUnit) -> ReadScore | None:
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
    """Repetitions of the lines before the one that is named (`6 rounds plus 4 squats`); None if uncountable."""
    named = _OF_WHAT.match(strip.text[at:])
    typed = key(named[1]) if named else ""
    if named is None or len(typed) < 3:
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


def _loose_rounds(strip: Strip, block: Block, _: MassUnit) -> ReadScore | None:
    match = strip.take(_LOOSE)
    if match is None:
        return None
    score = rounds_score(int(match["r"] or match["r2"]), int(match["n"] or match["n2"]), block)
    return beyond_round(score, block) or asking.meant(score)


def _total_reps(strip: Strip, block: Block, _: MassUnit) -> ReadScore | None:
    match = strip.take(_TOTAL)
    if match is None:
        return None
    whole = reps_in_round(block)
    if not whole:
        return asking.unreadable(block)
    return ReadScore(score=rounds_score(*divmod(int(match["n"]), whole), block), sure=True)


def _rounds_alone(strip: Strip, block: Block, _: MassUnit) -> ReadScore | None:
    """A bare number is rounds, unless so many rounds would be a slip but so many repetitions not."""
    match = strip.take(_ALONE)
    if match is None:
        return None
    number, whole = int(match["n"]), reps_in_round(block)
    if whole and number >= whole and number > _plausible_rounds(block, whole):
        return asking.meant(rounds_score(*divmod(number, whole), block))
    return ReadScore(score=rounds_score(number, 0, block), sure=True)


def _plausible_rounds(block: Block, whole: int) -> float:
    # 23-30 mixed light repetitions a minute are kept up by trained people (common practice, no source).
    return (block.minutes or 60) * 40 / whole


# times --------------------------------------------------------------------------------------------------------


def time_score(seconds: float) -> Score:
    return Score(value=seconds, unit="s", seconds=seconds)


def _clock(strip: Strip, _block: Block, _: MassUnit) -> ReadScore | None:
    match = strip.take(_CLOCK)
    if match is None:
        return None
    seconds = int(match["h"] or 0) * 3600 + int(match["m"]) * 60 + float(match["s"])
    if float(match["s"]) >= 60 or (match["h"] and int(match["m"]) >= 60):
        return asking.unsure(Doubt.IMPOSSIBLE, f"{match[0]} looks like a slip. What was your time?")
    return ReadScore(score=time_score(seconds), sure=True)


def _spoken(strip: Strip, _block: Block, _: MassUnit) -> ReadScore | None:
    if match := strip.take(_SPOKEN):
        tail = int(match["s"] or 0)
        score = time_score(int(match["m"]) * 60.0 + tail)
        return ReadScore(score=score, sure=True) if tail < 60 else asking.meant(score)
    if match := strip.take(_SECONDS):
        return ReadScore(score=time_score(float(match["s"])), sure=True)
    return None


def _doubtful_time(strip: Strip, _block: Block, _: MassUnit) -> ReadScore | None:
    """`8.43`, `8 43`, `843` and `9` are read, but asked about."""
    match = strip.take(_DOTTED) or strip.take(_RUN_ON)
    if match:
        return asking.meant(time_score(int(match["m"]) * 60.0 + int(match["s"])))
    alone = strip.take(_ALONE)
    return asking.meant(time_score(int(alone["n"]) * 60.0)) if alone else None


def _seconds_alone(strip: Strip, _block: Block, _: MassUnit) -> ReadScore | None:
    """A bare number under a hold is seconds; a small one may be minutes."""
    match = strip.take(_ALONE)
    if match is None:
        return None
    score = time_score(float(match["n"]))
    return ReadScore(score=score, sure=True) if int(match["n"]) >= 15 else asking.meant(score)


# not finished -------------------------------------------------------------------------------------------------


def capped_score(reps: int | None, block: Block) -> Score:
    return Score(
        value=None if reps is None else float(reps), unit="reps", reps=reps, seconds=block.cap_s, capped=True
    )


def _capped(strip: Strip, block: Block, unit: MassUnit) -> ReadScore | None:
    match = strip.take(_CAPPED)
    if match is None:
        return None
    if at := _AT_TIME.match(strip.text[match.end() :]):
        strip.blank(match.end(), match.end() + at.end())
    reps = _reps_when_capped(strip, block, unit)
    score = capped_score(reps, block)
    if reps is None or reps < 0:
        return asking.how_far(capped_score(None, block))
    whole = reps_in_all(block)
    if whole is not None and reps >= whole:
        return asking.how_far(capped_score(None, block))
    return ReadScore(score=score, sure=True)


def _reps_when_capped(strip: Strip, block: Block, unit: MassUnit) -> int | None:
    """Repetitions done, told as such, as those left, or as rounds."""
    if left := strip.take(_LEFT):
        whole = reps_in_all(block)
        return None if whole is None else whole - int(left["n"])
    whole_round = reps_in_round(block)
    if whole_round and (rounds := _rounds(strip, block, unit)) and rounds.score and rounds.sure:
        return (rounds.score.rounds or 0) * whole_round + (rounds.score.reps or 0)
    if done := strip.take(_DONE):
        return int(done["n"] or done["n2"])
    return None


def _stopped(strip: Strip, block: Block, _: MassUnit) -> ReadScore | None:
    """`stopped at 45`: repetitions or a time? Only the athlete knows."""
    match = strip.take(_STOPPED)
    if match is None or match["t"] is None:
        return None
    said = match["t"].strip()
    if "rep" in said:
        return ReadScore(score=capped_score(int(re.sub("[^0-9]", "", said)), block), sure=True)
    if ":" in said or "min" in said:
        return asking.how_far(capped_score(None, block))
    return asking.finished_or_not(capped_score(int(said), block))


# repetitions, loads, sums -------------------------------------------------------------------------------------


def reps_score(reps: int) -> Score:
    return Score(value=float(reps), unit="reps", reps=reps)


def _all_reps(strip: Strip, _block: Block, _: MassUnit) -> ReadScore | None:
    """All numbers of one list are added up: `20, 15, 7` or `20+15+7`."""
    match = strip.take(_TOTAL)
    if match:
        return ReadScore(score=reps_score(int(match["n"])), sure=True)
    numbers = [int(found) for found in _NUMBERS.findall(strip.text)]
    if not numbers:
        return None
    while strip.take(_NUMBERS):
        pass
    return ReadScore(score=reps_score(sum(numbers)), sure=True)


def load_score(load_kg: Decimal) -> Score:
    return Score(value=float(load_kg), unit="kg", load_kg=load_kg)


def _heaviest(strip: Strip, _block: Block, unit: MassUnit) -> ReadScore | None:
    loads = [kilograms(match["a"], match["u"], unit) for match in _taken(strip, LOAD)]
    strip.take(_SETS_DONE)
    if loads:
        return ReadScore(score=load_score(max(loads)), sure=True)
    numbers = [int(match[0]) for match in _taken(strip, _NUMBERS)]
    return (
        ReadScore(score=load_score(kilograms(str(max(numbers)), None, unit)), sure=True) if numbers else None
    )


def _taken(strip: Strip, pattern: re.Pattern[str]) -> Iterator[re.Match[str]]:
    while match := strip.take(pattern):
        yield match


def _sum_of_times(strip: Strip, block: Block, unit: MassUnit) -> ReadScore | None:
    """Times of every interval, added up."""
    times: list[float] = []
    while read := _clock(strip, block, unit) or _spoken(strip, block, unit):
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
    Format.AMRAP: (_half_rounds, _rounds, _total_reps, _loose_rounds, _rounds_alone),
    Format.FOR_TIME: (_capped, _stopped, _clock, _spoken, _doubtful_time),
    Format.TIME_TRIAL: (_capped, _clock, _spoken, _doubtful_time),
    Format.HOLD: (_clock, _spoken, _seconds_alone),
    Format.MAX_REPS: (_all_reps,),
    Format.MAX_LOAD: (_heaviest,),
    Format.SETS: (_heaviest,),
    Format.INTERVALS: (_sum_of_times, _distance, _all_reps),
}
