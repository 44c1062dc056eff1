"""A text of several days is parted where their names stand."""

import pytest

from core.movements.lookup import catalogue
from core.notation.boards.days import by_days
from core.notation.boards.session import read_session


def test_each_day_has_its_own_text_and_what_stands_above_goes_with_the_first():
    text = "Week 3\nMon - rest\nTue 10th 5 x 400 m run\nwalk home\n\nThu: 35 min easy run"
    assert by_days(text) == (
        "Week 3\nMon - rest",
        "Tue 10th 5 x 400 m run\nwalk home",
        "Thu: 35 min easy run",
    )


@pytest.mark.parametrize(
    "text", ["Tuesday\n10 squats\n12 sit-ups", "10 squats", "", "Mon 9th easy 40 min run"]
)
def test_a_text_of_one_day_stays_whole(text):
    assert by_days(text) == (text,)


def test_the_day_in_front_of_the_only_work_is_its_title():
    found = read_session("Tue 10th 5 x 400 m run, 90 s rest", catalogue())
    assert (found.session.title, found.not_understood) == ("Tue 10th", ())


BELOW = "4 rounds for time\n10 squats\n8 push-ups"


@pytest.mark.parametrize("named", ["stairs and bags", "rope and row", "two by two", "squats", "step by step"])
@pytest.mark.parametrize("gap", ["\n", "\n\n"])
def test_words_without_an_amount_behind_a_day_are_its_title_whatever_they_name(named, gap):
    found = read_session(f"Friday: {named}{gap}{BELOW}", catalogue())
    assert (found.session.title, found.not_understood) == (f"Friday - {named}", ())
    assert [line.movement for line in found.session.blocks[0].lines] == ["air squat", "push-up"]


@pytest.mark.parametrize("work", ["5 km run", "ten burpees"])
def test_an_amount_behind_a_day_is_work_and_no_title(work):
    found = read_session(f"Friday: {work}\n\n{BELOW}", catalogue())
    assert (found.session.title, len(found.session.blocks)) == ("Friday", 2)


def test_how_hard_a_day_is_to_be_is_said_without_its_name():
    found = read_session(f"Thursday easy\n{BELOW}", catalogue())
    assert found.session.blocks[0].effort.words == "easy"


WEEK_IN_A_ROW = "mon: 5 rounds 10 push ups 10 squats. tues: rest. wed: 5k run easy"


def test_the_days_of_one_row_are_parted_too():
    assert by_days(f"Hi all\n{WEEK_IN_A_ROW}") == (
        "Hi all\nmon: 5 rounds 10 push ups 10 squats.",
        "tues: rest.",
        "wed: 5k run easy",
    )


@pytest.mark.parametrize(
    ("text", "done"),
    [
        (WEEK_IN_A_ROW, [["push-up", "air squat"], ["run"]]),
        ("Monday\n3 x 10 squats\nTuesday\n5 km run", [["air squat"], ["run"]]),
        (
            "Wednesday (lungs)\n5 rounds for time: 10 squats\n\nFriday (gentle)\n30 min walk",
            [["air squat"], ["run"]],
        ),
        ("Mon: 3 x 10 squats\nTue - off\nWed: 5k easy", [["air squat"], ["run"]]),
    ],
)
def test_what_is_done_on_one_day_never_joins_what_is_done_on_another(text, done):
    blocks = read_session(text, catalogue()).session.blocks
    assert [[line.movement for line in block.lines] for block in blocks] == done


def test_a_day_without_work_is_shown_as_it_was_typed():
    found = read_session(WEEK_IN_A_ROW, catalogue())
    assert "tues: rest" in [one.text for one in found.not_understood]


def test_the_word_beside_a_day_may_say_which_kind_of_work_it_holds():
    text = "Monday (strength)\n3 rounds, rest 90 s\n10 goblet squats\n8 presses\n\nTuesday\n5k run"
    assert read_session(text, catalogue()).session.blocks[0].kind == "strength"
