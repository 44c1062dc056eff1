"""What a score teaches, and what it doesn't."""

from datetime import date, timedelta
from decimal import Decimal

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from core.athletes.values import Equipment, Evidence, Profile, Screening, Sex
from core.forecast.forecast import outlook_of
from core.forecast.learning import Taught, after, learned_from
from core.forecast.people import People
from core.measures import MassUnit
from core.movements.lookup import catalogue
from core.notation.boards.session import read_session
from core.scaling.version import version_for
from core.scores.values import Score

AMRAP = "AMRAP 12\n10 push-ups\n20 air squats"
MONDAY = date(2026, 3, 2)
ROUND = 30


def athlete(**more):
    told = {
        "sex": Sex.FEMALE,
        "body_mass_kg": Decimal(64),
        "screening": Screening.CLEAR,
        "limits": (),
        "equipment": (),
    }
    tests = (Evidence(movement="push-up", reps=18), Evidence(movement="air squat", reps=45))
    return Profile(name="Ilse", experience="some", **(told | {"evidence": tests} | more))


def version_of(profile, text=AMRAP):
    session = read_session(text, catalogue()).session
    assert session is not None
    return version_for(session, profile, catalogue(), year=MONDAY.year)


def forecast(profile, text=AMRAP):
    (outlook,) = outlook_of(version_of(profile, text), People(profile, catalogue(), MONDAY.year))
    return outlook.forecast


def rounds(number):
    whole = int(number)
    return Score(value=number, unit="rounds", rounds=whole, reps=round((number - whole) * ROUND))


def taught(profile, score, *, days=0, effort=None, text=AMRAP):
    version = version_of(profile, text)
    return Taught(version, version.blocks[0], score, MONDAY + timedelta(days=days), effort)


def having_done(profile, *scores):
    lessons = [taught(profile, score, days=2 * number) for number, score in enumerate(scores)]
    return profile.model_copy(update={"learned": learned_from(lessons, profile, catalogue())})


def having_told(profile, score, text):
    learned = after(taught(profile, score, text=text), profile, catalogue())
    return profile.model_copy(update={"learned": learned})


def test_who_did_better_than_expected_is_expected_to_do_better():
    ilse = athlete()
    usual = forecast(ilse).expected
    better = having_done(ilse, rounds(usual * 1.2))
    assert usual < forecast(better).expected < usual * 1.2
    worse = having_done(ilse, rounds(usual * 0.85))
    assert forecast(worse).expected < usual


def test_it_carries_over_to_another_session():
    ilse = athlete()
    other = "5 rounds for time\n8 push-ups\n15 sit-ups"
    better = having_done(ilse, *[rounds(forecast(ilse).expected * 1.2)] * 3)
    assert forecast(better, other).expected < forecast(ilse, other).expected


def test_every_score_makes_the_range_narrower():
    ilse, widths = athlete(), []
    for times in range(4):
        one = forecast(having_done(ilse, *[rounds(forecast(ilse).expected)] * times))
        widths.append(one.high / one.low)
    assert widths == sorted(widths, reverse=True)
    assert widths[-1] < 0.9 * widths[0]


@pytest.mark.parametrize("joke", [rounds(99), rounds(0.5), Score(value=7200, unit="s", seconds=7200)])
def test_a_joke_or_a_wrong_unit_spoils_nothing(joke):
    ilse = athlete()
    usual = having_done(ilse, *[rounds(forecast(ilse).expected)] * 4)
    learned = after(taught(usual, joke, days=20), usual, catalogue())
    assert forecast(usual.model_copy(update={"learned": learned})).expected == pytest.approx(
        forecast(usual).expected, rel=0.02
    )


def test_one_terrible_day_moves_little():
    ilse = athlete()
    expected = forecast(ilse).expected
    usual = having_done(ilse, *[rounds(expected)] * 5)
    bad = having_done(ilse, *[rounds(expected)] * 5, rounds(expected * 0.6))
    assert forecast(bad).expected > 0.95 * forecast(usual).expected


