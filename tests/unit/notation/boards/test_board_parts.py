"""Where a board's parts begin: in paragraphs, under each other, and what a part is when nobody says so."""

import pytest

from core.movements.lookup import catalogue
from core.notation.boards.session import read_session
from core.notation.boards.writing import write_session
from core.sessions.values import BlockKind, Format
from tests.unit.notation.boards.test_session_words import fields, understood


def read(text):
    return read_session(text, catalogue()).session.blocks


PARAGRAPHS = [
    "Back squat 5 x 5 @ 60 kg. Then 3 rounds for time: 10 burpees, 200 m run. 8 min cap.",
    "Back squat 5 x 5 @ 60 kg\nthen 3 rounds for time: 10 burpees, 200 m run. 8 min cap",
    "Morning all! Back squat 5 x 5 @ 60 kg. Have some water. 3 rounds for time of 10 burpees, 200 m run, cap 8 min.",
]


@pytest.mark.parametrize("text", PARAGRAPHS)
def test_a_paragraph_is_read_sentence_by_sentence(text):
    first, second = read(text)
    assert (first.format, first.rounds, second.format, second.rounds) == ("sets", 5, "for_time", 3)
    assert (second.cap_s, [line.movement for line in second.lines]) == (480, ["burpee", "run"])


ONE_SENTENCE = [
    "AMRAP 12: 10 burpees, max. 5 pull-ups",
    "1. AMRAP 12\n10 burpees\n5 pull-ups",
    "AMRAP 12 (no rest. None. At all.)\n10 burpees\n5 pull-ups",
]


@pytest.mark.parametrize("text", ONE_SENTENCE)
def test_a_dot_that_ends_no_sentence_parts_nothing(text):
    assert len(read(text)) == 1


def test_what_joins_two_things_that_each_say_how_they_are_done_parts_them():
    first, second = read("Tabata squats, tabata sit-ups")
    assert ([one.movement for one in first.lines], [one.movement for one in second.lines]) == (
        ["air squat"],
        ["sit-up"],
    )


def test_how_it_is_done_may_be_said_behind_what_is_done_in_any_number_of_rows():
    (block,) = read("21-15-9\nthrusters 40/30\npull-ups\nfor time, cap 12. Round back? Stop.")
    assert fields(block, ("format", "cap_s")) == {"format": "for_time", "cap_s": 720}


def test_sets_under_each_other_are_done_one_after_the_other_each_with_its_rest():
    blocks = understood(
        "4 x 8 bench press @ 60 kg, rest 90 s\n3 x 10 bent-over rows @ 40 kg, rest 60 s"
    ).blocks
    assert [(block.rounds, block.rest_s, block.lines[0].movement) for block in blocks] == [
        (4, 90, "bench press"),
        (3, 60, "bent-over row"),
    ]


def test_what_has_the_letter_of_the_row_before_is_done_in_turn_with_it():
    (block,) = understood(
        "A1. 3 x 8 bench press @ 60 kg\nA2. 3 x 10 bent-over rows @ 40 kg\nrest 60 s"
    ).blocks
    assert len(block.lines) == 2


LIFTS = ["Deadlift 5 x 3 @ 100 kg", "Front squat 3-3-2-2-1", "find a 1RM bench press", "5 x 5 pull-ups"]


@pytest.mark.parametrize("text", LIFTS)
def test_sets_that_nobody_put_under_a_heading_are_strength_work(text):
    assert understood(text).blocks[0].kind == "strength"


def test_a_heading_says_what_kind_of_work_sets_are():
    assert understood("Main\nDeadlift 5 x 3 @ 100 kg").blocks[0].kind == "main"


IN_SETS = [
    ("Plank 3 x 60 s", {"format": "hold", "rounds": 3}, 60),
    ("dead hang 3 x max", {"format": "hold", "rounds": 3}, None),
    ("pull-ups - 5 sets, max each", {"format": "max_reps", "rounds": 5}, None),
    ("push-ups 3 x max, rest 2 min", {"format": "max_reps", "rounds": 3, "rest_s": 120}, None),
]


