"""Rounds of those who didn't get through all of them for time: `3 rounds + 12 in 20 min`, `only 4 rounds`."""

import re

from core.measures import MassUnit
from core.notation import asking
from core.notation.score_rounds import ROUND, read_rounds, rounds_score, shape
from core.notation.score_times import capped_score
from core.notation.text import Strip
from core.scores.values import ReadScore, Score
from core.sessions.counting import reps_in_round
from core.sessions.values import Block

_SOME = shape(
    rf"(?<!last )(?<!first )(?<!final )(?P<r><n>)\s?{ROUND}(?!\s?(?:left|to go|remaining|short|missing|too))"
)
_CAP = re.compile(r"\b(?:cap(?:ped)?|tc'?d?|dnf|out of time|timed out)\b")
_TIME = re.compile(r"\b(?P<m>[0-9]{1,3})(?::(?P<s>[0-5][0-9])|\s?(?:min(?:ute)?s?\b|'))")
_NEARLY = re.compile(r"\b(?:almost|nearly|about|around|roughly|half|bit|some|part|plus|most)\b|\+")


def read_part_of_rounds(strip: Strip, block: Block, unit: MassUnit) -> ReadScore | None:
    """None where no fewer rounds are told than the block has. Asked about where a time within the cap is told."""
    told = _SOME.search(strip.text)
    if told is None or block.scheme or block.partial or int(told["r"]) >= (block.rounds or 1):
        return None
    within = _tells_a_time_within(strip.text, block)
    read = read_rounds(strip, block, unit)
    if read is None or read.score is None:
        return asking.how_far(capped_score(None, block))
    rounds, reps = read.score.rounds or 0, read.score.reps or 0
    score = _stopped_at(rounds, reps, block)
    doubtful = within or not read.sure or _NEARLY.search(strip.text)
    _drop_the_cap(strip)
    return asking.stopped_after(score, rounds, reps) if doubtful else ReadScore(score=score, sure=True)


def _stopped_at(rounds: int, reps: int, block: Block) -> Score:
    """All repetitions, as of anybody who is capped; the rounds where one has something else in it, like metres."""
    whole = reps_in_round(block)
    if whole is None:
        done = rounds_score(rounds, reps, block)
        return done.model_copy(update={"seconds": block.cap_s, "capped": True})
    return capped_score(rounds * whole + reps, block)


def _tells_a_time_within(words: str, block: Block) -> bool:
    """Whoever tells a time before the cap may have had fewer rounds to do, and done them all."""
    time = _TIME.search(words)
    if _CAP.search(words):
        return False
    if time is None:
        return block.cap_s is None
    return block.cap_s is None or int(time["m"]) * 60 + int(time["s"] or 0) < block.cap_s


def _drop_the_cap(strip: Strip) -> None:
    """How it ended is no second score."""
    while strip.take(_CAP) or strip.take(_TIME):
        pass
