"""A share of a best, asked for with no kilos."""

import pytest

from core.notation.talk.shares_asked import asked_share


@pytest.mark.parametrize(
    ("text", "asked"),
    [
        ("80 %", (80, None)),
        ("80% of what?", (80, None)),
        ("what's 75 percent of my best back squat", (75, "back squat")),
        ("whats 70% of my max", (70, None)),
    ],
)
def test_the_share_and_its_lift_are_heard(text, asked):
    assert asked_share(text) == asked


@pytest.mark.parametrize("text", ["did 5x3 at 80 %", "80 % of the group", "200 %", "80 kg", "back squat 80"])
def test_a_share_of_something_else_is_left_alone(text):
    assert asked_share(text) is None
