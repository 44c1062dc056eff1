"""What it costs to leave what the coach wrote: one table of whole points, `costs.toml` (see there for each)."""

import tomllib
from functools import cache
from math import ceil
from pathlib import Path
from typing import NamedTuple

from core.values import Value

TABLE = Path(__file__).parent / "costs.toml"

# A logarithm is charged by tenths; one begun counts, but for what rounding leaves.
TENTH = 0.1
ROUNDING = 1e-6


class Charge(NamedTuple):
    """An entry of the table, and the points that something costs by it."""

    entry: str
    points: int


class Entry(Value):
    """A row of the table, as a coach reads it."""

    id: str
    points: int
    what: str
    why: str


class Costs(NamedTuple):
    """The points of every entry."""

    step: int
    offered: int
    other_movement: int
    lost_part: int
    lost_main: int
    added_part: int
    not_named: int
    added_risk: int
    added_jump: int
    other_counting: int
    long_piece: int
    other_implement: int
    improvised: int
    other_count: int
    one_overhead: int
    one_of_two: int
    one_sided: int
    empty_handed: int
    makeshift: int
    band: int
    spared_in_vain: int
    inexact: int
    lighter: int
    half_the_kilos: int
    heavier: int
    hard: int
    a_little_hard: int
    light: int
    soft: int
    feeble: int
    fewer: int
    more: int
    few_of_light: int
    make_believe: int
    breathless: int
    nothing_used: int
    for_breath: int
    off_the_seat: int
    pushes_again: int
    stepping: int
    made_harder: int
    bold: int
    unheld: int
    unseen_hold: int
    quick: int
    low_hold: int
    high_step: int
    down: int
    tender: int
    repeats: int
    again: int
    heaps: int
    strains: int
    parted: int
    change: int
    unlike_last_time: int
    build_up: int
    rest: int


def tenths(log: float) -> int:
    """Whole tenths of a logarithm; one begun counts."""
    return ceil(log / TENTH - ROUNDING) if log > 0 else 0


@cache
def entries() -> tuple[Entry, ...]:
    """The table in its order."""
    rows = tomllib.loads(TABLE.read_text(encoding="utf-8"))["cost"]
    return tuple(Entry.model_validate(row) for row in rows)


@cache
def costs() -> Costs:
    """The points as they stand in the table; a missing entry or one too many is a TypeError."""
    return Costs(**{entry.id: entry.points for entry in entries()})
