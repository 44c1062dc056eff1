"""Set work every minute (or two): how many of them were held."""

from collections.abc import Iterator
from typing import Final

from core.notation.scores.choosing.candidates import Heard, Reading
from core.notation.scores.minutes import reps_held
from core.scores.values import Score
from core.sessions.counting import reps_in_round, times_in
from core.sessions.values import Block

_MINUTE_S: Final = 60


def as_minutes(heard: Heard) -> Iterator[Reading]:
    """All of them, without a number too; each number as so many held, as the one that failed, as those missed."""
    every = times_in(heard.block)
    if every is None:
        return
    yield Reading(_held(every, heard.block), (), "held all")
    yield Reading(_held(every - 1, heard.block), (), "held all but one")
    for at, one in enumerate(heard.numbers):
        count = one.value / _MINUTE_S if one.kind == "span" else one.value
        if one.kind == "clock" or count != int(count) or not 0 < count <= every:
            continue
        for held, role in ((int(count), "rounds"), (int(count) - 1, "nth"), (every - int(count), "left")):
            yield Reading(_held(held, heard.block), ((at, role),), f"held, {role}")
            if role != "left" and held < every:
                yield from _and_more(at, held, role, heard)


def _and_more(rounds: int, held: int, role: str, heard: Heard) -> Iterator[Reading]:
    """`13 done, the 14th I only got 11`: less than all of it has."""
    whole = reps_in_round(heard.block) or 0
    for at, one in enumerate(heard.numbers):
        if at > rounds and one.kind != "clock" and one.value == one.whole and one.whole < whole:
            uses = ((rounds, role), (at, "more"))
            yield Reading(_held(held, heard.block, one.whole), uses, f"held, {role} and more")


def _held(held: int, block: Block, more: int = 0) -> Score:
    """Whole minutes with their repetitions, where these can be counted; and what was done of the next one."""
    reps = reps_held(block, held)
    return Score(
        value=float(held) if reps is None else float(reps + more),
        unit="rounds" if reps is None else "reps",
        rounds=held,
        reps=more or None if reps is None else reps + more,
    )
