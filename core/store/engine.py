"""Everything that depends on which database it is. A second one joins here."""

from collections.abc import Callable, Sequence
from functools import partial
from pathlib import Path
from typing import Any

from sqlalchemy import Connection, Dialect, Table, event
from sqlalchemy.dialects import postgresql, sqlite
from sqlalchemy.engine import make_url
from sqlalchemy.ext.asyncio import AsyncEngine, create_async_engine

BUSY_TIMEOUT_S = 30

_PRAGMAS = (
    "journal_mode=WAL",
    "synchronous=FULL",
    f"busy_timeout={BUSY_TIMEOUT_S * 1000}",
    "foreign_keys=ON",
)
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


def is_memory(engine: AsyncEngine) -> bool:
    """Whether all units share one connection, so that even reading must queue."""
    return engine.dialect.name == "sqlite" and engine.url.database in {None, "", ":memory:"}


def open_engine(place: str | Path, *, foreign_keys: bool = True) -> AsyncEngine:
    """Open an engine whose writing transactions (execution option `writes`) begin with the right to write.

    Only a migration goes without `foreign_keys`: it builds tables anew, and dropping one would empty others.
    """
    engine = create_async_engine(url_of(place))
    if engine.dialect.name == "sqlite":
        pragmas = (*_PRAGMAS, f"foreign_keys={int(foreign_keys)}")
        event.listen(engine.sync_engine, "connect", partial(_prepare, pragmas))
        event.listen(engine.sync_engine, "begin", _begin)
    return engine


def insert(dialect: Dialect, table: Table) -> Any:
    """Build an INSERT that knows ON CONFLICT, which each dialect spells for itself."""
    return _INSERTS[dialect.name](table)


def _prepare(pragmas: Sequence[str], connection: Any, _record: object) -> None:
    # The driver's own idea of when a transaction begins would start it late and without the right to write.
    connection.isolation_level = None
    cursor = connection.cursor()
    for pragma in pragmas:
        cursor.execute(f"PRAGMA {pragma}")
    cursor.close()


def _begin(connection: Connection) -> None:
    writes = connection.get_execution_options().get("writes", False)
    connection.exec_driver_sql("BEGIN IMMEDIATE" if writes else "BEGIN")
