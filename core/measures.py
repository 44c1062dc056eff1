"""Kilograms and pounds, exactly; seconds, metres and kilocalories are plain numbers in their unit."""

from decimal import Decimal
from enum import StrEnum
from typing import Annotated

from pydantic import Field

# NIST SP 811, appendix B.8: one pound is this many kilograms, exactly.
KG_PER_POUND = Decimal("0.45359237")

_LOST = Decimal("0.005")

# What a number from outside may be, wherever one is kept. Generous on purpose (estimates): beyond these it is a slip
# or an attack, never somebody strong or far.
MOST_KG, MOST_CM, MOST_REPS, MOST_METRES, DAY_S = 1000, 1000, 10_000, 1_000_000, 86_400
# Plates come in quarters of a kilogram and half pounds (common practice, no source).
LEAST_STEP_KG = Decimal("0.1")
Kg = Annotated[Decimal, Field(gt=0, le=MOST_KG)]
StepKg = Annotated[Decimal, Field(ge=LEAST_STEP_KG, le=MOST_KG)]
Centimetres = Annotated[Decimal, Field(gt=0, le=MOST_CM)]
Reps = Annotated[float, Field(ge=0, le=MOST_REPS)]
Metres = Annotated[float, Field(ge=0, le=MOST_METRES)]
Seconds = Annotated[float, Field(ge=0, le=DAY_S)]
Minutes = Annotated[float, Field(gt=0, le=DAY_S / 60)]


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


def as_marked(mass_kg: Decimal, unit: MassUnit) -> str:
    """Mass of a thing as it stands on it: a 20 lb dumbbell is `20 lb` to everybody, a 16 kg one `16 kg`.

    What is round in neither unit is said in `unit`.
    """
    other = MassUnit.LB if unit is MassUnit.KG else MassUnit.KG
    marked = next((one for one in (unit, other) if _is_round(from_kg(mass_kg, one))), unit)
    return in_words(mass_kg, marked)


def _is_round(amount: Decimal) -> bool:
    """To the quarter, give or take what was lost in writing it down."""
    quarters = amount * 4
    return abs(quarters - round(quarters)) <= _LOST


def in_words(mass_kg: Decimal, unit: MassUnit) -> str:
    """Mass as people say it: `16 kg`, `7.5 kg`, `35 lb`."""
    amount = from_kg(mass_kg, unit).quantize(Decimal("0.1"))
    return f"{amount.normalize():f} {unit}"
