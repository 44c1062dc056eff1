"""Coaches' cases: how many of the tuning half a coach would sign. The floor is what was measured, and only rises."""

from tests.coach.judge import TUNING, cases_in, judged, share

# Measured on 585 cases of seventeen coaches; of the last eighty 62 were signed when they came.
FLOOR = 91.2


def test_coaches_sign_what_they_signed_before():
    assert share(judged(cases_in(TUNING))) >= FLOOR
