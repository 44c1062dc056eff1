"""What happened, in order, for those who watch: a list that can be waited for."""

import asyncio
import contextlib
from dataclasses import dataclass
from datetime import datetime
from typing import TYPE_CHECKING, Literal

if TYPE_CHECKING:
    from bot.rehearsal.chats import Content, Message

EntryKind = Literal["message", "edit", "delete", "press", "toast", "reaction"]


@dataclass(frozen=True, slots=True)
class Entry:
    """A happening. `content`: the message as it was then; `detail`: a pressed label, a toast, a reaction.

    `person`: the user id of who did it, of a toast of who is shown it.
    """

    kind: EntryKind
    at: datetime
    person: int
    who: str
    from_bot: bool
    message: "Message"
    content: "Content"
    detail: str = ""
    url: str | None = None


class Diary:
    """Entries in order. Reading is by index, so every reader keeps its own place."""

    __slots__ = ("_changed", "entries")

    def __init__(self) -> None:
        self.entries: list[Entry] = []
        self._changed: asyncio.Event | None = None

    def add(self, entry: Entry) -> None:
        self.entries.append(entry)
        if self._changed is not None:
            self._changed.set()
            self._changed = None

    async def wait_beyond(self, place: int, within: float) -> None:
        """Return as soon as there is an entry at index `place`, at the latest after `within` real seconds."""
        if len(self.entries) > place:
            return
        self._changed = self._changed or asyncio.Event()
        with contextlib.suppress(TimeoutError):
            async with asyncio.timeout(within):
                await self._changed.wait()
