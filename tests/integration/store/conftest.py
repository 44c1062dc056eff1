"""The stores that have to keep the contract. A second database joins by a line in PLACES."""

import shutil
from collections.abc import AsyncIterator, Callable
from pathlib import Path

import pytest

from core.store.records import Chat, Group, Person
from core.store.tables import Row
from core.store.unit import Store
from tests.integration.store.builders import NOW

PLACES: dict[str, Callable[[Path], str]] = {
    "file": lambda folder: str(folder / "bellwether.db"),
    "memory": lambda _folder: ":memory:",
}


@pytest.fixture(params=PLACES)
async def store(request, tmp_path: Path, migrated: Path) -> AsyncIterator[Store]:
    place = PLACES[request.param](tmp_path)
    opened = Store(place)
    if place == ":memory:":
        # Its tables would be gone with the connection that a migration closes.
        async with opened.engine.begin() as connection:
            await connection.run_sync(Row.metadata.create_all)
    else:
        shutil.copy(migrated, place)
    yield opened
    await opened.close()


@pytest.fixture
async def ilse(store: Store) -> Person:
    async with store.unit() as unit:
        return await unit.people.meet(101, "Ilse", "en", NOW)


@pytest.fixture
async def coach(store: Store) -> Person:
    async with store.unit() as unit:
        return await unit.people.meet(102, "Bero", "en", NOW)


@pytest.fixture
async def private(store: Store, ilse: Person) -> Chat:
    async with store.unit() as unit:
        return await unit.chats.private_chat(ilse.id, 101)


@pytest.fixture
async def group_chat(store: Store) -> Chat:
    async with store.unit() as unit:
        return await unit.chats.group_chat(-5000)


@pytest.fixture
async def group(store: Store, group_chat: Chat) -> Group:
    async with store.unit() as unit:
        return await unit.groups.open(group_chat.id, "Early birds", NOW)
