"""How blocks stand on a board: minutes with several movements, what comes then, repeated clocks, ladders."""

import pytest

from core.movements.lookup import catalogue
from core.notation.boards.session import read_session
from core.notation.boards.writing import write_session
from core.sessions.values import Format
from tests.unit.notation.boards.test_session_words import fields, understood


def turns(block):
    """Which movements are done in which minute."""
    return [(line.station, line.movement) for line in block.lines]


TWO_IN_A_MINUTE = [
    "EMOM 12\nMin 1: 12 cal row\nMin 2: 10 push-ups, 10 air squats",
    "EMOM 12\nMin 1: 12 cal row\nMin 2: 10 push-ups + 10 air squats",
    "EMOM 12\nMin 1: 12 cal row\nMin 2: 10 push-ups / 10 air squats",
    "EMOM 12\nMin 1 - 12 cal row\nMin 2 - 10 push-ups and 10 air squats",
    "EMOM 12\n1) 12 cal row\n2) 10 push-ups + 10 air squats",
    "EMOM 12\nodd: 12 cal row\neven: 10 push-ups + 10 air squats",
    "EMOM 12 (alternating)\nodd: 12 cal row\neven: 10 push-ups + 10 air squats",
    "EMOM 12\nMin 1\n12 cal row\nMin 2\n10 push-ups\n10 air squats",
    "On the minute x 12:\nMin 1: 12 cal row\nMin 2: 10 push-ups; 10 air squats",
]


@pytest.mark.parametrize("text", TWO_IN_A_MINUTE)
def test_several_movements_in_one_minute_stay_in_it(text):
    session = understood(text)
    assert turns(session.blocks[0]) == [(1, "row"), (2, "push-up"), (2, "air squat")]
    assert turns(understood(write_session(session)).blocks[0]) == turns(session.blocks[0])


ALTERNATING = [
    "alternating EMOM for 16 minutes\n12 swings 24kg\n10 box jumps",
    "EMOM 16 alternating\n12 swings 24kg\n10 box jumps",
    "EMOM 16 (alternating)\n12 swings 24kg\n10 box jumps",
    "EMOM 16\nA. 12 swings 24kg\nB. 10 box jumps",
]


@pytest.mark.parametrize("text", ALTERNATING)
def test_what_alternates_has_a_minute_each(text):
    (block,) = understood(text).blocks
    assert (block.minutes, [line.station for line in block.lines]) == (16, [1, 2])


def test_what_is_done_every_minute_has_no_turns():
    (block,) = understood("EMOM 10: 5 thrusters, 5 pull ups").blocks
    assert [line.station for line in block.lines] == [None, None]


def test_a_minute_of_rest_may_stand_under_its_minute():
    (block,) = understood("EMOM 12\nMin 1\n10 cal row\nMin 2\nrest").blocks
    assert (turns(block), block.rest_stations) == ([(1, "row")], (2,))


CLOCKS = [
    ("every 2 min x 6\n5 back squats @ 70%", {"every_s": 120, "rounds": 6}),
    ("every 90 s, 6 times\n5 thrusters", {"every_s": 90, "rounds": 6}),
    ("on the 2:00 x 6 sets\n3 back squats @ 80%", {"every_s": 120, "rounds": 6}),
    ("5 sets, every 3:00\n12 toes to bar", {"every_s": 180, "rounds": 5}),
    ("E2MOM x 5\n10 push ups", {"every_s": 120, "rounds": 5, "minutes": None}),
    ("E2MOM x 10 min\n10 push ups", {"every_s": 120, "rounds": None, "minutes": 10}),
    ("On the minute x 10\n10 push ups", {"every_s": 60, "minutes": 10}),
    (":30 on :30 off x 5\nburpees", {"work_s": 30, "rest_s": 30, "rounds": 5}),
    ("40/20 x 4 rounds\nburpees", {"work_s": 40, "rest_s": 20, "rounds": 4}),
    ("8 x (20 s on, 10 s off)\nburpees", {"work_s": 20, "rest_s": 10, "rounds": 8}),
    (
        "40/20 x 4 rounds\nburpees\nrest 1 min bw rounds",
        {"work_s": 40, "rest_s": 20, "notes": "rest 1 min bw rounds"},
    ),
    ("1 min max burpees\n1 min max cal row\n1 min rest\nx3", {"every_s": 60, "rounds": 3, "rest_s": 60}),
    ("4 rounds, each for time\n400m run\nrest 2:00", {"format": "intervals", "rounds": 4, "rest_s": 120}),
    ("x3\n10 push ups\n10 squats\ncap 12 min", {"rounds": 3, "cap_s": 720}),
    ("10 min to build to a heavy single front squat", {"format": "max_load", "minutes": 10}),
    ("12 min ladder: 2-4-6-8-10\npush press 40kg", {"format": "amrap", "minutes": 12}),
    ("Pyramid 2-4-6-4-2 for time\npush-ups", {"format": "for_time", "scheme": [2, 4, 6, 4, 2]}),
    ("ladder 1-2-3-4-5\npush-ups\nsquats\n12 min cap", {"scheme": [1, 2, 3, 4, 5], "cap_s": 720}),
    ("Partner workout, 20 min cap\n5 rounds\n20 push-ups", {"team": 2, "cap_s": 1200, "rounds": 5}),
    ("3 rounds for time\n20 push-ups\nrest 1:1", {"notes": "rest 1:1"}),
]


