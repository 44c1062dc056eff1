"""How far those got who didn't finish in time: repetitions done, or left, or in which round and line."""

import re
from collections.abc import Sequence
from typing import Final

from core.measures import MassUnit
from core.notation.scores import asking
from core.notation.scores.lines_told import first_named, line_called, named_lines, total
from core.notation.scores.numbers import Number
from core.notation.scores.round_counts import ALL_BUT, rounds_score, so_many_left
from core.notation.scores.rounds import read_rounds
from core.notation.scores.said import Told
from core.notation.scores.wording import says
from core.scores.values import ReadScore, Score
from core.sessions.counting import reps_in_all, reps_in_round, reps_of
from core.sessions.values import Block, Line

CAPPED: Final = says("capped")
MADE_IT: Final = says("made_it")
_MINUTE_S: Final = 60
_ALL_BUT_ROUNDS: Final = re.compile(rf"{ALL_BUT.pattern}\s?(?:rounds?|rds?|sets?|laps?)\b")
_DONE: Final = re.compile(r"\b(?:got|made it|was|finished|done|did|stopped|up)\b|\bat\b|\bon\b")

_STOPPED: Final = re.compile(
    r"\b(?:stopped|quit|gave up|bailed|had to stop|pulled out|ended"
    r"|(?:ran|run|was|am|i'm) out of (?:steam|gas|puff|energy|legs))\b"
)

_REACHED: Final = re.compile(
    r"\b(?:to|on|at|into|of|(?P<done>finished|completed|through|did|after|all of|all)) (?:the )?(?:(?:round|set) of )?"
    r"(?P<n>[0-9]{1,3})(?(done)(?:s|'s)|(?:s|'s)?)\b"
)

_NEARLY: Final = re.compile(r"\b(?:half|bit|some|part|most|nearly|almost|about|around|roughly)\b")


def capped_score(reps: int | None, block: Block) -> Score:
    return Score(
        value=None if reps is None else float(reps), unit="reps", reps=reps, seconds=block.cap_s, capped=True
    )


def not_finished(
    said: Told, block: Block, unit: MassUnit, times: Sequence[tuple[float, Number, bool]]
) -> ReadScore | None:
    within = [one for one in times if one[2] and (block.cap_s is None or one[0] < block.cap_s)]
    reached = _reached(said, block)
    ladder = not times and (reached is not None or _of_line(said, block) is not None)
    finished = bool(said.of("clock")) and said.has(MADE_IT) and not said.of("left")
    if reached is not None and times and not said.of("clock"):
        return asking.meant(capped_score(reached, block))  # `got to the 4s at 12 min`
    fewer = _fewer_rounds(said, block)
    left = said.of("left", "short")
    if finished or not (said.has(CAPPED) or fewer or ladder or (left and block.cap_s) or said.has(_STOPPED)):
        return None
    if said.has(_STOPPED) and not said.has(CAPPED) and not fewer:
        return _stopped(said, block)
    if (
        fewer
        and not said.has(CAPPED)
        and ((within and block.cap_s) or (block.cap_s is None and not said.has(_STOPPED)))
        and not left
    ):
        return asking.stopped_after(rounds_done(fewer[0], 0, block), fewer[0], 0)
    return _how_far(said, block, unit) or asking.how_far(capped_score(None, block))


def _fewer_rounds(said: Told, block: Block) -> tuple[int, ...]:
    """`after round 3` tells of what was done, and of when a knee was felt too."""
    if block.scheme or block.partial:
        return ()
    told = [one for one in said.of("rounds") if one.value < (block.rounds or 1)]
    fewer = (
        one.whole
        for one in told
        if not one.text.startswith("after") or said.has(_STOPPED) or said.has(CAPPED)
    )
    return (*fewer, *_of_all_rounds(said, block))


def _of_all_rounds(said: Told, block: Block) -> tuple[int, ...]:
    """`3 of 5`, `all but the last round`, of as many rounds as are written."""
    every = block.rounds or 1
    but = _ALL_BUT_ROUNDS.search(said.words)
    done = [one.whole for one in said.of("of") if one.second == every]
    done += [every - so_many_left(but)] if but else []
    return tuple(one for one in done if 0 < one < every)


