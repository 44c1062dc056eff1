"""What things are called, where one implement is called differently by what it holds."""

from decimal import Decimal

from core.athletes.values import Equipment
from core.desk.reference import catalogue

# Up to here people fill bottles, and above it jugs (estimate).
BOTTLE_TO_KG = 2
JUG, BOTTLE = "jug", "water bottle"


def label_of(implement_id: str, kg: Decimal | None) -> str:
    """`dumbbell`, `water bottle`, `water jug`: by what it holds at most, or is filled to.

    What no version depends on, as a mat, is called as it was named.
    """
    small = kg is not None and kg <= BOTTLE_TO_KG
    if implement_id == JUG and small:
        return BOTTLE
    known = {one.id: one.label for one in catalogue().implements}
    return known.get(implement_id, implement_id)


def label_of_thing(thing: Equipment) -> str:
    return label_of(thing.implement, thing.to_kg or max(thing.loads_kg, default=None))
