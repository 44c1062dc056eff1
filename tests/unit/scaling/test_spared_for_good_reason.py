"""What a condition leaves out or had better leave, and whom nobody hurries; amounts as people count them."""

import pytest

from core.measures import AmountUnit
from core.movements.lookup import catalogue
from core.movements.values import Demand
from core.scaling.amounts import as_counted
from core.scaling.values import Because
from tests.unit.scaling.people import athlete, did, only_line

THINGS = ("chair", "table", "wall", "dumbbell 8", "band", "bench")


def asks(line):
    return set(catalogue().variant(f"{line.movement}/{line.variant}")[1].demands)


def given(text, **known):
    return only_line(f"AMRAP 10\n{text}", athlete(owns=THINGS, mass=70, **known))


@pytest.mark.parametrize("limit", ["stroke", "heart", "beta-blockers", "joint-replacement", "unsteady"])
@pytest.mark.parametrize("text", ["8 burpees", "5 inchworms"])
def test_nobody_with_these_is_sent_down_to_the_floor_and_up_again_in_a_hurry(limit, text):
    assert Demand.UP_AND_DOWN not in asks(given(text, limits=(limit,)))


@pytest.mark.parametrize("limit", ["stroke", "unsteady", "parkinsons"])
def test_the_unsteady_stand_on_no_band(limit):
    assert Demand.UNDERFOOT not in asks(given("10 thrusters @ 40/30 kg", limits=(limit,)))


@pytest.mark.parametrize("text", ["20 m bear crawl", "20 mountain climbers"])
@pytest.mark.parametrize("limit", ["pregnancy", "pregnancy-middle", "pregnancy-late"])
def test_nothing_hangs_from_a_pregnant_trunk(limit, text):
    assert not {Demand.BELLY_HANGS, Demand.FACE_DOWN} & asks(given(text, limits=(limit,)))


def test_what_a_limit_would_rather_leave_is_left_where_it_is_written_and_the_reason_names_it():
    line = given("12 kettlebell swings @ 16 kg", limits=("joint-replacement",))
    assert Demand.FAST_LOAD not in asks(line)
    assert (line.reason.because, line.reason.about) == (Because.LIMIT, "joint-replacement")


def test_back_extensions_spare_no_sore_back():
    assert Demand.ARCH not in asks(given("10 hip hinges", limits=("low-back",)))


@pytest.mark.parametrize("text", ["10 burpees", "20 mountain climbers", "10 squat jumps"])
def test_whoever_is_new_and_does_no_push_up_is_not_hurried(text):
    new = given(text, experience="new", tests=[did("push-up", 0)])
    assert not {Demand.UP_AND_DOWN, Demand.IMPACT, Demand.JUMPING} & asks(new)
    able = given(text, experience="trained", tests=[did("push-up", 30)])
    assert {Demand.UP_AND_DOWN, Demand.IMPACT, Demand.JUMPING} & asks(able)


@pytest.mark.parametrize(
    ("amount", "unit", "told"),
    [
        (27, AmountUnit.SECONDS, 25),
        (13, AmountUnit.REPS, 12),
        (15, AmountUnit.REPS, 15),
        (46, AmountUnit.REPS, 40),
        (9, AmountUnit.REPS, 9),
        (1990, AmountUnit.METRES, 1900),
        (0.4, AmountUnit.REPS, 1),
    ],
)
def test_fewer_is_told_as_people_count(amount, unit, told):
    assert as_counted(amount, unit) == told


@pytest.mark.parametrize("text", ["20 walking lunges", "8 box jumps", "12 step-ups"])
@pytest.mark.parametrize("limit", ["pregnancy-middle", "pregnancy-late"])
def test_a_pregnant_woman_has_something_to_hold_and_climbs_no_furniture(limit, text):
    assert Demand.BALANCE not in asks(given(text, limits=(limit,)))


@pytest.mark.parametrize("limits", [("knee",), ("pregnancy-middle",), ("ankle",)])
def test_whoever_may_not_skip_takes_the_machine_that_is_there(limits):
    line = only_line("AMRAP 10\n30 s rope skipping", athlete(owns=("bike", "chair"), limits=limits))
    assert line.movement == "ride"


def test_of_several_limits_the_sore_joint_is_the_reason():
    limits = ("high-blood-pressure", "shoulder")
    line = only_line("3 sets\n8 overhead presses @ 40 kg\nrest 90 s", athlete(owns=THINGS, limits=limits))
    assert (line.reason.because, line.reason.about) == (Because.LIMIT, "shoulder")
