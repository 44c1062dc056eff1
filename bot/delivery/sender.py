"""Sends what is in the outbox, within the budget, and writes down what became of each letter."""

import asyncio
from collections import Counter
from collections.abc import Callable
from dataclasses import dataclass
from datetime import timedelta
from random import random

from telegram import Bot

from bot.delivery.bells import Bells, Wake, sleep_until
from bot.delivery.budget import Budget
from bot.delivery.clock import Clock
from bot.delivery.courier import deliver, is_message
from bot.delivery.patience import Patience
from bot.delivery.settling import Finished, settle
from bot.delivery.verdicts import NotSent, NotTaken, TooFast, Unknown, Verdict
from core.store.records import Letter
from core.store.unit import Store

_MOST_IN_FLIGHT = 4
# A send that takes longer may hang: it is waited for on its own, and another takes its place.
_SLOW_S = 1.0
_MOST_HANGING = 60
# What hung through a silence of the platform that was so long is lost.
_SILENCE_S = 3.0
_LEASE = timedelta(minutes=2)
# What finishes at about the same time is settled in one transaction: that saves more time than it takes.
_GATHERING_S = 0.01
# Clocks round to microseconds: a sleep that ends a hair too early would be slept again, and again.
_A_HAIR_S = 0.001
# Another process may have put something back to be sent.
_LOOK_S = 5.0
_STOPPING_S = 5.0
_REMEMBERED = timedelta(seconds=61)


@dataclass(slots=True)
class Flight:
    """A letter on its way, since `begun` (monotonic seconds)."""

    letter: Letter
    begun: float
    slow: bool = False


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
        self._patience = Patience(jitter)
        self._in_flight: dict[asyncio.Task[Verdict], Flight] = {}
        self._answered_at = clock.monotonic()
        self._stopping = False

    async def run(self) -> None:
        """Send until stopped, and then settle what is on its way."""
        await self._begin()
        while True:
            wake = await self._take_turn()
            if self._stopping and not self._in_flight:
                return
            await sleep_until(self._clock, wake, self._bells.outbox, self._in_flight)
            if self._in_flight:
                await asyncio.wait(self._in_flight, timeout=_GATHERING_S)

    def stop(self) -> None:
        self._stopping = True
        self._bells.outbox.ring()

    async def _begin(self) -> None:
        """Go on where the last process ended: with its letters, and with what the platform still counts."""
        now, monotonic = self._clock.now(), self._clock.monotonic()
        async with self._store.unit() as unit:
            await unit.outbox.recover(now, at_start=True)
            await unit.files.drop_settled()
            lately = await unit.attempts.lately(now - _REMEMBERED)
            silent = await unit.chats.silent(now)
        for one in reversed(lately):
            age_s = max(0.0, (now - one.at).total_seconds())
            self._budget.spend(one.chat_id, monotonic - age_s, is_group=one.address < 0)
        for chat, until in silent.items():
            self._budget.stop_chat(chat, monotonic + (until - now).total_seconds())

    async def _take_turn(self) -> Wake:
        """Settle the finished and lease the next in one transaction. Return when to look again."""
        monotonic = self._clock.monotonic()
        finished = self._take_finished(monotonic)
        self._note_slow(monotonic)
        closed = self._budget.closed_chats(monotonic)
        resting = self._patience.resting(monotonic)
        # Whoever waits for an answer must not wait for all that is being handled meanwhile.
        async with self._store.unit(urgent=True) as unit:
            now = self._clock.now()
            await settle(unit, finished, now)
            room = self._room(monotonic)
            letters = await unit.outbox.lease(now, room, now + _LEASE, closed, resting) if room else []
            due_at = await unit.outbox.next_due_at(after=now)
        if finished:
            self._bells.dues.ring()  # there may be somebody to tell
        for letter in letters:
            self._start(letter, self._clock.monotonic())
        return Wake(due_at, self._next_end(monotonic))

    def _take_finished(self, monotonic: float) -> list[Finished]:
        done = [task for task in self._in_flight if task.done()]
        finished: list[Finished] = []
        for task in done:
            flight = self._in_flight.pop(task)
            verdict = (
                Unknown("given up: it hung while others were answered") if task.cancelled() else task.result()
            )
            finished.append((flight.letter, verdict))
            if not task.cancelled():
                self._obey(flight, verdict, monotonic)
        self.verdicts.update(type(verdict) for _, verdict in finished)
        return finished

    def _obey(self, flight: Flight, verdict: Verdict, monotonic: float) -> None:
        """Keep the silences that follow from what happened."""
        letter = flight.letter
        match verdict:
            case NotSent():
                self._patience.unanswered(monotonic)
            case NotTaken() | Unknown():
                self._patience.failed(letter.id, letter.resends, monotonic)
            case _:
                self._hear_answer(flight, monotonic)
        if isinstance(verdict, TooFast):
            self._budget.stop_chat(letter.chat_id, monotonic + verdict.wait.total_seconds())

    def _hear_answer(self, flight: Flight, monotonic: float) -> None:
        """The platform is there. What hangs since before its silence was lost in it."""
        away_since = self._patience.away_since
        if away_since is not None:
            self._bells.back.ring()
        if away_since is not None and monotonic - away_since >= _SILENCE_S:
            for task, other in self._in_flight.items():
                if other.slow and other.begun < flight.begun:
                    task.cancel()
        self._patience.answered()
        self._answered_at = monotonic

    def _note_slow(self, monotonic: float) -> None:
        for task, flight in self._in_flight.items():
            took_s = monotonic - flight.begun
            if self._stopping and took_s >= _STOPPING_S:
                task.cancel()
            if flight.slow or took_s < _SLOW_S:
                continue
            flight.slow = True
            if self._answered_at <= flight.begun:
                self._patience.unanswered(monotonic)

    def _room(self, monotonic: float) -> int:
        slow = sum(1 for flight in self._in_flight.values() if flight.slow)
        if self._stopping or slow >= _MOST_HANGING:
            return 0
        room = self._patience.room(len(self._in_flight) - slow, _MOST_IN_FLIGHT, monotonic)
        return int(min(room, self._budget.bot_room(monotonic)))

    def _start(self, letter: Letter, monotonic: float) -> None:
        if is_message(letter):
            self._budget.spend(letter.chat_id, monotonic, is_group=letter.address < 0)
        self._in_flight[asyncio.create_task(deliver(self._bot, letter))] = Flight(letter, monotonic)

    def _next_end(self, looked_at: float) -> float:
        """When something is over that was waited for when looked at: a limit, a rest, the time of a prompt send."""
        ends = [self._budget.next_opening(looked_at), self._patience.next_end(looked_at)]
        ends += [flight.begun + _SLOW_S for flight in self._in_flight.values() if not flight.slow]
        return min([looked_at + _LOOK_S, *(end for end in ends if end is not None)]) + _A_HAIR_S
