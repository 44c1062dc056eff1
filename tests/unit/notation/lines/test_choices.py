"""What a coach leaves to each: ways with an `or` or a stroke between them, told in one row, in a bracket, or below."""

import pytest

from core.measures import AmountUnit
from core.movements.lookup import catalogue
from core.notation.boards.session import read_session
from core.notation.boards.writing import write_session


def line_of(row):
    read = read_session(f"AMRAP 12\n{row}\n10 burpees", catalogue())
    assert read.not_understood == ()
    first, burpees = read.session.blocks[0].lines
    assert burpees.movement == "burpee"
    return first


def told(line):
    return [
        (line.movement, line.amount, line.unit),
        *((one.movement, one.amount, one.unit) for one in line.choices),
    ]


REPS, M, KCAL, S = AmountUnit.REPS, AmountUnit.METRES, AmountUnit.KCAL, AmountUnit.SECONDS


@pytest.mark.parametrize(
    ("row", "ways"),
    [
        ("12 cal row / 200m run", [("row", 12, KCAL), ("run", 200, M)]),
        ("200 m run or 12 cal row", [("run", 200, M), ("row", 12, KCAL)]),
        ("20 sit-ups or v-ups", [("sit-up", 20, REPS), ("v-up", 20, REPS)]),
        ("20 sit-ups / v-ups", [("sit-up", 20, REPS), ("v-up", 20, REPS)]),
        ("12 cal row/bike", [("row", 12, KCAL), ("ride", 12, KCAL)]),
        ("30 s plank or hollow hold", [("plank", 30, S), ("hollow hold", 30, S)]),
        ("5 pull-ups or 8 ring rows", [("pull-up", 5, REPS), ("ring row", 8, REPS)]),
        ("8 pull-ups\nor 12 ring rows", [("pull-up", 8, REPS), ("ring row", 12, REPS)]),
        ("15 wall balls (or thrusters)", [("med-ball squat throw", 15, REPS), ("thruster", 15, REPS)]),
        (
            "250 m row or 1 km bike or 45 s skipping",
            [("row", 250, M), ("ride", 1000, M), ("rope skip", 45, S)],
        ),
        (
            "10 push-ups, sit-ups or lunges",
            [("push-up", 10, REPS), ("sit-up", 10, REPS), ("lunge", 10, REPS)],
        ),
        ("row or bike 2 min", [("row", 120, S), ("ride", 120, S)]),
    ],
)
def test_each_way_of_a_choice_has_its_amount(row, ways):
    assert told(line_of(row)) == ways


def test_a_load_behind_the_last_way_is_of_all_that_are_held():
    line = line_of("12 kettlebell swings or goblet squats @ 16 kg")
    assert [[f"{kg}" for kg in one.loads_kg] for one in (line, *line.choices)] == [["16"], ["16"]]


@pytest.mark.parametrize(
    "row", ["10 push-ups (knees or full)", "400 m run or more", "12 cal row, hard or easy"]
)
def test_an_or_that_names_nothing_else_to_do_leaves_no_choice(row):
    assert line_of(row).choices == ()


@pytest.mark.parametrize("row", ["12 burpees / 15 air squats", "10 swings and 10 push-ups"])
def test_things_of_one_row_that_are_counted_each_are_all_done(row):
    (block,) = read_session(f"AMRAP 12\n{row}", catalogue()).session.blocks
    assert [line.choices for line in block.lines] == [(), ()]


@pytest.mark.parametrize(
    "row", ["12 cal row / 200 m run", "20 sit-ups or v-ups", "8 pull-ups\nor 12 ring rows"]
)
def test_a_choice_is_written_as_one_and_read_again(row):
    session = read_session(f"AMRAP 12\n{row}", catalogue()).session
    assert session is not None
    again = read_session(write_session(session), catalogue()).session
    assert again is not None
    assert told(again.blocks[0].lines[0]) == told(session.blocks[0].lines[0])
