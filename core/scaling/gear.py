"""What is really there: which loads of which implement, and which heights to lean on."""

from collections import defaultdict
from collections.abc import Iterable, Iterator
from decimal import Decimal
from functools import cached_property, lru_cache
from itertools import product
from math import ceil, floor
from typing import NamedTuple

from core.athletes.limits import brought
from core.athletes.values import Equipment, Profile
from core.caches import kept_by_weight

# A backpack or jug is filled to a stated weight, from that of a nearly empty one: in half kilos while it is light,
# then in whole ones, as litre bottles make them (estimate).
FINE_STEP_KG = Decimal("0.5")
FINE_UP_TO_KG = Decimal(5)
EMPTY_KG = Decimal(1)

# Nothing has more loads than this to be looked at, whatever is told of it: of more, some are left out evenly, so
# that none is looked at that doesn't exist. Real ones have fewer (a bar of 20 to 120 kg in steps of 0.5 has 201).
MOST_SETTINGS = 250

# Pairs of plates go on a bar, which is then one thing with one setting.
BARBELL = "barbell"
PLATE = "plate"


Setting = tuple[int | None, float]


class Load(NamedTuple):
    """A load that exists, exactly and as a number to reckon with.

    `thing`: place of the adjustable or fillable that it takes, which has one setting per block. `setting`: both, to
    compare fast.
    """

    kg: Decimal
    value: float
    thing: int | None
    setting: Setting

    @property
    def rank(self) -> tuple[float, bool, int]:
        """Where it stands among loads: the heaviest first, and of equal ones those that share nothing."""
        return -self.value, self.thing is not None, self.thing or 0

    @classmethod
    def of(cls, kg: Decimal, thing: int | None = None) -> "Load":
        value = float(kg)
        return cls(kg, value, thing, (thing, value))


