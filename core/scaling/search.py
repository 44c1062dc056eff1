"""What a line could become, and which of it can't be chosen any more, so that the search may end (design 6.4)."""

from decimal import Decimal
from math import log
from typing import NamedTuple

from core.movements.values import Hold
from core.scaling.fit import TOLERANCE, UNCOUNTED, Fit, steps
from core.scaling.gear import Load
from core.scaling.ways import AS_WRITTEN, OTHER_PATTERN, Way

# The pattern belongs to the intent: leaving it counts like a set that costs three times what is meant, or a
# third (estimate), in steps beyond tolerance. By fit alone, a sit-up would replace a doubtful push-up.
LEFT_PATTERN = steps(log(3) - TOLERANCE)

# Misfit, in steps, of the best option that shares nothing, before there is one.
NO_BOUND = 10_000

# A line has a line before it and one after it.
NEIGHBOURS = 2

# Distances beyond the substitution graph.
FEWER = 6
BUILD_UP = 20
REST = 21


class Option(NamedTuple):
    """One way, load and height. `way` None is rest. `load` is per implement, of which `hold` says how many.

    `part`: the share of the written amount, below 1 where repetitions were taken off; `build_up`: no amount
    is prescribed, the athlete feels their way up.
    """

    way: Way | None
    distance: int
    fit: Fit = UNCOUNTED
    hold: Hold | None = None
    load: Load | None = None
    support: str | None = None
    height_cm: Decimal | None = None
    moved_kg: float | None = None
    out_of_reach: bool = False
    part: float = 1.0
    build_up: bool = False

    @property
    def implement(self) -> str | None:
        """What is held, else what is leant on."""
        return self.hold.implement if self.hold else self.support

    @property
    def held(self) -> tuple[str, int, float] | None:
        """What is in the hands: taking up another is a change of implement."""
        if self.hold is None or self.load is None:
            return None
        return self.hold.implement, self.hold.count, self.load.value

    @property
    def safe(self) -> bool:
        return self.way is not None and self.fit.refused is None and not self.build_up


Slot = list[Option]


class Search:
    """Options found so far, and what they make needless.

    `best`: (misfit in steps, distance) of the best safe option that shares nothing: whatever the other lines
    do, nothing above it is chosen. `settled`: settings of shared things at which a nearer way fits already.
    With `every`, nothing is needless. `steady`: last time's choice counts.
    """

    def __init__(self, *, every: bool, volume_first: bool, steady: bool) -> None:
        self.best = NO_BOUND, REST
        self.settled: set[tuple[int | None, float]] = set()
        self._slots: list[Slot] = []
        self._every = every
        self._volume_first = volume_first
        self._fewer = True
        # Movements of flawless options, and whether they are more than there are neighbours to repeat.
        self._perfect: set[str] = set()
        self._has_enough = False
        self._ends_with_enough = not (every or steady)
        self._distance = AS_WRITTEN
        self._unsettled: list[Option] = []

    def slot(self) -> Slot:
        """A place for options, after all others: what is found later may still belong before something."""
        self._slots.append([])
        return self._slots[-1]

    @property
    def found(self) -> list[Option]:
        """Everything that may be chosen, in its order."""
        return [
            option
            for slot in self._slots
            for option in slot
            if not self.is_needless(option.distance, option.fit)
        ]

    @property
    def wants_fewer(self) -> bool:
        """Whether repetitions have to come off: where that was asked for, or nothing of the pattern is light enough."""
        return self._volume_first or (
            self._fewer and not any(_is_light_enough(option) for slot in self._slots for option in slot)
        )

    def ends_before(self, distance: int) -> bool:
        """Whether ways so far away can't be better than what was found."""
        if self._every:
            return False
        least = LEFT_PATTERN if distance == OTHER_PATTERN else 0
        return (least, distance) > self.best or (self._has_enough and distance == self.best[1])

    def is_needless(self, distance: int, fitting: Fit) -> bool:
        """Whether an option can't be chosen: the best is better, and no repetitions have to come off."""
        if self._every or self._fewer:
            return False
        return fitting.refused is not None or (fitting.beyond, distance) > self.best

    def most_beyond(self, distance: int) -> int:
        """The most misfit, in steps, with which an option so far away may still be chosen; below 0 if none."""
        if self._every or self._fewer:
            return NO_BOUND
        misfit, nearest = self.best
        return misfit if distance <= nearest else misfit - 1

    def add(self, option: Option, slot: Slot) -> None:
        """Take an option in, and note what it makes needless."""
        slot.append(option)
        if option.fit.refused is not None:
            return
        if option.load is not None and option.load.thing is not None:
            self._unsettled.append(option)
        else:
            self._note(option)

    def _note(self, option: Option) -> None:
        value = option.fit.beyond, option.distance
        if value < self.best:
            self.best = value
            self._perfect.clear()
            self._has_enough = False
        if self._fewer and _is_light_enough(option):
            self._fewer = self._volume_first
        if option.load is None and value == self.best:
            self._note_perfect(option)

    def _note_perfect(self, option: Option) -> None:
        flawless = option.fit.beyond == option.fit.within == 0
        if flawless and option.way is not None and not option.out_of_reach:
            self._perfect.add(option.way.kin.movement)
            self._has_enough = self._ends_with_enough and len(self._perfect) > NEIGHBOURS

    def reach(self, distance: int) -> None:
        """All ways of a distance are through: a setting at which one fits needs no farther way."""
        if distance == self._distance or self._every:
            return
        self._distance = distance
        for option in self._unsettled:
            if option.fit.beyond == 0 and option.load is not None:
                self.settled.add(option.load.setting)
        self._unsettled.clear()


def _is_light_enough(option: Option) -> bool:
    return option.safe and option.distance < OTHER_PATTERN and option.fit.heavy <= TOLERANCE
