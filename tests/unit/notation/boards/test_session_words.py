# ruff: noqa: RUF001 - dashes and quotes stand here as people type them
"""A coach's own words, as they are typed: each row is a text and what must be read in it."""

import pytest

from core.measures import MassUnit
from core.movements.lookup import catalogue
from core.notation.boards.session import read_session
from core.notation.boards.writing import write_session

LINES = "\n10 push-ups\n12 air squats"


def understood(text, unit=MassUnit.KG):
    read = read_session(text, catalogue(), unit)
    assert read.not_understood == ()
    assert read.session is not None
    return read.session


def fields(thing, wanted):
    """The wanted fields of a value, loads as plain numbers."""
    shown = thing.model_dump(mode="json")
    shown["loads_kg"] = tuple(float(load) for load in shown.get("loads_kg", ()))
    return {name: shown[name] for name in wanted}


BLOCKS = [
    # amrap
    ("AMRAP 12" + LINES, {"format": "amrap", "minutes": 12}),
    ("12 min amrap" + LINES, {"format": "amrap", "minutes": 12}),
    ("12min AMRAP:" + LINES, {"format": "amrap", "minutes": 12}),
    ("12' AMRAP" + LINES, {"format": "amrap", "minutes": 12}),
    ("12-minute AMRAP of" + LINES, {"format": "amrap", "minutes": 12}),
    ("AMRAP in 12 minutes" + LINES, {"format": "amrap", "minutes": 12}),
    ("AMRAP 12:00" + LINES, {"format": "amrap", "minutes": 12}),
    ("amrap – 12 mins" + LINES, {"format": "amrap", "minutes": 12}),
    ("AMRAP x 12 minutes" + LINES, {"format": "amrap", "minutes": 12}),
    ("As many rounds as possible in 12 minutes" + LINES, {"format": "amrap", "minutes": 12}),
    ("as many rounds and reps as possible in 7 min:" + LINES, {"format": "amrap", "minutes": 7}),
    ("In 12 minutes, as many rounds as you can" + LINES, {"format": "amrap", "minutes": 12}),
    ("1½ min amrap" + LINES, {"format": "amrap", "minutes": 1.5}),
    ("AMRAP\n20 min" + LINES, {"format": "amrap", "minutes": 20}),
    ("🔥 AMRAP 12 🔥" + LINES, {"format": "amrap", "minutes": 12}),
    ("**AMRAP 12**" + LINES, {"format": "amrap", "minutes": 12}),
    ("AMRAP 12" + LINES + "\nnot for score", {"format": "amrap", "scored": False}),
    ("AMRAP 12 (unscored)" + LINES, {"format": "amrap", "minutes": 12, "scored": False}),
    ("12 min amrap, with a partner" + LINES, {"format": "amrap", "team": 2}),
    ("12 min amrap in teams of 3" + LINES, {"format": "amrap", "team": 3}),
    # sets behind the name
    ("Back squat 5x5 @ 75%", {"format": "sets", "rounds": 5}),
    ("Back squat 5 x 5 @75%\nrest 2-3 min", {"format": "sets", "rounds": 5, "notes": "rest 2-3 min"}),
    ("5 x 5 Back squat @75%", {"format": "sets", "rounds": 5}),
    ("Back squat 5x5\nRest 2 to 3 min between sets", {"notes": "Rest 2 to 3 min between sets"}),
    # for time
    ("4 rounds for time" + LINES, {"format": "for_time", "rounds": 4}),
    ("4 RFT" + LINES, {"format": "for_time", "rounds": 4}),
    ("4RFT:" + LINES, {"format": "for_time", "rounds": 4}),
    ("Four rounds for time of" + LINES, {"format": "for_time", "rounds": 4}),
    ("For time:\n4 rounds of" + LINES, {"format": "for_time", "rounds": 4}),
    ("For time, 3 rds" + LINES, {"format": "for_time", "rounds": 3}),
    ("for time" + LINES, {"format": "for_time", "rounds": None}),
    ("As fast as possible:" + LINES, {"format": "for_time"}),
    ("for time: 21-15-9\npush-ups\nair squats", {"format": "for_time", "scheme": [21, 15, 9]}),
    ("21-15-9 reps for time of:\npush-ups\nair squats", {"format": "for_time", "scheme": [21, 15, 9]}),
    ("21 – 15 – 9\npush-ups\nair squats", {"format": "for_time", "scheme": [21, 15, 9]}),
    ("For time\n21, 15, 9\npush-ups\nair squats", {"format": "for_time", "scheme": [21, 15, 9]}),
    ("21-15-9 push-ups\n21-15-9 air squats", {"format": "for_time", "scheme": [21, 15, 9]}),
    ("10-9-8-...-1 for time\npush-ups", {"format": "for_time", "scheme": list(range(10, 0, -1))}),
    ("For time: 10 down to 1\npush-ups", {"format": "for_time", "scheme": list(range(10, 0, -1))}),
    ("4 RFT (TC 15)" + LINES, {"format": "for_time", "rounds": 4, "cap_s": 900}),
    ("4 RFT, cap 15 min" + LINES, {"format": "for_time", "cap_s": 900}),
    ("4 RFT" + LINES + "\nTime cap: 15:00", {"format": "for_time", "cap_s": 900}),
    ("4 rounds for time, 15 min cap" + LINES, {"format": "for_time", "cap_s": 900}),
    ("4 rounds, 15' time cap" + LINES, {"format": "for_time", "rounds": 4, "cap_s": 900}),
    ("4 RFT, rest 1 min between rounds" + LINES, {"format": "for_time", "rest_s": 60}),
    ("4 RFT\n90 s rest between rounds" + LINES, {"format": "for_time", "rest_s": 90}),
    ("4 RFT" + LINES + "\n- rest 1:30", {"format": "for_time", "rest_s": 90}),
    # aims
    ("AMRAP 12, aim: 6-7 rounds" + LINES, {"aim": {"of": "score", "low": 6, "high": 7}}),
    ("AMRAP 12\nAim for 6+ rounds" + LINES, {"aim": {"of": "score", "low": 6, "high": None}}),
    ("AMRAP 12\nGoal: at least 6 rounds" + LINES, {"aim": {"of": "score", "low": 6, "high": None}}),
    ("4 RFT\ntarget 8-10 min" + LINES, {"aim": {"of": "score", "low": 480, "high": 600}}),
    ("4 RFT\nTarget: 8:30–10:00" + LINES, {"aim": {"of": "score", "low": 510, "high": 600}}),
    ("4 RFT\naim: sub 10 min" + LINES, {"aim": {"of": "score", "low": None, "high": 600}}),
    ("4 RFT\naim: effort 7-8" + LINES, {"effort": {"low": 7, "high": 8, "words": None}}),
    # the others
    ("EMOM 10\n10 push-ups", {"format": "intervals", "every_s": 60, "minutes": 10}),
    ("E2MOM 12: 10 swings 24kg", {"format": "intervals", "every_s": 120, "minutes": 12}),
    (
        "every minute on the minute for 8 min\n10 push-ups",
        {"format": "intervals", "every_s": 60, "minutes": 8},
    ),
    ("Every 3 min x 5\n400 m run", {"format": "intervals", "every_s": 180, "rounds": 5}),
    (
        "40 s on / 20 s off x 8 rounds\npush-ups\nair squats",
        {"format": "intervals", "work_s": 40, "rest_s": 20, "every_s": 60, "rounds": 8},
    ),
    ("5 x 5 goblet squats @ 24 kg, rest 3 min", {"format": "sets", "rounds": 5, "rest_s": 180}),
    ("Strength\nGoblet squat\n5x5 @ 24kg", {"kind": "strength", "format": "sets", "rounds": 5}),
    ("5 x 200 m run, rest 1 min", {"format": "intervals", "rounds": 5, "rest_s": 60}),
    ("5-5-5-3-3 goblet squats", {"format": "sets", "scheme": [5, 5, 5, 3, 3]}),
    ("max push-ups in 2 min", {"format": "max_reps", "minutes": 2}),
    ("2 min AMRAP: push-ups", {"format": "max_reps", "minutes": 2}),
    ("Max plank hold", {"format": "hold"}),
    ("run 5 km", {"format": "time_trial"}),
    ("find a heavy 3 deadlift", {"format": "max_load"}),
    ("3 rounds, not for time" + LINES, {"format": "quality", "rounds": 3, "scored": False}),
    ("Warm-up: 3 rounds" + LINES, {"kind": "warm-up", "format": "quality", "rounds": 3, "scored": False}),
    ("COOL DOWN\n3 min easy walk", {"kind": "cool-down", "format": "quality", "scored": False}),
]


