"""`bellwether rehearse`: the real bot over the stand-in, with an invented group. No account needed."""

import asyncio
import os
import signal
import sys
import tempfile
from collections.abc import AsyncIterator
from contextlib import asynccontextmanager
from pathlib import Path
from typing import Annotated

import typer

from bot.rehearsal.clock import RehearsalClock
from bot.rehearsal.day import EVE, play
from bot.rehearsal.day.hours import OSLO
from bot.rehearsal.platform import TOKEN, Platform
from bot.rehearsal.server import serving
from bot.rehearsal.stage import RemoteStage
from bot.rehearsal.transcript import Transcript
from bot.rehearsal.voice import Room
from core.errors import Defect

PAUSE_S = 0.2


def rehearse(
    once: Annotated[bool, typer.Option("--once", help="End after the day instead of staying open.")] = False,
) -> None:
    """Play one day of an invented group over the real bot, print it, and keep the room open."""
    asyncio.run(_rehearse(once))


async def _rehearse(once: bool) -> None:
    platform = Platform(RehearsalClock(EVE, runs=True))
    with tempfile.TemporaryDirectory() as folder:
        async with serving(platform) as address, bot_process(address, Path(folder)), room_at(address) as room:
            if not once:
                typer.echo(f"Watch it in a browser: {address}")
            await _play_and_print(room)
            if not once:
                typer.echo(
                    f"\nThe room stays open at {address}: write and tap as anybody. Press Ctrl-C to leave."
                )
                await _interrupted()


@asynccontextmanager
async def bot_process(address: str, folder: Path) -> AsyncIterator[None]:
    """The real `bellwether serve` as a process of its own, stopped at the end."""
    environment = os.environ | {
        "BELLWETHER_TOKEN": TOKEN,
        "BELLWETHER_API_URL": address,
        "BELLWETHER_DATABASE": str(folder / "rehearsal.db"),
        "BELLWETHER_CLOCK_URL": address,
        "BELLWETHER_PACE": "unlimited",
    }
    log = (folder / "bot.log").open("wb")
    serve = [sys.executable, "-m", "bot", "serve"]
    process = await asyncio.create_subprocess_exec(*serve, env=environment, cwd=folder, stderr=log)
    try:
        yield
    finally:
        if process.returncode is None:
            process.terminate()
        await process.wait()
        log.close()


@asynccontextmanager
async def room_at(address: str) -> AsyncIterator[Room]:
    stage = RemoteStage(address)
    yield Room(stage)
    await stage.close()


async def _play_and_print(room: Room) -> None:
    """Print while it happens. Raises what a player missed, or what the bot did that the platform doesn't know."""
    playing = asyncio.create_task(play(room))
    transcript, printed = Transcript(OSLO), 0
    while not playing.done():
        await asyncio.wait([playing], timeout=PAUSE_S)
        happened = await room.transcript(since=printed)
        printed += len(happened)
        for happening in happened:
            for line in transcript.lines_of(happening):
                typer.echo(line)
    await playing
    complaints = await room.complaints()
    if complaints:
        raise Defect(f"the stand-in doesn't know: {complaints}")


async def _interrupted() -> None:
    stop = asyncio.Event()
    for number in (signal.SIGINT, signal.SIGTERM):
        asyncio.get_running_loop().add_signal_handler(number, stop.set)
    await stop.wait()
