"""Updates handled per second: ours (stored, answered, committed) beside a bare echo bot of the same library.

Both run as processes over the same stand-in, over HTTP, in turns; the best of a few rounds counts, since
other work on the machine only slows down. Counted from the first answer to the last: starting up is left out.
"""

import asyncio
import os
import sys
import time
from collections.abc import AsyncIterator
from contextlib import asynccontextmanager
from dataclasses import dataclass, field
from pathlib import Path
from tempfile import TemporaryDirectory

from bot.rehearsal.people import add_person, open_link, say
from bot.rehearsal.platform import TOKEN, USERNAME, Call, Platform
from bot.rehearsal.server import serving

_PEOPLE = 500
_LONGEST_S = 120
_ROUNDS = 3


@dataclass(slots=True)
class Answers:
    """Counts what a bot sends, and knows when all are there."""

    expected: int
    moments: list[float] = field(default_factory=list)
    complete: asyncio.Event = field(default_factory=asyncio.Event)

    def __call__(self, call: Call) -> None:
        if call.method == "sendMessage":
            self.moments.append(time.perf_counter())
            if len(self.moments) == self.expected:
                self.complete.set()

    @property
    def per_second(self) -> float:
        return (len(self.moments) - 1) / (self.moments[-1] - self.moments[0])


BARE = ("tests.benchmarks.bare_echo",)
OUR_ECHO = ("tests.support.echo",)
BELLWETHER = ("bot", "serve")


async def rate_of(command: tuple[str, ...], updates: int) -> float:
    """Flood the bot that `python -m COMMAND` runs, and return how many updates it answers a second."""
    platform = crowded_platform(updates)
    answers = Answers(len(platform.bot.updates))
    platform.on_call.append(answers)
    async with serving(platform) as address, running(command, address):
        async with asyncio.timeout(_LONGEST_S):
            await answers.complete.wait()
    return answers.per_second


def crowded_platform(updates: int) -> Platform:
    """A platform where many people have said `updates` things in turn, and nobody has listened yet."""
    platform = Platform()
    people = [add_person(platform, f"Athlete {number}", None, "en") for number in range(_PEOPLE)]
    for person in people:
        open_link(platform, person, f"https://t.me/{USERNAME}")
    platform.bot.updates.clear()
    for number in range(updates):
        person = people[number % _PEOPLE]
        say(platform, person, person, f"message {number}")
    return platform


@asynccontextmanager
async def running(command: tuple[str, ...], address: str) -> AsyncIterator[None]:
    """Run a bot as a process of its own, with a fresh database and no limit on its pace."""
    with TemporaryDirectory() as folder:
        settings = {
            "BELLWETHER_TOKEN": TOKEN,
            "BELLWETHER_API_URL": address,
            "BELLWETHER_DATABASE": str(Path(folder) / "bellwether.db"),
            "BELLWETHER_PACE": "unlimited",
        }
        process = await asyncio.create_subprocess_exec(
            sys.executable, "-W", "ignore", "-m", *command, env=os.environ | settings
        )
        try:
            yield
        finally:
            process.terminate()
            await process.wait()


async def table(updates: int) -> list[tuple[str, str]]:
    """Rows for the speed table."""
    best = dict.fromkeys((BARE, OUR_ECHO, BELLWETHER), 0.0)
    for _ in range(_ROUNDS):
        for command in best:
            best[command] = max(best[command], await rate_of(command, updates))
    return [
        ("updates a second, bare echo bot", f"{best[BARE]:.0f}"),
        ("the same echo, stored, answered, committed", f"{best[OUR_ECHO]:.0f}"),
        ("  ratio (to reach: 0.3, later 0.5)", f"{best[OUR_ECHO] / best[BARE]:.2f}"),
        ("the real bot, asked for nothing it knows", f"{best[BELLWETHER]:.0f}"),
        ("  ratio", f"{best[BELLWETHER] / best[BARE]:.2f}"),
    ]