class Gear:
    """An athlete's equipment, made ready for looking up."""

    def __init__(self, equipment: tuple[Equipment, ...]) -> None:
        self._owned = {thing.implement for thing in equipment}
        self._heights = {
            thing.implement: thing.height_cm for thing in equipment if thing.height_cm is not None
        }
        # A bar takes plates, where there are some.
        self._shared = {BARBELL, *(thing.implement for thing in equipment if thing.to_kg is not None)}
        self._loads: dict[tuple[str, int], tuple[Load, ...]] = {}
        self._equipment = equipment

    @cached_property
    def things(self) -> frozenset[str]:
        """Everything that is there, with or without a load."""
        return frozenset(self._owned)

    @property
    def weight(self) -> int:
        """About how many loads there are to be kept, with what holds them."""
        told = sum(len(thing.loads_kg) for thing in self._equipment)
        settable = sum(thing.to_kg is not None for thing in self._equipment)
        return len(self._equipment) + 2 * told + settable * MOST_SETTINGS // 4

    @cached_property
    def parts(self) -> dict[tuple[str, int], tuple[tuple[Load, ...], tuple[Load, ...]]]:
        """The loads of all that can be held, one or two at once, in two parts.

        What shares nothing with another line, and the settings of what does.
        """
        some = {held: self.loads(*held) for held in product(self._owned, (1, 2))}
        return {held: self._parted(held[0], loads) for held, loads in some.items() if loads}

    @cached_property
    def holds(self) -> frozenset[tuple[str, int]]:
        """What can be held at some load: implement and count."""
        return frozenset(self.parts)

    def has(self, implement: str) -> bool:
        return implement in self._owned

    def first_of(self, need: tuple[str, ...]) -> str | None:
        """Of things of which any one will do, the first that is there."""
        for thing in need:
            if thing in self._owned:
                return thing
        return None

    def height_cm(self, implement: str) -> Decimal | None:
        """Height as the athlete told it, if they did."""
        return self._heights.get(implement)

    def loads(self, implement: str, count: int) -> tuple[Load, ...]:
        """Every load that `count` of this implement can have at once, the heaviest first."""
        if (implement, count) not in self._loads:
            self._loads[implement, count] = self._find(implement, count)
        return self._loads[implement, count]

    def _parted(self, implement: str, loads: tuple[Load, ...]) -> tuple[tuple[Load, ...], tuple[Load, ...]]:
        if implement not in self._shared:
            return loads, ()
        fixed = tuple(load for load in loads if load.thing is None)
        return fixed, tuple(load for load in loads if load.thing is not None)

    def _find(self, implement: str, count: int) -> tuple[Load, ...]:
        fixed: defaultdict[Decimal, int] = defaultdict(int)
        found: list[Load] = []
        for place, thing in enumerate(self._equipment):
            if thing.implement != implement:
                continue
            if implement == BARBELL and thing.loads_kg and (plates := self._on_a_bar()):
                bars = {own + more for own in thing.loads_kg for more in plates}
                found += (Load.of(kg, place) for kg in _evenly(bars))
                continue
            for kg in thing.loads_kg:
                fixed[kg] += thing.each
            if thing.to_kg is not None and thing.each >= count:
                found += _settings(thing.from_kg, thing.to_kg, thing.step_kg, place)
        found += (Load.of(kg) for kg, owned in fixed.items() if owned >= count)
        return tuple(sorted(found, key=lambda load: load.rank))

    def _on_a_bar(self) -> tuple[Decimal, ...]:
        """Every weight that pairs of plates make, from none on; empty where there is no pair."""
        owned: defaultdict[Decimal, int] = defaultdict(int)
        for thing in self._equipment:
            for kg in thing.loads_kg if thing.implement == PLATE else ():
                owned[kg] += thing.each
        sums = {Decimal(0)}
        for kg, each in owned.items():
            pairs_of_it = range(min(each // 2, MOST_SETTINGS) + 1)
            sums = set(_evenly({sum_ + 2 * pairs * kg for sum_ in sums for pairs in pairs_of_it}))
        return tuple(sums) if len(sums) > 1 else ()


@lru_cache(maxsize=1024)
def _settings(
    from_kg: Decimal | None, to_kg: Decimal, step_kg: Decimal | None, place: int
) -> tuple[Load, ...]:
    """Every load that an adjustable, or something to fill, can be set to."""
    start = EMPTY_KG if from_kg is None else from_kg
    if step_kg is None:
        settings = _evenly(_filled(start, to_kg))
    else:
        steps = int((to_kg - start) / step_kg)
        settings = [start + step_kg * n for n in range(0, steps + 1, ceil((steps + 1) / MOST_SETTINGS))]
    last = () if not settings or settings[-1] == to_kg else (to_kg,)
    return tuple(Load.of(kg, place) for kg in (*settings, *last))


def _evenly(loads: Iterable[Decimal]) -> list[Decimal]:
    """All of them in order, or where they are too many the lightest, the heaviest and some evenly between."""
    some = sorted(loads)
    if len(some) <= MOST_SETTINGS:
        return some
    apart = (len(some) - 1) / (MOST_SETTINGS - 1)
    return [some[round(apart * n)] for n in range(MOST_SETTINGS)]


def _filled(start: Decimal, to_kg: Decimal) -> Iterator[Decimal]:
    """What something to fill can be filled to."""
    kg = start
    while kg <= to_kg:
        yield kg
        kg = kg + FINE_STEP_KG if kg < FINE_UP_TO_KG else Decimal(floor(kg) + 1)


# About a quarter of a kilobyte a load: a few thousand athletes of ordinary means.
MOST_LOADS_KEPT = 100_000


def _weight_of(gear: Gear) -> int:
    return gear.weight


@kept_by_weight(MOST_LOADS_KEPT, _weight_of)
def gear_of(equipment: tuple[Equipment, ...]) -> Gear:
    """The same equipment is looked through once."""
    return Gear(equipment)


def at_hand(profile: Profile) -> tuple[Equipment, ...]:
    """What was told, and what goes without saying: whoever can't stand sits on something."""
    told = profile.equipment or ()
    owned = {thing.implement for thing in told}
    more = (thing for thing in brought(profile.limits or ()) if thing not in owned)
    return (*told, *(Equipment(implement=thing) for thing in more))
