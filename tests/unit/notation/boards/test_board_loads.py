"""Short forms, and whose and how many the loads of a line are."""

import pytest

from core.movements.lookup import catalogue
from core.notation.boards.session import read_session
from tests.unit.notation.boards.test_board_parts import read

SHORT = [
    ("10pu", "push-up"),
    ("10 mu", "muscle-up"),
    ("20 air sq", "air squat"),
    ("8 bbjo 60/50", "burpee"),
    ("10 burp", "burpee"),
    ("9 thrstrs 40/30", "thruster"),
    ("5 strct pullup", "pull-up"),
    ("5 hpc 60/40", "hang power clean"),
    ("100 skips", "rope skip"),
    ("10 over-the-bar burpees", "burpee"),
    ("10 dips chair", "chair dip"),
    ("10 rows under a table", "table row"),
    ("10 push-ups with hand release", "push-up"),
    ("10 DB rows e/s 20 kg", "single-arm row"),
]


@pytest.mark.parametrize(("typed", "movement"), SHORT)
def test_short_forms_and_turned_words_are_read(typed, movement):
    (block,) = read(f"AMRAP 12\n{typed}")
    assert [line.movement for line in block.lines] == [movement]


def test_a_short_form_that_may_be_something_else_is_said_back():
    (corrected,) = read_session("AMRAP 12\n10 pu", catalogue()).corrected
    assert corrected.read_as == "push-up"


LOADS = [
    ("30 kettlebell swings, 16kg ladies 24kg gents", [24, 16], None),
    ("30 kettlebell swings, 24 kg men / 16 kg women", [24, 16], None),
    ("12 lunges with 2 dumbbells of 12.5", [12.5], 2),
    ("8 DB thrusters 2x10", [10], 2),
    ("8 push presses dbs 15/10", [15, 10], 2),
    ("8 single-leg deadlifts, 8 kg in one hand", [8], 1),
    ("10 goblet squats 16 kg or 12 kg", [16, 12], None),
]


@pytest.mark.parametrize(("typed", "loads", "count"), LOADS)
def test_loads_are_read_by_whose_and_how_many_they_are(typed, loads, count):
    (line,) = read(f"AMRAP 12\n{typed}")[0].lines
    assert ([float(load) for load in line.loads_kg], line.count) == (loads, count)


def test_a_load_by_itself_is_for_all_that_are_done_with_one():
    lines = read("5 rounds for time: 10 goblet squats, 10 swings, 10 burpees. 16 kg or 12 kg.")[0].lines
    assert [[float(load) for load in line.loads_kg] for line in lines] == [[16, 12], [16, 12], []]


def test_bare_loads_are_in_the_unit_that_stands_above_them():
    (line,) = read("Strength (pounds)\nDeadlift 5 x 5 @ 225")[0].lines
    assert float(line.loads_kg[0]) == pytest.approx(102.06, abs=0.01)  # 225 x 0.45359237 (pound of 1959)


HEAVY = [("Plate pinch 3 x 30 s each hand, 10", 10, None), ("Farmer carry 4 x 40 m, 2 x 32", 32, 2)]


@pytest.mark.parametrize(("text", "load", "count"), HEAVY)
def test_a_bare_number_behind_a_line_that_has_its_amount_is_its_load(text, load, count):
    (line,) = read(text)[0].lines
    assert ([float(one) for one in line.loads_kg], line.count) == ([load], count)


def test_a_pair_behind_for_time_is_a_load():
    (line,) = read("30 clean and jerks for time (60/40). cap 8")[0].lines
    assert ([float(load) for load in line.loads_kg], line.second_amount) == ([60, 40], None)


HEAVIEST = [
    ("Squat 60x5, 70x5, 80x3", [(60, 5), (70, 5), (80, 3)], None),
    ("Deadlift 100x5x3", [(100, 5)], 3),
    ("Press 3 x 5 x 40", [(40, 5)], 3),
]


@pytest.mark.parametrize(("typed", "lifted", "sets"), HEAVIEST)
def test_a_number_too_large_for_sets_is_a_load(typed, lifted, sets):
    (block,) = read_session(typed, catalogue()).session.blocks
    assert [(float(*line.loads_kg), line.amount) for line in block.lines] == lifted
    assert block.rounds == sets


HELD = [("DB bench 4 x 8 (2x20)", 8, [20], 2), ("12 DB thrusters (2x15/10)", 12, [15, 10], 2)]


@pytest.mark.parametrize(("typed", "amount", "loads", "count"), HELD)
def test_two_of_so_much_in_brackets_are_held(typed, amount, loads, count):
    (line,) = read_session(f"3 sets\n{typed}", catalogue()).session.blocks[0].lines
    assert (line.amount, [float(one) for one in line.loads_kg], line.count) == (amount, loads, count)


@pytest.mark.parametrize("typed", ["120 m shuttle run (2x60)", "20 squats (2x10)"])
def test_what_is_done_in_two_goes_holds_nothing(typed):
    (line,) = read_session(f"AMRAP 9\n{typed}", catalogue()).session.blocks[0].lines
    assert line.loads_kg == ()


def test_more_than_last_week_is_no_load_by_itself():
    (block,) = read_session("Bench 5x5 @ last week + 2.5", catalogue()).session.blocks
    assert (block.lines[0].loads_kg, block.notes) == ((), "@ last week + 2.5")
