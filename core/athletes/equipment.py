"""Sums of equipment: what comes, what goes, and what a gym has."""

from collections import Counter
from decimal import Decimal
from functools import cache

from core.athletes.values import (
    MOST_LOADS,
    MOST_OF_EACH,
    MOST_THINGS,
    Equipment,
    EquipmentSet,
    Profile,
    SetName,
)
from core.errors import TooMuch
from core.movements.lookup import catalogue

Things = tuple[Equipment, ...]

# What a well-furnished gym has of the things that have a weight, in kg (estimate).
_IN_A_GYM = {
    "dumbbell": [Decimal(kg) for kg in (2, 4, 6, 8, 10, 12, 14, 16, 18, 20, 22, 24, 26, 28, 30)],
    "kettlebell": [Decimal(kg) for kg in (4, 6, 8, 12, 16, 20, 24, 28, 32)],
    "medicine ball": [Decimal(kg) for kg in (3, 4, 6, 9)],
    "plate": [Decimal(kg) for kg in (5, 10, 15, 20)],
}
_BAR_IN_A_GYM = Equipment(
    implement="barbell", from_kg=Decimal(20), to_kg=Decimal(180), step_kg=Decimal("2.5")
)


def with_more(owned: Things, more: Things) -> Things:
    """Both together; of equal weights there are as many as the two sums. Raises TooMuch beyond what is kept."""
    counts, others = _counted(owned)
    more_counts, more_others = _counted(more)
    return _told(counts + more_counts, (*others, *(one for one in more_others if one not in others)))


def with_stated(owned: Things, told: Things) -> Things:
    """Both together; of a weight that is told there are as many as is told. Raises TooMuch beyond what is kept."""
    counts, others = _counted(owned)
    told_counts, told_others = _counted(told)
    now = Counter({**counts, **told_counts})
    return _told(now, (*others, *(one for one in told_others if one not in others)))


def without(owned: Things, gone: Equipment) -> Things:
    """What is left. A thing that is gone without a weight is gone in all its weights.

    An adjustable or fillable thing goes by itself, told as it is.
    """
    if gone in owned and (gone.to_kg is not None or gone.shared_with is not None):
        return tuple(one for one in owned if one != gone)
    counts, others = _counted(owned)
    if not gone.loads_kg:
        counts = Counter({key: count for key, count in counts.items() if key[0] != gone.implement})
        return _told(counts, tuple(one for one in others if one.implement != gone.implement))
    counts -= Counter({(gone.implement, load): gone.each for load in gone.loads_kg})
    return _told(counts, others)


def heaviest(things: Things) -> Decimal:
    """The most that one of them may weigh, in kg; 0 where nothing has a weight."""
    return max(
        (load for one in things for load in (*one.loads_kg, one.to_kg or Decimal(0))), default=Decimal(0)
    )


def shared(owned: Things, implement: str | None, partner: str) -> Things | None:
    """The same things, those of an implement shared with somebody; None where there is none of it.

    Where none is named: what is adjustable, else all that has a weight.
    """
    meant = [one for one in owned if _is_meant(one, implement)]
    adjustable = [one for one in meant if one.to_kg is not None]
    if implement is None and adjustable:
        meant = adjustable
    if not meant:
        return None
    return tuple(one.model_copy(update={"shared_with": partner}) if one in meant else one for one in owned)


def _is_meant(one: Equipment, implement: str | None) -> bool:
    has_weight = bool(one.loads_kg) or one.to_kg is not None
    return has_weight if implement is None else one.implement == implement


def at(profile: Profile, place: SetName) -> Things | None:
    """What is there in a place; None while nobody has told."""
    if place == "home":
        return profile.equipment
    return next((one.equipment for one in profile.sets if one.name == place), None)


def furnished(profile: Profile, place: SetName, things: Things | None) -> Profile:
    """The profile with these things in that place; None forgets what was told of it."""
    if place == "home":
        return profile.model_copy(update={"equipment": things})
    kept = tuple(one for one in profile.sets if one.name != place)
    told = () if things is None else (EquipmentSet(name=place, equipment=things),)
    return profile.model_copy(update={"sets": (*kept, *told)})


@cache
def everything() -> Things:
    """What `at the gym I have everything` means: all that isn't improvised, in the usual weights."""
    things = [thing for thing in catalogue().implements if not thing.improvised]
    weighed = [
        Equipment(implement=thing.id, loads_kg=tuple(_IN_A_GYM[thing.id]), each=2)
        for thing in things
        if thing.id in _IN_A_GYM
    ]
    bar = [_BAR_IN_A_GYM for thing in things if thing.id == _BAR_IN_A_GYM.implement]
    told = {one.implement for one in (*weighed, *bar)}
    others = [Equipment(implement=thing.id) for thing in things if thing.id not in told]
    return (*weighed, *bar, *others)


def that_matter(things: Things) -> Things:
    """Without mats, walls and the like: they are always there, or of no use to a version."""
    known = {one.id for one in catalogue().implements}
    return tuple(one for one in things if one.implement in known)


def that_matter_not(things: Things) -> tuple[str, ...]:
    """What was named of mats, walls and the like: it is said back, as nothing that was named is dropped unsaid."""
    matter = that_matter(things)
    return tuple(dict.fromkeys(one.implement for one in things if one not in matter))


def is_weightless(thing: Equipment) -> bool:
    """Whether it has a weight that nobody told."""
    held = any(one.id == thing.implement and one.kind == "held" for one in catalogue().implements)
    return held and not thing.loads_kg and thing.to_kg is None


def _counted(things: Things) -> tuple[Counter[tuple[str, Decimal]], Things]:
    """How many there are of each fixed weight that is theirs alone, and all other things."""
    counts: Counter[tuple[str, Decimal]] = Counter()
    counted = [thing for thing in things if thing.loads_kg and thing.shared_with is None]
    for thing in counted:
        counts.update({(thing.implement, load): thing.each for load in thing.loads_kg})
    return counts, tuple(thing for thing in things if thing not in counted)


def _told(counts: Counter[tuple[str, Decimal]], others: Things) -> Things:
    """Weights of one kind, as many of each, stand together in the order in which they came."""
    loads: dict[tuple[str, int], list[Decimal]] = {}
    for (implement, load), count in counts.items():
        if count > 0:
            loads.setdefault((implement, count), []).append(load)
    most = max(map(len, loads.values()), default=0)
    if most > MOST_LOADS or max(counts.values(), default=0) > MOST_OF_EACH or len(others) > MOST_THINGS:
        raise TooMuch("more things of a kind than are kept")
    fixed = [
        Equipment(implement=implement, each=each, loads_kg=tuple(sorted(kept)))
        for (implement, each), kept in loads.items()
    ]
    return (*fixed, *others)