@pytest.mark.parametrize(("text", "wanted"), BLOCKS, ids=[text[:40] for text, _ in BLOCKS])
def test_a_format_is_read_however_it_is_typed(text, wanted):
    (block,) = understood(text).blocks
    assert fields(block, wanted) == wanted


LINE = [
    ("10 push-ups", {"movement": "push-up", "amount": 10, "unit": "reps"}),
    ("push-ups x 10", {"movement": "push-up", "amount": 10}),
    ("Push-ups: 10", {"movement": "push-up", "amount": 10}),
    ("ten pushups", {"movement": "push-up", "amount": 10}),
    ("8 two-handed floor presses", {"movement": "floor press", "amount": 8}),
    ("10x push ups", {"movement": "push-up", "amount": 10}),
    ("10 reps of push-ups", {"movement": "push-up", "amount": 10}),
    ("8-10 push-ups", {"movement": "push-up", "amount": 8, "amount_to": 10}),
    ("8 to 10 push-ups", {"movement": "push-up", "amount": 8, "amount_to": 10}),
    ("10/8 push-ups", {"movement": "push-up", "amount": 10, "second_amount": 8}),
    ("12 goblet squats @ 24/16 kg", {"movement": "goblet squat", "amount": 12, "loads_kg": (24, 16)}),
    ("12 goblet squats 24/16", {"loads_kg": (24, 16)}),
    ("12 goblet squats (24/16 kg)", {"loads_kg": (24, 16), "notes": None}),
    ("12 goblet squats 24kg/16kg", {"loads_kg": (24, 16)}),
    ("12 goblet squats @16", {"loads_kg": (16,)}),
    ("12 goblet squats with a 16 kg kettlebell", {"loads_kg": (16,), "implement": "kettlebell"}),
    ("12 goblet squats 7,5 kg", {"loads_kg": (7.5,)}),
    ("12 goblet squats @ 35 lb", {"loads_kg": (15.87573295,)}),
    ("12 floor press 2 x 15 / 2 x 10 kg", {"movement": "floor press", "count": 2, "loads_kg": (15, 10)}),
    ("12 floor presses @ 2×12.5kg", {"count": 2, "loads_kg": (12.5,)}),
    ("12 floor presses with two 10 kg dumbbells", {"count": 2, "loads_kg": (10,), "implement": "dumbbell"}),
    ("12 floor presses, 10 kg per hand", {"count": 2, "loads_kg": (10,)}),
    ("10/side single-arm rows @ 16kg", {"movement": "single-arm row", "amount": 10, "per_side": True}),
    ("10 single-arm rows each side", {"amount": 10, "per_side": True}),
    ("10 e/s one-arm rows", {"amount": 10, "per_side": True}),
    ("10 dumbbell rows per arm @ 10 kg", {"movement": "single-arm row", "amount": 10, "per_side": True}),
    ("8 alternating lunges", {"movement": "lunge", "amount": 8, "side": "alternating"}),
    ("8 alt. lunges", {"movement": "lunge", "amount": 8, "side": "alternating"}),
    ("200 m run", {"movement": "run", "amount": 200, "unit": "m"}),
    ("run 400m", {"movement": "run", "amount": 400, "unit": "m"}),
    ("1.5k run", {"movement": "run", "amount": 1500, "unit": "m"}),
    ("1 mile run", {"movement": "run", "amount": 1609.344, "unit": "m"}),
    ("1,000 m run", {"movement": "run", "amount": 1000, "unit": "m"}),
    ("30 s plank", {"movement": "plank", "amount": 30, "unit": "s"}),
    ("30sec plank hold", {"movement": "plank", "amount": 30, "unit": "s"}),
    ("0:45 plank", {"movement": "plank", "amount": 45, "unit": "s"}),
    ("1 min 30 s plank", {"movement": "plank", "amount": 90, "unit": "s"}),
    ("15/12 cal run", {"amount": 15, "second_amount": 12, "unit": "kcal"}),
    ("10 knee push-ups", {"movement": "push-up", "variant": "knees"}),
    (
        "12 goblet squats @ 60%",
        {"load_rule": {"percent": 60, "effort": None, "heavy": None, "unbroken": None}},
    ),
    (
        "12 goblet squats, heavy",
        {"load_rule": {"percent": None, "effort": None, "heavy": True, "unbroken": None}},
    ),
    (
        "9 goblet squats @ 16 kg, a weight you could do 12-15 of without a break",
        {
            "loads_kg": (16,),
            "load_rule": {"percent": None, "effort": None, "heavy": None, "unbroken": [12, 15]},
        },
    ),
    ("9 goblet squats @ 16 kg, 12-15 unbroken", {"loads_kg": (16,)}),
    (
        "9 goblet squats @ RPE 8",
        {"load_rule": {"percent": None, "effort": 8, "heavy": None, "unbroken": None}},
    ),
    ("10 push-ups tempo 3-1-1", {"movement": "push-up", "tempo": "3-1-1"}),
    ("10 push-ups (chest to the floor)", {"movement": "push-up", "notes": "chest to the floor"}),
    ("• 10 push-ups", {"amount": 10}),
    ("1) 10 push-ups", {"amount": 10}),
    ("- 10 push-ups", {"amount": 10}),
    ("1️⃣ 10 push-ups", {"amount": 10}),
    ("10 push-ups 💪", {"amount": 10, "movement": "push-up"}),
    ("10\u00a0push‑ups", {"amount": 10, "movement": "push-up"}),
]


