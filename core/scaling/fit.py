"""How well a load fits a set: misfit is how far its cost lies outside the window, in log units."""

from math import ceil, exp, inf, log
from typing import Literal, NamedTuple

from core.ability.capacity import CAUTIOUS, Ability
from core.scaling.intent import LIGHT_DUTY, Window
from core.scaling.values import Because

# Misfit up to here is none to speak of; above, it counts in steps. Design 6.4.
TOLERANCE = 0.25
STEP = 0.05

# Bounds are drawn this much too wide, so that no rounding can make one too narrow.
ROUNDING = 1 + 1e-9


class Lightness(NamedTuple):
    """How being too light counts, in log units: `forgiven` is no misfit, what is over it is one.

    `flat`: what it counts however far it is over; None where it counts as it is. `graded`: whether, within
    tolerance, the heavier of two is the better one, or all that is light is alike.
    """

    forgiven: float
    flat: float | None = None
    graded: Literal["no", "finely", "alike"] = "no"

    def counts(self, light: float) -> tuple[float, float]:
        """What being so light counts as a misfit, and what within tolerance.

        Of those that are all as bad, the least light is the best: who is stronger needn't do what is easier.
        """
        over = light - self.forgiven
        if self.flat is not None and over > 0:
            return self.flat, TOLERANCE + over
        if self.graded == "finely":
            return over, min(light, TOLERANCE)
        return over, TOLERANCE if self.graded == "alike" else 0.0


# What is written is never too light for the choice (the athlete is told), nor is anything for who goes easy.
NEVER_TOO_LIGHT = Lightness(inf)
OF_A_LOAD = Lightness(TOLERANCE, graded="finely")
# An easier way of an unloaded line may cost half of what is meant: push-ups from the knees are push-ups too.
# Beyond that one easy way is as good as another, and as bad as a set half a log unit too heavy (estimates).
OF_AN_EASIER_WAY = Lightness(log(2), 0.5)
# Nor is a load too light for somebody whose strength in it nobody knows, only because most people are stronger.
OF_AN_UNTRIED_LOAD = Lightness(log(2), 0.5, graded="finely")
OF_NO_LOAD_WHERE_ONE_IS_WRITTEN = Lightness(log(2), 0.5, graded="alike")
# Where the heaviest is looked for, it is looked for among what is there, however light that is.
OF_THE_HEAVIEST = Lightness(0.0, 0.0)
# Whatever is lighter than meant by more than this doesn't fit, unless it is never too light.
MOST_FORGIVEN = max(
    one.forgiven for one in (OF_A_LOAD, OF_AN_EASIER_WAY, OF_AN_UNTRIED_LOAD, OF_NO_LOAD_WHERE_ONE_IS_WRITTEN)
)

# Nothing is prescribed under so many unbroken repetitions without evidence at ten or fewer.
PRESCRIBED_FROM = 8


class Task(NamedTuple):
    """What a set of one way asks of one athlete: everything about it but the load.

    `light_duty`: no set may cost above 0.5 at all. `lightness`: how being too light counts.
    """

    ability: Ability
    set_amount: float
    window: Window
    counts_reps: bool = True
    light_duty: bool = False
    lightness: Lightness = NEVER_TOO_LIGHT


class Fit(NamedTuple):
    """`unbroken` and `cost` at the median; `cautious` is the 80 % sure number of repetitions.

    `heavy`, `light`: log units outside the window; `beyond`, `within`: steps of misfit beyond tolerance, and
    of what is left of it within, or is all alike beyond. `refused`: why it is not safe to prescribe; None if it is.
    """

    unbroken: float | None = None
    cost: float | None = None
    cautious: float = inf
    heavy: float = 0.0
    light: float = 0.0
    beyond: int = 0
    within: int = 0
    refused: Because | None = None


UNCOUNTED = Fit()


def fit(task: Task, moved_kg: float, lightness: Lightness, part: float = 1.0) -> Fit:
    """Fit of one load, at the whole amount of a set or a `part` of it."""
    ability, set_amount, (low, high), _, light_duty, _ = task
    cautious, unbroken = ability.sure_and_median(moved_kg)
    if cautious < 1:
        return Fit(unbroken, None, cautious, inf, refused=Because.TOO_HEAVY)
    amount = set_amount * part
    cost = amount / unbroken
    refused = _refusal(task, unbroken, cost) if unbroken < PRESCRIBED_FROM or light_duty else None
    heavy = log(amount / cautious / high) if amount > cautious * high else 0.0
    light = log(low / cost) if 0 < cost < low else 0.0
    if heavy == light == 0:
        return Fit(unbroken, cost, cautious, refused=refused)
    over, within = heavy - TOLERANCE, min(heavy, TOLERANCE)
    if light:
        too_light, graded = lightness.counts(light)
        over, within = max(over, too_light), max(within, graded)
    return Fit(unbroken, cost, cautious, heavy, light, steps(over), steps(within), refused)


def between(set_amount: float, k: float, window: Window, *, least: bool) -> tuple[float, float]:
    """Between which shares of S a load may fit: below the first it is too light, if that counts at `least`.

    Above the second, as a share of what is sure of S, it is too heavy. Drawn a little too wide.
    """
    most = set_amount / (window.high * exp(TOLERANCE))
    lightest = 0.0
    if least and window.low > 0:
        lightest = 1 / (1 + set_amount / (window.low * exp(-MOST_FORGIVEN)) / k)
    return lightest / ROUNDING, ROUNDING / (1 + max(most, 1.0) / k)


def heaviest(task: Task, beyond: int) -> float:
    """Load moved above which a set is sure to be too heavy by more than so many steps, or to be refused."""
    reps = task.set_amount / (task.window.high * exp(TOLERANCE + STEP * beyond))
    return ROUNDING * task.ability.too_heavy_from(max(reps, 1.0))


def dull_below(task: Task) -> float:
    """Load moved below which a set is too light by all that counts within tolerance; 0 where none is."""
    if task.lightness.graded != "finely":
        return 0.0
    ability, low = task.ability, task.window.low * exp(-TOLERANCE)
    return ability.strength_kg / (1 + task.set_amount / low / ability.k) / ROUNDING if low > 0 else 0.0


def hopeful(task: Task, moved_kg: float) -> bool:
    """Whether a set would fit for somebody as strong as one in five of those about whom no more is known."""
    hoped = task.ability.unbroken(moved_kg, -CAUTIOUS)
    return hoped > 0 and task.set_amount <= hoped * task.window.high * exp(TOLERANCE)


def steps(misfit: float) -> int:
    """Whole steps; a step begun counts."""
    return ceil(misfit / STEP - 1e-9) if misfit > 0 else 0


def _refusal(task: Task, unbroken: float, cost: float) -> Because | None:
    if task.counts_reps and unbroken < PRESCRIBED_FROM and not task.ability.heavy_shown:
        return Because.UNKNOWN_HEAVY
    return Because.LIGHT_DUTY if task.light_duty and cost > LIGHT_DUTY else None
