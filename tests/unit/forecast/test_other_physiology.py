"""Forecasts hold for people whose physiology is another; it was written without a look at ours."""

from tests.support.foreseen import foreseen, summed_up
from tests.support.season import mean, season, table

# Beside what their last comparable score or the group's median would have said.
A_THIRD_LESS = 0.7
LEARNED = 6


def test_forecasts_from_a_few_tests_beat_the_groups_median_and_their_ranges_hold():
    inside, error, of_median = summed_up(foreseen(16, seed=3))
    assert inside > 0.7
    assert error < of_median


def test_what_scores_taught_makes_forecasts_a_third_better_than_the_last_score_or_the_median():
    rows = table(season(14, seed=2))
    after = mean([row for time, row in rows.items() if time >= LEARNED])
    assert after.error < A_THIRD_LESS * after.of_last
    assert after.error < A_THIRD_LESS * after.of_median
    assert 0.72 < after.inside < 0.9
