"""Times of work that is done for time, and what was done by those who didn't finish."""

import re
from collections.abc import Iterator, Sequence
from typing import Final

from core.measures import AmountUnit, MassUnit
from core.notation.scores import asking
from core.notation.scores.lines_told import line_called, named_lines, total
from core.notation.scores.numbers import Number
from core.notation.scores.rounds import read_rounds, rounds_score
from core.notation.scores.said import Told
from core.notation.scores.wording import says
from core.scores.values import Doubt, ReadScore, Score
from core.sessions.counting import reps_in_all, reps_in_round, reps_of
from core.sessions.values import Block, Format, Line

MINUTE_S: Final = 60
_CAPPED: Final = says("capped")
_MADE_IT: Final = says("made_it")
_OVER: Final = re.compile(r"\b(?:over|past|after|beyond) the (?:time )?cap\b")
_DONE: Final = re.compile(r"\b(?:got|made it|was|finished|done|did|stopped|up)\b|\bat\b|\bon\b")
_STOPPED: Final = re.compile(
    r"\b(?:stopped|quit|gave up|bailed|had to stop|pulled out|ended"
    r"|(?:ran|run|was|am|i'm) out of (?:steam|gas|puff|energy|legs))\b"
)
_REACHED: Final = re.compile(
    r"\b(?:to|on|at|into|of|(?P<done>finished|completed|through|did|after|all of|all)) (?:the )?(?:(?:round|set) of )?"
    r"(?P<n>[0-9]{1,3})(?(done)(?:s|'s)|(?:s|'s)?)\b"
)
# A bare number from there on is no number of minutes.
_A_DISTANCE: Final = 400
# A number beside a time is kilometres if it is as near to what was set.
_NEAR_KM: Final = 2
_NEARLY: Final = re.compile(r"\b(?:half|bit|some|part|most|nearly|almost|about|around|roughly)\b")
_INSTEAD: Final = re.compile(r"\binstead\b|\bonly goes? to\b|\bcuts? out\b")
# Between the two halves of a time: `8 43`, `two minutes and two`.
_SPACE: Final = re.compile(r"\s(?:and\s)?")


def time_score(seconds: float) -> Score:
    return Score(value=seconds, unit="s", seconds=seconds)


def capped_score(reps: int | None, block: Block) -> Score:
    return Score(
        value=None if reps is None else float(reps), unit="reps", reps=reps, seconds=block.cap_s, capped=True
    )


def read_time(said: Told, block: Block, unit: MassUnit) -> ReadScore | None:
    times = list(times_in(said, block))
    beyond = [one for one in times if block.cap_s is not None and one[0] > block.cap_s]
    if said.has(_OVER) and beyond:
        return asking.beyond_cap(block.cap_s or 0)
    if stopped := _under_the_cap(said, block) or _not_finished(said, block, unit, times):
        return stopped
    if slip := next((one for one in said.of("clock") if one.second), None):
        return asking.unsure(Doubt.IMPOSSIBLE, f"{slip.text.strip()} looks like a slip. What was your time?")
    if block.rest_s and len(times) == block.rounds and all(plain for _, _, plain in times):
        return ReadScore(score=_of_rounds([seconds for seconds, _, _ in times]), sure=True)
    if _is_other_distance(said, block):
        return asking.meant(time_score(times[0][0])) if times else None
    return _one_of(times, said)


_UNDER: Final = re.compile(
    r"\s?(?:left on the clock|under the (?:time )?cap|inside the (?:time )?cap|before the (?:time )?cap|to spare)\b"
)


def _under_the_cap(said: Told, block: Block) -> ReadScore | None:
    """`finished with 2:20 left on the clock`."""
    left = [one for one in said.of("clock", "span") if _UNDER.match(said.behind(one))]
    others = [one for one in said.of("clock") if one not in left]
    if block.cap_s is None or len(left) != 1 or others or left[0].value >= block.cap_s:
        return None
    return ReadScore(score=time_score(block.cap_s - left[0].value), sure=True)


