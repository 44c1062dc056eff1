"""The ways in which a line could be done, worked out once for everybody, and what each of them needs."""

from collections.abc import Iterable
from decimal import Decimal
from enum import IntEnum
from typing import NamedTuple

from core.ability.kinship import Kin
from core.measures import AmountUnit
from core.movements.values import Demand, Hold, Movement, Part, Pattern, Variant
from core.scaling.costs import Charge, Costs
from core.scaling.doses import Dose
from core.scaling.intent import HARD_SET, Window
from core.sessions.values import Block, Line

Amount = float | None

# Implements that can be held, and how many of each at once.
Holds = frozenset[tuple[str, int]]

# So many kinds of gear are remembered for a line.
MOST_KINDS = 256

# 35 lb stand in for 16 kg: a load this near to the written one is the written one.
SAME_LOAD = 0.025


class Near(IntEnum):
    """How a way lies to the written one: for words and taps; the choice goes by what it costs."""

    WRITTEN = 0
    VARIANT = 1
    MOVEMENT = 2  # trains the main part still
    ELSEWHERE = 3


class Grip(NamedTuple):
    """A hold of a way, and what the written line makes of it.

    `held`: implement and count. `per_kg`: load moved for each kg of one implement. `other`: not the implement
    that is meant. `meant`: so many times the written load is the same in each of these; None for another movement.
    `heaviest`: so many times may be held at all, `written` by whoever goes no heavier than the coach wrote;
    `enough`: less than such a share of it is another line. `charges`: what it costs at any load.
    """

    hold: Hold
    held: tuple[str, int]
    per_kg: float
    other: bool
    meant: float | None
    heaviest: float
    written: float
    enough: float
    charges: tuple[Charge, ...] = ()


class Way(NamedTuple):
    """One variant that a line could be done in; `near` says how it lies to the written one.

    `charges` are what it costs whoever does it, and `base` their sum; `least`: that with the cheapest grip.
    `amount` as it would stand in the version, in `unit`, by whole `step`s; `set_amount` what one side works in one
    set, None where no count applies. `demands` are the variant's, as flags, `bars` all of it that a limit or the
    place may rule out; `kin` is its place among its relatives. `counts_reps`: repetitions are what tires, in
    whatever unit the line is written. Of each of `needs` one thing must be there, and one of `holds` (implement and
    count), if there are any. `share` of body mass that is moved: None where it depends on a height. `met` and
    `skill` are the variant's; `dose`: how long a set of it is, `less`: such a share of what the written amount would
    be. `resists`: something does whose kilos nobody knows; `steps`: one foot goes in front
    of the other, or up.
    """

    id: str
    movement: Movement
    variant: Variant
    near: Near
    unit: AmountUnit
    per_side: bool
    amount: Amount
    set_amount: Amount
    demands: int
    bars: int
    kin: Kin
    counts_reps: bool
    needs: tuple[frozenset[str], ...]
    holds: Holds
    share: float | None
    met: float | None
    skill: bool
    dose: Dose
    resists: bool = False
    steps: bool = False
    grips: tuple[Grip, ...] = ()
    charges: tuple[Charge, ...] = ()
    base: int = 0
    least: int = 0
    step: int = 1
    less: float = 1.0

    @property
    def is_written_walk(self) -> bool:
        """Whether it is what the coach wrote, and goes somewhere without a run."""
        goes = self.movement.pattern is Pattern.TRAVEL and Demand.IMPACT not in self.variant.demands
        return goes and self.near is Near.WRITTEN

    @property
    def is_hold(self) -> bool:
        """Whether the body holds itself, and time is what counts."""
        by_time = self.unit is self.movement.unit_of(self.variant) is AmountUnit.SECONDS
        return by_time and self.kin.k is not None and not self.holds

    @property
    def set_s(self) -> float:
        """How long a set is, in seconds: of one side, or of both in turn; 0 where no count applies."""
        in_turn = not self.per_side and self.movement.sides_of(self.variant) == "alternating"
        return (self.set_amount or 0.0) * self.variant.seconds.value * (2 if in_turn else 1)

    def is_within(self, things: frozenset[str], holds: Holds) -> bool:
        """Whether everything is there that it needs, and something that it can be done with."""
        for need in self.needs:
            if need.isdisjoint(things):
                return False
        return not (self.holds and self.holds.isdisjoint(holds))


class Reachable:
    """The ways that anybody may be given, the cheapest first, and which of them can be done with some gear."""

    def __init__(self, ways: Iterable[Way]) -> None:
        self._ways = tuple(ways)
        self._known: dict[tuple[frozenset[str], Holds], tuple[Way, ...]] = {}

    def within(self, things: frozenset[str], holds: Holds) -> tuple[Way, ...]:
        """Those for which everything is there; looked through once for each kind of gear."""
        kind = things, holds
        known = self._known.get(kind)
        if known is None:
            if len(self._known) >= MOST_KINDS:
                self._known.clear()
            known = self._known[kind] = tuple(way for way in self._ways if way.is_within(things, holds))
        return known


class LinePlan(NamedTuple):
    """A line for everybody. `ways[0]` is what is written; `windows` are meant for the two loads of a pair.

    `reachable`: the ways on one's feet, to be looked up by what is there; `sitting`: those with what stands in only
    for the seated. `harder`: ways of an unloaded line that nobody is given unless they ask. `works_up`: the load is
    what is looked for, so none is named. `breathless`: the work goes on without a rest, so breathing counts.
    `unhurried`: what a set may cost but for the rests, where these count. `most_more`: so many times the amount may be
    done of what is light; `heavy`: it is a heavy set of few repetitions; `pulls`: the arms pull. `turn_s`: so long the
    clock leaves for a set with the rest after it; `pieces`: into so many a set is broken; `easy`: the coach
    wants it so; `light`: what is held is to be light, and no load says how light; `again`: it comes again on a ladder,
    `rung`: at such a share of the highest; `hard_set`: what many of what is light cost, in place of a heavy few.
    `trained`: what the lines of the
    session are for. `costs`: the table that it was made with.
    """

    line: Line
    written: str
    ways: tuple[Way, ...]
    hold: Hold | None
    loaded: bool
    windows: tuple[Window, Window]
    reachable: Reachable
    sitting: Reachable
    costs: Costs
    scheme: tuple[int, ...] = ()
    harder: tuple[Way, ...] = ()
    works_up: bool = False
    breathless: bool = False
    unhurried: Window | None = None
    most_more: float = 1.0
    heavy: bool = False
    pulls: bool = False
    turn_s: float | None = None
    pieces: float = 1.0
    easy: bool = False
    light: bool = False
    again: bool = False
    rung: float = 1.0
    hard_set: Window = HARD_SET
    trained: frozenset[Part] = frozenset()

    def load_kg(self, pair: int) -> Decimal | None:
        """The written load that is meant, per implement; None where the coach wrote none."""
        loads = self.line.loads_kg
        return loads[min(pair, len(loads)) - 1] if loads else None

    def written_kg(self, pair: int) -> Decimal | None:
        """The written loads that are in the hands at once, together; None where the coach wrote none."""
        load = self.load_kg(pair)
        return None if load is None else load * (self.hold.count if self.hold else 1)


class BlockPlan(NamedTuple):
    """A block's sections: buy-in, lines, cash-out. `changes`: there is time to set a thing anew between lines."""

    block: Block
    buy_in: tuple[LinePlan, ...]
    lines: tuple[LinePlan, ...]
    cash_out: tuple[LinePlan, ...]

    @property
    def sections(self) -> tuple[tuple[LinePlan, ...], ...]:
        return self.buy_in, self.lines, self.cash_out
