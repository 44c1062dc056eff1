"""A set that was done in a session shows that so much goes at least; it never makes anybody weaker."""

import pytest

from core.ability.capacity import Capacity
from core.ability.demand import load_moved
from core.athletes.values import Evidence
from core.movements.lookup import catalogue
from tests.unit.scaling.people import athlete, did


def done(reps, load):
    return Evidence(kind="score", movement="deadlift", variant="barbell", reps=reps, load_kg=load)


def unbroken_at(load, *tests):
    who = athlete("Bo", owns=("barbell",), tests=tests)
    movement, variant = catalogue().variant("deadlift/barbell")
    capacity = Capacity(who, catalogue())
    ability = capacity.of(movement, variant, "deadlift/barbell")
    return ability.unbroken(load_moved(variant, capacity.body_mass_kg, variant.holds[0], load))


def test_a_heavy_set_raises_what_is_expected():
    assert unbroken_at(140) < 5
    assert unbroken_at(140, done(5, 140)) == pytest.approx(5)


def test_a_light_set_lowers_nothing():
    assert unbroken_at(40) > 5
    assert unbroken_at(40, done(5, 40)) == unbroken_at(40)


def test_a_set_below_a_test_leaves_the_test():
    test = did("deadlift", 10, 140, "barbell")
    assert unbroken_at(140, test, done(5, 100)) == unbroken_at(140, test) == pytest.approx(10)


def test_a_set_beyond_an_older_test_stands_for_it():
    assert unbroken_at(140, did("deadlift", 3, 140, "barbell"), done(8, 140)) == pytest.approx(8)
