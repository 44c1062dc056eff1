"""What somebody can do, out of a stretch: `10 squats and 5 push-ups`, `squat 80x5, press 40 for 3`, `5k in 27 min`."""

from collections.abc import Iterator, Sequence
from functools import cache
from typing import Any, Final

from core.measures import AmountUnit
from core.movements.lookup import catalogue
from core.notation.ability_answers import SURELY_A_LOAD, takes_a_bar
from core.understanding.marks import Mark
from core.understanding.quantities import Quantity
from core.understanding.slots.stretch import Stretch, exact_kg, in_kg

_TELLING: Final = ("load", "distance", "clock", "span", "reps", "number", "range", "times")
_MINUTE_S, _FAR_M = 60.0, 1000.0
_MOST_REPS: Final = 1000
_HEAVIEST_KG: Final = 500
# More in a row with a load are a slip, or two numbers (estimate).
_MOST_LOADED: Final = 100
_LETTERS: Final = 2
_NAMES: Final = ("movement", "short_movement")
# Of how many tokens the end of a clause counts between a number and what it is of; from how far on it is of nothing.
_A_CLAUSE: Final = 4
_TOO_FAR: Final = 16
_CAN: Final = frozenset({"can", "manage"})
_ASKED_OF: Final = frozenset({"you", "u", "ya", "i", "we"})
_RUN: Final = "run"
# What is meant where a load is told of a movement that is done without one.
_LOADED: Final = {"air squat": "back squat"}
_BARE: Final = {("squat",), ("squatted",), ("squatting",)}
Fields = dict[str, Any]


def abilities(stretch: Stretch) -> list[Fields]:
    """Of each movement what is told of it; a distance alone is a run. Nothing where a number belongs to nothing."""
    named = _named(stretch)
    of_run, of_all = _of_a_run(stretch, named), _of_all(stretch, named)
    shared = _shared_out(stretch, named, but=(*of_run, *of_all))
    pairs = [(mark, [*numbers, *of_all]) for mark, numbers in zip(named, shared, strict=True)]
    if any(_is_told_twice(stretch, mark, numbers) for mark, numbers in pairs):
        return []
    taken = [*of_run, *(one for _, numbers in pairs for one in numbers)]
    if named and any(one not in taken for one in stretch.quantities("number")):
        return []
    found = [told for mark, numbers in pairs if (told := _of_one(stretch, mark, numbers))]
    found += [{"movement": _RUN} | _told(stretch, of_run, None)] if of_run else []
    return found or _without_movement(stretch)


def _of_all(stretch: Stretch, named: Sequence[Mark]) -> tuple[Quantity, ...]:
    """`1rm squat 140 bench 100`: repetitions in front of all, where each has a number of its own behind it."""
    numbers = stretch.quantities(*_TELLING)
    leads = len(numbers) == len(named) + 1 > 2 and numbers[0].start < named[0].start  # noqa: PLR2004 - of several
    behind = leads and all(one.start > mark.start for one, mark in zip(numbers[1:], named, strict=True))
    return (numbers[0],) if behind and numbers[0].kind == "reps" else ()


def surely_can(stretch: Stretch) -> bool:
    """`Can only do like 3 push-ups`, `my deadlift is 120`: a number of what they can do, of one movement."""
    words = stretch.words
    if _tells_their_lift(stretch) or _tells_their_pace(stretch):
        return True
    says_so = any(
        word in _CAN and after not in _ASKED_OF for word, after in zip(words, (*words[1:], ""), strict=True)
    )
    return says_so and len(_named(stretch)) == len(stretch.quantities("number", "reps")) == 1


def _tells_their_lift(stretch: Stretch) -> bool:
    """The load of one lift with a bar that is called theirs, or that the session doesn't have."""
    named, numbers = _named(stretch), stretch.quantities(*_TELLING)
    if not len(named) == len(numbers) == 1 or not _is_far_too_many(stretch, numbers[0], _movement(named[0])):
        return False
    theirs = stretch.marked.helps(named[0].start - 1, "self_word") is not None
    return theirs or (stretch.context.session is None and stretch.is_whole)


def _tells_their_pace(stretch: Stretch) -> bool:
    """`I run 5k in 25 min`: what was done today was run."""
    paces = len(stretch.quantities("distance")) == len(stretch.quantities("clock", "span")) == 1
    return paces and any(
        one.value("movement") == stretch.marked.words[one.start] and stretch.word(one.start - 1) == "i"
        for one in _named(stretch)
    )


def _of_a_run(stretch: Stretch, named: Sequence[Mark]) -> tuple[Quantity, ...]:
    """A distance and its time, where what is named goes nowhere: `12 pull-ups, 5k 22:30`, `10k in 48. hate burpees`."""
    distances = stretch.quantities("distance")
    times = stretch.quantities("clock", "span") or [
        one for one in stretch.quantities("number") if _is_in_so_many(stretch, one, distances)
    ]
    if len(distances) != 1 or not times or not named or any(_goes(_movement(mark)) for mark in named):
        return ()
    return distances[0], min(times, key=lambda one: abs(one.start - distances[0].start))


def _named(stretch: Stretch) -> list[Mark]:
    """The movements that are named; `oh goodness 2 maybe` is a sigh, `I'm dead` no lift: these do beside a number."""
    beside = {at for one in stretch.quantities(*_TELLING) for at in (one.start - 1, one.end)}
    beside |= {at - 1 for at in beside if stretch.marked.helps(at, "for_word")}
    text = stretch.marked.text
    return [
        mark
        for mark in stretch.marks(*_NAMES)
        if (mark.value("movement") and len(text.words(mark.start, mark.end)) > _LETTERS)
        or beside & {mark.start, mark.end - 1}
    ]


