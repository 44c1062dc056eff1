"""How well a load and an amount fit a set: how far its cost lies outside the window, in log units."""

from math import inf, log, sqrt
from typing import NamedTuple

from core.ability.capacity import CAUTIOUS, Ability
from core.scaling.intent import Window
from core.scaling.values import Because

# Nothing is prescribed under so many unbroken repetitions without evidence at ten or fewer.
PRESCRIBED_FROM = 8

# What is further outside the window than this is no set of it any more (estimate: three times as much): twenty-one
# thrusters for six squats.
FAR_TOO_HARD = log(3)

# Up to here a set is as hard as it is meant: nobody is known to the repetition (estimate).
ABOUT = 0.2


class Task(NamedTuple):
    """What a set of one way asks of one athlete: everything about it but the load. No set may cost above `at_most`.

    `meant_easy`: the coach wants it easy or light.
    """

    ability: Ability
    set_amount: float
    window: Window
    counts_reps: bool = True
    at_most: float = inf
    meant_easy: bool = False

    @property
    def light_duty(self) -> bool:
        """Whether it should stay easy."""
        return self.at_most < inf


class Fit(NamedTuple):
    """`unbroken` and `cost` at the median; `cautious` is the 70 % sure number of repetitions.

    `heavy`, `light`: log units outside the window. `refused`: why it is not safe to prescribe; None if it is.
    """

    unbroken: float | None = None
    cost: float | None = None
    cautious: float = inf
    heavy: float = 0.0
    light: float = 0.0
    refused: Because | None = None


UNCOUNTED = Fit()


def fit(task: Task, moved_kg: float, part: float = 1.0) -> Fit:
    """Fit of one load, at the whole amount of a set or a `part` of it."""
    ability, set_amount, (low, high), counts_reps, at_most, meant_easy = task
    cautious, unbroken = ability.sure_and_median(moved_kg)
    if cautious < 1:
        return Fit(unbroken, None, cautious, inf, refused=Because.TOO_HEAVY)
    amount = set_amount * part
    cost, sure = amount / unbroken, amount / cautious
    # What should be easy leaves half of it undone, so that it needn't be as sure.
    hard = sqrt(cost * sure) if counts_reps and (at_most < inf or meant_easy) else sure
    heavy = log(hard / high) if hard > high else 0.0
    light = log(low / sure) if 0 < sure < low else 0.0
    refused = None
    if counts_reps and unbroken < PRESCRIBED_FROM and not ability.heavy_shown:
        refused = Because.UNKNOWN_HEAVY
    elif heavy > FAR_TOO_HARD:
        refused = Because.TOO_HEAVY
    elif cost > at_most:
        refused = Because.LIGHT_DUTY
    return Fit(unbroken, cost, cautious, heavy, light, refused)


def likely(whole: Fit) -> float:
    """How many go, between what is sure and what is likely: many of what is light can be stopped in time."""
    return sqrt(whole.cautious * whole.unbroken) if whole.unbroken else whole.cautious


def hopeful(task: Task, moved_kg: float) -> bool:
    """Whether a set would fit for somebody as strong as three in ten of those about whom no more is known."""
    hoped = task.ability.unbroken(moved_kg, -CAUTIOUS)
    return hoped > 0 and task.set_amount <= hoped * task.window.high * (1 + ABOUT)


def is_heavy(would: Fit) -> bool:
    """Whether a set is too much."""
    return would.refused is not None or would.heavy > ABOUT
