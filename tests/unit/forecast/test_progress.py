"""Whether somebody gets better: beside their own forecasts, and in sessions that came again."""

from datetime import date, timedelta

import pytest

from core.ability.capacity import Capacity
from core.athletes.values import Evidence, Profile
from core.forecast.progress import (
    MOST,
    Scored,
    believed_of,
    beside_forecasts,
    done_again,
    is_best,
    is_suspicious,
    trend_of,
)
from core.forecast.values import Beside, Forecast, Trend
from core.measures import AmountUnit
from core.movements.lookup import catalogue
from core.scaling.values import Because, Change, Reason, VersionBlock, VersionLine
from core.scores.values import Score
from core.sessions.values import Format

MONDAY = date(2026, 3, 2)
ROUNDS = Forecast(unit="rounds", low=5, expected=6, high=7.2)
SECONDS = Forecast(unit="s", low=500, expected=600, high=720)


def line(amount=10.0):
    return VersionLine(
        line=1, written="10 push-ups", movement="push-up", variant="floor", amount=amount, unit=AmountUnit.REPS,
        change=Change.NONE, reason=Reason(because=Because.AS_WRITTEN),
    )  # fmt: skip


def scored(rounds=6, *, day=0, foreseen=ROUNDS, amount=10.0):
    block = VersionBlock(block=1, format=Format.AMRAP, minutes=12, lines=(line(amount),))
    score = Score(value=float(rounds), unit="rounds", rounds=rounds, reps=0)
    return Scored(MONDAY + timedelta(days=day), block, score, foreseen)


def in_seconds(seconds):
    one = scored(foreseen=SECONDS)
    return one._replace(score=Score(value=seconds, unit="s", seconds=seconds))


def besides(*better):
    return [Beside(on=MONDAY + timedelta(days=day), better=one) for day, one in enumerate(better)]


def test_more_rounds_and_less_time_are_better():
    assert beside_forecasts([scored(7)])[0].better > 0 > beside_forecasts([scored(5)])[0].better
    assert beside_forecasts([in_seconds(540)])[0].better > 0 > beside_forecasts([in_seconds(660)])[0].better


def test_the_edges_of_the_range_are_one_and_a_quarter_spreads_off():
    assert beside_forecasts([in_seconds(500)])[0].better == pytest.approx(1.2816, rel=0.01)


def test_a_single_score_counts_for_two_spreads_at_most():
    assert beside_forecasts([scored(60)])[0].better == MOST


def test_what_was_counted_otherwise_is_not_compared():
    assert not beside_forecasts([scored(6, foreseen=SECONDS), scored(6, foreseen=None)])


def test_five_scores_say_nothing_yet():
    assert trend_of(besides(1, 1, 1, 1, 1)) is None


@pytest.mark.parametrize(
    ("last", "trend"),
    [
        ((1, 0.5, 1, 0, 1, 0.5), Trend.UP),
        ((0.2, -0.3, 0, 0.1, 0.3, -0.2), Trend.STEADY),
        ((-1, -0.5, 0, -1, 0, -0.5), Trend.DOWN),
    ],
)
def test_the_last_six_say_where_it_goes(last, trend):
    assert trend_of(besides(-2, -2, *last)) is trend


def test_six_far_above_are_for_the_coach_to_look_at():
    assert is_suspicious(besides(*[1.6] * 6))
    assert not is_suspicious(besides(*[1.6] * 5, 0.9))


def test_the_same_work_done_again_stands_side_by_side():
    found = done_again([scored(6, day=9), scored(5), scored(7, day=3, amount=12.0)])
    ((again),) = found
    assert [one.rounds for _, one in again.scores] == [5, 6]
    assert again.is_best


def test_a_weaker_second_time_is_no_best():
    ((again),) = done_again([scored(6), scored(5, day=7)])
    assert not again.is_best


def test_a_score_is_the_best_only_beside_another_time_of_the_same():
    assert is_best(scored(7), [scored(6), scored(5, day=1)])
    assert not is_best(scored(6), [scored(6)])
    assert not is_best(scored(7), [])
    assert not is_best(scored(7), [scored(3, amount=12.0)])


@pytest.mark.parametrize("load_kg", [2, 8])
def test_of_an_ability_nothing_is_said_that_nobody_would_say_of_themselves(load_kg):
    rows = VersionLine(
        line=1, written="10 rows", movement="bent-over row", variant="standing", implement="dumbbell", count=2,
        amount=10, unit=AmountUnit.REPS, load_kg=load_kg, load_moved_kg=2.0 * load_kg, change=Change.NONE,
        reason=Reason(because=Because.AS_WRITTEN),
    )  # fmt: skip
    shown = (Evidence(movement="bent-over row", variant="standing", reps=12, load_kg=18),)
    told = believed_of([rows], Capacity(Profile(name="Ida", evidence=shown), catalogue(), 2026), catalogue())
    assert all(1 <= one.expected <= 50 and one.high <= 3 * one.low for one in told)
    assert bool(told) is (load_kg == 8)
