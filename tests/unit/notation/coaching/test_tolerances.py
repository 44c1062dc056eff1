"""What a coach lets count as written, in words."""

import pytest

from core.notation.coaching.tolerances import read_tolerance
from core.scores.values import EXACTLY, Tolerance

TEN = Tolerance(lighter_percent=10)


@pytest.mark.parametrize(
    ("text", "percent"),
    [
        ("10% lighter counts as written", 10),
        ("Count up to 15 % lighter as written", 15),
        ("within 5 percent counts as written", 5),
        ("tolerance 20%", 20),
        ("set the tolerance to 10 %", 10),
        ("10% lighter does not count as written any more", 0),
    ],
)
def test_how_much_lighter_is_read(text, percent):
    assert read_tolerance(text, TEN).wanted == Tolerance(lighter_percent=percent)


@pytest.mark.parametrize(
    "text",
    [
        "another implement counts as written too",
        "any implement counts as written",
        "a dumbbell instead of a kettlebell counts as written",
    ],
)
def test_another_implement_is_read_and_leaves_the_load_alone(text):
    assert read_tolerance(text, TEN).wanted == Tolerance(lighter_percent=10, other_implement=True)


def test_both_can_be_said_at_once():
    told = read_tolerance("10% lighter or another implement counts as written", EXACTLY)
    assert told.wanted == Tolerance(lighter_percent=10, other_implement=True)


@pytest.mark.parametrize(
    "text",
    ["only exactly as written counts", "only what's exactly as written counts as written", "no tolerance"],
)
def test_only_exactly_takes_all_of_it_back(text):
    assert read_tolerance(text, Tolerance(lighter_percent=10, other_implement=True)).wanted == EXACTLY


@pytest.mark.parametrize(
    "text",
    ["what counts as written?", "tolerance", "does 10% lighter count as written?", "80% counts as written"],
)
def test_a_question_and_what_goes_too_far_are_answered_with_what_counts_now(text):
    assert read_tolerance(text, EXACTLY).wanted is None


@pytest.mark.parametrize(
    "text",
    ["7+12 as written", "10 push-ups", "I did it as written", "10% tired", "AMRAP 12\ncounts as written"],
)
def test_all_else_is_about_something_else(text):
    assert read_tolerance(text, EXACTLY) is None
