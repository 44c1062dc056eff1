"""A ladder may be told by its first rungs, or by how far it goes."""

import pytest

from core.movements.lookup import catalogue
from core.notation.boards.session import read_session
from tests.unit.notation.boards.test_board_parts import read

LADDERS = [
    (
        "12 min amrap\n2 cleans 2 squats\n4 cleans 4 squats\n6 cleans 6 squats",
        (2, 4, 6),
        ["clean", "air squat"],
    ),
    ("EMOM 12\nmin 1: 1 burpee\nmin 2: 2 burpees\nmin 3: 3 burpees", (1, 2, 3), ["burpee"]),
    (
        "12 min amrap\n1 swing, 1 push-up\n2 swings, 2 push-ups\n3 swings, 3 push-ups",
        (1, 2, 3),
        ["swing", "push-up"],
    ),
]


@pytest.mark.parametrize(("text", "scheme", "movements"), LADDERS)
def test_a_ladder_may_be_told_by_its_first_rungs(text, scheme, movements):
    (block,) = read(text)
    assert (block.scheme, [line.movement for line in block.lines]) == (scheme, movements)
    assert {line.amount for line in block.lines} == {None}


UNEVEN = [
    "for time\n10 squats\n5 push-ups\n20 squats\n5 push-ups",
    "for time\n400 m run\n10 squats\n400 m run\n20 squats",
]


@pytest.mark.parametrize("text", UNEVEN)
def test_what_does_not_climb_in_even_steps_is_no_ladder(text):
    (block,) = read(text)
    assert (block.scheme, len(block.lines)) == ((), 4)


@pytest.mark.parametrize("text", ["Ladder 1-10\nburpees\nsquats", "Ladder 1 to 10: burpees, squats"])
def test_how_far_a_ladder_goes_is_its_scheme(text):
    assert read(text)[0].scheme == tuple(range(1, 11))


@pytest.mark.parametrize("between", [". ", "\n"])
def test_how_many_of_each_there_are_round_by_round_is_a_ladder(between):
    text = between.join(["Round 1: 10 push-ups, 10 squats", "Round 2: 15 each", "Round 3: 20 each"])
    found = read_session(text, catalogue())
    (block,) = found.session.blocks
    assert (block.scheme, len(block.lines), found.not_understood) == ((10, 15, 20), 2, ())


def test_how_many_of_each_is_shown_where_every_line_has_told_its_own():
    found = read_session("Round 1: 10 push-ups, 12 squats\nRound 2: 15 each", catalogue())
    assert "Round 2: 15 each" in [one.text for one in found.not_understood]
