"""How calls travel: the library's requests over aiohttp, in a fraction of the time of its own client.

It never sends a request twice by itself, and says of each failure whether the request may have left.
"""

import json
from typing import Any

import aiohttp
from telegram.error import NetworkError, TelegramError, TimedOut
from telegram.request import BaseRequest, RequestData

# With one of these as the cause, nothing was sent.
NEVER_LEFT = (aiohttp.ClientConnectorError, aiohttp.ConnectionTimeoutError)

_CONNECT_TIMEOUT_S = 5.0
_UPLOAD_S = 60.0


class Transport(BaseRequest):
    """One pool of connections. `read_timeout` is how long an answer may take, in seconds."""

    def __init__(self, read_timeout: float, connections: int = 100) -> None:
        self._read_timeout = read_timeout
        self._connections = connections
        self._session: aiohttp.ClientSession | None = None

    @property
    def read_timeout(self) -> float:
        return self._read_timeout

    async def initialize(self) -> None:
        if self._session is None:
            connector = aiohttp.TCPConnector(limit=self._connections)
            headers = {"User-Agent": self.USER_AGENT}
            self._session = aiohttp.ClientSession(connector=connector, headers=headers, trust_env=True)

    async def shutdown(self) -> None:
        session, self._session = self._session, None
        if session is not None:
            await session.close()

    @staticmethod
    def parse_json_payload(payload: bytes) -> dict[str, Any]:
        """Read an answer. Raises TelegramError for one that isn't the platform's own, as a gateway's page isn't.

        The library logs a traceback for each of these: some every second while the platform is away.
        """
        try:
            found: dict[str, Any] = json.loads(payload.decode(errors="replace"))
        except ValueError as error:
            raise TelegramError("the answer is not the platform's own") from error
        return found

    async def do_request(
        self,
        url: str,
        method: str,
        request_data: RequestData | None = None,
        read_timeout: object = None,
        write_timeout: object = None,
        connect_timeout: object = None,
        pool_timeout: object = None,
    ) -> tuple[int, bytes]:
        """Send one request. Raises TimedOut or NetworkError, caused by the client's own error."""
        if self._session is None:
            raise RuntimeError("the transport is not open")
        answer_s = _or(read_timeout, self._read_timeout)
        connect_s = _or(connect_timeout, _CONNECT_TIMEOUT_S) + _or(pool_timeout, 0.0)
        timeout = aiohttp.ClientTimeout(
            connect=connect_s,
            sock_read=answer_s,
            total=connect_s + _or(write_timeout, _UPLOAD_S) + answer_s,
        )
        try:
            async with self._session.request(
                method, url, data=_body(request_data), timeout=timeout
            ) as response:
                return response.status, await response.read()
        except TimeoutError as error:
            raise TimedOut from error
        except aiohttp.ClientError as error:
            raise NetworkError(f"{type(error).__name__}: {error}") from error


def _or(timeout: object, default: float) -> float:
    # The library passes a marker of its own where the caller named no timeout.
    return float(timeout) if isinstance(timeout, int | float) else default


def _body(request_data: RequestData | None) -> aiohttp.FormData | dict[str, str] | None:
    if request_data is None:
        return None
    if not request_data.contains_files:
        return request_data.json_parameters
    form = aiohttp.FormData(request_data.json_parameters)
    for name, (filename, content, kind) in (request_data.multipart_data or {}).items():
        form.add_field(name, content, filename=filename, content_type=kind)
    return form
