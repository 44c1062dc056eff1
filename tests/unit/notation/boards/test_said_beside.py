"""What names a movement and is not to be done by all, or says how a line is done, stands beside that line."""

import pytest

from core.movements.lookup import catalogue
from core.notation.boards.session import read_session
from core.sessions.values import BlockKind, Format


def read(text):
    return read_session(text, catalogue())


def lines_of(text):
    return [line for block in read(text).session.blocks for line in block.lines]


@pytest.mark.parametrize(
    ("row", "note"),
    [
        ("15 cal row - no rower: 200 m run", "no rower: 200 m run"),
        ("8 deadlifts, no bar: single-leg deadlift", "no bar: single-leg deadlift"),
        ("10 box jumps, step-ups instead for your knees", "step-ups instead for your knees"),
        ("20 double-unders. cant do doubles? 80 singles.", "cant do doubles? 80 singles"),
        ("9 squats. *unbroken squats or 5 burpee penalty*", "unbroken squats or 5 burpee penalty"),
        ("120 m shuttle run (6 x 20)", "6 x 20"),
    ],
)
def test_what_only_some_do_is_said_beside_the_line(row, note):
    first, second = lines_of(f"5 rounds for time\n{row}\n12 push-ups")
    assert (second.movement, note in first.notes) == ("push-up", True)


def test_no_rush_lacks_nothing():
    assert [line.movement for line in lines_of("3 rounds, no rush: 30 s plank, 12 dead bugs")] == [
        "plank",
        "dead bug",
    ]


def test_what_tells_no_amount_behind_a_line_that_does_says_how_it_is_done():
    (line,) = lines_of("2 rounds for time\n10 shoulder pass-throughs - towel, hands wide")
    assert line.movement == "shoulder pass-through"
    assert "hands wide" in line.notes


def test_what_a_warm_up_names_beside_its_minutes_is_done():
    told = [line.movement for line in lines_of("Warm-up: 5 min bike, arm circles, leg swings")]
    assert told == ["ride", "arm circle", "leg swing"]


def test_how_many_of_what_is_no_movement_is_said_with_its_number():
    (line,) = lines_of("3 rounds for time\n40 m shuttle run, four widths of the hall")
    assert line.notes == "four widths of the hall"


def test_who_works_while_the_other_rests_is_no_work():
    (line,) = lines_of("in pairs: 10 x 300 m run each, one runs while the other rests")
    assert (line.amount, line.per_side) == (300, False)


def test_each_is_of_a_side_only_where_there_are_sides():
    (sit_ups,) = lines_of("3 x 12 sit-ups each")
    (lunges,) = lines_of("3 x 12 lunges each")
    assert (sit_ups.per_side, sit_ups.notes, lunges.per_side) == (False, "each", True)


def test_what_the_stretches_behind_it_add_up_to_is_no_line():
    told = [line.amount for line in lines_of("40 min run: 20 min easy, 10 min steady, 10 min tempo")]
    assert told == [1200, 600, 600]
    other = lines_of("10 min run: 5 min easy, 4 min steady, 3 min tempo")
    assert other[0].amount == 600


def test_laps_of_a_clock_are_rounds():
    (block,) = read("40 s on / 20 s off, 3 laps\n1) push-ups\n2) step-ups").session.blocks
    assert (block.rounds, len(block.lines)) == (3, 2)


def test_a_warm_up_told_in_its_row_is_over_with_its_paragraph():
    kinds = [block.kind for block in read("Warm up 10 min jog\n\n1. max push-ups in 2 min").session.blocks]
    assert kinds == [BlockKind.WARM_UP, BlockKind.MAIN]


@pytest.mark.parametrize("said", ["warm up", "w/u", "to warm up"])
def test_a_warm_up_may_be_named_behind_its_work(said):
    assert read(f"10 min jog {said}\n\n10 x 300 m run").session.blocks[0].kind is BlockKind.WARM_UP


def test_the_last_of_a_chipper_is_no_cool_down():
    (block,) = read("For time:\n80 squats\n20 burpees\n1k run to finish").session.blocks
    assert len(block.lines) == 3


def test_a_letter_alone_opens_a_part():
    first, second = read(
        "A\n6 x 30 s sprint, 90 s walk\nB\n3 rounds for time\n8 broad jumps\n10 burpees"
    ).session.blocks
    assert (len(first.lines), len(second.lines)) == (1, 2)
    assert first.rest_s == 90


def test_running_on_the_spot_is_held_by_nobody():
    (block,) = read("6 x 30 s run on the spot, 30 s rest").session.blocks
    assert block.format is Format.INTERVALS


def test_words_without_a_number_that_say_how_are_kept_with_the_line():
    (line,) = lines_of("Skill 10 min: get-up, light bell, 1 each side, take your time")
    assert "take your time" in line.notes


def test_a_sentence_behind_a_line_in_its_row_says_how_it_is_done():
    first, second = lines_of(
        "A. Push-up, 3 x 6. Raise your hands on a bench if it is too much.\nB. Dip, 3 x 8"
    )
    assert (first.notes, second.notes) == ("Raise your hands on a bench if it is too much", None)


@pytest.mark.parametrize("said", ["one works at a time", "only 1 person works", "one working"])
def test_who_works_is_said_of_the_part(said):
    (block,) = read(f"In pairs, AMRAP 20, {said}\n10 burpees").session.blocks
    assert said in block.notes.lower()


@pytest.mark.parametrize("told", ["2k row. Every 500 m do 10 burpees", "2k row, every 500 m 10 burpees"])
def test_how_far_apart_something_is_done_is_no_way_to_go(told):
    (block,) = read(told).session.blocks
    assert [(line.movement, line.amount) for line in block.lines] == [("row", 2000), ("burpee", 10)]
    assert "every 500 m" in block.notes.lower()


def test_what_whoever_lacks_a_thing_does_is_no_work_in_a_row_of_its_own():
    found = read("8 x 45 s uphill\n10 min jog CD\nNo hill? incline on the treadmill at 5%, 90s rest").session
    assert [line.movement for line in found.every_line] == ["run", "run"]