def _how_far(said: Told, block: Block, unit: MassUnit) -> ReadScore | None:
    whole = reps_in_all(block)
    for reader in (_left, _of_line, _reached):
        if (reps := reader(said, block)) is not None:
            return _capped(reps, block, whole)
    if fewer := not (block.scheme or block.partial) and _of_all_rounds(said, block):
        return ReadScore(score=rounds_done(fewer[0], 0, block), sure=True)
    if said.of("rounds") or said.added:
        return _after_rounds(said, block, unit)
    told = [*said.of("reps", "cal", "bare"), *(one for one in said.numbers if said.is_said(one, "cap"))]
    told = [one for one in told if one.kind in {"reps", "cal", "bare"} and not _is_cap_in_minutes(one, block)]
    if said.of("turn"):
        return None  # how much of which round isn't told in a way that is known
    bare = [one for one in told if one.kind != "bare" or _is_told_at_cap(one, said)]
    return _capped(bare[-1].whole, block, whole) if bare else None


def _is_told_at_cap(one: Number, said: Told) -> bool:
    """`got to 83`, `cap: 96`, `96 at the cap`."""
    before = said.words[: one.start]
    beside = not before.strip() or _AT_CAP.search(before)
    return bool(beside or (_DONE.search(before) and not before.rstrip().endswith("of")))


_AT_CAP: Final = re.compile(r"\b(?:cap(?:ped)?|finish(?:ed)?|dnf|time)[\s:,!-]{0,3}(?:at\s)?$")


def _is_cap_in_minutes(one: Number, block: Block) -> bool:
    return one.kind == "bare" and one.value * _MINUTE_S == block.cap_s


def _capped(reps: int, block: Block, whole: int | None) -> ReadScore:
    if reps < 0 or (whole is not None and reps >= whole):
        return asking.how_far(capped_score(None, block))
    return ReadScore(score=capped_score(reps, block), sure=True)


def _left(said: Told, block: Block) -> int | None:
    """What was left, told in repetitions or in rounds, away from all there was."""
    left, whole = said.of("left", "short"), reps_in_all(block)
    if not left or whole is None:
        return None
    unit = left[-1].unit
    in_round = reps_in_round(block)
    if re.match(r"(?:full |whole )?(?:rounds?|rds?)\b", unit) and in_round:
        return whole - in_round * left[-1].whole
    return whole - left[-1].whole


def _after_rounds(said: Told, block: Block, unit: MassUnit) -> ReadScore | None:
    """All repetitions, as of anybody who is capped; the rounds where one has something else in it, like metres."""
    read = read_rounds(said, block, unit)
    if read is None or read.score is None:
        return None
    rounds, reps = read.score.rounds or 0, read.score.reps or 0
    score = rounds_done(rounds, reps, block)
    if not read.sure or _NEARLY.search(said.words):
        return asking.stopped_after(score, rounds, reps)
    if score.reps is not None and (whole := reps_in_all(block)) and score.rounds is None:
        return _capped(score.reps, block, whole)
    return ReadScore(score=score, sure=True)


def rounds_done(rounds: int, reps: int, block: Block) -> Score:
    whole = reps_in_round(block)
    if whole is None:
        done = rounds_score(rounds, reps, block)
        return done.model_copy(update={"seconds": block.cap_s, "capped": True})
    return capped_score(rounds * whole + reps, block)


_THERE_DONE: Final = re.compile(r"\W*(?:done|finished|complete[d]?)\b")


def _reached(said: Told, block: Block) -> int | None:
    """`got down to the 3s, finished the 3 thrusters`: all rounds of a ladder before it, and what was done of that."""
    match = _REACHED.search(said.words)
    if match is None or not block.scheme or int(match["n"]) not in block.scheme:
        return None
    done = match["done"] or _THERE_DONE.match(said.words[match.end() :])
    at = block.scheme.index(int(match["n"])) + bool(done)
    if at >= len(block.scheme):
        return None
    before = total([reps_of(line, reps) for reps in block.scheme[:at] for line in block.lines])
    if before is None:
        return None
    return before + _of_rung(said.words[match.end() :], block.scheme[at], block.lines, block)


_OF_ALL: Final = re.compile(
    r"(?<![0-9.:])(?P<n>[0-9]{1,4})\s?(?:reps?\s|repetitions?\s)?(?:/|of|out of)\s?(?P<k>[0-9]{2,4})(?![0-9.:])"
)


