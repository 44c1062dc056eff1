"""Worlds in which something has happened already: each is made once, and copied for every test that begins with it."""

import asyncio
import copy
import shutil
from collections.abc import Awaitable, Callable, Mapping
from contextlib import AsyncExitStack
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import pytest

from bot.bootstrap import App, build
from bot.rehearsal.clock import RehearsalClock
from bot.rehearsal.platform import TOKEN, Platform
from bot.rehearsal.voice import Room
from bot.settings import Pace, Settings
from bot.telegram.conduct import make_conduct
from core.desk.talk.understood import get_ready
from tests.acceptance.people import Crew, founded
from tests.rehearsal_fixtures import watched
from tests.support.in_process import BASE_URL, InProcessRequest

Past = Callable[[Crew], Awaitable[Any]]


@dataclass(frozen=True)
class World:
    """What stood when the bot had stopped again; `told`: what each part of its past returned."""

    database: Path
    platform: Platform
    crew: Crew
    told: Mapping[Past, Any]
    loop: asyncio.AbstractEventLoop

    def again(self, database: Path) -> "World":
        """The same for somebody alone, at the same time."""
        # What waited for the clock or in the loop that is over has nobody who waits any more.
        clock = self.platform.clock
        afresh = {id(clock): RehearsalClock(clock.now()), id(self.loop): None}
        platform, crew, told = copy.deepcopy((self.platform, self.crew, self.told), afresh)
        return World(Path(shutil.copy(self.database, database)), platform, crew, told, self.loop)


class Worlds:
    """Makes them in `folder`. The first holds Harbour crew alone, which coach Marit set up."""

    def __init__(self, empty: Path, folder: Path) -> None:
        self._empty = empty
        self._folder = folder
        self._made: dict[tuple[Past, ...], World] = {}

    def after(self, *pasts: Past) -> World:
        """The world in which these have happened, one after the other."""
        if pasts not in self._made:
            before = self.after(*pasts[:-1]) if pasts else None
            database = self._folder / f"{len(self._made)}.db"
            if before is None:
                self._made[pasts] = asyncio.run(_founded(Path(shutil.copy(self._empty, database))))
            else:
                self._made[pasts] = asyncio.run(_goes_on(before.again(database), pasts[-1]))
        return self._made[pasts]


def world(past: Past) -> Any:
    """A fixture: what `past(crew)` returned, in a world in which it has happened before the test begins.

    Of several that a test asks for, each happened after those that it names before.
    """

    def told(crew: Crew, afresh: World) -> Any:
        return afresh.told[past]

    told.past = past  # type: ignore[attr-defined]
    return pytest.fixture(told, name=past.__name__)


def pasts_of(request: pytest.FixtureRequest) -> tuple[Past, ...]:
    """Those of the worlds that a test asks for."""
    found = request.node._fixtureinfo.name2fixturedefs
    asked = (found[name][-1].func for name in request.fixturenames if name in found)
    return tuple(fixture.past for fixture in asked if hasattr(fixture, "past"))


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


async def _founded(database: Path) -> World:
    platform = Platform()
    async with AsyncExitStack() as leave:
        await _running_watched(platform, database, leave)
        crew = await founded(Room.of(platform), "Harbour crew", coach="Marit")
    return World(database, platform, crew, {}, asyncio.get_running_loop())


async def _goes_on(begun: World, past: Past) -> World:
    async with AsyncExitStack() as leave:
        await _running_watched(begun.platform, begun.database, leave)
        told = await past(begun.crew)
    return World(
        begun.database, begun.platform, begun.crew, {**begun.told, past: told}, asyncio.get_running_loop()
    )


async def _running_watched(platform: Platform, database: Path, leave: AsyncExitStack) -> None:
    from tests.outgoing import OutgoingCheck  # noqa: PLC0415 - its library takes seconds to load

    leave.enter_context(watched(platform, OutgoingCheck()))
    await running(platform, settings_for(database), leave)
