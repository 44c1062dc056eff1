"""Sets of their own below a part of which it is told how often it is done, and a frame above what is done in it."""

import pytest

from core.movements.lookup import catalogue
from core.notation.boards.session import read_session


def blocks_of(text):
    return read_session(text, catalogue()).session.blocks


def unread_in(text):
    return read_session(text, catalogue()).not_understood


OFTEN = ["21-15-9 for time\nthrusters\npull-ups", "AMRAP 10\n10 push-ups\n15 squats", "EMOM 10\n10 push-ups",
         "3 rounds\n10 push-ups\n15 squats"]  # fmt: skip


@pytest.mark.parametrize("above", OFTEN)
@pytest.mark.parametrize("below", ["C) 3 x 12 dead bugs", "3 x 12 dead bugs", "then 3 x 12 dead bugs"])
def test_sets_of_their_own_below_are_a_part_of_their_own(above, below):
    first, last = blocks_of(f"{above}\n{below}")
    assert first == blocks_of(above)[0]
    assert (last.format, last.rounds, last.lines[0].amount) == ("sets", 3, 12)


@pytest.mark.parametrize(
    ("above", "rounds"), [("5 rounds", 5), ("AMRAP 12", None), ("For time", None), ("4 rounds for time", 4)]
)
def test_sets_amid_rounds_are_as_much_in_all_and_are_never_how_often_the_rounds_go(above, rounds):
    (block,) = blocks_of(f"{above}\n10 push-ups\n2 x 20 m farmer carry\n10 squats")
    assert block.rounds == rounds
    assert [line.amount for line in block.lines] == [10, 40, 10]
    assert block.lines[1].notes == "2 x 20 m"


def test_a_number_in_front_of_a_row_of_several_is_still_how_often_the_row_is_done():
    (block,) = blocks_of("For time: 5 x 200 m run, 10 burpees, 15 sit-ups")
    assert (block.rounds, block.lines[0].amount) == (5, 200)


@pytest.mark.parametrize("above", ["2 rounds", "2 rounds for time", "2 sets of each"])
def test_stretches_below_an_empty_row_are_done_once(above):
    first, last = blocks_of(f"{above}\n10 squats\n10 lunges\n\nhamstring stretch 30 s\ncalf stretch 30 s")
    assert [first.rounds, last.rounds] == [2, None]
    assert len(last.lines) == 2


def test_stretches_below_an_empty_row_amid_stretches_go_on():
    (block,) = blocks_of("2 rounds\nback stretch 30 s\nhip opener 30 s\n\ncalf stretch 30 s")
    assert len(block.lines) == 3


def test_a_time_beside_how_all_of_it_is_done_is_how_long_the_part_goes():
    (block,) = blocks_of("20 min easy, no clock pressure\n10 squats\n10 push-ups\n200 m bike or march")
    assert block.minutes == 20
    assert [line.movement for line in block.lines] == ["air squat", "push-up", "ride"]
    assert block.lines[2].notes == "or march"


@pytest.mark.parametrize(
    "told", ["20 minutes at most", "at most 20 min", "no more than 20 min", "20 min tops", "max 20 min"]
)
def test_the_most_time_there_is_is_a_cap_in_whatever_words(told):
    for joint in (", ", ". ", "\n"):
        text = f"5 rounds for time{joint}{told}\n10 burpees\n15 swings"
        assert blocks_of(text)[0].cap_s == 1200
        assert unread_in(text) == ()


@pytest.mark.parametrize("joint", ["w", "w/", "with", "-"])
def test_what_is_jogged_between_runs_is_their_rest_and_nothing_else(joint):
    (block,) = blocks_of(f"6x400 {joint} 90s jog btw")
    assert (block.rounds, block.rest_s, block.notes) == (6, 90, "90s jog btw")
    assert [(line.movement, line.amount, line.unit) for line in block.lines] == [("run", 400, "m")]


def test_minutes_that_name_nothing_are_in_no_part_and_stand_as_unread_at_their_place():
    (one,) = [one for one in unread_in("10 min easy\n10 squats\n12 push-ups") if one.looks_like == "work"]
    assert (one.text, one.is_taken, one.after) == ("10 min easy", False, 0)


def test_sets_beside_what_is_practised_are_parts_of_their_own():
    first, second, third = blocks_of("Ring muscle-up practice 15 min; 5x3 dips; 5x5 strict pull-ups heavy")
    assert (first.minutes, second.rounds, third.rounds) == (15, 5, 5)
    assert [second.lines[0].amount, third.lines[0].amount] == [3, 5]


def test_strength_work_without_a_clock_is_still_done_in_sets():
    (block,) = blocks_of("Strength: RDL 4x8\nNo clock")
    assert (block.format, block.rounds) == ("sets", 4)


@pytest.mark.parametrize("held", ["w/ 2x12", "with 2x12", "holding 2 x 12"])
def test_two_that_are_held_are_no_sets(held):
    (line,) = blocks_of(f"3 rounds: 12 lunges {held}, 60 s rest")[0].lines
    assert (line.amount, line.count, line.loads_kg) == (12, 2, (12,))


def test_how_long_something_can_be_held_is_a_hold():
    first, second = blocks_of("How many push-ups in 2 minutes? Rest 5 min. How long can you hold a plank?")
    assert (first.format, second.format, second.lines[0].movement) == ("max_reps", "hold", "plank")


@pytest.mark.parametrize("short", ["30 dus", "30 double unders", "30 singles"])
def test_a_rope_below_a_lift_is_no_set_of_it(short):
    lift, rounds, hold = blocks_of(f"DL 5x5 32/24\n3 rft: 15 burpees, 20 lunges, {short}\nplank 3x40s")
    assert (lift.rounds, rounds.rounds, hold.rounds) == (5, 3, 3)
    assert rounds.lines[-1].movement in {"double-under", "rope skip"}


@pytest.mark.parametrize("below", ["5 doubles @ 90%", "then 3 singles @ 95%"])
def test_singles_and_doubles_behind_a_lift_are_of_it(below):
    assert blocks_of(f"DL 5x5 @ 80%\n{below}")[-1].lines[0].movement == "deadlift"


CHIPPERS = ["1k run, 21-15-9 situps/KBS 16, 1k run tc 40", "1k run\n21-15-9\nsitups\nKBS 16\n1k run\ntc 40"]


@pytest.mark.parametrize("board", CHIPPERS)
def test_a_run_on_both_sides_of_what_goes_down_is_done_once(board):
    (block,) = blocks_of(board)
    assert (block.scheme, block.cap_s) == ((21, 15, 9), 2400)
    assert [line.movement for line in (*block.buy_in, *block.cash_out)] == ["run", "run"]
    assert [(line.movement, line.loads_kg) for line in block.lines] == [("sit-up", ()), ("swing", (16,))]


def test_of_a_stroke_between_two_ways_to_go_so_many_are_asked_for_their_unit():
    assert unread_in("15 row/ski")


def test_what_stands_before_a_colon_is_of_the_line_behind_it():
    _, burpees, lunges = blocks_of("3 rounds for time\n200 m run\n10 burpees\nalternating legs: 10 lunges")[
        0
    ].lines
    assert (burpees.side, lunges.side) == (None, "alternating")


def test_a_load_without_a_unit_behind_a_name_of_place_is_one():
    (block,) = blocks_of("5x5 back squat 100, 90s rest")
    assert (block.lines[0].loads_kg, block.rest_s) == ((100,), 90)


def test_a_heading_with_nothing_below_it_is_shown():
    assert [one.text for one in unread_in("wu\n8 min easy jog\ndrills")] == ["drills"]
