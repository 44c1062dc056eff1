"""What athletes own, in their own words."""

from decimal import Decimal

import pytest

from core.athletes.values import Equipment
from core.measures import MassUnit
from core.notation.equipment import read_equipment


def own(implement, *loads, each=1, **more):
    return Equipment(implement=implement, loads_kg=tuple(map(Decimal, loads)), each=each, **more)


SAID = [
    (
        "two 10s, a 16 kettlebell and a chair",
        [own("dumbbell", 10, each=2), own("kettlebell", 16), own("chair")],
    ),
    ("one 12 kg dumbbell", [own("dumbbell", 12)]),
    ("12kg db", [own("dumbbell", 12)]),
    ("dumbell 10kg", [own("dumbbell", 10)]),
    ("kb 16", [own("kettlebell", 16)]),
    ("pair of 20 lb dumbbells", [own("dumbbell", "9.0718474", each=2)]),
    ("10 kg dumbbells", [own("dumbbell", 10, each=2)]),
    ("10 kg dumbbells x2", [own("dumbbell", 10, each=2)]),
    ("2x10kg dumbbells", [own("dumbbell", 10, each=2)]),
    ("2 kettlebells 16 kg", [own("kettlebell", 16, each=2)]),
    ("two dumbbells, 10 kg each", [own("dumbbell", 10, each=2)]),
    ("8 and 12 kg dumbbells", [own("dumbbell", 8, 12)]),
    ("dumbbells: 5, 10, 15 kg", [own("dumbbell", 5, 10, 15)]),
    ("a pair of 10s and 15s", [own("dumbbell", 10, 15, each=2)]),
    ("16kg kb\n24kg kb", [own("kettlebell", 16, 24)]),
    ("a table and stairs", [own("table"), own("stairs")]),
    ("chair 45 cm high", [own("chair", height_cm=Decimal(45))]),
    ("just a backpack", [own("backpack", to_kg=Decimal(10))]),
    ("backpack up to 15 kg, no bench", [own("backpack", to_kg=Decimal(15))]),
    (
        "adjustable dumbbell 2.5 to 24",
        [own("dumbbell", from_kg=Decimal("2.5"), to_kg=Decimal(24), step_kg=Decimal("2.5"))],
    ),
    (
        "adjustable dumbbells up to 20kg",
        [own("dumbbell", each=2, from_kg=Decimal("2.5"), to_kg=Decimal(20), step_kg=Decimal("2.5"))],
    ),
    ("I've got a band and a sturdy chair 🪑", [own("band"), own("chair")]),
]


@pytest.mark.parametrize(("text", "owned"), SAID, ids=[text for text, _ in SAID])
def test_equipment_is_read_however_it_is_said(text, owned):
    read = read_equipment(text)
    assert read.equipment == tuple(owned)
    assert read.not_understood == ()


def test_bare_numbers_count_in_the_unit_of_the_person():
    assert read_equipment("two 20s", MassUnit.LB).equipment == (own("dumbbell", "9.0718474", each=2),)


@pytest.mark.parametrize(
    "text", ["nothing", "None.", "no equipment", "just me", "bodyweight only", "I have nothing at home"]
)
def test_nothing_is_an_answer(text):
    assert read_equipment(text).equipment == ()


@pytest.mark.parametrize(
    "text", ["", "😀", "treadmill", "10", "one dumbbell", "a 0 kg dumbbell", "9000 kg dumbbell"]
)
def test_what_is_no_answer_is_not_taken_for_nothing(text):
    assert read_equipment(text).equipment is None


def test_what_is_not_understood_is_given_back_beside_what_is():
    read = read_equipment("a 16 kettlebell and a flying carpet")
    assert read.equipment == (own("kettlebell", 16),)
    assert read.not_understood == ("a flying carpet",)
