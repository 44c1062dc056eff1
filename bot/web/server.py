"""The web server of the bot, beside its loops in the same process."""

import contextlib
from collections.abc import Iterator

import uvicorn
from starlette.applications import Starlette


class WebServer(uvicorn.Server):
    """Leaves signals alone: the process ends as a whole, not the web server by itself."""

    @contextlib.contextmanager
    def capture_signals(self) -> Iterator[None]:
        yield


def make_server(app: Starlette, host: str, port: int) -> WebServer:
    config = uvicorn.Config(app, host=host, port=port, log_level="warning", access_log=False, lifespan="off")
    return WebServer(config)
