"""Training somewhere else; how people say it is common practice, no source. 2 March 2026 is a Monday."""

from datetime import date

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.measures import MassUnit
from core.understanding.elsewhere import read_elsewhere

MONDAY = date(2026, 3, 2)


def read(text):
    return read_elsewhere(text, MONDAY, MassUnit.KG)


@pytest.mark.parametrize(
    ("said", "things"),
    [
        ("I'm travelling, only a band", ["band"]),
        ("at my mum's, no weights", []),
        ("at my mum\u2019s, no weights", []),
        ("in a hotel, nothing here", []),
        ("traveling for two weeks with a band", ["band"]),
        ("on holiday until sunday with just a band and a chair", ["band", "chair"]),
        ("at work, no weights, just a chair", ["chair"]),
        ("not home today, bodyweight only", []),
        ("I'm away from home with a 10 kg dumbbell", ["dumbbell"]),
    ],
)
def test_what_is_there(said, things):
    told = read(said)
    assert told is not None
    assert [one.implement for one in told.things] == things
    assert not told.later


@pytest.mark.parametrize(
    ("said", "until"),
    [
        ("on holiday until sunday with just a band", date(2026, 3, 8)),
        ("I'm at my parents for 3 days, nothing here", date(2026, 3, 4)),
        ("on a business trip till friday, no equipment", date(2026, 3, 6)),
        ("travelling this week, only a band", date(2026, 3, 8)),
        ("traveling for two weeks with a band", date(2026, 3, 15)),
        ("away until 12 march, only a band", date(2026, 3, 12)),
        ("I'm travelling, only a band", None),
    ],
)
def test_until_when(said, until):
    told = read(said)
    assert told is not None
    assert told.until == until


def test_what_is_not_said_is_not_made_up():
    for said in ("I'm travelling", "in a hotel with a gym", "staying at my sister's, she has a kettlebell"):
        told = read(said)
        assert told is not None
        assert told.things is None


@pytest.mark.parametrize(
    ("said", "place", "things"),
    [
        ("im at the gym today, they have everything", "gym", True),
        ("I'm at the gym", "gym", False),
        ("I'm travelling, only a band", "trip", True),
    ],
)
def test_where_they_are(said, place, things):
    told = read(said)
    assert told is not None
    assert (told.place, bool(told.things)) == (place, things)


def test_another_time_is_not_today():
    told = read("on holiday next month with a band")
    assert told is not None
    assert told.later


NEXT_WEEK = (date(2026, 3, 9), date(2026, 3, 15))


@pytest.mark.parametrize(
    ("said", "days"),
    [
        ("next week I only have a band", NEXT_WEEK),
        ("I'm on holiday next week, only a band", NEXT_WEEK),
        ("I'll only have a band next week", NEXT_WEEK),
        ("from wednesday I just have a band", (date(2026, 3, 4), date(2026, 3, 10))),
        ("from wednesday to friday I only have a band", (date(2026, 3, 4), date(2026, 3, 6))),
        ("tomorrow I only have a band", (date(2026, 3, 3), date(2026, 3, 3))),
        ("on friday I'm travelling, only a band", (date(2026, 3, 6), date(2026, 3, 6))),
        ("I'll be at my mum's from thursday until sunday with a band", (date(2026, 3, 5), date(2026, 3, 8))),
        ("this week I only have a band", (None, date(2026, 3, 8))),
        ("today I only have a band", (None, None)),
        ("I only have a band for 3 days", (None, date(2026, 3, 4))),
    ],
)
def test_the_days_on_which_it_is_so(said, days):
    told = read(said)
    assert told is not None
    assert [one.implement for one in told.things] == ["band"]
    assert (told.since, told.until) == days
    assert not told.later


@pytest.mark.parametrize(
    "said",
    [
        "at the gym today",
        "at work today, can't train",
        "the trip was great",
        "am I travelling?",
        "7+12 at my mum's",
        "only a band",
        "I only have a band",
        "next week I only have mondays",
        "today I only have time for the first part",
        "my mum has no weights",
        "away, see you on Monday",
        "",
    ],
)
def test_other_talk(said):
    assert read(said) is None


@given(st.text(max_size=200))
def test_any_text_is_read(text):
    assert read(text) is None or read(text).place == "trip"
