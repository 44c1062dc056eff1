"""What somebody can do, out of a stretch: `10 squats and 5 push-ups`, `squat 80x5, press 40 for 3`, `5k in 27 min`."""

from collections.abc import Iterator, Sequence
from functools import cache
from typing import Any, Final

from core.movements.lookup import catalogue
from core.understanding.marks import Mark
from core.understanding.quantities import Quantity
from core.understanding.slots.stretch import Stretch, exact_kg, in_kg

_TELLING: Final = ("load", "distance", "clock", "span", "reps", "number", "range", "times")
_MOST_REPS: Final = 1000
_HEAVIEST_KG: Final = 500
# From here on a bare number of a lift with a bar is its load: so many in a row are rare (common practice, no source).
_SURELY_A_LOAD: Final = 40
_BARBELL: Final = "barbell"
_LETTERS: Final = 2
# Of how many tokens the end of a clause counts between a number and what it is of; from how far on it is of nothing.
_A_CLAUSE: Final = 4
_TOO_FAR: Final = 16
_RUN: Final = "run"
# What is meant where a load is told of a movement that is done without one.
_LOADED: Final = {"air squat": "back squat"}
Fields = dict[str, Any]


def abilities(stretch: Stretch) -> list[Fields]:
    """Of each movement what is told of it; a distance alone is a run. Nothing where a number belongs to nothing."""
    named = _named(stretch)
    pairs = list(zip(named, _shared_out(stretch, named), strict=True))
    if any(_is_told_twice(stretch, mark, numbers) for mark, numbers in pairs):
        return []
    found = [told for mark, numbers in pairs if (told := _of_one(stretch, mark, numbers))]
    return found or _without_movement(stretch)


def _named(stretch: Stretch) -> list[Mark]:
    """The movements that are named; two letters name one only beside a number: `oh goodness 2 maybe` is a sigh."""
    beside = {at for one in stretch.quantities(*_TELLING) for at in (one.start - 1, one.end)}
    text = stretch.marked.text
    return [
        mark
        for mark in stretch.marks("movement")
        if len(text.words(mark.start, mark.end)) > _LETTERS or beside & {mark.start, mark.end - 1}
    ]


def lifts_something_else(stretch: Stretch) -> bool:
    """A load of a lift that the session doesn't have is no score of it: `back squat 150`, on a day of push-ups."""
    session = stretch.context.session
    if session is None:
        return False
    named = stretch.marks("movement")
    lifted = {
        _LOADED.get(movement, movement)
        for mark, numbers in zip(named, _shared_out(stretch, named), strict=True)
        if (movement := mark.value("movement")) and any(_is_lifted(stretch, n, movement) for n in numbers)
    }
    ours = {_LOADED.get(line.movement, line.movement) for block in session.blocks for line in block.lines}
    return bool(lifted) and lifted.isdisjoint(ours)


def _is_lifted(stretch: Stretch, one: Quantity, movement: str) -> bool:
    return one.kind == "load" or _is_far_too_many(stretch, one, movement)


def _is_told_twice(stretch: Stretch, mark: Mark, numbers: Sequence[Quantity]) -> bool:
    """`225 for 5 before, 95 for 5 now`: which of them counts isn't told; and `8 8 8` are sets, and no most."""
    movement = mark.value("movement")
    told = [pair for one in numbers for pair in _one(stretch, one, movement, beside=numbers)]
    sets = sum(name == "reps" for name, _ in told)
    return sets > 1 or len(set(told)) > len({name for name, _ in told})


def _shared_out(stretch: Stretch, named: Sequence[Mark]) -> list[list[Quantity]]:
    """Each number goes to the movement that it stands nearest to."""
    found: list[list[Quantity]] = [[] for _ in named]
    numbers = stretch.quantities(*_TELLING)
    before = bool(numbers and named and numbers[0].start < named[0].start)
    for one in numbers:
        apart = [(_apart(stretch, one, mark), (mark.start < one.start) is before) for mark in named]
        if apart and min(apart)[0] < _TOO_FAR:
            found[apart.index(min(apart))].append(one)
    return found


def _apart(stretch: Stretch, one: Quantity, mark: Mark) -> int:
    start, end = (one.end, mark.start) if one.start < mark.start else (mark.end, one.start)
    clauses = sum(_ends_clause(stretch, at) for at in range(start, end))
    return end - start + _A_CLAUSE * clauses


def _ends_clause(stretch: Stretch, at: int) -> bool:
    token = stretch.marked.text.tokens[at]
    return (token.kind == "mark" and token.word in ",;.\n&") or stretch.marked.helps(at, "joint") is not None


