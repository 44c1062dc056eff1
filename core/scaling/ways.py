"""The ways in which a line could be done, worked out once for everybody, and what each of them needs."""

from collections.abc import Iterable
from decimal import Decimal
from typing import NamedTuple

from core.ability.kinship import Kin
from core.measures import AmountUnit
from core.movements.values import Hold, Movement, Variant
from core.scaling.intent import Window
from core.sessions.values import Block, Line

AS_WRITTEN = 0
OTHER_LOAD = 1
OTHER_IMPLEMENT = 2
OTHER_VARIANT = 3
OTHER_PATTERN = 5

Amount = float | None

Between = tuple[float, float]

# Implements that can be held, and how many of each at once.
Holds = frozenset[tuple[str, int]]

# So many kinds of gear are remembered for a line.
MOST_KINDS = 256

# 35 lb stand in for 16 kg: a load this near to the written one is the written one.
SAME_LOAD = 0.025
# And one this near may stand in: above it where it fits, 24 kg for 22.5, and below it 15 kg for 16, which is
# then no more too light than what is written (estimate: less than a step of a rack).
NEAR_LOAD = 0.08


class Grip(NamedTuple):
    """A hold of a way, and what the written line makes of it.

    `held`: implement and count. `per_kg`: load moved for each kg of one implement. `other`: not the implement
    that is meant. `heaviest`: per implement, for the two loads of a pair: what is written, of the same movement.
    """

    hold: Hold
    held: tuple[str, int]
    per_kg: float
    other: bool
    heaviest: tuple[float, float]

    def most(self, pair: int) -> tuple[float, float]:
        """The heaviest that counts as at most what is written, and what is near enough to stand in for it."""
        most = self.heaviest[pair - 1]
        return most * (1 + SAME_LOAD), most * (1 + NEAR_LOAD)


class Way(NamedTuple):
    """One variant that a line could be done in. `distance`: 0 the written one, 3-5 as the graph says.

    `amount` as it would stand in the version, in `unit`; `set_amount` what one side works in one set,
    None where no count applies. `demands` are the variant's, as flags, `bars` all of it that a limit or the place may
    rule out; `kin` is its place among its relatives.
    `counts_reps`: repetitions are what tires, in whatever unit the line is written. Of each of `needs` one thing
    must be there, and one of `holds` (implement and count), if there are any. `share` of body mass that is moved:
    None where it depends on a height. `met` and `skill` are the variant's. `fitting`: between which shares of S a
    load may fit, for the two loads of a pair, and for whoever goes easy with them.
    """

    id: str
    movement: Movement
    variant: Variant
    distance: int
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
    grips: tuple[Grip, ...] = ()
    fitting: tuple[Between, ...] = ()

    def is_within(self, things: frozenset[str], holds: Holds) -> bool:
        """Whether everything is there that it needs, and something that it can be done with."""
        for need in self.needs:
            if need.isdisjoint(things):
                return False
        return not (self.holds and self.holds.isdisjoint(holds))


class Reachable:
    """The ways that anybody may be given, and which of them can be done with some gear."""

    def __init__(self, ways: tuple[Way, ...]) -> None:
        self._ways = ways
        self._known: dict[tuple[frozenset[str], Holds], tuple[Way, ...]] = {}

    def within(self, things: frozenset[str], holds: Holds) -> tuple[Way, ...]:
        """Those for which everything is there; looked through once for each kind of gear."""
        kind = things, holds
        known = self._known.get(kind)
        if known is None:
            if len(self._known) >= MOST_KINDS:
                self._known.clear()
            known = tuple(way for way in self._ways if way.is_within(things, holds))
            self._known[kind] = known
        return known


def seated_first(ways: Iterable[Way]) -> tuple[Way, ...]:
    """Of ways equally near, those on a seat first: nobody changes between chair and floor without need."""
    return tuple(sorted(ways, key=lambda way: (way.distance, not way.variant.seated)))


class LinePlan(NamedTuple):
    """A line for everybody. `ways[0]` is what is written; `windows` are meant for the two loads of a pair.

    `reachable`: the same ways, to be looked up by what is there. `harder`: ways of an unloaded line that nobody
    is given unless they ask. `works_up`: the load is what is looked for, so none is named. `breathless`: the work
    goes on without a rest, so breathing counts. `unhurried`: what a set may cost but for the rests, where these count.
    `sitting`: `reachable`, with what stands in only for the seated.
    """

    line: Line
    written: str
    ways: tuple[Way, ...]
    hold: Hold | None
    loaded: bool
    windows: tuple[Window, Window]
    reachable: Reachable
    sitting: Reachable
    scheme: tuple[int, ...] = ()
    harder: tuple[Way, ...] = ()
    works_up: bool = False
    breathless: bool = False
    unhurried: Window | None = None

    def is_written(self, load: float, pair: int) -> bool:
        """Whether a load counts as the written one; any does where the coach wrote none."""
        return self._is_within(SAME_LOAD, load, pair)

    def is_near(self, load: float, pair: int) -> bool:
        """Whether a load is near enough to the written one to stand in for it."""
        return self._is_within(NEAR_LOAD, load, pair)

    def _is_within(self, share: float, load: float, pair: int) -> bool:
        written = self.load_kg(pair)
        return written is None or abs(load - float(written)) <= share * float(written)

    def load_kg(self, pair: int) -> Decimal | None:
        """The written load that is meant, per implement; None where the coach wrote none."""
        loads = self.line.loads_kg
        return loads[min(pair, len(loads)) - 1] if loads else None

    def written_kg(self, pair: int) -> Decimal | None:
        """The written loads that are in the hands at once, together; None where the coach wrote none."""
        load = self.load_kg(pair)
        return None if load is None else load * (self.hold.count if self.hold else 1)


class BlockPlan(NamedTuple):
    """A block's sections: buy-in, lines, cash-out."""

    block: Block
    buy_in: tuple[LinePlan, ...]
    lines: tuple[LinePlan, ...]
    cash_out: tuple[LinePlan, ...]

    @property
    def sections(self) -> tuple[tuple[LinePlan, ...], ...]:
        return self.buy_in, self.lines, self.cash_out
