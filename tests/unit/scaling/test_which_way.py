"""Which of several ways is meant for whom: what is held, how high the hands lean, how fast a weight moves.

Common practice, no source; invented people.
"""

import pytest

from core.athletes.values import Today
from tests.unit.scaling.people import athlete, did, only_line

ROUNDS = "4 rounds for time\n"
STRONG = [did("back squat", 3, 150), did("overhead press", 3, 70), did("push-up", 40)]
THRUSTERS = ROUNDS + "12 dumbbell thrusters 2 x 15/10 kg"
SWINGS = "16 min AMRAP\n15 kettlebell swings 24/16 kg"


def test_a_bar_is_taken_before_one_weight_in_both_hands_overhead():
    owns = ["barbell 20 to 200 by 2.5", "kettlebell 16 24 32"]
    line = only_line(THRUSTERS, athlete(sex="male", mass=92, owns=owns, tests=STRONG, experience="trained"))
    assert (line.implement, line.load_kg) == ("barbell", 30)


@pytest.mark.parametrize("limits", [(), ("low-back",)])
def test_a_light_pair_is_taken_before_one_weight_in_both_hands_overhead(limits):
    owns = ["2x dumbbell 4 8", "kettlebell 12"]
    tests = [did("push-up", 3), did("goblet squat", 15, 12)]
    line = only_line(THRUSTERS, athlete(mass=68, owns=owns, tests=tests, limits=limits, experience="some"))
    assert (line.implement, line.count) == ("dumbbell", 2)


def test_whoever_has_one_weight_alone_takes_it_in_both_hands():
    line = only_line(THRUSTERS, athlete(owns=["kettlebell 12"], tests=STRONG, experience="trained"))
    assert (line.variant, line.count) == ("one-weight", 1)


@pytest.mark.parametrize(
    "known",
    [
        {"experience": "new"},
        {"experience": "some", "limits": ("after-birth-later",)},
        {"experience": "some", "today": Today(sore=("legs",))},
    ],
)
def test_a_weight_is_moved_slowly_by_whoever_is_new_sore_or_careful(known):
    line = only_line(SWINGS, athlete(owns=["kettlebell 8 12 16"], tests=[did("push-up", 10)], **known))
    assert line.movement == "deadlift"


def test_whoever_is_used_to_it_swings():
    who = athlete(owns=["kettlebell 8 12 16"], tests=[did("push-up", 10)], experience="some")
    assert only_line(SWINGS, who).movement == "swing"


@pytest.mark.parametrize(
    "known",
    [
        {"experience": "trained", "tests": [did("push-up", 12)], "limits": ("pregnancy-middle",)},
        {"experience": "some", "tests": [did("push-up", 3), did("push-up", 12, variant="knees")]},
    ],
)
def test_hands_lean_on_the_table_before_what_is_lower(known):
    line = only_line("16 min AMRAP\n10 push-ups", athlete(owns=["table", "chair", "stairs"], **known))
    assert line.variant == "hands-on-table"


@pytest.mark.parametrize("limits", [(), ("knee",)])
def test_burpees_of_whoever_is_heavy_lean_on_the_table(limits):
    who = athlete(sex="male", mass=118, owns=["table", "chair"], experience="new", limits=limits)
    assert only_line("5 rounds for time\n12 burpees", who).variant == "hands-on-table"


@pytest.mark.parametrize(
    ("text", "least", "most"),
    [
        ("5 sets, 2 min rest\n5 back squats", 125, 130),
        ("4 sets, 90 s rest\n6 overhead presses", 55, 57.5),
        ("4 sets, 2 min rest\n6 deadlifts", 145, 155),
    ],
)
def test_a_strength_day_leaves_two_or_three_and_keeps_lifts_in_proportion(text, least, most):
    tests = [*STRONG, did("deadlift", 3, 180)]
    who = athlete(sex="male", mass=92, owns=["barbell 20 to 200 by 2.5"], tests=tests, experience="trained")
    assert least <= only_line(text, who).load_kg <= most


@pytest.mark.parametrize("owns", [["table", "chair"], ["bench"], []])
def test_burpees_of_a_sore_shoulder_take_no_weight_on_the_hands(owns):
    who = athlete(owns=owns, tests=[did("push-up", 10)], limits=("shoulder",), experience="trained")
    line = only_line("5 rounds for time\n12 burpees", who)
    assert line.variant == "hands-on-wall"


@pytest.mark.parametrize(
    "known",
    [
        {"experience": "trained", "owns": ["kettlebell 8 12 16"], "tests": [did("goblet squat", 25, 16)]},
        {"experience": "some", "owns": ["2x dumbbell 3 5"], "sex": "male", "mass": 84, "birth_year": 1952},
    ],
)
def test_a_weight_that_is_nothing_for_a_heavy_set_is_lifted_more_often(known):
    assert only_line("4 sets, 2 min rest\n6 deadlifts", athlete(**known)).amount >= 8


def test_whoever_is_new_steps_on_the_stair_that_is_there_and_on_no_chair():
    who = athlete(owns=["chair", "stairs"], experience="new", limits=("no-jumping",))
    assert "chair" not in only_line("AMRAP 12\n8 box jumps", who).variant
