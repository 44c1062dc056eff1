"""Ladders on the minute without an end (common practice, no source): offered with one that can be read."""

import pytest

from core.movements.lookup import catalogue
from core.notation.boards.session import read_session

TEN = "EMOM 10: 1-2-3-4-5-6-7-8-9-10 burpees"


@pytest.mark.parametrize(
    ("typed", "offered"),
    [
        ("Death by 10 burpees", TEN),
        ("death by: burpees", TEN),
        ("1 burpee in minute 1, 2 in minute 2, 3 in minute 3, until you can't", TEN),
        ("1 burpee in minute 1, 2 burpees in minute 2, ... until you can't", TEN),
        ("Every minute: 1 burpee the first minute, 2 the second, and so on", TEN),
        ("EMOM: 3 burpees, add 2 every minute until minute 4", "EMOM 4: 3-5-7-9 burpees"),
        ("1 burpee in minute 1, 2 in minute 2, ... 6 in minute 6", "EMOM 6: 1-2-3-4-5-6 burpees"),
    ],
)
def test_a_ladder_without_an_end_is_offered_with_one(typed, offered):
    (open_end,) = read_session(typed, catalogue()).not_understood
    assert (open_end.text, open_end.guess) == (typed, offered)
    read = read_session(offered, catalogue())
    assert not read.not_understood
    (block,) = read.session.blocks
    assert (block.every_s, block.minutes) == (60, len(block.scheme))


@pytest.mark.parametrize(
    "typed",
    [
        "10 burpees in minute 1, 12 sit-ups in minute 2",
        "12 burpees in minute 1, 10 in minute 2",
        "death by nonsense",
        "EMOM 10: min 1: 1 burpee, min 2: 2 burpees",
    ],
)
def test_what_is_no_ladder_of_a_known_movement_is_offered_none(typed):
    assert not any(
        one.guess and "EMOM" in one.guess for one in read_session(typed, catalogue()).not_understood
    )


def test_a_ladder_may_be_told_in_front_of_its_name():
    (block,) = read_session("1-4 ladder: deadlifts 60kg + burpees", catalogue()).session.blocks
    assert block.scheme == (1, 2, 3, 4)


def test_the_age_of_those_it_is_for_is_no_time():
    (block, *_) = read_session("Over 60s: 3 x 8 sit to stands", catalogue()).session.blocks
    assert (block.minutes, block.rounds) == (None, 3)
