"""What the clock does, and when one rests, in the words of coaches."""

import pytest

from core.movements.lookup import catalogue
from core.notation.boards.session import read_session
from tests.unit.notation.boards.test_board_parts import read
from tests.unit.notation.boards.test_session_words import fields, understood

CLOCKS = [
    (
        "Work: 40 seconds. Rest: 20 seconds. Rounds: 3.\nSquats\nburpees",
        {"work_s": 40, "rest_s": 20, "every_s": 60},
    ),
    ("Every minute on the minute, 16 minutes: 12 swings", {"every_s": 60, "minutes": 16}),
    ("Ascending ladder, 9 minutes: 3, 6, 9, 12, 15, 18...\npush-ups", {"format": "amrap", "minutes": 9}),
    ("8x200 run 1min rst btw", {"format": "intervals", "rounds": 8, "rest_s": 60}),
    ("bench press 3,3,2,2,1,1", {"format": "sets", "scheme": [3, 3, 2, 2, 1, 1]}),
    (
        "21 15 9 thrusters 42.5/30 + pull-ups ft cap10",
        {"format": "for_time", "scheme": [21, 15, 9], "cap_s": 600},
    ),
    ("5 rounds\n10 push-ups\n20 squats\nRecord the total time.", {"format": "for_time", "rounds": 5}),
]


@pytest.mark.parametrize(("text", "wanted"), CLOCKS)
def test_a_clock_is_read_in_however_many_sentences_it_is_told(text, wanted):
    (block,) = read(text)
    assert fields(block, wanted) == wanted


STATIONS = [
    "EMOM 12\n1 10 power cleans 60/40\n2 12 burpees\n3 15 cal row",
    "EMOM 12 - 1) 10 power cleans 60/40 2) 12 burpees 3) 15 cal row",
    "EMOM 12\n1. 10 pc 60/40\n2. 12 burps\n3. 15 cal row",
]


@pytest.mark.parametrize("text", STATIONS)
def test_a_list_says_what_is_done_when_in_rows_or_in_one(text):
    (block,) = read(text)
    assert [(line.station, line.movement) for line in block.lines] == [
        (1, "power clean"),
        (2, "burpee"),
        (3, "row"),
    ]


RESTS = [
    ("front squat 5x5 75% r2", 120),
    ("front squat 5x5 75% r90s", 90),
    ("front squat 5x5 75%\n2 min", 120),
    ("front squat 5x5 75%\npause 1 min 30 between the series", 90),
    ("front squat 5x5 75%, 2 min off", 120),
    ("front squat 5x5 75%\n90 s between sets", 90),
]


@pytest.mark.parametrize(("text", "rest_s"), RESTS)
def test_the_rest_between_sets_has_many_names(text, rest_s):
    (block,) = understood(text).blocks
    assert block.rest_s == rest_s


MORE_CLOCKS = [
    ("E2MOM x 6: 2 power cleans + 1 push jerk", {"every_s": 120, "rounds": 6}),
    (
        "Circuit, 45 sec work 15 sec pause, 3 turns\npush-ups\nsquats",
        {"work_s": 45, "rest_s": 15, "rounds": 3},
    ),
    ("45/15, two rounds\npush-ups\nsquats", {"work_s": 45, "rest_s": 15, "rounds": 2}),
    ("5 rounds:\n30s hard / 90s easy on the bike", {"work_s": 30, "rest_s": 90, "rounds": 5}),
    ("plank 1 min on, 30 s off, 4 times", {"work_s": 60, "rest_s": 30, "rounds": 4}),
    ("3 rounds, 1 min at each station: wall balls, box jumps, push presses", {"every_s": 60, "rounds": 3}),
    ("For time in threes:\n150 cal row\nYou have 30 minutes.", {"team": 3, "cap_s": 1800}),
    ("Buy in 1k row, then 4 rounds: 10 burpees, cash out 50 du. 20 min cap", {"rounds": 4, "cap_s": 1200}),
    ("30-20-10\ncal ski\npush-ups\n15 cap", {"format": "for_time", "cap_s": 900}),
    (
        "Superset x4:\n8-10 floor presses\n8-10 ring rows\nrest 75 sec",
        {"format": "sets", "rounds": 4, "rest_s": 75},
    ),
    ("3 sets of 10-12:\ngoblet squat 14 kg\nfloor press 10 kg", {"format": "sets", "rounds": 3}),
]


@pytest.mark.parametrize(("text", "wanted"), MORE_CLOCKS)
def test_more_clocks(text, wanted):
    (block,) = read(text)
    assert fields(block, wanted) == wanted


def test_what_is_easy_is_the_rest_of_what_is_not():
    (block,) = read("10 rounds of 30 s run / 30 s walk")
    assert (block.format, block.work_s, block.rest_s, len(block.lines)) == ("intervals", 30, 30, 1)


