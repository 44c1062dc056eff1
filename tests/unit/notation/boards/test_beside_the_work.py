"""What stands beside the work: what some do instead, when something is due, what is only told to people."""

import pytest

from core.movements.lookup import catalogue
from core.notation.boards.session import read_session


def read(text):
    return read_session(text, catalogue())


def blocks_of(text):
    return read(text).session.blocks


@pytest.mark.parametrize(
    "said", ["no dubs? 60 singles", "can't do doubles? 60 singles", "haven't got a rope? 60 high knees"]
)
@pytest.mark.parametrize("around", ["{}", "({})"])
def test_what_some_do_instead_is_a_note_of_the_line_above_and_no_line(said, around):
    (block,) = blocks_of("AMRAP 14\n5 toes-to-bar\n30 double-unders\n" + around.format(said))
    assert [line.movement for line in block.lines] == ["toes-to-bar", "double-under"]
    assert block.lines[1].notes == said


def test_sets_for_whoever_lacks_something_are_no_part_of_all():
    (block,) = blocks_of("5 x 500 m row, rest 2 min\n\nno boathouse for you? 5 x 400 m run, same rest")
    assert (block.rounds, block.lines[0].notes) == (5, "no boathouse for you? 5 x 400 m run, same rest")


def test_a_question_that_names_what_to_do_opens_a_clause_as_before():
    first, second = blocks_of("AMRAP 5: 10 burpees. Ready? 3 rounds for time: 10 squats, 10 lunges")
    assert (first.format, second.rounds) == ("amrap", 3)


@pytest.mark.parametrize(
    "when", ["every time the bell goes down", "each time you stop", "whenever you let go"]
)
def test_when_something_is_due_is_said_of_it(when):
    (block,) = blocks_of(f"100 swings for time\n{when}, 5 burpees")
    assert block.lines[1].notes == when
    assert read(f"100 swings for time\n{when}, 5 burpees").not_understood == ()


def test_what_is_told_behind_a_line_in_its_row_is_its_note_and_only_that():
    (block,) = blocks_of("power clean. every 2 min x 10, 2 reps @70%. Miss = take 5kg off")
    assert (block.lines[0].notes, block.notes) == ("Miss = take 5kg off", None)


def test_short_forms_that_nobody_knows_are_unread_and_no_notes():
    found = read("4 rounds 30/15 squats - push-ups - bur - pl")
    assert [one.text for one in found.not_understood] == ["bur", "pl"]
    assert [line.notes for line in found.session.blocks[0].lines] == [None, None]


@pytest.mark.parametrize(
    ("text", "field"),
    [
        ("5 x 500 m row, rest 2 min. aim: all five within 3 s of each other", "minutes"),
        ("every 3 min x 5\n250 m row\nmax burpees\nrest to 3:00", "rest_s"),
        ("A Back squat 5x5 @ 70%\n\nDoors Tue 19:00, be there", "cap_s"),
    ],
)
def test_a_number_that_says_something_else_is_not_used(text, field):
    assert [getattr(one, field) for one in blocks_of(text)] == [None]


def test_how_many_of_a_side_is_no_load():
    (block,) = blocks_of("Get-ups, 10 minutes. 1 each side, 24/16")
    assert 1 not in block.lines[0].loads_kg


def test_what_is_known_how_it_is_done_is_not_changed_by_talk_that_sounds_like_it():
    (block,) = blocks_of(
        "Deadlift\n5 @ 65%\n3 @ 75%\n1 @ 85%\n3 min between. Back rounds, you're done for the day"
    )
    assert (block.format, block.rest_s) == ("sets", 180)


def test_minutes_on_the_minute_and_easy_parts_around_the_work_are_read_in_prose():
    assert blocks_of("25 min on the minute\nmin 1: 10 burpees\nmin 2: 10 squats")[0].minutes == 25
    told = (
        "ten minutes easy to warm up, then six times 400 metres, 90 s rest between them, "
        "and then walk ten minutes to cool down"
    )
    first, second, third = blocks_of(told)
    assert [first.kind, second.kind, third.kind] == ["warm-up", "main", "cool-down"]
    assert (second.rounds, second.rest_s, second.lines[0].amount) == (6, 90, 400)


def test_bars_may_stand_for_the_marks_of_a_list_of_parts():
    text = "**1 | Warm-up** 6 min easy run\n**2 | Speed** 6 x 30 m sprint, rest 90 s\n**3 | Cool-down** 5 min walk"
    assert [one.kind for one in blocks_of(text)] == ["warm-up", "main", "cool-down"]


def test_both_halves_of_one_lift_are_one_lift():
    (line,) = blocks_of("clean + jerk, build to a heavy single, 15 min")[0].lines
    assert line.movement == "clean and jerk"


@pytest.mark.parametrize(
    "text",
    [
        "Run: 10 min easy, 6 x 1 min fast 1 min slow, 10 min easy",
        "Run\n10 min easy\n6 x 1 min fast 1 min slow\n10 min easy",
        "10 min easy run, 6 x 1 min fast 1 min slow, jog 10 min",
    ],
)
def test_what_is_easy_around_sets_is_no_part_of_them(text):
    first, second, third = blocks_of(text)
    assert [first.lines[0].amount, third.lines[0].amount] == [600, 600]
    assert (second.rounds, second.lines[0].amount, second.rest_s) == (6, 60, 60)


def test_how_hard_the_work_of_an_interval_is_is_kept():
    (block,) = blocks_of("10 rounds, 30 s hard / 30 s easy on the bike")
    assert block.effort is not None
    assert block.effort.words == "hard"


