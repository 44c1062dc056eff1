from hypothesis import given
from hypothesis import strategies as st

from bot.delivery.backoff import PLATFORM_AWAY, Backoff

FRESH = Backoff(first_s=0.5, longest_s=60)


def after(failures):
    backoff = FRESH
    for _ in range(failures):
        backoff = backoff.after_failure()
    return backoff


def test_without_a_failure_there_is_no_pause():
    assert FRESH.wait_s(jitter=1) == 0


def test_each_failure_in_a_row_doubles_the_pause_up_to_the_longest():
    assert [after(failures).wait_s(1) for failures in range(1, 10)] == [0.5, 1, 2, 4, 8, 16, 32, 60, 60]


def test_a_success_begins_anew():
    assert after(7).after_success().after_failure().wait_s(1) == 0.5


def test_the_platform_is_looked_for_within_a_tenth_of_the_time_for_which_it_was_away():
    backoff, away_s = PLATFORM_AWAY, 0.0
    while away_s < 300:
        backoff = backoff.after_failure()
        assert backoff.wait_s(1) <= 0.3 + 0.1 * away_s
        away_s += backoff.wait_s(1)


@given(failures=st.integers(1, 500), jitter=st.floats(0, 1))
def test_a_pause_is_at_least_half_of_the_full_one_and_never_more(failures, jitter):
    full = after(failures).wait_s(1)
    assert full / 2 <= after(failures).wait_s(jitter) <= full <= 60
