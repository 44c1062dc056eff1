"""When to try again: pure, on monotonic seconds."""

import pytest

from bot.delivery.patience import Patience

NOW = 1000.0


@pytest.fixture
def patience():
    return Patience(jitter=lambda: 1.0)


def test_while_the_platform_answers_all_places_are_free(patience):
    assert patience.room(on_their_way=1, most=4, now=NOW) == 3


def test_while_it_is_silent_one_letter_at_a_time_asks_whether_it_is_back(patience):
    patience.unanswered(NOW)
    assert patience.room(0, 4, NOW) == 0
    assert patience.next_end(NOW) == pytest.approx(NOW + 0.25)
    assert patience.room(0, 4, NOW + 0.31) == 1
    assert patience.room(1, 4, NOW + 0.31) == 0


def test_it_is_looked_for_within_a_second_after_ten_of_silence(patience):
    now = NOW
    patience.unanswered(now)
    while now < NOW + 10:
        now = patience.next_end(now)
        patience.unanswered(now)
    assert patience.next_end(now) - now < 1


def test_its_first_answer_frees_all_places(patience):
    patience.unanswered(NOW)
    patience.answered()
    assert patience.room(0, 4, NOW) == 4
    assert patience.next_end(NOW) is None


def test_a_letter_that_fails_alone_rests_longer_each_time_up_to_minutes(patience):
    gaps = []
    for vain in range(12):
        patience.failed(letter=7, vain=vain, now=NOW)
        patience.answered()
        gaps.append(patience.next_end(NOW) - NOW)
    assert gaps[:4] == [1, 2, 4, 8]
    assert gaps[-1] == 300
    assert patience.resting(NOW) == [7]
    assert patience.resting(NOW + 300) == []


def test_letters_that_failed_together_are_free_as_soon_as_the_platform_answers(patience):
    for letter in (7, 8):
        patience.failed(letter, vain=6, now=NOW)
    assert sorted(patience.resting(NOW)) == [7, 8]
    patience.answered()
    assert patience.resting(NOW) == []
