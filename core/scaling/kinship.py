"""How one ability speaks of others: a nested Gaussian of ln S, conditioned in closed form (design 6.2).

What the norms expect of ln S is off by four independent parts: one of the person, shared by everything they do;
one of the pattern; one of the movement and one of the variant, where it isn't the one the norms are of.
"""

from collections.abc import Sequence
from typing import NamedTuple

import numpy as np

from core.movements.lints import REFERENCE
from core.movements.values import Movement, Variant

# Spreads of ln S (estimates). Person and pattern together are the published 0.17 of push-ups (see norms.py). With
# the other two, near variants of a movement differ by 0.12-0.17 and relatives by 0.25-0.35, as design 6.2 has it.
PATTERN = 0.11
MOVEMENT = 0.22
VARIANT = 0.12

# From day to day, and of what somebody could not do once: they may have been near it.
DAY_TO_DAY = 0.05
FAILED = 0.10


class Kin(NamedTuple):
    """Where a variant stands among its relatives, and what else its ability depends on.

    `referred`, `reference`: the norms are of this movement, of it. `ratio`, `k` as in the catalogue; `loaded`:
    it is done with a weight.
    """

    pattern: str
    movement: str
    variant: str
    referred: bool
    reference: bool
    ratio: float
    k: float | None
    loaded: bool


def kin_of(movement: Movement, variant: Variant) -> Kin:
    """The place of a variant among its relatives."""
    return Kin(
        movement.pattern.value,
        movement.id,
        variant.id,
        referred=any(way.ratio.source == REFERENCE for way in movement.variants),
        reference=variant.ratio.source == REFERENCE,
        ratio=variant.ratio.value,
        k=movement.k.value if movement.k else None,
        loaded=bool(variant.holds),
    )


def shared(one: Kin, other: Kin, person: float) -> float:
    """Covariance of two abilities' ln S; `person` is the variance of what all of them share."""
    if one.pattern != other.pattern:
        return person
    variance = person + PATTERN**2
    if one.movement != other.movement:
        return variance
    variance += 0.0 if one.referred else MOVEMENT**2
    same = one.variant == other.variant and not one.reference
    return variance + (VARIANT**2 if same else 0.0)


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
        self._inverse, self._weights = self._solve(seen)

    def about(self, kin: Kin) -> tuple[float, float]:
        """How far ln S lies above the norm, and its variance."""
        prior = shared(kin, kin, self._person)
        if not self._kin:
            return 0.0, prior
        ties = tuple(shared(kin, other, self._person) for other in self._kin)
        if ties not in self._known:
            self._known[ties] = self._weigh(ties)
        above, known = self._known[ties]
        return above, prior - known

    def _solve(self, seen: Sequence[Seen]) -> tuple[list[list[float]], list[float]]:
        if not seen:
            return [], []
        table = [[shared(one, other, self._person) for other in self._kin] for one in self._kin]
        for place, one in enumerate(seen):
            table[place][place] += one.spread**2
        inverse = np.linalg.inv(table)
        return inverse.tolist(), (inverse @ [one.above for one in seen]).tolist()

    def _weigh(self, ties: tuple[float, ...]) -> tuple[float, float]:
        above = sum(tie * weight for tie, weight in zip(ties, self._weights, strict=True))
        known = sum(
            tie * sum(other * part for other, part in zip(ties, row, strict=True))
            for tie, row in zip(ties, self._inverse, strict=True)
        )
        return above, known
