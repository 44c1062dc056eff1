"""Chats that can be listened to, in the user's voice."""

from collections.abc import Coroutine
from typing import Any, Protocol

from bot.rehearsal.listening import PATIENCE_S, Listener
from bot.rehearsal.seen import SeenMessage
from bot.rehearsal.stage import Stage


class Someone(Protocol):
    @property
    def id(self) -> int: ...


class Place:
    """A chat that can be listened to: a group, or somebody's private chat with the bot.

    Properties are awaited: `(await ilse.last_message).text`.
    """

    def __init__(self, stage: Stage, name: str, chat_id: int) -> None:
        self.name = name
        self.id = chat_id
        self._stage = stage
        self._listener = Listener(stage, chat_id, name)

    async def hears(self, fragment: str, within: float = PATIENCE_S) -> SeenMessage:
        """Return the bot's next message or edit here, since the last `hears`, with `fragment` in its text.

        Raises AssertionError with the last messages after `within` real seconds.
        """
        return await self._listener.hears(fragment, within)

    async def hears_nothing(self, for_: float = 0.3) -> None:
        """Raise AssertionError if the bot says anything more here within `for_` real seconds."""
        await self._listener.hears_nothing(for_)

    @property
    def messages(self) -> Coroutine[Any, Any, list[SeenMessage]]:
        """All messages here as they are now, oldest first, everybody's."""
        return self._listener.messages()

    @property
    def pinned(self) -> Coroutine[Any, Any, list[int]]:
        """The ids of what is pinned here, the latest last."""
        return self._stage.do("pinned", chat=self.id)

    @property
    def last_message(self) -> Coroutine[Any, Any, SeenMessage]:
        """The bot's newest message here, as it is now. Raises NotPossible if there is none."""
        return self._listener.last_message()


class Group(Place):
    async def becomes_supergroup(self, by: "Someone") -> None:
        """Upgrade the group, as an admin may; `id` changes."""
        self.id = await self._stage.do("upgrade_group", person=by.id, chat=self.id)
