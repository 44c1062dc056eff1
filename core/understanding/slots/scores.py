"""A score out of a stretch: `7+12`, `8:43`, `6 rounds and 10 burpees`, `3 @ 85 kg`, `failed 60 so it's 57.5`."""

from collections.abc import Callable, Sequence
from typing import Final

from core.measures import AmountUnit
from core.sessions.counting import reps_of
from core.sessions.values import Block, Format, Line
from core.understanding.acts import Result
from core.understanding.quantities import Quantity
from core.understanding.slots.stretch import Stretch, exact_kg, in_kg, plain

_TIMED: Final = frozenset({Format.FOR_TIME, Format.TIME_TRIAL, Format.HOLD})
_LOADED: Final = frozenset({Format.SETS, Format.MAX_LOAD})
_HOUR_MIN: Final = 60
_MINUTE_S: Final = 60
_FAILED_WITHIN: Final = 3
# While any other question is open, a bare number is its answer.
_ASKS_FOR_IT: Final = frozenset({"", "score"})


def results(stretch: Stretch) -> tuple[Result, ...]:
    """The score that is told; of several parts one each. Nothing where no number is one."""
    found = _result(stretch)
    if found is None:
        return ()
    unfinished = stretch.means("stopped") and found.load_kg is None
    return (found.model_copy(update={"unfinished": unfinished}),)


def _result(stretch: Stretch) -> Result | None:
    for read in (_plus, _rounds, _clock, _spoken_time, _load, _counted, _far, _bare):
        found = read(stretch)
        if found is not None:
            return found
    return None


def _last(stretch: Stretch, *kinds: str) -> Quantity | None:
    """The last of a kind that isn't taken back: `not 7+12 but 6+12`, `12:34 ... jk 14:52`."""
    found = [one for one in stretch.quantities(*kinds) if not _is_denied(stretch, one)]
    if not found:
        return None
    if len(found) > 1 and stretch.means("laugh", "correct"):
        return found[-1]
    return found[0]


def _is_denied(stretch: Stretch, one: Quantity) -> bool:
    """`not 7+12`, `instead of 16`."""
    at = one.start - 1
    if at < stretch.start:
        return False
    helps = stretch.marked.helps
    return helps(at, "denial") is not None or helps(at, "instead") == "of"


def _is_nearly(stretch: Stretch, one: Quantity) -> bool:
    """`nearly 7 rounds`: how many they were isn't told."""
    return any(_helps(stretch, at, "nearly_word") for at in range(one.start - 2, one.start))


def _plus(stretch: Stretch) -> Result | None:
    told = _last(stretch, "plus")
    if told is None:
        return None
    return Result(rounds=int(told.value), reps=int(told.second or 0))


def _rounds(stretch: Stretch) -> Result | None:
    told = _last(stretch, "rounds")
    if told is None or _is_nearly(stretch, told):
        return None
    if told.value != int(told.value) or _helps(stretch, told.end + 1, "half_word"):
        return _half(int(told.value), stretch)
    reps = _reps_after(stretch, told)
    return Result(rounds=int(told.value), reps=reps)


