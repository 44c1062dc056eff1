"""What an athlete can do: S and k of every variant, from all that was shown.

`N(L) = k (S/L - 1)` repetitions go unbroken when fresh at load L; S is log-normal. A test of N at L gives
S = L (1 + N/k) exactly, whatever k is; away from the tested load the uncertainty of k counts too. What was
tested itself is known from its latest test; everything else from the norms and all tests (`kinship`).
"""

from collections.abc import Iterable, Iterator, Mapping
from functools import cached_property
from math import exp, inf, log, sqrt
from typing import NamedTuple

from core.ability.demand import load_moved
from core.ability.evidence import DONE, MOST_TESTS, Shown, sets_of, tests_of
from core.ability.kinship import (
    DAY_TO_DAY,
    FAILED,
    PATTERN,
    Belief,
    Kin,
    Seen,
    elsewhere,
    kin_of,
    of_pattern,
    shared,
    spread_of_variant,
)
from core.ability.norms import UNKNOWN_MASS_SPREAD, Expected, body_mass, expected
from core.athletes.learned import Learned, strength_of
from core.athletes.values import Profile
from core.movements.lookup import Catalogue
from core.movements.values import Movement, Pattern, Variant

# Spread of ln k (estimate).
K_SPREAD = 0.35

# How far a compound may lie from what its weakest part lets expect (estimate).
COMPOUND_SPREAD = 0.10

# The 30 % quantile of the normal distribution: 70 % sure of the repetitions. At 80 % nobody untested swung what a
# coach gives them.
CAUTIOUS = -0.5244005127080409

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

    def too_heavy_from(self, reps: float = 1.0) -> float:
        """So many repetitions are not sure to go at a load moved above this."""
        return self.strength_kg * exp(CAUTIOUS * self.spread) / (1 + reps / self.k)

    def unbroken(self, moved_kg: float, z: float = 0.0) -> float:
        """Repetitions (seconds of a hold) that go unbroken at this load, at the quantile of score `z`."""
        if moved_kg <= 0:
            return inf
        sure = exp(z * self.spread_at(moved_kg)) if z else 1.0
        return max(0.0, self.k * (self.strength_kg / moved_kg * sure - 1))

    def sure_and_median(self, moved_kg: float) -> tuple[float, float]:
        """Repetitions that go with 70 % certainty, and at the median: `unbroken` at both, in one step."""
        strength, spread, k, tested, _ = self
        if moved_kg <= 0:
            return inf, inf
        if moved_kg >= strength:
            return 0.0, 0.0
        if tested is not None and tested != moved_kg:
            spread = self.spread_at(moved_kg)
        ratio = strength / moved_kg
        sure = k * (ratio * exp(CAUTIOUS * spread) - 1)
        return (sure if sure > 0 else 0.0), k * (ratio - 1)

    def spread_at(self, moved_kg: float) -> float:
        """Spread of ln S at this load: away from the tested one that of k counts too."""
        if self.tested_kg is None or self.tested_kg == moved_kg:
            return self.spread
        from_k = K_SPREAD * (self.tested_kg - moved_kg) / self.strength_kg
        return sqrt(self.spread * self.spread + from_k * from_k)


class _Shown(NamedTuple):
    """The tests that speak of a pattern: all, those that went, and those of them at few repetitions."""

    tests: tuple[Shown, ...]
    went: tuple[Shown, ...]
    heavy: tuple[Shown, ...]


Spreads = tuple[tuple[float, float], tuple[float, float]]


class Base(NamedTuple):
    """What is known of all variants that are expected alike, over the ratio of each.

    `spreads` of ln S: without and with a weight, for whatever the norms are not of, and are of; `sure`: the share of S
    that is 70 % certain, likewise. `heavy`: tests at few repetitions that may speak of them.
    """

    strength_kg: float
    spreads: Spreads
    sure: Spreads
    tested_kg: float | None
    heavy: tuple[Shown, ...]