def _of_line(said: Told, block: Block) -> int | None:
    """`got to the burpees, did 13 of 20`, `finished the lunges and 7 burpees`: all before it, and so many of it."""
    whole = reps_in_all(block)
    if (done := _OF_ALL.search(said.words)) and int(done["k"]) == whole:
        return int(done["n"])
    if block.scheme or (block.rounds or 1) > 1:
        return None
    of = said.of("of")
    named = list(named_lines(said.words, block))
    if named and of and block.lines[named[-1].line].amount == of[-1].second:
        return _upto(named[-1].line, of[-1].whole, block)
    if said.of("left", "short"):
        return None
    if said.has(CAPPED) or _GOT_TO.search(said.words):
        return _counted_line(said, block) or _line_alone(said, block)
    return None


_GOT_TO: Final = re.compile(r"\b(?:got|made it|up|was|down) (?:to|into|on)\b|\bonly the\b|\bafter the\b")

_ALL_BUT: Final = re.compile(r"\b(?:only the|no|without the|all but the|everything but the|except the)\s$")

_UP_TO: Final = re.compile(r"\b(?:after|finished|completed|done|through|did)(?: all)?(?: the)?\s$")


def _line_alone(said: Told, block: Block) -> int | None:
    """`only the burpees left`, `time's up after the push-ups`: one line is named, and no number of it."""
    named = list(named_lines(said.words, block))
    if len(named) != 1 or said.of("bare", "reps", "rounds", "clock"):
        return None
    before = said.words[: named[0].start]
    if _ALL_BUT.search(before):
        return _upto(named[0].line, 0, block)
    return _upto(named[0].line + 1, 0, block) if _UP_TO.search(before) else None


def _counted_line(said: Told, block: Block) -> int | None:
    """`7 burpees`, `pull-up fourteen`: how many of a line, less than it has, beside whose name the number stands."""
    for one in reversed(said.of("bare", "turn")):
        line = _line_beside(one, said, block)
        if line is not None and one.value < (reps_of(block.lines[line]) or 0):
            return _upto(line, one.whole, block)
    return None


def _line_beside(one: Number, said: Told, block: Block) -> int | None:
    behind = first_named(said.behind(one), block)
    if behind and re.fullmatch(r"\s?(?:of (?:the )?)?", said.behind(one)[: behind.start]):
        return behind.line
    before = list(named_lines(said.words[: one.start], block))[-1:]
    return before[0].line if before and said.words[before[0].end : one.start].strip() in _OF_IT else None


# Between the name of a line and how many of it were done.
_OF_IT: Final = frozenset({"", "number", "no.", "#"})


def _upto(line: int, done: int, block: Block) -> int | None:
    before = total([reps_of(one) for one in block.lines[:line]])
    return None if before is None else before + done


def _of_rung(words: str, reps: int, lines: Sequence[Line], block: Block) -> int:
    """What was done of the round that they reached, by the last line that is named behind it."""
    named = list(named_lines(words, block))
    if not named:
        return 0
    found = list(re.finditer(r"([0-9]{1,3})\s(?:of the |reps of )?([a-z][a-z-]+(?: [a-z][a-z-]+)?)", words))
    counted = found[-1] if found else None
    upto = sum(reps_of(line, reps) or 0 for line in lines[: named[-1].line])
    of_it = counted and line_called(counted[2].strip(), block) == named[-1].line
    return upto + (int(counted[1]) if counted and of_it else reps)


def _stopped(said: Told, block: Block) -> ReadScore | None:
    """`stopped at 45`: repetitions or a time? Only the athlete knows."""
    if said.of("rounds") and (read := _after_rounds(said, block, MassUnit.KG)):
        return read
    reps = said.of("reps")
    if reps:
        return ReadScore(score=capped_score(reps[-1].whole, block), sure=True)
    if times := said.of("clock", "span"):
        # `12:40, then I gave up on life` is a time; `11 min, I ran out of steam` may be when they stopped.
        is_when = times[0].kind == "span" or _STOPPED.search(said.words[: times[0].start])
        return asking.how_far(capped_score(None, block)) if is_when else None
    bare = said.of("bare")
    return asking.finished_or_not(capped_score(bare[0].whole, block)) if bare else None
