"""Lines as they stand on a board: numbers without a unit, calories in any order, tempos, what stands behind a name."""

import pytest

from core.movements.lookup import catalogue
from core.notation.boards.session import read_session
from core.notation.boards.writing import write_session
from tests.unit.notation.boards.test_session_words import fields, understood


def line_of(text):
    return understood(text).blocks[-1].lines[-1]


HEIGHTS = [
    ("15 step ups 50", 15, "50 cm"),
    ("15 step-ups 50/40", 15, "50/40 cm"),
    ("12 box step-ups @ 50 cm", 12, "50 cm"),
    ("12 step-ups @ 20 in", 12, "20 in"),
    ("12 box step overs 24", 12, "24 in"),
    ("10 box jumps 60", 10, "60 cm"),
    ("step ups 50 x 20", 20, "50 cm"),
]


@pytest.mark.parametrize(("typed", "amount", "height"), HEIGHTS)
def test_a_number_behind_what_is_done_on_a_box_is_how_high_it_is(typed, amount, height):
    line = line_of(f"AMRAP 12\n{typed}")
    assert (line.amount, line.notes, line.loads_kg) == (amount, height, ())


def test_a_height_needs_no_amount_where_the_scheme_gives_it():
    line = line_of("21-15-9\nstep ups 50")
    assert (line.amount, line.notes) == (None, "50 cm")


@pytest.mark.parametrize("typed", ["Minute 2: 40 step-ups", "Min 2: 60 box jumps"])
def test_a_number_behind_the_name_of_a_turn_is_no_height(typed):
    read = read_session(f"EMOM 10\nMinute 1: 10 push-ups\n{typed}", catalogue())
    assert read.not_understood == ()
    assert read.session.blocks[0].lines[1].amount in {40, 60}


@pytest.mark.parametrize("typed", ["8 step ups 24", "10 push-ups 20"])
def test_a_number_that_may_be_this_or_that_is_asked_about(typed):
    (left,) = read_session(f"AMRAP 12\n5 burpees\n{typed}", catalogue()).not_understood
    assert left.text in typed


LOADS = [
    ("AMRAP 12\n10 OH lunges 20", 20),
    ("AMRAP 12\n20 dumbbell snatches alt 22,5", 22.5),
    ("AMRAP 12\n10 thrusters 43", 43),
    ("21-15-9\nthrusters 43", 43),
]


@pytest.mark.parametrize(("text", "load"), LOADS)
def test_a_number_behind_what_is_lifted_is_its_load(text, load):
    assert fields(line_of(text), ["loads_kg"]) == {"loads_kg": (load,)}


CALORIES = [
    ("AMRAP 12\nrow cal 10", {"amount": 10, "unit": "kcal"}),
    ("AMRAP 12\nrow 10 cal", {"amount": 10, "unit": "kcal"}),
    ("AMRAP 12\n10 cal row", {"amount": 10, "unit": "kcal"}),
    ("AMRAP 12\nbike cals: 15", {"amount": 15, "unit": "kcal"}),
    ("max cal row in 2 min", {"amount": None, "unit": "kcal"}),
    ("row max cals in 2 min", {"amount": None, "unit": "kcal"}),
    ("max calories bike in 2 min", {"amount": None, "unit": "kcal"}),
    ("2 min max cal row", {"amount": None, "unit": "kcal"}),
    ("21-15-9\nburpees\nrow (cal)", {"amount": None, "unit": "kcal"}),
    ("21-15-9\nburpees\nrow for cals", {"amount": None, "unit": "kcal"}),
    ("40s on 20s off x 5\nrow for cals", {"amount": 40, "unit": "s", "notes": "for calories"}),
    ("max row in 2 min", {"amount": None, "unit": "m"}),
]


@pytest.mark.parametrize(("text", "wanted"), CALORIES)
def test_calories_stay_calories_wherever_they_stand(text, wanted):
    assert fields(line_of(text), wanted) == wanted


TEMPOS = [
    ("DB bench press 4x8-10 @ 3-1-1", "3-1-1"),
    ("Press 4 x 6-8, 2-0-1-0", "2-0-1-0"),
    ("Back squat 5x5 @ 75% (3-1-1)", "3-1-1"),
    ("3 sets\n8 goblet squats @ 24 tempo 3-1-1", "3-1-1"),
    ("3 sets\n8 goblet squats @ 24 @3-1-x-1", "3-1-x-1"),
]