@pytest.mark.parametrize("text", ["B. 3 supersets\n8 chins\n12 dips\n90 sec", "Bench 5 x 5\n90 sec"])
def test_a_time_alone_below_sets_is_their_rest_and_one_below_a_hold_is_how_long_it_is_held(text):
    assert [one.rest_s for one in blocks_of(text)] == [90]
    (held,) = blocks_of("3 sets\n8 squats\nplank\n60 sec")
    assert (held.rest_s, held.lines[1].amount) == (None, 60)


def test_nothing_is_rowed_in_a_row_nor_run_in_laps_between_which_one_rests():
    circuit = blocks_of("45 on 15 off, 3 laps, 2 mins between laps\nsquat jumps\ndead bugs")[0]
    assert [line.movement for line in circuit.lines] == ["squat jump", "dead bug"]
    assert [line.movement for line in blocks_of("3 rounds in a row\n10 squats\n10 push-ups")[0].lines] == [
        "air squat",
        "push-up",
    ]


def test_rows_that_nothing_but_their_sets_tells_to_be_lifted_are_said_back():
    (one,) = read("3 x 10 row\n3 x 10 push-ups").corrected
    assert one.read_as == "bent-over row"
    assert read("3 x 10 rows @ 20 kg").corrected == ()


def test_how_many_in_total_is_no_height():
    line = blocks_of("3 rounds\nheel touch 20 in total\n10 push-ups")[0].lines[0]
    assert (line.amount, line.notes) == (20, "total")


def test_what_ends_a_session_behind_sets_is_a_part_of_its_own():
    first, last = blocks_of("4 sets:\n6 front squats\n6 box jumps\n\nFinish: 6 min max cals on the bike")
    assert (first.rounds, last.minutes, last.lines[0].movement) == (4, 6, "ride")


def test_more_each_minute_is_a_ladder_on_the_minute():
    (block,) = blocks_of("min 1: 1 burpee\nmin 2: 2 burpees\nmin 3: 3 burpees\nand so on")
    assert (block.format, block.every_s, block.scheme, len(block.lines)) == ("intervals", 60, (1, 2, 3), 1)


def test_turns_of_one_thing_on_a_clock_are_no_ladder():
    (block,) = blocks_of("EMOM 12\nmin 1: 2 burpees\nmin 2: 4 burpees")
    assert [line.amount for line in block.lines] == [2, 4]


def test_stages_below_what_they_are_of_are_all_of_it():
    (block,) = blocks_of("Rower\n1-2-3-2-1 min hard, rest same as you just worked")
    assert (block.format, block.notes) == ("intervals", "rest same as you just worked")
    assert [line.amount for line in block.lines] == [60, 120, 180, 120, 60]
    assert {line.movement for line in block.lines} == {"row"}


@pytest.mark.parametrize(
    ("text", "variant"),
    [
        ("10 push-ups feet on a chair", "feet-on-chair"),
        ("10 feet on chair push up", "feet-on-chair"),
        ("10 push-ups hands on the bench", "hands-on-bench"),
        ("10 push-ups, hands on the bench is fine", None),
    ],
)
def test_what_hands_or_feet_are_on_is_the_way_it_is_done(text, variant):
    assert blocks_of(f"AMRAP 10\n{text}")[0].lines[0].variant == variant


@pytest.mark.parametrize("word", ["beach", "test", "core"])
def test_an_everyday_word_is_no_slip_for_a_word_of_formats(word):
    assert read(f"{word}: 6 x 50 m sprint, 30 s rest").corrected == ()


@pytest.mark.parametrize(
    "told", ["split squat, 8 each", "wrist circle, 8 each way", "split squats 8 each side"]
)
def test_so_many_each_behind_a_name_are_of_its_sides_and_of_nothing_else(told):
    first, second = blocks_of(f"3 rounds\n{told}\nsquats 10")[0].lines
    assert (first.amount, first.per_side, second.amount) == (8, True, 10)


def test_what_is_easy_with_sets_is_their_rest():
    (block,) = blocks_of("ride\n4 x 8 min @ threshold w/ 4 min easy")
    assert (block.rounds, block.rest_s, block.lines[0].amount) == (4, 240, 480)


def test_sets_of_one_line_are_not_those_of_the_others():
    hang, hold, last = blocks_of("dead hang 3 x max, towel hang 2 x 20 s, plank 4 x 30 s")
    assert [hang.rounds, hold.rounds, last.rounds] == [3, 2, 4]


def test_a_warm_up_of_minutes_is_over_where_rounds_begin_in_its_row():
    block = blocks_of("warm up 5 mins. 8 rounds 20 on 10 off: squats, push-ups")[-1]
    assert (block.kind, block.rounds) == ("main", 8)


UNKNOWN = [
    ("Main\n6x400 gizmo w 90s jog btw\n10 push-ups\n20 squats", "6x400 gizmo w 90s jog btw"),
    ("A. gizmo thing 4x6, every 2 min\nB. squats 3x10", "A. gizmo thing 4x6, every 2 min"),
    ("3 rounds for time\n10 squats\n15 blorps, rest 1 min\n10 push-ups", "15 blorps, rest 1 min"),
    ("4 sets of gizmos, 8 reps, 60s rest\n10 squats\n10 push-ups", "4 sets of gizmos, 8 reps, 60s rest"),
]


@pytest.mark.parametrize(("text", "unread"), UNKNOWN)
def test_no_number_of_work_that_nobody_knows_is_used_for_the_others(text, unread):
    found = read(text)
    assert unread in [one.text for one in found.not_understood]
    for block in found.session.blocks:
        assert (block.rest_s, block.every_s, block.notes) == (None, None, None)


def test_a_rest_in_front_of_words_that_nobody_knows_is_taken():
    (block,) = blocks_of("5 x\n30 s wall sit\n12 squats\nRest 1 min, write gizmo 10 down")
    assert block.rest_s == 60