def _movement(mark: Mark) -> str:
    return mark.value(*_NAMES) or ""


def lifts_something_else(stretch: Stretch) -> bool:
    """A load of a lift that the session doesn't have is no score of it: `back squat 150`, on a day of push-ups."""
    session = stretch.context.session
    if session is None:
        return False
    named = _named(stretch)
    lifted = {
        _LOADED.get(movement, movement)
        for mark, numbers in zip(named, _shared_out(stretch, named), strict=True)
        if (movement := _movement(mark)) and any(_is_lifted(stretch, n, movement) for n in numbers)
    }
    ours = {_LOADED.get(line.movement, line.movement) for block in session.blocks for line in block.lines}
    return not lifted <= ours


def _is_lifted(stretch: Stretch, one: Quantity, movement: str) -> bool:
    return one.kind == "load" or _is_far_too_many(stretch, one, movement)


def _is_told_twice(stretch: Stretch, mark: Mark, numbers: Sequence[Quantity]) -> bool:
    """`225 for 5 before, 95 for 5 now`: which of them counts isn't told; and `8 8 8` are sets, and no most."""
    movement = _movement(mark)
    told = [pair for one in numbers for pair in _one(stretch, one, movement, beside=numbers)]
    sets = sum(name == "reps" for name, _ in told)
    return sets > 1 or len(set(told)) > len({name for name, _ in told})


def _shared_out(
    stretch: Stretch, named: Sequence[Mark], *, but: Sequence[Quantity] = ()
) -> list[list[Quantity]]:
    """Each number goes to the movement that it stands nearest to."""
    found: list[list[Quantity]] = [[] for _ in named]
    numbers = [one for one in stretch.quantities(*_TELLING) if one not in but]
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
    movement = _movement(mark)
    told = _told(stretch, numbers, movement)
    if not told and _is_denied(stretch, mark):
        return {"movement": movement, "reps": 0}
    alone = not stretch.quantities(*_TELLING) and stretch.marked.helps(mark.start - 1, "article") is not None
    once = "load_kg" in told or alone  # `I can deadlift 140`, `I can do a pull-up`
    told |= {"reps": 1} if once and "reps" not in told else {}
    return {"movement": _with_weight(movement, told)} | told if told and _is_liftable(told) else None


def _is_liftable(told: Fields) -> bool:
    """A load that may be lifted, and so many times: nobody does 190 with 60 kg."""
    most = _MOST_LOADED if "load_kg" in told else _MOST_REPS
    return bool(told.get("load_kg", 0) <= _HEAVIEST_KG and told.get("reps", 0) <= most)


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
    if stretch.means("swim"):
        return []
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
    far_too_many = movement is not None and _is_far_too_many(stretch, one, movement)
    is_lift = movement is not None and (far_too_many or _is_lift(movement))
    if one.kind == "load":
        yield "load_kg", exact_kg(one.value)
    elif one.kind == "distance":
        yield "distance_m", one.value
    elif one.kind in {"clock", "span"}:
        yield "seconds", one.value
    elif _is_in_so_many(stretch, one, beside):
        yield "seconds", one.value * _MINUTE_S
    elif one.kind == "times":
        squat = movement in _LOADED and _is_said_bare(stretch, _named(stretch))
        yield from _times(stretch, one, is_lift=is_lift, squat=squat)
    elif is_lift and (
        _is_load(stretch, one)
        or (one.kind == "number" and any(n.kind == "reps" for n in beside))
        or far_too_many
    ):
        yield "load_kg", in_kg(one.value, units)
    elif one.value <= _MOST_REPS:
        yield "reps", int(one.low if one.kind == "range" and one.low is not None else one.value)


def _is_in_so_many(stretch: Stretch, one: Quantity, beside: Sequence[Quantity]) -> bool:
    """Minutes, of a distance that takes some: `10k in 45`."""
    is_far = any(n.kind == "distance" and n.value >= _FAR_M for n in beside)
    return is_far and one.kind == "number" and stretch.word(one.start - 1) == "in"


def _times(stretch: Stretch, one: Quantity, *, is_lift: bool, squat: bool) -> Iterator[tuple[str, Any]]:
    """`80x5`, `5 x 80 kg` of a lift: the more is the load. Of anything else `3x10` is ten in a row."""
    first, second = one.value, one.second or 0.0
    is_lift = is_lift or (squat and max(first, second) >= SURELY_A_LOAD)
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
    """`Back squat 150`, `squat 150`; but `60 thrusters`, `swings 100`, `squats 60` tell repetitions."""
    if one.kind != "number" or one.value < SURELY_A_LOAD:
        return False
    before = [mark for mark in _named(stretch) if _movement(mark) == movement and mark.start < one.start]
    barred = takes_a_bar(movement) or (movement in _LOADED and _is_said_bare(stretch, before))
    return bool(before) and barred


def _is_said_bare(stretch: Stretch, named: Sequence[Mark]) -> bool:
    """`Squat`, `squatted`, as lifters call the one with a bar."""
    return any(stretch.marked.words[mark.start : mark.end] in _BARE for mark in named)


@cache
def _goes(movement: str) -> bool:
    """Whether it is counted in metres."""
    return catalogue().movement(movement).unit is AmountUnit.METRES


@cache
def _is_lift(movement: str) -> bool:
    """Whether it is usually done with something that has a load."""
    holds = catalogue().movement(movement).variants[0].holds
    return bool(holds) and holds[0].implement is not None