@pytest.mark.parametrize(("text", "tempo"), TEMPOS)
def test_digits_of_a_tempo_are_no_scheme(text, tempo):
    block = understood(text).blocks[0]
    assert (block.scheme, block.lines[0].tempo) == ((), tempo)


def test_digits_without_sets_stay_a_scheme():
    assert understood("5-3-1 deadlifts").blocks[0].scheme == (5, 3, 1)


EACH_SET = [
    ("Deadlift 5-5-5 @ 65/75/85%", [(5, 65), (5, 75), (5, 85)]),
    ("press 3x5 @ 70-75-80%", [(5, 70), (5, 75), (5, 80)]),
    ("press 3x5 60/65/70 %", [(5, 60), (5, 65), (5, 70)]),
    ("squat 10-8-6 @ 60%, 65%, 70%", [(10, 60), (8, 65), (6, 70)]),
]


@pytest.mark.parametrize(("text", "wanted"), EACH_SET)
def test_a_share_for_each_set_makes_a_line_of_each(text, wanted):
    (block,) = understood(text).blocks
    assert [(line.amount, line.load_rule.percent) for line in block.lines] == wanted
    assert (block.format, block.rounds, block.scheme) == ("sets", None, ())


def test_an_effort_and_a_weight_for_each_set_make_a_line_of_each():
    (block,) = understood("deadlift 3x5 @ rpe 6, 7, 8").blocks
    assert [line.load_rule.effort for line in block.lines] == [6, 7, 8]
    (block,) = understood("12-10-8 goblet squats 12-14-16 kg").blocks
    assert [(line.amount, [float(load) for load in line.loads_kg]) for line in block.lines] == [
        (12, [12]), (10, [14]), (8, [16]),
    ]  # fmt: skip


def test_a_list_that_is_no_share_for_each_set_is_a_note():
    (block,) = understood("deadlift 4x5 @ 65/75/85%").blocks
    assert (block.rounds, block.lines[0].notes) == (4, "65/75/85%")


def test_the_last_set_that_is_as_many_as_go_is_noted():
    (block,) = understood("Deadlift 5-5-5+ @ 65/75/85%").blocks
    assert block.notes.startswith("5-5-5+")


TAILS = [
    ("30 burpees over a stick", "burpee", "over a stick"),
    ("800 m run together", "run", "together"),
    ("3 min easy row / bike", "row", "or bike"),
    ("20 pull-ups or ring rows", "pull-up", "or ring rows"),
    ("20 lunges bw", "lunge", "bw"),
    ("10 push-ups in the garden", "push-up", "in the garden"),
]


@pytest.mark.parametrize(("typed", "movement", "note"), TAILS)
def test_where_and_with_whom_is_kept_beside_the_movement(typed, movement, note):
    line = line_of(f"AMRAP 12\n{typed}")
    assert line.movement == movement
    assert note in line.notes


@pytest.mark.parametrize(
    "typed", ["8 dips off a chair", "8 walks from a plank", "10 push-ups to a headstand"]
)
def test_what_makes_another_movement_is_no_mere_note(typed):
    assert read_session(f"AMRAP 12\n5 burpees\n{typed}", catalogue()).not_understood


PER_SIDE = [
    "10 lunges e/side",
    "10 lunges ea leg",
    "10 lunges /leg",
    "10 lunges per leg",
    "10 lunges each side",
]


@pytest.mark.parametrize("typed", PER_SIDE)
def test_each_side_is_read_however_short(typed):
    line = line_of(f"AMRAP 12\n{typed}")
    assert (line.movement, line.per_side) == ("lunge", True)


SECONDS = [('3x 45" side plank/side', 45), ("3 rounds for time\n5 burpees\n:20 plank", 20)]


@pytest.mark.parametrize(("text", "seconds"), SECONDS)
def test_seconds_are_read_from_their_marks(text, seconds):
    assert fields(line_of(text), ["amount", "unit"]) == {"amount": seconds, "unit": "s"}


def test_rows_with_a_load_are_done_with_it():
    assert line_of("AMRAP 12\n5 rows per arm @ 20").movement == "single-arm row"
    assert line_of("AMRAP 12\n200 m row").movement == "row"


def test_two_movements_in_one_are_joined_by_a_sign_too():
    line = line_of("AMRAP 12\n10 DB hang clean & jerk 22.5/15")
    assert fields(line, ["movement", "amount", "loads_kg"]) == {
        "movement": "clean and jerk",
        "amount": 10,
        "loads_kg": (22.5, 15),
    }


