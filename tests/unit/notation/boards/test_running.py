"""How running coaches write: what names nothing is run, what is easy is not the fast way, a choice is one of two."""

import pytest

from core.movements.lookup import catalogue
from core.notation.boards.session import read_session
from core.notation.boards.writing import write_session
from core.sessions.values import BlockKind, Format


def read(text):
    return read_session(text, catalogue())


def blocks_of(text):
    found = read(text)
    assert found.session is not None
    assert not found.not_understood
    return found.session.blocks


def ways_of(text):
    return [(line.movement, line.variant, line.amount) for block in blocks_of(text) for line in block.lines]


def test_minutes_at_a_tempo_are_run():
    (block,) = blocks_of("20 min tempo (RPE 7)")
    (line,) = block.lines
    assert (line.movement, line.amount, line.notes) == ("run", 1200, "tempo")
    assert block.effort.low == 7


def test_distances_at_a_pace_are_run_so_often():
    (block,) = blocks_of("5 x 1000 m @ threshold")
    assert (block.format, block.rounds, block.lines[0].movement) == (Format.INTERVALS, 5, "run")
    assert block.lines[0].notes == "threshold"


def test_a_tempo_of_a_lift_is_no_pace():
    (block,) = blocks_of("Split squat 3x8, tempo 3110")
    assert block.lines[0].tempo == "3110"
    assert block.effort is None


def test_a_pace_in_seconds_less_is_no_length_of_the_part():
    (block,) = blocks_of("5 x 1000m row, 2 min rest, at 5k pace minus 2 sec")
    assert block.minutes is None
    assert block.lines[0].notes == "at 5k pace minus 2 sec"


@pytest.mark.parametrize("text", ["10 min easy\n4x strides 20s", "Tempo run: 10 min easy, 20 min tempo"])
def test_what_is_easy_is_not_run_fast(text):
    assert ways_of(text)[0] == ("run", None, 600)


def test_how_often_stands_in_front_of_the_name():
    (_, strides) = blocks_of("10 min easy\n4x strides 20s")
    assert (strides.rounds, strides.lines[0].amount, strides.lines[0].variant) == (4, 20, "fast")


def test_a_walk_back_down_says_nothing_of_how_it_is_gone_up():
    assert ways_of("8 x 20s hard uphill, walk back down") == [("run", None, 20)]


def test_minutes_of_a_warm_up_and_a_cool_down_go_the_way_of_all():
    kinds = [block.kind for block in blocks_of("Intervals\nwu 10 min\n6 x 800 m, 2 min rest\ncd 10 min")]
    assert kinds == [BlockKind.WARM_UP, BlockKind.MAIN, BlockKind.COOL_DOWN]
    assert ways_of("wu 10 min\n6 x 800 m, 2 min rest\ncd 10 min") == [
        ("run", None, 600), ("run", None, 800), ("run", None, 600)
    ]  # fmt: skip


def test_a_format_above_a_heading_is_the_title():
    found = read("Intervals\nwu 10 min\n6 x 800 m, 2 min rest")
    assert found.session is not None
    assert found.session.title == "Intervals"


def test_a_cool_down_in_one_word_is_no_rest_between_rounds():
    main, last = read("3 rounds for time\n400 m run\n10 squats\ncooldown walk 5min").session.blocks
    assert main.rest_s is None
    assert (last.kind, last.lines[0].amount) == (BlockKind.COOL_DOWN, 300)


def test_jogging_behind_sets_is_their_rest_and_is_said():
    (block,) = blocks_of("5 x 1000 m @ threshold, 90s jog")
    assert (block.rest_s, block.notes) == (90, "90s jog")


def test_easy_running_between_fast_minutes_is_said():
    (block,) = blocks_of("Fartlek 30 min: 1 min fast / 2 min easy")
    assert (block.work_s, block.rest_s, block.notes) == (60, 120, "2 min easy")


