"""Whoever might fall has a hand on something, sits down in between, and stays up in rounds against the clock."""

import pytest

from core.athletes.values import Screening
from core.movements.lookup import catalogue
from core.movements.values import Demand, Part
from core.scaling.values import Because
from tests.unit.scaling.people import athlete, did, lines, only_line

OWNS = ["2x dumbbell 1 2 3", "band", "chair", "table"]
UNSTEADY = athlete(limits=("unsteady", "osteoporosis"), birth_year=1946, experience="some", owns=OWNS)


def demands_of(line):
    return set(catalogue().variant(f"{line.movement}/{line.variant}")[1].demands)


@pytest.mark.parametrize(
    "text",
    [
        "3 x 10 bent-over rows",
        "4 rounds for time\n40 m farmer carry 2 x 24/16 kg",
        "5 rounds for time\n200 m run",
        "AMRAP 12\n10 kettlebell swings",
        "10 min march on the spot",
        "1 min hamstring stretch per side",
    ],
)
def test_whoever_might_fall_is_never_without_a_hand_to_hold(text):
    assert Demand.UNHELD not in demands_of(only_line(text, UNSTEADY))


def test_rounds_against_the_clock_are_not_done_down_and_up_again():
    who = athlete(
        limits=("osteoporosis",), birth_year=1948, experience="some", owns=OWNS, tests=[did("air squat", 8)]
    )
    for line in lines("5 rounds for time\n15 sit-ups\n10 air squats", who):
        assert Demand.FLOOR not in demands_of(line)


def test_a_long_march_is_cut_in_pieces_for_whoever_takes_care_alone():
    assert only_line("20 min march on the spot", UNSTEADY).pieces == 4
    able = athlete(experience="trained", tests=[did("air squat", 50), did("push-up", 30)])
    assert only_line("20 min march on the spot", able).pieces == 1


def test_steps_stand_for_no_machine_with_a_sore_knee():
    who = athlete(limits=("knee",), birth_year=1954, experience="some", owns=["stairs", "chair"])
    hard, easy = lines("6 rounds for quality\n2 min row hard\n1 min row easy", who)
    assert "stair" not in hard.movement
    assert hard.movement == easy.movement


def test_easy_overhead_is_never_with_the_heaviest_there_is():
    who = athlete(
        limits=("low-back",), sex="male", mass=97, experience="some", owns=["kettlebell 12 16 24", "chair"]
    )
    line = only_line("5 rounds for time\n12 dumbbell thrusters 2 x 15/10 kg", who)
    assert line.load_kg is None or line.load_kg < 24


def test_what_a_stand_in_leaves_out_is_told():
    who = athlete(limits=("shoulder",), experience="some", owns=["2x dumbbell 8", "chair"])
    assert only_line("5 rounds for time\n12 thrusters @ 40/30 kg", who).reason.without is Part.PRESS


def test_what_isn_t_there_is_the_reason_where_a_limit_changes_nothing():
    who = athlete(
        limits=("high-blood-pressure",),
        birth_year=1954,
        experience="some",
        owns=["2x dumbbell 4", "chair"],
        tests=[did("push-up", 0), did("air squat", 10)],
        screening=Screening.MODERATE,
    )
    line = only_line("4 x 6 bench press @ 70 %\nrest 2 min", who)
    assert (line.reason.because, line.reason.about) == (Because.NOT_OWNED, "bench")


def test_what_goes_somewhere_leaves_a_rest_before_the_next_minute():
    who = athlete(experience="some", owns=["2x dumbbell 8"])
    line = lines("EMOM 15\nMinute 1: 12 air squats\nMinute 2: 10 sit-ups\nMinute 3: 14 cal row", who)[2]
    seconds = catalogue().variant(f"{line.movement}/{line.variant}")[1].seconds.value
    assert (line.amount or 0) * (1 if line.unit == "s" else seconds) <= 45
