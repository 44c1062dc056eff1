"""How one ability speaks of others: a nested Gaussian of ln S, conditioned in closed form.

What the norms expect of ln S is off by four independent parts: one of the person, shared by everything they do;
one of the pattern; one of the movement and one of the variant, where it isn't the one the norms are of. Who lifts
well in one movement does in its relatives too: most of the last two is shared by all that is done with a weight.
"""

from collections.abc import Sequence
from math import sqrt
from operator import mul
from typing import NamedTuple

from core.movements.lints import REFERENCE
from core.movements.values import Movement, Part, Pattern, Variant

# Spreads of ln S (estimates). Person and pattern together are the published 0.17 of push-ups (see norms.py). With
# the other two, near variants of a movement differ by 0.12-0.17 and relatives by 0.25-0.35.
PATTERN = 0.11
MOVEMENT = 0.22
VARIANT = 0.12

# Of what a squat or a lunge moves most is the body, which the legs carry all day (estimates).
OF_MOVEMENT: dict[str, float] = {Pattern.SQUAT: 0.12}
OF_VARIANT: dict[str, float] = {Pattern.SQUAT: 0.06, Pattern.LUNGE: 0.06}

# What of these is a lift's own (estimates: front and back squats lie within a seventh of each other).
LIFT = 0.08
LIFT_VARIANT = 0.05

# What the same muscles do in two patterns speaks of both: such a share of the variance of each (estimate).
NEIGHBOURS: tuple[frozenset[str], ...] = (
    frozenset({Pattern.SQUAT, Pattern.HINGE}),
    frozenset({Pattern.HORIZONTAL_PUSH, Pattern.VERTICAL_PUSH, Pattern.DIP, Pattern.INVERSION}),
    frozenset({Pattern.HORIZONTAL_PULL, Pattern.VERTICAL_PULL}),
)
NEIGHBOURLY = 0.7

# From day to day, and of what somebody could not do once: they may have been near it.
DAY_TO_DAY = 0.05
FAILED = 0.10


class Kin(NamedTuple):
    """Where a variant stands among its relatives, and what else its ability depends on.

    `referred`, `reference`: the norms are of this movement, of it. `family`: what was not tested itself is expected
    like the others of its family. `limits`: of a compound, the patterns whose weakest limits it. `ratio`, `k` as in the
    catalogue; `loaded`: it is done with a weight.
    """

    pattern: str
    movement: str
    variant: str
    referred: bool
    reference: bool
    family: tuple[object, ...]
    ratio: float
    k: float | None
    loaded: bool
    limits: tuple[str, ...] = ()


# The pattern that speaks of how much of a part somebody can do.
SPEAKS_OF = {
    Part.SQUAT: Pattern.SQUAT,
    Part.HINGE: Pattern.HINGE,
    Part.PUSH: Pattern.HORIZONTAL_PUSH,
    Part.PRESS: Pattern.VERTICAL_PUSH,
    Part.ROW: Pattern.HORIZONTAL_PULL,
    Part.PULL: Pattern.VERTICAL_PULL,
}
# In these nothing is one movement alone.
COMPOUND = {Pattern.LIFT}
# A part that is trained at least half as much as the main one may be what limits a compound.
MAY_LIMIT = 0.5


def kin_of(movement: Movement, variant: Variant) -> Kin:
    """The place of a variant among its relatives."""
    limits = _limits(movement, variant)
    referred = any(way.ratio.source == REFERENCE for way in movement.variants)
    return Kin(
        movement.pattern.value,
        movement.id,
        variant.id,
        referred=referred,
        reference=variant.ratio.source == REFERENCE,
        family=(movement.pattern.value, referred, bool(variant.holds), limits),
        ratio=variant.ratio.value,
        k=movement.k.value if movement.k else None,
        loaded=bool(variant.holds),
        limits=limits,
    )