@pytest.mark.parametrize("work", ["3 rounds for time\n30 s row @ 20 kg", "40 s on 20 s off x 4\nrow @ 20 kg"])
def test_a_row_with_a_weight_for_time_is_no_machine_and_stays_what_it_is_when_written(work):
    read = understood(work)
    again = understood(write_session(read))
    assert read.blocks[0].lines[0].movement == again.blocks[0].lines[0].movement == "bent-over row"


@pytest.mark.parametrize("work", ["30 s row", "200 m row", "row 10 cal", "3 x 30 s row @ rpe 8"])
def test_a_row_with_nothing_in_the_hands_is_on_the_machine(work):
    assert line_of(f"AMRAP 12\n10 burpees\n{work}" if "x" not in work else work).movement == "row"


@pytest.mark.parametrize(
    "typed",
    [
        "Max calories in 10 min\nrow",
        "10 min max calories row",
        "max calories in 10 min on the rower",
        "Max cal row in 10 min",
    ],
)
def test_as_many_calories_as_can_be_are_read_and_written_as_such(typed):
    read = read_session(typed, catalogue())
    assert read.session is not None
    assert not read.not_understood
    (block,) = read.session.blocks
    assert (block.format, block.minutes, block.lines[0].unit) == ("max_reps", 10, "kcal")
    assert write_session(read.session).endswith("Max calories in 10 min\ncal row")


@pytest.mark.parametrize(
    ("typed", "format_", "notes"),
    [
        ("FT: 21-15-9\ndeadlifts 100/70\nburpees\n10min cap", "for_time", None),
        ("3 rounds for time: 400 run, 21 swings, 12 pull-ups\nno cap", "for_time", "no cap"),
        ("Partner workout, teams of 2\n30 min amrap\n50 cal row\n30 pull-ups", "amrap", None),
    ],
)
def test_short_words_beside_a_session_are_read(typed, format_, notes):
    read = read_session(typed, catalogue())
    assert read.session is not None
    assert not read.not_understood
    (block,) = read.session.blocks
    assert (block.format, block.notes) == (format_, notes)


def test_a_run_without_a_unit_is_in_metres():
    (run, _) = session_of("AMRAP 12\n400 run\n10 burpees").blocks[0].lines
    assert (run.amount, run.unit) == (400, "m")


def test_a_ladder_without_an_end_in_some_minutes_goes_on_for_so_long():
    (block,) = session_of("Ladder\n2-4-6-8-...\nthrusters 40/30\npull-ups\nin 10 mins").blocks
    assert (block.format, block.minutes, block.cap_s) == ("amrap", 10, None)


def session_of(typed):
    session = read_session(typed, catalogue()).session
    assert session is not None
    return session


def test_a_side_is_kept_where_as_many_as_go_are_done_on_each():
    read = read_session("Max reps\nlunges each side", catalogue())
    assert read.session is not None
    assert read.session.blocks[0].lines[0].per_side
    again = read_session(write_session(read.session), catalogue())
    assert again.session.blocks[0].lines[0].per_side


@pytest.mark.parametrize(
    "text", ["ten metres shuttle run", "ten meter shuttle run", "shuttle run ten metres"]
)
def test_a_distance_may_be_written_out(text):
    line = line_of(f"AMRAP 12\n{text}")
    assert (line.movement, line.amount, line.unit) == ("shuttle run", 10, "m")


@pytest.mark.parametrize(
    ("typed", "amount"), [("Row 500 m x 4", 500), ("500 m row x 4", 500), ("12 cal bike x 4", 12)]
)
def test_what_stands_behind_an_amount_with_its_unit_is_how_often(typed, amount):
    (block,) = understood(f"{typed}, rest 2 min").blocks
    assert (block.rounds, block.rest_s, block.lines[0].amount) == (4, 120, amount)


def test_what_is_collected_may_be_done_in_parts():
    line = line_of("Cool-down\naccumulate 2 min plank hold")
    assert (line.movement, line.amount, line.notes) == ("plank", 120, "in parts")


@pytest.mark.parametrize("text", ["Max hold: plank", "Max hold\nplank", "plank: max hold"])
def test_a_hold_may_be_named_before_what_is_held(text):
    (block,) = understood(text).blocks
    assert (block.format, block.lines[0].movement) == ("hold", "plank")


