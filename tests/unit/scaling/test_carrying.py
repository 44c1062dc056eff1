"""What a coach puts in a line's place without a number is as long in doing (the catalogue's seconds, estimates)."""

import pytest

from core.measures import AmountUnit
from core.movements.lookup import catalogue
from core.scaling.carrying import carried_over
from core.sessions.values import Line


def line(movement, amount=None, unit=AmountUnit.REPS, **facts):
    return Line(written="", movement=movement, amount=amount, unit=unit, **facts)


def seconds(movement):
    return catalogue().movement(movement).variants[0].seconds.value


def test_a_run_for_burpees_takes_about_as_long():
    carried = carried_over(line("run", 200, AmountUnit.METRES), line("burpee"), catalogue())
    assert carried.unit is AmountUnit.REPS
    taken = carried.amount * seconds("burpee")
    assert taken == pytest.approx(200 * seconds("run"), abs=seconds("burpee") / 2)


def test_both_of_a_pair_and_of_a_range_are_carried():
    pair = line("row", 15, AmountUnit.KCAL, second_amount=12)
    carried = carried_over(pair, line("burpee"), catalogue())
    assert carried.second_amount / carried.amount == pytest.approx(12 / 15, abs=0.05)
    spread = carried_over(line("plank", 30, AmountUnit.SECONDS, amount_to=60), line("sit-up"), catalogue())
    assert spread.amount_to == 2 * spread.amount


def test_what_each_side_did_is_done_as_often_with_both_at_once():
    """Ten rows with each arm are ten with a barbell (common practice, no source)."""
    carried = carried_over(line("lunge", 10, per_side=True), line("air squat"), catalogue())
    assert (carried.amount, carried.per_side) == (10, False)
