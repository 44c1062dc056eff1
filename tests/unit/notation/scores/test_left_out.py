"""Whoever leaves a line or a round out did less than is written, in whatever words; and so many of all are so many."""

import pytest

from core.movements.lookup import catalogue
from core.notation.boards.session import read_session
from core.notation.scores import read_score

FIVE_ROUNDS = "5 rounds for time\n400 m run\n15 kettlebell swings @ 16/12 kg\n10 burpees"
INTERVALS = "5 x 400 m run, rest 2 min"


def read(text, board=FIVE_ROUNDS):
    session = read_session(board, catalogue()).session
    assert session is not None
    return read_score(text, session)


@pytest.mark.parametrize(
    "told",
    [
        "everything but the burpees", "apart from the last run", "didn't do the burpees", "missed out the last round",
        "one round less", "minus the last run", "ditched the swings", "except I didn't run",
    ],
)  # fmt: skip
def test_a_score_without_a_line_or_a_round_is_scaled(told):
    assert read(f"14:02, {told}").score.scaled


@pytest.mark.parametrize(
    "told", ["all done", "loved the burpees", "without stopping", "nothing left out", "skipped breakfast"]
)
def test_what_leaves_nothing_out_is_not(told):
    assert not read(f"14:02, {told}").score.scaled


@pytest.mark.parametrize(
    ("told", "rounds"), [("DNF, only 3 of 5", 3), ("DNF, did all but the last round", 4)]
)
def test_so_many_of_all_is_how_far_they_came(told, rounds):
    found = read(told)
    assert found.sure
    assert (found.score.rounds, found.score.capped) == (rounds, True)


@pytest.mark.parametrize(
    ("told", "rounds"), [("did all but the last", 4), ("all but two", 3), ("all five", 5)]
)
def test_of_intervals_those_that_were_left_out_do_not_count(told, rounds):
    assert read(told, INTERVALS).score.rounds == rounds


def test_rounds_minus_a_line_are_part_of_the_score():
    board = "AMRAP 15\n12 kettlebell swings @ 24/16 kg\n9 burpees\n200 m run"
    assert not read("6 rounds minus the run", board).score.scaled
