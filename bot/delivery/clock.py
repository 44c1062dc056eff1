"""The time, as a port: everything that waits or stamps asks a clock, so that whole days can be rehearsed."""

import asyncio
import heapq
import time
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


class RealClock:
    """The machine's clock. However many sleep, the scheduler holds one job: the next due moment."""

    _JOB = "next moment"

    def __init__(self) -> None:
        self._sleepers = Sleepers()
        self._scheduler: AsyncIOScheduler | None = None

    async def __aenter__(self) -> Self:
        return self

    async def __aexit__(
        self, kind: type[BaseException] | None, error: BaseException | None, trace: TracebackType | None
    ) -> None:
        self.close()

    def close(self) -> None:
        """Stop the scheduler. Whoever still sleeps is not woken: cancel sleepers first."""
        if self._scheduler is not None:
            self._scheduler.shutdown(wait=False)
            self._scheduler = None

    def now(self) -> datetime:
        return datetime.now(UTC)

    def monotonic(self) -> float:
        return time.monotonic()

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
        return self._scheduler

    async def _wake(self) -> None:
        # A coroutine on purpose: the scheduler would run a plain function in a thread.
        self._sleepers.wake(self.now())
        self._schedule_next()
