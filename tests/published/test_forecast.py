"""Sets after sets as the forecast does them, against what was counted in studies and what the trade knows."""

import numpy as np
import pytest

from core.forecast.fatigue import slow_share
from core.forecast.floor import CHANGE_S, Floor
from core.forecast.people import OVERDRAFT_S
from core.forecast.work import Work

ONE = np.ones(1)
MINUTE = 60.0
# Seconds of one repetition of a press (estimate).
REP_S = 2.5


def sets_to_failure(unbroken: float, rest_s: float, sets: int) -> list[int]:
    """Repetitions of each of so many sets, for somebody of whom everything is known."""
    fresh = unbroken * ONE
    work = Work(
        line=1,
        movement="bench press",
        amount=None,
        seconds=REP_S * ONE,
        debt=np.array([1 / fresh, 0 * ONE]),
        slow=np.array([slow_share(fresh), 0.5 * ONE]),
        unbroken=fresh,
        counted=1.0,
    )
    floor, done = Floor(1, ONE, stops_at=1.0), []
    for _ in range(sets):
        done.append(round(float(floor.to_failure(work)[0])))
        floor.rest(rest_s)
    return done


def by_epley(share: float) -> float:
    """Repetitions that go at a share of the one-repetition maximum (Epley 1985)."""
    return 30 * ((1 + 1 / 30) / share - 1)


def test_three_sets_at_seventy_percent_with_a_minutes_rest():
    """Silva et al. 2014, J Trainology 3:41-46: bench press, 26.62 +- 8.19 in all (13 men)."""
    assert sum(sets_to_failure(by_epley(0.70), MINUTE, 3)) == pytest.approx(26.62, abs=8.19 / 2)


@pytest.mark.parametrize("minutes", [1, 2, 3])
def test_the_share_that_is_kept_does_not_depend_on_the_load(minutes):
    """Willardson & Burkett 2006, J Strength Cond Res 20(2):396-399: five sets at 50 or 80 %; whole repetitions."""
    light, heavy = (sets_to_failure(by_epley(share), minutes * MINUTE, 5) for share in (0.50, 0.80))
    assert sum(light) / light[0] == pytest.approx(sum(heavy) / heavy[0], abs=0.35)


def test_more_go_with_three_minutes_than_with_one():
    """The same study, both loads."""
    for share in (0.50, 0.80):
        totals = [sum(sets_to_failure(by_epley(share), minutes * MINUTE, 5)) for minutes in (1, 2, 3)]
        assert totals[0] < totals[1] < totals[2]


def test_at_a_three_repetition_load_a_minute_is_too_short_from_the_second_set_on():
    """Scudese et al. 2015, J Strength Cond Res 29(11):3079-3083: 16 men, five sets.

    A three-repetition load is one at which the fourth does not quite go: three and a half.
    """
    assert sets_to_failure(3.5, MINUTE, 5)[1] < 3
    for minutes in (2, 3, 5):
        done = sets_to_failure(3.5, minutes * MINUTE, 5)
        assert done[1] == 3


def test_a_second_set_is_smaller_at_every_rest_and_eight_to_twelve_go_after_three_minutes():
    """Richmond & Godard 2004, J Strength Cond Res 18(4):846-849: bench press at 75 %, 28 men."""
    fresh = by_epley(0.75)
    for minutes in (1, 3, 5):
        first, second = sets_to_failure(fresh, minutes * MINUTE, 2)
        assert second < first
    assert 8 <= sets_to_failure(fresh, 3 * MINUTE, 2)[1] <= 12


def test_five_fives_at_a_seven_repetition_load_go_through():
    """With three minutes' rest: common practice, no source."""
    fresh = 7.0 * ONE
    work = Work(
        line=1,
        movement="back squat",
        amount=5,
        seconds=REP_S * ONE,
        debt=np.array([1 / fresh, 0 * ONE]),
        slow=np.array([slow_share(fresh), 0.5 * ONE]),
        unbroken=fresh,
        counted=1.0,
    )
    floor = Floor(1, ONE, stops_at=1.0)
    for _ in range(5):
        floor.do(work, 5)
        floor.rest(3 * MINUTE)
    assert floor.parts[1] == [[5]] * 5


def test_what_can_be_overdrawn_is_that_of_the_worked_example():
    """Monod & Scherrer 1965, Ergonomics 8:329-338: 300 W for 240 s and 250 W for 600 s."""
    steady = (250 * 600 - 300 * 240) / (600 - 240)
    overdraft = (300 - steady) * 240
    assert steady == pytest.approx(216.667, abs=0.001)
    assert overdraft / steady == pytest.approx(OVERDRAFT_S)


def test_trained_people_keep_up_some_thirty_light_repetitions_a_minute_through_ten_minutes():
    """23-30 mixed light ones, changes included (common practice, no source)."""
    fresh = 60 * ONE
    floor, reps = Floor(1, ONE), 0
    while floor.time[0] < 10 * MINUTE:
        work = Work(
            1,
            "air squat",
            10,
            1.5 * ONE,
            np.array([1 / fresh, 0 * ONE]),
            np.array([slow_share(fresh), 0 * ONE]),
            fresh,
            1,
        )
        floor.do(work, 10)
        floor.rest(CHANGE_S)
        reps += 10
    assert 23 <= reps / 10 <= 33
