"""A number that nothing accounts for is asked about."""

import pytest

from core.movements.lookup import catalogue
from core.notation.boards.session import read_session
from core.notation.scores import read_score

ROUNDS = "AMRAP 12\n5 pull-ups\n10 push-ups\n15 squats"
SETS = "3 sets of max pull-ups, rest 2 min"
PARTS = "A) 500 m row for time\nB) AMRAP 10: 6 pull-ups, 9 push-ups"

ASKED = [
    (ROUNDS, "7 rounds, my sister got 31"),
    (SETS, "12, 9"),
    (PARTS, "45, 7 rounds + 3"),
]
SURE = [
    (ROUNDS, "7 rounds + 12 in 12 min"),
    (ROUNDS, "7 + 5 + 3"),
    (ROUNDS, "two reps short of 9 rounds"),
    (SETS, "12, 9, 8"),
    (SETS, "12, 9 and stopped there"),
    (SETS, "12, 9, 8 makes 29"),
]


def read(board, words):
    session = read_session(board, catalogue()).session
    assert session is not None
    return read_score(words, session)


@pytest.mark.parametrize(("board", "words"), ASKED, ids=[words for _, words in ASKED])
def test_a_number_too_many_or_too_few_is_asked_about(board, words):
    assert not read(board, words).sure


@pytest.mark.parametrize(("board", "words"), SURE, ids=[words for _, words in SURE])
def test_what_adds_up_is_sure(board, words):
    assert read(board, words).sure
