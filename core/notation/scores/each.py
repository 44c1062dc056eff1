"""What each set, interval or attempt had, and what of it is the score: all, or the best or worst as the coach says."""

import itertools
import re
from collections.abc import Iterator, Sequence
from typing import Any, Final

from core.measures import AmountUnit, MassUnit
from core.notation.scores import asking
from core.notation.scores.numbers import Number
from core.notation.scores.said import Told
from core.notation.scores.wording import says
from core.scores.values import ReadScore, Score
from core.scores.ways import Way, way_of
from core.sessions.counting import times_in
from core.sessions.values import Block, Counts

ALL: Final = says("each_all")
STOPPED: Final = re.compile(
    r"\b(?:then i quit|stopped|quit|gave up|called it|had to stop|left out|skipped|missed|bailed)\b"
)
# That there are fewer than was set is meant so.
_FEWER: Final = re.compile(STOPPED.pattern + r"|\b(?:only|just|dropped|cut|short|time ran out|had to|dnf)\b")
_EITHER: Final = re.compile(
    r"\b(?:strict|kipp\w*|swinging|assisted|ugly|broken|negatives?|jumping|knees|banded|with (?:the )?band)\b|\bor\b"
)
BOTH_SIDES: Final = re.compile(r"\b(?:l|left)\b.*\b(?:r|right)\b|\b(?:r|right)\b.*\b(?:l|left)\b")
TOO_SHORT_S: Final = 15
# A lone number that small may be of one of them (estimate).
_LEAST_OF_EACH: Final = 4
Value = tuple[float, Number]


def score_of(values: Sequence[float], unit: str, block: Block) -> Score:
    """The score of several sets; of times less is better."""
    timed = unit == "s" and way_of(block) in {Way.SPLITS, Way.MINUTES}
    if block.counts is None:
        value = float(sum(values))
    else:
        value = float(min(values) if timed is (block.counts is Counts.BEST) else max(values))
    sets = tuple(values) if len(values) > 1 else ()
    return counted(value, unit).model_copy(update={"sets": sets})


def counted(value: float, unit: str) -> Score:
    fields: dict[str, Any] = {"value": value, "unit": unit}
    if unit == "s":
        fields |= {"seconds": value}
    elif unit in {AmountUnit.REPS, AmountUnit.KCAL}:
        fields |= {"reps": round(value)}
    return Score(**fields)


def times_of(block: Block) -> int | None:
    return times_in(block) or block.rounds


def _expanded(said: Told, values: Sequence[Value], block: Block) -> Iterator[float]:
    """`10 each`, `first 4 were 8, last 4 were 6`, `min 1-5 three`: a number for as many sets as it is told of."""
    every = times_of(block)
    some = said.of("some", "turns")
    if some and len(some) == len(values):
        for one, (value, _) in zip(some, values, strict=True):
            often = one.whole if one.kind == "some" else int((one.second or 0) - one.value + 1)
            yield from [value] * max(often, 0)
        return
    for value, one in values:
        if (before := _so_often(said, one)) and every and before <= every:
            yield from [value] * before
            continue
        often = int(one.second) if one.second and one.kind in {"load", "times"} else _times_behind(said, one)
        if len(values) == 1 and every and every > 1 and said.is_said(one, "each"):
            often = _done_of(said, every)
        yield from [value] * often


def _done_of(said: Told, every: int) -> int:
    """`6 of the 8, all 38 s`: as many as were done, else all."""
    return next((one.whole for one in said.of("of") if one.second == every and one.whole <= every), every)


def _times_behind(said: Told, one: Number) -> int:
    """`1:41 x4`."""
    later = next((other for other in said.of("bare") if other.start >= one.end), None)
    return (
        later.whole if later and one.kind == "clock" and re.fullmatch(r"\s?x\s?", said.gap(one, later)) else 1
    )


def _so_often(said: Told, one: Number) -> int | None:
    """`4 at 1:35`, `8 times 38 s`: how often is told before."""
    earlier = [other for other in said.of("bare") if other.end <= one.start]
    is_told = (
        earlier
        and one.kind in {"clock", "span"}
        and re.fullmatch(r"\s?(?:at|x|in|times)\s?", said.gap(earlier[-1], one))
    )
    return earlier[-1].whole if is_told else None