@pytest.mark.parametrize(("text", "wanted"), LINE, ids=[text for text, _ in LINE])
def test_a_line_is_read_however_it_is_typed(text, wanted):
    (block,) = understood(f"12 min amrap\n{text}").blocks
    assert len(block.lines) == 1
    assert fields(block.lines[0], wanted) == wanted


def test_a_bare_load_counts_in_the_unit_of_the_group():
    (block,) = understood("12 min amrap\n12 goblet squats 35/26", MassUnit.LB).blocks
    assert [str(load) for load in block.lines[0].loads_kg] == ["15.87573295", "11.79340162"]


def test_lines_may_stand_in_one_row():
    (block,) = understood("12 min amrap: 5 push-ups, 10 air squats + 15 sit-ups and 200 m run").blocks
    assert [(line.amount, line.movement) for line in block.lines] == [
        (5, "push-up"),
        (10, "air squat"),
        (15, "sit-up"),
        (200, "run"),
    ]


def test_title_date_and_headings_part_a_session():
    session = understood(
        "Tuesday burner\r\nTue 3 March 2026\r\n\r\nWarm-up (5 min)\r\n3 min easy jog\r\n10 air squats\r\n\r\n"
        "Strength\r\n5 x 5 goblet squats @ 24 kg\r\n\r\nMain\r\n12' AMRAP (aim: 6–7 rounds)\r\n10 push-ups"
        "\r\n\r\n"
        "Cool-down\r\n3 min easy walk"
    )
    assert session.title == "Tuesday burner"
    assert session.date is not None
    assert session.date.isoformat() == "2026-03-03"
    assert [(block.kind, block.format) for block in session.blocks] == [
        ("warm-up", "quality"),
        ("strength", "sets"),
        ("main", "amrap"),
        ("cool-down", "quality"),
    ]


