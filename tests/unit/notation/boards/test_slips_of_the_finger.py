"""Numbers that no coach means are shown at their place and kept out of the block."""

import pytest

from core.movements.lookup import catalogue
from core.notation.boards.session import read_session
from core.sessions.values import MOST_BLOCKS, MOST_LINES
from core.understanding.things import read_things


def read(text):
    return read_session(text, catalogue())


@pytest.mark.parametrize(
    "line",
    [
        "0 ring dips",
        "0 m run",
        "0/0 cal row",
        "99999999 push-ups",
        "10 goblet squats @ 0 kg",
        "10 goblet squats @ 99999 kg",
        "0 x 10 push-ups",
    ],
)
def test_a_line_that_can_not_be_meant_is_shown_and_left_out(line):
    found = read(f"AMRAP 12\n{line}\n10 sit-ups")

    assert [one.line for one in found.not_understood] == [2]
    assert [one.movement for one in found.session.blocks[0].lines] == ["sit-up"]


@pytest.mark.parametrize(
    "head", ["AMRAP 0", "EMOM 0", "0 rounds for time", "every 0:00 for 0 min", "AMRAP 99999"]
)
def test_a_length_that_can_not_be_meant_is_shown(head):
    found = read(f"{head}\n10 push-ups")

    assert {one.line for one in found.not_understood} == {1}
    assert found.session.blocks[0].minutes is None


def test_more_than_a_session_holds_is_shown():
    found = read("\n\n".join(f"AMRAP {n}\n10 push-ups\n5 sit-ups" for n in range(1, 90)))

    assert found.not_understood
    assert len(found.session.blocks) <= MOST_BLOCKS
    assert sum(len(block.lines) for block in found.session.blocks) <= MOST_LINES


def test_a_step_that_no_thing_has_is_asked_about():
    read_it = read_things("adjustable dumbbell 1-500 kg in 0.00000001 kg steps")

    assert read_it.equipment is None
    assert read_it.not_understood
