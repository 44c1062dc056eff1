"""Times, and what was done by those who didn't finish, in an athlete's words."""

import re

from core.measures import MassUnit
from core.notation import asking
from core.notation.quantities import MINUTE_S
from core.notation.score_rounds import ALONE, REPS, read_rounds, shape
from core.notation.text import Strip
from core.scores.values import Doubt, ReadScore, Score
from core.sessions.counting import reps_in_all, reps_in_round
from core.sessions.values import Block

_SURELY_SECONDS = 15
_CLOCK = re.compile(
    r"(?<![0-9:.])(?:(?P<h>[0-9]{1,2}):)?(?P<m>[0-9]{1,3}):(?P<s>[0-9]{2}(?:\.[0-9]{1,2})?)(?![0-9:])"
)
_SPOKEN = re.compile(
    r"(?<![0-9:.])(?P<m>[0-9]{1,3})\s?(?:minutes?|mins?|m|')(?![a-z'])\.?\s?(?:and\s)?"
    r"(?:(?P<s>[0-9]{1,2})(?![0-9:]|\.[0-9])\s?(?:seconds?\b|secs?\b|s\b|''|\"|(?!\s?[a-z])|(?=\s))?)?"
)
_SECONDS = re.compile(r"(?<![0-9:.])(?P<s>[0-9]{1,4}(?:\.[0-9])?)\s?(?:seconds?|secs?|s|'')(?![a-z])")
# `17.42`, `1.52,3`: minutes and seconds, as people type them where a colon is far away
_DOTTED = re.compile(
    r"(?<![0-9:.])(?P<m>[0-9]{1,2})\.(?P<s>[0-5][0-9](?:[.,][0-9])?)(?![0-9:.,]?[0-9]|\s?(?:min|h|k|m\b|lb|cal|mi))"
)
_SPACED = re.compile(r"(?<![0-9:.])(?P<m>[0-9]{1,2})[. ](?P<s>[0-5][0-9])(?![0-9:.])")
_HALVES = re.compile(r"(?<![0-9:.])(?P<m>[0-9]{1,2})\.5\s?(?:minutes?|mins?)\b")
_FLAT = re.compile(r"(?<![0-9:.])(?P<m>[0-9]{1,3})(?::00)? flat\b")
_RUN_ON = re.compile(r"(?<![0-9:.])(?P<m>[0-9]{1,2})(?P<s>[0-5][0-9])(?![0-9:.])")

_CAPPED = re.compile(
    r"\b(?:time[ -]?)?capped\b(?:\s(?:out|it))?|\b(?:hit |at |reached )?(?:the )?(?:time )?cap\b"
    r"|\btc'?d?\b|\bdnf\b"
    r"|\b(?:did ?n[o']?t|did not|not|un) ?(?:finish(?:ed)?|make it)\b"
    r"|\b(?:siren|buzzer|horn)\b|\btime (?:went|ran out|was up)\b|\bit was time\b"
    r"|\b(?:ran )?out of time\b|\btimed out\b"
)
_AT_TIME = re.compile(
    r"^[;\s]*(?:at|@|of)\s?(?:[0-9]{1,3}:[0-5][0-9]|[0-9]{1,3}\s?(?:minutes?|mins?|m"
    r"|')?)(?![0-9a-z])(?!\s?rep)"
)
_LEFT = shape(
    rf"(?P<n><n>)\s?(?:{REPS}|(?!rounds?|rds?)[a-z][a-z\-]{{2,15}}(?: [a-z\-]{{2,15}})?)?"
    r"\s?(?:left|to go|remaining|short|missing)\b"
)
_DONE = shape(
    rf"(?P<n><n>)\s?{REPS}(?:\s?(?:done|completed|in|finished))?|(?P<n2><n>)\s?(?:done|completed)\b"
    r"|\b(?:got|made it) (?:up )?to (?P<n3><n>)(?!\s?(?:rounds?|rds?))"
)
_STOPPED = shape(
    r"\b(?:stopped|quit|gave up|bailed|had to stop|pulled out|ended)\b(?:\s(?:at|after"
    r"|on))?\s?(?P<t>[0-9]{1,3}:[0-9]{2}|<n>\s?(?:reps?|min(?:ute)?s?)?)?"
)


