"""What keeps an athlete from a variant, or asks for less of it: limits, the place, sore muscles."""

from collections.abc import Iterable
from functools import lru_cache
from typing import NamedTuple

from core.athletes.limits import day_rule, lightened, ruled_out, ruled_out_by
from core.athletes.values import Place, Profile, Screening, Space
from core.measures import AmountUnit
from core.movements.values import Demand, Movement, Part, Pattern, Variant
from core.scaling.values import Because

LEGS = frozenset({Pattern.SQUAT, Pattern.HINGE, Pattern.LUNGE, Pattern.LIFT, Pattern.JUMP})
PUSH = frozenset(
    {Pattern.HORIZONTAL_PUSH, Pattern.VERTICAL_PUSH, Pattern.DIP, Pattern.INVERSION, Pattern.LIFT}
)
PULL = frozenset({Pattern.HORIZONTAL_PULL, Pattern.VERTICAL_PULL, Pattern.HANG, Pattern.CARRY})
ARMS = PUSH | PULL | {Pattern.ARMS}

# Where room means a way to go, not only some space around; so it does for all that is counted in metres.
COVERS_GROUND = frozenset({Pattern.TRAVEL, Pattern.CARRY, Pattern.LUNGE})

# What goes on and on needs this much, and what turns round this (estimates).
TO_RUN_M = 40.0
TO_TURN_M = 5.0
TO_STEP_M = 3.0
TO_AND_FRO = frozenset({"shuttle run", "sled push"})

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


# Light duty is an effort of at most four of ten (estimate).
LIGHT_DUTY_EFFORT = 4

ANYWHERE = Place()

# From 6 MET on work is vigorous, whatever it feels like: moderate is 3.0-5.9 (Haskell et al. 2007, Circulation
# 116:1081-1093; from memory). Where the body is carried or thrown about, nobody makes it gentler by stopping earlier;
# of lifts the compendium tells the mean of a whole session, and what a set costs keeps them easy; swings have a figure
# of their own.
VIGOROUS_MET = 6.0
GOES_ON = frozenset({Pattern.TRAVEL, Pattern.JUMP})
VIGOROUS_SET_MET = 9.0

# Ways that make a light weight hard: not for whoever should find it easy (common practice, no source).
MADE_HARDER = (
    "paused",
    "pause",
    "one-and-a-half",
    "deficit",
    "slow-lowering",
    "lowering-only",
    "knee-drive",
    "with-weight",
)


def sore_place(pattern: Pattern) -> str:
    """The place that is sore when a movement of this pattern feels it; `all over` where none is named."""
    return next((place for place, patterns in SORE.items() if pattern in patterns), "all over")


FLAGS = {demand: 1 << place for place, demand in enumerate(Demand)}
# Beside the demands: it needs a way to go, or a run; it can't be easy.
COVERS = 1 << len(FLAGS)
NEVER_EASY = COVERS << 1


class Barrier(NamedTuple):
    """Why not. `about` names the limit, or what the place forbids; nothing where it can't be easy."""

    because: Because
    about: str | None = None


def barrier_of(profile: Profile, movement: Movement, variant: Variant) -> Barrier | None:
    """What rules a variant out for this athlete; skill and equipment are looked at elsewhere."""
    limit = _limit_against(profile.limits or (), demands_of(movement, variant))
    if limit is not None:
        return Barrier(Because.LIMIT, limit)
    barrier = _by_space(profile.space, profile.place or ANYWHERE, movement, variant)
    if barrier is None and _is_never_easy(movement, variant) and is_on_light_duty(profile):
        return Barrier(Because.LIGHT_DUTY)
    return barrier


def demands_of(movement: Movement, variant: Variant) -> tuple[Demand, ...]:
    """What a variant asks for; whatever trains the bending of the trunk bends it, and a weight fills the hands."""
    asked = variant.demands
    if movement.main_of(variant) is Part.BEND and Demand.SPINE_BEND not in asked:
        asked = (*asked, Demand.SPINE_BEND)
    held = variant.holds and {Demand.OVERHEAD, Demand.STANDING} <= set(asked)
    return (*asked, Demand.HELD_OVERHEAD) if held else asked


def effort_at_most(profile: Profile) -> int | None:
    """Highest effort (0-10) that screening and limits allow; before a screening no more than moderate."""
    of_limits = day_rule(profile.limits or ()).effort_at_most
    if profile.screening not in {None, Screening.MODERATE}:
        return of_limits
    return LIGHT_DUTY_EFFORT if of_limits is None else min(LIGHT_DUTY_EFFORT, of_limits)


def is_on_light_duty(profile: Profile) -> bool:
    """Whether no set may cost over half, nothing be vigorous, and nothing is scored."""
    most = effort_at_most(profile)
    return most is not None and most <= LIGHT_DUTY_EFFORT


def is_vigorous(movement: Movement, variant: Variant) -> bool:
    """Whether a variant is more than moderate work for heart and lungs, at any pace and however short the set."""
    met = variant.met.value if variant.met else 0.0
    return met >= (VIGOROUS_MET if movement.pattern in GOES_ON else VIGOROUS_SET_MET)


def _is_never_easy(movement: Movement, variant: Variant) -> bool:
    return is_vigorous(movement, variant) or is_made_harder(variant)


