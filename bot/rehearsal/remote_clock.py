"""The stand-in's time, followed from another process."""

import asyncio
import contextlib
import uuid
from datetime import UTC, datetime
from types import TracebackType
from typing import Any, Self

import httpx

from bot.rehearsal.clock import Reading, SettableClock
from bot.rehearsal.stage import RemoteStage

_POLL_S = 20.0
_RETRY_S = 0.2


class RemoteClock(SettableClock):
    """A clock that shows what the stand-in's shows. Use it as an async context manager: it follows meanwhile.

    While the server can't be reached it shows its last reading (and runs on, if that one did).
    """

    def __init__(self, address: str) -> None:
        super().__init__(Reading(datetime.fromtimestamp(0, UTC), runs=False, version=0))
        self._stage = RemoteStage(address)
        self._name = uuid.uuid4().hex
        self._following: asyncio.Task[None] | None = None

    async def __aenter__(self) -> Self:
        self._take(await self._stage.do("follow_clock", follower=self._name, version=0, within=0.0))
        self._following = asyncio.create_task(self._follow())
        return self

    async def __aexit__(
        self, kind: type[BaseException] | None, error: BaseException | None, trace: TracebackType | None
    ) -> None:
        if self._following is not None:
            self._following.cancel()
            with contextlib.suppress(asyncio.CancelledError):
                await self._following
        with contextlib.suppress(httpx.HTTPError):
            await self._stage.do("unfollow_clock", follower=self._name)
        await self._stage.close()

    def _take(self, found: dict[str, Any]) -> None:
        # The answer is older than its arrival, and time never goes back.
        moment = max(self.now(), datetime.fromisoformat(found["moment"]))
        self._set(Reading(moment, found["runs"], found["version"]))

    async def _follow(self) -> None:
        while True:
            try:
                version = self.read().version
                found = await self._stage.do(
                    "follow_clock", follower=self._name, version=version, within=_POLL_S
                )
            except httpx.HTTPError:
                await asyncio.sleep(_RETRY_S)
            else:
                self._take(found)
