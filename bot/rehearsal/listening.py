"""Listening: each listener keeps its own place in what happens in a chat, or in the answers to presses."""

import asyncio
from collections.abc import Callable
from typing import Any

from bot.rehearsal.errors import NotPossible
from bot.rehearsal.seen import SeenMessage
from bot.rehearsal.stage import Stage

# Costs nothing where the answer comes; a machine with all cores busy needs it.
PATIENCE_S = 20.0
_SHOWN_ON_FAILURE = 6

Event = dict[str, Any]


class Thread:
    """A growing list of events that is read in order; `act` and `details` say which."""

    def __init__(self, stage: Stage, act: str, **details: Any) -> None:
        self._stage = stage
        self._act = act
        self._details = details
        self._place = 0

    async def _beyond(self, place: int, within: float) -> list[Event]:
        within = max(0.0, within)
        found: list[Event] = await self._stage.do(self._act, **self._details, place=place, within=within)
        return found

    async def next(self, is_it: Callable[[Event], bool], within: float) -> Event | None:
        """Return the next event that is it, passing others by; None after `within` real seconds."""
        deadline = asyncio.get_running_loop().time() + within
        ahead = self._place
        while True:
            left = deadline - asyncio.get_running_loop().time()
            for event in await self._beyond(ahead, left):
                ahead += 1
                if is_it(event):
                    self._place = ahead
                    return event
            if left <= 0:
                return None


def _is_speech(event: Event) -> bool:
    return event["from_bot"] and event["kind"] in ("message", "edit")


class Listener:
    """Hears what the bot says, or edits, in one chat."""

    def __init__(self, stage: Stage, chat_id: int, label: str) -> None:
        self._stage = stage
        self._chat_id = chat_id
        self._label = label
        self._thread = Thread(stage, "events", chat=chat_id)

    async def hears(self, fragment: str, within: float) -> SeenMessage:
        """Return the next message or edit with `fragment` in its text. Raises AssertionError."""
        found = await self._thread.next(
            lambda event: _is_speech(event) and fragment in event["message"]["text"], within
        )
        if found is None:
            raise AssertionError(
                f"{self._label} didn't hear {fragment!r} within {within} s; {await self._last_words()}"
            )
        return SeenMessage.of(found["message"])

    async def hears_nothing(self, for_: float) -> None:
        """Raise AssertionError if the bot says anything beyond what was heard, within `for_` real seconds."""
        found = await self._thread.next(_is_speech, for_)
        if found is not None:
            raise AssertionError(
                f"{self._label} heard, against expectation: {SeenMessage.of(found['message'])}"
            )

    async def messages(self) -> list[SeenMessage]:
        return [SeenMessage.of(told) for told in await self._stage.do("messages", chat=self._chat_id)]

    async def last_message(self) -> SeenMessage:
        said = [message for message in await self.messages() if message.from_bot]
        if not said:
            raise NotPossible(f"the bot has said nothing to {self._label}")
        return said[-1]

    async def _last_words(self) -> str:
        last = (await self.messages())[-_SHOWN_ON_FAILURE:]
        return "the last messages there:\n" + "\n".join(map(str, last)) if last else "nothing was said there"