@pytest.mark.parametrize(
    "typed", ["2026-03-13", "13.3.2026", "13/03/2026", "March 13, 2026", "13th of March 2026"]
)
def test_a_date_is_read_however_it_is_typed(typed):
    session = understood(f"{typed}\n12 min amrap{LINES}")
    assert session.date is not None
    assert session.date.isoformat() == "2026-03-13"
    assert session.title is None


def test_a_second_format_opens_a_second_block():
    session = understood("AMRAP 8\n10 push-ups\nrest 3 min\nAMRAP 8\n10 air squats")
    assert [(block.minutes, block.rest_s) for block in session.blocks] == [(8, 180), (8, None)]


def test_a_format_behind_its_lines_belongs_to_them():
    (block,) = understood("10 push-ups\n12 air squats\n4 rounds for time").blocks
    assert (block.format, block.rounds, len(block.lines)) == ("for_time", 4, 2)


def test_buy_in_and_cash_out_are_no_lines_of_the_rounds():
    (block,) = understood("4 RFT\nBuy-in: 400 m run\n10 push-ups\nCash-out: 20 sit-ups").blocks
    assert [line.movement for line in block.buy_in + block.lines + block.cash_out] == [
        "run",
        "push-up",
        "sit-up",
    ]
    assert len(block.lines) == 1