def read_values(said: Told, values: Sequence[Value], unit: str, block: Block) -> ReadScore | None:
    """The score of what is told of each; what doesn't add up, or is more than there was to do, is asked about."""
    if not values:
        return None
    if chosen := _told_itself(said, values, unit, block):
        return chosen
    each = list(_expanded(said, values, block))
    every = times_of(block)
    score = score_of(each, unit, block)
    if every and len(each) > every:
        return asking.meant(score)
    if every and 1 < len(each) < every:
        if way_of(block) in {Way.SPLITS, Way.COUNTS}:
            score = score.model_copy(update={"capped": True, "rounds": len(each)})
        if not (said.has(_FEWER) or _done_of(said, every) == len(each)):
            return asking.meant(score)
    if every and every > 1 and len(each) == 1 and way_of(block) == Way.SPLITS:
        return _one_of_several(score, block)
    return ReadScore(score=score, sure=True)


def _one_of_several(score: Score, block: Block) -> ReadScore:
    """`1:35` of five: which one it was isn't told."""
    return asking.unreadable(block) if block.counts is None else ReadScore(score=score, sure=True)


def _told_itself(said: Told, values: Sequence[Value], unit: str, block: Block) -> ReadScore | None:
    """The sum, or the best or worst where that counts, told as such beside the others."""
    role = {None: "sum", Counts.BEST: "best", Counts.WORST: "worst"}[block.counts]
    named = [value for value in values if said.is_said(value[1], role)] or _their_sum(values, block)
    roles = ("best", "worst") if block.counts is None else ("sum",)
    only_ends = all(said.is_said(one, "best", "worst") for _, one in values)
    if not named:
        if only_ends and block.counts is None and way_of(block) in {Way.SPLITS, Way.COUNTS, Way.HOLDS}:
            return asking.unreadable(block)
        return None
    others = [value for value, one in values if one is not named[-1][1] and not said.is_said(one, *roles)]
    score = score_of([named[-1][0]], unit, block)
    if block.counts is None and len(others) > 1 and sum(others) == named[-1][0]:
        return ReadScore(score=score_of(others, unit, block), sure=True)
    is_list = block.counts is None and len(others) > 1 and len(others) == (times_of(block) or len(others))
    return (
        asking.meant(score)
        if is_list and _is_plain_sum(named[-1][1], said)
        else ReadScore(score=score, sure=True)
    )


def _their_sum(values: Sequence[Value], block: Block) -> list[Value]:
    """`50, 48, 45, 45 (188)`, `62: 20 22 20`: the last of several, or the first, that all others make."""
    whole = sum(value for value, _ in values)
    if block.counts is not None or len(values) < 3:  # noqa: PLR2004 - two others at least
        return []
    return [one for one in (values[-1], values[0]) if 2 * one[0] == whole][:1]


def _is_plain_sum(one: Number, said: Told) -> bool:
    return bool(
        re.search(r"(?:makes|total|altogether|in all|=|sum)\W{0,3}(?:of )?$", said.words[: one.start])
    )


def read_counts(said: Told, block: Block, _: MassUnit) -> ReadScore | None:
    """Repetitions, calories or metres, once or of each set."""
    said = _in_sets(said, block)
    way = way_of(block)
    unit = {Way.CALORIES: "kcal", Way.DISTANCE: "m"}.get(way) or _unit_of_lines(block)
    both = said.of("metres", "bare")
    is_list = unit == "m" and way is Way.COUNTS and len(both) > 1 and is_one_list(said, both)
    if unit == "m" and (far := [(one.value, one) for one in both] if is_list else _values(said, "metres")):
        return read_values(said, far, "m", block)
    if unit != "m" and way is Way.COUNTS and (far := _values(said, "metres")):
        return read_values(said, far, "m", block)
    own = _values(said, "cal" if unit == "kcal" else "reps")
    if len(own) == 1 and not _values(said, "bare"):
        return read_values(said, own, unit, block)
    if own and (unit == "kcal" or (len({value for value, _ in own}) == 1 and not _is_list(said))):
        return read_values(said, own, unit, block)
    return _of_bare(said, unit, block)


def _in_sets(said: Told, block: Block) -> Told:
    """`7s all three`: so many in each, and no seconds."""
    every = times_of(block)
    of_each = [one for one in said.of("span") if re.fullmatch(r"[0-9]{1,3}s", one.text.strip())]
    if not every or len(of_each) != 1 or not said.has(ALL):
        return said
    told = of_each[0]._replace(kind="times", value=float(every), second=float(of_each[0].text.strip()[:-1]))
    return Told(said.words, (told,), said.is_spoken)


