"""Handles what is in the inbox: each chat in order, different chats side by side."""

import asyncio
import logging
from collections import deque
from collections.abc import Awaitable, Callable

from bot.delivery.bells import Bells
from core.desk.post_office import InboxItem, Store

log = logging.getLogger(__name__)

Handler = Callable[[InboxItem], Awaitable[None]]
"""Handles one update in a unit of its own, in which it marks it done. Whatever it raises is a failure."""

_WIDTH = 16
_LOOK_AHEAD = 64
_MOST_TRIES = 3


class Lanes:
    """A lane is a chat. Workers take the oldest waiting update of any lane that no other worker is in.

    What waits stands in the table alone, so a new process goes on where the last one was killed.
    `on_parked` is called after an update was given up, to tell its sender.
    """

    def __init__(
        self, store: Store, bells: Bells, handle: Handler, on_parked: Handler, width: int = _WIDTH
    ) -> None:
        self._store = store
        self._bells = bells
        self._handle = handle
        self._on_parked = on_parked
        self._width = width
        self._ready: deque[InboxItem] = deque()
        self._busy: set[int] = set()
        self._supply = asyncio.Lock()
        self._stopping = False

    async def run(self) -> None:
        """Work until stopped, and then until what was begun is finished."""
        async with asyncio.TaskGroup() as workers:
            for _ in range(self._width):
                workers.create_task(self._work())

    def stop(self) -> None:
        self._stopping = True
        self._bells.inbox.ring()

    async def _work(self) -> None:
        while (item := await self._take()) is not None:
            await self._try(item)
            self._busy.discard(item.lane)
            self._bells.inbox.ring()  # its lane may hold more
            self._bells.something_was_done()

    async def _take(self) -> InboxItem | None:
        """Return the next update, or None when it is time to stop. One worker waits for all."""
        async with self._supply:
            while not self._ready and not self._stopping:
                await self._look()
            if self._stopping:
                return None
            item = self._ready.popleft()
            self._busy.add(item.lane)
            return item

    async def _look(self) -> None:
        async with self._store.reading() as unit:
            self._ready.extend(await unit.inbox.next(_LOOK_AHEAD, self._busy))
        if not self._ready:
            await self._bells.inbox.heard()

    async def _try(self, item: InboxItem) -> None:
        try:
            await self._handle(item)
        except Exception as error:  # noqa: BLE001 - logged there with its traceback
            await self._failed(item, error)

    async def _failed(self, item: InboxItem, error: Exception) -> None:
        tries = item.attempts + 1
        park = tries >= _MOST_TRIES
        log.error("update %d failed, try %d of %d", item.update_id, tries, _MOST_TRIES, exc_info=error)
        async with self._store.unit() as unit:
            await unit.inbox.failed(item.id, f"{type(error).__name__}: {error}", park)
        if park:
            await self._tell_parked(item)

    async def _tell_parked(self, item: InboxItem) -> None:
        try:
            await self._on_parked(item)
        except Exception:
            log.exception("nobody could be told that update %d was parked", item.update_id)