def test_stations_of_intervals_are_numbered():
    (block,) = understood("EMOM 10\nodd: 10 push-ups\neven: 12 air squats").blocks
    assert [line.station for line in block.lines] == [1, 2]


def test_under_a_scheme_amounts_are_open_and_in_work_and_rest_they_are_the_work():
    (scheme,) = understood("21-15-9 for time\npush-ups\nair squats").blocks
    assert [line.amount for line in scheme.lines] == [None, None]
    (work,) = understood("40 s on, 20 s off, 6 rounds\npush-ups").blocks
    assert (work.lines[0].amount, work.lines[0].unit) == (40, "s")


def test_one_arm_is_no_amount():
    (block,) = understood("21-15-9 for time\none-arm rows\ntwo-handed floor presses").blocks
    assert [line.amount for line in block.lines] == [None, None]


def test_a_unique_near_spelling_is_read_and_told():
    read = read_session("AMARP 12\n10 puhs-ups\n12 gobelt squats", catalogue())
    assert read.session is not None
    assert [line.movement for line in read.session.blocks[0].lines] == ["push-up", "goblet squat"]
    assert [(one.line, one.read_as) for one in read.corrected] == [
        (1, "amrap"),
        (2, "push-up"),
        (3, "goblet squat"),
    ]
    assert read.not_understood == ()


NOT_UNDERSTOOD = [
    ("12 min amrap\n10 push-ups\n10 flying saucers", (3, 4, "flying saucers")),
    ("12 min amrap\n10 push-ups\n  🔥 10 flying saucers", (3, 8, "flying saucers")),
    ("12 min amrap\n10 Flying Saucers\n5 push-ups", (2, 4, "Flying Saucers")),
    ("12 min amrap", (1, 1, "12 min amrap")),
    ("amrap\n10 push-ups", (1, 1, "amrap")),
    ("10 push-ups\n20 air squats", (1, 1, "10 push-ups")),
    ("12 min amrap\n30 plank", (2, 1, "30 plank")),
    ("12 min amrap\npush-ups\n5 sit-ups", (2, 1, "push-ups")),
    ("12 min amrap\n0 push-ups", (2, 1, "0 push-ups")),
    ("12 min amrap\n10-8 push-ups", (2, 1, "10-8 push-ups")),
    ("12 min amrap\n12 goblet squats 24/16/12 kg", (2, 18, "24/16/12 kg")),
    ("4 RFT, rest 2-3\n10 push-ups", (1, 8, "rest")),
    ("AMRAP 12\nAMRAP 8\n10 push-ups", (2, 1, "AMRAP 8")),
    ("hello there", (1, 1, "hello there")),
    ("", (1, 1, "")),
]


