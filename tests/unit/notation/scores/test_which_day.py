"""Of which day a score is told; a Wednesday here."""

from datetime import date

import pytest

from core.notation.scores.which_day import day_told, without_day

WEDNESDAY = date(2026, 3, 4)


@pytest.mark.parametrize(
    ("words", "day"),
    [
        ("yesterday's session: 7+12", 3),
        ("7+12 yday", 3),
        ("forgot to post yesterday - 14:20", 3),
        ("for monday: 7+12", 2),
        ("Monday's score 7+12", 2),
        ("Monday: 7+12", 2),
        ("today's workout 7+12", 4),
        ("7+12 for wednesday", 4),
    ],
)
def test_a_day_is_told(words, day):
    assert day_told(words, WEDNESDAY) == date(2026, 3, day)


@pytest.mark.parametrize(
    "words",
    [
        "7+12",
        "7+12, sore from yesterday",
        "9:12, better than yesterday",
        "7+12, see you monday",
    ],
)
def test_a_day_that_only_stands_beside_the_score_is_none(words):
    assert day_told(words, WEDNESDAY) is None


@pytest.mark.parametrize(
    "words", ["yesterday's session: 7+12", "7+12 yday", "for monday: 7+12", "Monday's score 7+12"]
)
def test_without_its_day_a_score_is_only_a_score(words):
    assert without_day(words) == "7+12"


def test_words_that_tell_no_day_stay_as_they_were_typed():
    assert without_day("7+12, See you Friday") == "7+12, See you Friday"
