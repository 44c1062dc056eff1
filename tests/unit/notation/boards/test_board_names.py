"""A movement among other words, clipped, by its initials, in another language, or not named again."""

import pytest

from core.movements.lookup import catalogue
from core.notation.boards.session import read_session


def read(text):
    return read_session(text, catalogue())


def lines(text):
    return [line for block in read(text).session.blocks for line in block.lines]


AMONG_WORDS = [
    ("400 m run all together", "run", "all together"),
    ("12 burpees over the rower", "burpee", "over the rower"),
    ("an easy 600 m jog to the pond and back", "run", "to the pond and back"),
    ("10 push-ups, elbows in", "push-up", "elbows in"),
    ("10 squats against the wall bars", "air squat", "against the wall bars"),
]


@pytest.mark.parametrize(("typed", "movement", "note"), AMONG_WORDS)
def test_what_stands_beside_a_name_is_kept_as_a_note(typed, movement, note):
    (line,) = lines(f"AMRAP 12\n{typed}")
    assert line.movement == movement
    assert note in line.notes


@pytest.mark.parametrize("typed", ["10 copenhagen planks", "10 squats to a headstand", "8 sots presses"])
def test_a_word_that_may_make_another_movement_leaves_the_name_unread(typed):
    assert [one.text for one in read(f"AMRAP 12\n5 burpees\n{typed}").not_understood]


CLIPPED = [
    ("12 tri ext", "triceps extension"),
    ("15 hkr", "hanging knee raise"),
    ("20 russ twists", "seated twist"),
]


@pytest.mark.parametrize(("typed", "movement"), CLIPPED)
def test_words_that_are_cut_short_are_read_where_one_movement_only_begins_so(typed, movement):
    (line,) = lines(f"AMRAP 12\n{typed}")
    assert line.movement == movement
    assert read(f"AMRAP 12\n{typed}").corrected


FOREIGN = [
    ("4 rondas por tiempo:\n10 flexiones\n8 zancadas por pierna", ["push-up", "lunge"]),
    ("4 Runden auf Zeit:\n10 Liegestütze\n8 Ausfallschritte pro Bein", ["push-up", "lunge"]),
]


@pytest.mark.parametrize(("text", "movements"), FOREIGN)
def test_a_board_may_be_german_or_spanish(text, movements):
    (block,) = read(text).session.blocks
    assert (block.format, block.rounds) == ("for_time", 4)
    assert [line.movement for line in block.lines] == movements
    assert block.lines[1].per_side


NOT_NAMED_AGAIN = [
    "Deadlift: build to a heavy triple in 18 min\nthen 2 back off sets of 6 @80% of that",
    "Deadlift. 18 min to a heavy triple. Then 2 sets of 6 @ 80%",
]


@pytest.mark.parametrize("text", NOT_NAMED_AGAIN)
def test_sets_that_name_nothing_are_of_what_was_lifted_before(text):
    first, second = read(text).session.blocks
    assert (first.format, first.minutes) == ("max_load", 18)
    assert (second.format, second.rounds) == ("sets", 2)
    assert (second.lines[0].movement, second.lines[0].amount) == ("deadlift", 6)
    assert second.lines[0].load_rule.percent == 80


def test_singles_are_no_rope_skips_where_something_is_lifted():
    _, second = read("Clean: 12 min to a heavy single. Then 5 singles @ 80%").session.blocks
    assert (second.rounds, second.lines[0].movement, second.lines[0].amount) == (5, "clean", 1)


def test_the_share_behind_a_complex_is_of_all_of_it():
    clean, jerk = lines("every 2:30 x 6\n3 power clean + 2 jerk @70%")
    assert clean.load_rule == jerk.load_rule


RESTS = [("DL 3x5, r 2", 120), ("DL 3x5 r 90", 90), ("DL 3x5, r 2'", 120)]


@pytest.mark.parametrize(("text", "rest_s"), RESTS)
def test_a_rest_may_be_a_letter(text, rest_s):
    (block,) = read(text).session.blocks
    assert block.rest_s == rest_s


def test_what_stands_behind_the_lines_is_of_them():
    (block,) = read("100 sit-ups\n80 squats\nfor time, 20 min cap, break it up how you like").session.blocks
    assert (block.format, block.cap_s, len(block.lines)) == ("for_time", 1200, 2)


