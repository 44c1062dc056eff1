"""A change that names no line: how much of the only one, what a part is, what stands behind all of it."""

import pytest

from core.movements.lookup import catalogue
from core.notation.boards.session import read_session
from core.notation.edits.changes import changed

RUNS = "warm-up 10 min jog\n8 x 200 m, rest 90 s\ncool-down 5 min walk"


def after(board, message):
    told = changed(board, message, catalogue())
    assert told is not None
    assert (told.left, told.unclear) == ((), None)
    return told.text.splitlines()


@pytest.mark.parametrize(
    ("message", "line"),
    [
        ("make it 6 x 400", "6x400 m, rest 90 s"),
        ("make the intervals 5 x 600", "5x600 m, rest 90 s"),
        ("let's do 6 x 300 m", "6 x 300 m, rest 90 s"),
    ],
)
def test_intervals_become_as_many_of_another_length(message, line):
    assert line in after(RUNS, message)


@pytest.mark.parametrize(
    ("board", "message", "line"),
    [
        ("5 k easy run", "make it 8 k", "8 k easy run"),
        ("Long run\n10 km easy", "12 km instead", "12 km easy"),
        ("Sunday\n90 min easy ride", "make it 75 min", "75 min easy ride"),
        ("warm-up 2 km easy\n6 km tempo run\ncool-down 1 km easy", "make it 5 k", "5 k tempo run"),
    ],
)
def test_how_far_or_how_long_is_of_the_only_line_of_the_work(board, message, line):
    assert line in after(board, message)


def test_what_a_part_is_takes_the_place_of_what_it_was():
    assert "cool-down 5 min jog" in after(RUNS, "the cool-down is a jog, not a walk")
    assert "warm-up 10 min row" in after(RUNS, "the warm-up is a row")


@pytest.mark.parametrize(
    "message", ["2 min plank total", "make the plank 2 min total", "plank 2 min in total"]
)
def test_what_is_done_in_all_has_no_sets_any_more(message):
    assert "2 min plank (total)" in after("Squat 5 x 5\nplank 3 x 1 min", message)


@pytest.mark.parametrize(
    "message", ["add 2 min plank at the end", "finish with 2 min plank", "add at the end: 2 min plank"]
)
def test_the_end_is_a_part_of_its_own_behind_the_rounds_and_before_the_cool_down(message):
    board = "AMRAP 12\n10 push-ups\n12 squats\n\ncool-down\n5 min walk"
    session = read_session("\n".join(after(board, message)), catalogue()).session
    assert session is not None
    assert [(block.name, len(block.lines)) for block in session.blocks] == [
        (None, 2),
        ("Finisher", 1),
        (None, 1),
    ]


def test_the_end_of_what_is_done_once_is_its_last_line():
    assert after("For time\n50 squats\n40 sit-ups", "add 20 burpees at the end")[-1] == "20 burpees"


def test_a_finisher_that_says_no_clock_is_not_asked_for_one():
    read = read_session("AMRAP 12\n10 push-ups\n\nFinisher: 30 sit-ups", catalogue())
    assert read.not_understood == ()
