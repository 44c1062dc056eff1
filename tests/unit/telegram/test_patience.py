"""A flood of one person is answered once in a while."""

from datetime import UTC, datetime, timedelta

from bot.telegram.patience import BURST, ONE_IN, TELL_EVERY, Patience

NOW = datetime(2026, 3, 3, 12, tzinfo=UTC)


def taken(patience, moments, user=1):
    return sum(patience.takes(user, moment) for moment in moments)


def test_of_a_flood_only_the_first_are_taken_in():
    assert taken(Patience(), [NOW] * 5000) == BURST


def test_whoever_waits_is_taken_in_again():
    patience = Patience()
    taken(patience, [NOW] * 5000)

    assert patience.takes(1, NOW + ONE_IN)
    assert not patience.takes(1, NOW + ONE_IN)


def test_nobody_pays_for_another():
    patience = Patience()
    taken(patience, [NOW] * 5000)

    assert patience.takes(2, NOW)


def test_what_was_said_over_hours_and_comes_at_once_is_no_flood():
    said = [NOW + timedelta(minutes=minute) for minute in range(500)]

    assert taken(Patience(), said) == 500


def test_they_are_told_once_in_a_while():
    patience = Patience()

    assert [patience.tells(1, NOW + TELL_EVERY * n / 2) for n in range(5)] == [True, False, True, False, True]


def test_a_clock_that_goes_back_silences_nobody():
    patience = Patience()
    patience.tells(1, NOW)
    taken(patience, [NOW] * BURST)

    assert patience.tells(1, NOW - timedelta(hours=2))


def test_without_a_limit_all_is_taken_in():
    assert taken(Patience(limited=False), [NOW] * 5000) == 5000


def test_it_remembers_a_bounded_number_of_people():
    patience = Patience()
    for user in range(20_000):
        patience.takes(user, NOW)

    assert len(patience._accounts) == 10_000