def _of_rounds(each: Sequence[float]) -> Score:
    """Of rounds with a rest between, each timed by itself: what they took together."""
    return time_score(sum(each)).model_copy(update={"sets": tuple(each)})


def _one_of(times: Sequence[tuple[float, Number, bool]], said: Told) -> ReadScore | None:
    """The only time that is told; of several the sum, or else which one is asked."""
    chosen = [one for one in times if said.is_said(one[1], "sum")] or list(times)
    if not chosen:
        return None
    chosen = [one for one in chosen if one[1] == made_by_others(said)] or chosen
    values = {seconds for seconds, _, _ in chosen}
    if len(values) > 1:
        return asking.which_number(tuple(time_score(one[0]) for one in chosen[:2]))
    seconds, _, plain = chosen[-1]
    score = time_score(seconds)
    return ReadScore(score=score, sure=True) if plain else asking.meant(score)


def made_by_others(said: Told) -> Number | None:
    """`17:31, splits 5:20 5:58 6:13`: the time that all others make, to a second each."""
    clocks = [one for one in said.numbers if one.kind == "clock"]
    whole = sum(one.value for one in clocks)
    return next((one for one in clocks if len(clocks) > 2 and abs(whole - 2 * one.value) < len(clocks)), None)  # noqa: PLR2004


def times_in(said: Told, block: Block) -> Iterator[tuple[float, Number, bool]]:
    """Every time that is told, in seconds, with the number it begins with, and whether it can be nothing else."""
    full = said.of("clock", "span")
    plain = [one for one in full if one.kind == "clock" and not one.second]
    spans = [one for one in full if one.kind == "span" and not _is_the_cap(one, block, said)]
    if plain or spans:
        yield from ((one.value, one, True) for one in plain)
        yield from ((one.value + _seconds_behind(one, said), one, True) for one in spans if not plain)
        return
    yield from bare_times(said)


def _is_the_cap(one: Number, block: Block, said: Told) -> bool:
    return one.value == block.cap_s and said.has(_CAPPED) and not said.has(_MADE_IT)


def _seconds_behind(one: Number, said: Told) -> float:
    """`two minutes and two`, `9 minutes forty`."""
    later = [other for other in said.numbers if other.start >= one.end]
    behind = later[0] if later else None
    is_second = (
        behind is not None
        and behind.kind in {"bare", "span"}
        and behind.value < MINUTE_S
        and _SPACE.fullmatch(said.gap(one, behind))
        and one.value >= MINUTE_S
    )
    return behind.value if is_second and behind else 0


def bare_times(said: Told) -> Iterator[tuple[float, Number, bool]]:
    """`17.42`, `8 43`, `843`, `9`: minutes and seconds without a sign that says so."""
    bare = said.of("bare")
    taken = -1
    for at, one in enumerate(bare):
        if at <= taken:
            continue
        other = bare[at + 1] if at + 1 < len(bare) else None
        if (seconds := dotted(one)) is not None:
            yield seconds, one, True
        elif (
            other
            and _is_seconds(other)
            and one.value == one.whole
            and re.fullmatch(r" (?:and )?", said.gap(one, other))
        ):
            taken = at + 1
            yield one.value * MINUTE_S + other.value, one, True
        elif len(bare) == 1:
            yield from _run_on(one)


def dotted(one: Number) -> float | None:
    """`17.42`, and with tenths `1.52.3`."""
    parts = one.text.strip().replace(",", ".").split(".")
    if len(parts) < 2 or len(parts[1]) != 2 or int(parts[1]) >= MINUTE_S:  # noqa: PLR2004 - minutes and seconds
        return None
    return int(parts[0]) * MINUTE_S + float(".".join(parts[1:]))


def _is_seconds(one: Number) -> bool:
    return bool(re.fullmatch(r"[0-5]?[0-9](?:\.[0-9])?", one.text.strip())) and (len(one.text.strip()) > 1)


