"""The durable middle for tests: a fresh database file, the bot, and short ways to say what is in it."""

import asyncio
import shutil
import sqlite3
from collections.abc import AsyncIterator
from pathlib import Path
from typing import Any

import pytest
import pytest_asyncio
from telegram import Bot

from bot.delivery.bells import Bells
from bot.rehearsal.platform import Platform
from core.store.records import Chat, NewLetter, Purpose
from core.store.unit import Store
from tests.transports import in_process_bot


class Tables:
    """Looks into the database file past the program, as it was last committed."""

    def __init__(self, path: Path) -> None:
        self.path = path

    def rows(self, query: str) -> list[tuple[Any, ...]]:
        connection = sqlite3.connect(self.path)
        try:
            return connection.execute(query).fetchall()
        finally:
            connection.close()

    def column(self, query: str) -> list[Any]:
        return [row[0] for row in self.rows(query)]

    def states(self, table: str) -> list[str]:
        return self.column(f"SELECT state FROM {table} ORDER BY id")  # noqa: S608 - a table's name


@pytest_asyncio.fixture
async def tables(tmp_path: Path, migrated: Path) -> Tables:
    path = tmp_path / "bellwether.db"
    shutil.copy(migrated, path)
    return Tables(path)


@pytest_asyncio.fixture
async def store(tables: Tables) -> AsyncIterator[Store]:
    async with Store(tables.path) as found:
        yield found


@pytest_asyncio.fixture
async def bot(platform: Platform) -> AsyncIterator[Bot]:
    async with in_process_bot(platform) as found:
        yield found


@pytest.fixture
def bells() -> Bells:
    return Bells()


class Post:
    """Puts letters into the outbox. Each chat is known by its address."""

    def __init__(self, store: Store, platform: Platform, bells: Bells) -> None:
        self._store = store
        self._platform = platform
        self._bells = bells
        self._number = 0

    async def chat(self, address: int) -> Chat:
        async with self._store.unit() as unit:
            return await unit.chats.group_chat(address)

    async def letter(self, address: int, text: str = "hello", **details) -> int:
        """Add a letter and return its id."""
        chat = await self.chat(address)
        self._number += 1
        common: dict[str, Any] = {
            "chat_id": chat.id,
            "purpose": Purpose.ANSWER,
            "method": "send_message",
            "payload": {"text": text},
            "key": f"letter {self._number}",
        }
        letter = NewLetter(**(common | details))
        async with self._store.unit() as unit:
            ids = await unit.outbox.add([letter], self._platform.clock.now())
        self._bells.outbox.ring()
        return ids[letter.key]


@pytest.fixture
def post(store: Store, platform: Platform, bells: Bells) -> Post:
    return Post(store, platform, bells)


async def eventually(condition, within: float = 10.0) -> None:
    """Return once `condition()` is true. Raises AssertionError after `within` real seconds."""
    loop = asyncio.get_running_loop()
    end = loop.time() + within
    while not condition():
        assert loop.time() < end, "it never happened"
        await asyncio.sleep(0.01)
