"""Today's minutes hold for the whole session: warm-up, all parts and rests; the main part is cut last."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from core.athletes.values import Today
from core.forecast.forecast import outlook_of
from core.forecast.lasting import seconds_of
from core.forecast.people import People
from core.forecast.today import length_s, version_today
from core.movements.lookup import catalogue
from core.scaling.values import Version
from core.scaling.version import version_for
from core.scaling.warm_up import warm_up_for
from tests.unit.scaling.people import athlete, did, session

YEAR = 2026
WHOLE = """Warm-up
2 rounds
20 jumping jacks
10 air squats

Every minute for 12 minutes
10 push-ups

Finisher, 3 rounds not for time
10 walking lunges
30 s plank"""
STRENGTH = """A) Back squat 5x5 @ 60 kg, rest 2:30
B) Bench press 4x6 @ 50 kg, rest 2 min
C) Bent-over row 4x8 @ 40 kg, rest 90 s"""
ENGINE = "Warm-up:\n200 m run\n10 air squats\n\nAMRAP 18\n200 m run\n10 push-ups"
FOR_TIME = "5 rounds for time\n400 m run\n20 push-ups\n30 air squats"
SESSIONS = (WHOLE, STRENGTH, ENGINE, FOR_TIME)


def somebody(minutes=None):
    return athlete(
        "Ida",
        owns=["barbell 20 to 100 by 2.5", "bench", "skipping rope"],
        tests=[did("push-up", 25), did("back squat", 5, 80), did("bench press", 5, 60)],
        experience="trained",
        today=Today(minutes=minutes),
    )


def made(text, minutes):
    version = version_today(session(text), somebody(minutes), catalogue(), year=YEAR)
    assert isinstance(version, Version)
    return version


def minutes_of(text, version, minutes):
    who = somebody(minutes)
    people = People(who, catalogue(), YEAR)
    warm_up = warm_up_for(session(text), version, who, catalogue())
    return (length_s(version, people) + (seconds_of(warm_up, people) if warm_up else 0.0)) / 60


@settings(max_examples=12, deadline=None)
@given(st.sampled_from(SESSIONS), st.integers(12, 60))
def test_the_whole_session_lasts_no_longer_than_the_minutes_that_there_are(text, minutes):
    assert minutes_of(text, made(text, minutes), minutes) <= 1.1 * minutes


@pytest.mark.parametrize("text", [WHOLE, STRENGTH, ENGINE])
def test_whoever_has_time_enough_does_all_of_it(text):
    whole = version_for(session(text), somebody(90), catalogue(), year=YEAR)
    assert made(text, 90) == whole
    assert made(text, 90).in_minutes is None


def test_the_warm_up_gets_shorter_first_then_the_finisher_goes_and_the_main_part_stays():
    warm_up, main, finisher = made(WHOLE, 16).blocks
    assert (warm_up.rounds, main.minutes, finisher.is_left_out) == (1, 12, True)
    assert made(WHOLE, 16).in_minutes == 16


def test_strength_keeps_every_part_with_shorter_rests_and_fewer_sets():
    short = made(STRENGTH, 20)
    assert not any(block.is_left_out for block in short.blocks)
    assert [block.rest_s for block in short.blocks] == [60, 60, 60]
    assert (short.blocks[0].rounds or 0) < 5


def test_rests_get_shorter_before_there_are_fewer_sets():
    whole, short = made(STRENGTH, None), made(STRENGTH, 32)
    assert [block.rounds for block in short.blocks] == [block.rounds for block in whole.blocks]
    assert short.blocks[0].rest_s == 60
    assert short.in_minutes == 32


def test_what_goes_leaves_its_minutes_to_the_main_part():
    short = made(STRENGTH, 15)
    assert [block.is_left_out for block in short.blocks] == [False, False, True]
    assert (short.blocks[0].rounds or 0) >= 3


def test_when_even_that_is_too_long_the_last_part_goes():
    assert made(STRENGTH, 10).blocks[-1].is_left_out


@pytest.mark.parametrize("minutes", [5, 10, 20])
def test_what_is_for_time_ends_when_the_minutes_are_over(minutes):
    (block,) = made(FOR_TIME, minutes).blocks
    assert block.cap_s is not None
    assert block.cap_s <= 60 * minutes


def test_a_part_that_is_left_out_has_no_expected_score_and_concerns_no_coach():
    version = made(WHOLE, 16)
    assert outlook_of(version, People(somebody(16), catalogue(), YEAR))[-1] is None
    assert all(one.block != len(version.blocks) for one in version.needs_coach)
    assert not version.as_written