def test_a_rest_behind_each_of_what_takes_as_long_makes_intervals():
    (block,) = read("5 rounds\n1 min burpees\n30 s rest\n1 min squats\n30 s rest")
    assert fields(block, ("format", "rounds", "work_s", "rest_s", "every_s")) == {
        "format": "intervals", "rounds": 5, "work_s": 60, "rest_s": 30, "every_s": 90
    }  # fmt: skip


ONE_REST = [
    "4 rounds\n40 s squats\n40 s push-ups\n40 s rest",
    "4 rounds: 40 s squats, 40 s push-ups, 40 s rest",
    "4 rounds, 40 s each: squats, push-ups, rest",
    "4 rounds, 40 s of each, 40 s rest between rounds\nsquats\npush-ups",
]


@pytest.mark.parametrize("text", ONE_REST)
def test_one_rest_behind_several_is_between_the_rounds(text):
    (block,) = understood(text).blocks
    assert (block.format, block.rounds, block.every_s, block.rest_s) == ("intervals", 4, 40, 40)
    assert [(line.amount, line.unit, line.notes) for line in block.lines] == [(40, "s", None)] * 2


def test_rounds_of_so_long_tell_how_long_each_is():
    (block,) = understood("3 rounds of 3 minutes, 1 min rest: max burpees").blocks
    assert (block.format, block.rounds, block.minutes, block.rest_s) == ("max_reps", 3, 3, 60)


def test_rounds_behind_sets_in_a_row_are_the_next_part():
    first, second = read("squat 5x5, 3 rounds: 10 dips, 10 rows")
    assert (first.rounds, len(first.lines), second.rounds, len(second.lines)) == (5, 1, 3, 2)


def test_a_minute_of_rest_below_gives_each_line_a_minute_of_its_own():
    (block,) = read("EMOM 12\n10 push-ups\n10 squats\nrest")
    assert ([line.station for line in block.lines], block.rest_stations) == ([1, 2], (3,))


WORDY = [
    ("4 rounds, no rush: 10 step-ups, 8 dips. Between the rounds look at the trees for one minute.", 60),
    ("4 sets of 8 squats. Between sets walk to the door and back for 2 minutes.", 120),
]


@pytest.mark.parametrize(("text", "rest_s"), WORDY)
def test_words_around_a_time_say_that_it_is_the_rest(text, rest_s):
    found = read_session(text, catalogue())
    assert ([block.rest_s for block in found.session.blocks], found.not_understood) == ([rest_s], ())


NAMED = ["Teaser, 6 min: 6 air squats, 6 push-ups", "Puffer, 6 minutes, amrap: 6 air squats, 6 push-ups"]


@pytest.mark.parametrize("text", NAMED)
def test_the_time_behind_a_name_that_nobody_knows_is_that_of_the_part(text):
    (block,) = read_session(text, catalogue()).session.blocks
    assert (block.minutes, len(block.lines)) == (6, 2)


def test_the_time_of_work_that_nobody_knows_is_used_nowhere():
    assert read_session("gizmos, 6 minutes", catalogue()).session is None


@pytest.mark.parametrize(
    "head", ["3 rounds, 1 min each\n", "Stations, 1 min each, 3 rounds\n", "3 rounds, 1 min on each: "]
)
def test_a_rest_among_the_turns_is_a_turn_of_its_own(head):
    joint = ", " if head.endswith(": ") else "\n"
    (block,) = understood(head + joint.join(("burpees", "swings", "rest"))).blocks
    assert (block.every_s, block.rounds, block.rest_stations) == (60, 3, (3,))
    assert [line.station for line in block.lines] == [1, 2]


def test_so_long_on_each_side_is_no_clock():
    (block,) = understood("Cool-down: quad stretch, 45 seconds on each side").blocks
    assert (block.format, block.lines[0].per_side) == ("quality", True)


def test_one_every_so_often_is_on_the_clock():
    (block,) = understood("deadlift 5x2 @ 87%, one every 2 min").blocks
    assert (block.format, block.rounds, block.every_s) == ("intervals", 5, 120)


SHORT_CLOCKS = [
    ("Circuit 3x (40/20): squats, rows", {"rounds": 3, "work_s": 40, "rest_s": 20}),
    ("E2M 20 min\nOdd: 15 cal row\nEven: 12 burpees", {"every_s": 120, "minutes": 20}),
    ("5km TT", {"format": "time_trial"}),
    ("6x hill sprints 10 sec, full recovery", {"rounds": 6, "effort": None, "notes": "full recovery"}),
    ("45 min easy spin, cadence 90", {"format": "quality"}),
]


@pytest.mark.parametrize(("text", "wanted"), SHORT_CLOCKS)
def test_clocks_in_short(text, wanted):
    (block,) = understood(text).blocks
    assert fields(block, wanted) == wanted


def test_headings_in_short_open_their_parts():
    parts = understood("W/up - 5 min jog\nMain - AMRAP 9: 5 burpees, 5 squats\nC/d - stretches").blocks
    assert [block.kind for block in parts] == ["warm-up", "main", "cool-down"]
