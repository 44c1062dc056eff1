"""Alembic, as `core.store.migrate` needs it."""

from importlib.resources import files

from alembic import command
from alembic.config import Config
from sqlalchemy import Connection


def upgrade(connection: Connection, to: str) -> None:
    """Bring the tables behind this connection to a revision, or to `head`."""
    command.upgrade(config(connection), to)


def config(connection: Connection) -> Config:
    """Alembic's settings, all of them: the migrations are a package, installed or in the repository."""
    settings = Config()
    settings.set_main_option("script_location", str(files("migrations")))
    settings.set_main_option("path_separator", "os")
    settings.attributes["connection"] = connection
    return settings
