"""A bar with its plates: how heavy the usual ones are, and what plates told together make of a bar."""

from collections.abc import Sequence
from decimal import Decimal
from typing import Final

from core.athletes.values import Equipment
from core.measures import MassUnit

# Nobody has a pair of these.
BARBELL: Final = "barbell"
BAR: Final = {MassUnit.KG: Decimal(20), MassUnit.LB: Decimal(45)}
STEP: Final = {MassUnit.KG: Decimal("2.5"), MassUnit.LB: Decimal(5)}
HEAVIEST_KG: Final = 500
# The heaviest plates made for a bar (common practice, no source).
_HEAVIEST_PLATE_KG: Final = 25


def with_plates(things: Sequence[Equipment]) -> list[Equipment]:
    """Plates told by their weight together belong to the bar, if there is one; others are things of their own."""
    bar = next((one for one in things if one.implement == BARBELL and one.to_kg is None), None)
    plates = next((one for one in things if one.implement == "plate" and _in_all(one)), None)
    if bar is None or plates is None:
        return list(things)
    empty = max(bar.loads_kg, default=BAR[MassUnit.KG])
    total = empty + _in_all(plates)
    if total > HEAVIEST_KG:
        return list(things)
    loaded = Equipment(
        implement=BARBELL, each=bar.each, from_kg=empty, to_kg=total, step_kg=STEP[MassUnit.KG]
    )
    return [loaded if one is bar else one for one in things if one is not plates]


def _in_all(plates: Equipment) -> Decimal:
    """What they weigh together; 0 where single plates are told: none is so heavy."""
    alone = plates.loads_kg[0] if len(plates.loads_kg) == 1 else Decimal(0)
    return plates.to_kg or (alone if alone > _HEAVIEST_PLATE_KG else Decimal(0))
