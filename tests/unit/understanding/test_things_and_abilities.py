"""Lists of things, and what somebody can do: each number belongs to what it stands with."""

import re
from decimal import Decimal
from itertools import combinations

import pytest

from core.movements.lookup import catalogue
from core.notation.boards.session import read_session
from core.understanding.acts import document
from core.understanding.understand import understand
from core.understanding.values import Context, Message

SETS_OF_MOST = "3 sets of max push-ups"
ROUNDS = "AMRAP 12\n10 push-ups\n15 air squats\n5 pull-ups"


def acts(text, question="", session=None):
    known = read_session(session, catalogue()).session if session else None
    read = understand(Message(text=text), Context(question=question, session=known))
    return [document(one) for one in read.acts]


def things(text):
    (told,) = acts(text, "equipment")
    return [
        (one["implement"], [float(load) for load in one.get("loads_kg", ())], one.get("each", 1))
        for one in told["equipment"]
    ]


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("dumbbells 2stk 8kg", [("dumbbell", [8], 2)]),
        ("2x 16kg kb, 1x 24", [("kettlebell", [16], 2), ("kettlebell", [24], 1)]),
        ("3 kettlebells: 8 12 16", [("kettlebell", [8, 12, 16], 1)]),
        ("4kg and 6kg dumbbells, two of each", [("dumbbell", [4, 6], 2)]),
        (
            "dos mancuernas de cuatro kilos, una de seis y una goma",
            [("dumbbell", [4], 2), ("dumbbell", [6], 1), ("band", [], 1)],
        ),
        ("eine hantel mit 4kg, zwei mit 6kg", [("dumbbell", [4], 1), ("dumbbell", [6], 2)]),
    ],
)
def test_each_count_and_load_belongs_to_its_own_thing(text, expected):
    assert things(text) == expected


def test_plates_behind_a_with_are_on_the_bar():
    (told,) = acts("barbell with 120kg plates", "equipment")
    assert [(one["implement"], float(one["to_kg"])) for one in told["equipment"]] == [("barbell", 140)]


def test_steps_of_a_range_are_no_stairs():
    (told,) = acts("dumbbells from 2 until 10 kg in steps of 2", "equipment")
    (found,) = told["equipment"]
    assert [float(found[name]) for name in ("from_kg", "to_kg", "step_kg")] == [2, 10, 2]


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("10 squats and 5 push-ups", [("air squat", {"reps": 10}), ("push-up", {"reps": 5})]),
        ("pushups 20, pullups 0", [("push-up", {"reps": 20}), ("pull-up", {"reps": 0})]),
        (
            "about 20 squats, can't do a single pull-up",
            [("air squat", {"reps": 20}), ("pull-up", {"reps": 0})],
        ),
        ("press 40 for 3", [("overhead press", {"load_kg": 40, "reps": 3})]),
        ("5k in 27 min", [("run", {"distance_m": 5000, "seconds": 1620})]),
        ("hago 15 flexiones y 2 dominadas", [("push-up", {"reps": 15}), ("pull-up", {"reps": 2})]),
    ],
)
def test_each_number_belongs_to_the_movement_it_stands_nearest_to(text, expected):
    told = acts(text, "ability")
    names = ("reps", "load_kg", "distance_m", "seconds")
    found = [(one["movement"], {name: float(one[name]) for name in names if name in one}) for one in told]
    assert found == expected


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        (
            "back squat 150, dead 190, 12 pullups",
            [("back squat", 150, 1), ("deadlift", 190, 1), ("pull-up", None, 12)],
        ),
        (
            "squat 150 bench 100 dead 190",
            [("back squat", 150, 1), ("bench press", 100, 1), ("deadlift", 190, 1)],
        ),
        ("squats 60, pushups 30", [("air squat", None, 60), ("push-up", None, 30)]),
        ("deadlift 190, 20 pushups", [("deadlift", 190, 1), ("push-up", None, 20)]),
        ("50 thrusters, 100 swings unbroken", [("thruster", None, 50), ("swing", None, 100)]),
        ("deadlift 12, pushups 60", [("deadlift", None, 12), ("push-up", None, 60)]),
    ],
)
def test_a_number_behind_a_lift_far_above_what_goes_in_a_row_is_its_load(text, expected):
    assert [(one["movement"], one.get("load_kg"), one["reps"]) for one in acts(text)] == expected


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("benched 80 for 3", {"movement": "bench press", "load_kg": 80, "reps": 3}),
        ("squatted 100 kg for 5", {"movement": "back squat", "load_kg": 100, "reps": 5}),
        ("rowed 2k in 8:30", {"movement": "row", "distance_m": 2000, "seconds": 510}),
        ("planked for 2 min", {"movement": "plank", "seconds": 120}),
        ("plank a minute", {"movement": "plank", "seconds": 60}),
    ],
)
def test_what_was_done_once_is_what_one_can(text, expected):
    (told,) = acts(text, "ability")
    assert {name: told[name] for name in ("movement", *expected)} == expected