class Capacity:
    """Everything that is known of one athlete's ability. Abilities are worked out once and kept."""

    def __init__(self, profile: Profile, catalogue: Catalogue, year: int | None = None) -> None:
        self.profile = profile
        self.body_mass_kg = body_mass(profile)
        self._catalogue = catalogue
        self._year = year
        self._known: dict[str, Ability] = {}
        self._norms: dict[Pattern, Expected] = {}
        self._shown: dict[str, _Shown] = {}
        self._bases: dict[tuple[object, ...], Base] = {}
        self._relatives: dict[tuple[str, bool], Base] = {}
        self._others: dict[tuple[object, ...], tuple[float, Spreads, Spreads]] = {}

    def of(self, movement: Movement, variant: Variant, variant_id: str, kin: Kin | None = None) -> Ability:
        """Ability in a variant of a movement that counts repetitions or seconds of a hold.

        `kin`: its place among its relatives, for whoever has it at hand.
        """
        known = self._known.get(variant_id)
        if known is None:
            kin = kin or kin_of(movement, variant)
            base = self.base(movement, variant, variant_id, kin)
            assert kin.k is not None
            known = Ability(
                base.strength_kg * kin.ratio,
                base.spreads[kin.loaded][kin.reference],
                kin.k,
                base.tested_kg and base.tested_kg * kin.ratio,
                bool(base.heavy) and _is_heavy_shown(base.heavy, movement, variant, variant_id),
            )
            if self.profile.learned is not None:
                known = _as_learned(known, movement, self.profile.learned)
            self._known[variant_id] = known
        return known

    def sure_of_body(self, variant_id: str) -> float:
        """Repetitions of a way without a weight that are 70 % sure."""
        movement, variant = self._catalogue.variant(variant_id)
        moved = load_moved(variant, self.body_mass_kg)
        return self.of(movement, variant, variant_id).sure_and_median(moved)[0]

    def shown_kg(self, movement: Movement, reps: float) -> float:
        """So much beside the body surely goes so often, in the ways of a movement that were shown; inf without one."""
        shown = (test for test in self.tests if test.movement.id == movement.id and test.reps > 0)
        return max(
            (
                self.of(*test[:3], test.kin).too_heavy_from(reps)
                - load_moved(test.variant, self.body_mass_kg)
                for test in shown
            ),
            default=inf,
        )

    def has_shown(self, movement: Movement) -> bool:
        """Whether they did a movement itself, once at least."""
        return any(test.movement.id == movement.id and test.reps > 0 for test in self.tests)

    def does_any_of(self, reps: Mapping[str, int]) -> bool:
        """Whether so many repetitions are 70 % sure in any of these ways that the catalogue has, if it has some."""
        known = [name for name in reps if self._catalogue.knows(name.partition("/")[0])]
        return not known or any(self.sure_of_body(name) >= reps[name] for name in known)

    def base(self, movement: Movement, variant: Variant, variant_id: str, kin: Kin) -> Base:
        """What is known of a variant and of all that are expected alike; worked out once."""
        if kin.movement not in self._tested:
            return self._bases.get(kin.family) or self._expected(movement, kin)
        alike = variant_id if variant_id in self._tried else kin.movement, kin.reference
        if alike not in self._relatives:
            self._relatives[alike] = self._from_tests(movement, variant, variant_id, kin)
        return self._relatives[alike]

    @cached_property
    def skills(self) -> frozenset[str]:
        """The variants that were shown: done themselves, or a harder one of their ladder."""
        ids = self._catalogue.ids()
        told = (one for named in self.profile.skills if (one := self._meant_by(named)) in ids)
        done = {*told, *(test.id for test in self.tests if test.reps > 0)}
        return frozenset(name for one in done for name in (one, *self._catalogue.below(one)))

    def _meant_by(self, named: str) -> str:
        """The variant that is told of; of a movement by itself its usual one."""
        if "/" in named or not self._catalogue.knows(named):
            return named
        return f"{named}/{self._catalogue.movement(named).variants[0].id}"

    def has_tried(self, variant_id: str) -> bool:
        """Whether this very way was shown, so that its number is theirs."""
        return variant_id in self._tried

    def knows(self, movement: Movement) -> bool:
        """Whether anything was ever shown of a movement itself."""
        return movement.id in self._tested

    @cached_property
    def _tested(self) -> frozenset[str]:
        """The movements of which anything was shown."""
        return frozenset(test.movement.id for test in self.tests)

    @cached_property
    def _tried(self) -> frozenset[str]:
        """The variants that were tested themselves."""
        return frozenset(test.id for test in self.tests)

    @cached_property
    def tests(self) -> tuple[Shown, ...]:
        """Evidence on repetitions and holds, the latest first; sets of sessions where they show more than the rest."""
        told = tests_of(self.profile, self._catalogue, self.body_mass_kg)
        done = sets_of(self.profile, self._catalogue, self.body_mass_kg)
        return self._with_more(told, done) if done else told

    def _with_more(self, told: tuple[Shown, ...], done: tuple[Shown, ...]) -> tuple[Shown, ...]:
        others = tuple(one for one in self.profile.evidence if one.kind not in DONE)
        before = Capacity(self.profile.model_copy(update={"evidence": others}), self._catalogue, self._year)
        more = [one for one in done if before.of(*one[:3], one.kin).unbroken(one.moved_kg) < one.reps]
        outdone = {one.id for one in more}
        kept = (one for one in told if one.id not in outdone or one.reps == 0)
        return tuple(sorted((*more, *kept), key=lambda test: test.order, reverse=True))[:MOST_TESTS]

    @cached_property
    def _belief(self) -> Belief:
        """What was done, all together; what failed counts where it was expected to go."""
        person = max(self._norm(Pattern.SQUAT).spread ** 2 - PATTERN**2, 0.0)
        seen = [Seen(test.kin, self._above(test, test.strength_kg)) for test in self.tests if test.reps > 0]
        belief = Belief(seen, person)
        for test in (test for test in self.tests if test.reps == 0):
            above = self._above(test, test.moved_kg)
            if belief.about(test.kin)[0] > above:
                seen.append(Seen(test.kin, above, FAILED))
                belief = Belief(seen, person)
        return belief

    def _above(self, test: Shown, strength_kg: float) -> float:
        return log(strength_kg / self._expected_kg(test.movement, test.variant))

    def _from_tests(self, movement: Movement, variant: Variant, variant_id: str, kin: Kin) -> Base:
        """Of a variant whose movement was tested itself."""
        shown = self._shown_of(kin.pattern)
        tests = [test for test in shown.tests if test.movement.id == movement.id]
        own = next((test for test in tests if test.id == variant_id and test.reps > 0), None)
        above, variance = self._belief.about(kin)
        strength = exp(above) * self._expected_kg(movement, variant) if own is None else own.strength_kg
        nearest = max(shown.went, key=lambda test: shared(kin, test.kin, 0.0), default=None)
        spread = DAY_TO_DAY if own is not None else sqrt(variance + DAY_TO_DAY**2)
        spreads = (spread, spread), (spread, spread)
        return Base(
            min([strength, *_failed(tests, variant, own)]) / kin.ratio,
            spreads,
            _sure(spreads),
            nearest and nearest.relative_kg,
            shown.heavy,
        )

    def _shown_of(self, pattern: str) -> _Shown:
        if pattern not in self._shown:
            tests = tuple(test for test in self.tests if test.movement.pattern == pattern)
            went = tuple(test for test in tests if test.reps > 0)
            heavy = tuple(test for test in went if test.reps <= LOW_REPS)
            self._shown[pattern] = _Shown(tests, went, heavy)
        return self._shown[pattern]

    def _expected(self, movement: Movement, kin: Kin) -> Base:
        """Of all of a family that weren't tested themselves: from the norms, and what was done of other movements."""
        shown = self._shown_of(kin.pattern)
        near = kin if shown.tests or kin.limits else elsewhere(kin)
        above, spreads, sure = self._from_others(near, kin.pattern)
        base = self._bases[kin.family] = Base(
            exp(above + self._norm(movement.pattern).log_strength) * self.body_mass_kg,
            spreads,
            sure,
            shown.went[0].relative_kg if shown.went else None,
            shown.heavy,
        )
        return base

    def _from_others(self, kin: Kin, pattern: str) -> tuple[float, Spreads, Spreads]:
        """How far ln S of a family of a pattern lies above the norm, its spreads, and what is sure of S; kept."""
        variant = spread_of_variant(pattern) ** 2
        known = self._others.get((kin.family, variant))
        if known is None:
            above, variance = self._weakest(kin) or self._belief.about(
                kin._replace(movement="", variant="", reference=True)
            )
            variance += DAY_TO_DAY**2 if self.tests else 0.0
            unknown_mass = UNKNOWN_MASS_SPREAD**2 if self.profile.body_mass_kg is None else 0.0
            spreads = _spreads(variance, variant), _spreads(variance + unknown_mass, variant)
            known = self._others[kin.family, variant] = above, spreads, _sure(spreads)
        return known

    def _weakest(self, kin: Kin) -> tuple[float, float] | None:
        """Of a compound: what is known of the part that limits it; None where nothing was shown of any."""
        if not any(self._shown_of(pattern).went for pattern in kin.limits):
            return None
        above, variance = min(self._belief.about(of_pattern(pattern)) for pattern in kin.limits)
        return above, variance + COMPOUND_SPREAD**2

    def _expected_kg(self, movement: Movement, variant: Variant) -> float:
        strength = exp(self._norm(movement.pattern).log_strength)
        return strength * self.body_mass_kg * variant.ratio.value

    def _norm(self, pattern: Pattern) -> Expected:
        if pattern not in self._norms:
            self._norms[pattern] = expected(pattern, self.profile, self._year)
        return self._norms[pattern]


