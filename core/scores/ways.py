"""How a part is told and scored, as the trade does it: one row for each way.

A part's format alone doesn't say it: intervals of a set distance are timed, those of a set time counted, and of a set
work every minute the minutes are counted in which it was held.
"""

from collections.abc import Callable
from enum import StrEnum
from typing import Final, NamedTuple

from core.measures import AmountUnit
from core.scores.text import clock
from core.sessions.counting import is_held_so_long, is_in_kcal, reps_in_all, reps_of, times_in
from core.sessions.values import Block, Format


class Way(StrEnum):
    ROUNDS = "rounds"
    TIME = "time"
    HOLD = "hold"
    HOLDS = "holds"
    REPS = "reps"
    SETS_OF_REPS = "sets of reps"
    CALORIES = "calories"
    DISTANCE = "distance"
    LOAD = "load"
    SPLITS = "splits"
    COUNTS = "counts"
    MINUTES = "minutes"
    DONE = "done"


class Telling(NamedTuple):
    """What is asked, and the unit of `value`; `roughly`: what somebody is asked who didn't count (like `about`)."""

    ask: str
    unit: str
    roughly: str = ""
    about: str = ""


TELLINGS: Final[dict[Way, Telling]] = {
    Way.ROUNDS: Telling(
        "How many rounds and repetitions did you do?", "rounds",
        "Roughly how many rounds do you think it was?", "about 6 rounds",
    ),
    Way.TIME: Telling("What was your time?", "s", "Roughly how long did it take you?", "about 9 min"),
    Way.HOLD: Telling("How long did you hold it?", "s", "Roughly how long was it?", "about 1 min"),
    Way.HOLDS: Telling("How long did you hold each one?", "s", "Roughly how long was each?", "about 40 s each"),
    Way.REPS: Telling(
        "How many repetitions did you do in all?", "reps",
        "Roughly how many repetitions do you think it was?", "about 40 reps",
    ),
    Way.SETS_OF_REPS: Telling(
        "How many repetitions in each set?", "reps",
        "Roughly how many repetitions do you think it was?", "about 40 reps",
    ),
    Way.CALORIES: Telling(
        "How many calories did you get in all?", "kcal",
        "Roughly how many calories do you think it was?", "about 40 cal",
    ),
    Way.DISTANCE: Telling("How far did you get?", "m", "Roughly how far was it?", "about 2 km"),
    Way.LOAD: Telling("Which weight did you use?", "kg", "Roughly how heavy was it?", "about 60 kg"),
    Way.SPLITS: Telling("How long did each one take?", "s", "Roughly how long was each?", "about 1:35 each"),
    Way.COUNTS: Telling("What did you get in each one?", "reps", "Roughly how many in each one?", "about 12 each"),
    Way.MINUTES: Telling(
        "How many rounds did you hold?", "reps", "Roughly how many rounds did you hold?"
    ),
    Way.DONE: Telling("This part has no score. What would you like your coach to know?", "done"),
}  # fmt: skip


# The kinds of numbers in which a score is told so, beside bare ones.
OWN: Final[dict[Way, tuple[str, ...]]] = {
    Way.ROUNDS: ("rounds",),
    Way.TIME: ("clock", "span", "left"),
    Way.HOLD: ("clock", "span"),
    Way.HOLDS: ("clock", "span"),
    Way.REPS: ("reps",),
    Way.SETS_OF_REPS: ("reps", "times"),
    Way.CALORIES: ("cal",),
    Way.DISTANCE: ("metres",),
    Way.LOAD: ("load", "hands", "times"),
    Way.SPLITS: ("clock", "span"),
    Way.COUNTS: ("reps", "cal", "metres"),
    Way.MINUTES: ("rounds", "turn", "of"),
    Way.DONE: (),
}


def likes(block: Block) -> tuple[str, ...]:
    """What may be written as a score of this block, the shortest first; each of it can be meant of it, and is read."""
    return _LIKES[way_of(block)](block)


def about(block: Block) -> str:
    """How somebody who didn't count may tell it."""
    if way_of(block) is Way.TIME and block.cap_s is not None:
        return f"about {max(min(9, int(block.cap_s // 60)), 1)} min"
    if way_of(block) is Way.MINUTES:
        return f"about {max((times_in(block) or 2) - 1, 1)} rounds"
    return TELLINGS[way_of(block)].about


def _like_rounds(block: Block) -> tuple[str, ...]:
    """A few repetitions more than whole rounds, and no more of them than a round has."""
    counts = [reps_of(line) for line in block.lines]
    more = max(min(12, sum(one or 0 for one in counts) - 1), 0)
    return (f"7+{more}", f"7 rounds + {more}") if more else ("7 rounds",)


