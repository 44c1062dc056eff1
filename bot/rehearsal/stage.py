"""The stage, a port: all that people, time and troubles do to the platform, in this process or another."""

from typing import Any, Protocol

import httpx

from bot.rehearsal.acts import LONGEST_WAIT_S, act
from bot.rehearsal.errors import NotPossible
from bot.rehearsal.platform import Platform

ACTS_PREFIX = "/rehearsal"


class Stage(Protocol):
    async def do(self, name: str, /, **details: Any) -> Any:
        """Do the act of that name (`acts.py` lists them) with JSON details and return its JSON result.

        Raises NotPossible.
        """
        ...


class LocalStage:
    """The stage of a platform in this process."""

    def __init__(self, platform: Platform) -> None:
        self.platform = platform

    async def do(self, name: str, /, **details: Any) -> Any:
        return await act(self.platform, name, details)


class RemoteStage:
    """The stage of a stand-in server at `address` (`http://127.0.0.1:PORT`). Close it after use."""

    def __init__(self, address: str) -> None:
        limits = httpx.Limits(max_connections=None)
        self._client = httpx.AsyncClient(
            base_url=address, timeout=LONGEST_WAIT_S + 15, limits=limits, trust_env=False
        )

    async def do(self, name: str, /, **details: Any) -> Any:
        response = await self._client.post(f"{ACTS_PREFIX}/{name}", json=details)
        if response.status_code == httpx.codes.CONFLICT:
            raise NotPossible(response.json()["refusal"])
        response.raise_for_status()
        return response.json()["result"]

    async def close(self) -> None:
        await self._client.aclose()
