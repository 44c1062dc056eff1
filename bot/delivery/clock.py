"""The time, as a port: everything that waits or stamps asks a clock, so that whole days can be rehearsed."""

import asyncio
import heapq
import time
from collections.abc import Callable
from contextlib import suppress
from datetime import UTC, datetime
from itertools import count
from types import TracebackType
from typing import Protocol, Self

from apscheduler.schedulers.asyncio import AsyncIOScheduler


class Clock(Protocol):
    def now(self) -> datetime:
        """Return the present moment, aware, in UTC."""
        ...

    def monotonic(self) -> float:
        """Return seconds that never run backwards, for budgets; their zero means nothing."""
        ...

    async def sleep_until(self, moment: datetime) -> None:
        """Return once `now()` has reached the aware `moment`; at once if it has passed.

        Raises ValueError for a naive moment.
        """
        ...

    async def sleep_to(self, second: float) -> None:
        """Return once `monotonic()` has reached `second`, wherever the moment has jumped meanwhile."""
        ...


def as_utc(moment: datetime) -> datetime:
    """Return the aware `moment` in UTC. Raises ValueError for a naive one."""
    if moment.tzinfo is None:
        raise ValueError(f"a moment needs its zone: {moment.isoformat()}")
    return moment.astimezone(UTC)


class Sleepers:
    """Those who wait for a moment, the earliest first. Cancelled ones are dropped when their turn comes."""

    def __init__(self) -> None:
        self._queue: list[tuple[datetime, int, asyncio.Future[None]]] = []
        self._order = count()

    def add(self, moment: datetime) -> asyncio.Future[None]:
        woken: asyncio.Future[None] = asyncio.get_running_loop().create_future()
        heapq.heappush(self._queue, (moment, next(self._order), woken))
        return woken

    def next_moment(self) -> datetime | None:
        while self._queue and self._queue[0][2].done():
            heapq.heappop(self._queue)
        return self._queue[0][0] if self._queue else None

    def wake(self, now: datetime) -> None:
        while (moment := self.next_moment()) is not None and moment <= now:
            heapq.heappop(self._queue)[2].set_result(None)


def machine_time() -> datetime:
    """The machine's own idea of the present, in UTC."""
    return datetime.now(UTC)


class RealClock:
    """The machine's clock. However many sleep, the scheduler holds one job: the next due moment.

    A scheduler's timer runs on whatever the clock is set to meanwhile. So every few seconds the clock is looked
    at beside the timer: where it jumped, whoever is late is woken, and the timer set anew.
    """

    _JOB = "next moment"
    _JUMP_S = 0.5  # an ordinary correction of the clock is far smaller

    def __init__(self, wall: Callable[[], datetime] = machine_time, look_every_s: float = 5.0) -> None:
        self.now = wall
        self._look_every_s = look_every_s
        self._sleepers = Sleepers()
        self._scheduler: AsyncIOScheduler | None = None
        self._watching: asyncio.Task[None] | None = None

    async def __aenter__(self) -> Self:
        return self

    async def __aexit__(
        self, kind: type[BaseException] | None, error: BaseException | None, trace: TracebackType | None
    ) -> None:
        await self.close()

    async def close(self) -> None:
        """Stop the scheduler. Whoever still sleeps is not woken: cancel sleepers first."""
        if self._watching is not None:
            self._watching.cancel()
            with suppress(asyncio.CancelledError):
                await self._watching
            self._watching = None
        if self._scheduler is not None:
            self._scheduler.shutdown(wait=False)
            self._scheduler = None

    def monotonic(self) -> float:
        return time.monotonic()

    async def sleep_to(self, second: float) -> None:
        await asyncio.sleep(second - self.monotonic())

    async def sleep_until(self, moment: datetime) -> None:
        due = as_utc(moment)
        if due <= self.now():
            return
        woken = self._sleepers.add(due)
        self._schedule_next()
        await woken

    def _schedule_next(self) -> None:
        moment = self._sleepers.next_moment()
        if moment is None:
            return
        self._running_scheduler().add_job(
            self._wake,
            "date",
            run_date=moment,
            id=self._JOB,
            replace_existing=True,
            misfire_grace_time=None,
        )

    def _running_scheduler(self) -> AsyncIOScheduler:
        if self._scheduler is None:
            self._scheduler = AsyncIOScheduler(timezone=UTC)
            self._scheduler.start()
            self._watching = asyncio.create_task(self._watch_for_jumps())
        return self._scheduler

    async def _watch_for_jumps(self) -> None:
        ahead = self._ahead_s()
        while True:
            await asyncio.sleep(self._look_every_s)
            before, ahead = ahead, self._ahead_s()
            if abs(ahead - before) > self._JUMP_S:
                await self._wake()

    def _ahead_s(self) -> float:
        """How far the clock is ahead of the timer; it only changes by a jump."""
        return self.now().timestamp() - self.monotonic()

    async def _wake(self) -> None:
        # A coroutine on purpose: the scheduler would run a plain function in a thread.
        self._sleepers.wake(self.now())
        self._schedule_next()