def test_what_is_easy_at_both_ends_is_warm_up_and_cool_down():
    blocks = read(
        "5 min easy row\n\nAMRAP 10: 5 burpees, 10 squats\n\nhamstring stretch 1 min each leg"
    ).session.blocks
    assert [block.kind for block in blocks] == ["warm-up", "main", "cool-down"]


def test_minutes_right_behind_a_format_need_no_unit():
    (block,) = read("EMOM 12 today, odd min 12 swings 24/16, even min 10 sit-ups").session.blocks
    assert (block.minutes, [line.station for line in block.lines]) == (12, [1, 2])


def test_letters_that_count_on_are_a_list():
    (block,) = read("E2MOM 16 alternating:\nA 6 pull-ups + 8 dips\nB 10 burpees").session.blocks
    assert [line.station for line in block.lines] == [1, 1, 2]


LOADS_OF_ALL = [
    "E2MOM 12: 3 power cleans + 6 push press. bar 40/30",
    "E2MOM 12:\n3 power cleans\n6 push press\n40/30",
    "E2MOM 12\nbar 40/30\n3 power cleans\n6 push press",
]


@pytest.mark.parametrize("text", LOADS_OF_ALL)
def test_a_load_that_is_told_once_is_of_all_that_is_lifted(text):
    assert [tuple(map(float, line.loads_kg)) for line in lines(text)] == [(40, 30), (40, 30)]


@pytest.mark.parametrize(
    "text",
    ["No training today. Walk, sleep, eat a soup.", "Rest day tomorrow. Walk, eat. Back Tue, we squat."],
)
def test_what_tells_no_amount_of_anything_among_talk_is_no_session(text):
    assert read(text).session is None


def test_a_skill_is_practised_for_as_long_as_its_time():
    (block,) = read("Skill - handstand kick-up against the wall, 8 min").session.blocks
    assert (block.minutes, block.lines[0].amount) == (8, None)


def test_roman_numerals_that_count_on_are_a_list():
    warm_up, strength = read("I   WU 3 rds: 200 m jog\nII  Strength: back squat 5x5").session.blocks
    assert (warm_up.kind, strength.kind) == ("warm-up", "strength")


def test_each_set_may_last_from_so_long_to_so_long():
    (line,) = lines("L-sit 6x10-15 s")
    assert (line.amount, line.amount_to, line.unit) == (10, 15, "s")


AFTERWARDS = [
    "AMRAP 14 min:\n10 squats\nAfter this 3 x 30 s plank",
    "AMRAP 14 min:\n10 squats\nAt the end 3 x 30 s plank",
    "AMRAP 14 min: 10 squats. We'll finish with 3 x 30 s plank.",
]


@pytest.mark.parametrize("text", AFTERWARDS)
def test_who_says_that_something_comes_afterwards_begins_a_part(text):
    first, second = read(text).session.blocks
    assert (first.format, second.format, second.rounds) == ("amrap", "hold", 3)


SEVERAL_IN_A_ROW = [
    ("5 RFT 10 BS 60/40 200 run", ["back squat", "run"]),
    ("AMRAP 9\n10 goblet squats 20/14 100 m run", ["goblet squat", "run"]),
]


@pytest.mark.parametrize(("text", "movements"), SEVERAL_IN_A_ROW)
def test_a_line_in_a_row_may_begin_behind_the_load_of_another(text, movements):
    assert [line.movement for line in lines(text)] == movements


def test_two_equal_numbers_are_so_many_on_each_side():
    (line,) = lines("AMRAP 9\nside bend 12/12 24/16")
    assert (line.amount, line.per_side, tuple(map(float, line.loads_kg))) == (12, True, (24, 16))


WORK_AND_REST = [
    "3 rounds, 40 seconds of exercise and 20 seconds of rest:\nsquats\npush-ups",
    "3 rounds, 40 s per exercise, 20 s to change:\nsquats\npush-ups",
    "3 rounds of 40 sec work with 20 sec to swap\nsquats\npush-ups",
]


@pytest.mark.parametrize("text", WORK_AND_REST)
def test_work_and_rest_are_told_in_many_words(text):
    (block,) = read(text).session.blocks
    assert (block.format, block.rounds, block.work_s, block.rest_s, block.every_s) == (
        "intervals",
        3,
        40,
        20,
        60,
    )


