"""Does what is due at its time: looks for the next, sleeps until then, carries it out."""

import asyncio
import logging
from collections.abc import Awaitable, Callable
from datetime import UTC, datetime

from bot.delivery.backoff import Backoff
from bot.delivery.bells import Bells, Wake, sleep_until
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
        self._failing: dict[int, tuple[Backoff, float]] = {}
        self._stopping = False

    async def run(self) -> None:
        """Work until stopped."""
        while not self._stopping:
            found = await self._next()
            if isinstance(found, Due):
                await self._try(found)
            else:
                await sleep_until(self._clock, found, self._bells.dues)
                await asyncio.sleep(_GATHERING_S)

    def stop(self) -> None:
        self._stopping = True
        self._bells.dues.ring()

    async def _next(self) -> Due | Wake:
        """Return what is due now, or when to look again: those that failed come when their pause is over."""
        async with self._store.reading() as unit:
            coming = await unit.dues.take(_FOR_EVER, limit=len(self._failing) + 1)
        now, monotonic = self._clock.now(), self._clock.monotonic()
        pauses = {due_id: until for due_id, (_, until) in self._failing.items() if until > monotonic}
        paused = [pauses[due.id] for due in coming if due.id in pauses]
        ready = [due for due in coming if due.id not in pauses]
        if ready and ready[0].at <= now:
            return ready[0]
        return Wake(ready[0].at if ready else None, min(paused, default=None))

    async def _try(self, due: Due) -> None:
        try:
            await self._carry_out(due)
        except Exception as error:  # noqa: BLE001 - logged there with its traceback
            self._failed(due, error)
        else:
            self._failing.pop(due.id, None)
            self._bells.something_was_done()

    def _failed(self, due: Due, error: Exception) -> None:
        backoff, _ = self._failing.get(due.id, (Backoff(first_s=10, longest_s=3600), 0.0))
        backoff = backoff.after_failure()
        wait_s = backoff.wait_s(jitter=1)
        self._failing[due.id] = (backoff, self._clock.monotonic() + wait_s)
        log.error("due %d (%s) failed, next try in %.0f s", due.id, due.kind, wait_s, exc_info=error)
