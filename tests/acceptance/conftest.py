"""The whole bot in this process, over the stand-in, with its people."""

import asyncio
import shutil
import sys
from collections.abc import AsyncIterator, Iterator
from contextlib import AsyncExitStack
from pathlib import Path
from typing import TYPE_CHECKING

import pytest
import pytest_asyncio

from bot.bootstrap import App
from bot.rehearsal.platform import Platform
from bot.rehearsal.voice import Person
from bot.settings import Settings
from bot.telegram.seals import Seal
from tests.acceptance.mortal import Mortal
from tests.acceptance.people import Crew
from tests.acceptance.worlds import World, Worlds, pasts_of, running, settings_for, world
from tests.rehearsal_fixtures import watched

if TYPE_CHECKING:
    from tests.outgoing import OutgoingCheck


@pytest.fixture(scope="session")
def worlds(migrated: Path, tmp_path_factory: pytest.TempPathFactory) -> Worlds:
    return Worlds(migrated, tmp_path_factory.mktemp("worlds"))


@pytest.fixture
def afresh(request: pytest.FixtureRequest, tmp_path: Path) -> World | None:
    """The world in which a test begins that asks for the group, or for more that has happened there."""
    if "crew" not in request.fixturenames:
        return None
    worlds: Worlds = request.getfixturevalue("worlds")
    return worlds.after(*pasts_of(request)).again(tmp_path / "bellwether.db")


@pytest.fixture
def platform(outgoing: "OutgoingCheck", afresh: World | None) -> Iterator[Platform]:
    """As everywhere, with the group in it where the test begins with one."""
    with watched(afresh.platform if afresh else Platform(), outgoing) as found:
        yield found


@pytest.fixture
def settings(tmp_path: Path, migrated: Path, afresh: World | None) -> Settings:
    if afresh:
        return settings_for(afresh.database)
    return settings_for(Path(shutil.copy(migrated, tmp_path / "bellwether.db")))


@pytest.fixture(autouse=True)
def _made_up_presses_have_true_seals(monkeypatch: pytest.MonkeyPatch) -> None:
    """As if whoever makes a press up knew the key: what lies behind the seal is tested here, the seal in tests/soak."""
    monkeypatch.setattr(Seal, "opened", lambda _seal, press, _chat: press.data.partition("~")[0])


@pytest_asyncio.fixture
async def bellwether(platform: Platform, settings: Settings) -> AsyncIterator[App]:
    """The running bot."""
    async with AsyncExitStack() as leave:
        yield await running(platform, settings, leave)


@pytest.fixture
def crew(bellwether: App, afresh: World) -> Crew:
    """Harbour crew: coach Marit has set the group up."""
    return afresh.crew


@world
async def ilse(crew: Crew) -> Person:
    return await crew.has("Ilse")


@world
async def bo(crew: Crew) -> Person:
    return await crew.has("Bo")


@world
async def posted(crew: Crew) -> None:
    """Today's session stands in the group."""
    await crew.gets()


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