def _run_on(one: Number) -> Iterator[tuple[float, Number, bool]]:
    text = one.text.strip()
    if re.fullmatch(r"[0-9]{1,2}[0-5][0-9]", text):
        yield int(text[:-2]) * MINUTE_S + int(text[-2:]), one, False
    elif one.value == one.whole:
        yield one.value * MINUTE_S, one, False


def _is_other_distance(said: Told, block: Block) -> bool:
    """Whether they tell of another distance than was set."""
    set_m = [line.amount for line in block.lines if line.unit is AmountUnit.METRES and line.amount]
    if block.format is not Format.TIME_TRIAL or len(set_m) != 1:
        return False
    far = [one.value for one in said.of("metres")]
    for one in said.of("bare"):
        far += [one.value] if one.value >= _A_DISTANCE else []
        is_in_km = said.of("clock") and set_m[0] / _NEAR_KM < one.value * 1000 < set_m[0] * _NEAR_KM
        far += [one.value * 1000] if is_in_km else []
    others = [one for one in far if abs(one - set_m[0]) > set_m[0] / 50]
    return said.has(_INSTEAD) or bool(others and len(others) == len(far) and "split" not in said.words)


def _not_finished(
    said: Told, block: Block, unit: MassUnit, times: Sequence[tuple[float, Number, bool]]
) -> ReadScore | None:
    within = [one for one in times if one[2] and (block.cap_s is None or one[0] < block.cap_s)]
    reached = _reached(said, block)
    ladder = not times and (reached is not None or _of_line(said, block) is not None)
    finished = bool(said.of("clock")) and said.has(_MADE_IT) and not said.of("left")
    if reached is not None and times and not said.of("clock"):
        return asking.meant(capped_score(reached, block))  # `got to the 4s at 12 min`
    fewer = _fewer_rounds(said, block)
    left = said.of("left", "short")
    if finished or not (said.has(_CAPPED) or fewer or ladder or (left and block.cap_s) or said.has(_STOPPED)):
        return None
    if said.has(_STOPPED) and not said.has(_CAPPED) and not fewer:
        return _stopped(said, block)
    if (
        fewer
        and not said.has(_CAPPED)
        and ((within and block.cap_s) or (block.cap_s is None and not said.has(_STOPPED)))
        and not left
    ):
        rounds = fewer[0]
        return asking.stopped_after(rounds_done(rounds.whole, 0, block), rounds.whole, 0)
    return _how_far(said, block, unit) or asking.how_far(capped_score(None, block))


def _fewer_rounds(said: Told, block: Block) -> tuple[Number, ...]:
    """`after round 3` tells of what was done, and of when a knee was felt too."""
    if block.scheme or block.partial:
        return ()
    told = [one for one in said.of("rounds") if one.value < (block.rounds or 1)]
    return tuple(
        one for one in told if not one.text.startswith("after") or said.has(_STOPPED) or said.has(_CAPPED)
    )


def _how_far(said: Told, block: Block, unit: MassUnit) -> ReadScore | None:
    whole = reps_in_all(block)
    if done := _left(said, block, whole):
        return _capped(done, block, whole)
    if (of_line := _of_line(said, block)) is not None:
        return _capped(of_line, block, whole)
    if (rung := _reached(said, block)) is not None:
        return _capped(rung, block, whole)
    if said.of("rounds") or any(
        said.gap(*pair).strip() in {"+", "plus"}
        for pair in zip(said.of("bare"), said.of("bare")[1:], strict=False)
    ):
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
    return one.kind == "bare" and one.value * MINUTE_S == block.cap_s


def _capped(reps: int, block: Block, whole: int | None) -> ReadScore:
    if reps < 0 or (whole is not None and reps >= whole):
        return asking.how_far(capped_score(None, block))
    return ReadScore(score=capped_score(reps, block), sure=True)


def _left(said: Told, block: Block, whole: int | None) -> int | None:
    """What was left, told in repetitions or in rounds, away from all there was."""
    left = said.of("left", "short")
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
    if said.has(_CAPPED) or _GOT_TO.search(said.words):
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
    behind = next(named_lines(said.behind(one), block), None)
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
