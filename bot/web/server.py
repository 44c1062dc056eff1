"""The web server of the bot, beside its loops in the same process."""

import contextlib
import socket
from collections.abc import Iterator

import uvicorn
from starlette.applications import Starlette


class _Server(uvicorn.Server):
    """Leaves signals alone: the process ends as a whole, not its web server by itself."""

    @contextlib.contextmanager
    def capture_signals(self) -> Iterator[None]:
        yield


class WebServer:
    """Serves an app at an address. Raises OSError at once if the address can't be had."""

    def __init__(self, app: Starlette, host: str, port: int) -> None:
        family = socket.AF_INET6 if ":" in host else socket.AF_INET
        self._socket = socket.create_server((host, port), family=family)
        config = uvicorn.Config(
            app, log_level="warning", access_log=False, lifespan="off", timeout_graceful_shutdown=2
        )
        self._server = _Server(config)

    @property
    def port(self) -> int:
        return int(self._socket.getsockname()[1])

    async def run(self) -> None:
        await self._server.serve(sockets=[self._socket])

    def stop(self) -> None:
        self._server.should_exit = True
