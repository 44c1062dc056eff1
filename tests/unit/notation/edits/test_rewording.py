"""What couldn't be read is put in other words by the coach."""

import pytest

from core.movements.lookup import catalogue
from core.notation.edits.editing import edited
from core.notation.edits.wordings import read_edits

BOARD = "4 rounds for time\n8 dock pulls a side @ 16/10 kg\n200 m run"


def changed(words, text=BOARD):
    done = (edited(text, edit, catalogue()) for edit in read_edits(words))
    return next((one for one in done if one), None)


@pytest.mark.parametrize(
    "words",
    [
        "swap the dock pulls for single-arm rows",
        "dock pulls should be single-arm rows",
        "change Dock Pulls to single-arm rows",
        "single-arm rows instead of dock pulls",
        "no, I meant single-arm rows, not dock pulls",
    ],
)
def test_another_name_takes_its_place_in_the_line(words):
    assert changed(words) == BOARD.replace("dock pulls", "single-arm rows")


def test_a_whole_line_takes_the_place_of_the_line():
    assert changed("swap the dock pulls for 10 ring rows") == BOARD.replace(
        "8 dock pulls a side @ 16/10 kg", "10 ring rows"
    )


def test_it_may_be_left_out():
    assert changed("drop the dock pulls") == "4 rounds for time\n200 m run"


@pytest.mark.parametrize("words", ["swap the dock pulls for quay pulls", "swap the pier pulls for rows"])
def test_nothing_changes_where_nothing_gets_clearer(words):
    assert changed(words) is None


def test_what_stands_in_two_unread_lines_is_not_guessed():
    twice = f"{BOARD}\n5 dock pulls"
    assert changed("swap the dock pulls for single-arm rows", twice) is None
