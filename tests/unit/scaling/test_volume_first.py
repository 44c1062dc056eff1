"""Where the coach says volume first, fewer of what is written come before an easier way."""

import pytest

from core.scaling.orders import Orders
from core.scaling.values import Because, Change
from tests.unit.scaling.people import athlete, did, only_line

VOLUME = Orders(volume_first=True)


def pushes(reps):
    return athlete(tests=[did("push-up", reps)], owns=["table"])


def test_without_a_word_of_the_coach_the_way_gets_easier_and_the_number_stays():
    line = only_line("6 rounds for time\n10 push-ups", pushes(9))
    assert (line.change, line.amount) == (Change.VARIANT, 10)


def test_with_it_the_way_stays_and_the_number_gets_smaller():
    line = only_line("6 rounds for time\n10 push-ups", pushes(9), orders=VOLUME)
    assert (line.variant, line.change, line.reason.because) == ("floor", Change.AMOUNT, Because.TOO_HEAVY)
    assert 4 <= line.amount <= 7


def test_the_written_load_stays_too():
    who = athlete(tests=[did("goblet squat", 10, 16)], owns=["kettlebell 12 16"])
    line = only_line("AMRAP 12\n12 goblet squats @ 16 kg", who, orders=VOLUME)
    assert (line.load_kg, line.change) == (16, Change.AMOUNT)


@pytest.mark.parametrize("reps", [14, 20, 40])
def test_what_fits_is_left_as_written(reps):
    assert only_line("6 rounds for time\n10 push-ups", pushes(reps), orders=VOLUME).change is Change.NONE


def test_two_of_twenty_are_not_what_is_meant():
    line = only_line("6 rounds for time\n20 push-ups", pushes(3), orders=VOLUME)
    assert (line.variant, line.amount) != ("floor", 2)


def test_a_scheme_gets_shorter():
    line = only_line("21-15-9 for time\npush-ups", pushes(14), orders=VOLUME)
    assert line.variant == "floor"
    assert line.scheme[0] < 21