def _of_one(stretch: Stretch, mark: Mark, numbers: Sequence[Quantity]) -> Fields | None:
    movement = mark.value("movement")
    assert movement is not None
    told = _told(stretch, numbers, movement)
    if not told and _is_denied(stretch, mark):
        return {"movement": movement, "reps": 0}
    alone = not stretch.quantities(*_TELLING) and stretch.marked.helps(mark.start - 1, "article") is not None
    once = "load_kg" in told or alone  # `I can deadlift 140`, `I can do a pull-up`
    told |= {"reps": 1} if once and "reps" not in told else {}
    return {"movement": _with_weight(movement, told)} | told if told and _is_liftable(told) else None


def _is_liftable(told: Fields) -> bool:
    return bool(told.get("load_kg", 0) <= _HEAVIEST_KG)


def _with_weight(movement: str, told: Fields) -> str:
    """A squat that has a load is the one with a bar."""
    return _LOADED.get(movement, movement) if "load_kg" in told else movement


def _is_denied(stretch: Stretch, mark: Mark) -> bool:
    """`no pull-ups yet`, `can't do a single pull-up`, `pull-ups: none`: a no in the same clause."""
    start, end = mark.start, mark.end
    while start > stretch.start and not _ends_clause(stretch, start - 1):
        start -= 1
    while end < stretch.end and not _ends_clause(stretch, end):
        end += 1
    return any(
        stretch.marked.means(at, "negation", "cannot", "nothing", "no")
        or stretch.marked.helps(at, "denial") is not None
        for at in range(start, end)
    )


def _without_movement(stretch: Stretch) -> list[Fields]:
    numbers = stretch.quantities(*_TELLING)
    told = _told(stretch, numbers, None)
    if "distance_m" in told and "seconds" in told:
        return [{"movement": _RUN} | told]
    asked = stretch.context.question == "ability"
    movement = stretch.context.asked_movement if asked else None
    if movement is None:
        return [told] if told and asked else []
    if not told and not stretch.means("negation", "cannot", "nothing", "no"):
        return []
    return [{"movement": movement} | (told or {"reps": 0})]


def _told(stretch: Stretch, numbers: Sequence[Quantity], movement: str | None) -> Fields:
    return {
        name: value
        for one in reversed(numbers)
        for name, value in _one(stretch, one, movement, beside=numbers)
    }


def _one(
    stretch: Stretch, one: Quantity, movement: str | None, *, beside: Sequence[Quantity]
) -> Iterator[tuple[str, Any]]:
    """`my 5rm back squat is 100`, `back squat 150`: of a lift it is the load, beside repetitions or by its size."""
    units = stretch.context.units
    is_lift = movement is not None and _is_lift(movement)
    if one.kind == "load":
        yield "load_kg", exact_kg(one.value)
    elif one.kind == "distance":
        yield "distance_m", one.value
    elif one.kind in {"clock", "span"}:
        yield "seconds", one.value
    elif one.kind == "times":
        yield from _times(stretch, one, is_lift=is_lift)
    elif is_lift and (
        _is_load(stretch, one)
        or (one.kind == "number" and any(n.kind == "reps" for n in beside))
        or (movement is not None and _is_far_too_many(stretch, one, movement))
    ):
        yield "load_kg", in_kg(one.value, units)
    elif one.value <= _MOST_REPS:
        yield "reps", int(one.low if one.kind == "range" and one.low is not None else one.value)


def _times(stretch: Stretch, one: Quantity, *, is_lift: bool) -> Iterator[tuple[str, Any]]:
    """`80x5`, `5 x 80 kg` of a lift: the more is the load. Of anything else `3x10` is ten in a row."""
    first, second = one.value, one.second or 0.0
    if one.unit:
        yield "load_kg", exact_kg(second)
        yield "reps", int(first)
    elif is_lift:
        yield "load_kg", in_kg(max(first, second), stretch.context.units)
        yield "reps", int(min(first, second))
    else:
        yield "reps", int(second)


def _is_load(stretch: Stretch, one: Quantity) -> bool:
    """`with the 16`, `40 for 3`, `at 60`."""
    before = [
        stretch.marked.helps(at, "with_word") for at in range(max(stretch.start, one.start - 2), one.start)
    ]
    after = stretch.marked.helps(one.end, "for_word") if one.end < stretch.end else None
    return one.kind == "number" and (
        any(before) or after is not None or stretch.word(one.start - 1) in {"@", "at"}
    )


def _is_far_too_many(stretch: Stretch, one: Quantity, movement: str) -> bool:
    """`Back squat 150`; but `60 thrusters`, `swings 100` tell repetitions."""
    stands_behind = any(
        mark.value("movement") == movement and mark.start < one.start for mark in stretch.marks("movement")
    )
    return one.kind == "number" and one.value >= _SURELY_A_LOAD and stands_behind and _takes_a_bar(movement)


@cache
def _takes_a_bar(movement: str) -> bool:
    variants = catalogue().movement(movement).variants
    return any(hold.implement == _BARBELL for one in variants for hold in one.holds)


@cache
def _is_lift(movement: str) -> bool:
    """Whether it is usually done with something that has a load."""
    holds = catalogue().movement(movement).variants[0].holds
    return bool(holds) and holds[0].implement is not None
