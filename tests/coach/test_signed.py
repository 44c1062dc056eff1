"""Coaches' cases: how many of the tuning half a coach would sign. The floor is what was measured, and only rises."""

from tests.coach.judge import TUNING, cases_in, judged, share

# Measured on 505 cases of fifteen coaches: 466 are signed (of the last forty 31 were when they came).
FLOOR = 92.0


def test_coaches_sign_what_they_signed_before():
    assert share(judged(cases_in(TUNING))) >= FLOOR