HEIGHTS = [
    ("10 box jumps 60/50", "60/50 cm"),
    ("20 box jumps 24/20", "24/20 in"),
    ("10 box jumps 30/24", "30/24 in"),
    ("10 burpee box jump overs @ 24/20", "24/20 in"),
    ("12 box step-ups 50/40", "50/40 cm"),
]


@pytest.mark.parametrize(("text", "height"), HEIGHTS)
def test_a_bare_pair_behind_what_is_done_on_a_box_is_its_height(text, height):
    (block,) = understood(f"AMRAP 12\n{text}").blocks
    assert block.lines[0].notes == height
    assert block.lines[0].loads_kg == ()


@pytest.mark.parametrize(
    "text", ["12 step-ups 24/16", "12 box step-ups 24/16 kg", "12 step-ups with 2 x 24/2 x 16"]
)
def test_a_pair_that_can_be_held_is_a_load(text):
    (block,) = understood(f"AMRAP 12\n{text}").blocks
    assert [float(load) for load in block.lines[0].loads_kg] == [24, 16]


@pytest.mark.parametrize(
    ("text", "place"), NOT_UNDERSTOOD, ids=[repr(text[-30:]) for text, _ in NOT_UNDERSTOOD]
)
def test_what_is_not_understood_is_named_at_its_place(text, place):
    (first, *_) = read_session(text, catalogue()).not_understood
    assert (first.line, first.column, first.text) == place


def test_what_is_not_understood_comes_with_a_guess_where_there_is_a_good_one():
    read = read_session("12 min amrap\n10 knee pushback ups", catalogue())
    assert [one.guess for one in read.not_understood] == ["knee push-up"]


def test_a_block_with_an_unread_line_says_that_it_is_partial():
    read = read_session("12 min amrap\n10 push-ups\n10 flying saucers", catalogue())
    assert read.session is not None
    assert read.session.blocks[0].partial


def test_ten_thousand_characters_of_garbage_are_named_line_by_line_within_bounds():
    for garbage in ("x " * 5000, "1-" * 5000, "9" * 10_000, "(" * 10_000, "a\n" * 5000, "10 10/10 @ " * 900):
        read = read_session(garbage, catalogue())
        assert read.not_understood
        assert len(read.not_understood) < 400


def test_under_a_scheme_calories_are_said_without_a_number():
    found = understood("21-15-9\nthrusters\ncal row")
    _, row = found.blocks[0].lines
    assert (row.movement, row.amount, row.unit) == ("row", None, "kcal")
    assert understood(write_session(found)) == found


def test_rounds_whose_score_is_not_told_are_read_and_only_their_score_is_open():
    read_ = read_session("4 rounds\n10 push-ups\n20 air squats", catalogue())
    assert [block.rounds for block in read_.session.blocks] == [4]
    assert (read_.unread, read_.is_unscored) == ((), True)


def test_minutes_of_stretching_are_never_run():
    text = "warm up jog 5 mins\n4 rounds\n10 push-ups\nstretch 5 mins"
    blocks = read_session(text, catalogue()).session.blocks
    assert [line.movement for block in blocks for line in block.lines] == ["run", "push-up", "stretch"]


def test_a_station_that_takes_no_minute_is_called_none():
    session = read_session(
        "30 s work / 15 s rest, 3 rounds\nStation 1: squats\nStation 2: lunges", catalogue()
    ).session
    assert session is not None
    assert "Station 2: lunge" in write_session(session)
