"""What SQLAlchemy compiled is kept from test to test, as it is by a process of the bot."""

import asyncio
from typing import Any

from sqlalchemy.ext.asyncio import AsyncEngine, create_async_engine


class SharedEngines:
    """Opens engines that share the dialect, and with it what was compiled, of one that is there for that alone."""

    def __init__(self) -> None:
        self._first = create_async_engine("sqlite+aiosqlite://")
        asyncio.run(self._know_the_database())

    async def _know_the_database(self) -> None:
        async with self._first.connect():
            pass
        await self._first.dispose()

    def open(self, url: Any, **options: Any) -> AsyncEngine:
        opened = create_async_engine(url, **options)
        if opened.dialect.name == self._first.dialect.name:
            opened.sync_engine.dialect = self._first.dialect
            opened.sync_engine._compiled_cache = self._first.sync_engine._compiled_cache
        return opened
