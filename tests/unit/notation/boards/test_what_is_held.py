"""Loads that stand beside what they are held in, above their lines or behind them: none of them is lost."""

from decimal import Decimal

import pytest

from core.movements.lookup import catalogue
from core.notation.boards.session import read_session


def read(text):
    return read_session(text, catalogue())


def first_line(text):
    found = read(text)
    assert found.session is not None
    return found.session.blocks[0].lines[0]


@pytest.mark.parametrize(
    ("row", "loads", "count"),
    [
        ("100 thrusters, empty bar 20/15", (20, 15), None),
        ("20 step ups on the bottom stair, DBs in hand 2x12.5/2x7.5", (12.5, 7.5), 2),
        ("10 front squats, 40/30 on the bar", (40, 30), None),
        ("10 push presses, pair of dumbbells 15/10", (15, 10), 2),
        ("16 db front rack lunges (2 dbs) 15/10", (15, 10), 2),
        ("12 thrusters with two of 10 kg", (10,), 2),
    ],
)
def test_what_is_held_behind_a_line_is_its_load(row, loads, count):
    line = first_line(f"For time:\n{row}\n10 burpees")
    assert line.loads_kg == tuple(Decimal(str(load)) for load in loads)
    assert line.count == count


def test_what_is_held_above_the_lines_is_of_all_of_them():
    found = read("DB complex, 5 rounds, 2 DB 15/10, 2' rest\n6 RDL + 6 bent row + 6 push press")
    assert found.session is not None
    (block,) = found.session.blocks
    assert {(line.loads_kg, line.count, line.implement) for line in block.lines} == {
        ((15, 10), 2, "dumbbell")
    }


def test_a_pair_with_decimal_commas_may_stand_before_a_comma():
    assert first_line("FS 4x5 tempo 32X1, 62,5/42,5, r2'").loads_kg == (Decimal("62.5"), Decimal("42.5"))


@pytest.mark.parametrize("row", ["12 lunges (6 each leg)", "12 lunges (6+6)"])
def test_a_bracket_may_say_how_many_are_for_each_side(row):
    line = first_line(f"AMRAP 10\n{row}\n10 burpees")
    assert (line.amount, line.per_side) == (6, True)


def test_a_small_number_behind_sets_with_a_bar_is_how_hard():
    line = first_line("bench 1x5 @8")
    assert line.load_rule is not None
    assert (line.load_rule.effort, line.loads_kg) == (8, ())


def test_what_is_held_for_a_time_has_no_bells_of_it():
    line = first_line("DB row hold 3x20s")
    assert (line.amount, line.unit, line.loads_kg) == (20, "s", ())


def test_what_is_told_of_work_that_nobody_named_is_shown():
    found = read(
        "For time: 10-8-6 of\nsquats\nsit-ups\n\nTen of each, then nine of each, and so on down to one. We stop at 15."
    )
    assert "We stop at 15" in [one.text for one in found.not_understood]


def test_what_a_coach_expects_is_the_aim_and_no_rest():
    found = read(
        "For time: 3 rounds of\n10 squats\n\nI expect most of you to need between nine and thirteen minutes."
    )
    assert found.session is not None
    (block,) = found.session.blocks
    assert block.rest_s is None
    assert block.aim is not None
    assert (block.aim.low, block.aim.high) == (540, 780)


@pytest.mark.parametrize(
    "text",
    [
        "AMRAP 20\n8 goblet squats\n10 burpees\nOne dumbbell for all of it",
        "dumbbell only. AMRAP 20: 8 goblet squats, 10 burpees",
    ],
)
def test_what_all_of_it_is_done_with_is_in_the_hands_where_something_can_be(text):
    found = read(text)
    assert found.session is not None
    assert [line.implement for line in found.session.blocks[0].lines] == ["dumbbell", None]
    assert found.not_understood == ()


def test_another_way_behind_an_arrow_is_no_further_line():
    found = read("5 rounds for time\n6 tuck jumps -> or 12 heel raises\n10 push-ups")
    assert found.session is not None
    assert [line.movement for line in found.session.blocks[0].lines] == ["tuck jump", "push-up"]
