"""Handles what is in the inbox: each chat in order, different chats side by side."""

import asyncio
import logging
from collections import deque
from collections.abc import Awaitable, Callable
from dataclasses import replace
from random import random

from bot.delivery.backoff import PLATFORM_AWAY, Backoff
from bot.delivery.bells import Bells, Wake, sleep_until
from bot.delivery.clock import Clock
from bot.telegram.tries import MOST_BEGUN, Park, Rest, after_failure
from core.desk.post_office import InboxItem, Store

log = logging.getLogger(__name__)

Handler = Callable[[InboxItem], Awaitable[None]]
"""Handles one update in a unit of its own, in which it marks it done. Whatever it raises is a failure."""

_WIDTH = 16
# What takes longer waits for the platform: it goes on by itself, and others get its place.
_SLOW_S = 2.0
_MOST_SLOW = 100
_LONGEST_S = 120.0
# Another process may have put something back to be handled.
_LOOK_S = 5.0
# Clocks round to microseconds: a sleep that ends a hair too early would be slept again, and again.
_A_HAIR_S = 0.001

Prepare = Callable[[], Awaitable[object]]
"""Returns once nothing has to be loaded any more."""

_ENDED_IT = "the process ended while this was being handled, each time"


class Lanes:
    """A lane is a chat. Workers take the oldest waiting update of any lane that no other worker is in.

    What waits stands in the table alone, so a new process goes on where the last one was killed. Each try is
    counted before it begins. A lane whose update was spoilt by the platform rests for a while, longer each time.
    `on_parked` is called after an update was given up, to tell its sender. `jitter` (0 to 1) spreads the tries.
    `prepare`: awaited before what may have ended a process is tried again.
    """

    def __init__(
        self,
        store: Store,
        clock: Clock,
        bells: Bells,
        handle: Handler,
        on_parked: Handler,
        *,
        width: int = _WIDTH,
        jitter: Callable[[], float] = random,
        prepare: Prepare | None = None,
    ) -> None:
        self._prepare = prepare
        self._store = store
        self._clock = clock
        self._bells = bells
        self._handle = handle
        self._on_parked = on_parked
        self._width = width
        self._jitter = jitter
        self._ready: deque[InboxItem] = deque()
        self._busy: set[int] = set()
        self._slow: set[asyncio.Task[None]] = set()
        self._resting: dict[int, tuple[Backoff, float]] = {}
        self._tasks = asyncio.TaskGroup()
        self._supply = asyncio.Lock()
        self._stopping = False

    async def run(self) -> None:
        """Work until stopped, and then until what was begun is finished."""
        async with asyncio.TaskGroup() as self._tasks:
            await self._face_the_interrupted()
            for _ in range(self._width):
                self._tasks.create_task(self._work())
        await self._put_back()

    def stop(self) -> None:
        self._stopping = True
        self._bells.inbox.ring()

    async def _face_the_interrupted(self) -> None:
        """Whatever was being handled when the last process ended may have ended it: one at a time, nothing beside.

        Loading comes first: in its seconds any kill from outside would count against whoever waits for it.
        """
        async with self._store.reading() as unit:
            interrupted = await unit.inbox.interrupted()
        if interrupted and self._prepare is not None:
            await self._prepare()
        for item in interrupted:
            if self._stopping:
                return
            if item.attempts >= MOST_BEGUN:
                await self._park(item, _ENDED_IT)
                continue
            async with self._store.unit() as unit:
                await unit.inbox.begin([item.id])
            await self._do(replace(item, attempts=item.attempts + 1))

    async def _work(self) -> None:
        while (item := await self._take()) is not None:
            await self._do(item)

    async def _take(self) -> InboxItem | None:
        """Return the next update, or None when it is time to stop. One worker waits for all."""
        async with self._supply:
            while not self._ready and not self._stopping:
                await self._look()
            return None if self._stopping else self._ready.popleft()

    async def _look(self) -> None:
        now = self._clock.monotonic()
        resting = {lane: until for lane, (_, until) in self._resting.items() if until > now}
        async with self._store.reading() as unit:
            found = await unit.inbox.next(self._width, self._busy | resting.keys())
        if found and len(self._slow) < _MOST_SLOW:
            async with self._store.unit() as unit:
                await unit.inbox.begin([item.id for item in found])
            self._ready.extend(replace(item, attempts=item.attempts + 1) for item in found)
            return
        wake = Wake(second=min([now + _LOOK_S, *resting.values()]) + _A_HAIR_S)
        await sleep_until(self._clock, wake, self._bells.inbox)

    async def _do(self, item: InboxItem) -> None:
        """Return when it is done, or slow."""
        self._busy.add(item.lane)
        trying = self._tasks.create_task(self._try(item))
        done, _ = await asyncio.wait([trying], timeout=_SLOW_S)
        if not done:
            self._slow.add(trying)
            trying.add_done_callback(self._slow.discard)

    async def _try(self, item: InboxItem) -> None:
        try:
            async with asyncio.timeout(_LONGEST_S):
                await self._handle(item)
        except Exception as error:  # noqa: BLE001 - logged there with its traceback
            await self._failed(item, error)
        else:
            self._resting.pop(item.lane, None)
        finally:
            self._busy.discard(item.lane)
        self._bells.inbox.ring()  # its lane may hold more
        self._bells.something_was_done()

    async def _failed(self, item: InboxItem, error: Exception) -> None:
        why = f"{type(error).__name__}: {error}"
        match after_failure(error, item.attempts, self._clock.now() - item.received_at):
            case Rest() as rest:
                await self._rest(item, rest, why)
            case Park():
                log.error("update %d failed, try %d", item.update_id, item.attempts, exc_info=error)
                await self._park(item, why)
            case _:
                log.error("update %d failed, try %d", item.update_id, item.attempts, exc_info=error)
                async with self._store.unit() as unit:
                    await unit.inbox.failed(item.id, why, park=False)

    async def _rest(self, item: InboxItem, rest: Rest, why: str) -> None:
        backoff = self._resting.get(item.lane, (PLATFORM_AWAY, 0.0))[0].after_failure()
        wait_s = max(backoff.wait_s(self._jitter()), rest.at_least.total_seconds())
        self._resting[item.lane] = (backoff, self._clock.monotonic() + wait_s)
        log.warning("update %d waits %.1f s for the platform: %s", item.update_id, wait_s, why)
        async with self._store.unit() as unit:
            await unit.inbox.not_tried(item.id, why)

    async def _park(self, item: InboxItem, why: str) -> None:
        async with self._store.unit() as unit:
            await unit.inbox.failed(item.id, why, park=True)
        self._resting.pop(item.lane, None)
        try:
            await self._on_parked(item)
        except Exception:
            log.exception("nobody could be told that update %d was parked", item.update_id)

    async def _put_back(self) -> None:
        """What was counted and never begun."""
        async with self._store.unit() as unit:
            for item in self._ready:
                await unit.inbox.not_tried(item.id, None)
        self._ready.clear()