def test_a_pyramid_of_distances_is_intervals_and_each_stage_is_written_for_itself():
    (block,) = blocks_of("200-400-600-400-200 m run, 90 s rest")
    assert (block.format, block.rest_s) == (Format.INTERVALS, 90)
    assert [line.written for line in block.lines] == [
        f"{metres} m run" for metres in (200, 400, 600, 400, 200)
    ]


@pytest.mark.parametrize("joint", ["/", "or"])
def test_one_of_two_ways_is_the_first_with_the_other_beside_it(joint):
    (block,) = blocks_of(f"5 rounds for time\n15 cals row {joint} 300 m run\n10 push-ups")
    assert [line.movement for line in block.lines] == ["row", "push-up"]
    assert block.lines[0].notes == "or 300 m run"


def test_what_comes_when_the_clock_is_over_is_a_part_of_its_own():
    amrap, plank = blocks_of("12 min amrap\n10 squats\n10 push-ups\nfinish w/ 2 mins plank accumulate")
    assert (len(amrap.lines), plank.lines[0].movement, plank.lines[0].amount) == (2, "plank", 120)


def test_a_rest_between_rounds_is_said_beside_those_of_the_lines():
    (block,) = blocks_of(
        "5 rounds\n40 s jumping jacks, 20 s rest\n40 s squats, 20 s rest\n1 min rest between rounds"
    )
    assert (block.work_s, block.rest_s, block.notes) == (40, 20, "1 min rest between rounds")


def test_one_arm_may_be_told_as_a_number():
    (block,) = blocks_of("3x10 1-arm row")
    assert (block.lines[0].movement, block.lines[0].amount) == ("single-arm row", 10)


def test_how_often_stands_behind_a_heading_that_nobody_knows():
    found = read("20 min easy run\nthen core 3x:\n10 sit-ups\n30 s plank")
    assert found.session.blocks[1].rounds == 3


def test_squats_that_are_to_be_hard_are_done_with_a_bar():
    assert ways_of("Squat 4x8 @ RPE 7") == [("back squat", None, 8)]
    assert ways_of("Squat 4x8") == [("air squat", None, 8)]


def test_a_day_in_front_of_a_heading_is_the_title():
    found = read("Monday - strength\nDeadlift 4x8 @ RPE 7")
    assert (found.session.title, found.not_understood) == ("Monday", ())
    assert found.session.blocks[0].kind is BlockKind.STRENGTH


def test_a_day_with_its_date_opens_the_next_day():
    found = read("Mon 9th easy 40 min run\nTue 10th 5 x 400 m, 90 s rest")
    assert len(found.session.blocks) == 2
    assert [one.text for one in found.not_understood] == ["Mon 9th", "Tue 10th"]


def written(text):
    return write_session(read(text).session).splitlines()


def test_seconds_of_work_are_written_where_the_format_does_not_say_them():
    assert "20 s run (hard uphill)" in written("8 x 20s hard uphill, walk back down")


def test_minutes_from_so_many_to_so_many_stay_minutes():
    assert "75-90 min long run (easy)" in written("Long run sunday 75-90min easy")


def test_jogging_as_far_as_was_run_is_the_rest_and_no_choice():
    (block,) = blocks_of("8 x 200m run fast / 200m jog")
    (line,) = block.lines
    assert (block.rounds, line.amount, block.notes) == (8, 200, "200m jog")
    assert "or" not in (line.notes or "").split()


def test_each_time_of_a_pyramid_is_a_line():
    (block,) = blocks_of("main: run 6-5-4-3-2-1 min, 1 min jog between")
    assert [line.amount for line in block.lines] == [360, 300, 240, 180, 120, 60]
    assert (block.rest_s, block.scheme) == (60, ())


def test_sets_below_a_clock_and_an_empty_row_are_the_next_part():
    clock, carry = blocks_of("Every 2 minutes, 6 times\n6 burpees\n\nfarmer carry 4 x 40 m, rest 60 s")
    assert (clock.rounds, carry.rounds, carry.rest_s) == (6, 4, 60)