@pytest.mark.parametrize(("text", "wanted", "amount"), IN_SETS)
def test_holds_and_as_much_as_goes_may_come_in_sets_and_are_written_as_they_were_meant(text, wanted, amount):
    (block,) = understood(text).blocks
    assert (fields(block, wanted), block.lines[0].amount) == (wanted, amount)
    written = write_session(understood(text))
    assert ("as long as possible" in written.lower()) is (block.format == "hold" and amount is None)


def test_a_beginning_and_an_end_are_done_once():
    (block,) = understood(
        "For time\nStart: 50 rope skips\nThen 5 rounds of\n8 push-ups\nEnd: 400 m run"
    ).blocks
    assert ([one.movement for one in block.buy_in], [one.movement for one in block.cash_out]) == (
        ["rope skip"],
        ["run"],
    )


# Short forms of the trade (common practice, no source).
def test_a_rest_behind_what_is_done_once_stands_with_it_and_is_written_so():
    session = understood("AMRAP 6\n6 burpees\n\nrest 3\n\nAMRAP 6\n6 push-ups")
    assert [block.rest_s for block in session.blocks] == [180, None]
    assert "Then rest 3 min" in write_session(session)


LABELLED = "Power: box jump 5 x 3\nForce: sumo deadlift 5 x 4 @ 77.5%, pause 2 min\nFinish: plank 3 x 1 min"


def test_a_word_in_front_of_a_colon_opens_a_part_where_it_says_how_often():
    assert [(block.format, block.rounds, block.rest_s) for block in read(LABELLED)] == [
        ("sets", 5, None),
        ("sets", 5, 120),
        ("hold", 3, None),
    ]


def test_how_many_of_each_is_for_every_line_that_tells_no_amount():
    (block,) = understood("3 sets of 10-12:\ngoblet squat 14 kg\nfloor press 10 kg").blocks
    assert [(line.amount, line.amount_to) for line in block.lines] == [(10, 12), (10, 12)]


def test_what_a_slash_joins_are_two_under_a_scheme_and_a_choice_behind_an_amount():
    (block,) = read("For time\n50-40-30\nrope skips / sit-ups")
    assert len(block.lines) == 2
    (block,) = read("For time\n50 squats\n400 m run / bike")
    assert len(block.lines) == 2


UNLIKE = [
    ("preseason test:\n2k row\n10 min break\nmax strict pull-ups", ["row", "pull-up"]),
    ("TEST\n1 - 1RM deadlift\n2 - max cals 60 sec bike\n3 - 1 mile run", ["deadlift", "ride", "run"]),
    ("Press 5x5\nChin-ups: 25 total\nPlank 1 x max", ["overhead press", "chin-up", "plank"]),
]


@pytest.mark.parametrize(("text", "movements"), UNLIKE)
def test_what_is_counted_otherwise_is_a_part_of_its_own(text, movements):
    assert [[line.movement for line in block.lines] for block in read(text)] == [[one] for one in movements]


def test_bare_metres_between_other_work_are_run():
    (block,) = read("2 rounds for time\n20 burpees\n400 m\n30 walking lunges\n400 m")
    assert [line.movement for line in block.lines] == ["burpee", "run", "walking lunge", "run"]


MORE_OF_ONE = [
    ("Deadlift, build to a heavy 5, then 3 x 5 at 90 % of it", [("max_load", None), ("sets", 3)]),
    ("Squat: heavy single, then 3x3 at 80%", [("max_load", None), ("sets", 3)]),
    ("Find a heavy 3: deadlift, 20 min.\nThen 3x8 at 70% of that 3", [("max_load", None), ("sets", 3)]),
    ("Find a heavy 3: deadlift\n\nThen lighter: 3 x 8 at 60% of that", [("max_load", None), ("sets", 3)]),
]


@pytest.mark.parametrize(("text", "wanted"), MORE_OF_ONE)
def test_sets_behind_the_heaviest_are_of_the_same(text, wanted):
    blocks = read(text)
    assert [(block.format, block.rounds) for block in blocks] == wanted
    assert blocks[0].lines[0].movement == blocks[1].lines[0].movement


def test_distances_that_change_are_as_many_lines():
    (block,) = read("For time\n500-400-300 m row")
    assert [(line.amount, line.unit) for line in block.lines] == [(500, "m"), (400, "m"), (300, "m")]


