"""Faults on demand, in the room's words."""

from collections.abc import Callable
from typing import Any, Protocol

from bot.rehearsal.errors import Declined, Seeming
from bot.rehearsal.stage import Stage


class Addressed(Protocol):
    @property
    def id(self) -> int: ...


class Troubles:
    """Troubles for the next `times` calls of a method ("*": any but getUpdates), or those `to` a chat."""

    def __init__(self, stage: Stage) -> None:
        self._do: Callable[..., Any] = stage.do

    async def decline(
        self, method: str, answer: Declined, *, times: int = 1, to: Addressed | None = None
    ) -> None:
        """Answer with an error, such as `errors.too_many_requests(3)`."""
        error = {"code": answer.code, "description": answer.description, "parameters": answer.parameters}
        await self._do("decline", method=method, **error, times=times, chat_id=_id(to))

    async def lose_request(
        self,
        method: str,
        *,
        times: int = 1,
        to: Addressed | None = None,
        seeming: Seeming = "connect timeout",
    ) -> None:
        """Lose calls before they are accepted: nothing happened.

        Over HTTP the bot waits in vain until it gives up, unless the loss seems a bad gateway.
        """
        details = {"takes_effect": False, "seeming": seeming, "times": times, "chat_id": _id(to)}
        await self._do("lose", method=method, **details)

    async def lose_answer(
        self, method: str, *, times: int = 1, to: Addressed | None = None, seeming: Seeming = "read timeout"
    ) -> None:
        """Let calls take effect and lose their answers."""
        details = {"takes_effect": True, "seeming": seeming, "times": times, "chat_id": _id(to)}
        await self._do("lose", method=method, **details)

    async def pending(self) -> int:
        """Return how many calls are still to be troubled."""
        found: int = await self._do("faults_pending")
        return found

    async def enforce_rates(self, *, on: bool = True) -> None:
        """Count what the bot sends and answer 429 beyond the platform's limits."""
        await self._do("enforce_rates", on=on)


def _id(chat: Addressed | None) -> int | None:
    return chat.id if chat else None
