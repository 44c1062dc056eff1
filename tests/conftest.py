"""What tests of every kind share."""

import asyncio
from pathlib import Path

import pytest

from core.store.migrate import migrate

pytest_plugins = ["tests.rehearsal_fixtures"]


@pytest.fixture(scope="session")
def migrated(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """An empty database at head, to be copied; migrating one for each test would take most of their time."""
    path = tmp_path_factory.mktemp("migrated") / "bellwether.db"
    asyncio.run(migrate(path))
    return path