@pytest.mark.parametrize(("text", "wanted"), CLOCKS)
def test_a_clock_is_read_however_it_is_told(text, wanted):
    (block,) = understood(text).blocks
    assert fields(block, wanted) == wanted


def test_seconds_that_no_clock_is_set_by_are_no_work_and_rest():
    read = read_session("23/17 x 4\nburpees", catalogue())
    assert read.not_understood[0].line == 1
    assert read.session.blocks[0].work_s is None


AGAIN = ["AMRAP 2 x 6 min, 2 min rest between", "2 x 6 min AMRAP, rest 2 min", "2 x AMRAP 6, rest 2 min"]


@pytest.mark.parametrize("clock", AGAIN)
def test_each_clock_of_several_is_a_block(clock):
    first, second = understood(f"{clock}\n10 deadlifts @60").blocks
    assert (first.minutes, second.minutes) == (6, 6)
    assert (first.rest_s, second.rest_s) == (120, None)


def test_a_ladder_without_an_end_says_so():
    (block,) = understood("AMRAP 10:\n3-6-9-12-15...\nthrusters 40/30\nburpees").blocks
    assert (block.scheme, block.notes) == ((3, 6, 9, 12, 15), "and so on, the same way up")


THEN = [
    ("10-8-6-4-2\nthrusters 40\nburpees\nThen\n1k row", ["row"]),
    ("10-8-6-4-2\nthrusters 40\nburpees\nthen 1k row", ["row"]),
    ("3 rounds for time\n10 burpees\nCASH OUT\n100 sit ups\n20 push-ups", ["sit-up", "push-up"]),
    ("3 rounds for time\n10 burpees\nBuy out: 50 DU", ["double-under"]),
]


@pytest.mark.parametrize(("text", "movements"), THEN)
def test_what_comes_then_is_done_once_behind_the_rounds(text, movements):
    (block,) = understood(text).blocks
    assert [line.movement for line in block.cash_out] == movements


def test_then_within_a_list_that_is_done_once_only_goes_on():
    (block,) = understood("For time\n50 squats\nthen 40 lunges\nthen 30 burpees").blocks
    assert ([line.movement for line in block.lines], block.cash_out) == (["air squat", "lunge", "burpee"], ())


def test_then_before_a_format_opens_its_block():
    first, second = understood("every 2 min x 6\n5 back squats @ 70%\nthen\nAMRAP 10\n10 burpees").blocks
    assert (first.format, second.format) == ("intervals", "amrap")


def test_a_buy_in_alone_in_its_row_takes_what_stands_under_it():
    (block,) = understood("Buy in:\n800 m run\n3 rounds for time\n10 burpees").blocks
    assert ([line.movement for line in block.buy_in], len(block.lines)) == (["run"], 1)


def test_a_buy_in_belongs_to_what_comes_behind_it():
    _, main = understood("Warm-up\n5 burpees\nBuy in: 800 m run\n3 rounds for time\n10 burpees").blocks
    assert [line.movement for line in main.buy_in] == ["run"]


def test_sets_in_a_row_of_one_movement_keep_their_loads():
    (block,) = understood("Back squat: 5 @ 60%, 5 @ 70%, 3 @ 80%").blocks
    assert block.format == "sets"
    assert [(line.amount, line.load_rule.percent) for line in block.lines] == [(5, 60), (5, 70), (3, 80)]


def test_a_squat_with_a_share_of_ones_best_is_done_with_a_bar():
    assert understood("Squat 5x5 @ 75%").blocks[0].lines[0].movement == "back squat"
    assert understood("AMRAP 5\n10 squats").blocks[0].lines[0].movement == "air squat"


