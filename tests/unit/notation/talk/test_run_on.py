"""A session told in one breath has its opening as a title, the day in front."""

import pytest

from core.notation.talk.run_on import in_rows


@pytest.mark.parametrize(
    ("typed", "rows"),
    [
        ("right tmrw lets do legs: 3 rounds, 15 squats", "tmrw legs\n3 rounds, 15 squats"),
        ("evening session thurs: 4 rounds 10 press ups", "thurs evening session\n4 rounds 10 press ups"),
        ("legs: 3 rounds, 15 squats", "legs\n3 rounds, 15 squats"),
        ("3 rounds: 15 squats, 10 lunges", "3 rounds: 15 squats, 10 lunges"),
        ("Tuesday: legs\n3 rounds", "Tuesday: legs\n3 rounds"),
    ],
)
def test_what_stands_before_the_colon_is_the_title(typed, rows):
    assert in_rows(typed) == rows


def test_an_hour_may_stand_in_the_opening():
    assert in_rows("tmrw 6pm: 3 rounds, 10 squats") == "tmrw 6pm\n3 rounds, 10 squats"
