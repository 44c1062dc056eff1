"""Several pieces of work told together: on one clock, each for itself, a ladder by its step, turns in one row."""

import pytest

from core.movements.lookup import catalogue
from core.notation.boards.session import read_session
from core.notation.phrases.manners import GOES_ON
from core.sessions.values import Format


def blocks_of(text):
    found = read_session(text, catalogue())
    assert found.session is not None
    assert not found.not_understood
    return found.session.blocks


def amounts(lines):
    return [line.amount for line in lines]


def test_pieces_on_one_clock_are_one_part():
    (block,) = blocks_of(
        "for time, cap 25:\n50 double-unders\n21-15-9\nthrusters 40/30\npull-ups\n50 double-unders"
    )
    assert (block.format, block.cap_s, block.scheme) == ("for_time", 1500, (21, 15, 9))
    assert amounts(block.buy_in) == amounts(block.cash_out) == [50]
    assert [line.movement for line in block.lines] == ["thruster", "pull-up"]


def test_rounds_between_two_runs_on_one_clock_are_one_part():
    (block,) = blocks_of("For time:\n1 km run\nthen 5 rounds: 10 push-ups, 15 squats\nthen 1 km run")
    assert (block.format, block.rounds) == ("for_time", 5)
    assert amounts(block.buy_in) == amounts(block.cash_out) == [1000]


def test_rounds_behind_an_empty_row_are_a_part_of_their_own():
    assert len(blocks_of("For time:\n1 km run\n\n5 rounds for time:\n10 push-ups\n15 squats")) == 2


def test_each_for_time_is_a_part_each():
    blocks = blocks_of("Each for time:\n1 km row\n50 burpees\n30 box jumps\nrest 3 min between")
    assert [block.rest_s for block in blocks] == [180, 180, None]
    assert [block.lines[0].movement for block in blocks] == ["row", "burpee", "box jump"]


def test_rounds_each_for_time_are_intervals():
    (block,) = blocks_of("3 rounds each for time, rest 3 min\n400 m run\n20 swings")
    assert (block.format, block.rounds, block.rest_s) == ("intervals", 3, 180)


@pytest.mark.parametrize(
    ("text", "scheme"),
    [
        ("Ladder: start with 1 burpee and 1 pull-up, add one each round, 10 min", (1, 2, 3)),
        ("AMRAP 10\n2 burpees\n2 pull-ups\nadd 2 each round", (2, 4, 6)),
        ("1 thruster, 1 burpee, add 1 every round, for 12 min", (1, 2, 3)),
    ],
)
def test_a_ladder_may_be_told_by_its_step(text, scheme):
    (block,) = blocks_of(text)
    assert (block.format, block.scheme) == ("amrap", scheme)
    assert amounts(block.lines) == [None, None]
    assert GOES_ON in (block.notes or "")


def test_how_often_a_chain_is_done_stands_behind_it():
    (block,) = blocks_of("Complex: 1 clean + 1 front squat + 1 jerk x 5, build up")
    assert (block.format, block.rounds) == ("sets", 5)
    assert [line.loads_kg for line in block.lines] == [(), (), ()]


def test_a_rest_between_tabatas_is_no_work():
    (block,) = blocks_of("Tabata squats, push-ups, 1 min between")
    assert amounts(block.lines) == [20, 20]
    assert block.notes == "1 min between"


def test_turns_may_stand_in_one_row():
    (block,) = blocks_of("EMOM 12: min 1 10 burpees, min 2 12 swings, min 3 rest")
    assert [line.station for line in block.lines] == [1, 2]
    assert block.rest_stations == (3,)


def test_work_and_a_rest_in_rounds_are_intervals():
    (block,) = blocks_of("8 rounds: 20 s mountain climbers, 10 s rest")
    assert (block.format, block.rounds, block.work_s, block.rest_s) == ("intervals", 8, 20, 10)


def test_an_ordinal_counts_no_rounds():
    found = read_session("3rd and final week: back squat 5x5", catalogue())
    assert found.session is not None
    assert found.session.blocks[0].rounds == 5


def test_feet_on_something_are_no_distance():
    (block,) = blocks_of("AMRAP 10\n10 feet on chair push ups")
    assert (block.lines[0].amount, block.lines[0].unit) == (10, "reps")


def test_breaths_are_counted():
    (block,) = blocks_of("Cool-down\n5 slow breaths")
    assert (block.lines[0].movement, block.lines[0].amount, block.lines[0].unit) == ("breathing", 5, "reps")


