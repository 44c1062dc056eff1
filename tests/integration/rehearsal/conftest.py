from collections.abc import AsyncIterator

import pytest
import pytest_asyncio
from telegram import Bot

from bot.rehearsal.platform import TOKEN, Platform
from bot.rehearsal.server import serving
from bot.rehearsal.stage import RemoteStage
from bot.rehearsal.voice import Room
from tests.transports import in_process_bot


@pytest.fixture(autouse=True)
def _durations_as_such(monkeypatch: pytest.MonkeyPatch) -> None:
    """The library warns unless told that `retry_after` is wanted as a timedelta."""
    monkeypatch.setenv("PTB_TIMEDELTA", "true")


@pytest_asyncio.fixture
async def bot(platform: Platform) -> AsyncIterator[Bot]:
    """The library's own bot, in this process."""
    async with in_process_bot(platform) as found:
        yield found


@pytest_asyncio.fixture(params=["in process", "over HTTP"])
async def both(request, platform: Platform) -> AsyncIterator[tuple[Bot, Room]]:
    """The library's own bot and the room, once through each transport."""
    if request.param == "in process":
        async with in_process_bot(platform) as found:
            yield found, Room.of(platform)
        return
    async with serving(platform) as address, Bot(TOKEN, f"{address}/bot", f"{address}/file/bot") as found:
        stage = RemoteStage(address)
        yield found, Room(stage)
        await stage.close()