def test_what_is_told_behind_the_work_belongs_to_it():
    (block,) = understood("1 min at each station\nburpees\nwall balls\nrest 1 min\nx 3").blocks
    assert (block.every_s, block.rounds, block.rest_s) == (60, 3, 60)


@pytest.mark.parametrize(
    "text", ["Superset:\n3 x 8 bench press\n3 x 10 bent-over rows", "A1 3 x 8 dips\nA2 3 x 10 curls"]
)
def test_what_is_called_a_superset_stays_together(text):
    (block,) = read(text)
    assert (block.rounds, len(block.lines)) == (3, 2)


def test_a_name_above_what_is_done_of_it_is_no_line():
    (block,) = read("Clean. Every 90 s x 8: 2 squat cleans 75%")
    assert [line.amount for line in block.lines] == [2]


def test_a_distance_for_time_with_a_rest_behind_it_is_a_trial():
    assert [block.format for block in read("500 m ski for time\nrest 5\n500 m row for time")] == [
        "time_trial"
    ] * 2


def test_a_rest_between_all_is_the_rest_of_all_sets_above_it():
    blocks = understood(
        "Dead hang 3 x max\nFarmer hold 3 x 40 s, 2 x 40 kg\nPlank 3 x 30 s\n90 s between all"
    ).blocks
    assert [block.rest_s for block in blocks] == [90, 90, 90]


def test_a_time_beside_the_heaviest_is_how_long_there_is_for_it():
    (block,) = understood("push jerk - up to a heavy double, 12 min").blocks
    assert (block.format, block.minutes, block.lines[0].amount) == ("max_load", 12, 2)


@pytest.mark.parametrize(
    "text",
    [
        "Warm up\n5 min easy jog\n10 inchworms\n\nA) Goblet squat 4x8 @ 20/14kg, rest 90s",
        "Warm up\n5 min easy jog\n10 inchworms\nA. Goblet squat 4x8 @ 20/14kg, rest 90s",
    ],
)
def test_sets_behind_a_warm_up_of_several_things_are_no_part_of_it(text):
    session = read_session(text, catalogue()).session
    assert session is not None
    warm_up, strength = session.blocks
    assert (warm_up.rounds, warm_up.rest_s, len(warm_up.lines)) == (None, None, 2)
    assert (strength.rounds, strength.rest_s) == (4, 90)


TOLD_BELOW = ["B1) lunges 10\nB2) plank 40 s\n3 sets, r1' after B2", "B1 lunges 10\nB2 plank 40 s\nx3 r60s"]


@pytest.mark.parametrize("text", TOLD_BELOW)
def test_how_often_may_be_told_below_what_is_done_in_turn(text):
    first, *_ = read(f"{text}\n\nC) 3 rounds for time\n400 m run\n15 swings 20 kg")
    assert fields(first, ("format", "rounds", "rest_s")) == {"format": "sets", "rounds": 3, "rest_s": 60}
    assert [line.movement for line in first.lines] == ["lunge", "plank"]


def test_rest_after_the_pair_is_the_rest_of_each_pair_above():
    text = "superset A 4x\nA1 deadlifts 8\nA2 push-ups 10\nsuperset B 3x\nB1 curls 8\nB2 lunges 8\n75 s after each pair"
    assert [block.rest_s for block in read(text)] == [75, 75]


HEADED = ["BALANCE (once)", "Bit of fun", "Voice:"]


@pytest.mark.parametrize("heading", HEADED)
def test_a_heading_that_nobody_knows_opens_a_part_and_is_shown(heading):
    text = f"Strength\n2 sets of 8 push-ups\n\n{heading}\n20 s one-leg stand\n10 arm circles"
    read_ = read_session(text, catalogue())
    assert [block.kind for block in read_.session.blocks] == ["strength", "main"]
    assert [one.looks_like for one in read_.not_understood if one.line == 4] in (["note"], ["note", "score"])


@pytest.mark.parametrize("greeting", ["See you at six", "20 minutes of fun!", "and then"])
def test_what_is_said_to_people_opens_no_part(greeting):
    assert len(read(f"3 rounds for time\n10 push-ups\n\n{greeting}\n10 air squats")) == 1