def test_a_few_minutes_are_no_letter_of_a_list():
    board = "Warm-up\nA few minutes: band pull-aparts x15\n\nA1 Bench press 4 x 6\nA2 Single-arm row 4 x 8"
    found = read(f"{board}\n(90 s after A2)")
    assert [block.kind for block in found.session.blocks] == [BlockKind.WARM_UP, BlockKind.STRENGTH]
    assert found.session.blocks[1].rest_s == 90


def test_a_hill_is_run_up_and_what_is_easy_beside_it_is_not():
    assert ways_of("Hills\n15 min easy\n10 x 60s hill, jog down") == [("run", None, 900), ("run", None, 60)]


def test_bare_hundreds_at_a_pace_are_metres_and_what_is_jogged_behind_them_is_no_work():
    (block,) = blocks_of("8 x 400 @ 5k pace, 200 jog")
    (line,) = block.lines
    assert (block.rounds, line.amount, str(line.unit), block.notes) == (8, 400, "m", "200 jog")


def test_how_its_end_is_run_is_said_of_a_run():
    (block,) = blocks_of("Long run 18 km easy, last 3 km at marathon pace")
    assert block.lines[0].notes == "easy; last 3 km at marathon pace"


def test_sets_of_sets_need_no_bracket():
    blocks = read("3 sets of 6 x 200 m, 1 min between reps").session.blocks
    assert [(block.rounds, block.rest_s) for block in blocks] == [(6, 60)] * 3


def test_what_is_jogged_between_is_said_of_no_other_part():
    *_, last = blocks_of("2 km easy\n3 x 10 min tempo, 3 min jog between\n2 km easy")
    assert last.notes is None


@pytest.mark.parametrize("text", ["Easy 45'", "30-40 min easy", "40 min steady"])
def test_minutes_that_name_no_way_are_offered_as_a_run(text):
    (open_still,) = read(text).not_understood
    assert ways_of(open_still.guess)[0][0] == "run"


def test_a_time_that_says_nothing_more_is_offered_as_nothing():
    assert all(one.guess is None for one in read("12 min").not_understood)


def test_hundreds_with_a_jog_beside_them_are_run():
    warm_up, work, cool_down = blocks_of("10 min easy jog\n6x400 w 90s jog btw\n5 min walk")
    assert [line.amount for line in work.lines] == [400]
    assert (work.rounds, work.rest_s) == (6, 90)
    assert (warm_up.kind, cool_down.kind) == (BlockKind.WARM_UP, BlockKind.COOL_DOWN)


def test_intervals_told_as_hard_and_walk_have_a_warm_up_and_an_easy_end():
    text = "Friday: intervals\n5 min easy jog\n8 x 30 sec hard / 60 sec walk\n5 min easy"
    _, turns, _ = read_session(text, catalogue()).session.blocks
    assert (turns.rounds, turns.work_s, turns.rest_s) == (8, 30, 60)
    assert [line.movement for line in turns.lines] == ["run"]


GONE = [
    ("6x400, 90s jog", 90, "Between: 90s jog"),
    ("8x400 @ 5k pace, 200 jog rec", None, "Between: 200 jog rec"),
    ("5x1k w/ 400 jog", None, "Between: w/ 400 jog"),
    ("10x100, 30s walk", 30, "Between: 30s walk"),
]


@pytest.mark.parametrize(("board", "rest_s", "said"), GONE)
def test_what_is_gone_between_the_rounds_is_told_as_that(board, rest_s, said):
    (block,) = blocks_of(board)
    written = write_session(read(board).session).splitlines()
    assert (block.format, block.rest_s) == (Format.INTERVALS, rest_s)
    assert said in written
    assert not [row for row in written if row.startswith(("Rest", "Note"))]
    assert blocks_of("\n".join(written))[0].notes == block.notes


