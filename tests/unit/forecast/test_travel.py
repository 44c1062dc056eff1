"""How long it takes to cover ground: by one's own time for it, else beside a run."""

from datetime import date

import numpy as np
import pytest

from core.athletes.values import Evidence, Profile
from core.forecast.people import People
from core.movements.lookup import catalogue


def seconds_of(movement, metres, *evidence, **known):
    people = People(Profile(name="Ida", evidence=evidence, **known), catalogue(), 2026)
    of_a_metre = catalogue().movement(movement).variants[0].seconds.value
    return float(np.median(people.travel_s(movement, of_a_metre, metres))) * metres


def test_a_time_for_a_distance_is_believed_of_that_movement():
    rowed = Evidence(movement="row", variant="machine", distance_m=2000, seconds=560, on=date(2026, 1, 1))
    assert seconds_of("row", 2000, rowed) == pytest.approx(560, rel=0.02)
    assert seconds_of("run", 2000, rowed) == pytest.approx(seconds_of("run", 2000), rel=0.001)


def test_twice_as_far_takes_more_than_twice_as_long():
    rowed = Evidence(movement="row", variant="machine", distance_m=2000, seconds=560, on=date(2026, 1, 1))
    assert seconds_of("row", 4000, rowed) > 2 * seconds_of("row", 2000, rowed)


def test_nobody_who_may_walk_fast_is_slower_than_that():
    """Somebody old who can't run at the rate they keep up walks at it: a hundred metres a minute (ACSM's equation)."""
    assert seconds_of("run", 2000, birth_year=1956) <= 20.5 * 60


def test_a_walk_is_no_slow_run_and_nobody_runs_slower_than_they_walk():
    walked = Evidence(
        movement="run", variant="brisk-walk", distance_m=3000, seconds=1700, on=date(2026, 1, 1)
    )
    people = People(Profile(name="Ida", evidence=(walked,)), catalogue(), 2026)
    assert float(np.median(people.run_s(3000))) < 1500
    assert people.run_s(3000).max() <= 1700
    walk = people.travel_s("run", 0.6, 3000, "brisk-walk") * 3000
    assert float(np.median(walk)) == pytest.approx(1700, rel=0.02)


@pytest.mark.parametrize(
    ("sex", "born", "kg", "experience"),
    [
        ("female", 1991, 65, "some"),
        ("female", 1978, 70, "trained"),
        ("male", 1965, 92, "some"),
        ("male", 1996, 95, "new"),
    ],
)
def test_an_ordinary_adult_whom_nobody_timed_rows_500_metres_in_two_to_two_minutes_forty(
    sex, born, kg, experience
):
    """Common practice, no source."""
    took = seconds_of("row", 500, sex=sex, birth_year=born, body_mass_kg=kg, experience=experience)
    assert 120 <= took <= 160


def test_a_fast_runner_is_no_fast_rower_by_that():
    ran = Evidence(movement="run", variant="outdoors", distance_m=5000, seconds=1350, on=date(2026, 1, 1))
    known = {"sex": "female", "birth_year": 1999, "body_mass_kg": 64, "experience": "trained"}
    without = seconds_of("row", 500, **known)
    assert 107 <= seconds_of("row", 500, ran, **known) < without


def test_who_was_never_timed_runs_a_short_way_faster_than_a_long_one():
    assert seconds_of("run", 400, birth_year=1990) * 5 < 0.9 * seconds_of("run", 2000, birth_year=1990)
