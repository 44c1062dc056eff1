"""Several parts' scores in one message."""

import pytest

from core.movements.lookup import catalogue
from core.notation.chat import is_like_a_score
from core.notation.scores_of_parts import read_parts
from core.notation.session import read_session

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


@pytest.mark.parametrize(
    "words",
    [
        "6+3",
        "part 1: 7 rounds, 12 reps",
        "first 6+3, second was fun",
        "part 1: 6+3, part 3: 8:43",
        "part A 6+3, part A 8:43",
    ],
)
def test_one_score_or_a_part_that_is_not_there_is_not_several(words):
    assert told(words) == {}
