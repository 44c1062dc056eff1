"""What an athlete can do: S and k of every variant, from the latest test on it or a near one (design 6.2).

`N(L) = k (S/L - 1)` repetitions go unbroken when fresh at load L; S is log-normal. A test of N at L gives
S = L (1 + N/k) exactly, whatever k is; away from the tested load the uncertainty of k counts too.
"""

from decimal import Decimal
from functools import cached_property
from math import exp, inf, sqrt
from typing import NamedTuple

from core.athletes.values import Evidence, Profile
from core.measures import AmountUnit
from core.movements.lookup import Catalogue
from core.movements.values import Hold, Movement, Pattern, Variant
from core.scaling.demand import load_moved
from core.scaling.norms import UNKNOWN_MASS_SPREAD, Expected, body_mass, expected

# Spreads of ln S, as design 6.2 sets them (estimates): from day to day, between variants of one movement,
# between neighbours in the graph, within a pattern. And of ln k.
DAY_TO_DAY = 0.05
NEAR_VARIANT = 0.15
NEIGHBOUR = 0.25
SAME_PATTERN = 0.35
K_SPREAD = 0.35

# The 20 % quantile of the normal distribution: 80 % sure of the repetitions.
CAUTIOUS = -0.8416212335729143

# Evidence at this many repetitions or fewer speaks of heavy loads; more does not.
LOW_REPS = 10


class Ability(NamedTuple):
    """What is known of one variant. `tested_kg`: load moved in the test it comes from, None without one.

    `heavy_shown`: there is evidence at ten or fewer repetitions on this movement or a near one.
    """

    strength_kg: float
    spread: float
    k: float
    tested_kg: float | None
    heavy_shown: bool

    def unbroken(self, moved_kg: float, z: float = 0.0) -> float:
        """Repetitions (seconds of a hold) that go unbroken at this load, at the quantile of score `z`."""
        if moved_kg <= 0:
            return inf
        sure = exp(z * self.spread_at(moved_kg)) if z else 1.0
        return max(0.0, self.k * (self.strength_kg / moved_kg * sure - 1))

    def sure_and_median(self, moved_kg: float) -> tuple[float, float]:
        """Repetitions that go with 80 % certainty, and at the median: `unbroken` at both, in one step."""
        if moved_kg <= 0:
            return inf, inf
        if moved_kg >= self.strength_kg:
            return 0.0, 0.0
        ratio = self.strength_kg / moved_kg
        sure = self.k * (ratio * exp(CAUTIOUS * self.spread_at(moved_kg)) - 1)
        return (sure if sure > 0 else 0.0), self.k * (ratio - 1)

    def spread_at(self, moved_kg: float) -> float:
        """Spread of ln S at this load: away from the tested one that of k counts too."""
        if self.tested_kg is None or self.tested_kg == moved_kg:
            return self.spread
        from_k = K_SPREAD * (self.tested_kg - moved_kg) / self.strength_kg
        return sqrt(self.spread * self.spread + from_k * from_k)


class _Test(NamedTuple):
    """A piece of evidence, worked out: `relative_kg` is S over the variant's ratio."""

    movement: Movement
    variant: Variant
    id: str
    moved_kg: float
    reps: float
    order: tuple[int, int]

    @property
    def k(self) -> float:
        assert self.movement.k is not None
        return self.movement.k.value

    @property
    def relative_kg(self) -> float:
        return self.moved_kg * (1 + self.reps / self.k) / self.variant.ratio.value


