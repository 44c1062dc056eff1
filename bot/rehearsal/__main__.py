"""`python -m bot.rehearsal [PORT]`: the stand-in as a process of its own, until it is interrupted.

Prints its address, then serves. Its time runs at the real pace, until somebody moves it.
"""

import asyncio
import contextlib
import signal
import sys

from bot.rehearsal.clock import RehearsalClock
from bot.rehearsal.platform import Platform
from bot.rehearsal.server import serving


async def serve(port: int) -> None:
    interrupted = asyncio.Event()
    for number in (signal.SIGINT, signal.SIGTERM):
        asyncio.get_running_loop().add_signal_handler(number, interrupted.set)
    async with serving(Platform(RehearsalClock(runs=True)), port) as address:
        print(address, flush=True)
        await interrupted.wait()


if __name__ == "__main__":
    with contextlib.suppress(KeyboardInterrupt):
        asyncio.run(serve(int(sys.argv[1]) if len(sys.argv) > 1 else 0))
