"""Numbers as people say and misspell them."""

import pytest

from core.notation.scores.numbers import numbers_in
from core.notation.scores.spoken import in_digits


@pytest.mark.parametrize(
    ("words", "digits"),
    [
        ("eight forty-three", "8 43"),
        ("half a dozen rounds", "6 rounds"),
        ("one thousand and twelve metres", "1012 metres"),
        ("two thousand", "2000"),
        ("thirthy one", "31"),
        ("fiveteen and twelf", "15 and 12"),
        ("sixty two comma five", "62.5"),
        ("three and a quarter miles", "3.25 miles"),
        ("a mile and three quarters", "1.75 mile"),
        ("another half mile", "another 0.5 mile"),
        ("nine and four tenths seconds", "9.4 seconds"),
    ],
)
def test_number_words_become_digits(words, digits):
    assert in_digits(words) == digits


@pytest.mark.parametrize("words", ["i was thirsty", "a tent in the yard", "eighties music", "nonetheless"])
def test_other_words_stay_as_they_are(words):
    assert in_digits(words) == words


@pytest.mark.parametrize(
    ("words", "seconds"),
    [
        ("1 hour, 12 minutes and 4 seconds", 4324),
        ("2 mins 40. then the dog came", 160),
        ("5 minutes, 8.5 seconds", 308.5),
        ("1 minute 50, felt ok", 110),
    ],
)
def test_a_time_in_words_is_one_number(words, seconds):
    assert [(one.kind, one.value) for one in numbers_in(words)] == [("clock", seconds)]


@pytest.mark.parametrize(
    "words",
    [
        "slept 5 hours",
        "sleep 6h20",
        "on 4 h sleep",
        "bodyweight 71",
        "weighed 78 kg",
        "back in 1987.",
        "7 months",
        "hr 131-148",
    ],
)
def test_what_is_told_of_the_body_and_the_day_is_no_score(words):
    assert {one.kind for one in numbers_in(words)} == {"beside"}


def test_a_distance_like_a_year_is_one():
    assert [one.kind for one in numbers_in("got to 2010 m")] == ["metres"]
