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
