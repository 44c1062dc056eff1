"""One way of a line as one athlete would do it, and the option that comes of it at a load and an amount."""

from decimal import Decimal
from math import log
from typing import NamedTuple

from core.movements.values import Hold
from core.scaling.athlete import Athlete
from core.scaling.costs import Charge
from core.scaling.fit import ABOUT, UNCOUNTED, Fit, Task
from core.scaling.gear import Load
from core.scaling.ways import Grip, LinePlan, Way

# Repetitions come off down to half, and what costs less than half of what was meant is feeble.
HALF = 0.5
FEEBLE = -log(HALF)

# Instead of the few repetitions of a heavy set: eight to twelve hard ones (common practice, no source: beyond that it
# is another day), but for what is nearly as heavy.
FEWEST_LIGHT, MOST_LIGHT = 8, 12
# What is done for speed is done fresh: so few jumps or fast lifts in a set, however light (common practice, no source).
MOST_FRESH = 5
# Whoever goes easy or is new does no heavy single, but so many easy ones.
FEW_EASY = 5
SOME_EASY = 10

# So much of the best that somebody told is near it: nobody does that again and again. With a weight it begins sooner,
# as a lighter one takes nothing off (estimates).
NEAR_BEST, NEAR_BEST_LOAD = 0.84, 0.78

Bill = tuple[Charge, ...]


class Option(NamedTuple):
    """One way, load, height and amount, and what they cost. `way` None is rest.

    `load` is per implement, of which `hold` says how many. `part`: of the written amount, below 1 where repetitions
    were taken off, above it where some were added. `build_up`: no amount is prescribed, the athlete feels their way
    up. `exact`: nothing but the amount differs from what was written. `works_up`: the load is what is looked for.
    `bill`: what `cost` is made of.
    """

    way: Way | None
    cost: int
    bill: Bill = ()
    fit: Fit = UNCOUNTED
    hold: Hold | None = None
    load: Load | None = None
    support: str | None = None
    height_cm: Decimal | None = None
    moved_kg: float | None = None
    part: float = 1.0
    build_up: bool = False
    exact: bool = False
    other: bool = False
    works_up: bool = False

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
    def kilos(self) -> float:
        """All that is in the hands at once."""
        return self.hold.count * self.load.value if self.hold and self.load else 0.0

    @property
    def thing(self) -> int | None:
        """The adjustable or fillable that it takes."""
        return None if self.load is None else self.load.thing

    @property
    def safe(self) -> bool:
        return self.way is not None and self.fit.refused is None and not self.build_up


class Work(NamedTuple):
    """One way of a line as one athlete would do it.

    `own_kg`: what is moved without a load; `meant_kg`: the written load, for them. `charges`: what it costs them at any
    load, `least` their sum. `is_hard`: being too light counts. `volume_first`: fewer of what is written are as near as
    all of it. `spares`: it is done for the sake of a joint, in place of what is written.
    `may_go_heavier`: the coach allows more than written.
    """

    plan: LinePlan
    way: Way
    athlete: Athlete
    task: Task | None
    own_kg: float
    meant_kg: float | None
    charges: tuple[Charge, ...]
    least: int
    support: str | None
    height_cm: Decimal | None
    is_hard: bool
    volume_first: bool
    spares: bool
    may_go_heavier: bool = False

    @property
    def is_shown(self) -> bool:
        """Whether they told how much of it they do."""
        return self.athlete.capacity.knows(self.way.movement)

    def moved_kg(self, grip: Grip | None, load: Load | None) -> float:
        return self.own_kg if grip is None or load is None else self.own_kg + grip.per_kg * load.value


class Lift(NamedTuple):
    """A way at one load.

    `exact`: as written; `as_meant`: about so; `light_set`: many of it, instead of the few of a heavy set; `nearly`:
    about as heavy. `charges`: what way and load cost at any amount, `least` their sum.
    """

    work: Work
    grip: Grip | None
    load: Load | None
    moved_kg: float
    exact: bool
    as_meant: bool
    light_set: bool
    nearly: bool
    task: Task | None
    charges: Bill
    least: int

    def is_near_their_best(self, fitting: Fit) -> bool:
        """Whether a set comes near the best that they told of this very way, and no share of it is written."""
        rule = self.work.plan.line.load_rule
        told = rule is not None and (rule.percent is not None or rule.effort is not None or rule.heavy)
        tried = not told and self.work.athlete.capacity.has_tried(self.work.way.id)
        near = NEAR_BEST if self.load is None else NEAR_BEST_LOAD
        return tried and fitting.cost is not None and fitting.cost > near

    def about(self, fitting: Fit) -> float:
        """How far outside the window a set is as meant: near their own best the number is theirs, and no guess."""
        return 0.0 if self.is_near_their_best(fitting) else ABOUT
