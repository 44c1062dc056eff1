"""Kilograms and pounds, exactly; seconds, metres and kilocalories are plain numbers in their unit."""

from decimal import Decimal
from enum import StrEnum

# NIST SP 811, appendix B.8: one pound is this many kilograms, exactly.
KG_PER_POUND = Decimal("0.45359237")


class MassUnit(StrEnum):
    KG = "kg"
    LB = "lb"


class AmountUnit(StrEnum):
    """What a line counts."""

    REPS = "reps"
    SECONDS = "s"
    METRES = "m"
    KCAL = "kcal"


def to_kg(amount: Decimal, unit: MassUnit) -> Decimal:
    """Mass in kg, exactly."""
    return amount if unit is MassUnit.KG else amount * KG_PER_POUND


def from_kg(mass_kg: Decimal, unit: MassUnit) -> Decimal:
    """Mass in `unit`: the inverse of `to_kg`."""
    return mass_kg if unit is MassUnit.KG else mass_kg / KG_PER_POUND


def in_words(mass_kg: Decimal, unit: MassUnit) -> str:
    """Mass as people say it: `16 kg`, `7.5 kg`, `35 lb`."""
    amount = from_kg(mass_kg, unit).quantize(Decimal("0.1"))
    return f"{amount.normalize():f} {unit}"
