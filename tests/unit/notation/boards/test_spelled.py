"""Numbers that are spelled are numbers, and rows that only count are a list; what is shown stays as it was typed."""

import pytest

from core.movements.lookup import catalogue
from core.notation.boards.session import read_session
from core.notation.boards.spelled import in_digits, with_lists
from core.notation.text import plain_row, rows

SPELLED = [
    ("five sets of three repetitions", "5 sets of 3 repetitions"),
    ("rest three minutes", "rest 3 minutes"),
    ("half a mile run", "0.5 mile run"),
    ("a dozen squats", "12 squats"),
    ("one round of it", "1 round of it"),
    ("5 sets of as many as you can", "5 sets of max"),
]


@pytest.mark.parametrize(("typed", "read"), SPELLED)
def test_spelled_numbers_become_digits(typed, read):
    assert in_digits(plain_row(typed)).text == read


@pytest.mark.parametrize("typed", ["one-arm row", "two arm swings", "both sides", "ten-up", "someone ran"])
def test_what_is_no_count_stays(typed):
    assert in_digits(plain_row(typed)).text == typed


def test_a_line_is_shown_as_it_was_typed():
    read = read_session("Four rounds for time\ntwelve squats\nten blorps", catalogue())
    (block,) = read.session.blocks
    assert (block.rounds, block.lines[0].amount, block.lines[0].written) == (4, 12, "twelve squats")
    assert [(one.line, one.column, one.text) for one in read.not_understood] == [(3, 5, "blorps")]


def test_three_rows_that_count_are_a_list():
    told = with_lists(rows("1 skipping\n2 step-ups\n3 plank\nrest"))
    assert [row.text for row in told] == ["1) skipping", "2) step-ups", "3) plank", "rest"]
    told = with_lists(rows("1 burpee\n2 squats"))
    assert [row.text for row in told] == ["1 burpee", "2 squats"]


def test_a_time_in_front_of_what_is_counted_goes_round():
    (block,) = read_session("15 min: 5 pull-ups, 10 push-ups, 15 squats", catalogue()).session.blocks
    assert (block.format, block.minutes) == ("amrap", 15)


def test_a_machine_by_time_in_sets_is_intervals():
    (block,) = read_session("Bike 3 x 10 min, 3 min easy between", catalogue()).session.blocks
    assert (block.format, block.rounds, block.work_s, block.rest_s, block.every_s) == (
        "intervals",
        3,
        600,
        180,
        780,
    )


def test_bells_are_called_by_what_they_weigh():
    (block,) = read_session("DB bench press 3x10 22.5s", catalogue()).session.blocks
    (line,) = block.lines
    assert (line.count, [float(load) for load in line.loads_kg]) == (2, [22.5])


def test_a_time_in_brackets_behind_sets_is_their_rest():
    blocks = read_session("press 5x5 (2 min)\ndeadlift 3x5 (3 min)", catalogue()).session.blocks
    assert [(block.rounds, block.rest_s) for block in blocks] == [(5, 120), (3, 180)]


def test_sets_without_a_clock_keep_how_many_they_are():
    (block,) = read_session("3 sets not for time:\n8 pull-ups\n15 face pulls", catalogue()).session.blocks
    assert (block.format, block.rounds) == ("quality", 3)
