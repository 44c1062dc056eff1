"""How much, how long and how heavy, in words that coaches use beside the plain ones."""

import pytest

from core.movements.lookup import catalogue
from core.notation.boards.session import read_session
from core.notation.labels.labelling import examples
from core.notation.needles import may_match
from core.notation.phrases.shapes import PHRASES, possible
from core.sessions.values import Format


def blocks(text):
    return read_session(text, catalogue()).session.blocks


def line(text):
    (only,) = blocks(text)[0].lines
    return only


def test_whoever_squats_with_a_bar_at_seventy_means_a_share():
    """A coach's convention (common practice, no source); what is held in the hands is told in kilograms."""
    assert line("Back squat 4x4 @80").load_rule.percent == 80
    assert line("DB row 4x8 @ 27.5").loads_kg == (27.5,)
    assert line("Back squat 4x4 @80 kg").loads_kg == (80,)


SEXES = [
    "15 swings (girls 12kg boys 16)",
    "15 swings men 16 women 12",
    "15 swings, 12 kg the girls, 16 kg the boys",
]


@pytest.mark.parametrize("typed", SEXES)
def test_the_mens_load_stands_first_whoever_is_named_first(typed):
    assert line(f"AMRAP 12\n{typed}").loads_kg == (16, 12)


def test_the_same_bar_has_the_same_load():
    first, second = blocks("AMRAP 9\n8 power cleans 40/30\n8 front squats, same bar")[0].lines
    assert second.loads_kg == first.loads_kg == (40, 30)


STILL = [
    "8 goblet squats w/ 2 sec stop at the bottom",
    "8 goblet squats with a 2s pause",
    "8 goblet squats, hold 2 s",
]


@pytest.mark.parametrize("typed", STILL)
def test_a_moment_within_a_repetition_is_neither_its_amount_nor_a_rest(typed):
    (block,) = blocks(f"AMRAP 12\n{typed}\n5 burpees")
    assert (block.lines[0].amount, block.rest_s) == (8, None)
    assert "2" in block.lines[0].notes


SPELLED = [
    ("two hundred metres run", 200, "m"),
    ("a four hundred metre run", 400, "m"),
    ("fifty five burpees", 55, "reps"),
    ("one hundred and twenty rope skips", 120, "reps"),
]


@pytest.mark.parametrize(("typed", "amount", "unit"), SPELLED)
def test_large_numbers_are_read_in_words(typed, amount, unit):
    told = line(f"AMRAP 30\n{typed}")
    assert (told.amount, told.unit) == (amount, unit)


def test_of_a_range_of_rest_the_least_counts_and_the_range_is_kept():
    (block,) = blocks("Back squat 5x3 75%, 2-3 min rest")
    assert block.rest_s == 120
    assert "2-3 min rest" in block.notes


MOST = [
    "As many push ups as possible in 3 min",
    "3 min: see how many push-ups you can do",
    "max push-ups in 3 min",
]


@pytest.mark.parametrize("typed", MOST)
def test_as_many_as_can_be_is_the_most(typed):
    (block,) = blocks(typed)
    assert (block.format, block.minutes, block.lines[0].movement) == (Format.MAX_REPS, 3, "push-up")


HELD = ["Hold a plank for 60 seconds, 4 sets", "Plank: hold 1 min, 4 sets", "Plank 1 min x 4"]


@pytest.mark.parametrize("typed", HELD)
def test_a_hold_is_told_in_many_ways(typed):
    (block,) = blocks(typed)
    assert (block.format, block.rounds, block.lines[0].amount) == (Format.HOLD, 4, 60)


def test_a_distance_at_ones_ease_is_no_race():
    assert blocks("3k run, easy")[0].format == Format.QUALITY
    assert blocks("3k run")[0].format == Format.TIME_TRIAL


def test_the_best_of_several_tries_is_the_most_of_each():
    (block,) = blocks("Dead hang, best of 2")
    assert (block.format, block.rounds) == (Format.HOLD, 2)


def test_a_list_of_parts_is_no_circuit():
    told = blocks("A. Bench press 5x5 @ 75%\nB. 3 rounds: 10 push ups, 30 sec plank\nC. 10 min easy bike")
    assert [len(block.lines) for block in told] == [1, 2, 1]
    shared = blocks(
        "3 blocks of 5 min amrap, 2 min rest between\n1) 5 burpees, 5 squats\n2) 5 sit-ups, 5 lunges"
    )
    assert [(block.format, block.minutes) for block in shared] == [(Format.AMRAP, 5)] * 2
    assert len(blocks("3 rounds for time\n1) 10 squats\n2) 10 push-ups\n3) 10 burpees")) == 1


def test_what_is_done_then_behind_an_empty_row_is_a_part_of_its_own():
    first, second = blocks("3 rounds, not for time\ndead hang 30 sec\n40 m farmers carry\n\nthen walk 20 min")
    assert (len(first.lines), second.lines[0].movement) == (2, "run")


def test_a_heading_in_front_of_its_work_is_of_its_row():
    warm, main, cool = blocks("wu 10 min jog\n8 x 20 sec hill sprint, 2 min rest\ncd 10 min jog")
    assert (warm.kind, main.kind, cool.kind) == ("warm-up", "main", "cool-down")
    assert (main.format, main.rounds, main.rest_s) == (Format.INTERVALS, 8, 120)


def test_no_phrase_is_passed_over_for_want_of_its_words():
    for words, _ in examples():
        found = {phrase for phrase in PHRASES if phrase.pattern.search(words)}
        assert found <= set(possible(words)), words
        assert all(may_match(phrase.pattern, words) for phrase in found), words


@pytest.mark.parametrize(
    "words", ["Tuesday - Engine + legs", "hey all! tomorrow is a short one", "Friday: legs and lungs"]
)
def test_a_title_or_a_greeting_on_top_is_no_work_whatever_marks_stand_in_it(words):
    read = read_session(f"{words}\nAMRAP 12\n10 push-ups\n200 m run", catalogue())
    assert [len(block.lines) for block in read.session.blocks] == [2]
    assert not read.not_understood


def test_how_easy_a_run_is_stays_with_it():
    read = read_session("Warm up: 5 min easy jog\n\nAMRAP 8\n8 push-ups", catalogue())
    assert read.session.blocks[0].lines[0].notes == "easy"


@pytest.mark.parametrize("aim", ["Aim: under 8", "goal sub 8", "Under 8 min is good", "sub 8 min"])
def test_a_time_to_be_below_is_the_aim(aim):
    (block,) = read_session(f"For time: 50 burpees. {aim}", catalogue()).session.blocks
    assert (block.aim.of, block.aim.high) == ("score", 480)


def test_a_day_of_march_behind_other_words_is_not_marched():
    text = "LAST BOARD OF THE WINTER - Saturday 22 March\n\nFor time\n50 burpees"
    session = read_session(text, catalogue()).session
    assert [line.movement for line in session.every_line] == ["burpee"]
