"""Forecasts from a few tests hold for people whose physiology is another; it was written without a look at ours."""

from tests.support.foreseen import foreseen, summed_up


def test_forecasts_from_a_few_tests_beat_the_groups_median_and_their_ranges_hold():
    inside, error, of_median = summed_up(foreseen(16, seed=3))
    assert inside > 0.7
    assert error < of_median
