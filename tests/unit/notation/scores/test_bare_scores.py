"""What a coach reads of a score is the score: nothing of a body, whatever words it is told in."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from core.athletes.limits import limits
from core.notation.scores.bare_scores import bare_score


@pytest.mark.parametrize(
    ("typed", "score"),
    [
        ("9+3, my right knee hurts", "9+3"),
        ("did 7 rounds and 12 reps rx, felt awesome", "7 rounds and 12 reps rx"),
        ("8:43 and my back is killing me", "8:43"),
        ("stopped at 45, wrist", "45"),
        ("8:43 scaled (pregnant, 24 weeks)", "8:43 scaled"),
        ("not as written, 7+12", "not as written, 7+12"),
        ("seven rounds and twelve", "seven rounds and twelve"),
        ("60kg 3x8", "60kg 3x8"),
        ("I'm on beta blockers so 5 rounds", "5 rounds"),
        ("Second round I felt dizzy, 6+3", "6+3"),
        ("capped, 120 reps", "capped, 120 reps"),
        ("my period, sorry", ""),
    ],
)
def test_the_score_is_what_is_left(typed, score):
    assert bare_score(typed) == score


@pytest.mark.parametrize("limit", limits(), ids=lambda one: one.id)
def test_no_limit_gets_through(limit):
    assert bare_score(f"7+12, {limit.label}") == "7+12"
    assert bare_score(f"{limit.label} so only 7+12") == "7+12"


@settings(max_examples=200)
@given(st.text(max_size=300))
def test_it_takes_any_text_and_adds_nothing(text):
    bare = bare_score(text)
    assert bare_score(bare) == bare
