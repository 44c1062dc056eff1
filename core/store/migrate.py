"""Bring a database to the newest tables."""

from importlib import import_module
from importlib.resources import files
from pathlib import Path

from sqlalchemy import Connection, column, inspect, select, table

from core.store.engine import open_engine
from core.store.troubles import DatabaseTrouble

_VERSION = table("alembic_version", column("version_num"))


async def migrate(place: str | Path, to: str = "head") -> None:
    """Upgrade the database at this path or URL in one transaction; a new one is created."""
    engine = open_engine(place, foreign_keys=False)
    try:
        async with engine.execution_options(writes=True).begin() as connection:
            await connection.run_sync(_upgrade, to)
    finally:
        await engine.dispose()


def newest() -> str:
    """The revision of the newest tables: migrations are named `<revision>_<what for>.py`."""
    names = (file.name for file in (files("migrations") / "versions").iterdir() if file.name.endswith(".py"))
    return max(name.partition("_")[0] for name in names)


def revision(connection: Connection) -> str | None:
    """The revision of the tables in a database; None for a new one."""
    if not inspect(connection).has_table(_VERSION.name):
        return None
    return connection.execute(select(_VERSION.c.version_num)).scalar()


def _upgrade(connection: Connection, to: str) -> None:
    known = revision(connection)
    if to == "head" and known == newest():
        return
    if known is not None and known > newest():
        place = connection.engine.url.database or ""
        what = f"its tables (number {known}) are newer than this program (number {newest()}). Update the program."
        raise DatabaseTrouble(place, what)
    # Loading Alembic takes longer than most starts have to do otherwise.
    import_module("core.store.upgrading").upgrade(connection, to)