def test_what_was_swum_is_no_run():
    assert [one.get("movement") for one in acts("swam 400 m in 9 min", "ability")] in ([], [None])


def test_a_minute_is_told_only_where_something_is_done_for_it():
    assert [one["act"] for one in acts("wait a minute")] != ["has_minutes"]


def test_abilities_of_two_sentences_are_kept_where_they_are_no_one_telling():
    told = acts("deadlift 180x3, strict press 70. ran 5k in 21 before the knee", "ability")
    assert {"deadlift", "overhead press"} <= {one.get("movement") for one in told}


def test_a_sigh_before_a_number_names_no_movement():
    assert [one.get("movement") for one in acts("oh goodness 2 maybe", "ability")] in ([], [None])
    assert [one["movement"] for one in acts("DL 140, push ups 20")] == ["deadlift", "push-up"]


def test_what_was_done_before_is_nothing_that_one_can():
    found = acts("back squat before the twins 100 kg for 5, these days 45 kg for 5", "ability")
    assert [one["load_kg"] for one in found] == [45]


def test_what_is_told_twice_of_one_movement_is_asked_about():
    assert acts("back squat before the operation 100 kg for 5, these days 45 kg for 5", "ability") == []


@pytest.mark.parametrize("text", ["24, 19, 15", "24 19 15 so 58", "58 in total"])
def test_bare_numbers_of_sets_of_as_many_as_one_can_count_repetitions(text):
    (told,) = acts(text, "score", SETS_OF_MOST)
    assert told["score"] == {"reps": 58}


@pytest.mark.parametrize("text", ["did 6 and a half rounds", "seis rondas y media"])
def test_half_a_round_is_half_its_repetitions(text):
    (told,) = acts(text, "score", ROUNDS)
    assert told["score"] == {"rounds": 6, "reps": 15}


def test_nearly_so_many_rounds_are_asked_about():
    assert acts("nearly 7 rounds", "score", ROUNDS) == []


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("no messages between 8 in the morning and 4", ("08:00", "16:00")),
        ("no me escribas entre las nueve y las tres y media de la tarde", ("09:00", "15:30")),
        ("please nothing between 10pm and 6", ("22:00", "06:00")),
    ],
)
def test_half_of_a_day_that_is_not_told_makes_the_quiet_shorter(text, expected):
    (told,) = [one for one in acts(text) if one["act"] == "quiet"]
    assert (told["from"], told["to"]) == expected


def test_what_somebody_else_has_is_nothing_of_ones_own():
    assert "hurt" not in {one["act"] for one in acts("My colleague has a bad shoulder, poor woman", "pain")}
    assert [one["act"] for one in acts("my shoulder is bad", "pain")] in (["hurt"], ["spares"])


def test_a_distance_in_a_time_beside_what_goes_nowhere_is_a_run():
    found = acts("12 pull ups, dips 20, 5k in 22:30")
    told = [(one["movement"], one.get("reps"), one.get("distance_m"), one.get("seconds")) for one in found]
    assert told == [("pull-up", 12, None, None), ("dip", 20, None, None), ("run", None, 5000, 1350)]


# Each with the numbers of it that must be kept, or be given back as unread.
LISTS = [
    "back squat 150",
    "dead 190",
    "12 pullups",
    "bench 92.5 kg",
    "5k in 22:30",
    "press 60 for 3",
    "zorbits 77",
    "plank 90 sec",
]


@pytest.mark.parametrize("question", ["", "equipment"])
@pytest.mark.parametrize("told", [*combinations(LISTS, 2), *combinations(LISTS, 3)], ids=", ".join)
def test_each_number_of_a_list_is_kept_or_given_back(told, question):
    read = understand(Message(text=", ".join(told)), Context(question=question))
    kept = {
        float(value)
        for act in read.acts
        for value in document(act).values()
        if isinstance(value, int | float | Decimal)
    }
    unread = " ".join(read.unread)
    for one in told:
        number = re.findall(r"[0-9]+(?:[.:][0-9]+)?", one)[-1]
        value = 1350.0 if ":" in number else float(number)
        assert value in kept or number in unread, (one, read)
