"""What is expected of somebody: a range in order, none where none is due, better for whoever is better."""

from datetime import date
from decimal import Decimal

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from core.athletes.learned import Learned
from core.athletes.values import Equipment, Evidence, Profile, Screening, Sex
from core.forecast.forecast import outlook_of
from core.forecast.pacing import in_parts
from core.forecast.people import People
from core.measures import MassUnit
from core.movements.lookup import catalogue
from core.notation.boards.session import read_session
from core.scaling.values import Version
from core.scaling.version import version_for

YEAR = 2026
EVERY_FORMAT = {
    "AMRAP 12\n10 push-ups\n15 air squats": "rounds",
    "5 rounds for time\n10 push-ups\n15 air squats": "s",
    "21-15-9 for time\nair squats\npush-ups": "s",
    "5 x 400 m run, rest 2 min": "s",
    "every minute for 10 min\n10 push-ups": "rounds",
    "8 rounds: 20 s on, 10 s off\nair squats": "reps",
    "Max push-ups in 2 minutes": "reps",
    "2 km run for time": "s",
    "Build to a heavy triple\nback squat": "kg",
    "5 x 5 back squat @ 60 kg, rest 3 min": "kg",
    "Plank hold for max time": "s",
}


def athlete(reps=20, *, run_s=660, **more):
    things = (Equipment(implement="barbell", from_kg=20, to_kg=140, step_kg="2.5"),)
    shown = (
        Evidence(movement="push-up", reps=reps),
        Evidence(movement="air squat", reps=2 * reps),
        Evidence(movement="plank", seconds=90),
        Evidence(movement="back squat", reps=5, load_kg=Decimal(80)),
        Evidence(movement="run", distance_m=2400, seconds=run_s),
    )
    known = {"name": "Ida", "sex": Sex.FEMALE, "body_mass_kg": Decimal(64), "birth_year": 1992}
    known |= {"screening": Screening.CLEAR, "limits": (), "equipment": things, "evidence": shown}
    return Profile(**known | more)


def expected(text, profile, seed=0):
    session = read_session(text, catalogue()).session
    assert session is not None
    version = version_for(session, profile, catalogue(), year=YEAR)
    assert isinstance(version, Version)
    (found,) = outlook_of(version, People(profile, catalogue(), YEAR, seed))
    return found


def versions_of(text, reps):
    """What somebody does: the ways, without what is known of them."""
    session = read_session(text, catalogue()).session
    assert session is not None
    version = version_for(session, athlete(reps), catalogue(), year=YEAR)
    assert isinstance(version, Version)
    return [(line.variant, line.amount) for _, line in version.spots]


@pytest.mark.parametrize(("text", "unit"), EVERY_FORMAT.items())
def test_every_scored_format_has_a_forecast_in_its_unit_and_in_order(text, unit):
    one = expected(text, athlete()).forecast
    assert one.unit == unit
    assert 0 < one.low <= one.expected <= one.high


@pytest.mark.parametrize(
    "profile",
    [
        athlete(experience="new"),
        athlete(screening=Screening.MODERATE),
        athlete(limits=("pregnancy-middle",)),
    ],
)
def test_nothing_is_expected_of_those_who_are_new_pregnant_or_on_light_duty(profile):
    assert expected("AMRAP 12\n10 push-ups\n15 air squats", profile) is None


def test_whoever_is_new_is_told_what_to_expect_after_two_scores():
    learned = Learned(on=date(2026, 3, 1), seen=2)
    text = "AMRAP 12\n10 push-ups\n15 air squats"
    assert expected(text, athlete(experience="new", learned=learned.model_copy(update={"seen": 1}))) is None
    assert expected(text, athlete(experience="new", learned=learned)) is not None


def test_weeks_off_lower_what_is_expected_told_or_seen_by_the_last_score():
    text = "AMRAP 12\n10 push-ups\n15 air squats"
    rounds = [
        expected(text, athlete(learned=Learned(on=date(2026, 3, 1), away_days=7 * weeks))).forecast.expected
        for weeks in (0, 8, 16)
    ]
    assert rounds[0] > rounds[1] > rounds[2] > 0.6 * rounds[0]
    assert Learned(on=date(2026, 3, 1)).as_of(date(2026, 4, 26)).away_days == 56


def test_nothing_is_expected_in_metres_of_what_is_not_told_in_them():
    things = (Equipment(implement="stairs"), Equipment(implement="arm bike"))
    for text in ("100 m stair climb for time", "2000 m arm bike for time", "10 min arm bike, distance"):
        assert expected(text, athlete(equipment=things)) is None


def test_how_far_somebody_gets_is_what_they_would_take_the_time_for():
    far = expected("11 min run, distance", athlete(run_s=660)).forecast
    assert far.unit == "m"
    assert far.expected == pytest.approx(2400, rel=0.02)


def test_thirty_two_push_ups_are_some_forty_in_two_minutes():
    """36 to 44, a coach would say (common practice, no source)."""
    one = expected("Max push-ups in 2 minutes", athlete(32)).forecast
    assert one.low < 40
    assert one.expected < 47


def test_several_holds_are_expected_as_they_are_scored():
    once = expected("Max plank hold", athlete()).forecast.expected
    together = expected("3 x max plank, rest 1 min", athlete()).forecast.expected
    best = expected("3 x max plank, rest 1 min\nscore: best", athlete()).forecast.expected
    assert once < together < 3 * once
    assert best == pytest.approx(once)


