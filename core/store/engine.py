"""Everything that depends on which database it is. A second one joins here."""

from collections.abc import Callable
from pathlib import Path
from typing import Any

from sqlalchemy import Table
from sqlalchemy.dialects import postgresql, sqlite
from sqlalchemy.engine import make_url
from sqlalchemy.ext.asyncio import AsyncConnection, AsyncEngine, create_async_engine

from core.store.sqlite import begin_as_asked, connector, empty_log

MEMORY = ":memory:"

_INSERTS: dict[str, Callable[[Table], Any]] = {"sqlite": sqlite.insert, "postgresql": postgresql.insert}


def url_of(place: str | Path) -> str:
    """Async URL of a path (`:memory:` too); a URL stays as it is."""
    text = str(place)
    if "://" not in text:
        return f"sqlite+aiosqlite:///{text}"
    url = make_url(text)
    if url.drivername == "sqlite":
        url = url.set(drivername="sqlite+aiosqlite")
    return url.render_as_string(hide_password=False)


def path_of(place: str | Path) -> Path | None:
    """The file of a database; None for one in memory or on a server."""
    url = make_url(url_of(place))
    if url.get_backend_name() != "sqlite" or (url.database or MEMORY) == MEMORY:
        return None
    return Path(url.database or "").resolve()


def is_memory(engine: AsyncEngine) -> bool:
    """Whether all units share one connection, so that even reading must queue."""
    return engine.dialect.name == "sqlite" and (engine.url.database or MEMORY) == MEMORY


def open_engine(place: str | Path, *, foreign_keys: bool = True) -> AsyncEngine:
    """Open an engine whose writing transactions (execution option `writes`) begin with the right to write.

    Only a migration goes without `foreign_keys`: it builds tables anew, and dropping one would empty others.
    """
    url = make_url(url_of(place))
    if url.get_backend_name() != "sqlite":
        return create_async_engine(url)
    connect = connector(url.database or MEMORY, foreign_keys=foreign_keys)
    engine = create_async_engine(url, async_creator=connect)
    begin_as_asked(engine.sync_engine)
    return engine


async def wash(connection: AsyncConnection) -> None:
    """Leave no copy of erased rows in the database's files; outside a transaction."""
    if connection.dialect.name == "sqlite":
        await empty_log((await connection.get_raw_connection()).driver_connection)


def insert(dialect: str, table: Table) -> Any:
    """Build an INSERT that knows ON CONFLICT, which each dialect spells for itself."""
    return _INSERTS[dialect](table)