def test_what_goes_on_in_the_row_of_a_heading_is_of_its_part():
    warm_up, again, work = read("Warm-up: 500 m row, then 2 rounds of 8 good mornings\nStrength: squats 3x5")
    assert (warm_up.kind, again.kind, again.rounds, work.kind) == ("warm-up", "warm-up", 2, "strength")


@pytest.mark.parametrize("heading", ["Skill 10 min", "Skill 10 min:", "Skill: 10 min"])
def test_how_long_a_part_takes_may_stand_in_its_heading(heading):
    skill, _ = read(f"{heading}\n3 power snatches\n\nMain\nAMRAP 9\n9 burpees")
    assert (skill.kind, skill.minutes) == ("skill", 10)


GOING = [
    ("run night\n10 min easy\n6 x 400 m, 90 s rest\n5 min easy home", "run"),
    ("10 min easy\n6 x 500 m row, 2 min rest\n5 min easy", "row"),
]


@pytest.mark.parametrize(("text", "movement"), GOING)
def test_minutes_without_a_name_go_the_way_of_all_else(text, movement):
    blocks = read(text)
    assert [block.lines[0].movement for block in blocks] == [movement] * 3
    assert [block.kind for block in blocks] == ["warm-up", "main", "cool-down"]


def test_where_several_ways_are_named_minutes_without_a_name_are_asked_about():
    read_ = read_session("500 m row\n400 m run\n\n10 min easy", catalogue())
    assert [one.text for one in read_.not_understood if one.line == 4] == ["10 min easy"]


def test_a_movement_in_the_title_is_done_only_where_what_is_below_names_nothing():
    easing = read_session("Easing into March\n3 rounds for time\n10 squats", catalogue()).session
    assert (easing.title, [line.movement for line in easing.blocks[0].lines]) == (
        "Easing into March",
        ["air squat"],
    )
    (block,) = read("Deadlift day\n5x5 @ 60 kg")
    assert (block.rounds, block.lines[0].movement) == (5, "deadlift")


def test_a_rest_below_a_list_of_tests_lies_between_them_and_is_none_of_the_list():
    text = "1 max push ups 2 min\n2 max sit ups 2 min\n3 dead hang as long as you can\n4 min rest between. tell me"
    first, second, _ = read(text)
    assert (first.rest_s, second.rest_s, second.lines[0].movement) == (240, 240, "sit-up")


@pytest.mark.parametrize(
    "work",
    [
        "A) Deadlift 4 x 6, rest 2 min",
        "As many rounds as possible in 15 minutes:\n10 push-ups",
        "Back squat 5 x 5 at 75%",
        "3 rounds for time, cap 12\n10 push-ups",
    ],
)
def test_a_warm_up_of_which_nothing_is_written_holds_no_work(work):
    for heading in ("Warm up", "Warm up 8 minutes"):
        (part,) = read_session(f"{heading}\n{work}", catalogue()).session.blocks
        assert part.kind is not BlockKind.WARM_UP


def test_sets_below_a_trial_of_one_row_are_a_part_of_their_own():
    trial, sets = read_session("5 km run for time\n3x10 squats", catalogue()).session.blocks
    assert (trial.format, trial.rounds) == (Format.TIME_TRIAL, None)
    assert (sets.format, sets.rounds) == (Format.SETS, 3)


def test_sets_that_come_then_are_no_part_of_rounds_that_a_clock_ends():
    rounds, sets = read_session("AMRAP 12\n10 squats\nthen 3 x 30 s plank", catalogue()).session.blocks
    assert (rounds.format, rounds.rounds, len(rounds.lines)) == (Format.AMRAP, None, 1)
    assert sets.rounds == 3


def test_work_below_minutes_of_a_warm_up_is_a_part_of_its_own():
    warm_up, work = read("warm up 5 min mobility\nAMRAP 10\n10 squats")
    assert (warm_up.kind, [line.movement for line in warm_up.lines]) == ("warm-up", ["warm-up flow"])
    assert fields(work, ("kind", "format", "minutes")) == {"kind": "main", "format": "amrap", "minutes": 10}


