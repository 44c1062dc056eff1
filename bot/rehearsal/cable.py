"""The bot's way to the stand-in, which can be cut: then nobody answers it, as without a network."""

import asyncio
import contextlib

_PIECE = 65_536


class Cable:
    """A relay on a port of its own. Cut: every call under way breaks off, and no new one gets through."""

    def __init__(self, port: int) -> None:
        self._there = port
        self._port = 0
        self._server: asyncio.Server | None = None
        self._ends: set[asyncio.StreamWriter] = set()

    @property
    def is_whole(self) -> bool:
        return self._server is not None

    @property
    def address(self) -> str:
        """`http://127.0.0.1:PORT`, the same before and after a cut."""
        return f"http://127.0.0.1:{self._port}"

    async def mend(self) -> None:
        if self._server is None:
            self._server = await asyncio.start_server(self._carry, "127.0.0.1", self._port)
            self._port = self._server.sockets[0].getsockname()[1]

    def cut(self) -> None:
        if self._server is None:
            return
        self._server.close()
        self._server = None
        for end in self._ends:
            end.transport.abort()

    async def _carry(self, reader: asyncio.StreamReader, writer: asyncio.StreamWriter) -> None:
        there, back = await asyncio.open_connection("127.0.0.1", self._there)
        ends = {writer, back}
        self._ends |= ends
        try:
            await asyncio.gather(_copy(reader, back), _copy(there, writer))
        finally:
            self._ends -= ends


async def _copy(reader: asyncio.StreamReader, writer: asyncio.StreamWriter) -> None:
    with contextlib.suppress(ConnectionError):
        while piece := await reader.read(_PIECE):
            writer.write(piece)
            await writer.drain()
    writer.close()
