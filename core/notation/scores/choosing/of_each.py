"""What each set, interval or attempt had, and what of it is the score: all, or the best or worst as the coach says."""

import re
from collections.abc import Iterator, Mapping, Sequence
from typing import Final

from core.measures import AmountUnit
from core.notation.scores.choosing.candidates import Heard, Reading, as_uses, runs
from core.notation.scores.each import counted, score_of
from core.notation.scores.numbers import Number
from core.scores.values import Score
from core.scores.ways import Way, way_of
from core.sessions.counting import is_held_so_long, is_in_kcal, times_in
from core.sessions.values import Block


def each_of(
    values: Sequence[float], run: Sequence[int], unit: str, block: Block, how: str
) -> Iterator[Reading]:
    """Numbers as what each one had; one as the sum or as what each had; the first or last as the sum of the others."""
    every = times_in(block) or block.rounds or 1
    if len(values) == 1:
        yield Reading(counted(values[0], unit), as_uses(run, "sum"), f"{how} sum")
        if every > 1:
            yield Reading(score_of(list(values) * every, unit, block), as_uses(run, "each"), f"{how} each")
        return
    yield Reading(_of_sets(values, unit, block), as_uses(run, "set"), how)
    if len(values) == 2 and 1 < values[0] < every:  # noqa: PLR2004 - how many of them, and what each had
        of_some = _of_sets([values[1]] * int(values[0]), unit, block)
        yield Reading(of_some, ((run[0], "rounds"), (run[1], "each")), f"{how} each of some")
    for whole, others in ((-1, values[:-1]), (0, values[1:])):
        if len(others) > 1 and values[whole] == sum(others):
            uses = tuple((at, "sum" if at == run[whole] else "set") for at in run)
            yield Reading(_of_sets(others, unit, block), uses, f"{how} and their sum")


_ORDINAL: Final = re.compile(
    r"\b(?:(?P<n>[1-9])(?:st|nd|rd|th)|(?P<word>first|second|third|fourth|fifth|last))\b"
)
_IN_ORDER: Final = ("first", "second", "third", "fourth", "fifth")
# Between which one it was and what it had.
_TO_NUMBER: Final = 20


def one_put_right(
    run: Sequence[int], told: Mapping[int, float], heard: Heard, unit: str, how: str
) -> Iterator[Reading]:
    """`12 10 8 8, sorry first is 13`: a list, of which one is told anew behind it."""
    if len(run) < 2:  # noqa: PLR2004 - a list
        return
    for match in _ORDINAL.finditer(heard.said.words, heard.numbers[run[-1]].end):
        at = next((one for one in sorted(told) if heard.numbers[one].start >= match.end()), None)
        place = len(run) - 1 if match["word"] == "last" else _place(match)
        if at is None or place >= len(run) or heard.numbers[at].start - match.end() > _TO_NUMBER:
            continue
        values = [told[at] if one == place else told[each] for one, each in enumerate(run)]
        kept = [each for one, each in enumerate(run) if one != place]
        yield Reading(
            _of_sets(values, unit, heard.block), as_uses((*kept, at), "set"), f"{how}, one put right"
        )


def _place(match: re.Match[str]) -> int:
    return int(match["n"]) - 1 if match["n"] else _IN_ORDER.index(match["word"])


def _of_sets(values: Sequence[float], unit: str, block: Block) -> Score:
    """Fewer intervals than there were are no whole score."""
    score = score_of(list(values), unit, block)
    fewer = len(values) < (times_in(block) or block.rounds or 0) and way_of(block) in {Way.SPLITS, Way.COUNTS}
    return score.model_copy(update={"capped": True, "rounds": len(values)}) if fewer else score


def as_counts(heard: Heard) -> Iterator[Reading]:
    """Repetitions, calories or metres, once or of each set."""
    unit = _unit_of(heard.block)
    counts = {
        at: count for at, one in enumerate(heard.numbers) if (count := _count_of(one, unit)) is not None
    }
    for run in runs(sorted(counts)):
        yield from each_of([counts[at] for at in run], run, unit, heard.block, "counts")
        yield from one_put_right(run, counts, heard, unit, "counts")
    for at, one in enumerate(heard.numbers):
        if one.kind == "times" and one.second:
            score = score_of([one.second] * one.whole, unit, heard.block)
            yield Reading(score, ((at, "times"),), "counts times")


def _count_of(one: Number, unit: str) -> float | None:
    """`2.4` are kilometres; a weight told with its unit counts nothing."""
    if one.kind == "load" and one.unit:
        return None
    if unit == AmountUnit.METRES and one.kind != "metres":
        return one.value if one.value == one.whole else one.value * 1000
    return (
        one.value if (one.value == one.whole and one.kind != "clock") or unit == AmountUnit.METRES else None
    )


def _unit_of(block: Block) -> str:
    if is_in_kcal(block):
        return str(AmountUnit.KCAL)
    if way_of(block) is Way.DISTANCE:
        return str(AmountUnit.METRES)
    units = {str(line.unit) for line in block.lines if line.unit is not AmountUnit.SECONDS}
    return str(block.counted_in) if block.counted_in else units.pop() if len(units) == 1 else "reps"


def as_all_held(heard: Heard) -> Iterator[Reading]:
    """`did em all` of holds that last as long as it says."""
    if is_held_so_long(heard.block):
        amount = float(heard.block.lines[0].amount or 0)
        yield Reading(score_of([amount] * (heard.block.rounds or 1), "s", heard.block), (), "all held")
