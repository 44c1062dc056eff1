"""A change may say where it is meant: a day, a minute, a part; and a line may be told to be of another part."""

import pytest

from core.movements.lookup import catalogue
from core.notation.edits.changes import changed

WEEK = (
    "Mon: AMRAP 10: 10 push ups, 10 squats\n"
    "Wed: 5 rounds for time: 10 burpees, 200 m run\n"
    "Fri: 3 rounds: 12 push ups, 30 s plank"
)
MINUTES = "EMOM 12\nmin 1: 10 burpees\nmin 2: 12 swings\nmin 3: 30 s plank"
PARTS = "Warm-up\n5 min easy jog\n10 squats\n\nStrength\nBack squat 5x5 @ 60 kg\n\nAMRAP 12\n10 push-ups\n200 m run"


def after(text, message):
    found = changed(text, message, catalogue())
    assert found is not None
    assert not found.left
    assert found.unclear is None
    return found.text


def rows_that_changed(text, message):
    before = text.splitlines()
    return [row for row in after(text, message).splitlines() if row not in before]


@pytest.mark.parametrize(
    ("message", "row"),
    [
        ("make fridays push ups 8", "Fri: 3 rounds: 8 push-ups, 30 s plank"),
        ("friday's push ups should be 8", "Fri: 3 rounds: 8 push-ups, 30 s plank"),
        ("make the push ups 8 on monday", "Mon: AMRAP 10: 8 push-ups, 10 squats"),
        ("on wednesday its 8 burpees", "Wed: 5 rounds for time: 8 burpees, 200 m run"),
        ("make wednesday 4 rounds", "Wed: 4 rounds for time: 10 burpees, 200 m run"),
    ],
)
def test_a_day_of_the_week_may_be_meant(message, row):
    assert rows_that_changed(WEEK, message) == [row]


@pytest.mark.parametrize(
    ("message", "row"),
    [
        ("in minute 3 do hollow hold", "Minute 3: 30 s hollow hold"),
        ("minute 3 is hollow hold not plank", "Minute 3: 30 s hollow hold"),
        ("min 2 should be 15 swings", "Minute 2: 15 swings"),
        ("swap minute 1 for mountain climbers", "Minute 1: 10 mountain climbers"),
    ],
)
def test_a_minute_may_be_meant(message, row):
    assert rows_that_changed(MINUTES, message) == [row]


def test_what_is_said_of_a_minute_changes_no_other():
    assert after(MINUTES, "in minute 3 do hollow hold").splitlines()[:3] == MINUTES.splitlines()[:3]


def test_a_part_may_be_meant():
    assert rows_that_changed(PARTS, "make the squats 8 in the warm-up") == ["8 squats"]


@pytest.mark.parametrize(
    "message",
    [
        "move the run to the warm-up",
        "the run belongs to the warm-up",
        "the 200 m run is part of the warm-up, not the amrap",
    ],
)
def test_a_line_may_be_told_to_be_of_another_part(message):
    told = after(PARTS, message).splitlines()
    assert told[:4] == ["Warm-up", "5 min easy jog", "10 squats", "200 m run"]
    assert told[-1] == "10 push-ups"


@pytest.mark.parametrize(
    "message", ["its 4 rounds not 3", "should be 4 rounds", "4 rounds not 3", "that should be 4 rounds"]
)
def test_how_often_may_be_told_right(message):
    assert after("3 rounds for time\n10 push-ups\n400 m run\nrest 2 min", message).startswith(
        "4 rounds for time\n10 push-ups"
    )


@pytest.mark.parametrize("message", ["make saturdays push ups 8", "in minute 7 do hollow hold"])
def test_a_place_that_is_not_there_changes_nothing(message):
    for text in (WEEK, MINUTES):
        found = changed(text, message, catalogue())
        assert found is None or found.text == text


def test_a_part_by_its_number_is_the_same_one_that_a_score_is_told_of():
    board = "Warm-up\n5 min easy run\n\nAMRAP 8\n10 push-ups\n\nFor time\n30 burpees"
    amrap = after(board, "add 5 air squats to part 1").split("\n\n")[1]
    assert "5 air squats" in amrap
