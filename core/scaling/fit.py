"""How well a load fits a set: misfit is how far its cost lies outside the window, in log units."""

from math import ceil, inf, log
from typing import NamedTuple

from core.scaling.capacity import CAUTIOUS, Ability
from core.scaling.intent import LIGHT_DUTY, Window
from core.scaling.values import Because

# Misfit up to here is none to speak of; above, it counts in steps. Design 6.4.
TOLERANCE = 0.25
STEP = 0.05

# Nothing is prescribed under so many unbroken repetitions without evidence at ten or fewer.
PRESCRIBED_FROM = 8


class Fit(NamedTuple):
    """`unbroken` and `cost` at the median; `cautious` is the 80 % sure number of repetitions.

    `refused`: why it is not safe to prescribe; None if it is.
    """

    unbroken: float | None = None
    cost: float | None = None
    cautious: float = inf
    heavy: float = 0.0
    light: float = 0.0
    refused: Because | None = None

    @property
    def misfit(self) -> float:
        return max(self.heavy, self.light)

    @property
    def beyond(self) -> int:
        """Steps of misfit beyond tolerance."""
        return steps(self.misfit - TOLERANCE)

    @property
    def within(self) -> int:
        """Steps of what misfit remains within tolerance."""
        return steps(min(self.misfit, TOLERANCE))


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
    may_be_light: bool = True,
    light_duty: bool = False,
) -> Fit:
    """Fit of one load. `may_be_light`: too light is no misfit; `light_duty`: no cost above 0.5 at all."""
    unbroken = ability.unbroken(moved_kg)
    cautious = ability.unbroken(moved_kg, CAUTIOUS)
    if cautious < 1:
        return Fit(unbroken, None, cautious, inf, 0.0, Because.TOO_HEAVY)
    cost = set_amount / unbroken
    heavy = log(set_amount / cautious / window.high)
    light = 0.0 if may_be_light or cost == 0 else log(window.low / cost)
    refused = None
    if counts_reps and unbroken < PRESCRIBED_FROM and not ability.heavy_shown:
        refused = Because.UNKNOWN_HEAVY
    elif light_duty and cost > LIGHT_DUTY:
        refused = Because.LIGHT_DUTY
    return Fit(unbroken, cost, cautious, max(0.0, heavy), max(0.0, light), refused)
