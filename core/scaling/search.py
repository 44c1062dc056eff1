"""What a line could become, and which of it can't be chosen any more, so that the search may end (design 6.4)."""

from collections import defaultdict
from collections.abc import Collection
from decimal import Decimal
from math import log
from typing import NamedTuple

from core.movements.values import Hold
from core.scaling.fit import TOLERANCE, UNCOUNTED, Fit, steps
from core.scaling.gear import Load, Setting
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
    is prescribed, the athlete feels their way up. `fewer_first`: fewer of what is written, as near as all of it.
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
    fewer_first: bool = False

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

    @property
    def alone(self) -> tuple[int, int, int, int]:
        """How it is valued before any other line is looked at: unsafe, misfit, distance, breathing (design 6.4)."""
        distance = AS_WRITTEN if self.fewer_first else self.distance
        return int(not self.safe), self.fit.beyond, distance, int(self.out_of_reach)

    @property
    def by_itself(self) -> tuple[int, int, int, int, int]:
        """How it is valued where the line stands alone: what remains of misfit counts then, too."""
        return *self.alone, self.fit.within


def placed(fitting: Fit, way: Way) -> Fit:
    """With what it counts to leave the pattern."""
    if way.distance == OTHER_PATTERN and fitting.beyond < LEFT_PATTERN:
        return fitting._replace(beyond=LEFT_PATTERN)
    return fitting


Slot = list[Option]

# What is in the hands: implement and how many, and how it is set; None is nothing.
Held = tuple[tuple[str, int], Setting] | None

# The movements of equally good options, by what is in the hands.
Movements = defaultdict[Held, set[str]]


class Search:
    """Options found so far, and what they make needless.

    `best`: (misfit in steps, distance) of the best safe option that shares nothing: whatever the other lines
    do, nothing above it is chosen, and no way is that is farther than `farthest`. `settled`: settings of shared
    things at which a nearer way fits already. With `every`, nothing is needless; when `fitting`, all is that is
    beyond tolerance or of another pattern. `steady`: last time's choice counts.
    """

    def __init__(
        self, *, every: bool = False, fitting: bool = False, volume_first: bool = False, steady: bool = False
    ) -> None:
        self.fitting = fitting
        self.has_fit = False
        self.best = (0, OTHER_PATTERN - 1) if fitting else (NO_BOUND, REST)
        self.farthest = OTHER_PATTERN - 1 if fitting else OTHER_PATTERN
        self.settled: set[Setting] = set()
        self._slots: list[Slot] = []
        self._every = every
        self.volume_first = volume_first
        self._fewer = not fitting
        self._flawless: Movements = defaultdict(set)
        self._fits: Movements = defaultdict(set)
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
        if self.fitting:
            _, nearest = self.best
            return [option for slot in self._slots for option in slot if option.distance <= nearest]
        return [
            option
            for slot in self._slots
            for option in slot
            if not self.is_needless(option.distance, option.fit)
        ]

    @property
    def wants_fewer(self) -> bool:
        """Whether repetitions have to come off: where that was asked for, or nothing of the pattern is light enough."""
        return self.volume_first or (
            self._fewer and not any(_is_light_enough(option) for slot in self._slots for option in slot)
        )

    def spares(self, held: Held, movement: str, *, dull: bool = False) -> bool:
        """Whether flawless options with the same in the hands make a farther one needless; any, if it is `dull`."""
        flawless = self._flawless.get(held)
        if flawless and _make_needless(flawless, movement):
            return True
        return dull and _make_needless(self._fits.get(held, ()), movement)

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
        if option.fit.beyond == 0 and self._ends_with_enough and not option.out_of_reach:
            self._note_fit(option)
        if option.load is not None and option.load.thing is not None:
            self._unsettled.append(option)
        else:
            self._note(option)

    def _note(self, option: Option) -> None:
        self.has_fit = True
        value = option.fit.beyond, option.distance
        if value <= self.best:
            self.best = value
            self.farthest = self._farthest()
        if self._fewer and _is_light_enough(option):
            self._fewer = self.volume_first

    def _farthest(self) -> int:
        """How far away a way may be to be better than what was found, or as good."""
        misfit, nearest = self.best
        if self._every:
            return OTHER_PATTERN
        if misfit > 0:
            return OTHER_PATTERN if self.best >= (LEFT_PATTERN, OTHER_PATTERN) else OTHER_PATTERN - 1
        return nearest - (len(self._flawless.get(None, ())) > NEIGHBOURS)

    def _note_fit(self, option: Option) -> None:
        assert option.way is not None
        hold, load = option.hold, option.load
        held = None if hold is None or load is None else ((hold.implement, hold.count), load.setting)
        self._fits[held].add(option.way.kin.movement)
        if option.fit.within == 0:
            self._flawless[held].add(option.way.kin.movement)

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


def _make_needless(movements: Collection[str], movement: str) -> bool:
    """Whether there is one of the movement, or more than there are neighbours to repeat them.

    Of equally good ones with the same in the hands, the first that its neighbours don't have is the best.
    """
    return movement in movements or len(movements) > NEIGHBOURS