def is_made_harder(variant: Variant) -> bool:
    """Whether it is a way to make what is light hard."""
    return _is_made_harder(variant.id)


@lru_cache(4096)
def _is_made_harder(way: str) -> bool:
    return any(word in way for word in MADE_HARDER)


def asks_for_less(profile: Profile, movement: Movement, variant: Variant) -> str | None:
    """The limit that lightens this variant, or the sore place that it uses; None if there is neither."""
    limit = _limit_lightening(profile.limits or (), _of_the_work(movement, variant))
    sore = (place for place in profile.today.sore if is_worked(place, movement.pattern))
    return limit or next(sore, None)


def is_worked(place: str, pattern: Pattern) -> bool:
    """Whether a place that is sore feels a movement of this pattern."""
    return pattern in SORE.get(place, frozenset(Pattern))


def _of_the_work(movement: Movement, variant: Variant) -> tuple[Demand, ...]:
    """Demands that may be too much of a set: what the hands only hold is nothing to spare in squats."""
    held = movement.main_of(variant) is Part.SQUAT
    return tuple(one for one in demands_of(movement, variant) if not (held and one is Demand.GRIP))


def flags(demands: Iterable[Demand]) -> int:
    """Demands as bits, to set them against each other fast."""
    return sum(FLAGS[demand] for demand in set(demands))


def bars_of(movement: Movement, variant: Variant) -> int:
    """All of a variant that a limit, the place or light duty may rule out, as flags."""
    covers = _covers_ground(movement, variant) and not {Demand.ROOM, Demand.IMPACT}.isdisjoint(
        variant.demands
    )
    never_easy = NEVER_EASY if _is_never_easy(movement, variant) else 0
    return flags(demands_of(movement, variant)) | (COVERS if covers else 0) | never_easy


def ruled_out_for(profile: Profile) -> int:
    """Flags of what limits, place and light duty may rule out: a variant with none of them has no barrier."""
    space, place = profile.space, profile.place or ANYWHERE
    demands = set(ruled_out(profile.limits or ()))
    demands |= set() if space.jumping else {Demand.JUMPING, Demand.NOISE}
    demands |= set() if space.overhead else {Demand.HEADROOM}
    demands |= {Demand.WALL} if place.wall is False else set()
    demands |= {Demand.DOORWAY} if place.doorway is False else set()
    light_duty = NEVER_EASY if is_on_light_duty(profile) else 0
    small = place.floor_m is not None and place.floor_m < TO_TURN_M
    anywhere = space.running and place.run_m is None and not small
    return flags(demands) | (0 if anywhere else COVERS) | light_duty


# The same limits meet the same demands for many people.
_limit_against = lru_cache(4096)(ruled_out_by)


@lru_cache(4096)
def _limit_lightening(limits: tuple[str, ...], demands: tuple[Demand, ...]) -> str | None:
    return next((one for one in limits if lightened((one,)).intersection(demands)), None)


def _by_space(space: Space, place: Place, movement: Movement, variant: Variant) -> Barrier | None:
    demands = set(variant.demands)
    lacking = (
        ("jumping", not space.jumping and Demand.JUMPING in demands),
        ("running", not _has_room(space, place, movement, variant)),
        ("overhead", not space.overhead and Demand.HEADROOM in demands),
        ("noise", not space.jumping and Demand.NOISE in demands),
        ("wall", place.wall is False and Demand.WALL in demands),
        ("doorway", place.doorway is False and Demand.DOORWAY in demands),
    )
    return next((Barrier(Because.SPACE, about) for about, lacks in lacking if lacks), None)


def _has_room(space: Space, place: Place, movement: Movement, variant: Variant) -> bool:
    """Whether there is a way to go for so long.

    Who walks with a weight turns on a small floor, whoever lunges or crawls on a larger one, and nowhere else.
    Where nobody may run there may be a way to walk or to wheel.
    """
    metres = _metres_needed(movement, variant)
    if not metres:
        return True
    if Demand.FLOOR in variant.demands and place.floor_m is not None:
        return place.floor_m >= TO_TURN_M
    if movement.pattern is not Pattern.TRAVEL and (place.floor_m or 0) >= _to_turn_m(movement):
        return True
    if place.run_m is None or Demand.IMPACT in variant.demands:
        return space.running and (place.run_m is None or place.run_m >= metres)
    return place.run_m >= metres


def _to_turn_m(movement: Movement) -> float:
    """On how small a floor it goes to and fro: three metres are three lunges."""
    return TO_TURN_M if movement.pattern is Pattern.LUNGE else TO_STEP_M


def _metres_needed(movement: Movement, variant: Variant) -> float:
    """How far a way has to go: a few steps and back, or on and on (estimates)."""
    if not bars_of(movement, variant) & COVERS:
        return 0.0
    return TO_RUN_M if movement.pattern is Pattern.TRAVEL and movement.id not in TO_AND_FRO else TO_TURN_M


def _covers_ground(movement: Movement, variant: Variant) -> bool:
    if movement.unit_of(variant) is AmountUnit.METRES:
        return True
    return movement.pattern in COVERS_GROUND and Demand.ROOM in variant.demands