def time_score(seconds: float) -> Score:
    return Score(value=seconds, unit="s", seconds=seconds)


def read_clock(strip: Strip, _block: Block, _: MassUnit) -> ReadScore | None:
    match = strip.take(_CLOCK)
    if match is None:
        return None
    seconds = int(match["h"] or 0) * 3600 + int(match["m"]) * 60 + float(match["s"])
    if float(match["s"]) >= MINUTE_S or (match["h"] and int(match["m"]) >= MINUTE_S):
        return asking.unsure(Doubt.IMPOSSIBLE, f"{match[0]} looks like a slip. What was your time?")
    return ReadScore(score=time_score(seconds), sure=True)


def read_dotted(strip: Strip, _block: Block, _: MassUnit) -> ReadScore | None:
    """`17.42` and `14 flat`; `11.5 min` are eleven and a half."""
    if match := strip.take(_HALVES):
        return ReadScore(score=time_score(int(match["m"]) * 60.0 + 30), sure=True)
    if match := strip.take(_FLAT):
        return ReadScore(score=time_score(int(match["m"]) * 60.0), sure=True)
    if match := strip.take(_DOTTED):
        return ReadScore(
            score=time_score(int(match["m"]) * 60.0 + float(match["s"].replace(",", "."))), sure=True
        )
    return None


def read_spoken(strip: Strip, _block: Block, _: MassUnit) -> ReadScore | None:
    if match := strip.take(_SPOKEN):
        tail = int(match["s"] or 0)
        score = time_score(int(match["m"]) * 60.0 + tail)
        return ReadScore(score=score, sure=True) if tail < MINUTE_S else asking.meant(score)
    if match := strip.take(_SECONDS):
        return ReadScore(score=time_score(float(match["s"])), sure=True)
    return None


def read_doubtful_time(strip: Strip, _block: Block, _: MassUnit) -> ReadScore | None:
    """`8 43`, `843` and `9` are read, but asked about."""
    match = strip.take(_SPACED) or strip.take(_RUN_ON)
    if match:
        return asking.meant(time_score(int(match["m"]) * 60.0 + int(match["s"])))
    alone = strip.take(ALONE)
    return asking.meant(time_score(int(alone["n"]) * 60.0)) if alone else None


def read_seconds_alone(strip: Strip, _block: Block, _: MassUnit) -> ReadScore | None:
    """A bare number under a hold is seconds; a small one may be minutes."""
    match = strip.take(ALONE)
    if match is None:
        return None
    score = time_score(float(match["n"]))
    return ReadScore(score=score, sure=True) if int(match["n"]) >= _SURELY_SECONDS else asking.meant(score)


def capped_score(reps: int | None, block: Block) -> Score:
    return Score(
        value=None if reps is None else float(reps), unit="reps", reps=reps, seconds=block.cap_s, capped=True
    )


def read_capped(strip: Strip, block: Block, unit: MassUnit) -> ReadScore | None:
    match = strip.take(_CAPPED)
    if match is None and not (block.cap_s and _LEFT.search(strip.text)):
        return None
    if match and (at := _AT_TIME.match(strip.text[match.end() :])):
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
    if whole_round and (rounds := read_rounds(strip, block, unit)) and rounds.score and rounds.sure:
        return (rounds.score.rounds or 0) * whole_round + (rounds.score.reps or 0)
    if done := strip.take(_DONE):
        return int(done["n"] or done["n2"] or done["n3"])
    return None


def read_stopped(strip: Strip, block: Block, _: MassUnit) -> ReadScore | None:
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