def test_who_had_much_left_wasnt_at_their_best():
    ilse = athlete()
    lesson = taught(ilse, rounds(forecast(ilse).expected * 0.8), effort=4)
    learned = after(lesson, ilse, catalogue())
    assert forecast(ilse.model_copy(update={"learned": learned})).expected == pytest.approx(
        forecast(ilse).expected, rel=0.001
    )


FREE = "5 rounds for time\n10 push-ups\n20 air squats"


def capped_at(share):
    """The same, with a cap at that share of the time that Ilse is expected to take."""
    minutes = int(forecast(athlete(), FREE).expected * share / 60)
    return FREE.replace("for time", f"for time, cap {minutes} min")


STOPPED = Score(value=120, unit="reps", reps=120, capped=True)


def test_whom_a_cap_stopped_is_at_least_so_slow():
    ilse = athlete()
    slower = having_told(ilse, STOPPED, capped_at(1.4))
    assert forecast(slower, FREE).expected > forecast(ilse, FREE).expected


def test_whom_a_cap_stopped_that_took_it_easily_told_nothing():
    ilse = athlete()
    assert after(taught(ilse, STOPPED, effort=4, text=capped_at(1.4)), ilse, catalogue()) == ilse.learned


def test_who_finished_what_nobody_expected_them_to_is_at_least_so_fast():
    ilse, text = athlete(), capped_at(0.8)
    assert forecast(ilse, text).unit == "reps"
    faster = having_told(ilse, Score(value=300, unit="s", seconds=300), text)
    assert forecast(faster, FREE).expected < forecast(ilse, FREE).expected


def test_what_nobody_showed_again_is_forgotten():
    ilse = athlete()
    learned = having_done(ilse, *[rounds(forecast(ilse).expected * 1.2)] * 4).learned
    faded = learned.as_of(MONDAY + timedelta(days=3 * 365)).model_copy(update={"away_days": 0})
    later = ilse.model_copy(update={"learned": faded})
    assert forecast(later).expected == pytest.approx(forecast(ilse).expected, rel=0.02)


def test_versions_know_what_scores_told():
    """Nobody is asked again for what their scores say: who does twice as much gets the push-ups of the strong."""
    ilse = athlete(evidence=())
    text = "AMRAP 12\n12 push-ups\n20 air squats"
    before = version_of(ilse, text)
    done = Taught(before, before.blocks[0], rounds(forecast(ilse, text).expected * 1.5), MONDAY)
    learned = ilse
    for _ in range(4):
        learned = learned.model_copy(update={"learned": after(done, learned, catalogue())})
    line, now = before.blocks[0].lines[0], version_of(learned, text).blocks[0].lines[0]
    if (line.movement, line.variant) == (now.movement, now.variant):
        assert now.unbroken > line.unbroken
    else:
        assert now.load_moved_kg > line.load_moved_kg


def test_units_change_nothing():
    ilse = athlete()
    lesson = rounds(forecast(ilse).expected * 1.1)
    in_pounds = athlete(units=MassUnit.LB)
    assert having_done(ilse, lesson).learned == having_done(in_pounds, lesson).learned


@settings(max_examples=25, deadline=None)
@given(factors=st.lists(st.floats(0.3, 3.0), min_size=1, max_size=6))
def test_whatever_was_scored_a_forecast_stays_one(factors):
    ilse = athlete()
    usual = forecast(ilse).expected
    learned = having_done(ilse, *[rounds(usual * one) for one in factors])
    one = forecast(learned)
    assert 0 < one.low <= one.expected <= one.high
    assert 0.3 * usual < one.expected < 3 * usual


@pytest.mark.parametrize("lifted", [30, 40])
def test_a_load_far_above_what_was_expected_is_what_is_expected_next(lifted):
    text = "15 min to find a heavy 3 of strict press"
    bar = (Equipment(implement="barbell", from_kg=Decimal(15), to_kg=Decimal(100), step_kg=Decimal("2.5")),)
    ilse = athlete(equipment=bar, evidence=())
    assert forecast(ilse, text).expected < 25
    after_it = having_told(ilse, Score(value=lifted, unit="kg", load_kg=Decimal(lifted)), text)
    assert forecast(after_it, text).expected == pytest.approx(lifted, rel=0.05)
