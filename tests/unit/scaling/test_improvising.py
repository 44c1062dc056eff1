"""Whoever has no weight has a bag."""

import pytest

from core.movements.lookup import catalogue
from core.scaling.improvising import improvised
from tests.unit.scaling.people import athlete, session

TEXT = "AMRAP 12\n10 push-ups\n12 goblet squats @ 16/12 kg"


def bag(who, text=TEXT):
    made = improvised(session(text), who, catalogue())
    return made and (made.movement, float(made.load_kg))


@pytest.mark.parametrize("owns", [[], ["chair"]])
def test_a_bag_is_proposed_to_whoever_has_no_weight(owns):
    assert bag(athlete(sex="male", owns=owns)) == ("goblet squat", 14)
    assert bag(athlete(sex="female", owns=owns)) == ("goblet squat", 12)


def test_not_asked_is_not_you_dont_have_it():
    assert bag(athlete(sex="female").model_copy(update={"equipment": None})) == ("goblet squat", 12)


def test_whoever_has_a_weight_is_left_alone():
    assert bag(athlete(owns=["dumbbell 2"])) is None


@pytest.mark.parametrize("text", ["AMRAP 12\n10 push-ups", "AMRAP 12\n6 bar muscle-ups\n12 box jumps"])
def test_no_bag_is_proposed_where_no_weight_is_asked_for(text):
    assert bag(athlete(owns=[]), text) is None
