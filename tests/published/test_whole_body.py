"""Distances, times and rates of work against published numbers."""

import pytest

from core.ability.whole_body import pace_of, rate_of, uptake_of_a_twelve_minute_run
from core.athletes.values import Evidence, Profile, Sex


def ran(metres, seconds):
    return Evidence(movement="run", distance_m=metres, seconds=seconds)


def test_a_twelve_minute_run_of_2400_metres():
    # Cooper 1968, JAMA 203:201-204, 2400 m -> 42.37 (cited).
    assert uptake_of_a_twelve_minute_run(2400) == pytest.approx(42.37, abs=0.005)


def test_one_test_is_stretched_by_riegels_exponent():
    # Riegel 1981, American Scientist 69:285-290: t2 = t1 (d2/d1)^1.06 (from memory). 2400 m in 12:00 -> 5 km in 26:09.
    pace = pace_of([ran(2400, 720)], "run")
    assert pace.seconds_for(5000) == pytest.approx(1568, abs=2)
    assert pace.metres_in(pace.seconds_for(5000)) == pytest.approx(5000)


def test_two_tests_give_the_exponent_and_the_latest_its_level():
    pace = pace_of([ran(1000, 240), ran(5000, 240 * 5**1.1)], "run")
    assert pace.exponent == pytest.approx(1.1)
    assert pace.seconds_for(5000) == pytest.approx(240 * 5**1.1)


def test_a_walk_among_the_tests_does_not_bend_the_law():
    assert pace_of([ran(400, 300), ran(5000, 1500)], "run").exponent == 1.0


def test_a_timed_run_makes_the_rate_surer_than_a_norm():
    norm, tested = (
        rate_of(Profile(name="Bo", sex=Sex.MALE)),
        rate_of(Profile(name="Bo", evidence=(ran(3000, 720),))),
    )
    assert tested.spread < norm.spread
    assert tested.met == pytest.approx(0.85 * 55.78 / 3.5, rel=0.01)


def test_without_a_test_nothing_is_made_up():
    assert pace_of([Evidence(movement="run", distance_m=400)], "run") is None
