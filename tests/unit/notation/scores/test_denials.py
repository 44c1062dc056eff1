"""What is denied, and what only looks so beside a score."""

import pytest

from core.notation.scores.denials import denies


@pytest.mark.parametrize(
    "words",
    [
        "no i not lift 78, this is my weight body",
        "I didn't lift 78 kg",
        "i no lift 78",
        "Mats never did 78",
        "78 kg is wrong",
        "78 is not my score",
        "it's not 78",
        "no, 78 is what i weigh",
        "wrong, i weigh 78",
        "not 78",
    ],
)
def test_a_number_that_is_denied(words):
    assert denies(words) == frozenset({"78"})


@pytest.mark.parametrize(
    "words",
    [
        "sorry 7+10, not 7+12",
        "7+12, not bad",
        "didn't finish, 7+10",
        "not 9:42 but 9:24",
        "I didn't do the last round, 8:43",
        "didn't use 24 kg, used 16, 7+12",
        "i can't do 10 push-ups",
        "8:43 wasn't easy",
        "7+12 no pain",
        "did I not lift 78?",
        "she can front squat the pair of 15s",
    ],
)
def test_what_is_told_beside_a_score_denies_nothing(words):
    assert denies(words) is None
