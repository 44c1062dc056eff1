"""What a coach takes back while typing is no part of the session, and is shown at its place."""

import pytest

from core.movements.lookup import catalogue
from core.notation.boards.repairs import mended
from core.notation.boards.session import read_session
from core.notation.text import plain_row

REPAIRS = [
    ("8 wall push-ups... no, chair squats", "8 chair squats"),
    ("A1 floor—sorry, bench press 8-10", "A1 , bench press 8-10"),
    ("5 rounds, make that 4 rounds of 10 burpees", "4 rounds of 10 burpees"),
    ("towel pull-ups? lol no", ""),
    ("max box jumps in what is left... NO scrap that, rest", "rest"),
    ("200 m run & 12 get-ups... joking. 200 m run & 12 swings", "200 m run & 12 swings"),
    ("plank... no we have no mats. Wall sit 3 x 40 s", "Wall sit 3 x 40 s"),
]


@pytest.mark.parametrize(("typed", "left"), REPAIRS)
def test_what_is_taken_back_is_gone_and_what_is_meant_stays(typed, left):
    row, stretches = mended(plain_row(typed))
    assert " ".join(row.text.split()) == left
    assert len(stretches) == 1


KEPT = [
    "15 squats - no weight",
    "3 attempts, no more",
    "3 rounds... no rest between",
    "Any questions? Ask me",
    "no jumping",
]


@pytest.mark.parametrize("typed", KEPT)
def test_what_there_isnt_takes_nothing_back(typed):
    assert mended(plain_row(typed)) == (plain_row(typed), [])


def test_what_was_taken_back_is_shown_in_the_coachs_own_words():
    read = read_session("AMRAP 12\n5 burpees\n8 wall push-ups... no, chair squats", catalogue())
    assert [line.movement for line in read.session.blocks[0].lines] == ["burpee", "air squat"]
    assert [(one.line, one.text, one.looks_like) for one in read.not_understood] == [
        (3, "wall push-ups... no", "note")
    ]
