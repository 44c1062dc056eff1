"""How soon everybody has their answer after the platform was away: `python -m tests.soak.outage [SECONDS [CUT...]]`.

The real process over HTTP, on the real clock, with the platform's limits on. Fifty people write just before the line is
cut, another fifty while it is; an answer is late by the time from the line's return to its arrival.
"""

import asyncio
import os
import sys
import tempfile
import time
from collections.abc import AsyncIterator
from contextlib import asynccontextmanager
from pathlib import Path

from bot.rehearsal.platform import TOKEN, Platform
from bot.rehearsal.server import serving
from bot.rehearsal.voice import Person, Room
from tests.soak.line import Line, State, line_to
from tests.support.durable import Tables

PEOPLE = 50
CUTS: tuple[State, ...] = ("fails", "drops", "refuses", "hangs")
_PATIENCE_S = 90.0


class Answers:
    """When each person's answer arrived, in seconds of this machine; the first of each counts."""

    def __init__(self, platform: Platform) -> None:
        self.at: dict[int, float] = {}
        self.number = 0
        self._call = platform.call
        platform.call = self._watch  # type: ignore[method-assign]

    def forget(self) -> None:
        self.at.clear()
        self.number = 0

    async def _watch(self, token: str, method: str, params: dict[str, object]) -> object:
        result = await self._call(token, method, params)
        if method.lower() == "sendmessage":
            self.at.setdefault(int(str(params["chat_id"])), time.monotonic())
            self.number += 1
        return result


@asynccontextmanager
async def bot_at(line: Line, database: Path) -> AsyncIterator[None]:
    environment = os.environ | {
        "BELLWETHER_TOKEN": TOKEN,
        "BELLWETHER_API_URL": f"http://127.0.0.1:{line.port}",
        "BELLWETHER_DATABASE": str(database),
    }
    serve = [sys.executable, "-m", "bot", "serve"]
    with (database.parent / "bot.log").open("wb") as log:
        process = await asyncio.create_subprocess_exec(*serve, env=environment, stderr=log)
    try:
        yield
    finally:
        process.terminate()
        await process.wait()


async def everybody_says(people: list[Person], text: str) -> None:
    for person in people:
        await person.says(text)


async def until(answers: Answers, number: int) -> None:
    end = time.monotonic() + _PATIENCE_S
    while len(answers.at) < number and time.monotonic() < end:  # noqa: ASYNC110 - nothing tells of it
        await asyncio.sleep(0.02)


async def outage(
    line: Line, cut: State, seconds: float, people: list[Person], answers: Answers
) -> list[float]:
    """How late each answer was after the line's return; those that were in time are 0, those that never came inf."""
    answers.forget()
    before, during = people[:PEOPLE], people[PEOPLE:]
    await everybody_says(before, "/help")
    await asyncio.sleep(0.3)
    await line.becomes(cut)
    gone_at = time.monotonic()
    await everybody_says(during, "/help")
    await asyncio.sleep(max(0.0, gone_at + seconds - time.monotonic()))
    await line.becomes("up")
    back_at = time.monotonic()
    await until(answers, len(people))
    return sorted(max(0.0, answers.at.get(one.id, float("inf")) - back_at) for one in people)


def told(cut: State, late: list[float], repeated: int) -> str:
    at = {share: late[round(share / 100 * len(late)) - 1] for share in (50, 95, 100)}
    soon = 100 * sum(1 for one in late if one <= 5) / len(late)
    spread = ", ".join(f"{share} % within {value:.1f} s" for share, value in at.items())
    return f"{cut:8} {soon:5.1f} % within 5 s; {spread}; {repeated} said twice"


async def measured(seconds: float, cuts: tuple[State, ...]) -> None:
    platform = Platform()
    platform.clock.let_run()
    platform.rates.enforced = True
    answers = Answers(platform)
    room = Room.of(platform)
    people = [await room.person(f"Athlete {number}") for number in range(2 * PEOPLE)]
    async with serving(platform) as address, line_to(address) as line:
        with tempfile.TemporaryDirectory() as folder:
            database = Path(folder) / "bot.db"
            async with bot_at(line, database):
                for one in people:
                    await one.opens(await room.start_link())
                await until(answers, len(people))
                for cut in cuts:
                    await asyncio.sleep(4)
                    late = await outage(line, cut, seconds, people, answers)
                    await asyncio.sleep(1)
                    sys.stdout.write(f"{told(cut, late, answers.number - len(people))}\n")
                    sys.stdout.flush()
            states = set(Tables(database).states("outbox"))
            sys.stdout.write(f"letters: {', '.join(sorted(states))}\n")


if __name__ == "__main__":
    away_s = float(sys.argv[1]) if len(sys.argv) > 1 else 10.0
    named: dict[str, State] = {one: one for one in CUTS}
    chosen = tuple(named[one] for one in sys.argv[2:]) or CUTS
    asyncio.run(measured(away_s, chosen))
