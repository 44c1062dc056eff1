from hypothesis import given
from hypothesis import strategies as st

from bot.delivery.budget import NO_LIMIT, PLATFORM, Budget, Ledger, Rates, Rule

ILSE, TOMAS, GROUP = 1, 2, 3


def bot_opens(budget, now):
    return now if budget.bot_room(now) else budget.next_opening(now)


def send_as_fast_as_allowed(budget, chats, start=0.0, *, groups=()):
    """Return the moment of each message; of a chat and the bot, the later one decides."""
    now, moments = start, []
    for chat in chats:
        now = max(now, bot_opens(budget, now))
        now = max(now, budget.closed_chats(now).get(chat, now))
        budget.spend(chat, now, is_group=chat in groups)
        moments.append(now)
    return moments


def most_within(seconds, moments):
    return max(sum(1 for other in moments if moment <= other < moment + seconds) for moment in moments)


def test_a_quiet_bot_may_write_at_once():
    budget = Budget()
    assert budget.bot_room(0) > 0
    assert budget.next_opening(0) is None


def test_a_chat_gets_a_short_burst_and_then_one_a_second():
    moments = send_as_fast_as_allowed(Budget(), [ILSE] * 60)
    assert moments[2] < 0.5
    assert most_within(3, moments) == 3
    assert moments[-1] <= 60


def test_a_group_gets_twenty_a_minute():
    moments = send_as_fast_as_allowed(Budget(), [GROUP] * 100, groups={GROUP})
    assert most_within(60, moments) == 20


def test_the_bot_sends_at_most_thirty_a_second_and_uses_almost_all_of_them():
    moments = send_as_fast_as_allowed(Budget(), range(3000))
    assert most_within(1, moments) == 30
    assert moments[-1] < 3000 / (0.99 * 30)


def test_an_answer_in_the_middle_of_bulk_waits_no_whole_second():
    budget = Budget()
    now = 0.0
    for chat in range(500):
        budget.spend(chat, now)
        opens = bot_opens(budget, now)
        assert opens - now < 0.3
        now = opens


def test_a_busy_chat_closes_only_itself():
    budget = Budget()
    send_as_fast_as_allowed(budget, [ILSE] * 3)
    assert set(budget.closed_chats(0.3)) == {ILSE}


def test_silence_asked_for_by_the_platform_holds_for_that_chat_alone():
    budget = Budget()
    budget.stop_chat(ILSE, until=7.0)
    budget.spend(TOMAS, 0.0)
    assert budget.closed_chats(6.9) == {ILSE: 7.0}
    assert budget.closed_chats(7.0) == {}
    assert budget.bot_room(0.0) > 0


def test_a_shorter_silence_never_ends_a_longer_one():
    ledger = Ledger(()).stop(9.0).stop(3.0)
    assert ledger.ready_at() == 9.0


def test_without_limits_everything_may_go_at_once():
    assert send_as_fast_as_allowed(Budget(NO_LIMIT), [ILSE] * 100) == [0.0] * 100


def test_chats_that_have_been_quiet_are_forgotten():
    budget = Budget()
    send_as_fast_as_allowed(budget, range(50))
    budget.closed_chats(1000.0)
    assert budget._chats == {}


@given(
    limit=st.integers(1, 5),
    seconds=st.integers(1, 10),
    pauses=st.lists(st.integers(0, 3), min_size=1, max_size=60),
)
def test_no_span_ever_holds_more_than_its_rule_allows(limit, seconds, pauses):
    budget = Budget(Rates(bot=(Rule(limit, seconds),)))
    now, moments = 0, []
    for pause in pauses:
        now = max(now + pause, bot_opens(budget, now + pause))
        budget.spend(ILSE, now)
        moments.append(now)
    assert all(later - earlier >= seconds for earlier, later in zip(moments, moments[limit:], strict=False))


def test_the_platform_rules_are_those_of_its_public_guide():
    # The platform's public guide: 30 a second, 1 a second in a chat, 20 a minute in a group.
    assert (PLATFORM.bot[0].limit, round(PLATFORM.bot[0].seconds)) == (30, 1)
    assert PLATFORM.chat[0].limit / round(PLATFORM.chat[0].seconds) == 1
    assert (PLATFORM.group[-1].limit, round(PLATFORM.group[-1].seconds)) == (20, 60)
