"""A load that is far more than somebody trained with so far is said before they take it."""

from decimal import Decimal

import pytest

from core.scaling.stepping import big_steps
from tests.unit.scaling.people import athlete, did, version


def swings(kg, bells="kettlebell 8 16 20 24"):
    who = athlete(sex="male", mass=80, owns=[bells], tests=[did("kettlebell swing", 60, 24)])
    return version(f"5 sets\n12 kettlebell swings @ {kg} kg\nrest 2 min", who)


def lines(made):
    return [line for _, line in made.spots]


def test_half_as_much_again_is_a_big_step():
    (step,) = big_steps(swings(24), lines(swings(16)))
    assert (step.place, step.from_kg) == (1, Decimal(16))


@pytest.mark.parametrize("before", [20, 24])
def test_the_next_bell_is_none(before):
    assert big_steps(swings(24), lines(swings(before))) == ()


def test_the_heaviest_time_counts():
    assert big_steps(swings(24), [*lines(swings(24)), *lines(swings(8))]) == ()


def test_of_somebody_who_never_trained_with_a_load_nobody_knows():
    assert big_steps(swings(24), ()) == ()
