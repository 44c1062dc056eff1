"""What an athlete showed, worked out: tests on repetitions and holds, the latest first."""

from collections.abc import Iterable
from decimal import Decimal
from typing import NamedTuple

from core.ability.demand import load_moved
from core.ability.kinship import Kin, kin_of
from core.ability.meant import meant_variant
from core.athletes.values import Evidence, Profile
from core.measures import AmountUnit
from core.movements.lookup import Catalogue
from core.movements.values import Hold, Movement, Variant

# No more than so many different tests are weighed together; older ones say little beside them.
MOST_TESTS = 12

# What went was the most they could, and what was done in a session at least that.
TOLD = frozenset({"test", "effort"})
DONE = frozenset({"score"})


class Shown(NamedTuple):
    """A piece of evidence, worked out: so many repetitions (seconds of a hold) went at `moved_kg`."""

    movement: Movement
    variant: Variant
    id: str
    moved_kg: float
    reps: float
    order: tuple[int, int]
    kin: Kin

    @property
    def relative_kg(self) -> float:
        """The load moved, over the variant's ratio: what carries over to another."""
        return self.moved_kg / self.variant.ratio.value

    @property
    def strength_kg(self) -> float:
        """S, exact at this load whatever k is."""
        assert self.movement.k is not None
        return self.moved_kg * (1 + self.reps / self.movement.k.value)


def tests_of(profile: Profile, catalogue: Catalogue, body_mass_kg: float) -> tuple[Shown, ...]:
    """Evidence on repetitions and holds, the latest of each variant, latest first; an undated one is the oldest."""
    found = sorted(_all(profile, catalogue, body_mass_kg), key=lambda test: test.order, reverse=True)
    return tuple(_first_of_each(found))[:MOST_TESTS]


def sets_of(profile: Profile, catalogue: Catalogue, body_mass_kg: float) -> tuple[Shown, ...]:
    """The strongest set of each variant that was done in a session: they may have had more in them."""
    found = sorted(
        _all(profile, catalogue, body_mass_kg, DONE), key=lambda test: test.strength_kg, reverse=True
    )
    return tuple(_first_of_each(found))


def _all(
    profile: Profile, catalogue: Catalogue, body_mass_kg: float, kinds: frozenset[str] = TOLD
) -> Iterable[Shown]:
    for place, evidence in enumerate(profile.evidence):
        if evidence.kind in kinds:
            test = _read(evidence, place, profile, catalogue, body_mass_kg)
            if test is not None:
                yield test


def _first_of_each(tests: Iterable[Shown]) -> Iterable[Shown]:
    """The latest of those that were done and of those that failed."""
    latest: dict[tuple[str, bool], Shown] = {}
    for test in tests:
        latest.setdefault((test.id, test.reps > 0), test)
    return latest.values()


def _read(
    evidence: Evidence, place: int, profile: Profile, catalogue: Catalogue, body_mass_kg: float
) -> Shown | None:
    if evidence.reps is None and evidence.seconds is None:
        return None
    if not catalogue.knows(evidence.movement):
        return None  # it was called otherwise once, or never was one
    movement = catalogue.movement(evidence.movement)
    variant = meant_variant(movement, evidence.variant, evidence.load_kg)
    amount = evidence.seconds if movement.unit_of(variant) is AmountUnit.SECONDS else evidence.reps
    if movement.k is None or amount is None or (variant.holds and evidence.load_kg is None):
        return None
    hold = _held(variant, evidence, profile)
    moved = load_moved(variant, body_mass_kg, hold, float(evidence.load_kg or 0))
    day = evidence.on.toordinal() if evidence.on else 0
    if movement.sides_of(variant) == "alternating":
        amount /= 2
    name, kin = f"{movement.id}/{variant.id}", kin_of(movement, variant)
    return Shown(movement, variant, name, moved, amount, (day, place), kin)


def _held(variant: Variant, evidence: Evidence, profile: Profile) -> Hold | None:
    """A test tells one load: it was done with what is owned at that load, else in the usual hold."""
    load = evidence.load_kg or Decimal(0)
    owned = {
        (thing.implement, load): thing.each for thing in profile.equipment or () for load in thing.loads_kg
    }
    fitting = (hold for hold in variant.holds if owned.get((hold.implement, load), 0) >= hold.count)
    return next(fitting, variant.holds[0] if variant.holds else None)
