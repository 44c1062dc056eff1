"""A group that is set up once, and copied for each test that begins with one: the bot's tables and the world."""

import asyncio
import copy
import shutil
from contextlib import AsyncExitStack
from dataclasses import dataclass
from pathlib import Path

from bot.bootstrap import App, build
from bot.rehearsal.clock import RehearsalClock
from bot.rehearsal.in_process import BASE_URL, InProcessRequest
from bot.rehearsal.platform import TOKEN, Platform
from bot.rehearsal.voice import Room
from bot.settings import Pace, Settings
from bot.telegram.conduct import make_conduct
from core.desk.talk.understood import get_ready
from tests.acceptance.people import Crew, founded


@dataclass(frozen=True)
class Founding:
    """What stood when the bot had stopped again."""

    database: Path
    platform: Platform
    crew: Crew
    loop: asyncio.AbstractEventLoop

    def again(self, database: Path) -> "Founding":
        """The same in a world of its own, at the same time."""
        # What waited for the clock or in the loop that is over has nobody who waits any more.
        afresh = {id(self.platform.clock): RehearsalClock(), id(self.loop): None}
        platform, crew = copy.deepcopy((self.platform, self.crew), afresh)
        return Founding(Path(shutil.copy(self.database, database)), platform, crew, self.loop)


def settings_for(database: Path) -> Settings:
    return Settings(
        token=TOKEN,
        api_url=BASE_URL.removesuffix("/bot"),
        database=str(database),
        pace=Pace.UNLIMITED,
        _env_file=None,
    )


async def running(platform: Platform, settings: Settings, leave: AsyncExitStack) -> App:
    """The bot, started; stopped when `leave` closes."""
    get_ready()
    app = build(settings, make_conduct, clock=platform.clock, request=InProcessRequest(platform))
    await app.start()
    leave.push_async_callback(app.stop)
    return app


async def found(database: Path) -> Founding:
    """Harbour crew: coach Marit sets the group up."""
    platform = Platform()
    async with AsyncExitStack() as leave:
        await running(platform, settings_for(database), leave)
        crew = await founded(Room.of(platform), "Harbour crew", coach="Marit")
    return Founding(database, platform, crew, asyncio.get_running_loop())
