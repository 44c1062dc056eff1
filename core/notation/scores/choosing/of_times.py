"""Times in every way in which numbers tell them, and what was done by those who didn't finish."""

import itertools
import re
from collections.abc import Callable, Iterator, Sequence
from typing import Final, NamedTuple

from core.notation.scores.capped import capped_score, rounds_done
from core.notation.scores.choosing.candidates import Heard, Reading, as_uses, runs
from core.notation.scores.choosing.of_each import each_of, one_put_right
from core.notation.scores.choosing.of_rounds import places, upto_lines
from core.notation.scores.each import counted
from core.notation.scores.numbers import Number
from core.notation.scores.said import Told
from core.notation.scores.times import MINUTE_S, dotted, time_score
from core.sessions.counting import reps_in_all

# More minutes than these are told in hours.
_MOST_MINUTES: Final = 120
_DIGITS: Final = re.compile(r"[0-9]+(?:[.,][0-9]+)*")
# Between minutes and seconds.
_BETWEEN: Final = re.compile(r"[\s,;'.]*(?:and|min\w*|m)?[\s,;'.]*")


class _Time(NamedTuple):
    seconds: float
    at: tuple[int, ...]
    how: str


def as_time(heard: Heard) -> Iterator[Reading]:
    times = list(_times(heard))
    for one in times:
        yield Reading(time_score(one.seconds), as_uses(one.at, "time"), f"time {one.how}")
        yield from _with_its_stretches(one, times)


def _with_its_stretches(whole: _Time, times: Sequence[_Time]) -> Iterator[Reading]:
    """`4:10, 4:38, 4:31 so 13:19`: what each round or kilometre took, where that adds up."""
    for way in {one.how for one in times}:
        others = [one for one in times if one.how == way and not set(one.at) & set(whole.at)]
        for run in runs(range(len(others))):
            told = [others[at] for at in run]
            if len(told) > 1 and sum(one.seconds for one in told) == whole.seconds:
                score = time_score(whole.seconds).model_copy(
                    update={"sets": tuple(one.seconds for one in told)}
                )
                places = [at for one in told for at in one.at]
                yield Reading(
                    score, (*as_uses(whole.at, "sum"), *as_uses(places, "set")), "time and its stretches"
                )


def as_hold(heard: Heard) -> Iterator[Reading]:
    times = list(_times(heard))
    for one in times:
        yield Reading(counted(one.seconds, "s"), as_uses(one.at, "time"), f"hold {one.how}")
    if any(line.per_side for line in heard.block.lines):
        for one, other in itertools.combinations(times, 2):
            if one.how == other.how and not set(one.at) & set(other.at):
                score = counted(one.seconds + other.seconds, "s").model_copy(
                    update={"sets": (one.seconds, other.seconds)}
                )
                yield Reading(score, as_uses((*one.at, *other.at), "set"), "both sides")


def as_times_of_each(heard: Heard) -> Iterator[Reading]:
    """Runs of times, each in the first of its ways, or in the last: `1.20 1.05 50`, `48 41 37`."""
    told: dict[int, list[_Time]] = {}
    for one in _times(heard):
        if len(one.at) == 1:
            told.setdefault(one.at[0], []).append(one)
    for run in runs(sorted(told)):
        for pick in _PICKS:
            seconds = {at: pick(told[at]).seconds for at in told}
            yield from each_of([seconds[at] for at in run], run, "s", heard.block, "times")
            yield from one_put_right(run, seconds, heard, "s", "times")


def as_times_of_rounds(heard: Heard) -> Iterator[Reading]:
    """Of rounds with a rest between, each timed by itself: what they took together."""
    if heard.block.rest_s:
        yield from (one for one in as_times_of_each(heard) if one.score.sets)


_PICKS: Final[tuple[Callable[[list[_Time]], _Time], ...]] = (
    lambda ways: ways[0],
    lambda ways: ways[-1],
    lambda ways: next((one for one in ways if one.how != "minutes"), ways[0]),
)


def _times(heard: Heard) -> Iterator[_Time]:
    """Every number as a time, in each of the ways in which one is written."""
    numbers = heard.numbers
    for at, one in enumerate(numbers):
        if one.kind in {"clock", "span"}:
            yield _Time(one.value, (at,), one.kind)
        else:
            yield from _without_signs(at, one)
        if at + 1 < len(numbers) and (both := _of_two(one, numbers[at + 1], heard.said)) is not None:
            yield _Time(both, (at, at + 1), "two")


def _without_signs(at: int, one: Number) -> Iterator[_Time]:
    """`17.42`, `843`, `9`, `65`."""
    digits = _DIGITS.search(one.text)
    text = digits[0] if digits else ""
    if (seconds := dotted(one._replace(text=text))) is not None:
        yield _Time(seconds, (at,), "dotted")
    elif re.fullmatch(r"[0-9]{1,2}[0-5][0-9]", text):
        yield _Time(int(text[:-2]) * MINUTE_S + int(text[-2:]), (at,), "run on")
    if one.value <= _MOST_MINUTES:
        yield _Time(one.value * MINUTE_S, (at,), "minutes")
    if one.value >= 1:
        yield _Time(one.value, (at,), "seconds")


def _of_two(one: Number, other: Number, said: Told) -> float | None:
    """`8 43`, `two minutes and two`."""
    minutes = one.value / MINUTE_S if one.kind == "span" else one.value
    if other.value >= MINUTE_S or minutes != int(minutes) or not _BETWEEN.fullmatch(said.gap(one, other)):
        return None
    return minutes * MINUTE_S + other.value


def as_capped(heard: Heard) -> Iterator[Reading]:
    """Stopped by the cap or before the end: repetitions done, or left, or how far in which round."""
    block, whole = heard.block, reps_in_all(heard.block)
    added = {one for pair in heard.said.added for one in pair}
    for at, one in enumerate(heard.numbers):
        if one.kind == "clock" or one.value != one.whole or (whole and one.whole >= whole) or one in added:
            continue
        yield Reading(capped_score(one.whole, block), ((at, "total"),), "capped at")
        if whole and one.whole:
            yield Reading(capped_score(whole - one.whole, block), ((at, "left"),), "capped, left")
    if (block.rounds or 1) > 1 and not block.scheme:
        yield from _in_rounds(heard)
    else:
        for uses, reps in upto_lines(heard):
            yield Reading(capped_score(reps, block), uses, "capped, lines")


def _in_rounds(heard: Heard) -> Iterator[Reading]:
    for one in places(heard):
        if one.rounds < (heard.block.rounds or 1):
            score = rounds_done(one.rounds, one.reps, heard.block)
            yield Reading(score, one.uses, f"capped, {one.how}")
