"""A clock that is set by hand, and travels."""

import asyncio
import contextlib
import time
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta

from bot.delivery.clock import Sleepers, as_utc

START = datetime(2026, 3, 2, 6, 0, tzinfo=UTC)


@dataclass(frozen=True, slots=True)
class Reading:
    """What a clock shows: the moment, whether it runs on by itself, and how often it was set so far."""

    moment: datetime
    runs: bool
    version: int


class SettableClock:
    """A clock that shows what it was set to. It stands still, or runs at the real pace from there."""

    def __init__(self, reading: Reading) -> None:
        self._reading = reading
        self._set_at = time.monotonic()
        self._sleepers = Sleepers()
        self._changed = asyncio.Event()

    def now(self) -> datetime:
        if not self._reading.runs:
            return self._reading.moment
        return self._reading.moment + timedelta(seconds=time.monotonic() - self._set_at)

    def monotonic(self) -> float:
        return self.now().timestamp()

    async def sleep_until(self, moment: datetime) -> None:
        due = as_utc(moment)
        if due <= self.now():
            return
        woken = self._sleepers.add(due)
        try:
            while not woken.done():
                await asyncio.wait([woken], timeout=self._real_seconds_until(due))
                self._sleepers.wake(self.now())
        finally:
            woken.cancel()

    async def sleep_to(self, second: float) -> None:
        await self.sleep_until(datetime.fromtimestamp(second, UTC))

    def _real_seconds_until(self, due: datetime) -> float | None:
        if not self._reading.runs:
            return None
        return max(0.0, (due - self.now()).total_seconds())

    def read(self) -> Reading:
        return Reading(self.now(), self._reading.runs, self._reading.version)

    async def changed_since(self, version: int, within: float) -> Reading:
        """Return the reading as soon as the clock was set after `version`, or after `within` real seconds."""
        if self._reading.version <= version:
            with contextlib.suppress(TimeoutError):
                async with asyncio.timeout(within):
                    await self._changed.wait()
        return self.read()

    def _set(self, reading: Reading) -> None:
        self._reading = reading
        self._set_at = time.monotonic()
        self._sleepers.wake(reading.moment)
        self._changed.set()
        self._changed = asyncio.Event()


class Followers:
    """Clocks in other processes, each with the version that it last said it knows."""

    def __init__(self) -> None:
        self._known: dict[str, int] = {}
        self._changed = asyncio.Event()

    def hear(self, follower: str, version: int) -> None:
        self._known[follower] = version
        self._changed.set()
        self._changed = asyncio.Event()

    def forget(self, follower: str) -> None:
        self._known.pop(follower, None)

    async def all_know(self, version: int, within: float = 2.0) -> None:
        """Wait until every follower knows `version`; forget those that stay silent that long."""
        with contextlib.suppress(TimeoutError):
            async with asyncio.timeout(within):
                while any(known < version for known in self._known.values()):
                    await self._changed.wait()
        self._known = {follower: known for follower, known in self._known.items() if known >= version}


class RehearsalClock(SettableClock):
    """The time of a rehearsal. Whoever holds it moves it; it never goes back."""

    def __init__(self, start: datetime = START, *, runs: bool = False) -> None:
        super().__init__(Reading(as_utc(start), runs, version=1))
        self.followers = Followers()

    def travel_to(self, moment: datetime) -> None:
        """Jump forward to the aware `moment` and wake whoever slept until then.

        Raises ValueError for the past.
        """
        there = as_utc(moment)
        if there < self.now():
            raise ValueError(f"time never goes back: it is {self.now()}, not yet {there}")
        self._set(Reading(there, self._reading.runs, self._reading.version + 1))

    def travel(self, duration: timedelta) -> None:
        self.travel_to(self.now() + duration)

    def let_run(self, *, runs: bool = True) -> None:
        """Let the time run on by itself at the real pace, or stand still."""
        self._set(Reading(self.now(), runs, self._reading.version + 1))
