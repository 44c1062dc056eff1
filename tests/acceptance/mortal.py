"""The real bot as a process that is killed at chosen moments, and started again each time."""

import asyncio
import os
from collections.abc import Awaitable, Callable
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from bot.rehearsal.errors import AnswerLost
from bot.rehearsal.platform import TOKEN, Platform
from tests.support import forked
from tests.support.durable import Tables


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
    """Kills the bot's process when an armed moment comes.

    `kills`: how many were ordered; `ends`: how many have happened, with `leased`, the letters that were on
    their way at any of them, known up to that one. The bot reaches the platform at `address`, and its clock there
    too, or at `clock`.
    """

    def __init__(
        self, platform: Platform, address: str, database: Path, log: Path, clock: str | None = None
    ) -> None:
        self.tables = Tables(database)
        self.kills = 0
        self.ends = 0
        self.leased: set[int] = set()
        self._environment = os.environ | {
            "BELLWETHER_TOKEN": TOKEN,
            "BELLWETHER_API_URL": address,
            "BELLWETHER_CLOCK_URL": clock or address,
            "BELLWETHER_DATABASE": str(database),
            "BELLWETHER_PACE": "unlimited",
        }
        self._log = log
        self._log.touch()
        self._armed: Moment | None = None
        self._process: forked.Process | None = None
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
        folder = self._log.parent
        self._process = forked.start("serve", env=self._environment, folder=folder, log=self._log)
        await self._process.communicate()
        if self.tables.path.exists():
            self.leased |= set(self.tables.column("SELECT id FROM outbox WHERE state = 'leased'"))
        self.ends += 1

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
        if self._process is not None:
            self._process.kill()


MOMENTS = (
    Moment("getUpdates", brings=True, answer_lost=True),  # handed out, never received
    Moment("getUpdates", brings=True, later=0.003),  # while it is being stored
    Moment("getChatMember", before=True),  # while it is being handled
    Moment("sendMessage", before=True),  # a letter on its way, not arrived
    Moment("sendMessage", answer_lost=True),  # arrived, and nobody knows
    Moment("answerCallbackQuery", answer_lost=True),
    Moment("editMessageText", answer_lost=True),
    Moment("getUpdates", brings=True, later=0.03),  # while it is being handled
    Moment("sendMessage", later=0.0),  # while it is being settled
    Moment("getUpdates", confirms=True, before=True),  # stored, not yet confirmed
)


def assert_every_update_was_kept(tables):
    """The stand-in numbers updates one by one, so that a lost one leaves a gap."""
    numbers = tables.column("SELECT update_id FROM inbox ORDER BY update_id")
    missing = set(range(numbers[0], numbers[-1])) - set(numbers)
    assert missing == set(), f"never stored: {missing}"


def assert_every_letter_went_out(tables):
    unsent = tables.rows("SELECT key, state FROM outbox WHERE state != 'sent' AND purpose != 'tap'")
    lost = [row for row in unsent if row[1] != "dropped"]
    assert lost == [], f"never sent: {lost}"


def assert_only_what_was_on_its_way_was_repeated(tables, leased):
    tried_twice = tables.column("SELECT DISTINCT outbox_id FROM attempt WHERE number > 1")
    needless = set(tried_twice) - leased
    assert needless == set(), f"sent twice without need: {needless}"
