"""Who may write when: one at a time, in the order in which they came, but for those who can't wait."""

from asyncio import CancelledError, Future, get_running_loop
from collections import deque
from collections.abc import AsyncIterator
from contextlib import asynccontextmanager


class Turns:
    """Like a lock, with a second queue that goes first."""

    def __init__(self) -> None:
        self._taken = False
        self._waiting: deque[Future[None]] = deque()
        self._urgent: deque[Future[None]] = deque()

    @asynccontextmanager
    async def turn(self, *, urgent: bool = False) -> AsyncIterator[None]:
        """Return when it is one's turn; it ends with the block."""
        await self._take(self._urgent if urgent else self._waiting)
        try:
            yield
        finally:
            self._pass_on()

    async def _take(self, queue: deque[Future[None]]) -> None:
        if not self._taken:
            self._taken = True
            return
        mine: Future[None] = get_running_loop().create_future()
        queue.append(mine)
        try:
            await mine
        except CancelledError:
            # It may have been handed over in the very moment in which its owner gave up.
            if mine.done() and not mine.cancelled():
                self._pass_on()
            raise

    def _pass_on(self) -> None:
        for queue in (self._urgent, self._waiting):
            while queue:
                following = queue.popleft()
                if not following.done():
                    following.set_result(None)
                    return
        self._taken = False
