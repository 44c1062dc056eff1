"""Sends what is in the outbox, within the budget, and writes down what became of each letter."""

import asyncio
from collections import Counter
from collections.abc import Callable
from datetime import datetime, timedelta
from random import random

from telegram import Bot

from bot.delivery.backoff import Backoff
from bot.delivery.bells import Bells, sleep_until
from bot.delivery.budget import Budget
from bot.delivery.clock import Clock
from bot.delivery.courier import deliver, is_message
from bot.delivery.settling import Finished, settle
from bot.delivery.verdicts import NotSent, Sent, TooFast, Unknown, Verdict
from core.store.records import Letter
from core.store.unit import Store

_MOST_IN_FLIGHT = 4
_LEASE = timedelta(minutes=2)
# What finishes at about the same time is settled in one transaction: that saves more time than it takes.
_GATHERING_S = 0.01
# Clocks round to microseconds: a sleep that ends a hair too early would be slept again, and again.
_A_HAIR = timedelta(milliseconds=1)


class Sender:
    """The only one that sends. `jitter` (0 to 1) spreads the tries after a failure."""

    def __init__(
        self,
        bot: Bot,
        store: Store,
        clock: Clock,
        bells: Bells,
        budget: Budget,
        *,
        jitter: Callable[[], float] = random,
    ) -> None:
        self.verdicts: Counter[type[Verdict]] = Counter()
        self._bot = bot
        self._store = store
        self._clock = clock
        self._bells = bells
        self._budget = budget
        self._jitter = jitter
        self._backoff = Backoff(first_s=1.0, longest_s=60.0)
        self._in_flight: dict[asyncio.Task[Verdict], Letter] = {}
        self._stopping = False

    async def run(self) -> None:
        """Send until stopped, and then settle what is on its way."""
        async with self._store.unit() as unit:
            await unit.outbox.recover(self._clock.now(), at_start=True)
            await unit.files.drop_settled()
        while True:
            look_again_at = await self._take_turn()
            if self._stopping and not self._in_flight:
                return
            await sleep_until(self._clock, look_again_at, self._bells.outbox, self._in_flight)
            if self._in_flight:
                await asyncio.wait(self._in_flight, timeout=_GATHERING_S)

    def stop(self) -> None:
        self._stopping = True
        self._bells.outbox.ring()

    async def _take_turn(self) -> datetime | None:
        """Settle the finished and lease the next in one transaction. Return when to look again."""
        now, monotonic = self._clock.now(), self._clock.monotonic()
        finished = self._take_finished()
        pause = self._obey(finished, monotonic)
        closed = self._budget.closed_chats(monotonic)
        async with self._store.unit() as unit:
            await settle(unit, finished, now, pause)
            letters = await unit.outbox.lease(now, self._room(monotonic), now + _LEASE, closed)
            due_at = await unit.outbox.next_due_at(after=now)
        for letter in letters:
            self._start(letter, monotonic)
        return _earliest(due_at, self._opening(now, monotonic))

    def _take_finished(self) -> list[Finished]:
        done = [task for task in self._in_flight if task.done()]
        finished = [(self._in_flight.pop(task), task.result()) for task in done]
        self.verdicts.update(type(verdict) for _, verdict in finished)
        return finished

    def _obey(self, finished: list[Finished], monotonic: float) -> timedelta:
        """Keep the silences that follow from what happened; return the pause after a failure."""
        for letter, verdict in finished:
            if isinstance(verdict, TooFast):
                self._budget.stop_chat(letter.chat_id, monotonic + verdict.wait.total_seconds())
        kinds = {type(verdict) for _, verdict in finished}
        if kinds & {NotSent, Unknown}:
            self._backoff = self._backoff.after_failure()
        elif Sent in kinds:
            self._backoff = self._backoff.after_success()
        pause_s = self._backoff.wait_s(self._jitter())
        if NotSent in kinds:  # no connection: every other letter would fail as well
            self._budget.stop_bot(monotonic + pause_s)
        return timedelta(seconds=pause_s)

    def _room(self, monotonic: float) -> int:
        if self._stopping:
            return 0
        return int(min(_MOST_IN_FLIGHT - len(self._in_flight), self._budget.bot_room(monotonic)))

    def _start(self, letter: Letter, monotonic: float) -> None:
        if is_message(letter):
            self._budget.spend(letter.chat_id, monotonic, is_group=letter.address < 0)
        self._in_flight[asyncio.create_task(deliver(self._bot, letter))] = letter

    def _opening(self, now: datetime, monotonic: float) -> datetime | None:
        opening = self._budget.next_opening(monotonic)
        return None if opening is None else now + timedelta(seconds=opening - monotonic) + _A_HAIR


def _earliest(*moments: datetime | None) -> datetime | None:
    return min((moment for moment in moments if moment is not None), default=None)
