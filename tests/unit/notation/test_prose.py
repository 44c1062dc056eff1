"""Boards in sentences: what only leads on from one thing to the next is said of neither."""

import pytest

from core.movements.lookup import catalogue
from core.notation.beside import without_filling
from core.notation.session import read_session


def read(text):
    return read_session(text, catalogue())


@pytest.mark.parametrize(
    ("words", "said"),
    [
        ("then you do", ""),
        ("after that, of", ""),
        ("start with, of easy", "easy"),
        ("with a band", "with a band"),
        ("after each round", "after each round"),
        ("for each side, then", "for each side"),
    ],
)
def test_words_that_only_lead_on_say_nothing(words, said):
    assert without_filling(words) == said


def test_a_sentence_of_several_things_is_as_many_lines_without_notes():
    (block,) = read(
        "Then you do ten squats and after that a minute of plank, three times round."
    ).session.blocks
    assert [(line.movement, line.amount, line.notes) for line in block.lines] == [
        ("air squat", 10, None),
        ("plank", 60, None),
    ]
    assert block.rounds == 3


def test_for_time_and_every_minute_of_one_work_is_asked_about():
    assert [one.text for one in read("100 burpees for time, every minute 5 squats").not_understood] == [
        "for time"
    ]


def test_a_scheme_behind_practice_is_the_main_part():
    practice, main = read(
        "Skill: handstand practice 10 min\nThen 21-15-9 thrusters (40/30) and pull-ups"
    ).session.blocks
    assert (practice.kind, main.kind, main.format) == ("skill", "main", "for_time")


def test_a_complex_goes_by_its_name_and_keeps_how_it_is_done():
    found = read("Barbell complex: 1 power clean + 1 front squat + 1 push jerk\n5 sets, add weight")
    (block,) = found.session.blocks
    assert not found.not_understood
    assert (block.format, block.rounds, len(block.lines)) == ("sets", 5, 3)
    assert block.notes == "Barbell complex; add weight"


def test_a_time_in_front_of_sets_is_no_rest_between_them():
    found = read("Warm up: 5 min easy, 2x10 leg swings each side")
    assert found.session.blocks[0].rest_s is None
    assert [one.text for one in found.not_understood] == ["5 min easy"]
