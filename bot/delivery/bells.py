"""Bells wake a sleeping loop. They say "look again", never what there is: that stands in the database."""

import asyncio
from collections.abc import Iterable
from dataclasses import dataclass, field
from datetime import datetime
from typing import Any

from bot.delivery.clock import Clock


class Bell:
    """Rung while nobody waits, it wakes the next who does."""

    def __init__(self) -> None:
        self._rung = asyncio.Event()

    def ring(self) -> None:
        self._rung.set()

    async def heard(self) -> None:
        """Return at the next ring, or at once if it rang since the last time."""
        await self._rung.wait()
        self._rung.clear()


@dataclass(frozen=True, slots=True)
class Bells:
    """One for each table that a loop works through; `back` rings when the platform answers again after a silence."""

    inbox: Bell = field(default_factory=Bell)
    outbox: Bell = field(default_factory=Bell)
    dues: Bell = field(default_factory=Bell)
    back: Bell = field(default_factory=Bell)

    def something_was_done(self) -> None:
        """After a committed unit: it may have left letters to send and dues to keep."""
        self.outbox.ring()
        self.dues.ring()


@dataclass(frozen=True, slots=True)
class Wake:
    """When to look again at the latest: at the moment `at`, and at the monotonic `second` whatever that is."""

    at: datetime | None = None
    second: float | None = None


async def sleep_until(clock: Clock, wake: Wake, bell: Bell, others: Iterable[asyncio.Task[Any]] = ()) -> None:
    """Return when it is time to wake, at the bell, or when one of the other tasks is done."""
    own = [asyncio.create_task(bell.heard())]
    if wake.at is not None:
        own.append(asyncio.create_task(clock.sleep_until(wake.at)))
    if wake.second is not None:
        own.append(asyncio.create_task(clock.sleep_to(wake.second)))
    try:
        done, _ = await asyncio.wait([*own, *others], return_when=asyncio.FIRST_COMPLETED)
        for task in done.intersection(own):
            task.result()  # a clock that fails must be heard, or the loop would spin
    finally:
        await _cancel(own)


async def _cancel(tasks: list[asyncio.Task[None]]) -> None:
    for task in tasks:
        task.cancel()
    await asyncio.gather(*tasks, return_exceptions=True)