def test_how_slowly_it_goes_down_is_noted():
    line = line_of("3 rounds, not for time\n10 ring rows, 3s down")
    assert (line.movement, line.amount, line.notes) == ("ring row", 10, "3 s down")


@pytest.mark.parametrize("heading", ["Conditioning: ", "Workout\n", "Finisher: "])
def test_other_words_for_the_main_part_are_headings(heading):
    (block,) = understood(f"{heading}12 min AMRAP\n10 burpees").blocks
    assert (block.kind, block.minutes) == ("main", 12)


def test_what_is_for_load_is_the_heaviest():
    (block,) = understood("For load: find your 3RM front squat in 15 min").blocks
    assert (block.format, block.minutes, block.lines[0].amount) == ("max_load", 15, 3)


SAID_OF_IT = [
    ("10 heel raises, hold the chair", "hold the chair"),
    ("10 deadlifts 60 kg, no straps pls", "no straps pls"),
    (
        "10 pull-ups. If the chin is not over the bar, use a band.",
        "If the chin is not over the bar, use a band",
    ),
]


@pytest.mark.parametrize(("typed", "note"), SAID_OF_IT)
def test_what_is_said_of_a_line_behind_it_is_its_note(typed, note):
    read = read_session(f"3 rounds for time\n{typed}", catalogue())
    assert (read.session.blocks[0].lines[0].notes, read.not_understood) == (note, ())


@pytest.mark.parametrize("talk", ["See you on Thursday!", "Bring some water", "Good luck everybody"])
def test_what_is_said_to_people_behind_a_line_is_no_note_of_it(talk):
    read = read_session(f"3 rounds for time\n10 push-ups. {talk}", catalogue())
    assert read.session.blocks[0].lines[0].notes is None
    assert [one.looks_like for one in read.not_understood] == ["note"]


@pytest.mark.parametrize("word", ["shopping", "waking", "spring", "stopping"])
def test_an_everyday_word_is_no_slip_for_a_movement(word):
    read = read_session(f"3 rounds for time\n10 push-ups\n5 {word}", catalogue())
    assert [line.movement for line in read.session.blocks[0].lines] == ["push-up"]


NAMED_IN_BRACKETS = [
    ("7 bellyups (sit-ups)", "sit-up"),
    ("10 knees up on the bar (hanging knee raise)", "hanging knee raise"),
    ("9 box jumps (step-ups)", "box jump"),
    ("10 push-ups (knees ok)", "push-up"),
]


@pytest.mark.parametrize(("typed", "movement"), NAMED_IN_BRACKETS)
def test_a_bracket_names_what_nobody_knows_and_nothing_that_is_known(typed, movement):
    (line,) = read_session(f"3 rounds for time\n{typed}", catalogue()).session.blocks[0].lines
    assert line.movement == movement


@pytest.mark.parametrize(
    "typed", ["2 x 12 deadlifts at 60 % from the 3RM", "2 x 12 deadlifts @ 60 % of your 1RM"]
)
def test_a_share_of_the_heaviest_looks_for_no_heaviest(typed):
    (block,) = understood(typed).blocks
    assert (block.format, block.lines[0].load_rule.percent) == ("sets", 60)


@pytest.mark.parametrize(
    ("typed", "of_what"),
    [
        ("Romanian deadlift 4x10 @ 60% of deadlift 1RM", "of deadlift 1rm"),
        ("Front squat 3 x 5 @ 80% of today's 3", "of today's 3"),
        ("Back squat 2 x 12 at 60 % from the 3RM", "from the 3rm"),
        ("Back squat 2 x 12 @ 60% of your own tested max", None),
    ],
)
def test_a_share_of_something_else_than_their_best_says_of_what(typed, of_what):
    (block,) = understood(typed).blocks
    assert block.lines[0].notes == of_what


def test_a_share_of_ones_best_is_not_said_of_what_nothing_is_lifted_in():
    read = read_session("A Back squat 5x5 @ 70%\nB Sit-ups 3x10\n70% of your own tested max", catalogue())
    assert read.session.blocks[1].lines[0].load_rule is None


@pytest.mark.parametrize(
    "typed", ["12 swings unbroken, 16/12", "12 swings, unbroken, 16/12", "12 unbroken swings 16/12"]
)
def test_a_set_in_one_go_is_a_rule_for_its_load_and_stays_so_when_written(typed):
    session = understood(f"4 rounds for time\n{typed}\n10 push-ups")
    line = session.blocks[0].lines[0]
    assert (line.load_rule.unbroken, [float(load) for load in line.loads_kg]) == (True, [16, 12])
    again = understood(write_session(session)).blocks[0].lines[0]
    assert (again.load_rule, again.loads_kg) == (line.load_rule, line.loads_kg)


