"""A part keeps the name that its coach gave it, in the read-back and when it is spoken of."""

import pytest

from core.movements.lookup import catalogue
from core.notation.boards.session import read_session
from core.notation.boards.writing import write_session
from core.notation.edits.changes import changed

BOARD = "Warm-up\n5 min row\n\nConditioning\nAMRAP 10\n10 swings\n5 burpees\n\nFINISHER\n100 sit-ups for time"


def blocks(text):
    return read_session(text, catalogue()).session.blocks


def test_what_says_more_than_the_kind_is_the_part_s_name():
    assert [block.name for block in blocks(BOARD)] == [None, "Conditioning", "Finisher"]


@pytest.mark.parametrize(
    "heading", ["Warm-up", "WU", "Main", "Main part 2", "Strength", "C) Cool down", "Workout", "con"]
)
def test_what_says_only_the_kind_is_no_name(heading):
    assert blocks(f"{heading}:\n3 rounds for time\n10 burpees")[0].name is None


def test_it_stands_above_the_part_and_is_read_again():
    session = read_session(BOARD, catalogue()).session
    assert session is not None
    written = write_session(session)
    assert "\nFinisher\nFor time\n100 sit-ups" in written
    assert [block.name for block in blocks(written)] == [block.name for block in session.blocks]


def test_a_part_is_called_by_its_name():
    found = changed(BOARD, "the finisher is 2 rounds", catalogue())
    assert [block.rounds for block in blocks(found.text)] == [None, None, 2]
