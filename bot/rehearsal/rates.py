"""The platform's limits on how fast a bot may talk: the guide values, as the true ones are unpublished."""

from collections import defaultdict, deque
from datetime import UTC, datetime
from math import ceil

from telegram.constants import FloodLimit

from bot.delivery.clock import Clock
from bot.rehearsal.errors import too_many_requests

BURST_PER_CHAT = 3  # "short bursts" are tolerated; how short is unpublished: estimate


class Window:
    """At most `limit` calls in any `seconds`."""

    def __init__(self, limit: int, seconds: float) -> None:
        self.limit = limit
        self.seconds = seconds
        self._calls: deque[float] = deque()

    def wait_s(self, now: float) -> float:
        while self._calls and self._calls[0] <= now - self.seconds:
            self._calls.popleft()
        return self._calls[0] + self.seconds - now if len(self._calls) >= self.limit else 0.0

    def count(self, now: float) -> None:
        self._calls.append(now)


class RateLimits:
    """Counts what a bot sends, once `enforced`; or is used up for a while."""

    def __init__(self, clock: Clock) -> None:
        self.enforced = False
        self._clock = clock
        self._used_up_until = 0.0
        self._bots: dict[int, Window] = defaultdict(lambda: Window(FloodLimit.MESSAGES_PER_SECOND, 1))
        self._chats: dict[int, Window] = defaultdict(
            lambda: Window(BURST_PER_CHAT, BURST_PER_CHAT / FloodLimit.MESSAGES_PER_SECOND_PER_CHAT)
        )
        self._groups: dict[int, Window] = defaultdict(
            lambda: Window(FloodLimit.MESSAGES_PER_MINUTE_PER_GROUP, 60)
        )

    def use_up(self, seconds: float) -> None:
        """Decline every send from now on, as if all that may be sent in this time had been."""
        self._used_up_until = self._clock.monotonic() + seconds

    @property
    def used_up_until(self) -> datetime | None:
        """When sends are taken again; None if they are now."""
        is_over = self._clock.monotonic() >= self._used_up_until
        return None if is_over else datetime.fromtimestamp(self._used_up_until, UTC)

    def check(self, bot_id: int, chat_id: int) -> None:
        """Count one send of a bot to a chat. Raises Declined (429) with the whole seconds to wait."""
        now = self._clock.monotonic()
        if now < self._used_up_until:
            raise too_many_requests(ceil(self._used_up_until - now))
        if not self.enforced:
            return
        windows = [self._bots[bot_id], self._chats[chat_id]]
        if chat_id < 0:
            windows.append(self._groups[chat_id])
        wait_s = max(window.wait_s(now) for window in windows)
        if wait_s > 0:
            raise too_many_requests(max(1, ceil(wait_s)))
        for window in windows:
            window.count(now)
