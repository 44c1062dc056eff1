"""The loops that make up the running bot, watched together."""

import asyncio
from typing import Protocol

from core.errors import Defect


class Loop(Protocol):
    """Part of the bot that runs until it is stopped, and then finishes what it began."""

    async def run(self) -> None: ...

    def stop(self) -> None: ...


class Loops:
    def __init__(self) -> None:
        self._tasks: dict[asyncio.Task[None], Loop] = {}

    def start(self, loop: Loop) -> None:
        self._tasks[asyncio.create_task(loop.run(), name=type(loop).__name__)] = loop

    def ended(self) -> list[str]:
        """Return the names of those that run no more."""
        return [task.get_name() for task in self._tasks if task.done()]

    async def watch(self) -> None:
        """Raise what ends a loop before its time, at least a Defect: half a bot is worse than none."""
        done, _ = await asyncio.wait(self._tasks, return_when=asyncio.FIRST_COMPLETED)
        for task in done:
            task.result()
            raise Defect(f"{task.get_name()} ended by itself")

    async def stop(self) -> None:
        """Let all of them finish what they began. Never raises."""
        for loop in self._tasks.values():
            loop.stop()
        await asyncio.gather(*self._tasks, return_exceptions=True)
