"""Loads in every way in which numbers tell them: `5x5 @ 60 kg`, `8,8,7 @ 62.5`, a bar and what is on it."""

import re
from collections.abc import Iterator
from decimal import Decimal
from typing import Final

from core.measures import MassUnit
from core.notation.quantities import kilograms
from core.notation.scores.choosing.candidates import Heard, Reading, Uses, as_uses, runs
from core.notation.scores.each import counted
from core.notation.scores.loads import load_score
from core.notation.scores.numbers import Number
from core.sessions.values import Block

_PLATES: Final = re.compile(r"\b(?:each|per|a|either|both|every|one) (?:side|end)s?\b|\bplates?\b|\bbar\b")
# What a bar weighs where nobody says: the usual two (common practice, no source).
_BARS: Final = (20, 15)
_MOST_PLATES: Final = 3
_MOST_TIMES: Final = 3
_NO_LOADS: Final = frozenset(
    {"clock", "span", "rounds", "sets", "cal", "metres", "turn", "turns", "of", "left", "some"}
)


def as_load(heard: Heard) -> Iterator[Reading]:
    """Each number as the load, alone or with what each set had."""
    for at, one in enumerate(heard.numbers):
        for kg, reps, how in _loads(one, heard.unit):
            yield Reading(load_score(kg, reps), ((at, "load"),), f"load {how}")
            for sets, values in _sets_beside(at, one, heard):
                score = load_score(kg).model_copy(update={"sets": values})
                yield Reading(score, ((at, "load"), *sets), "load and sets")


def _loads(one: Number, unit: MassUnit) -> Iterator[tuple[Decimal, int | None, str]]:
    """`60 kg`, `2 x 8 kg`; of `5 x 60` and `60 x 5` the greater is the load."""
    if one.kind in _NO_LOADS or one.value <= 0:
        return
    told, other = one.value, one.second
    if one.kind == "times" and other and other > told:
        told, other = other, told
    reps = int(other) if other and one.kind in {"load", "times"} else None
    kg = kilograms(f"{told:g}", (one.unit if one.kind in {"load", "hands"} else None) or None, unit)
    yield kg, reps, one.kind


def _sets_beside(load: int, one: Number, heard: Heard) -> Iterator[tuple[Uses, tuple[float, ...]]]:
    sets, numbers = _sets(heard.block), heard.numbers
    less = [
        at for at, other in enumerate(numbers) if at != load and _is_count(other) and other.value < one.value
    ]
    for run in runs(less):
        if len(run) == sets > 1:
            yield as_uses(run, "set"), tuple(numbers[at].value for at in run)
    alike = [
        at
        for at, other in enumerate(numbers)
        if other.kind == "load" and other.value == one.value and other.second
    ]
    if len(alike) == sets > 1:
        yield as_uses(alike, "load"), tuple(float(numbers[at].second or 0) for at in alike)


def _is_count(one: Number) -> bool:
    return one.kind != "clock" and one.value == one.whole


def _sets(block: Block) -> int:
    return block.rounds or len(block.scheme) or len(block.lines)


def as_sets_alone(heard: Heard) -> Iterator[Reading]:
    """`12, 12, 10` of three sets: how many each had, and no load; nobody does several times as many as are set."""
    most = _MOST_TIMES * max((line.amount_to or line.amount or 0 for line in heard.block.lines), default=0)
    plain = [
        at
        for at, one in enumerate(heard.numbers)
        if one.kind in {"bare", "reps"} and _is_count(one) and (one.value <= most or not most)
    ]
    for run in runs(plain):
        if len(run) == _sets(heard.block) > 1:
            values = tuple(heard.numbers[at].value for at in run)
            score = counted(sum(values), "reps").model_copy(update={"sets": values})
            yield Reading(score, as_uses(run, "set"), "sets alone")


def as_plates(heard: Heard) -> Iterator[Reading]:
    """A bar, told or not, and what is on each side of it."""
    if not _PLATES.search(heard.said.words):
        return
    told = [at for at, one in enumerate(heard.numbers) if one.kind != "clock" and one.value > 0]
    for run in runs(told):
        bar, *plates = (heard.numbers[at].value for at in run)
        if 0 < len(plates) <= _MOST_PLATES:
            kg = kilograms(f"{bar + 2 * sum(plates):g}", None, heard.unit)
            yield Reading(load_score(kg), ((run[0], "bar"), *as_uses(run[1:], "plate")), "bar and plates")
        if len(run) <= _MOST_PLATES:
            each = 2 * kilograms(f"{bar + sum(plates):g}", None, heard.unit)
            for unsaid in _BARS:
                yield Reading(load_score(unsaid + each), as_uses(run, "plate"), f"plates on {unsaid}")
