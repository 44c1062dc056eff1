"""Parts told by the minutes of the clock (common practice, no source)."""

from core.movements.lookup import catalogue
from core.notation.boards.session import read_session
from core.notation.edits.editing import edited
from core.notation.edits.wordings import read_edits
from core.sessions.values import Format

AMRAP = Format.AMRAP


def read(text):
    found = read_session(text, catalogue())
    assert not found.not_understood
    return found.session.blocks


def shapes(text):
    return [
        (one.format, one.minutes, [(line.amount, line.movement) for line in one.lines]) for one in read(text)
    ]


def test_each_window_is_a_part_of_its_minutes():
    assert shapes("0-6 min: 10 push-ups, 10 air squats\n6-14 min: 200 m run, 10 burpees") == [
        (AMRAP, 6, [(10, "push-up"), (10, "air squat")]),
        (AMRAP, 8, [(200, "run"), (10, "burpee")]),
    ]


def test_a_window_alone_in_its_row_opens_the_rows_under_it_with_the_format_above():
    text = "AMRAP\nMin 0-6\n10 push-ups\n10 air squats\n6:00-12:00 max burpees"
    assert shapes(text) == [
        (AMRAP, 6, [(10, "push-up"), (10, "air squat")]),
        (Format.MAX_REPS, 6, [(None, "burpee")]),
    ]


def test_rest_told_or_left_between_stands_with_the_part_before():
    told = read("0-6 min AMRAP\n10 push-ups\n6-8 min: rest\n8-14 min AMRAP\n10 burpees")
    left = read("0-6 min AMRAP\n10 push-ups\n8-14 min AMRAP\n10 burpees")
    assert [one.rest_s for one in told] == [one.rest_s for one in left] == [120, None]


def test_for_time_has_its_window_as_cap_and_one_movement_without_an_amount_fills_it():
    timed, steady = read("0-6 min for time: 40 burpees\n6-16 min: row")
    assert (timed.format, timed.cap_s) == (Format.FOR_TIME, 360)
    assert [(line.amount, line.unit) for line in steady.lines] == [(600, "s")]


def test_what_a_window_with_one_counted_line_is_gets_asked():
    (open_end,) = read_session("0-6 min: 10 push-ups", catalogue()).not_understood
    assert open_end.guess == "for time"


def test_a_range_of_minutes_is_no_window_where_no_clock_runs():
    (block,) = read("AMRAP 20\n8-10 min run\n10 push-ups")
    assert [(line.amount, line.amount_to) for line in block.lines] == [(480, 600), (10, None)]


def test_a_line_in_a_window_can_be_changed_in_words():
    text = "0-6 min: 10 push-ups, 10 air squats\n6-12 min: 200 m run, 10 burpees"
    (edit, *_) = read_edits("make the run 400 m")
    changed = edited(text, edit, catalogue())
    assert changed == "0-6 min: 10 push-ups, 10 air squats\n6-12 min: 400 m run, 10 burpees"


def test_minutes_that_go_on_need_no_unit_and_take_over_what_was_said_of_all():
    typed = "EMOM 20 min\n0-6 min: 12 cal row\n6-12: 10 burpees\n12-20 min: 6 man makers"
    read = read_session(typed, catalogue())
    assert read.session is not None
    assert not read.not_understood
    assert [(one.format, one.every_s, one.minutes) for one in read.session.blocks] == [
        ("intervals", 60, 6),
        ("intervals", 60, 6),
        ("intervals", 60, 8),
    ]


def test_a_range_without_a_unit_begins_no_part():
    read = read_session("AMRAP 12\n6-12: push-ups", catalogue())
    assert read.session is not None
    assert len(read.session.blocks) == 1