def _as_learned(known: Ability, movement: Movement, learned: Learned) -> Ability:
    """Nearer to what their scores say; what differs from day to day stays unknown."""
    middle, spread = learned.of_sum(strength_of(movement.id))
    strength = known.strength_kg * exp(known.spread * middle)
    return known._replace(strength_kg=strength, spread=max(known.spread * spread, DAY_TO_DAY))


def _sure(spreads: Spreads) -> Spreads:
    (other, own), (loaded, own_loaded) = spreads
    return (exp(CAUTIOUS * other), exp(CAUTIOUS * own)), (exp(CAUTIOUS * loaded), exp(CAUTIOUS * own_loaded))


def _spreads(variance: float, of_variant: float) -> tuple[float, float]:
    return sqrt(variance + of_variant), sqrt(variance)


def _failed(tests: Iterable[Shown], variant: Variant, own: Shown | None) -> Iterator[float]:
    """Bounds on S from what could not be done once of the same movement, since it was last done."""
    for test in tests:
        if test.reps == 0 and (own is None or test.order > own.order):
            yield test.moved_kg * variant.ratio.value / test.variant.ratio.value


def _is_heavy_shown(heavy: Iterable[Shown], movement: Movement, variant: Variant, variant_id: str) -> bool:
    return any(_is_near(test, movement, variant, variant_id) for test in heavy)


def _is_near(test: Shown, movement: Movement, variant: Variant, variant_id: str) -> bool:
    """Whether a test is of the same movement, or of a neighbour in the graph."""
    if test.movement.id == movement.id:
        return True
    return (
        variant_id in test.variant.easier + test.variant.harder or test.id in variant.easier + variant.harder
    )
