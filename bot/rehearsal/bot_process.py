"""The real `bellwether serve` as a process of its own, to be killed and started again."""

import asyncio
import os
import sys
from collections.abc import Callable
from pathlib import Path

from bot.rehearsal.platform import TOKEN


class BotProcess:
    """`calls`: the address that it calls the stand-in by; `clock`: the one whose time it follows."""

    def __init__(self, folder: Path, calls: str, clock: str) -> None:
        self.database = folder / "rehearsal.db"
        self._folder = folder
        self._log = folder / "bot.log"
        self._environment = os.environ | {
            "BELLWETHER_TOKEN": TOKEN,
            "BELLWETHER_API_URL": calls,
            "BELLWETHER_DATABASE": str(self.database),
            "BELLWETHER_CLOCK_URL": clock,
            "BELLWETHER_PACE": "unlimited",
        }
        self._process: asyncio.subprocess.Process | None = None

    @property
    def last_words(self) -> str:
        """The last line that it wrote to its log."""
        lines = self._log.read_text(errors="replace").splitlines() if self._log.exists() else []
        return lines[-1] if lines else "it wrote nothing"

    @property
    def is_alive(self) -> bool:
        return self._process is not None and self._process.returncode is None

    async def start(self) -> None:
        if self.is_alive:
            return
        with self._log.open("ab") as log:
            self._process = await asyncio.create_subprocess_exec(
                sys.executable, "-m", "bot", "serve", env=self._environment, cwd=self._folder, stderr=log
            )

    async def kill(self) -> None:
        """End it at once, in whatever it is doing, as a power cut would."""
        await self._end(lambda process: process.kill())

    async def stop(self) -> None:
        """Ask it to end, and wait until it did."""
        await self._end(lambda process: process.terminate())

    async def _end(self, how: Callable[[asyncio.subprocess.Process], None]) -> None:
        if self._process is not None and self.is_alive:
            how(self._process)
            await self._process.wait()
