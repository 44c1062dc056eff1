"""What becomes of an update whose handling failed."""

from datetime import timedelta

import pytest
from telegram.error import BadRequest, ChatMigrated, NetworkError, RetryAfter, TimedOut

from bot.telegram.tries import MOST_FAILURES, Again, Park, Rest, after_failure

SOON = timedelta(seconds=1)


def test_an_error_of_ours_is_tried_again_and_then_parked():
    ends = [after_failure(KeyError("text"), attempts, SOON) for attempts in range(1, MOST_FAILURES + 1)]
    assert ends == [Again(), Again(), Park()]


@pytest.mark.parametrize("error", [TimedOut(), NetworkError("Bad Gateway"), ChatMigrated(-100)])
def test_an_error_of_the_platform_never_counts(error):
    assert after_failure(error, 99, SOON) == Rest()


def test_the_platform_may_say_how_long_to_wait(monkeypatch):
    monkeypatch.setenv("PTB_TIMEDELTA", "true")
    wait = timedelta(seconds=7)
    assert after_failure(RetryAfter(wait), 1, SOON) == Rest(at_least=wait)


def test_what_the_platform_does_not_take_is_an_error_of_ours():
    assert after_failure(BadRequest("user not found"), MOST_FAILURES, SOON) == Park()


def test_after_a_day_of_waiting_it_is_given_up():
    assert after_failure(TimedOut(), MOST_FAILURES, timedelta(days=1)) == Park()
