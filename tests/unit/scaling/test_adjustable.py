"""One dumbbell with many settings: a sensible load, and a reason that is true."""

from decimal import Decimal

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from core.athletes.values import Equipment
from core.scaling.gear import gear_of
from core.scaling.values import Because, Change
from tests.unit.scaling.people import athlete, did, only_line

TWELVE = "AMRAP 12\n12 goblet squats @ 24/16 kg"


def noor(*tests, **known):
    return athlete("Noor", tests=tests, mass=62, owns=["dumbbell 2.5 to 24 by 2.5"], **known)


def finn(*tests):
    return noor(*tests, sex="male")


@settings(deadline=None)
@given(st.integers(1, 40), st.sampled_from([10, 15, 24]), st.integers(5, 20))
def test_a_load_that_is_there_and_nearer_is_never_called_missing(reps, load, amount):
    text = f"AMRAP 12\n{amount} goblet squats @ 24/16 kg"
    line = only_line(text, noor(did("goblet squat", reps, load)))
    if line.reason.because is Because.NOT_OWNED:
        assert line.load_kg in {Decimal(15), Decimal("17.5")}


def test_with_nothing_shown_it_is_light_because_nobody_knows():
    assert only_line(TWELVE, finn(did("push-up", 15))).reason.because is Because.UNTESTED


def test_a_setting_that_would_be_a_little_heavy_is_passed_over_for_that():
    line = only_line(TWELVE, noor(did("goblet squat", 9, 16)))
    assert (line.load_kg, line.reason.because) == (Decimal(10), Because.TOO_HEAVY)


NEAR = "AMRAP 12\n12 goblet squats @ 16/12 kg"


def test_a_setting_a_little_above_the_written_load_stands_in_for_who_is_strong():
    line = only_line(NEAR, noor(did("goblet squat", 40, 12.5)))
    assert (line.load_kg, line.change) == (Decimal("12.5"), Change.LOAD)
    assert line.reason.because is Because.NOT_OWNED


def test_the_stronger_the_heavier_up_to_a_little_above_the_written_load():
    loads = [only_line(NEAR, noor(did("goblet squat", reps, 12.5))).load_kg for reps in range(12, 61, 4)]
    assert loads == sorted(loads)
    assert loads[0] < 12 < loads[-1] == Decimal("12.5")


def test_what_lies_well_above_the_written_load_is_never_set():
    text = "AMRAP 12\n12 goblet squats @ 14/11 kg"
    assert only_line(text, noor(did("goblet squat", 60, 12.5))).load_kg == Decimal(10)


def test_the_heaviest_setting_is_there_even_between_the_steps():
    line = only_line(TWELVE, finn(did("goblet squat", 25, 24)))
    assert (line.load_kg, line.change) == (Decimal(24), Change.NONE)


@pytest.mark.parametrize(
    ("empty", "full", "loads"),
    [
        (None, "7", ["1", "1.5", "2", "2.5", "3", "3.5", "4", "4.5", "5", "6", "7"]),
        ("4.3", "8.5", ["4.3", "4.8", "5.3", "6", "7", "8", "8.5"]),
        ("10.2", "12", ["10.2", "11", "12"]),
    ],
)
def test_what_is_filled_is_filled_in_whole_kilos_unless_it_is_light(empty, full, loads):
    bag = Equipment(implement="backpack", from_kg=empty and Decimal(empty), to_kg=Decimal(full))
    assert [load.kg for load in gear_of((bag,)).loads("backpack", 1)] == [Decimal(kg) for kg in loads[::-1]]
