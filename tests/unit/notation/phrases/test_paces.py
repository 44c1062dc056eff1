"""Rowers and runners: strokes, splits and zones are said of the work and are no rest, no load and no time to work."""

import pytest

from core.movements.lookup import catalogue
from core.notation.boards.session import read_session


def read(text):
    return read_session(text, catalogue())


def blocks_of(text):
    found = read(text)
    assert found.session is not None
    assert not found.not_understood
    return found.session.blocks


def test_a_stroke_rate_is_no_rest():
    (block,) = blocks_of("AMRAP 20\n500 m row @ r18\n10 push-ups")
    assert block.rest_s is None
    assert block.lines[0].notes == "rate 18"


@pytest.mark.parametrize(
    ("text", "amount", "rounds", "rest_s", "notes"),
    [
        ("3x12' steady @ r18-20, 2' light between", 720, 3, 120, "steady; rate 18-20"),
        ("8x500m row @2:05/500, rest 2 min", 500, 8, 120, "2:05/500"),
        ("4 x 750 m, rate 26, 3 min paddle between", 750, 4, 180, "rate 26"),
        ("3 x 10' UT1 r20 / 2' rest", 600, 3, 120, "UT1; rate 20"),
        ("4 x 3' row r24, 1' rest", 180, 4, 60, "rate 24"),
        ("5 x 1000 m row, 24 spm, rest 3 min", 1000, 5, 180, "24 spm"),
    ],
)
def test_what_is_rowed_keeps_its_rate_and_its_split(text, amount, rounds, rest_s, notes):
    (block,) = blocks_of(text)
    (line,) = block.lines
    assert (line.movement, line.amount, line.notes) == ("row", amount, notes)
    assert (block.rounds, block.rest_s) == (rounds, rest_s)
    assert not line.loads_kg


@pytest.mark.parametrize(
    "text", ["3 x 10 curls r30", "Bench 4x8 r20", "Row 3x10 r30", "5 rounds r30\n10 squats\n10 push-ups"]
)
def test_a_rest_in_short_stays_one_where_nothing_is_rowed(text):
    found = read(text)
    assert found.session is not None
    assert found.session.blocks[0].rest_s in {20, 30}


def test_a_rest_may_follow_an_equals_sign():
    (block,) = blocks_of("6x500m row r=1:30")
    assert (block.rounds, block.rest_s) == (6, 90)


def test_zones_say_how_hard_it_is():
    (block,) = blocks_of("UT2 60' r18")
    assert (block.lines[0].movement, block.lines[0].amount) == ("row", 3600)
    assert block.effort is not None
    assert (block.effort.high, block.effort.words) == (4, "UT2")


@pytest.mark.parametrize("text", ["4x(3'/1') row", "4 x 3'/1' row", "4 x (3 min / 1 min) row"])
def test_work_and_rest_in_brackets_are_intervals(text):
    (block,) = blocks_of(text)
    assert (block.format, block.rounds, block.work_s, block.rest_s) == ("intervals", 4, 180, 60)


def test_what_is_done_while_resting_is_kept():
    (block,) = blocks_of("Run 5 x 1 km @ 5k pace, 2 min jog between")
    assert (block.rest_s, block.notes) == (120, "2 min jog between")


def test_metres_of_nothing_are_no_sets_of_what_was_lifted_before():
    blocks = blocks_of("A. Back squat 5x3 @75%\nB. Row 3x10\nC. 6x500m, r=1:30")
    assert [block.lines[0].movement for block in blocks] == ["back squat", "bent-over row", "row"]
    assert (blocks[2].format, blocks[2].rest_s) == ("intervals", 90)


def test_each_stage_of_a_pyramid_is_a_line():
    found = read("Row: 1'-2'-3'-2'-1' r24, 1' light between")
    assert found.session is not None
    (block,) = found.session.blocks
    assert [line.amount for line in block.lines] == [60, 120, 180, 120, 60]
    assert block.rest_s == 60


def test_a_warm_up_sets_and_a_cool_down_in_one_row_are_three_parts():
    blocks = blocks_of("W/up 2k, then 5x3' @ r26 (1:58), 3' off, w/d 1k")
    assert [block.kind for block in blocks] == ["warm-up", "main", "cool-down"]
    assert [block.lines[0].amount for block in blocks] == [2000, 180, 1000]
    assert (blocks[1].work_s, blocks[1].rest_s, blocks[1].lines[0].notes) == (180, 180, "rate 26 1:58")


def test_easy_minutes_at_the_end_go_the_way_of_all():
    blocks = blocks_of("4 x 2000 m @ 2:05/500m, rate 24, 5' rest\nCool down 10 min light")
    assert (blocks[1].kind, blocks[1].lines[0].movement, blocks[1].lines[0].amount) == (
        "cool-down",
        "row",
        600,
    )


def test_how_long_the_clock_runs_is_no_work_of_a_line():
    (block,) = blocks_of("Fartlek 30 min: 1 min hard 2 min easy")
    assert (block.minutes, block.work_s, block.rest_s) == (30, 60, 120)
    assert block.lines[0].amount == 60


def test_of_strides_is_asked_how_far_each_goes():
    found = read("3 km easy\n6 strides\n10 min jog home")
    assert [one.guess for one in found.not_understood] == ["6 x 100 m stride"]


def test_rates_below_a_line_are_of_it():
    (block,) = blocks_of("3 x 2k row\n5 min rest\nfirst r24, second r26, last r28")
    assert block.lines[0].notes == "first rate 24; second rate 26; last rate 28"


def test_what_is_easy_behind_a_slash_is_the_rest():
    blocks = blocks_of("5 min easy run\n10 x 1 min hard / 1 min jog")
    assert (blocks[1].rounds, blocks[1].work_s, blocks[1].rest_s, blocks[1].notes) == (
        10,
        60,
        60,
        "1 min jog",
    )


def test_each_distance_of_a_pyramid_is_a_line():
    found = read("Row 250-500-750-500-250 m\n90 s between")
    assert found.session is not None
    assert [line.amount for line in found.session.blocks[0].lines] == [250, 500, 750, 500, 250]


def test_a_space_may_part_thousands():
    (block,) = blocks_of("10 000 m row")
    assert block.lines[0].amount == 10000


@pytest.mark.parametrize(
    ("text", "rest_s", "said"),
    [
        ("6 x 4' row @ r22-24, 2' easy", 120, "2' easy"),
        ("8x400m run @ 85-90%, 2' jog rec", 120, "2' jog rec"),
    ],
)
def test_what_is_easy_behind_sets_is_their_rest(text, rest_s, said):
    (block,) = blocks_of(text)
    assert len(block.lines) == 1
    assert (block.format, block.rest_s, block.notes) == ("intervals", rest_s, said)


def test_sets_of_sets_are_as_many_parts():
    blocks = blocks_of("2x(4x500m) row r=1:00")
    assert [(block.format, block.rounds, block.rest_s) for block in blocks] == [("intervals", 4, 60)] * 2


def test_round_hundreds_without_a_unit_are_no_repetitions():
    found = read("Track: 200-400-600-400-200 w/ 200 jog")
    assert found.session is None or not any(block.scheme for block in found.session.blocks)
    assert found.not_understood
