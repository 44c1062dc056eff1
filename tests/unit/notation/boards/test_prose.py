"""Boards in sentences: what only leads on from one thing to the next is said of neither."""

import pytest

from core.movements.lookup import catalogue
from core.notation.boards.session import read_session
from core.notation.names.beside import without_filling


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


def test_a_name_at_the_head_of_a_paragraph_is_of_the_sets_below_and_not_of_the_warm_up_above():
    text = "Warm up\n5 min easy bike\n10 squats\n\nBench press\n5 x 5 @ 70%\n2 min rest"
    warm_up, bench = read(text).session.blocks
    assert (len(warm_up.lines), warm_up.rounds, warm_up.rest_s) == (2, None, None)
    assert (bench.rounds, bench.rest_s, bench.lines[0].movement) == (5, 120, "bench press")


def test_so_often_a_bracket_of_several_things_is_so_many_rounds():
    (block,) = read("5 x (3 pull-ups + 6 push-ups + 9 squats), rest 1 min").session.blocks
    assert (block.rounds, block.rest_s, [line.amount for line in block.lines]) == (5, 60, [3, 6, 9])


def test_a_number_of_stations_numbers_what_is_done_at_them():
    found = read("4 stations, 45 s each, 15 s change, 3 rounds\nswings\npush-ups\nstep-ups\nplank")
    assert not found.not_understood
    assert [line.station for line in found.session.blocks[0].lines] == [1, 2, 3, 4]


def test_a_phrase_is_found_behind_one_of_its_kind_that_says_nothing():
    (block,) = read(
        "Stations, 2 minutes each, 30 seconds between\n1. squats\n2. press ups\n3. rowing"
    ).session.blocks
    assert (block.format, block.work_s, block.rest_s) == ("intervals", 120, 30)


def test_a_rest_behind_several_timed_lines_is_that_of_the_round():
    (block,) = read("3 rounds\n30 s each: squats, push-ups, plank\n1 min rest").session.blocks
    assert (block.every_s, block.work_s, block.rest_s, block.rounds) == (30, None, 60, 3)
    assert [line.amount for line in block.lines] == [30, 30, 30]


def test_the_last_day_of_a_week_is_no_cool_down():
    blocks = read("Monday\nSquat 5x5\n\nWednesday\nBench 5x5\n\nFriday\nEasy 20 min bike").session.blocks
    assert [block.kind for block in blocks] == ["strength", "strength", "main"]


def test_what_one_finishes_with_is_none_of_the_sets_before():
    *_, sets, last = read("3 sets of 15 calf raises, and finish with a 2 minute plank.").session.blocks
    assert ([line.movement for line in sets.lines], last.format) == (["heel raise"], "hold")


def test_a_bare_stretch_at_the_end_is_done_like_any_line():
    found = read("AMRAP 10\n10 squats\n5 burpees\n\nCOOL DOWN\n5 min walk\nstretch")
    last = found.session.blocks[-1]
    assert (last.kind, [line.movement for line in last.lines], found.not_understood) == (
        "cool-down",
        ["stretch"],
        (),
    )