@pytest.mark.parametrize("board", ["6x400 m run (5k pace)", "6x400 m run (easy; 5k pace)"])
def test_a_pace_in_brackets_is_kept(board):
    assert "5k pace" in blocks_of(board)[0].lines[0].notes


def test_an_effort_is_told_without_what_is_done_beside_it():
    (block,) = blocks_of("wu 8' easy jog + drills")
    assert block.effort.words == "easy"


def test_whoever_jogs_at_rest_runs():
    warm, hard, cool = blocks_of("wu 10 min easy\n8 x 1 min quick / 1 min easy jog\ncd 10 min easy")
    assert [block.lines[0].movement for block in (warm, hard, cool)] == ["run"] * 3
    assert (hard.rounds, hard.work_s, hard.rest_s, hard.lines[0].notes) == (8, 60, 60, "quick")


@pytest.mark.parametrize("even", ["all six the same", "all six within 3 seconds of each other"])
def test_how_even_all_are_to_be_is_said_of_the_line(even):
    (block,) = blocks_of(f"6 x 400 m, 90 s rest, {even}")
    assert block.lines[0].notes == even


@pytest.mark.parametrize("told", ["200 400 600 400 200", "200-400-600-400-200"])
def test_distances_behind_each_other_are_stages_whatever_stands_between(told):
    (block,) = blocks_of(f"run {told}, 90 s walk after each one")
    assert [line.amount for line in block.lines] == [200, 400, 600, 400, 200]
    assert block.rest_s == 90


def test_the_minutes_of_all_stages_are_no_stage():
    (block,) = blocks_of("12 min fartlek: 1-2-3-2-1 min hard, 1 min easy between")
    assert [line.amount for line in block.lines] == [60, 120, 180, 120, 60]
    assert "12 min fartlek" in block.notes


def test_what_is_done_beside_a_run_is_a_line():
    found = read("10 min run + mobility").session.blocks[0]
    assert [line.movement for line in found.lines] == ["run", "warm-up flow"]


@pytest.mark.parametrize("title", ["", "Track: "])
def test_a_whole_session_in_a_row_is_parted_at_its_headings(title):
    found = read(f"{title}2k wu, drills, 5x1k @ threshold (90s jog), 1k cd")
    kinds = [(block.kind, block.rounds, block.lines[0].amount) for block in found.session.blocks]
    assert kinds == [
        (BlockKind.WARM_UP, None, 2000),
        (BlockKind.MAIN, 5, 1000),
        (BlockKind.COOL_DOWN, None, 1000),
    ]


def test_rows_that_are_lifted_say_not_how_the_minutes_of_a_warm_up_are_gone():
    board = "Warm up 10 min\nGoblet squat 5 x 8 @ 16 kg\nRow 4 x 10 @ 14 kg, rest 90 s"
    read = read_session(board, catalogue())
    assert [one.text for one in read.not_understood] == ["Warm up 10 min"]
    assert [block.kind for block in read.session.blocks] == ["strength", "strength"]


@pytest.mark.parametrize(
    "board",
    [
        "15 min easy w/up\n6 x 400 m, rest 90 s\n10 min easy home\n5 min walk",
        "Warm up 15 min easy w/up\n6 x 400 m, rest 90 s\n12 cal row / 200 m run\n10 min easy home",
        "12 min easy\n5 x 3 min hard, 90 s easy\n5 min walk home",
    ],
)
def test_easy_minutes_around_intervals_are_run_though_there_is_a_walk_or_a_machine(board):
    read = read_session(board, catalogue())
    assert not [one for one in read.not_understood if one.looks_like != "score"]
    easy = [line for line in read.session.every_line if "easy" in line.written and "hard" not in line.written]
    assert {(line.movement, line.variant) for line in easy} == {("run", None)}


def test_easy_minutes_among_walks_are_walked():
    board = "10 min easy\n8 x 1 min fast walk / 1 min slow walk\n5 min walk"
    lines = read_session(board, catalogue()).session.every_line
    assert {line.variant for line in lines} == {"brisk-walk"}
