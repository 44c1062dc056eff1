"""Things that nearly every household has: what whoever has nothing to train with may tap."""

from collections.abc import Iterable, Mapping
from decimal import Decimal

from core.athletes.values import Equipment

# A usual bag holds books and bottles of some 14 kg, a big bottle or jug five litres (estimates).
HOUSEHOLD: Mapping[str, Equipment] = {
    "bag": Equipment(implement="backpack", to_kg=Decimal(14)),
    "jug": Equipment(implement="jug", to_kg=Decimal(5)),
    "chair": Equipment(implement="chair"),
    "table": Equipment(implement="table"),
    "stairs": Equipment(implement="stairs"),
    "bar": Equipment(implement="pull-up bar"),
}

# Of these nobody said how heavy they get: the usual is taken, and said.
ESTIMATED = tuple(one.implement for one in HOUSEHOLD.values() if one.to_kg is not None)


def with_household(equipment: Iterable[Equipment], ticked: Iterable[str]) -> tuple[Equipment, ...]:
    """What was told, and what was ticked beside it: of a thing that was told too, what was told counts."""
    told = tuple(equipment)
    known = {one.implement for one in told}
    return (*told, *(HOUSEHOLD[one] for one in ticked if HOUSEHOLD[one].implement not in known))
