"""What terse coaches leave out or cut short: sides, tempos, loads behind a comma, pairs of sets under each other."""

import pytest

from core.movements.lookup import catalogue
from core.notation.boards.session import read_session


def read(text):
    return read_session(text, catalogue())


@pytest.mark.parametrize(
    ("row", "amount", "unit"),
    [("10/s split squat", 10, "reps"), ("side plank 20s/s", 20, "s"), ("9 box step up/s", 9, "reps")],
)
def test_a_slash_and_an_s_are_each_side(row, amount, unit):
    (line,) = read(f"3 rds for time\n{row}\n5 burpees").session.blocks[0].lines[:1]
    assert (line.amount, line.unit, line.per_side) == (amount, unit, True)


def test_a_pair_behind_a_name_is_the_load_where_a_scheme_tells_how_many():
    (block,) = read("For time: 10-8-6-4-2 of\nGoblet squat, 12/8\nSit-up").session.blocks
    assert [(line.amount, [*map(float, line.loads_kg)]) for line in block.lines] == [
        (None, [12, 8]),
        (None, []),
    ]


def test_a_tempo_may_be_told_by_its_first_letter():
    (block,) = read("bench press 4x5 T30X1").session.blocks
    assert (block.lines[0].tempo or "").upper() == "30X1"


def test_less_than_a_share_is_not_the_share():
    found = read("bench press 3x5 @-10%").session
    assert all(line.load_rule is None for block in found.blocks for line in block.lines)


def test_the_next_pair_of_letters_is_a_part_of_its_own():
    first = "A1. Band press, 12\nA2. Band pull-down, 12\n3 sets of the pair"
    found = read(f"{first}\n\nB1. Pull-through, 15\nB2. Face pull, 15\n3 sets")
    assert [len(block.lines) for block in found.session.blocks] == [2, 2]


def test_so_short_a_time_is_that_of_what_it_stands_behind():
    found = read(
        "Cool-down: chest stretch for 30 seconds each side, quad stretch for 30 seconds each side."
    ).session
    assert [(line.amount, line.per_side) for line in found.blocks[0].lines] == [(30, True), (30, True)]
    assert read("Burpees for 7 minutes, as many as you can").session.blocks[0].minutes == 7


def test_sets_behind_sets_that_nobody_knows_keep_their_own_rest():
    found = read("HBXL 4x6 @7 r2'\nsled push 6x20m r60")
    assert [(block.rounds, block.rest_s) for block in found.session.blocks] == [(6, 60)]
    assert "HBXL" in found.not_understood[0].text
