"""Lets go of what has been kept long enough, every hour."""

from datetime import timedelta
from typing import Final

from bot.delivery.bells import Bell, Wake, sleep_until
from bot.delivery.clock import Clock
from core.desk.keeping import let_go_of_health, let_go_of_old
from core.store.unit import Store

EVERY: Final = timedelta(hours=1)


class Keeper:
    """`keep`: how long raw updates and ended letters are kept."""

    def __init__(self, store: Store, clock: Clock, keep: timedelta) -> None:
        self._store = store
        self._clock = clock
        self._keep = keep
        self._bell = Bell()
        self._looked_at = 0
        self._stopping = False

    async def run(self) -> None:
        """Work until stopped."""
        while not self._stopping:
            now = self._clock.now()
            self._looked_at = await let_go_of_health(self._store, now, self._looked_at)
            await let_go_of_old(self._store, now, self._keep)
            await sleep_until(self._clock, Wake(at=now + EVERY), self._bell)

    def stop(self) -> None:
        self._stopping = True
        self._bell.ring()
