"""Does what is due at its time: looks for the next, sleeps until then, carries it out."""

import asyncio
import logging
from collections.abc import Awaitable, Callable
from datetime import UTC, datetime, timedelta

from bot.delivery.backoff import Backoff
from bot.delivery.bells import Bells, sleep_until
from bot.delivery.clock import Clock
from core.store.records import Due
from core.store.unit import Store

log = logging.getLogger(__name__)

CarryOut = Callable[[Due], Awaitable[None]]
"""Does what is due in a unit of its own, in which it marks it done. Whatever it raises is a failure."""

# The bell rings after every update, and seldom with anything new: one look answers for many.
_GATHERING_S = 0.05
_FOR_EVER = datetime.max.replace(tzinfo=UTC)


class Dues:
    """One thing after the other. What fails is tried again after growing pauses and holds nothing else up."""

    def __init__(self, store: Store, clock: Clock, bells: Bells, carry_out: CarryOut) -> None:
        self._store = store
        self._clock = clock
        self._bells = bells
        self._carry_out = carry_out
        self._failing: dict[int, tuple[Backoff, datetime]] = {}
        self._stopping = False

    async def run(self) -> None:
        """Work until stopped."""
        while not self._stopping:
            found = await self._next()
            if found is not None and found[1] <= self._clock.now():
                await self._try(found[0])
            else:
                await sleep_until(self._clock, found and found[1], self._bells.dues)
                await asyncio.sleep(_GATHERING_S)

    def stop(self) -> None:
        self._stopping = True
        self._bells.dues.ring()

    async def _next(self) -> tuple[Due, datetime] | None:
        """Return what comes next, and when: those that failed come when their pause is over."""
        async with self._store.reading() as unit:
            coming = await unit.dues.take(_FOR_EVER, limit=len(self._failing) + 1)
        moments = [(due, self._moment_of(due)) for due in coming]
        return min(moments, key=lambda found: found[1], default=None)

    def _moment_of(self, due: Due) -> datetime:
        return self._failing[due.id][1] if due.id in self._failing else due.at

    async def _try(self, due: Due) -> None:
        try:
            await self._carry_out(due)
        except Exception as error:  # noqa: BLE001 - logged there with its traceback
            self._failed(due, error)
        else:
            self._failing.pop(due.id, None)
            self._bells.something_was_done()

    def _failed(self, due: Due, error: Exception) -> None:
        backoff, _ = self._failing.get(due.id, (Backoff(first_s=10, longest_s=3600), None))
        backoff = backoff.after_failure()
        again_at = self._clock.now() + timedelta(seconds=backoff.wait_s(jitter=1))
        self._failing[due.id] = (backoff, again_at)
        log.error("due %d (%s) failed, next try at %s", due.id, due.kind, again_at, exc_info=error)
