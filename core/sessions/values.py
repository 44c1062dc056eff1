"""A session as the coach wrote it: blocks in order, each with one format and its lines."""

import datetime as dt
from enum import StrEnum
from typing import Annotated, Literal

from pydantic import Field

from core.measures import DAY_S, MOST_METRES, MOST_REPS, AmountUnit, Kg, Minutes
from core.values import Value

# What one session may hold: more is no session, and everybody would wait while it is worked out for each of them.
MOST_LINES, MOST_BLOCKS, MOST_ROUNDS, LONGEST_SCHEME = 100, 50, 500, 50
LONGEST_TEXT, MOST_PERCENT = 5000, 200
MOST_CHOICES = 5
# Up to here whoever trains can talk in sentences (estimate).
EASY = 4
Amount = Annotated[float, Field(gt=0, le=MOST_METRES)]
Span = Annotated[float, Field(gt=0, le=DAY_S)]
Reps = Annotated[int, Field(ge=1, le=MOST_REPS)]
Station = Annotated[int, Field(ge=1, le=100)]
Count = Annotated[int, Field(ge=1, le=10)]
Loads = Annotated[tuple[Kg, ...], Field(max_length=2)]
Percent = Annotated[float, Field(gt=0, le=MOST_PERCENT)]
Rounds = Annotated[int, Field(ge=1, le=MOST_ROUNDS)]
Scheme = Annotated[tuple[Reps, ...], Field(max_length=LONGEST_SCHEME)]
Rest = Annotated[float, Field(ge=0, le=DAY_S)]
Text = Annotated[str, Field(max_length=LONGEST_TEXT)]


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


class Counts(StrEnum):
    """Which of several sets or times is the score, where it isn't all of them together."""

    BEST = "best"
    WORST = "worst"


class Aim(Value):
    """What the coach wants of a block.

    `score`: rounds or seconds from `low` to `high`; `unbroken`: repetitions a fresh athlete could do
    without a break. An open end is None.
    """

    of: Literal["score", "unbroken"]
    low: Annotated[float, Field(ge=0, le=DAY_S)] | None = None
    high: Annotated[float, Field(ge=0, le=DAY_S)] | None = None


class Effort(Value):
    """How hard a block is meant to be, 0-10, an open end None: `easy` is up to 4, `hard` from 7 on.

    `words` are the coach's own, where they said it in words ("easy, you can talk"). The numbers are those of the
    scale that people rate a session on: 3 is moderate, 5 hard, 7 very hard (Foster et al. 2001, J Strength Cond Res
    15(1):109-115, from memory).
    """

    low: Annotated[float, Field(ge=0, le=10)] | None = None
    high: Annotated[float, Field(ge=0, le=10)] | None = None
    words: Text | None = None

    @property
    def is_easy(self) -> bool:
        return self.high is not None and self.high <= EASY

    def at_most(self, most: float | None) -> "Effort | None":
        """The same for whoever goes no harder than so; None where no more of it is left."""
        if most is None or (self.high is not None and self.high <= most):
            return self
        return None if (self.low or 0) > most else Effort(low=self.low, high=most)


class LoadRule(Value):
    """How the coach chose the load when no kilograms say it all. Exactly one field is set.

    `unbroken`: how many go without a break when fresh, or True where each set is to be done in one go.
    """

    percent: Percent | None = None
    effort: Annotated[float, Field(ge=0, le=10)] | None = None
    heavy: bool | None = None
    unbroken: tuple[Reps, Reps] | Literal[True] | None = None

    @property
    def leaves_load_open(self) -> bool:
        """Whether a load is found by it: that a set goes in one go is said of loads that are written too."""
        return self.unbroken is not True


class Line(Value):
    """Amount, movement and load: `12 goblet squats @ 24/16 kg`.

    `amount` is None under a scheme (the scheme gives it); `amount_to` is the top of a range (`8-10`), and
    `second_amount` what the second of a written pair does (`15/12 cal row`). `loads_kg` holds one load for
    all or a pair: first and second. `movement` and `variant` are catalogue ids; `written` is the coach's
    own line. `choices`: what the coach leaves to each to do instead, `or 200 m run`; `notes` say it as well.
    """

    written: Text
    movement: str
    variant: str | None = None
    implement: str | None = None
    amount: Amount | None = None
    amount_to: Amount | None = None
    second_amount: Amount | None = None
    unit: AmountUnit = AmountUnit.REPS
    per_side: bool = False
    side: Literal["left", "right", "alternating"] | None = None
    station: Station | None = None
    count: Count | None = None
    loads_kg: Loads = ()
    load_rule: LoadRule | None = None
    tempo: str | None = None
    notes: Text | None = None
    choices: Annotated[tuple["Line", ...], Field(max_length=MOST_CHOICES)] = ()


Lines = Annotated[tuple[Line, ...], Field(max_length=MOST_LINES)]


class Block(Value):
    """One part of a session. Times in seconds but for `minutes`. `rounds` counts the sets of a sets block.

    `name`: what its coach calls it, where that isn't its kind.
    `rest_stations`: the minutes (or other turns) of intervals at which nothing is done, counted like a line's
    `station`. `counts`: which set is the score, None for all of them.
    `counted_in`: in what the coach wants the work of a set time counted, where that was said.
    `partial`: the coach wrote more than was understood, so its repetitions can't be added up.
    """

    kind: BlockKind = BlockKind.MAIN
    name: Text | None = None
    format: Format
    minutes: Minutes | None = None
    rounds: Rounds | None = None
    scheme: Scheme = ()
    every_s: Span | None = None
    work_s: Span | None = None
    rest_s: Rest | None = None
    cap_s: Span | None = None
    team: Annotated[int, Field(ge=1, le=100)] | None = None
    scored: bool = True
    counts: Counts | None = None
    counted_in: AmountUnit | None = None
    aim: Aim | None = None
    effort: Effort | None = None
    buy_in: Lines = ()
    cash_out: Lines = ()
    lines: Lines
    rest_stations: Annotated[tuple[Station, ...], Field(max_length=100)] = ()
    notes: Text | None = None
    partial: bool = False

    @property
    def every_line(self) -> Lines:
        """In the order in which they are done."""
        return (*self.buy_in, *self.lines, *self.cash_out)


class Session(Value):
    title: Text | None = None
    date: dt.date | None = None  # a field named like its type would shadow it
    blocks: Annotated[tuple[Block, ...], Field(max_length=MOST_BLOCKS)]

    @property
    def every_line(self) -> Lines:
        """Those of all blocks, in the order in which they are done."""
        return tuple(line for block in self.blocks for line in block.every_line)

    @property
    def places(self) -> tuple[int | None, ...]:
        """For each block its number among those of its kind, to tell them apart; None for the only one."""
        kinds = [block.kind for block in self.blocks]
        return tuple(
            kinds[: at + 1].count(kind) if kinds.count(kind) > 1 else None for at, kind in enumerate(kinds)
        )