def _half(rounds: int, stretch: Stretch) -> Result:
    whole = [reps_of(line) for line in _lines(stretch)]
    known = [one for one in whole if one]
    return Result(rounds=rounds, reps=sum(known) // 2 if known and len(known) == len(whole) else None)


def _reps_after(stretch: Stretch, told: Quantity) -> int | None:
    """Repetitions beyond whole rounds: told in all, or by how far they got in the next one."""
    partial = _partial(stretch, told.end)
    if partial is not None:
        return partial
    more = [one for one in stretch.quantities("reps", "number") if one.start >= told.end]
    if more and not _helps(stretch, more[0].end, "left_word"):
        return int(more[0].value)
    return 0 if told.end >= stretch.end or not more else None


def _partial(stretch: Stretch, start: int) -> int | None:
    """`plus the pull-ups and 4 push-ups`: all lines before the last one that is named, and what was done of it."""
    named = [one for one in stretch.marks("movement") if one.start >= start]
    lines = _lines(stretch)
    if (
        not named
        or not lines
        or any(_helps(stretch, at, "minus_word") for at in range(start, named[0].start))
    ):
        return None
    at = next((i for i, line in enumerate(lines) if line.movement == named[-1].value("movement")), None)
    if at is None:
        return None
    before = [reps_of(line) for line in lines[:at]]
    own = reps_of(lines[at])
    counted = [one.quantity for one in stretch.marks("number") if one.end == named[-1].start and one.quantity]
    done = int(counted[0].value) if counted else own
    return None if None in before or done is None else sum(one for one in before if one) + done


def _lines(stretch: Stretch) -> Sequence[Line]:
    block = _block(stretch)
    return block.lines if block else ()


def _block(stretch: Stretch) -> Block | None:
    session = stretch.context.session
    scored = [block for block in session.blocks if block.scored] if session else []
    return (
        scored[0] if len(scored) == 1 else next((one for one in scored if one.format is Format.AMRAP), None)
    )


def _formats(stretch: Stretch) -> set[Format]:
    session = stretch.context.session
    return {block.format for block in session.blocks if block.scored} if session else set()


def _clock(stretch: Stretch) -> Result | None:
    told = _last(stretch, "clock")
    if told is None:
        return None
    several = [one.value for one in stretch.quantities("clock")]
    if len(several) > 2:  # noqa: PLR2004 - splits
        return Result(seconds=sum(several))
    return Result(seconds=told.value)


def _spoken_time(stretch: Stretch) -> Result | None:
    """`14 min 5 sec`; but `the cap of 20 minutes` with repetitions told is no time."""
    told = [one for one in stretch.quantities("span") if one.unit in {"s", "min", "h"}]
    timed = not _formats(stretch) or bool(_formats(stretch) & _TIMED)
    if not told or stretch.quantities("reps", "load") or not timed:
        return None
    if len(told) == 1 and told[0].unit == "min" and told[0].second is None:
        after = [
            one for one in stretch.quantities("number") if one.start == told[0].end and one.value < _MINUTE_S
        ]
        return Result(seconds=told[0].value + (after[0].value if after else 0))
    return Result(seconds=sum(one.value for one in told))


def _load(stretch: Stretch) -> Result | None:
    """The heaviest that wasn't failed; beside it the repetitions of the set where they are told."""
    told = [
        one
        for one in stretch.quantities("load")
        if not _is_failed(stretch, one) and not _is_denied(stretch, one)
    ]
    formats = _formats(stretch)
    times = [one for one in stretch.quantities("times") if one.unit or formats & _LOADED]
    if not told and not times:
        return None
    if formats and not formats & _LOADED:
        return None
    heaviest = max([exact_kg(one.value) for one in told] + [exact_kg(one.second or 0) for one in times])
    return Result(load_kg=heaviest, reps=_reps_of_set(stretch))


def _helps(stretch: Stretch, at: int, kind: str) -> bool:
    return stretch.start <= at < stretch.end and stretch.marked.helps(at, kind) is not None


def _is_failed(stretch: Stretch, one: Quantity) -> bool:
    near = range(max(stretch.start, one.start - _FAILED_WITHIN), one.start)
    return any(stretch.marked.helps(at, "failed") == "yes" for at in near)


def _reps_of_set(stretch: Stretch) -> int | None:
    """`5 reps 90 kg`, `100 kg x 5`, `3 @ 85 kg`, `60 for 3`."""
    reps = stretch.quantities("reps")
    if reps:
        return int(reps[0].value)
    for one in stretch.quantities("number"):
        beside = {stretch.word(one.start - 1), stretch.word(one.end)}
        if beside & {"x", "@"} or _helps(stretch, one.start - 1, "for_word"):
            return int(one.value)
    times = [one for one in stretch.quantities("times") if not one.unit]
    return int(times[0].second or 0) or None if times else None


def _counted(stretch: Stretch) -> Result | None:
    calories = _last(stretch, "cal")
    if calories:
        return Result(calories=int(calories.value))
    reps = _last(stretch, "reps")
    return Result(reps=int(reps.value)) if reps else None


def _far(stretch: Stretch) -> Result | None:
    told = _last(stretch, "distance")
    if _formats(stretch) & (_TIMED | _LOADED | {Format.AMRAP}):
        return None
    return Result(distance_m=told.value) if told and told.unit != "in" else None


def _bare(stretch: Stretch) -> Result | None:
    """Numbers with nothing beside them: what they count is told by the session; asked for something else, by that."""
    if stretch.context.question not in _ASKS_FOR_IT:
        return None
    numbers = [
        one
        for one in stretch.quantities("number")
        if not _is_failed(stretch, one) and not _is_denied(stretch, one)
    ]
    if not numbers:
        return None
    formats = _formats(stretch)
    if not formats:
        return _without_session(stretch, numbers)
    if _is_of_most(stretch):
        return _bare_reps(stretch, numbers)
    read = next((read for one, read in _BARE if formats & one), None)
    return read(stretch, numbers) if read else None


def _without_session(stretch: Stretch, numbers: Sequence[Quantity]) -> Result | None:
    if (
        stretch.context.question == "score"
        and len(numbers) == 1
        and numbers[0].value == int(numbers[0].value)
    ):
        return Result(reps=int(numbers[0].value))
    return None


def _bare_rounds(stretch: Stretch, numbers: Sequence[Quantity]) -> Result | None:
    if any(one.value != int(one.value) for one in numbers):
        return _half(int(numbers[0].value), stretch)
    if len(numbers) == 1:
        partial = _partial(stretch, numbers[0].end)
        return Result(rounds=int(numbers[0].value), reps=partial or 0)
    return Result(rounds=int(numbers[0].value), reps=int(numbers[1].value))


def _bare_time(stretch: Stretch, numbers: Sequence[Quantity]) -> Result | None:
    first = numbers[0].value
    if stretch.marked.text.tokens[numbers[0].start].kind == "word":
        return Result(seconds=first * _MINUTE_S)
    if first != int(first):
        whole = int(first)
        rest = round((first - whole) * 100)
        return Result(seconds=whole * _MINUTE_S + rest) if rest < _MINUTE_S else None
    if len(numbers) > 1 and numbers[1].start == numbers[0].end and numbers[1].value < _MINUTE_S:
        return Result(seconds=first * _MINUTE_S + numbers[1].value)
    if first >= 100:  # noqa: PLR2004 - `843` is 8:43
        minutes, rest = divmod(int(first), 100)
        return Result(seconds=minutes * _MINUTE_S + rest) if rest < _MINUTE_S else None
    return Result(seconds=first * _MINUTE_S)


def _bare_load(stretch: Stretch, numbers: Sequence[Quantity]) -> Result | None:
    loads = [one for one in numbers if stretch.word(one.start - 1) != "x"]
    heaviest = max((one.value for one in loads), default=0)
    return (
        Result(load_kg=plain(in_kg(heaviest, stretch.context.units)), reps=_reps_of_set(stretch))
        if heaviest
        else None
    )


def _bare_reps(stretch: Stretch, numbers: Sequence[Quantity]) -> Result | None:  # noqa: ARG001 - one shape for all
    """The sum of the sets; `24, 19, 15 so 58` tells it itself."""
    told = [int(one.value) for one in numbers]
    return Result(reps=told[-1] if len(told) > 1 and told[-1] == sum(told[:-1]) else sum(told))


def _is_of_most(stretch: Stretch) -> bool:
    """Sets of as many as one can: what is told counts repetitions, not kilos."""
    session = stretch.context.session
    scored = [block for block in session.blocks if block.scored] if session else []
    lines = [line for block in scored for line in block.lines]
    return all(one.format is Format.SETS for one in scored) and all(
        line.amount is None and not line.loads_kg and line.unit is AmountUnit.REPS for line in lines
    )


_Read = Callable[[Stretch, Sequence[Quantity]], Result | None]
_BARE: Final[tuple[tuple[frozenset[Format], _Read], ...]] = (
    (frozenset({Format.AMRAP}), _bare_rounds),
    (_TIMED, _bare_time),
    (_LOADED, _bare_load),
    (frozenset({Format.MAX_REPS, Format.INTERVALS, Format.QUALITY}), _bare_reps),
)