def test_a_cool_down_is_no_part_of_the_rounds_above():
    found = read_session(
        "Circuit x 3 for time:\n10 squats\n10 push-ups\nCool down stretch 5 min", catalogue()
    )
    assert found.session is not None
    assert [len(block.lines) for block in found.session.blocks] == [2, 1]
    assert found.session.blocks[1].kind == "cool-down"


def test_half_as_many_on_each_side_are_the_same_repetitions():
    (block,) = blocks_of("AMRAP 10\n10 single-arm rows, five on each side, 12/8\n8 burpees")
    assert (block.lines[0].amount, block.lines[0].per_side, len(block.lines[0].loads_kg)) == (5, True, 2)


def test_the_tempo_of_the_line_before_may_be_said_again():
    blocks = blocks_of("Push-up 5x6 @ 4-2-1 rest 90\nRing row 5x6 same tempo like push-up")
    assert [block.lines[0].tempo for block in blocks] == ["4-2-1", "4-2-1"]


def test_sets_behind_an_easy_start_are_no_warm_up():
    blocks = blocks_of("warm up 10 min easy jog\n6x400m strong, rest 90s walk\n5 min easy jog to cool down")
    assert [block.kind for block in blocks] == ["warm-up", "main", "cool-down"]
    assert (blocks[1].rounds, blocks[1].rest_s, blocks[1].notes) == (6, 90, "rest 90s walk")


def test_what_is_done_once_and_what_is_done_twice_are_two_parts_of_a_warm_up():
    blocks = blocks_of("Wu 5 min bike, 2x10 clamshell e/s, 2x10 bridge\n\nhip thrust 5x6 heavy, 2 min")
    assert [(block.kind, block.rounds, len(block.lines)) for block in blocks] == [
        ("warm-up", None, 1),
        ("warm-up", 2, 2),
        ("strength", 5, 1),
    ]


def test_how_often_waves_are_done_stands_below_them():
    blocks = blocks_of("Press wave\n5@70% 3@80% 1@90%\nx2 through, 2' rest between sets\nthen 3x10 curls r60")
    assert [(block.format, block.rounds, block.rest_s, len(block.lines)) for block in blocks] == [
        ("sets", 2, 120, 3),
        ("sets", 3, 60, 1),
    ]


def test_seconds_behind_sets_are_their_rest():
    (block,) = blocks_of("side leg lift 2x15 each side, 45s")
    assert (block.rounds, block.rest_s) == (2, 45)


def test_prose_may_tell_a_rest_between():
    blocks = blocks_of("Run 6 times 400 metres in your 5 km pace and between each one you walk 90 seconds.")
    assert (blocks[0].rounds, blocks[0].rest_s, blocks[0].lines[0].amount) == (6, 90, 400)


def test_each_stage_keeps_its_minutes():
    (block,) = read_session("Run 1 min - 2 min - 3 min - 2 min - 1 min hard", catalogue()).session.blocks
    assert amounts(block.lines) == [60, 120, 180, 120, 60]


@pytest.mark.parametrize(
    "said",
    [
        "If you are dizzy today, skip this one.",
        "Those without a bar do rows.",
        "in bed by 11. meet 12:15 at the bridge",
    ],
)
def test_what_is_done_by_some_or_when_people_meet_is_no_work(said):
    found = read_session(f"AMRAP 10\n10 squats\n10 push-ups\n{said}", catalogue())
    assert found.session is not None
    assert [line.movement for block in found.session.blocks for line in block.lines] == [
        "air squat",
        "push-up",
    ]
    assert found.not_understood


def test_work_and_change_are_told_in_prose():
    (block,) = blocks_of(
        "Two rounds, work for 30 seconds and change over for 15\n1. Goblet squat\n2. Push-up"
    )
    assert (block.rounds, block.work_s, block.rest_s, block.every_s) == (2, 30, 15, 45)


def test_for_time_counts_more_than_no_hurry():
    found = read_session("For time, no hurry:\n31 squats\n24 lunges", catalogue())
    assert found.session is not None
    assert found.session.blocks[0].format == "for_time"


def test_once_through_is_one_round():
    (block,) = blocks_of("Mobility\nonce through:\nCat-cow 10\nopen book 6 each side")
    assert block.rounds == 1


