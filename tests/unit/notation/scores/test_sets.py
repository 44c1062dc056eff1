"""Scores of sets, holds, intervals and parts, told as people tell them; and what is asked rather than guessed."""

import pytest

from core.movements.lookup import catalogue
from core.notation.boards.session import read_session
from core.notation.scores import read_score
from core.notation.scores.parts import read_parts


def session(text):
    found = read_session(text, catalogue()).session
    assert found is not None
    return found


LIFTED = [
    ("Bench 3x8", "8,8,7 @ 62.5", 62.5),
    ("Bench 5x3 @ 80%", "92.5 for 3 3 3 3 2", 92.5),
    ("Bench 6x4", "80kg 82.5 85 85 85 80", 85),
    ("Bench 1RM", "102 and a half went up. 105 stapled me", 102.5),
    ("Back squat 5x5", "5x5 done at 45kg, last week it was 42.5!", 45),
    ("Find your heaviest 3 push presses", "37,5 kg the 3", 37.5),
]


@pytest.mark.parametrize(("board", "words", "load"), LIFTED)
def test_of_sets_the_heaviest_that_went_counts_and_no_repetitions(board, words, load):
    read = read_score(words, session(board))
    assert (read.sure, read.score.value) == (True, load)


@pytest.mark.parametrize("words", ["8 8 7", "12, 12, 10"])
def test_repetitions_of_every_set_tell_no_load(words):
    read = read_score(words, session("Goblet squat 3 x 10-12, 14 kg"))
    assert (read.sure, read.score.load_kg, read.score.unit, len(read.score.sets)) == (True, None, "reps", 3)


@pytest.mark.parametrize("words", ["8", "8 8"])
def test_repetitions_of_some_sets_are_no_score(words):
    assert not read_score(words, session("Goblet squat 3 x 10-12, 14 kg")).sure


ADDED_UP = [
    ("Wall sit 3 x max, 1 min rest", "1 min 10, 58 sec, 50 sec", 178),
    ("Dead hang 3 x max", "48s. 41s. 37s", 126),
    ("L-sit 5x10 s", "10 10 9 8 8", 45),
    ("Hollow hold 5 x 20 s", "did em all", 100),
    ("Chin ups 3 sets to failure", "9 7 6", 22),
    ("4 x 500m row, 3 min rest", "2.08 2.10 2.15 2.09", 522),
]


@pytest.mark.parametrize(("board", "words", "value"), ADDED_UP)
def test_holds_most_repetitions_and_intervals_are_added_up(board, words, value):
    read = read_score(words, session(board))
    assert (read.sure, read.score.value) == (True, value)


TIMES = [("17.42", 1062), ("1.52,3", 112.3), ("14 flat", 840), ("11.5 min", 690), ("two minutes twelve", 132)]


@pytest.mark.parametrize(("words", "seconds"), TIMES)
def test_times_are_read_without_a_colon(words, seconds):
    read = read_score(words, session("Row 500 m for time"))
    assert (read.sure, read.score.seconds) == (True, seconds)


SCALED = [
    ("Goblet squat 4x6, 24 kg", "did it with 20 kg"),
    ("Ruck 4 km with 10 kg, for time", "46 mins. only had 8 kg worth of books"),
    ("AMRAP 12: 4 burpees, 8 sit-ups", "7+9 (burpees became step-backs without jump)"),
]


@pytest.mark.parametrize(("board", "words"), SCALED)
def test_less_than_is_written_is_scaled(board, words):
    assert read_score(words, session(board)).score.scaled


NOT_SURE = [
    ("40/20, 4 rounds\njumping jacks\nreverse lunges", "All four rounds completed."),
    ("10 x 100 m sprint", "6 of them then I called it"),
    ("Find your heaviest 3 push presses", "squat 3 @ 150"),
    ("AMRAP 12: 4 burpees, 8 sit-ups", "Lost count somewhere after 5"),
    ("2000 m row for time", "only goes to 1500, so 1500 in 6:02"),
    ("12 min run, how far", "7 laps"),
]


@pytest.mark.parametrize(("board", "words"), NOT_SURE)
def test_what_may_be_something_else_is_asked(board, words):
    read = read_score(words, session(board))
    assert not read.sure
    assert read.ask


PARTS = [
    ("press 3x5\ndips 3 x max", "press 50 all fives, dips 15 11 9", [50, 35]),
    ("AMRAP 6\n6 deadlifts\n6 burpees\nrest 3\nAMRAP 6\n6 cleans\n6 sit-ups", "4+2 and 3+9", [4.167, 3.75]),
    ("A) Back squat 5 x 3\nB) AMRAP 8\n8 deadlifts 60/40\n8 box jumps", "squat 70kg then 5+3", [70, 5.188]),
    ("Max push-ups\nMax pull-ups", "41 push-ups and 9 pull-ups", [41, 9]),
]


@pytest.mark.parametrize(("board", "words", "values"), PARTS)
def test_parts_may_be_told_by_what_is_done_in_them_or_in_their_order(board, words, values):
    assert [one.read.score.value for one in read_parts(words, session(board))] == values


LOADS_OF_EACH = [
    ("Back squat 5 x 3", "80 80 82.5 82.5 85", (80, 80, 82.5, 82.5, 85)),
    ("Deadlift 4 x 5", "90 kg, all 4 sets", (90, 90, 90, 90)),
    ("Dumbbell press 3 x 8", "14 in each hand, all sets", (14, 14, 14)),
    ("Bench press 3 x 8", "8,8,7 @ 62.5", (8, 8, 7)),
]


@pytest.mark.parametrize(("board", "words", "sets"), LOADS_OF_EACH)
def test_the_loads_of_each_set_are_kept_where_no_repetitions_are_told(board, words, sets):
    read = read_score(words, session(board))
    assert read.sure
    assert read.score is not None
    assert read.score.sets == sets


def test_a_time_that_its_rounds_add_up_to_is_kept_with_them():
    read = read_score(
        "rounds 4:05 4:12 4:20 total 12:37", session("3 rounds for time\n400 m run\n12 burpees")
    )
    assert read.sure
    assert read.score is not None
    assert (read.score.seconds, read.score.sets) == (757, (245, 252, 260))


def test_the_unit_behind_a_list_is_that_of_all_of_it():
    read = read_score("97 99 101 104 s", session("4 x 400 m run, rest 2 min"))
    assert read.score is not None
    assert read.score.sets == (97, 99, 101, 104)


@pytest.mark.parametrize("words", ["60-65-70-72.5(f)", "65, 70, 72.5 no", "70, then 72.5 was a no"])
def test_a_load_with_a_mark_that_it_failed_is_left_out(words):
    read = read_score(words, session("Clean, build to a heavy single"))
    assert read.score is not None
    assert read.score.load_kg == 70


def test_the_lowest_of_several_is_read_where_it_counts():
    read = read_score("12 was the lowest", session("8 x 20 s air squats, 10 s rest\nScore: lowest"))
    assert (read.sure, read.score.value if read.score else None) == (True, 12)


@pytest.mark.parametrize(
    ("words", "told"),
    [
        ("finished 6, got 4 squats into the 7th", "6 rounds + 12"),
        ("was 5 burpees into my 7th", "6 rounds + 5"),
        ("got into the 7th", "6 rounds"),
    ],
)
def test_the_round_that_was_begun_needs_no_word_for_a_round(words, told):
    read = read_score(words, session("AMRAP 10\n8 burpees\n10 air squats\n12 sit-ups"))
    assert read.sure
    assert read.score is not None
    assert read.score.in_words() == told
