"""A runner's pace is arithmetic: a distance and its time, where a pace is asked for."""

import pytest

from core.notation.talk.paces_asked import asked_pace


@pytest.mark.parametrize(
    ("text", "metres", "seconds"),
    [
        ("whats 5k pace if i run 20:10", 5000, 1210),
        ("pace for 10 km in 48 min", 10000, 2880),
        ("how fast is a half in 1:45:00 per km?", 21097.5, 6300),
        ("what pace is 400m in 1:30?", 400, 90),
    ],
)
def test_a_distance_and_its_time_are_a_pace(text, metres, seconds):
    assert asked_pace(text) == (metres, seconds)


@pytest.mark.parametrize(
    "text",
    ["ran 5k in 20:10", "how do I pace it?", "5k pace?", "what pace for 5k and 10k in 48 min?", "7+12"],
)
def test_what_isnt_asked_or_isnt_both_told_is_none(text):
    assert asked_pace(text) is None