def _like_time(block: Block) -> tuple[str, ...]:
    """What was left tells how far somebody got, where all of it can be counted; else the rounds do."""
    if block.cap_s is None:
        return ("8:43",)
    time = clock(min(523, block.cap_s))
    whole = reps_in_all(block)
    if whole and whole > 1:
        return (time, f"capped, {min(40, whole - 1)} reps left")
    rounds = block.rounds or 1
    return (time, f"capped, {rounds - 1} rounds + 5") if rounds > 1 and not block.scheme else (time,)


def _like_load(block: Block) -> tuple[str, ...]:
    reps = block.lines[0].amount if block.lines and block.rounds else None
    return ("60 kg", f"{block.rounds}x{reps:g} @ 60 kg") if reps else ("60 kg",)


def _like_minutes(block: Block) -> tuple[str, ...]:
    every = times_in(block) or 0
    return (f"all {every}", f"failed minute {every - 1}") if every > 1 else ("all of it",)


def _of_each(*values: str) -> Callable[[Block], tuple[str, ...]]:
    """As many as there are, the first ones again and again."""

    def like(block: Block) -> tuple[str, ...]:
        often = max(min(times_in(block) or block.rounds or len(values), _MOST_SHOWN), 1)
        return (" ".join((values * often)[:often]),)

    return like


_MOST_SHOWN: Final = 12
_LIKES: Final[dict[Way, Callable[[Block], tuple[str, ...]]]] = {
    Way.ROUNDS: _like_rounds,
    Way.TIME: _like_time,
    Way.HOLD: lambda _: ("1:05", "65 s"),
    Way.HOLDS: _of_each("45", "40", "38"),
    Way.REPS: lambda _: ("42", "42 reps"),
    Way.SETS_OF_REPS: _of_each("15", "12", "10"),
    Way.CALORIES: lambda _: ("42 cal",),
    Way.DISTANCE: lambda _: ("2450 m", "2.4 km"),
    Way.LOAD: _like_load,
    Way.SPLITS: _of_each("1:32", "1:35", "1:33"),
    Way.COUNTS: _of_each("15", "12", "10"),
    Way.MINUTES: _like_minutes,
    Way.DONE: lambda _: ("done",),
}


def way_of(block: Block) -> Way:
    """How a score of the block is told."""
    if block.format is Format.INTERVALS:
        return _way_of_intervals(block)
    if block.format is Format.MAX_REPS:
        return _way_of_most(block)
    if block.format is Format.HOLD:
        return Way.HOLDS if (block.rounds or 1) > 1 else Way.HOLD
    if block.format is Format.SETS and _goes_as_it_goes(block):
        return Way.SETS_OF_REPS
    if block.format is Format.SETS and _is_set_in_time(block):
        return Way.COUNTS
    return _PLAIN[block.format]


_PLAIN: Final = {
    Format.AMRAP: Way.ROUNDS,
    Format.FOR_TIME: Way.TIME,
    Format.TIME_TRIAL: Way.TIME,
    Format.SETS: Way.LOAD,
    Format.MAX_LOAD: Way.LOAD,
    Format.QUALITY: Way.DONE,
}


def _goes_as_it_goes(block: Block) -> bool:
    """Sets of as many as go, with no weight written: what there is to tell is how many."""
    counted = all(line.unit is AmountUnit.REPS and line.amount is None for line in block.lines)
    return counted and not block.scheme and not any(line.loads_kg for line in block.lines)


def _is_set_in_time(block: Block) -> bool:
    """Sets of so many seconds, with no weight written and nothing held: what there is to tell is how many."""
    timed = all(line.unit is AmountUnit.SECONDS for line in block.lines)
    return (
        timed
        and not any(line.loads_kg or line.load_rule for line in block.lines)
        and not is_held_so_long(block)
    )


def _way_of_most(block: Block) -> Way:
    if is_in_kcal(block):
        return Way.CALORIES
    if all(line.unit is AmountUnit.METRES for line in block.lines):
        return Way.DISTANCE
    return Way.SETS_OF_REPS if (block.rounds or 1) > 1 else Way.REPS


_COUNTED_BY_ONES: Final = frozenset({AmountUnit.REPS, AmountUnit.KCAL, AmountUnit.METRES})


def _way_of_intervals(block: Block) -> Way:
    """What is set is not told: of a set distance the time, of a set time how much, of set work whether it was held."""
    units = {line.unit for line in block.lines}
    if block.counted_in in _COUNTED_BY_ONES:
        return Way.COUNTS
    if all(line.load_rule and line.load_rule.leaves_load_open for line in block.lines):
        return Way.LOAD  # how heavy is theirs to find
    if block.work_s or any(line.amount is None for line in block.lines):
        return Way.COUNTS
    if AmountUnit.SECONDS in units and not (block.every_s and len(units) > 1):
        return Way.COUNTS
    if units == {AmountUnit.METRES} or not block.every_s:
        return Way.SPLITS
    return Way.MINUTES
