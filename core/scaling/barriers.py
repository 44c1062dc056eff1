"""What keeps an athlete from a variant, whatever its load: limits, the place, an unshown skill."""

from typing import NamedTuple

from core.athletes.values import Profile, Space
from core.movements.values import Demand, Movement, Pattern, Variant
from core.scaling.values import Because


class Barrier(NamedTuple):
    """Why not. `about` names the limit, demand or thing."""

    because: Because
    about: str


def by_space(space: Space, movement: Movement, variant: Variant) -> Barrier | None:
    """What the place forbids."""
    if not space.jumping and {Demand.JUMPING, Demand.IMPACT, Demand.NOISE} & set(variant.demands):
        return Barrier(Because.SPACE, "jumping")
    if not space.running and movement.pattern is Pattern.TRAVEL and Demand.ROOM in variant.demands:
        return Barrier(Because.SPACE, "running")
    if not space.overhead and Demand.OVERHEAD in variant.demands:
        return Barrier(Because.SPACE, "overhead")
    return None


def barrier_of(profile: Profile, movement: Movement, variant: Variant) -> Barrier | None:
    """What keeps this athlete from a variant, but for skill and equipment."""
    return by_space(profile.space, movement, variant)
