"""One side after the other: both together are the score."""

import pytest

from core.movements.lookup import catalogue
from core.notation.boards.session import read_session
from core.notation.scores import read_score
from core.sessions.values import Session


def session_of(board: str) -> Session:
    session = read_session(board, catalogue()).session
    assert session is not None
    return session


PLANK = session_of("Side plank, max hold each side")
BRIDGES = session_of("Max single-leg bridges in 2 minutes")


@pytest.mark.parametrize(
    ("words", "sets"),
    [
        ("L 48 R 41", (48, 41)),
        ("left: 1:10. right: 0:58.", (70, 58)),
        ("58 on the right and 63 on the left", (63, 58)),
        ("1.10 left, 0.58 right", (70, 58)),
        ("right side 44 s, left side 52 s", (52, 44)),
    ],
)
def test_the_sides_of_a_hold_are_added_and_kept_left_first(words, sets):
    read = read_score(words, PLANK)
    assert read.sure
    assert read.score is not None
    assert (read.score.sets, read.score.seconds) == (sets, sum(sets))


def test_repetitions_of_both_sides_are_added():
    read = read_score("r 19, l 22", BRIDGES)
    assert read.score is not None
    assert (read.score.reps, read.score.sets) == (41, (22, 19))


def test_a_side_that_only_hurts_is_no_score():
    read = read_score("41, with my left knee grumbling", BRIDGES)
    assert read.score is not None
    assert (read.score.reps, read.score.sets) == (41, ())
