"""What a line offers as well is taken before anything that nobody wrote."""

import pytest

from core.scaling.values import Because, Change
from tests.unit.scaling.people import athlete, only_line

OFFERS = {
    "5 min easy bike or march": "march",
    "10 min bike, row or walk": "run",
}


@pytest.mark.parametrize(("text", "movement"), OFFERS.items())
def test_the_other_choice_of_a_line_is_done_as_written(text, movement):
    line = only_line(text, athlete(experience="some", owns=["rings"]))
    assert line.movement == movement
    assert (line.change, line.reason.because) == (Change.NONE, Because.AS_WRITTEN)


def test_what_can_t_be_done_of_the_other_choice_is_done_in_one_of_its_ways():
    line = only_line("1 min rope skipping / jumping jacks", athlete(experience="some", limits=("knee",)))
    assert line.movement == "jumping jack"


def test_whoever_has_the_first_choice_does_that():
    line = only_line("5 min easy bike or march", athlete(experience="some", owns=["bike"]))
    assert line.movement == "ride"


def test_whoever_must_not_fall_marches_with_a_hand_on_the_wall():
    who = athlete(experience="some", limits=("unsteady",), birth_year=1950)
    line = only_line("5 min easy bike or march", who)
    assert (line.movement, line.variant) == ("march", "hand-on-wall")
