"""Which variant is meant by what is said to be held."""

from decimal import Decimal

from core.movements.values import Movement, Variant

# Nobody holds more than this in one dumbbell or kettlebell (estimate): what is heavier is meant with a barbell.
HAND_HELD_TO = 50
BARBELL = "barbell"


def meant_variant(
    movement: Movement,
    variant_id: str | None,
    load_kg: Decimal | None,
    implement: str | None = None,
    count: int | None = None,
) -> Variant:
    """The variant that is named, or meant by the implement, or by the load: a deadlift at 100 kg has a barbell."""
    loaded = load_kg is not None
    if implement is None and load_kg is not None and load_kg > HAND_HELD_TO:
        heavy = movement.meant(variant_id, loaded=loaded, implement=BARBELL, count=count)
        if heavy.takes(BARBELL, count):
            return heavy
    return movement.meant(variant_id, loaded=loaded, implement=implement, count=count)
