"""Transport without a network: the library's requests, handed straight to the platform."""

import json
from typing import IO, Any
from urllib.parse import unquote

import httpx
from telegram.error import NetworkError, TelegramError, TimedOut
from telegram.request import BaseRequest, RequestData

from bot.rehearsal.answers import answer_to
from bot.rehearsal.downloads import FILE_PREFIX, download
from bot.rehearsal.errors import AnswerLost
from bot.rehearsal.files import Upload
from bot.rehearsal.platform import Platform

_ADDRESS = "http://rehearsal.invalid"
BASE_URL = f"{_ADDRESS}/bot"
BASE_FILE_URL = f"{_ADDRESS}{FILE_PREFIX}"

_LOSSES: dict[str, type[httpx.TransportError]] = {
    "connect error": httpx.ConnectError,
    "connect timeout": httpx.ConnectTimeout,
    "pool timeout": httpx.PoolTimeout,
    "read timeout": httpx.ReadTimeout,
}


class InProcessRequest(BaseRequest):
    """Give it to `telegram.Bot(token, BASE_URL, BASE_FILE_URL, request=..., get_updates_request=...)`."""

    def __init__(self, platform: Platform) -> None:
        self._platform = platform

    @property
    def read_timeout(self) -> float | None:
        return None

    async def initialize(self) -> None:
        pass

    async def shutdown(self) -> None:
        pass

    async def do_request(
        self,
        url: str,
        method: str,  # noqa: ARG002 - the platform takes GET and POST alike
        request_data: RequestData | None = None,
        *_timeouts: object,
        **_named_timeouts: object,
    ) -> tuple[int, bytes]:
        if url.startswith(BASE_FILE_URL):
            return download(self._platform, unquote(url.removeprefix(BASE_FILE_URL)))
        token, name = url.removeprefix(BASE_URL).rsplit("/", 1)
        try:
            status, answer = await answer_to(self._platform, token, name, _params(request_data))
        except AnswerLost as lost:
            raise _as_the_library_sees(lost) from _LOSSES[lost.seeming](lost.seeming)
        return status, json.dumps(answer).encode()


def _params(data: RequestData | None) -> dict[str, Any]:
    if data is None:
        return {}
    uploads = {name: Upload(file[0], _bytes(file[1])) for name, file in data.multipart_data.items()}
    return {**data.parameters, **uploads}


def _bytes(content: bytes | IO[bytes]) -> bytes:
    return content if isinstance(content, bytes) else content.read()


def _as_the_library_sees(lost: AnswerLost) -> TelegramError:
    if lost.seeming == "connect error":
        return NetworkError("httpx.ConnectError: All connection attempts failed")
    return TimedOut()
