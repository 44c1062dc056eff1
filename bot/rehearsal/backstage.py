"""Behind the stage: the bot's process, the network, the platform's limits, and the time, moved honestly.

Only the room has it, where the bot is a process of its own. Whoever moves the time goes from one moment that was set to
the next, so that nothing due is jumped over.
"""

import asyncio
from collections.abc import Callable
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path
from typing import TYPE_CHECKING, Any, Protocol

from bot.rehearsal.chats import Json
from bot.rehearsal.errors import NotPossible
from core.desk.upkeep import Waits, what_waits

if TYPE_CHECKING:
    from bot.rehearsal.platform import Call, Platform

_SETTLES_S = 6.0
_LOOKS_S = 0.05

# By the desk's name of what is due: what happens then. A kind that is missing here is told by its own name.
_THEN = {
    "remind": "{person}'s reminder",
    "attendance": "{person} is asked about the class",
    "digest": "{person}'s evening digest",
    "post": "the session for {group}",
    "review": "{person} is asked how it feels now",
    "close_chat": "a goodbye is tidied up",
    "still waits": "the coach is asked again about {person}",
    "undelivered": "the coaches hear of a post that didn't arrive",
}


class Process(Protocol):
    """The bot, and the database that it leaves behind."""

    @property
    def database(self) -> Path: ...
    @property
    def is_alive(self) -> bool: ...
    async def start(self) -> None: ...
    async def kill(self) -> None: ...


class Network(Protocol):
    """The bot's way to the platform."""

    @property
    def is_whole(self) -> bool: ...
    def cut(self) -> None: ...
    async def mend(self) -> None: ...


@dataclass
class Backstage:
    """`skip` ends the day that is played; None while none is."""

    platform: "Platform"
    bot: Process
    cable: Network
    skip: Callable[[], Any] | None = None
    _asked: bool = False

    def __post_init__(self) -> None:
        self.platform.on_call.append(self.hear)

    async def kill(self) -> None:
        await self.bot.kill()
        self._asked = False

    async def is_up(self, within: float) -> bool:
        """Wait until the bot asks for what people said; False once it ended, or after so many real seconds."""
        for _ in range(int(within / _LOOKS_S)):
            if self._asked or not self.bot.is_alive:
                break
            await asyncio.sleep(_LOOKS_S)
        return self._asked and self.bot.is_alive

    async def waits(self) -> Waits | None:
        return await asyncio.to_thread(what_waits, self.bot.database)

    async def state(self) -> Json:
        """What runs and what doesn't, and what is saved in the bot's database whether it runs or not."""
        waits = await self.waits()
        until = self.platform.rates.used_up_until
        return {
            "bot": self._bot(),
            "network": self.cable.is_whole,
            "limits_until": until.isoformat() if until else None,
            "playing": self.skip is not None,
            "unheard": len(self.platform.bot.updates),
            "waits": _told(waits) if waits else None,
        }

    def _bot(self) -> str:
        """`up` from the moment on at which it asks for what people said."""
        if not self.bot.is_alive:
            self._asked = False
            return "down"
        return "up" if self._asked else "starting"

    def hear(self, call: "Call") -> None:
        self._asked = self._asked or call.method == "getUpdates"

    async def go_on(self, to: datetime) -> None:
        """Move the time to a moment by way of every moment set before it. Raises NotPossible while the day plays."""
        self.must_be_free()
        while (waits := await self.waits()) and self.bot.is_alive:
            ahead = [one.at for one in waits.ahead if self.platform.clock.now() < one.at < to]
            if not ahead:
                break
            await self._travel(ahead[0])
        await self._travel(to)

    def must_be_free(self) -> None:
        if self.skip is not None:
            raise NotPossible("The day still plays and moves the time itself. Skip the rest of it first.")

    async def _travel(self, to: datetime) -> None:
        clock = self.platform.clock
        clock.travel_to(max(to, clock.now()))
        await clock.followers.all_know(clock.read().version)
        await self._settled()

    async def _settled(self) -> None:
        """Let the bot do what is due by now, as long as it can and makes no long work of it."""
        tries = int(_SETTLES_S / _LOOKS_S)
        while tries and self.bot.is_alive and self.cable.is_whole and not await self._is_settled():
            tries -= 1
            await asyncio.sleep(_LOOKS_S)

    async def _is_settled(self) -> bool:
        waits, now = await self.waits(), self.platform.clock.now()
        return waits is None or not (
            waits.updates or waits.letters or any(one.at <= now for one in waits.ahead)
        )


def _told(waits: Waits) -> Json:
    return {
        "updates": waits.updates,
        "letters": waits.letters,
        "kept": waits.kept,
        "ahead": [
            {"at": one.at.isoformat(), "what": _what(one.kind, one.person, one.group)} for one in waits.ahead
        ],
    }


def _what(kind: str, person: str | None, group: str | None) -> str:
    return _THEN.get(kind, kind).format(person=person or "somebody", group=group or "the group")