class Capacity:
    """Everything that is known of one athlete's ability. Abilities are worked out once and kept."""

    def __init__(self, profile: Profile, catalogue: Catalogue, year: int | None = None) -> None:
        self.profile = profile
        self.body_mass_kg = body_mass(profile)
        self._catalogue = catalogue
        self._year = year
        self._known: dict[str, Ability] = {}
        self._norms: dict[Pattern, Expected] = {}

    def of(self, movement: Movement, variant: Variant, variant_id: str) -> Ability:
        """Ability in a variant of a movement that counts repetitions or seconds of a hold."""
        if variant_id not in self._known:
            self._known[variant_id] = self._work_out(movement, variant, variant_id)
        return self._known[variant_id]

    def has_shown(self, variant_id: str) -> bool:
        """Whether a skill was shown: on this very variant, or on one that names it as easier."""
        return any(
            test.reps > 0 and (test.id == variant_id or variant_id in test.variant.easier)
            for test in self.tests
        )

    @cached_property
    def tests(self) -> tuple["_Test", ...]:
        """Evidence on repetitions and holds, the latest first. An undated test is the oldest."""
        found = [
            test
            for place, evidence in enumerate(self.profile.evidence)
            if (test := self._read(evidence, place)) is not None
        ]
        return tuple(sorted(found, key=lambda test: test.order, reverse=True))

    def _read(self, evidence: Evidence, place: int) -> _Test | None:
        if evidence.reps is None and evidence.seconds is None:
            return None
        movement = self._catalogue.movement(evidence.movement)
        variant = movement.meant(evidence.variant, loaded=evidence.load_kg is not None)
        amount = evidence.seconds if movement.unit_of(variant) is AmountUnit.SECONDS else evidence.reps
        if movement.k is None or amount is None or (variant.holds and evidence.load_kg is None):
            return None
        moved = self._moved_in_test(variant, evidence)
        day = evidence.on.toordinal() if evidence.on else 0
        if movement.sides_of(variant) == "alternating":
            amount /= 2
        return _Test(movement, variant, f"{movement.id}/{variant.id}", moved, amount, (day, place))

    def _moved_in_test(self, variant: Variant, evidence: Evidence) -> float:
        hold = self._held_in_test(variant, evidence)
        return load_moved(variant, self.body_mass_kg, hold, float(evidence.load_kg or 0))

    def _held_in_test(self, variant: Variant, evidence: Evidence) -> Hold | None:
        """A test tells one load: it was done with what is owned at that load, else in the usual hold."""
        load = evidence.load_kg or Decimal(0)
        owned = {
            (thing.implement, load): thing.each
            for thing in self.profile.equipment or ()
            for load in thing.loads_kg
        }
        fitting = (hold for hold in variant.holds if owned.get((hold.implement, load), 0) >= hold.count)
        return next(fitting, variant.holds[0] if variant.holds else None)

    def _work_out(self, movement: Movement, variant: Variant, variant_id: str) -> Ability:
        assert movement.k is not None
        if not self.tests:
            return self._expected(movement, variant)
        related = [
            (test, spread)
            for test in self.tests
            if (spread := _relation(test, movement, variant, variant_id)) is not None
        ]
        heavy_shown = any(0 < test.reps <= LOW_REPS and spread <= NEIGHBOUR for test, spread in related)
        shown = min((pair for pair in related if pair[0].reps > 0), key=lambda pair: pair[1], default=None)
        known = self._expected(movement, variant) if shown is None else _from_test(*shown, movement, variant)
        failed = [
            test.moved_kg * variant.ratio.value / test.variant.ratio.value
            for test, spread in related
            if test.reps == 0 and spread <= NEAR_VARIANT and (shown is None or test.order > shown[0].order)
        ]
        strength = min([known.strength_kg, *failed])
        return known._replace(strength_kg=strength, heavy_shown=heavy_shown)

    def _expected(self, movement: Movement, variant: Variant) -> Ability:
        assert movement.k is not None
        if movement.pattern not in self._norms:
            self._norms[movement.pattern] = expected(movement.pattern, self.profile, self._year)
        norm = self._norms[movement.pattern]
        strength = exp(norm.log_strength) * self.body_mass_kg * variant.ratio.value
        unknown_mass = UNKNOWN_MASS_SPREAD if variant.holds and self.profile.body_mass_kg is None else 0.0
        return Ability(
            strength, sqrt(norm.spread**2 + unknown_mass**2), movement.k.value, None, heavy_shown=False
        )


def _from_test(test: _Test, spread: float, movement: Movement, variant: Variant) -> Ability:
    assert movement.k is not None
    return Ability(
        strength_kg=test.relative_kg * variant.ratio.value,
        spread=sqrt(DAY_TO_DAY**2 + spread**2),
        k=movement.k.value,
        tested_kg=test.moved_kg * variant.ratio.value / test.variant.ratio.value,
        heavy_shown=False,
    )


def _relation(test: _Test, movement: Movement, variant: Variant, variant_id: str) -> float | None:
    """Spread of ln S between a tested variant and another; None where one says nothing about the other."""
    if test.id == variant_id:
        return 0.0
    if test.movement.id == movement.id:
        return NEAR_VARIANT
    if variant_id in test.variant.easier + test.variant.harder or test.id in variant.easier + variant.harder:
        return NEIGHBOUR
    return SAME_PATTERN if test.movement.pattern is movement.pattern else None