def test_all_below_the_heading_of_a_warm_up_is_warm_up_until_an_empty_row_or_a_race():
    text = (
        "Warm-up\n5 min easy row\n2 rounds: 10 hip hinges, 10 arm circles\n{}\n3 rounds for time: 10 burpees"
    )
    kinds = [block.kind for block in read_session(text.format(""), catalogue()).session.blocks]
    assert kinds == [BlockKind.WARM_UP, BlockKind.WARM_UP, BlockKind.MAIN]
    assert [
        block.kind for block in read_session(text.format("10 squats"), catalogue()).session.blocks
    ] == kinds


@pytest.mark.parametrize(
    "warm_up",
    [
        "Warm-up 10 min",
        "Warm up as usual",
        "Warm-up\n5 min row\n10 squats",
        "Warm-up\n5 min row\n2 x 10 squats",
        "Warm-up\n2 rounds\n10 squats\n5 inchworms",
    ],
)
@pytest.mark.parametrize(
    "work", ["Press 5 x 5 @ 30 kg\nDips 3 x 8", "Press 5 x 5\nDips 3 x 8\ncool-down\n5 min walk"]
)
def test_a_warm_up_is_over_where_sets_begin_and_no_other_work_is_ahead(warm_up, work):
    parts = read(f"{warm_up}\n{work}")
    sets = [part for part in parts if part.lines[0].movement in {"overhead press", "dip"}]
    assert [part.kind for part in sets] == [BlockKind.STRENGTH] * 2
    assert [part.rounds for part in sets] == [5, 3]
    assert all(part.kind in {BlockKind.WARM_UP, BlockKind.COOL_DOWN} for part in parts if part not in sets)


def test_a_finisher_is_not_the_work_that_a_warm_up_leads_to():
    squats, push_ups, finisher = read(
        "Warm-up 10 min\nFront squat 5 x 8 @ 16 kg\nPush-ups 3 x 10\nFinisher: plank 2 min"
    )
    assert (squats.kind, push_ups.kind, finisher.name) == (BlockKind.STRENGTH, BlockKind.STRENGTH, "Finisher")


@pytest.mark.parametrize(
    "behind", ["Main\nPress 5 x 5 @ 30 kg", "\nPress 5 x 5", "3 rounds for time: 10 burpees"]
)
def test_sets_of_a_warm_up_stay_in_it_where_the_work_begins_further_down(behind):
    first, *others = read(f"Warm-up\n3 x 10 band pull-aparts\n3 x 10 squats\n{behind}")
    assert (first.kind, len(first.lines)) == (BlockKind.WARM_UP, 2)
    assert all(part.kind is not BlockKind.WARM_UP for part in others)


def test_rounds_below_a_warm_up_are_the_work_where_nothing_else_is():
    warm_up, work = read("Warm-up\nrow 5 min\n3 rounds for quality of\n10 thrusters @ 30 kg\n10 burpees")
    assert (warm_up.kind, work.kind, work.rounds) == (BlockKind.WARM_UP, BlockKind.MAIN, 3)


@pytest.mark.parametrize("said", ["Warm-up 10 min", "Warm up as usual", "wu 8 min easy"])
def test_an_easy_part_that_is_left_to_each_is_passed_on_in_words(said):
    told = read_session(f"{said}\n\nAMRAP 10\n10 squats", catalogue())
    assert [(one.text, one.looks_like) for one in told.not_understood] == [(said, "note")]
    assert [part.kind for part in told.session.blocks] == [BlockKind.MAIN]


def test_a_load_above_all_that_is_said_of_each_weight_is_of_no_side():
    text = "10/7 kg each\n30 s on 30 s off, 3 rounds\nfront squat\npush press"
    (block,) = read_session(text, catalogue()).session.blocks
    assert [(line.per_side, len(line.loads_kg)) for line in block.lines] == [(False, 2)] * 2


def test_a_pair_with_another_letter_ends_the_part_before():
    text = "A  Clean, every 75s x 10, 1 rep\nB1 Push up 4 x 12\nB2 Curl 4 x 10\nC  6 min row"
    assert [len(block.lines) for block in read_session(text, catalogue()).session.blocks] == [1, 2, 1]
