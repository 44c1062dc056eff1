"""Words about doing less for a while."""

import pytest

from core.notation.easing import read_break, read_easy_week

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
    assert (wish.name, wish.when, wish.yes, wish.mine) == (name, when, True, mine)


@pytest.mark.parametrize(
    "text",
    ["no easy week", "the easy week is over", "cancel Ilse's easy week", "call off the easy week next week"],
)
def test_its_end_is_read(text):
    assert read_easy_week(text, NAMES).yes is False


@pytest.mark.parametrize(
    "text",
    [
        "that was easy this week",
        "was that an easy week?",
        "easy session",
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
