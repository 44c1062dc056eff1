"""What is really there: which loads of which implement, and which heights to lean on."""

from collections import defaultdict
from decimal import Decimal
from functools import lru_cache
from typing import NamedTuple

from core.athletes.values import Equipment

# A backpack or jug is filled to a stated weight in these steps, from the weight of a nearly empty one.
FILL_STEP_KG = Decimal("0.5")
EMPTY_KG = Decimal("1.0")

# Pairs of plates go on a bar, which is then one thing with one setting.
BARBELL = "barbell"
PLATE = "plate"


class Load(NamedTuple):
    """A load that exists, exactly and as a number to reckon with.

    `thing`: place of the adjustable or fillable that it takes, which has one setting per block.
    """

    kg: Decimal
    value: float
    thing: int | None = None


class Gear:
    """An athlete's equipment, made ready for looking up."""

    def __init__(self, equipment: tuple[Equipment, ...]) -> None:
        self._owned = {thing.implement for thing in equipment}
        self._heights = {
            thing.implement: thing.height_cm for thing in equipment if thing.height_cm is not None
        }
        self._loads: dict[tuple[str, int], tuple[Load, ...]] = {}
        self._equipment = equipment

    def has(self, implement: str) -> bool:
        return implement in self._owned

    def height_cm(self, implement: str) -> Decimal | None:
        """Height as the athlete told it, if they did."""
        return self._heights.get(implement)

    def loads(self, implement: str, count: int) -> tuple[Load, ...]:
        """Every load that `count` of this implement can have at once, the heaviest first."""
        if (implement, count) not in self._loads:
            self._loads[implement, count] = self._find(implement, count)
        return self._loads[implement, count]

    def _find(self, implement: str, count: int) -> tuple[Load, ...]:
        fixed: defaultdict[Decimal, int] = defaultdict(int)
        found: list[Load] = []
        for place, thing in enumerate(self._equipment):
            if thing.implement != implement:
                continue
            if implement == BARBELL and thing.loads_kg and (plates := self._on_a_bar()):
                bars = {own + more for own in thing.loads_kg for more in plates}
                found += (Load(kg, float(kg), place) for kg in bars)
                continue
            for kg in thing.loads_kg:
                fixed[kg] += thing.each
            if thing.to_kg is not None and thing.each >= count:
                found += (Load(kg, float(kg), place) for kg in _settings(thing))
        found += (Load(kg, float(kg)) for kg, owned in fixed.items() if owned >= count)
        return tuple(sorted(found, key=lambda load: (-load.kg, load.thing is not None, load.thing or 0)))

    def _on_a_bar(self) -> tuple[Decimal, ...]:
        """Every weight that pairs of plates make, from none on; empty where there is no pair."""
        owned: defaultdict[Decimal, int] = defaultdict(int)
        for thing in self._equipment:
            for kg in thing.loads_kg if thing.implement == PLATE else ():
                owned[kg] += thing.each
        sums = {Decimal(0)}
        for kg, each in owned.items():
            sums |= {sum_ + 2 * pairs * kg for sum_ in sums for pairs in range(each // 2 + 1)}
        return tuple(sums) if len(sums) > 1 else ()


def _settings(thing: Equipment) -> list[Decimal]:
    assert thing.to_kg is not None
    step = thing.step_kg or FILL_STEP_KG
    start = EMPTY_KG if thing.from_kg is None else thing.from_kg
    settings = [start + step * n for n in range(int((thing.to_kg - start) / step) + 1)]
    return settings if not settings or settings[-1] == thing.to_kg else [*settings, thing.to_kg]


@lru_cache(maxsize=4096)
def gear_of(equipment: tuple[Equipment, ...]) -> Gear:
    """The same equipment is looked through once."""
    return Gear(equipment)
