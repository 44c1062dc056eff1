"""What those who watch the bot are told."""

from collections import Counter
from datetime import timedelta

from bot.delivery.clock import RealClock
from bot.delivery.vitals import Vitals
from bot.pulse import Pulse


class Later(RealClock):
    def __init__(self, moment):
        self._moment = moment

    def now(self):
        return self._moment


async def test_it_says_what_is_stuck_and_what_was_put_aside(store, platform, post):
    now = platform.clock.now()
    later = Later(now + timedelta(minutes=20))
    pulse = Pulse()
    pulse.polled(later.now())
    async with store.unit() as unit:
        await unit.inbox.store([(1, 0, {})], now)
        (item,) = await unit.inbox.next(1)
        await unit.inbox.failed(item.id, "Error: broken", park=True)
    await post.letter(-5)

    signs = await Vitals(store, later, Counter(), pulse).signs()

    assert signs.problem == "a letter has waited for 1200 s"
    assert signs.told["updates_put_aside"] == 1
    assert signs.told["oldest_letter_s"] == 1200
    assert signs.told["last_poll_s"] == 0


async def test_it_says_that_nobody_answers_polls(store, platform):
    pulse = Pulse(polled_at=platform.clock.now() - timedelta(minutes=5))

    signs = await Vitals(store, platform.clock, Counter(), pulse).signs()

    assert signs.problem == "no poll has been answered for minutes"
