import asyncio

import pytest_asyncio

from bot.delivery.budget import PLATFORM, Budget
from bot.delivery.sender import Sender
from tests.support.durable import bells, bot, post, store, tables

__all__ = ["bells", "bot", "post", "store", "tables"]


class Running:
    """Starts senders and stops them after the test."""

    def __init__(self, bot, store, platform, bells):
        self._parts = (bot, store, platform.clock, bells)
        self._running = {}

    async def sender(self, rates=PLATFORM):
        sender = Sender(*self._parts, Budget(rates), jitter=lambda: 1.0)
        self._running[sender] = asyncio.create_task(sender.run())
        return sender

    async def stop(self, sender):
        sender.stop()
        await self._running.pop(sender)

    async def kill(self, sender):
        task = self._running.pop(sender)
        sends = list(sender._in_flight)
        for one in (task, *sends):
            one.cancel()
        await asyncio.gather(task, *sends, return_exceptions=True)

    async def stop_all(self):
        for sender in list(self._running):
            await self.stop(sender)


@pytest_asyncio.fixture
async def running(bot, store, platform, bells):
    found = Running(bot, store, platform, bells)
    yield found
    await found.stop_all()


@pytest_asyncio.fixture
async def ilse(room):
    person = await room.person("Ilse")
    await person.opens(await room.start_link())
    return person


@pytest_asyncio.fixture
async def tomas(room):
    person = await room.person("Tomas")
    await person.opens(await room.start_link())
    return person
