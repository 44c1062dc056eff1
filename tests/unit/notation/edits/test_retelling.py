"""A coach tells right what was misread, in their own words, and all else stays as they typed it."""

import pytest

from core.movements.lookup import catalogue
from core.notation.boards.session import read_session
from core.notation.edits.changes import changed

BOARD = "Warm-up\n10 squats\n\nMain\n4 rounds for time\n10 burpees\n200 m run\nrest 1 min\n\nCool-down\n5 min walk"


def session_after(text, message):
    found = changed(text, message, catalogue())
    assert found is not None
    assert (found.left, found.unclear, found.so_already) == ((), None, False)
    return read_session(found.text, catalogue()).session


def so_already(text, message):
    found = changed(text, message, catalogue())
    return found is not None and found.so_already and found.text == text


@pytest.mark.parametrize(
    "message",
    ["that's rounds, not minutes", "no, 5 rounds not 5 minutes", "rounds, not minutes", "i meant rounds"],
)
def test_a_number_of_minutes_that_is_one_of_rounds(message):
    (block,) = session_after("For 5 minutes:\n10 squats\n10 push-ups", message).blocks
    assert (block.rounds, block.minutes, block.format) == (5, None, "quality")


def test_a_clock_keeps_running_where_its_minutes_are_rounds():
    (block,) = session_after("EMOM 12\n10 swings\n8 push-ups", "that's rounds, not minutes").blocks
    assert (block.rounds, block.minutes, block.every_s) == (12, None, 60)


def test_another_number_than_the_one_that_is_there_is_not_meant():
    assert (
        changed("For 5 minutes:\n10 squats\n10 push-ups", "no, 4 rounds not 4 minutes", catalogue()) is None
    )


def test_an_amount_counted_in_another_unit():
    (block,) = session_after(
        "12 min amrap: 10 swings, 30 plank, 8 burpees", "that's 30 seconds, not reps"
    ).blocks
    assert [(line.amount, line.unit) for line in block.lines] == [(10, "reps"), (30, "s"), (8, "reps")]


@pytest.mark.parametrize(
    ("message", "fields"),
    [
        ("its 5 rounds", {"rounds": 5, "format": "for_time"}),
        ("not for time", {"rounds": 4, "format": "quality", "scored": False}),
        ("it's an amrap, 12 minutes", {"rounds": None, "format": "amrap", "minutes": 12}),
        ("no rest", {"rounds": 4, "rest_s": None}),
        ("the rest is 90 s", {"rest_s": 90}),
        ("the cap is 15 min", {"cap_s": 900}),
    ],
)
def test_what_is_said_of_the_day_s_work_is_told_of_its_only_part(message, fields):
    warm_up, main, cool_down = session_after(BOARD, message).blocks
    assert {name: getattr(main, name) for name in fields} == fields
    assert [line.movement for line in main.lines] == ["burpee", "run"]
    assert (warm_up, cool_down) == (read_session(BOARD, catalogue()).session.blocks[0::2])


def test_how_hard_it_is_can_be_told_afterwards():
    assert session_after(BOARD, "make it easy").blocks[1].effort.words == "easy"


def test_a_part_is_named_by_what_it_is():
    blocks = session_after(BOARD, "the warm-up is 2 rounds").blocks
    assert [block.rounds for block in blocks] == [2, 4, None]


@pytest.mark.parametrize(
    "message", ["the rest is between rounds", "rest is after each round", "it's 4 rounds"]
)
def test_what_is_so_already_is_said_to_be(message):
    assert so_already(BOARD, message)


@pytest.mark.parametrize(
    "message", ["that's wrong", "that was easy", "it's raining", "is it 5 rounds?", "the dog is 4"]
)
def test_words_about_something_else_change_nothing(message):
    assert changed(BOARD, message, catalogue()) is None


@pytest.mark.parametrize(
    ("message", "place"),
    [
        ("make the burpees 5 and add 10 jumping jacks", 1),
        ("swap the burpees for 10 lunges and add a plank 30 s", 1),
        ("add 10 jumping jacks", 1),
        ("add 10 jumping jacks to the warm-up", 0),
        ("add 10 jumping jacks to the main part", 1),
        ("add 10 jumping jacks in the cool-down", 2),
    ],
)
def test_what_is_added_lands_in_the_part_that_is_named_or_spoken_of(message, place):
    before = read_session(BOARD, catalogue()).session.blocks
    after = session_after(BOARD, message).blocks
    grown = [len(new.lines) - len(old.lines) for old, new in zip(before, after, strict=True)]
    assert grown == [int(at == place) for at in range(3)]


def test_what_is_called_by_its_own_name_is_meant_and_not_its_kin():
    assert session_after(BOARD, "the run is 400 m").blocks[1].lines[1].amount == 400


NO_REST = "Tuesday legs\n3 rounds\n10 squats\n8 lunges"


@pytest.mark.parametrize(
    "message",
    [
        "rest a min between rnds",
        "rest 1 min between rounds",
        "add 1 min rest",
        "rest 60s",
        "make the rest 60 s",
    ],
)
def test_a_rest_may_be_told_where_none_is(message):
    (block,) = session_after(NO_REST, message).blocks
    assert block.rest_s == 60
    assert block.rounds == 3


@pytest.mark.parametrize("message", ["its not for time, just 4 rounds no score", "it's not 3 but 4 rounds"])
def test_what_it_is_stands_behind_what_it_is_not(message):
    (block,) = session_after(NO_REST, message).blocks
    assert block.rounds == 4


def test_what_is_added_at_the_end_is_named_behind_the_place():
    rounds, finisher = session_after(NO_REST, "add at the end: 20 sit-ups").blocks
    assert [line.movement for line in rounds.lines] == ["air squat", "lunge"]
    assert ([line.movement for line in finisher.lines], finisher.name) == (["sit-up"], "Finisher")