def _unit_of_lines(block: Block) -> str:
    if block.counted_in:
        return str(block.counted_in)
    units = {str(line.unit) for line in block.lines if line.unit is not AmountUnit.SECONDS}
    return units.pop() if len(units) == 1 else "reps"


def _values(said: Told, *kinds: str) -> list[Value]:
    return [(one.value, one) for one in said.of(*kinds)]


def _is_list(said: Told) -> bool:
    return len(said.of("bare", "reps")) > 1


def _of_bare(said: Told, unit: str, block: Block) -> ReadScore | None:
    """Numbers with nothing behind them, or what was done: `20, 15, 7`, `12 squats`, `7 of the 20`."""
    every = times_of(block)
    if of := of_all(said, every):
        # so many of the sets, and nothing of what they had
        sets = block.rounds and every and of[0].second in {every, None}
        return None if sets else ReadScore(score=counted(of[0].value, unit), sure=True)
    values = _whole_values(said)
    if times := said.of("times"):
        return ReadScore(score=score_of([times[0].second or 0] * times[0].whole, unit, block), sure=True)
    if unit == "m" and len(values) < 2:  # noqa: PLR2004 - one distance
        return _one_distance(said)
    if not values or (said.of("clock", "span") and not said.of("reps") and len(values) > 1):
        return None
    if len(values) == 1 and _may_be_of_one(values[0], said, block):
        return None
    return _doubted(read_values(said, values, unit, block), values, said, block)


def _whole_values(said: Told) -> list[Value]:
    plain = [one for one in said.of("bare", "reps", "load") if one.kind != "load" or not one.unit]
    return [(one.value, one) for one in plain if one.value == one.whole]


def _one_distance(said: Told) -> ReadScore | None:
    """`2450` are metres, `2.4` kilometres."""
    bare = said.of("bare")
    if len(bare) != 1 or ("." not in bare[0].text and bare[0].value < TOO_SHORT_S):
        return None
    far = bare[0].value * (1000 if "." in bare[0].text else 1)
    return ReadScore(score=counted(far, "m"), sure=True)


def _may_be_of_one(told: Value, said: Told, block: Block) -> bool:
    """Whether a lone number of several intervals may be that of one of them."""
    value, one = told
    every = times_of(block) or 1
    is_named = said.is_said(one, "each", "sum", "worst", "best")
    return every > 1 and way_of(block) is Way.COUNTS and not is_named and value < _LEAST_OF_EACH * every


def _doubted(read: ReadScore | None, values: Sequence[Value], said: Told, block: Block) -> ReadScore | None:
    """Asked about where other words stand between the numbers, or which of them count is open."""
    if read is None or read.score is None or not read.sure:
        return read
    if len(values) == 1:
        return asking.meant(read.score) if said.of("turn") and values[0][1].kind == "bare" else read
    if len(values) == (times_of(block) or 0):
        return read  # one of each set, whatever is said of them
    if any(said.is_said(one, "sum", "best", "worst") for _, one in values) or said.of("some", "turns"):
        return read
    beside = way_of(block) is Way.REPS and "(" in said.words
    mixed = said.has(_EITHER) or beside or not is_one_list(said, [one for _, one in values])
    return asking.meant(read.score) if mixed else read


_JOINT: Final = re.compile(r"(?:[\W_]|\b(?:and|plus|then|reps?|x|n|a half|sets?|in)\b)*")


def is_one_list(said: Told, found: Sequence[Number]) -> bool:
    gaps = [_without_turns(said, one, other) for one, other in itertools.pairwise(found)]
    return all(_JOINT.fullmatch(gap) and ". " not in gap for gap in gaps)


def _without_turns(said: Told, one: Number, other: Number) -> str:
    """`set 1: 12, set 2: 10`: which set it was is no other word between."""
    gap = said.gap(one, other)
    for turn in said.numbers:
        if turn.kind == "turn" and one.end <= turn.start and turn.end <= other.start:
            gap = gap.replace(turn.text, " ")
    return gap


def of_all(said: Told, every: int | None) -> tuple[Number, ...]:
    """`4 of 5`, `8/10`."""
    tens = every == 10  # noqa: PLR2004 - `8/10` of ten, else how hard it was
    return said.of("of") or (said.of("ten") if tens else ())
