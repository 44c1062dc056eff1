"""Which variant is meant by what is said to be held."""

from decimal import Decimal

from core.movements.values import Movement, Variant

# Nobody holds more than this in one dumbbell or kettlebell (estimate): what is heavier is meant with a barbell.
HAND_HELD_TO = 50
BARBELL = "barbell"


ONE_LEG = "one-leg"


def meant_variant(
    movement: Movement,
    variant_id: str | None,
    load_kg: Decimal | None,
    implement: str | None = None,
    count: int | None = None,
    *,
    of_a_maximum: bool = False,
    per_side: bool = False,
) -> Variant:
    """The variant that is named, or meant by the implement, or by the load: a deadlift at 100 kg has a barbell.

    So has what is written as a share `of_a_maximum`. Heel raises a side are done on one leg.
    """
    usual = movement.meant(variant_id, loaded=load_kg is not None, implement=implement, count=count)
    if per_side and variant_id is None and movement.sides_of(usual) == "both":
        return next((way for way in movement.variants if way.id == ONE_LEG), usual)
    heavy_load = of_a_maximum or (load_kg is not None and load_kg > HAND_HELD_TO)
    if not heavy_load or implement is not None or variant_id is not None or count not in {None, 1}:
        return usual
    if usual.holds and usual.holds[0].implement == BARBELL:
        return usual
    return next((way for way in movement.variants if _is_with_barbell(way)), usual)


def _is_with_barbell(variant: Variant) -> bool:
    """Whether it is done with a barbell and nothing else."""
    return bool(variant.holds) and all(hold.implement == BARBELL for hold in variant.holds)
