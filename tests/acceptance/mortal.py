"""The real bot as a process that is killed at chosen moments, and started again each time."""

import asyncio
import os
import sys
from collections.abc import Awaitable, Callable
from contextlib import suppress
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from bot.rehearsal.errors import AnswerLost
from bot.rehearsal.platform import TOKEN, Platform
from tests.support.durable import Tables

_CHECKED_S = 0.02


@dataclass(frozen=True)
class Moment:
    """When to kill, as the platform sees it: at a call of `method`.

    `brings`: only if its answer brings updates. `confirms`: only if it confirms some. Either `before` the
    call takes effect, or after it with its `answer_lost`, or `later`: so many seconds after its answer left.
    """

    method: str
    before: bool = False
    answer_lost: bool = False
    later: float = 0.0
    brings: bool = False
    confirms: bool = False

    def has_come(self, method: str, params: dict[str, Any]) -> bool:
        return method == self.method and (not self.confirms or "offset" in params)


class Mortal:
    """Kills the bot's process when an armed moment comes. `leased`: letters on their way at any kill."""

    def __init__(self, platform: Platform, address: str, database: Path, log: Path) -> None:
        self.tables = Tables(database)
        self.kills = 0
        self.leased: set[int] = set()
        self._environment = os.environ | {
            "BELLWETHER_TOKEN": TOKEN,
            "BELLWETHER_API_URL": address,
            "BELLWETHER_CLOCK_URL": address,
            "BELLWETHER_DATABASE": str(database),
            "BELLWETHER_PACE": "unlimited",
        }
        self._log = log
        self._log.touch()
        self._armed: Moment | None = None
        self._process: asyncio.subprocess.Process | None = None
        self._call: Callable[..., Awaitable[Any]] = platform.call
        platform.call = self._watch  # type: ignore[method-assign]

    def arm(self, moment: Moment) -> None:
        assert self._armed is None, f"never came: {self._armed}"
        self._armed = moment

    @property
    def log(self) -> str:
        return self._log.read_text()

    async def live(self) -> None:
        """Start the process, and again whenever it was killed, until cancelled. Any other end fails."""
        try:
            while True:
                kills = self.kills
                await self._run_once()
                assert self.kills > kills, f"it ended by itself:\n{self.log}"
        finally:
            self._end()

    async def _run_once(self) -> None:
        with self._log.open("ab") as log:
            serve = [sys.executable, "-m", "bot", "serve"]
            self._process = await asyncio.create_subprocess_exec(
                *serve, env=self._environment, cwd=self._log.parent, stderr=log
            )
        await self._process.wait()
        if self.tables.path.exists():
            self.leased |= set(self.tables.column("SELECT id FROM outbox WHERE state = 'leased'"))

    async def _watch(self, token: str, method: str, params: dict[str, Any]) -> Any:
        if (moment := self._coming(method, params)) and moment.before:
            self._kill()
            raise AnswerLost("read timeout")
        result = await self._call(token, method, params)
        # Looked up again: a poll may have begun long before the moment was armed.
        moment = self._coming(method, params)
        if moment is None or moment.before or (moment.brings and not result):
            return result
        if moment.answer_lost:
            self._kill()
            raise AnswerLost("read timeout")
        self._armed = None
        asyncio.get_running_loop().call_later(moment.later, self._kill)
        return result

    def _coming(self, method: str, params: dict[str, Any]) -> Moment | None:
        return self._armed if self._armed and self._armed.has_come(method, params) else None

    def _kill(self) -> None:
        self._armed = None
        self.kills += 1
        self._end()

    def _end(self) -> None:
        if self._process is not None and self._process.returncode is None:
            with suppress(ProcessLookupError):
                self._process.kill()