def test_as_many_as_go_unbroken_follow_no_rule():
    (block,) = understood("max unbroken double-unders").blocks
    assert (block.lines[0].load_rule, block.lines[0].notes) == (None, "unbroken")


@pytest.mark.parametrize("typed", ["Band row, seated - 3 sets of 10", "Bent-over row, both arms: 3 x 10"])
def test_words_that_only_say_with_what_or_how_part_no_line(typed):
    (block,) = read_session(typed, catalogue()).session.blocks
    assert (block.rounds, len(block.lines), block.lines[0].amount) == (3, 1, 10)


@pytest.mark.parametrize("row", ["20 min, steady", "20 min, pairs, i go you go, full round each:"])
def test_a_time_above_the_lines_is_how_long_they_go_on(row):
    (block,) = read_session(f"{row}\n8 push-ups\n12 air squats", catalogue()).session.blocks
    assert (block.format, block.minutes) == ("amrap", 20)


@pytest.mark.parametrize("above", ["3 sets, 10 each:", "3 x 10 each", "3 sets of 10 each"])
def test_so_many_of_each_above_the_lines_is_how_many_each_has(above):
    block = read_session(f"{above}\nsquats\nlunges", catalogue()).session.blocks[0]
    assert (block.rounds, [line.amount for line in block.lines]) == (3, [10, 10])


ONE_SIDE = [
    ("left side plank 20 s", "side plank", "left"),
    ("right side plank 20 s", "side plank", "right"),
    ("20 s plank, left side", "plank", "left"),
    ("8 lunges left leg", "lunge", "left"),
]


@pytest.mark.parametrize(("typed", "movement", "side"), ONE_SIDE)
def test_a_side_before_a_name_takes_no_word_of_it(typed, movement, side):
    assert fields(line_of(f"AMRAP 12\n{typed}"), ["movement", "side"]) == {"movement": movement, "side": side}


def test_a_side_behind_a_count_is_of_each_and_before_a_name_it_is_none():
    assert line_of("AMRAP 12\n12 lunges x leg").per_side
    plank = line_of("3 x side plank 30 s")
    assert (plank.movement, plank.per_side) == ("side plank", False)


@pytest.mark.parametrize(
    ("typed", "movement"),
    [
        ("6 push presses per arm, 12 kg", "single-arm push press"),
        ("5 ohp one arm each side", "single-arm press"),
        ("8 presses each arm @ 16", "single-arm press"),
        ("8 presses, dumbbells in each hand", "overhead press"),
        ("10 db hang snatches 15/10", "single-arm snatch"),
    ],
)
def test_what_each_arm_does_by_itself_is_done_with_one(typed, movement):
    assert line_of(f"3 rounds for time\n{typed}").movement == movement


def test_how_far_each_of_several_goes_is_said_beside_them():
    assert fields(line_of("AMRAP 12\n7 shuttle runs of 10 m"), ["amount", "unit", "notes"]) == {
        "amount": 7,
        "unit": "reps",
        "notes": "of 10 m",
    }
    (block,) = understood("5 hill sprints of 60 m, walk back").blocks
    assert (block.rounds, block.lines[0].amount, block.lines[0].unit) == (5, 60, "m")


def test_two_numbers_beside_what_is_only_held_are_no_load():
    line = understood("plank challenge day 4/30, 2 x 50 s").blocks[0].lines[0]
    assert (line.loads_kg, line.amount) == ((), 50)


def test_a_number_with_a_gap_is_written_as_it_was_typed():
    assert line_of("10 000 m row").amount == 10000
    assert "10000 m row" in line_of("10,000 m row").written
    read = read_session("AMRAP 12\n10 000 m blorps", catalogue())
    assert [one.column for one in read.not_understood] == [10]


def test_what_is_named_and_then_counted_in_its_row_is_done_once():
    (line,) = understood("Cool-down\nBreathing - 5 slow breaths").blocks[0].lines
    assert (line.movement, line.amount) == ("breathing", 5)


def test_minutes_of_a_warm_up_are_how_much_is_done():
    assert (
        understood("Warm-up: 3 minutes rope, soft\n\n8 min amrap\n10 burpees").blocks[0].lines[0].amount
        == 180
    )
