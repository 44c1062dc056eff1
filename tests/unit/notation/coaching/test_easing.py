"""Words about doing less for a while."""

import pytest

from core.notation.coaching.easing import (
    asks_for_as_usual,
    asks_for_more,
    easy_week_told,
    read_break,
    read_easy_week,
    read_own_easy_week,
    says_had_a_break,
)

NAMES = ("Ilse Brandt", "Bo")


@pytest.mark.parametrize(
    ("text", "name", "when", "mine"),
    [
        ("easy week", None, "this", False),
        ("Deload week next week", None, "next", False),
        ("deload", None, "this", False),
        ("next week is easy", None, "next", False),
        ("let's take it easy this week", None, "this", False),
        ("make next week an easy week for everybody", None, "next", False),
        ("recovery week for everyone next week please", None, "next", False),
        ("easy week for Ilse", "Ilse Brandt", "this", False),
        ("give Bo a lighter week", "Bo", "this", False),
        ("Ilse needs an easy week next week", "Ilse Brandt", "next", False),
        ("I need an easy week", None, "this", True),
        ("can I have an easy week?", None, "this", True),
        ("an easy week for me", None, "this", True),
    ],
)
def test_an_easy_week_is_read_with_whose_and_when(text, name, when, mine):
    wish = read_easy_week(text, NAMES)
    assert (wish.names, wish.when, wish.yes, wish.mine) == ((name,) if name else (), when, True, mine)


@pytest.mark.parametrize(
    "text",
    [
        "actually no easy week for Ilse",
        "no easy week",
        "the easy week is over",
        "cancel Ilse's easy week",
        "call off the easy week next week",
    ],
)
def test_its_end_is_read(text):
    assert read_easy_week(text, NAMES).yes is False


@pytest.mark.parametrize(
    "text",
    [
        "I'm strong but I need an easy week",
        "easy week please, I'm shattered",
        "so tired, can I have an easy week",
    ],
)
def test_an_athlete_may_say_why_they_need_one(text):
    assert read_easy_week(text) is None
    assert read_own_easy_week(text).yes


@pytest.mark.parametrize(
    "text", ["as usual please", "back to normal", "I'm back to normal", "everything as usual again"]
)
def test_as_usual_is_read(text):
    assert asks_for_as_usual(text)


@pytest.mark.parametrize(
    "text", ["10 rounds as usual", "my knee is back to normal", "normal", "not as usual"]
)
def test_what_else_is_usual_is_not(text):
    assert not asks_for_as_usual(text)


@pytest.mark.parametrize(
    "text",
    [
        "a bit more",
        "can I do a bit more please?",
        "I'm ready for more",
        "this is too gentle for me",
        "I want more",
    ],
)
def test_a_wish_for_more_is_read(text):
    assert asks_for_more(text)


@pytest.mark.parametrize(
    "text", ["one more question", "more weight", "7 more", "tell me more about it", "no more"]
)
def test_what_else_is_more_is_not(text):
    assert not asks_for_more(text)


@pytest.mark.parametrize(
    ("text", "had"),
    [
        ("I was ill and then on holidays", True),
        ("hardly", True),
        ("I was away", True),
        ("I trained on my own", False),
        ("I kept running", False),
        ("I was on holiday but I trained", None),
        ("this is too gentle", None),
        ("what do you mean?", None),
    ],
)
def test_whether_there_was_a_break_may_be_told_in_any_words(text, had):
    assert says_had_a_break(text) is had


@pytest.mark.parametrize(
    "text",
    [
        "that was easy this week",
        "was that an easy week?",
        "is it an easy week?",
        "is this week an easy week",
        "when is the easy week?",
        "easy session",
        "who has easy week",
        "shall I give Ilse an easy week?",
        "5 rounds for time easy week",
        "easy week\n5 rounds for time\n10 push-ups",
        "light dumbbells this week",
        "Ilse 7+12",
    ],
)
def test_nothing_else_is_taken_for_one(text):
    assert read_easy_week(text, NAMES) is None


@pytest.mark.parametrize(
    ("text", "days"),
    [
        ("back after 5 weeks off", 35),
        ("first session back after a month", 30),
        ("I've been away for three weeks", 21),
        ("haven't trained in six weeks", 42),
        ("was out for a few weeks with a cold", 21),
        ("I didn\u2019t train for 2 months", 60),
        ("back after 4 days", 4),
        ("I'm back from holiday!", 0),
        ("back after a long break", 0),
        ("I had a break", 0),
    ],
)
def test_a_break_is_read_with_its_length(text, days):
    assert read_break(text) == days


@pytest.mark.parametrize(
    "text",
    [
        "my back hurts after 3 weeks",
        "back squats 3 weeks",
        "back pain since two weeks",
        "how do I come back after a break?",
        "first training after having a baby 3 months ago",
        "7+12",
        "3 rounds, then a break",
    ],
)
def test_nothing_else_is_taken_for_a_break(text):
    assert read_break(text) is None


def test_who_is_left_out_of_an_easy_week_is_not_meant():
    assert easy_week_told("everyone easy on friday except Ilse", ("Ilse",)) is None
    assert easy_week_told("an easy one for Ilse", ("Ilse",)).names == ("Ilse",)
