"""The queue of updates that one bot has not confirmed yet, and the poll that empties it."""

import asyncio
import contextlib
from collections import deque
from collections.abc import Collection
from typing import Any

from telegram.constants import PollingLimit, UpdateType

from bot.rehearsal.errors import conflict

ON_REQUEST_ONLY = frozenset(
    {UpdateType.CHAT_MEMBER, UpdateType.MESSAGE_REACTION, UpdateType.MESSAGE_REACTION_COUNT}
)
LONGEST_POLL_S = 50
_FIRST_UPDATE_ID = 731_000_001


class UpdateQueue:
    """Updates in order. They stay until a later call's offset confirms them, as on the platform."""

    def __init__(self) -> None:
        self._waiting: deque[dict[str, Any]] = deque()
        self._next_id = _FIRST_UPDATE_ID
        self._wanted: frozenset[str] = frozenset()
        self._changed: asyncio.Event | None = None
        self._poll = 0

    def __len__(self) -> int:
        return len(self._waiting)

    def want(self, kinds: Collection[str]) -> None:
        """Choose the kinds of *future* updates; none means all but those that must be asked for."""
        self._wanted = frozenset(kinds)

    def wants(self, kind: str) -> bool:
        return kind in self._wanted if self._wanted else kind not in ON_REQUEST_ONLY

    def add(self, kind: str, payload: dict[str, Any]) -> None:
        if not self.wants(kind):
            return
        self._waiting.append({"update_id": self._next_id, kind: payload})
        self._next_id += 1
        self._wake()

    def clear(self) -> None:
        self._waiting.clear()

    def _wake(self) -> None:
        if self._changed is not None:
            self._changed.set()
            self._changed = None

    def take(self, offset: int, limit: int) -> list[dict[str, Any]]:
        """Confirm what is before `offset` (negative: all but the last so many) and return what follows."""
        if offset < 0:
            self._drop(len(self._waiting) + offset)
        else:
            self._drop(sum(1 for update in self._leading(offset)))
        return [self._waiting[place] for place in range(min(limit, len(self._waiting)))]

    def _leading(self, offset: int) -> list[dict[str, Any]]:
        leading = []
        for update in self._waiting:
            if update["update_id"] >= offset:
                break
            leading.append(update)
        return leading

    def _drop(self, number: int) -> None:
        for _ in range(number):
            self._waiting.popleft()

    async def poll(self, offset: int, limit: int, timeout_s: float) -> list[dict[str, Any]]:
        """Return waiting updates, or wait for the next one. A second poll ends the first: Declined (409)."""
        self._poll += 1
        mine = self._poll
        self._wake()
        limit = (
            limit
            if PollingLimit.MIN_LIMIT <= limit <= PollingLimit.MAX_LIMIT
            else int(PollingLimit.MAX_LIMIT)
        )
        found = self.take(offset, limit)
        if found or timeout_s <= 0:
            return found
        await self._wait(min(timeout_s, LONGEST_POLL_S))
        if mine != self._poll:
            raise conflict(
                "terminated by other getUpdates request; make sure that only one bot instance is running"
            )
        return self.take(offset, limit)

    async def _wait(self, seconds: float) -> None:
        self._changed = self._changed or asyncio.Event()
        with contextlib.suppress(TimeoutError):
            async with asyncio.timeout(seconds):
                await self._changed.wait()
