"""What tests of every kind share."""

import asyncio
from pathlib import Path

import pytest
from hypothesis import HealthCheck, settings

from core.store.migrate import migrate

# How fast a machine is says nothing of what is right: speed is for the benchmarks.
settings.register_profile("steady", deadline=None, suppress_health_check=[HealthCheck.too_slow])
settings.load_profile("steady")

pytest_plugins = ["tests.rehearsal_fixtures"]


@pytest.fixture(scope="session")
def migrated(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """An empty database at head, to be copied; migrating one for each test would take most of their time."""
    path = tmp_path_factory.mktemp("migrated") / "bellwether.db"
    asyncio.run(migrate(path))
    return path