def test_what_is_held_for_so_long_is_a_hold():
    (block,) = read("accumulate 4 min wall sit").session.blocks
    assert (block.format, block.lines[0].amount) == ("hold", 240)


def test_a_rest_that_stands_by_itself_is_of_all_sets_above_it():
    blocks = read("Back squat 3x5 @ 55%\nBench press 3x5 @ 55%\nrest 2 min").session.blocks
    assert [block.rest_s for block in blocks] == [120, 120]


def test_a_part_that_only_names_something_is_talk_where_others_tell_how_much():
    found = read("Walk, sleep, eat a soup\n\nDeadlift 3x8\n\nAMRAP 8: 10 squats")
    assert [block.format for block in found.session.blocks] == ["sets", "amrap"]
    assert found.not_understood[0].line == 1


def test_as_many_sets_of_each_in_one_row_are_done_in_turn():
    (block,) = read("3x12 lateral raise + 3x15 face pull, rest 45 s").session.blocks
    assert (block.rounds, block.rest_s, [line.amount for line in block.lines]) == (3, 45, [12, 15])


def test_a_day_without_its_year_is_a_title():
    session = read("Wed 12 March\nAMRAP 8: 10 squats").session
    assert (session.title, len(session.blocks)) == ("Wed 12 March", 1)


QUALIFIED = [
    ("tricep ext overhead w/ one DB 3x12", "triceps extension"),
    ("10 incline dumbbell curls", "curl"),
    ("10 wide grip pull-ups", "pull-up"),
    ("10 gobblet squats, slow", "goblet squat"),
    ("6 high hang snatches", "snatch"),
    ("8 kip pull-ups", "swinging pull-up"),
]


@pytest.mark.parametrize(("typed", "movement"), QUALIFIED)
def test_words_that_only_say_with_what_or_how_may_stand_anywhere_in_a_name(typed, movement):
    (line,) = lines(f"AMRAP 12\n{typed}")
    assert line.movement == movement


OTHERS = ["10 squat thrusts to the moon", "10 wibble presses", "10 bring a towel"]


@pytest.mark.parametrize("typed", OTHERS)
def test_a_word_that_nobody_knows_is_never_dropped_from_a_name(typed):
    read_ = read(f"AMRAP 12\n5 sit-ups\n{typed}")
    said = " ".join(one.text for one in read_.not_understood)
    notes = " ".join(line.notes or "" for block in read_.session.blocks for line in block.lines)
    assert typed.split()[-1] in f"{said} {notes}"


def test_a_line_whose_name_is_known_is_kept_where_a_number_behind_it_is_not():
    read_ = read("AMRAP 12\n12 goblet squats 24/16/12 kg")
    assert [line.movement for block in read_.session.blocks for line in block.lines] == ["goblet squat"]
    assert [one.text for one in read_.not_understood] == ["24/16/12 kg"]


MORE_THAN_A_SLIP = [("8 burpess", "burpee"), ("9 pushpus", "push-up")]


@pytest.mark.parametrize(("typed", "movement"), MORE_THAN_A_SLIP)
def test_an_s_too_many_is_no_slip(typed, movement):
    (line,) = lines(f"AMRAP 12\n{typed}")
    assert line.movement == movement


@pytest.mark.parametrize("text", ["Cool-down: 2 min stretch", "5 min stretching", "10 min easy stretch"])
def test_a_stretch_of_no_name_is_a_line_all_the_same(text):
    session = read_session(text, catalogue()).session
    assert session is not None
    assert [line.movement for block in session.blocks for line in block.lines] == ["stretch"]


def test_minutes_that_name_nothing_are_no_stretch():
    assert read_session("40 min easy", catalogue()).session is None


SAID_OTHERWISE = [
    ("90/90 switch x10", "hip switch"),
    ("10 90/90s", "hip switch"),
    ("right arm press x6", "single-arm press"),
    ("9 clean + jerks 50/35", "clean and jerk"),
]


@pytest.mark.parametrize(("typed", "movement"), SAID_OTHERWISE)
def test_names_in_digits_of_an_arm_and_with_a_plus_are_names(typed, movement):
    (line,) = lines(f"AMRAP 12\n{typed}")
    assert line.movement == movement


def test_what_is_left_is_no_side():
    (line,) = lines("3 min on 1 min off x 4: max cal bike in what's left")
    assert line.side is None
