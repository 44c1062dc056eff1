"""How far a pregnancy is, and how long ago a birth, in people's words."""

import pytest

from core.notation.body.stages import read_cleared, read_weeks


@pytest.mark.parametrize(
    ("text", "weeks"),
    [
        ("24 weeks pregnant", 24),
        ("I'm 24+3 weeks", 24),
        ("week 24, cleared", 24),
        ("in my 30th week", 30),
        ("5 months pregnant", 22),
        ("20 wks after birth", 20),
        ("pregnant", None),
        ("24", None),
        ("three 16 kg bells", None),
    ],
)
def test_weeks_are_read_from_words(text, weeks):
    assert read_weeks(text) == weeks


@pytest.mark.parametrize(("text", "weeks"), [("24", 24), ("24 I think", 24), ("about time", None)])
def test_a_bare_number_is_weeks_where_weeks_were_asked_for(text, weeks):
    assert read_weeks(text, bare=True) == weeks


@pytest.mark.parametrize(
    ("text", "cleared"),
    [
        ("10 weeks, cleared", True),
        ("my midwife says it's okay", True),
        ("doctor said yes", True),
        ("not cleared yet", False),
        ("haven't got the green light", False),
        ("10 weeks", None),
    ],
)
def test_a_yes_of_who_may_say_so_is_read(text, cleared):
    assert read_cleared(text) is cleared
