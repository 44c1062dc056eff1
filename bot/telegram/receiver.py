"""Takes updates from the platform and keeps them before the platform may forget them."""

import logging
from asyncio import FIRST_COMPLETED, CancelledError, Task, create_task, current_task, sleep, wait
from collections.abc import Awaitable, Callable, Mapping, Sequence
from datetime import timedelta
from random import random
from typing import Any

from telegram import Bot
from telegram.error import Conflict, InvalidToken, RetryAfter, TelegramError

from bot.delivery.backoff import PLATFORM_AWAY
from bot.delivery.bells import Bells
from bot.delivery.clock import Clock
from bot.pulse import Pulse
from bot.telegram.api import call
from core.desk.post_office import Store

log = logging.getLogger(__name__)

RawUpdate = Mapping[str, Any]

# The platform leaves some kinds out unless they are asked for by name.
ALLOWED_UPDATES = (
    "message",
    "edited_message",
    "callback_query",
    "my_chat_member",
    "chat_member",
)
_BEYOND_ALL_IDS = 2**63
# A line may be cut without a sign of it: so long nothing would be heard then, though the platform is there again.
_POLL_S = 20
# The connection may stay silent for the whole poll, and a little longer.
_READ_TIMEOUT_S = _POLL_S + 5.0


class Receiver:
    """Polls. `pause` (in real seconds, whatever the clock says) and `jitter` (0 to 1) serve failures."""

    def __init__(
        self,
        bot: Bot,
        store: Store,
        clock: Clock,
        bells: Bells,
        *,
        pulse: Pulse | None = None,
        pause: Callable[[float], Awaitable[object]] = sleep,
        jitter: Callable[[], float] = random,
    ) -> None:
        self._bot = bot
        self._store = store
        self._clock = clock
        self._bells = bells
        self._pulse = pulse or Pulse()
        self._pause = pause
        self._jitter = jitter
        self._backoff = PLATFORM_AWAY
        self._polling: Task[list[RawUpdate] | None] | None = None
        self._stopping = False

    async def run(self) -> None:
        """Poll until stopped."""
        offset: int | None = None
        while not self._stopping:
            updates = await self._poll_unless_stopped(offset)
            if updates is None:
                continue
            if updates:
                await self.receive(updates)
            # An offset confirms what was received, once. Kept any longer, it would hide all that comes when
            # the platform starts its numbers anew, as it does after a quiet week.
            offset = updates[-1]["update_id"] + 1 if updates else None

    def stop(self) -> None:
        """Break off the poll; what it may have brought is still unconfirmed and comes again."""
        self._stopping = True
        if self._polling is not None:
            self._polling.cancel()

    async def receive(self, updates: Sequence[RawUpdate]) -> None:
        """Keep raw updates, all or none; what is already known is left out. Kept when this returns."""
        now = self._clock.now()
        async with self._store.unit() as unit:
            await unit.inbox.store(
                [(update["update_id"], lane_of(update), update) for update in updates], now
            )
        self._bells.inbox.ring()

    async def _poll_unless_stopped(self, offset: int | None) -> list[RawUpdate] | None:
        """Return what the poll brings; None after a failure, a stop, or where it hung while the platform came back."""
        self._polling = create_task(self._poll(offset))
        back = create_task(self._bells.back.heard())
        try:
            await wait([self._polling, back], return_when=FIRST_COMPLETED)
            if not self._polling.done():
                self._polling.cancel()
            return await self._polling
        except CancelledError:
            if not _is_cancelled():
                return None
            raise
        finally:
            back.cancel()
            self._polling.cancel()

    async def _poll(self, offset: int | None) -> list[RawUpdate] | None:
        """Return the next updates, or None after a failure and a pause."""
        params: dict[str, Any] = {"timeout": _POLL_S, "allowed_updates": list(ALLOWED_UPDATES)}
        if offset is not None:
            params["offset"] = offset
        try:
            updates = await call(self._bot, "get_updates", params, _READ_TIMEOUT_S)
        except TelegramError as error:
            await self._wait_out(error)
            return None
        self._backoff = self._backoff.after_success()
        self._pulse.polled(self._clock.now())
        return list(updates)

    async def _wait_out(self, error: TelegramError) -> None:
        self._backoff = self._backoff.after_failure()
        wait_s = self._backoff.wait_s(self._jitter())
        if isinstance(error, RetryAfter):
            wait_s = max(wait_s, _seconds(error.retry_after))
        self._pulse.trouble = what_is_wrong(error)
        log.warning("no updates, next try in %.1f s: %s", wait_s, self._pulse.trouble)
        await self._pause(wait_s)


def what_is_wrong(error: TelegramError) -> str:
    """In words for whoever runs the bot."""
    if isinstance(error, Conflict):
        return "another process polls with the same token: stop it. What it takes is lost to this one."
    if isinstance(error, InvalidToken) or "unauthorized" in f"{error} {error.__cause__}".lower():
        return "the platform no longer takes BELLWETHER_TOKEN: it was revoked or changed. Start again with the new one."
    return f"the platform doesn't answer: {error}"


def lane_of(update: RawUpdate) -> int:
    """Return the lane in which an update keeps its place: its chat, else its user, else 0 for the rest."""
    content = next((value for key, value in update.items() if key != "update_id"), None)
    if not isinstance(content, Mapping):
        return 0
    message = content.get("message")
    within = message if isinstance(message, Mapping) else {}
    owners = (content.get("chat"), within.get("chat"), content.get("from"), content.get("user"))
    lanes = (owner.get("id") for owner in owners if isinstance(owner, Mapping))
    return next((lane for lane in lanes if isinstance(lane, int) and abs(lane) < _BEYOND_ALL_IDS), 0)


def _seconds(wait: float | timedelta) -> float:
    return wait.total_seconds() if isinstance(wait, timedelta) else wait


def _is_cancelled() -> bool:
    task = current_task()
    return task is not None and task.cancelling() > 0
