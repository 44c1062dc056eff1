"""What somebody weighs, told unasked; how people type it is common practice, no source."""

from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.measures import MassUnit
from core.notation.weighing import read_bare_mass, read_weighing


@pytest.mark.parametrize(
    "said",
    [
        "I weigh 74kg",
        "i weigh about 74 kg now",
        "I weigh 74",
        "my weight is 74 kg",
        "My weight is now 74",
        "weight: 74 kg",
        "body weight 74kg",
        "I'm 74 kg",
        "I'm down to 74 kilos",
        "I weighed in at 74 kg this morning",
    ],
)
def test_what_they_weigh(said):
    assert read_weighing(said, MassUnit.KG) == 74


def test_pounds_and_stones():
    """By the international pound of 0.45359237 kg, from memory; a stone is 14 pounds."""
    assert read_weighing("I weigh 163 lb", MassUnit.KG) == Decimal("73.93555631")
    assert read_weighing("I weigh 163", MassUnit.LB) == Decimal("73.93555631")
    assert read_weighing("I weigh 11 stone 9", MassUnit.KG) == Decimal("73.93555631")


@pytest.mark.parametrize(
    "said",
    [
        "74kg",
        "my dumbbell weighs 10 kg",
        "it weighs 74kg",
        "I weigh 740 kg",
        "I did 74 kg",
        "I'm 74",
        "I weigh too much",
        "my weight is 74 kg and the bar is 20 kg",
        "",
    ],
)
def test_what_says_no_body_mass(said):
    assert read_weighing(said, MassUnit.KG) is None


@pytest.mark.parametrize(("said", "mass"), [("74kg", 74), ("74 kilos now", 74), ("20kg", None), ("74", None)])
def test_a_mass_alone(said, mass):
    assert read_bare_mass(said, MassUnit.KG) == mass


@given(st.text(max_size=200))
def test_any_text_is_a_mass_of_a_person_or_none(text):
    found = read_weighing(text, MassUnit.KG)
    assert found is None or 30 <= found <= 300
