"""`bellwether rehearse`: the real bot over the stand-in, with an invented group. No account needed."""

import asyncio
import contextlib
import signal
import tempfile
from collections.abc import AsyncIterator
from contextlib import AsyncExitStack, asynccontextmanager
from dataclasses import dataclass
from pathlib import Path
from typing import Annotated
from urllib.parse import urlsplit

import typer

from bot.rehearsal.backstage import Backstage
from bot.rehearsal.bot_process import BotProcess
from bot.rehearsal.cable import Cable
from bot.rehearsal.clock import RehearsalClock
from bot.rehearsal.day import EVE, STORY, play
from bot.rehearsal.day.cast import Company
from bot.rehearsal.day.hours import OSLO
from bot.rehearsal.platform import Platform
from bot.rehearsal.server import serving
from bot.rehearsal.stage import RemoteStage
from bot.rehearsal.story import Opened, Story, contents
from bot.rehearsal.voice import Room
from core.errors import Defect, InputError, Trouble

PAUSE_S = 0.2
_STARTS_S = 240.0  # modules are compiled the first time, and a machine may be busy


def rehearse(
    once: Annotated[bool, typer.Option("--once", help="End after the day.")] = False,
    whole: Annotated[
        bool, typer.Option("--all", help="Print all that is said, not only what each scene shows.")
    ] = False,
    brief: Annotated[
        bool, typer.Option("--brief", help="Print only the scenes that a coach in a hurry should read.")
    ] = False,
    no_day: Annotated[
        bool, typer.Option("--no-day", help="Only open the room, with the group in it.")
    ] = False,
    port: Annotated[
        int, typer.Option(metavar="N", min=0, max=65535, help="The room's port; any free one if left out.")
    ] = 0,
) -> None:
    """Play a day of an invented group, print it, keep the room open."""
    with contextlib.suppress(KeyboardInterrupt):
        asyncio.run(_rehearse(Wanted(once, whole, brief, no_day, port)))


@dataclass(frozen=True, slots=True)
class Wanted:
    once: bool
    whole: bool
    brief: bool
    no_day: bool
    port: int


async def _rehearse(wanted: Wanted) -> None:
    platform = Platform(RehearsalClock(EVE, runs=True))
    async with AsyncExitStack() as opened:
        folder = Path(opened.enter_context(tempfile.TemporaryDirectory()))
        try:
            address = await opened.enter_async_context(serving(platform, wanted.port))
        except OSError as error:
            raise InputError("--port", f"{wanted.port} can't be used: {error.strerror}.") from None
        backstage = await opened.enter_async_context(behind(platform, address, folder))
        room = await opened.enter_async_context(room_at(address))
        if not wanted.once:
            typer.echo(f"Watch it in a browser: {address}")
        if wanted.no_day:
            await Company.gather(room)
        else:
            await _play_and_print(room, backstage, wanted)
        if wanted.once:
            typer.echo(
                "\nThe end of the day. make demo keeps its room open: be anybody there, write and tap."
            )
        else:
            typer.echo(f"\nThe room stays open at {address}: be anybody, write and tap. Ctrl-C ends it.")
            await _interrupted()


@asynccontextmanager
async def behind(platform: Platform, address: str, folder: Path) -> AsyncIterator[Backstage]:
    """The bot's process and its network, stopped at the end."""
    cable = Cable(urlsplit(address).port or 0)
    await cable.mend()
    bot = BotProcess(folder, calls=cable.address, clock=address)
    backstage = platform.backstage = Backstage(platform, bot, cable)
    await bot.start()
    try:
        typer.echo("Starting the bot: some seconds, the first time more.")
        if not await backstage.is_up(_STARTS_S):
            raise Trouble(f"The bot doesn't start. The last line of its log: {bot.last_words}")
        yield backstage
    finally:
        await bot.stop()
        cable.cut()


@asynccontextmanager
async def room_at(address: str) -> AsyncIterator[Room]:
    stage = RemoteStage(address)
    yield Room(stage)
    await stage.close()


async def _play_and_print(room: Room, backstage: Backstage, wanted: Wanted) -> None:
    """Print while it happens. Raises what a player missed, or what the bot did that the platform doesn't know.

    Where the room stays open, somebody may have got in the players' way: then the day ends, and the room goes on.
    """
    how = (
        "all that is said"
        if wanted.whole
        else "its main lines, … where more was said; make demo ALL=1 prints all"
    )
    heading = f"A day of thirteen people in {len(STORY)} scenes, {how}."
    if wanted.brief:
        heading = "Of a day of thirteen people, what a coach should read first; make demo prints all of it."
    typer.echo("\n".join(["", heading, "", *contents(STORY, OSLO, brief=wanted.brief)]))
    playing = asyncio.create_task(play(room))
    backstage.skip = playing.cancel
    await _printed(room, playing, Story(STORY, OSLO, whole=wanted.whole, brief=wanted.brief))
    backstage.skip = None
    try:
        await playing
    except asyncio.CancelledError:
        typer.echo("\nThe rest of the day was skipped.")
    except AssertionError as missed:
        if wanted.once:
            raise
        typer.echo(f"\nThe day ends here, as something came in between: {missed}")
    complaints = await room.complaints()
    if complaints:
        raise Defect(f"the stand-in doesn't know: {complaints}")


async def _printed(room: Room, playing: "asyncio.Task[None]", story: Story) -> None:
    printed, scenes = 0, list[Opened]()
    while not playing.done():
        await asyncio.wait([playing], timeout=PAUSE_S)
        scenes = [*await room.scenes()]
        happened = await room.transcript(since=printed)
        printed += len(happened)
        for line in story.lines_of(happened, scenes):
            typer.echo(line)
    for line in story.rest(scenes):
        typer.echo(line)


async def _interrupted() -> None:
    stop = asyncio.Event()
    for number in (signal.SIGINT, signal.SIGTERM):
        asyncio.get_running_loop().add_signal_handler(number, stop.set)
    await stop.wait()