def _limits(movement: Movement, variant: Variant) -> tuple[str, ...]:
    """The patterns of a compound's parts; empty where one pattern says it all."""
    trained = movement.trains_of(variant)
    found = {
        SPEAKS_OF[part].value for part, share in trained.items() if part in SPEAKS_OF and share >= MAY_LIMIT
    }
    return tuple(sorted(found)) if len(found) > 1 or movement.pattern in COMPOUND else ()


def of_pattern(pattern: str) -> Kin:
    """What stands for all of a pattern."""
    family = (pattern, True, True, ())
    return Kin(pattern, "", "", referred=True, reference=True, family=family, ratio=1.0, k=None, loaded=True)


def elsewhere(kin: Kin) -> Kin:
    """What stands for the pattern of a way where nothing of it was done: such as the norms are of, or another."""
    return Kin(
        kin.pattern,
        "",
        "",
        referred=kin.referred,
        reference=True,
        family=(kin.pattern, kin.referred),
        ratio=1.0,
        k=None,
        loaded=False,
    )


def shared(one: Kin, other: Kin, person: float) -> float:
    """Covariance of two abilities' ln S; `person` is the variance of what all of them share."""
    if one.pattern != other.pattern:
        near = any(one.pattern in group and other.pattern in group for group in NEIGHBOURS)
        return person + (NEIGHBOURLY * PATTERN**2 if near else 0.0)
    variance = person + PATTERN**2
    movement, variant = OF_MOVEMENT.get(one.pattern, MOVEMENT), spread_of_variant(one.pattern)
    lifts = one.loaded and other.loaded
    if lifts:
        variance += movement**2 - LIFT**2 + variant**2 - LIFT_VARIANT**2
    if one.movement != other.movement or not one.movement:
        return variance
    variance += LIFT**2 if lifts else 0.0 if one.referred else movement**2
    same = one.variant == other.variant and not one.reference
    return variance + ((LIFT_VARIANT if lifts else variant) ** 2 if same else 0.0)


def spread_of_variant(pattern: str) -> float:
    """How far ln S of near ways of one movement lies apart."""
    return OF_VARIANT.get(pattern, VARIANT)


class Seen(NamedTuple):
    """A piece of evidence: ln S was so far above the norm, give or take `spread`."""

    kin: Kin
    above: float
    spread: float = DAY_TO_DAY


class Belief:
    """What all evidence together says of any ability."""

    def __init__(self, seen: Sequence[Seen], person: float) -> None:
        self._kin = [one.kin for one in seen]
        self._person = person
        self._known: dict[tuple[float, ...], tuple[float, float]] = {}
        self._root = _root(
            [
                [
                    self._shared(one, other) + (seen[place].spread ** 2 if one is other else 0.0)
                    for other in self._kin
                ]
                for place, one in enumerate(self._kin)
            ]
        )
        self._above = _solved(self._root, [one.above for one in seen])

    def about(self, kin: Kin) -> tuple[float, float]:
        """How far ln S lies above the norm, and its variance."""
        prior = shared(kin, kin, self._person)
        if not self._kin:
            return 0.0, prior
        ties = tuple([shared(kin, other, self._person) for other in self._kin])
        if ties not in self._known:
            part = _solved(self._root, ties)
            self._known[ties] = _product(part, self._above), _product(part, part)
        above, known = self._known[ties]
        return above, prior - known

    def _shared(self, one: Kin, other: Kin) -> float:
        return shared(one, other, self._person)


def _root(table: Sequence[Sequence[float]]) -> list[list[float]]:
    """Cholesky's root of a covariance: lower triangular, and its square is the table."""
    root: list[list[float]] = []
    for row in table:
        part = _solved(root, row[: len(root)])
        root.append([*part, sqrt(row[len(root)] - _product(part, part))])
    return root


def _solved(root: Sequence[Sequence[float]], column: Sequence[float]) -> list[float]:
    """What the root has to be multiplied with to give the column."""
    found: list[float] = []
    for row, number in zip(root, column, strict=True):
        found.append((number - _product(row[:-1], found)) / row[-1])
    return found


def _product(one: Sequence[float], other: Sequence[float]) -> float:
    return float(sum(map(mul, one, other)))
