"""What things are called, where one implement is called differently by what it holds."""

from decimal import Decimal

from core.athletes.values import Equipment
from core.desk.reference import catalogue

# Up to here people fill bottles, and above it jugs (estimate).
BOTTLE_TO_KG = 2
JUG, BOTTLE = "jug", "water bottle"


def label_of(implement_id: str, kg: Decimal | None) -> str:
    """`dumbbell`, `water bottle`, `water jug`: by what it holds at most, or is filled to."""
    small = kg is not None and kg <= BOTTLE_TO_KG
    return BOTTLE if implement_id == JUG and small else catalogue().implement(implement_id).label


def label_of_thing(thing: Equipment) -> str:
    return label_of(thing.implement, thing.to_kg or max(thing.loads_kg, default=None))
