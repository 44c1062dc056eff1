"""A minute hard and a minute easy of one thing."""

from tests.unit.scaling.people import athlete, lines

TEXT = "6 rounds for time\n2 min row, hard\n1 min row, easy"


def test_whoever_does_not_row_does_one_thing_hard_and_easy():
    hard, easy = lines(TEXT, athlete(owns=("bike",)))
    assert hard.movement == easy.movement == "ride"
    assert (hard.notes, easy.notes) == ("hard", "easy")


def test_hard_is_not_said_to_whoever_goes_easy():
    hard, easy = lines(TEXT, athlete(limits=("heart",)))
    assert hard.movement == easy.movement
    assert hard.notes is None
