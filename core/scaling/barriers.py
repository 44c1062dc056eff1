"""What keeps an athlete from a variant, or asks for less of it: limits, the place, sore muscles."""

from collections.abc import Iterable
from functools import lru_cache
from typing import NamedTuple

from core.athletes.limits import lightened, ruled_out, ruled_out_by
from core.athletes.values import Profile, Space
from core.measures import AmountUnit
from core.movements.values import Demand, Movement, Pattern, Variant
from core.scaling.values import Because

LEGS = frozenset({Pattern.SQUAT, Pattern.HINGE, Pattern.LUNGE, Pattern.LIFT, Pattern.JUMP})
PUSH = frozenset(
    {Pattern.HORIZONTAL_PUSH, Pattern.VERTICAL_PUSH, Pattern.DIP, Pattern.INVERSION, Pattern.LIFT}
)
PULL = frozenset({Pattern.HORIZONTAL_PULL, Pattern.VERTICAL_PULL, Pattern.HANG, Pattern.CARRY})
ARMS = PUSH | PULL | {Pattern.ARMS}

# Where room means a way to go, not only some space around; so it does for all that is counted in metres.
COVERS_GROUND = frozenset({Pattern.TRAVEL, Pattern.CARRY, Pattern.LUNGE})

# Which patterns a sore place asks to go easy on (estimate). A place that isn't here lightens everything.
SORE: dict[str, frozenset[Pattern]] = {
    "legs": LEGS,
    "calves": LEGS | {Pattern.TRAVEL},
    "glutes": LEGS,
    "chest": PUSH,
    "shoulders": ARMS,
    "arms": ARMS,
    "back": PULL | {Pattern.HINGE, Pattern.LIFT},
    "belly": frozenset({Pattern.TRUNK}),
}


def sore_place(pattern: Pattern) -> str:
    """The place that is sore when a movement of this pattern feels it; `all over` where none is named."""
    return next((place for place, patterns in SORE.items() if pattern in patterns), "all over")


FLAGS = {demand: 1 << place for place, demand in enumerate(Demand)}
# Beside the demands: it needs a way to go, or a run.
COVERS = 1 << len(FLAGS)


class Barrier(NamedTuple):
    """Why not. `about` names the limit, or what the place forbids."""

    because: Because
    about: str


def barrier_of(profile: Profile, movement: Movement, variant: Variant) -> Barrier | None:
    """What rules a variant out for this athlete; skill and equipment are looked at elsewhere."""
    limit = _limit_against(profile.limits or (), variant.demands)
    if limit is not None:
        return Barrier(Because.LIMIT, limit)
    return _by_space(profile.space, movement, variant)


def asks_for_less(profile: Profile, movement: Movement, variant: Variant) -> str | None:
    """The limit that lightens this variant, or the sore place that it uses; None if there is neither."""
    limit = _limit_lightening(profile.limits or (), variant.demands)
    sore = (place for place in profile.today.sore if movement.pattern in SORE.get(place, frozenset(Pattern)))
    return limit or next(sore, None)


def flags(demands: Iterable[Demand]) -> int:
    """Demands as bits, to set them against each other fast."""
    return sum(FLAGS[demand] for demand in set(demands))


def bars_of(movement: Movement, variant: Variant) -> int:
    """All of a variant that a limit or the place may rule out, as flags."""
    covers = _covers_ground(movement, variant) and not {Demand.ROOM, Demand.IMPACT}.isdisjoint(
        variant.demands
    )
    return flags(variant.demands) | (COVERS if covers else 0)


def ruled_out_for(profile: Profile) -> int:
    """Flags of what limits and place rule out: a variant with any of them has a barrier, without none."""
    space = profile.space
    demands = set(ruled_out(profile.limits or ()))
    demands |= set() if space.jumping else {Demand.JUMPING, Demand.NOISE}
    demands |= set() if space.overhead else {Demand.HEADROOM}
    return flags(demands) | (0 if space.running else COVERS)


# The same limits meet the same demands for many people.
_limit_against = lru_cache(4096)(ruled_out_by)


@lru_cache(4096)
def _limit_lightening(limits: tuple[str, ...], demands: tuple[Demand, ...]) -> str | None:
    return next((one for one in limits if lightened((one,)).intersection(demands)), None)


def _by_space(space: Space, movement: Movement, variant: Variant) -> Barrier | None:
    demands = set(variant.demands)
    if not space.jumping and demands & {Demand.JUMPING, Demand.NOISE}:
        return Barrier(Because.SPACE, "jumping")
    if not space.running and bars_of(movement, variant) & COVERS:
        return Barrier(Because.SPACE, "running")
    if not space.overhead and Demand.HEADROOM in demands:
        return Barrier(Because.SPACE, "overhead")
    return None


def _covers_ground(movement: Movement, variant: Variant) -> bool:
    return movement.pattern in COVERS_GROUND or movement.unit_of(variant) is AmountUnit.METRES
