"""How long all rest, or who does what is named, told in words of a session that is there."""

import pytest

from core.movements.lookup import catalogue
from core.notation.boards.session import read_session
from core.notation.edits.changes import changed
from core.notation.edits.resting import read_rest

LIFTS = "Warm-up: 5 min walk\nBack squat 5 x 5 @ 60 kg, rest 2 min\nBench 4 x 8 @ 40 kg, 90 s rest\nPlank 3 x 45 s"
RUNS = "warm-up 10 min jog\n8 x 200 m run, rest 90 s\ncool-down 5 min walk"
ROUNDS = "4 rounds for time\n10 push-ups\n200 m run\nrest 1 min"


def rests(board, message):
    told = changed(board, message, catalogue())
    assert told is not None
    assert (told.left, told.unclear) == ((), None)
    session = read_session(told.text, catalogue()).session
    assert session is not None
    return [block.rest_s for block in session.blocks]


@pytest.mark.parametrize(
    "message", ["rest 3 min", "3 min rest please", "make the rest 3 min", "rest 3 min between sets"]
)
def test_a_rest_of_nothing_that_is_named_is_of_all_sets_and_of_no_warm_up(message):
    assert rests(LIFTS, message) == [None, 180, 180, 180]
    assert rests(RUNS, message) == [None, 180, None]
    assert rests(ROUNDS, message) == [180]


@pytest.mark.parametrize(
    "message",
    [
        "rest 3 min on the squats",
        "squats: rest 3 min",
        "3 min rest for the squats",
        "rest after the squats 3 min",
    ],
)
def test_a_rest_of_what_is_named_leaves_the_others(message):
    assert rests(LIFTS, message) == [None, 180, 90, None]


def test_a_rest_as_long_as_the_work_stays_in_the_coach_s_words():
    told = changed(RUNS, "rest 1:1", catalogue())
    assert told is not None
    assert "8 x 200 m run, rest 1:1" in told.text.splitlines()


def test_only_the_time_is_new_where_a_rest_is_told_already():
    told = changed(LIFTS, "rest 2 min on the bench", catalogue())
    assert told is not None
    assert "Bench 4 x 8 @ 40 kg, 2 min rest" in told.text.splitlines()


@pytest.mark.parametrize(
    "message", ["rest day tomorrow", "the rest is fine", "did you rest 3 min?", "Ilse rests 3 weeks"]
)
def test_other_words_with_a_rest_in_them_tell_none(message):
    assert read_rest(message) is None


def test_a_rest_may_be_one_of_several_changes():
    assert rests(RUNS, "make it 6 x 300 m, rest 2 min") == [None, 120, None]


def test_a_rest_of_something_that_is_not_there_is_nobody_s():
    told = changed(RUNS, "rest 3 min on the deadlifts", catalogue())
    assert told is not None
    assert (told.text, told.left) == (RUNS, ("rest 3 min on the deadlifts",))
