"""How well a load fits a set: misfit is how far its cost lies outside the window, in log units."""

from math import ceil, inf, log
from typing import NamedTuple

from core.scaling.capacity import CAUTIOUS, Ability
from core.scaling.intent import LIGHT_DUTY, Window
from core.scaling.values import Because

# Misfit up to here is none to speak of; above, it counts in steps. Design 6.4.
TOLERANCE = 0.25
STEP = 0.05


class Lightness(NamedTuple):
    """How being too light counts, in log units: `forgiven` is no misfit, what is over it counts `at_most`."""

    forgiven: float
    at_most: float = inf


# What is written is never too light for the choice (the athlete is told), nor is anything for who goes easy.
NEVER_TOO_LIGHT = Lightness(inf)
OF_A_LOAD = Lightness(TOLERANCE)
# An easier way of an unloaded line may cost half of what is meant: push-ups from the knees are push-ups too.
# Beyond that one easy way is as good as another, and as bad as a set half a log unit too heavy (estimates).
OF_AN_EASIER_WAY = Lightness(log(2), 0.5)

# Nothing is prescribed under so many unbroken repetitions without evidence at ten or fewer.
PRESCRIBED_FROM = 8


class Fit(NamedTuple):
    """`unbroken` and `cost` at the median; `cautious` is the 80 % sure number of repetitions.

    `heavy` and `light`: log units outside the window; `lightness` is how the latter counts.
    `refused`: why it is not safe to prescribe; None if it is.
    """

    unbroken: float | None = None
    cost: float | None = None
    cautious: float = inf
    heavy: float = 0.0
    light: float = 0.0
    lightness: Lightness = OF_A_LOAD
    refused: Because | None = None

    @property
    def beyond(self) -> int:
        """Steps of misfit beyond tolerance."""
        too_light = min(self.light - self.lightness.forgiven, self.lightness.at_most)
        return steps(max(self.heavy - TOLERANCE, too_light))

    @property
    def within(self) -> int:
        """Steps of what misfit remains within tolerance."""
        counted = self.light if self.lightness is OF_A_LOAD else 0.0
        return steps(min(max(self.heavy, counted), TOLERANCE))


UNCOUNTED = Fit()


def steps(misfit: float) -> int:
    """Whole steps; a step begun counts."""
    return ceil(misfit / STEP - 1e-9) if misfit > 0 else 0


def fit(
    ability: Ability,
    moved_kg: float,
    set_amount: float,
    window: Window,
    *,
    counts_reps: bool = True,
    lightness: Lightness = OF_A_LOAD,
    light_duty: bool = False,
) -> Fit:
    """Fit of one load. `light_duty`: no cost above 0.5 at all."""
    unbroken = ability.unbroken(moved_kg)
    cautious = ability.unbroken(moved_kg, CAUTIOUS)
    if cautious < 1:
        return Fit(unbroken, None, cautious, heavy=inf, refused=Because.TOO_HEAVY)
    cost = set_amount / unbroken
    heavy = log(set_amount / cautious / window.high)
    light = log(window.low / cost) if cost > 0 else 0.0
    refused = None
    if counts_reps and unbroken < PRESCRIBED_FROM and not ability.heavy_shown:
        refused = Because.UNKNOWN_HEAVY
    elif light_duty and cost > LIGHT_DUTY:
        refused = Because.LIGHT_DUTY
    return Fit(unbroken, cost, cautious, max(0.0, heavy), max(0.0, light), lightness, refused)
