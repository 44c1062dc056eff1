"""The line between the bot and the platform: a relay that can be cut in the ways in which lines are."""

import asyncio
from collections.abc import AsyncIterator
from contextlib import asynccontextmanager
from typing import Literal
from urllib.parse import urlsplit

State = Literal["up", "drops", "hangs", "fails", "refuses"]

_FAILS = (
    b"HTTP/1.1 502 Bad Gateway\r\nContent-Type: text/html\r\nContent-Length: 16\r\n\r\n<h1>Sorry</h1>\r\n"
)


class Line:
    """Relays bytes while it is up. `drops`: connections break at once. `hangs`: nothing passes, nothing breaks.

    `fails`: every request is answered with 502. `refuses`: nobody listens.
    """

    def __init__(self, platform: str) -> None:
        there = urlsplit(platform)
        self._there = (there.hostname, there.port)
        self._state: State = "up"
        self._server: asyncio.Server | None = None
        self._open: set[asyncio.StreamWriter] = set()
        self.port = 0

    async def becomes(self, state: State) -> None:
        self._state = state
        if state != "hangs":
            for writer in list(self._open):
                writer.transport.abort()
        if state == "refuses":
            await self.close()
        elif self._server is None:
            await self.open()

    async def open(self) -> None:
        self._server = await asyncio.start_server(self._relay, "127.0.0.1", self.port)
        self.port = self._server.sockets[0].getsockname()[1]

    async def close(self) -> None:
        if self._server is not None:
            self._server.close()
            self._server = None

    async def _relay(self, reader: asyncio.StreamReader, writer: asyncio.StreamWriter) -> None:
        self._open.add(writer)
        try:
            if self._state == "drops":
                return
            if self._state == "fails":
                await self._fail(reader, writer)
                return
            there = await asyncio.open_connection(*self._there)
            self._open.add(there[1])
            await asyncio.gather(self._pass(reader, there[1]), self._pass(there[0], writer))
        except OSError:
            pass
        finally:
            writer.transport.abort()
            self._open.discard(writer)

    async def _pass(self, reader: asyncio.StreamReader, writer: asyncio.StreamWriter) -> None:
        try:
            while data := await reader.read(65536):
                if self._state == "hangs":
                    continue  # lost: neither does it arrive late, nor does anybody say so
                writer.write(data)
                await writer.drain()
        finally:
            writer.transport.abort()
            self._open.discard(writer)

    async def _fail(self, reader: asyncio.StreamReader, writer: asyncio.StreamWriter) -> None:
        while (await reader.read(65536)) and self._state == "fails":
            writer.write(_FAILS)
            await writer.drain()


@asynccontextmanager
async def line_to(platform: str) -> AsyncIterator[Line]:
    """A line that is up, to the platform at this address."""
    found = Line(platform)
    await found.open()
    try:
        yield found
    finally:
        await found.becomes("drops")
        await found.close()