def test_a_tempo_and_an_effort_between_commas_are_of_the_line():
    blocks = blocks_of("Front squat 4 x 6, 31X0, effort 7 of 10, 2 min rest\nRow 4 x 8 each arm, same effort")
    assert (blocks[0].lines[0].tempo, blocks[0].rest_s) == ("31x0", 120)
    assert [block.lines[0].load_rule and block.lines[0].load_rule.effort for block in blocks] == [7, 7]


@pytest.mark.parametrize("said", ["each break = 3 burpees", "broken = 5 squat jumps", "walk down = rest"])
def test_what_something_costs_or_counts_as_is_no_line(said):
    (block,) = blocks_of(f"For time:\n40 swings\n20 push-ups\n{said}")
    assert [line.movement for line in block.lines] == ["swing", "push-up"]
    assert block.notes == said


OF_SOME = [
    ("2000 m row for time if you've got a machine, 1 mile run if you haven't", ["row"]),
    ("Plank, as long as you can\nBlood pressure people: no all-out hold, stop the plank at 30 s", ["plank"]),
]


@pytest.mark.parametrize(("text", "movements"), OF_SOME)
def test_what_some_do_instead_is_no_work_of_all(text, movements):
    found = read_session(text, catalogue())
    assert [line.movement for block in found.session.blocks for line in block.lines] == movements


def test_how_some_of_a_way_is_gone_is_said_of_its_line_and_is_not_how_hard_all_of_it_is():
    (block,) = blocks_of("Run 8k. last 2k at race pace")
    (line,) = block.lines
    assert (line.amount, line.notes, block.effort) == (8000, "last 2k at race pace", None)


def test_a_distance_at_a_pace_is_no_trial():
    (block,) = blocks_of("8k run @ 5:30/km")
    assert block.format is Format.QUALITY


def test_as_much_as_goes_of_each_in_its_own_time_is_a_part_each():
    told = blocks_of("Max reps: ten minutes on squats, ten minutes on press ups. Count the total.")
    assert [(block.format, block.minutes) for block in told] == [(Format.MAX_REPS, 10)] * 2


def test_a_single_among_sets_is_no_rope():
    text = "Deadlift 5-5-3-3-1, 3 min rests.\nThe single should look like the first five."
    (block,) = read_session(text, catalogue()).session.blocks
    assert [line.movement for line in block.lines] == ["deadlift"]


def test_rounds_of_which_one_counts_with_a_rest_between_are_intervals():
    (block,) = blocks_of("5 rounds, 1 min rest between\n15 cal ski\n9 burpees\nscore = slowest round")
    assert (block.format, block.counts) == (Format.INTERVALS, "worst")


def test_rounds_of_loaded_work_with_a_rest_between_are_sets():
    (block,) = blocks_of("4 rounds, rest 1 min between rounds\n8 goblet squats 12/8\n8 push-ups")
    assert block.format is Format.SETS


def test_how_often_the_only_thing_of_a_row_is_done_may_be_its_last_sentence():
    first, last = blocks_of("Punches 30 s, rest 30 s. Five times.\nThen march on the spot 2 minutes.")
    assert (first.format, first.rounds, first.work_s, first.rest_s) == (Format.INTERVALS, 5, 30, 30)
    assert [line.amount for line in last.lines] == [120]


def test_the_score_below_a_cool_down_is_none_of_it():
    found = read_session(
        "3 rounds for time: 400 m run, 10 swings\n\nCD: walk 5 min\n\npost time", catalogue()
    )
    assert [block.format for block in found.session.blocks] == [Format.FOR_TIME, Format.QUALITY]
    assert [one.text for one in found.not_understood] == ["post time"]


def test_a_time_behind_the_heaviest_is_how_long_there_is_to_find_it():
    (block,) = blocks_of("Find a heavy triple: deadlift. 20 minutes.")
    assert (block.format, block.minutes, [line.amount for line in block.lines]) == (Format.MAX_LOAD, 20, [3])


@pytest.mark.parametrize(
    ("text", "guess"), [("5 laps", "5 x 400 m run"), ("8 x hill sprint", "8 x 100 m hill sprint")]
)
def test_turns_of_no_told_length_are_offered_with_one(text, guess):
    assert guess in [one.guess for one in read_session(text, catalogue()).not_understood]


def test_stretches_behind_a_long_way_are_a_part_of_their_own():
    walk, stretches = blocks_of("45 min walk, outside. Then 2 min glute stretch each side")
    assert ([line.amount for line in walk.lines], [line.amount for line in stretches.lines]) == (
        [2700],
        [120],
    )
