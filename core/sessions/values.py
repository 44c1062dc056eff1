"""A session as the coach wrote it: blocks in order, each with one format and its lines."""

import datetime as dt
from decimal import Decimal
from enum import StrEnum
from typing import Literal

from core.measures import AmountUnit
from core.values import Value


class BlockKind(StrEnum):
    WARM_UP = "warm-up"
    SKILL = "skill"
    STRENGTH = "strength"
    MAIN = "main"
    COOL_DOWN = "cool-down"


class Format(StrEnum):
    """How a block is done and scored."""

    AMRAP = "amrap"
    FOR_TIME = "for_time"
    INTERVALS = "intervals"
    SETS = "sets"
    HOLD = "hold"
    MAX_REPS = "max_reps"
    MAX_LOAD = "max_load"
    TIME_TRIAL = "time_trial"
    QUALITY = "quality"


class Aim(Value):
    """What the coach wants of a block or line.

    `score`: rounds or seconds from `low` to `high`; `unbroken`: repetitions a fresh athlete could do
    without a break; `effort`: 0-10. An open end is None.
    """

    of: Literal["score", "unbroken", "effort"]
    low: float | None = None
    high: float | None = None


class LoadRule(Value):
    """How the coach chose the load when no kilograms say it all. Exactly one field is set."""

    percent: float | None = None
    effort: float | None = None
    heavy: bool | None = None
    unbroken: tuple[int, int] | None = None


class Line(Value):
    """Amount, movement and load: `12 goblet squats @ 24/16 kg`.

    `amount` is None under a scheme (the scheme gives it); `amount_to` is the top of a range (`8-10`), and
    `second_amount` what the second of a written pair does (`15/12 cal row`). `loads_kg` holds one load for
    all or a pair: first and second. `movement` and `variant` are catalogue ids; `written` is the coach's
    own line.
    """

    written: str
    movement: str
    variant: str | None = None
    implement: str | None = None
    amount: float | None = None
    amount_to: float | None = None
    second_amount: float | None = None
    unit: AmountUnit = AmountUnit.REPS
    per_side: bool = False
    side: Literal["left", "right", "alternating"] | None = None
    station: int | None = None
    count: int | None = None
    loads_kg: tuple[Decimal, ...] = ()
    load_rule: LoadRule | None = None
    tempo: str | None = None
    notes: str | None = None


class Block(Value):
    """One part of a session. Times in seconds but for `minutes`. `rounds` counts the sets of a sets block.

    `rest_stations`: the minutes (or other turns) of intervals at which nothing is done, counted like a line's
    `station`. `partial`: the coach wrote more than was understood, so its repetitions can't be added up.
    """

    kind: BlockKind = BlockKind.MAIN
    format: Format
    minutes: float | None = None
    rounds: int | None = None
    scheme: tuple[int, ...] = ()
    every_s: float | None = None
    work_s: float | None = None
    rest_s: float | None = None
    cap_s: float | None = None
    team: int | None = None
    scored: bool = True
    aim: Aim | None = None
    buy_in: tuple[Line, ...] = ()
    cash_out: tuple[Line, ...] = ()
    lines: tuple[Line, ...]
    rest_stations: tuple[int, ...] = ()
    notes: str | None = None
    partial: bool = False


class Session(Value):
    title: str | None = None
    date: dt.date | None = None  # a field named like its type would shadow it
    blocks: tuple[Block, ...]

    @property
    def places(self) -> tuple[int | None, ...]:
        """For each block its number among those of its kind, to tell them apart; None for the only one."""
        kinds = [block.kind for block in self.blocks]
        return tuple(
            kinds[: at + 1].count(kind) if kinds.count(kind) > 1 else None for at, kind in enumerate(kinds)
        )
