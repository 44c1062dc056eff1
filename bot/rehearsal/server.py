"""Transport over HTTP.

The Bot API under /bot<TOKEN>/<method>, its files under /file/bot<TOKEN>/<path>, the acts under /rehearsal/<act>,
and under / the room as a page.
"""

import asyncio
import json
import socket
from collections.abc import AsyncIterator, Iterator
from contextlib import asynccontextmanager, contextmanager
from typing import Any

import uvicorn
from starlette.applications import Starlette
from starlette.requests import Request
from starlette.responses import JSONResponse, Response
from starlette.routing import Route
from starlette.types import ASGIApp, Receive, Scope, Send

from bot.rehearsal.acts import act
from bot.rehearsal.answers import answer_to
from bot.rehearsal.chats import Json
from bot.rehearsal.downloads import FILE_PREFIX, download
from bot.rehearsal.errors import AnswerLost, Declined, NotPossible
from bot.rehearsal.platform import Platform
from bot.rehearsal.room import routes
from bot.rehearsal.stage import ACTS_PREFIX
from bot.rehearsal.wire import read_params

_BOT_PREFIX = "/bot"
_LONGEST_HOLD_S = 120.0


class Front:
    """The outermost ASGI app. Calls of bots come by the thousand, so they go around the framework."""

    def __init__(self, platform: Platform) -> None:
        self._platform = platform
        self._acts = _acts_app(platform)
        self._open: set[asyncio.Task[Any]] = set()

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        task = asyncio.current_task()
        assert task is not None, "a server answers in tasks"
        self._open.add(task)
        try:
            await self._answer(scope, receive, send)
        finally:
            self._open.discard(task)

    def hang_up(self) -> None:
        """Break off all calls, so that long polls don't keep the server from stopping."""
        for task in self._open:
            task.cancel()

    async def _answer(self, scope: Scope, receive: Receive, send: Send) -> None:
        path = scope["path"] if scope["type"] == "http" else ""
        if path.startswith(_BOT_PREFIX):
            await self._answer_bot(scope, receive, send)
        elif path.startswith(FILE_PREFIX):
            status, content = download(self._platform, path.removeprefix(FILE_PREFIX))
            await _send(send, status, content, b"application/octet-stream")
        else:
            await self._acts(scope, receive, send)

    async def _answer_bot(self, scope: Scope, receive: Receive, send: Send) -> None:
        token, _, method = scope["path"].removeprefix(_BOT_PREFIX).partition("/")
        body = await _body(receive)
        try:
            params = read_params(_content_type(scope), scope["query_string"], body)
            status, answer = await answer_to(self._platform, token, method, params)
        except Declined as declined:
            status, answer = (
                declined.code,
                {"ok": False, "error_code": 400, "description": declined.description},
            )
        except AnswerLost:
            await _hold(receive)
            return
        await _send_json(send, status, answer)


async def _body(receive: Receive) -> bytes:
    body = b""
    while True:
        message = await receive()
        body += bytes(message.get("body", b""))
        if not message.get("more_body"):
            return body


async def _hold(receive: Receive) -> None:
    """Keep the bot waiting until it gives up: so an answer is lost over a real connection."""
    async with asyncio.timeout(_LONGEST_HOLD_S):
        while (await receive())["type"] != "http.disconnect":
            pass


def _content_type(scope: Scope) -> str:
    for name, value in scope["headers"]:
        if name == b"content-type":
            return str(value, "latin-1")
    return ""


async def _send_json(send: Send, status: int, answer: Json) -> None:
    await _send(send, status, json.dumps(answer).encode(), b"application/json")


async def _send(send: Send, status: int, body: bytes, kind: bytes) -> None:
    headers = [(b"content-type", kind), (b"content-length", str(len(body)).encode())]
    await send({"type": "http.response.start", "status": status, "headers": headers})
    await send({"type": "http.response.body", "body": body})


def _acts_app(platform: Platform) -> ASGIApp:
    async def do(request: Request) -> Response:
        # A page of another address can send anything but this kind without being asked first.
        if _content_type(request.scope).partition(";")[0] != "application/json":
            return Response("acts are told in JSON", 415)
        try:
            result = await act(platform, request.path_params["act"], await request.json())
        except NotPossible as refusal:
            return JSONResponse({"refusal": str(refusal)}, status_code=409)
        return JSONResponse({"result": result})

    return Starlette(routes=[Route(f"{ACTS_PREFIX}/{{act}}", do, methods=["POST"]), *routes(platform)])


class _Server(uvicorn.Server):
    """Leaves signals to the program that it runs in, and says when it is ready."""

    def __init__(self, config: uvicorn.Config) -> None:
        super().__init__(config)
        self.ready = asyncio.Event()

    @contextmanager
    def capture_signals(self) -> Iterator[None]:
        yield

    async def startup(self, sockets: list[socket.socket] | None = None) -> None:
        await super().startup(sockets)
        self.ready.set()


def _config(front: Front) -> uvicorn.Config:
    settings: dict[str, Any] = {"log_level": "critical", "access_log": False, "lifespan": "off"}
    return uvicorn.Config(front, timeout_graceful_shutdown=1, timeout_keep_alive=75, **settings)


def _listening(port: int) -> socket.socket:
    # The protocol is named on purpose: asyncio turns off Nagle's algorithm only then, and with it each answer
    # waits 40 ms for the client's delayed acknowledgement.
    listening = socket.socket(socket.AF_INET, socket.SOCK_STREAM, socket.IPPROTO_TCP)
    listening.setsockopt(socket.SOL_SOCKET, socket.SO_REUSEADDR, 1)
    listening.bind(("127.0.0.1", port))
    listening.listen()
    return listening


@asynccontextmanager
async def serving(platform: Platform, port: int = 0) -> AsyncIterator[str]:
    """Serve the platform on 127.0.0.1 and give its address, `http://127.0.0.1:PORT`. Port 0: any free one."""
    with _listening(port) as listening:
        front = Front(platform)
        server = _Server(_config(front))
        running = asyncio.create_task(server.serve(sockets=[listening]))
        await asyncio.wait([running, asyncio.create_task(server.ready.wait())], return_when="FIRST_COMPLETED")
        try:
            yield f"http://127.0.0.1:{listening.getsockname()[1]}"
        finally:
            server.should_exit = True
            front.hang_up()
            await running