@given(st.integers(8, 20), st.integers(1, 8))
def test_a_lighter_load_never_means_fewer_rounds(load_kg, less):
    session = read_session(f"AMRAP 12\n10 back squats @ {load_kg + 20} kg\n10 push-ups", catalogue()).session
    assert session is not None
    version = version_for(session, athlete(), catalogue(), year=YEAR)
    assert isinstance(version, Version)
    (block,) = version.blocks
    squats, push_ups = block.lines
    lines = (squats.model_copy(update={"load_moved_kg": squats.load_moved_kg - less}), push_ups)
    lighter = version.model_copy(update={"blocks": (block.model_copy(update={"lines": lines}),)})
    people = People(athlete(), catalogue(), YEAR)
    (heavy,), (light,) = outlook_of(version, people), outlook_of(lighter, people)
    assert light.forecast.expected >= heavy.forecast.expected * 0.98  # breaks fall on whole repetitions


def test_nothing_is_expected_of_what_is_not_for_a_score():
    assert expected("3 rounds not for time\n10 push-ups\n15 air squats", athlete()) is None


def test_whoever_will_not_finish_under_the_cap_is_told_how_many_they_will_have_done():
    one = expected("For time, cap 5 min\n100 push-ups\n200 air squats", athlete(12)).forecast
    assert one.unit == "reps"
    assert one.high < 300


def test_the_same_athlete_gets_the_same_forecast():
    text = "AMRAP 12\n10 push-ups\n15 air squats"
    assert expected(text, athlete()) == expected(text, athlete())


def test_units_change_nothing():
    text = "AMRAP 12\n10 push-ups\n15 air squats"
    assert expected(text, athlete()) == expected(text, athlete(units=MassUnit.LB))


@given(st.integers(6, 45), st.integers(1, 12))
def test_whoever_can_do_more_is_never_expected_to_do_less(reps, more):
    text = "AMRAP 12\n6 push-ups\n12 air squats"
    assume(versions_of(text, reps) == versions_of(text, reps + more))
    weaker, stronger = (expected(text, athlete(one)).forecast for one in (reps, reps + more))
    assert stronger.expected >= weaker.expected * 0.98  # breaks fall on whole repetitions


@given(st.integers(15, 170), st.integers(5, 60))
def test_more_rest_never_means_fewer_repetitions(rest_s, more):
    text = "3 sets of max push-ups, rest {} s"
    short, long = (expected(text.format(one), athlete()).forecast for one in (rest_s, rest_s + more))
    assert long.expected >= short.expected


def test_whoever_runs_faster_is_expected_sooner():
    text = "5 x 400 m run, rest 2 min"
    assert expected(text, athlete(run_s=600)).forecast.high < expected(text, athlete(run_s=780)).forecast.low


def test_a_tested_run_is_forecast_by_its_own_time():
    one = expected("2400 m run for time", athlete(run_s=660)).forecast
    assert one.expected == pytest.approx(660, rel=0.01)
    assert one.high < 1.15 * one.low


def test_what_is_known_narrows_the_range():
    text = "Max push-ups in 2 minutes"
    known, unknown = (expected(text, one).forecast for one in (athlete(), athlete(evidence=())))
    assert known.high / known.low < unknown.high / unknown.low


def test_the_pace_of_a_round_is_that_of_the_score():
    found = expected("AMRAP 12\n10 push-ups\n15 air squats", athlete())
    assert found.pacing.round_s == pytest.approx(12 * 60 / found.forecast.expected)


def test_what_will_break_is_broken_from_the_start():
    (broken,) = expected("5 rounds for time\n14 push-ups\n200 m run", athlete(20)).pacing.broken
    assert broken.movement == "push-up"
    assert sum(broken.parts) == 14
    assert sorted(broken.parts, reverse=True) == list(broken.parts)


@given(st.integers(1, 60), st.integers(1, 6))
def test_parts_add_up_and_never_grow(amount, parts):
    found = in_parts(amount, parts)
    assert sum(found) == amount
    assert all(one >= 1 for one in found)
    assert list(found) == sorted(found, reverse=True)


@pytest.mark.parametrize(("amount", "parts"), [(100, (50, 50)), (30, (15, 15)), (10, (6, 4)), (51, (27, 24))])
def test_many_are_parted_as_people_count(amount, parts):
    assert in_parts(amount, 2) == parts


def test_a_range_that_says_nothing_and_what_will_simply_be_done_are_no_forecast_to_tell():
    stations = "EMOM 9\nmin 1: 5 push-ups\nmin 2: 5 air squats\nmin 3: 20 s plank"
    assert not expected(stations, athlete(reps=40)).is_telling
    assert not expected("5 x 5 back squat @ 60 kg, rest 3 min", athlete()).is_telling
    assert expected("AMRAP 12\n10 push-ups\n15 air squats", athlete(reps=40)).is_telling


def test_the_pace_of_rounds_with_something_done_once_is_when_the_rounds_are_over():
    text = "21-15-9 for time\nair squats\npush-ups\nthen 800 m run"
    outlook = expected(text, athlete(reps=40))
    pace = outlook.pacing
    assert pace.half_s is None
    assert pace.rounds_s is not None
    assert 0 < pace.rounds_s < outlook.forecast.expected
