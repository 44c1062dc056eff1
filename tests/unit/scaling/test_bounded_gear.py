"""Whatever is told of a thing, so many loads of it are looked at and no more; each of them exists."""

from decimal import Decimal

import pytest

from core.athletes.values import Equipment
from core.scaling.gear import MOST_SETTINGS, Gear


def test_an_adjustable_in_tiny_steps_has_a_bounded_number_of_settings_that_exist():
    step = Decimal("0.00000001")
    thing = Equipment.model_construct(
        implement="dumbbell", loads_kg=(), each=1, from_kg=Decimal(1), to_kg=Decimal(500), step_kg=step
    )

    loads = Gear((thing.model_copy(update={"height_cm": None, "shared_with": None}),)).loads("dumbbell", 1)

    assert len(loads) <= MOST_SETTINGS + 1
    assert loads[0].kg == 500
    assert loads[-1].kg == 1
    assert all((load.kg - 1) % step == 0 for load in loads)


def test_an_adjustable_that_people_have_keeps_all_its_settings():
    thing = Equipment(
        implement="barbell", from_kg=Decimal(20), to_kg=Decimal(120), step_kg=Decimal("0.5"), each=1
    )

    assert len(Gear((thing,)).loads("barbell", 1)) == 201


@pytest.mark.parametrize("pairs", [18, 40])
def test_many_different_plates_make_a_bounded_number_of_bars(pairs):
    plates = Equipment(
        implement="plate", loads_kg=tuple(Decimal(2) ** n / 1000 for n in range(18)), each=2 * pairs
    )
    bars = Equipment(implement="barbell", loads_kg=tuple(map(Decimal, range(5, 25))))

    loads = Gear((plates, bars)).loads("barbell", 1)

    assert len(loads) <= MOST_SETTINGS
    assert loads[-1].kg == 5


def test_few_plates_make_every_bar():
    plates = Equipment(implement="plate", loads_kg=(Decimal(5), Decimal(10)), each=2)
    bar = Equipment(implement="barbell", loads_kg=(Decimal(20),))

    assert [load.kg for load in Gear((plates, bar)).loads("barbell", 1)] == [50, 40, 30, 20]
