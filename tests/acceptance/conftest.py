"""The whole bot in this process, over the stand-in, with its people."""

import asyncio
import shutil
import sys
from collections.abc import AsyncIterator
from pathlib import Path

import pytest
import pytest_asyncio

from bot.bootstrap import App, build
from bot.rehearsal.in_process import BASE_URL, InProcessRequest
from bot.rehearsal.platform import TOKEN, Platform
from bot.rehearsal.voice import Room
from bot.settings import Pace, Settings
from bot.telegram.conduct import make_conduct
from bot.telegram.seals import Seal
from core.desk.talk.understood import get_ready
from tests.acceptance.mortal import Mortal
from tests.acceptance.people import Crew, founded


@pytest.fixture
def settings(tmp_path: Path, migrated: Path) -> Settings:
    return Settings(
        token=TOKEN,
        api_url=BASE_URL.removesuffix("/bot"),
        database=str(shutil.copy(migrated, tmp_path / "bellwether.db")),
        pace=Pace.UNLIMITED,
        _env_file=None,
    )


@pytest.fixture(autouse=True)
def _made_up_presses_have_true_seals(monkeypatch: pytest.MonkeyPatch) -> None:
    """As if whoever makes a press up knew the key: what lies behind the seal is tested here, the seal in tests/soak."""
    monkeypatch.setattr(Seal, "opened", lambda _seal, press, _chat: press.data.partition("~")[0])


@pytest_asyncio.fixture
async def bellwether(platform: Platform, settings: Settings) -> AsyncIterator[App]:
    """The running bot."""
    get_ready()
    app = build(settings, make_conduct, clock=platform.clock, request=InProcessRequest(platform))
    await app.start()
    yield app
    await app.stop()


@pytest_asyncio.fixture
async def crew(bellwether: App, room: Room) -> Crew:
    """Harbour crew: coach Marit has set the group up."""
    return await founded(room, "Harbour crew", coach="Marit")


@pytest_asyncio.fixture
async def mortal(platform, address, tmp_path):
    found = Mortal(platform, address, tmp_path / "bellwether.db", tmp_path / "bot.log")
    living = asyncio.create_task(found.live())
    yield found
    living.cancel()
    await asyncio.gather(living, return_exceptions=True)
    sys.stdout.write(found.log)  # pytest shows it where the test failed


@pytest_asyncio.fixture
async def running_room(remote_room):
    await remote_room.lets_time_run()
    return remote_room