@pytest.mark.parametrize("bullet", ["A1 ", "A1. ", "A1) ", "1a) ", "1a. ", "a1: "])
def test_the_letters_of_a_superset_are_bullets(bullet):
    line = understood(f"3 sets\n{bullet}8 goblet squat @ 24").blocks[0].lines[0]
    assert fields(line, ["amount", "movement"]) == {"amount": 8, "movement": "goblet squat"}


def test_blocks_of_one_kind_are_numbered_and_read_back_as_they_were():
    session = understood("Every 2 min x 6\n5 back squats\n\nAMRAP 10\n10 burpees\n\nCool-down\n5 min walk")
    written = write_session(session)
    assert [line for line in written.splitlines() if line[:4] in {"Main", "Cool"}] == [
        "Main 1",
        "Main 2",
        "Cool-down",
    ]
    again = understood(written)
    assert [block.lines[0].movement for block in again.blocks] == ["back squat", "burpee", "run"]
    assert [block.kind for block in again.blocks] == [block.kind for block in session.blocks]


def test_ten_blocks_of_a_kind_are_numbered_too():
    session = understood("\n\n".join(f"AMRAP {minutes}\n10 burpees" for minutes in range(3, 15)))
    assert len(understood(write_session(session)).blocks) == 12


def test_sets_behind_an_empty_line_come_after_those_before_it_with_a_rest_of_their_own():
    first, second = "5 x 5 back squat @ 75 kg\nrest 2 min", "3 x 8 deadlift @ 60 kg\nrest 90 s"
    blocks = understood(f"{first}\n\n{second}\n\n3 x 10 floor press\n3 x 12 curls").blocks
    told = [(block.rounds, block.rest_s, len(block.lines)) for block in blocks]
    assert told == [(5, 120, 1), (3, 90, 1), (3, None, 1), (3, None, 1)]


@pytest.mark.parametrize(
    "said", ["cap 20.", "tc20", "cap20", "Limit: 20 minutes", "Maximum 20 minutes", "cap it at 20 mins"]
)
def test_the_cap_is_read_however_it_is_said(said):
    (block,) = understood(f"4 rounds for the time:\n10 burpees\n12 sit-ups\n{said}").blocks
    assert (block.format, block.rounds, block.cap_s) == (Format.FOR_TIME, 4, 1200)


@pytest.mark.parametrize(
    ("said", "rounds"),
    [("Tabata", 8), ('TABATA 20"/10" - 6 times', 6), ("Tabata (8 x 20 s work / 10 s rest)", 8)],
)
def test_a_tabata_is_eight_short_turns_unless_it_says_how_many(said, rounds):
    (block,) = understood(f"{said}\nair squats").blocks
    assert (block.format, block.work_s, block.rest_s, block.rounds) == (Format.INTERVALS, 20, 10, rounds)


def test_percentages_one_per_line_are_sets_of_the_lift_above():
    (block,) = understood("Deadlift\n65% x 5\n75% x 5\n85% x 3").blocks
    assert block.format is Format.SETS
    assert [(line.amount, line.load_rule.percent) for line in block.lines if line.load_rule] == [
        (5, 65),
        (5, 75),
        (3, 85),
    ]


def test_numbers_before_a_hyphen_are_the_minutes_of_an_emom():
    (block,) = understood("emom15\n1- 12cal row\n2- 10 push-ups\n3- 40s plank").blocks
    assert (block.minutes, block.every_s) == (15, 60)
    assert [(line.station, line.amount) for line in block.lines] == [(1, 12), (2, 10), (3, 40)]


def test_for_time_and_its_limit_may_stand_under_a_scheme():
    (block,) = understood("10 down to 1\nthrusters 43/30\nburpees\nFor time. 15 min limit").blocks
    assert (block.format, len(block.scheme), block.cap_s) == (Format.FOR_TIME, 10, 900)


@pytest.mark.parametrize("said", ["Find your heaviest 3", "heaviest set of 3", "heaviest triple of the day"])
def test_the_heaviest_is_asked_for_in_several_ways(said):
    (block,) = understood(f"Push press: {said}").blocks
    assert (block.format, block.lines[0].amount) == (Format.MAX_LOAD, 3)


def test_days_of_a_pasted_week_stay_apart_and_are_named():
    read = read_session(
        "Monday - 5 rounds for time: 10 swings 16 kg, 10 push-ups\nTuesday - 40 min walk\nFriday: EMOM 10: 8 burpees",
        catalogue(),
    )
    assert read.session is not None
    assert [block.format for block in read.session.blocks] == [
        Format.FOR_TIME,
        Format.QUALITY,
        Format.INTERVALS,
    ]
    assert [one.text for one in read.not_understood] == ["Monday", "Tuesday", "Friday"]
