"""Bring a database to the newest tables."""

from importlib.resources import files
from pathlib import Path

from alembic import command
from alembic.config import Config
from sqlalchemy import Connection

from core.store.engine import open_engine


async def migrate(place: str | Path, to: str = "head") -> None:
    """Upgrade the database at this path or URL in one transaction; a new one is created."""
    engine = open_engine(place, foreign_keys=False)
    try:
        async with engine.execution_options(writes=True).begin() as connection:
            await connection.run_sync(_upgrade, to)
    finally:
        await engine.dispose()


def config(connection: Connection) -> Config:
    """Alembic's settings, all of them: the migrations are a package, installed or in the repository."""
    settings = Config()
    settings.set_main_option("script_location", str(files("migrations")))
    settings.set_main_option("path_separator", "os")
    settings.attributes["connection"] = connection
    return settings


def _upgrade(connection: Connection, to: str) -> None:
    command.upgrade(config(connection), to)
