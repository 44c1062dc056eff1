"""Several parts' scores in one message."""

from itertools import permutations, product

import pytest

from core.movements.lookup import catalogue
from core.notation.boards.session import read_session
from core.notation.scores import read_score
from core.notation.scores.parts import read_parts
from core.notation.talk.chat import is_like_a_score

_READ = read_session(
    "Part A: AMRAP 8\n10 push-ups\n10 air squats\n\nPart B: for time, cap 10 min\n50 sit-ups\n400 m run",
    catalogue(),
).session
assert _READ is not None
TWO = _READ


def told(words: str) -> dict[int, str]:
    return {one.read.block: one.read.score.in_words() for one in read_parts(words, TWO)}


@pytest.mark.parametrize(
    "words",
    [
        "6+3 first part, 8:43 second",
        "6+3 for the first, 8:43 for the last one",
        "first: 6+3 second: 8:43",
        "did part 2 in 8:43 and part 1: 6+3",
        "part A was 6 rounds and 3, part B was 8:43",
        "6+3 and then 8:43 in the second",
        "a) 6+3\nb) 8:43",
    ],
)
def test_each_score_goes_to_the_part_it_is_told_of(words):
    assert is_like_a_score(words)
    assert told(words) == {0: "6 rounds + 3", 1: "8:43"}


_WITH_SETS = read_session(
    "A) Strength, 5 sets with 2 min rest\n6 deadlifts @ 60/40 kg\n\nB) 4 rounds for time\n10 push-ups",
    catalogue(),
).session
assert _WITH_SETS is not None
SETS = _WITH_SETS


@pytest.mark.parametrize(
    ("words", "scores"),
    [
        ("A: 5x6 @ 32 kg. B: 13:10", {0: "32 kg", 1: "13:10"}),
        ("my A was 5x6 with 32, B took 14:20", {0: "32 kg", 1: "14:20"}),
        ("part 1 all sets with 32 kg, part 2 took 14:20", {0: "32 kg", 1: "14:20"}),
        ("A 5 sets done, B 12:31", {1: "12:31"}),
        ("A done, B 14:20", {1: "14:20"}),
    ],
)
def test_parts_may_be_named_by_a_letter_alone_and_sets_be_told_with_their_load(words, scores):
    assert is_like_a_score(words)
    assert {one.read.block: one.read.score.in_words() for one in read_parts(words, SETS)} == scores


def test_the_part_behind_a_letter_is_meant():
    assert is_like_a_score("B 14:20")
    assert read_score("B 14:20", SETS).block == 1


WARMED_UP = (
    "Warm-up: 5 min easy row, 10 air squats\n\nStrength: goblet squats 4 x 8 @ 16 kg\n\n"
    "Main: AMRAP 10: 10 push-ups, 10 swings 16 kg"
)


def test_a_warm_up_is_no_part_that_people_count():
    session = read_session(WARMED_UP, catalogue()).session
    assert session is not None
    one, two = read_score("part 1: 16kg all sets", session), read_score("part 2: 5+3", session)
    assert (one.sure, one.block, two.sure, two.block) == (True, 1, True, 2)
    both = read_parts("part one 16 kg, part two 5+3", session)
    assert [part.read.block for part in both] == [1, 2]


def test_where_two_parts_are_named_with_a_number_each_it_is_asked():
    session = read_session("3 x 10 goblet squats 16 kg\n3 x 12 rows 12 kg", catalogue()).session
    assert session is not None
    assert read_parts("squats 16, rows 10", session) == ()
    assert not read_score("squats 16, rows 10", session).sure


_LIFTS = read_session(
    "A) Front squat, heavy single\nB) For time:\n40 burpees\n40 sit-ups", catalogue()
).session
assert _LIFTS is not None
LIFTS = _LIFTS


@pytest.mark.parametrize(
    "words",
    [
        "fs 60, b 7:15",
        "frnt sq 60. burpees and sit-ups 7:15",
        "60 on the front squat / B: 7:15",
        "B 7:15. squat 60",
        "item A 60 kg, item B 7:15",
        "first bit 60 kg, second bit 7:15",
        "front squat 60, then 7:15 on the burpees",
    ],
)
def test_parts_may_be_named_in_short_and_by_letters_in_one_message(words):
    assert {one.read.block: one.read.score.in_words() for one in read_parts(words, LIFTS)} == {
        0: "60 kg",
        1: "7:15",
    }


def test_what_is_told_of_a_part_again_belongs_to_it():
    told = {one.read.block: one.words for one in read_parts("squat 60, burpees 7:15, squat felt easy", LIFTS)}
    assert "easy" in told[0]


def test_first_is_when_it_was_done_where_another_part_is_named():
    read = read_score("did the burpees first: 7:15", LIFTS)
    assert not read.sure or read.block == 1


def test_a_number_that_is_of_none_of_the_parts_is_asked_about():
    words = "squat 60. B 7:15, edit B 7:05"
    assert not read_parts(words, LIFTS)
    assert not read_score(words, LIFTS).sure


_PARTS = {
    "sets": ("5 x 5 deadlifts @ 32/24 kg, rest 2 min", ("60 kg", "35 lb", "35lb")),
    "rounds": ("AMRAP 8\n10 push-ups\n10 air squats", ("6+3", "6 rounds + 3")),
    "for time": ("4 rounds for time, cap 20 min\n10 sit-ups\n100 m run", ("12:10", "12 min 10")),
}


@pytest.mark.parametrize("kinds", [*permutations(_PARTS, 2)])
@pytest.mark.parametrize("between", [" and ", ", ", " & ", "\n", "; "])
@pytest.mark.parametrize("turned", [False, True])
def test_what_can_be_of_one_part_alone_is_taken_in_any_order(kinds, between, turned):
    session = read_session("\n\n".join(_PARTS[one][0] for one in kinds), catalogue()).session
    assert session is not None
    for told in product(*(_PARTS[one][1] for one in kinds)):
        words = between.join(reversed(told) if turned else told)
        found = read_parts(words, session)
        assert {one.read.block: one.words for one in found} == dict(enumerate(told)), words
