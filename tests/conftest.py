"""What tests of every kind share."""

import asyncio
import gc
import os
import shutil
import tempfile
from collections.abc import Iterator
from pathlib import Path

import pytest
from hypothesis import HealthCheck, Phase, settings

from core.store import engine
from core.store.migrate import migrate
from tests.support.compiled import SharedEngines

# How fast a machine is says nothing of what is right: speed is for the benchmarks.
# The same cases come each time, so that a red run tells of what was changed; `make soak` draws new ones.
settings.register_profile(
    "steady",
    deadline=None,
    suppress_health_check=[HealthCheck.too_slow],
    derandomize="BELLWETHER_SOAK" not in os.environ,
    phases=[Phase.explicit, Phase.reuse, Phase.generate, Phase.shrink],
)
settings.load_profile("steady")

pytest_plugins = ["tests.rehearsal_fixtures"]

# Nothing that is loaded ever becomes garbage: to look through it again and again took a fifth of all tests' time.
_LOOKED_FOR_GARBAGE = (50_000, 20, 100)
gc.set_threshold(*_LOOKED_FOR_GARBAGE)

_HERE = Path(__file__).parent
# Whole days, processes that are killed, a browser: a single test of them takes longer than hundreds of others.
_LONG = (_HERE / "soak", _HERE / "acceptance" / "durable", _HERE / "acceptance" / "page")

# Thousands of small databases are made, and every transaction waits until the disk has it: memory has it at once.
_MEMORY = Path("/dev/shm")  # noqa: S108 - a folder of its own is made in it
_ROOM_FOR_ALL = 3_000_000_000


@pytest.hookimpl(tryfirst=True)
def pytest_configure(config: pytest.Config) -> None:
    """Let tests have their files in memory where there is room, and the computer offers it."""
    asked = config.option.basetemp or hasattr(config, "workerinput")
    if asked or not os.access(_MEMORY, os.W_OK) or shutil.disk_usage(_MEMORY).free < _ROOM_FOR_ALL:
        return
    folder = tempfile.mkdtemp(prefix="bellwether-tests-", dir=_MEMORY)
    config.option.basetemp = folder
    config.add_cleanup(lambda: shutil.rmtree(folder, ignore_errors=True))


def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    """Let the share of each worker begin with files of what takes long: what is short fills up the end."""
    workers = int(os.environ.get("PYTEST_XDIST_WORKER_COUNT", "1"))
    files: dict[Path, list[pytest.Item]] = {}
    for item in items:
        files.setdefault(item.path, []).append(item)
    long = [file for file in files if any(place in file.parents for place in _LONG)]
    short = [item for file in files if file not in long for item in files[file]]
    size = -(-len(items) // workers)
    items.clear()
    for worker in range(workers):
        share = [item for file in long[worker::workers] for item in files[file]]
        rest = max(0, size - len(share))
        items += share + short[:rest]
        short = short[rest:]
    items += short


def pytest_collection_finish() -> None:
    gc.collect()
    gc.freeze()


@pytest.fixture(scope="session")
def migrated(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """An empty database at head, to be copied; migrating one for each test would take most of their time."""
    path = tmp_path_factory.mktemp("migrated") / "bellwether.db"
    asyncio.run(migrate(path))
    return path


@pytest.fixture(scope="session", autouse=True)
def _statements_are_compiled_once() -> Iterator[None]:
    """Each test has a database of its own; compiling all statements for each anew takes a tenth of its time."""
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(engine, "create_async_engine", SharedEngines().open)
        yield
