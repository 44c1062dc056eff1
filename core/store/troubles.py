"""What is wrong with a database, in one sentence for whoever runs the bot."""

import sqlite3
from collections.abc import Iterator

from sqlalchemy.exc import SQLAlchemyError

from core.errors import Trouble

# By the database's own words (SQLite's result codes); the first that fits is said.
_SENTENCES = (
    ("disk is full", "the disk is full. Free some space; nothing that was kept is lost."),
    ("readonly database", "it can't be written to: look at the rights of the file and its folder."),
    ("unable to open", "it can't be opened: is there such a folder, and may this user write in it?"),
    (
        "not a database",
        "it is no database, or its beginning is broken; a good copy can be brought back by `bellwether restore`.",
    ),
    (
        "malformed",
        "the file is damaged. `bellwether check` says where; `bellwether restore` brings a copy back.",
    ),
    ("is locked", "another program has been holding it for too long. What came in meanwhile comes again."),
    (
        "i/o error",
        "the disk doesn't do what it should (an input/output error). Nothing that was kept is lost.",
    ),
)


class DatabaseTrouble(Trouble):
    """The database can't be used as it is; what it says is for whoever runs the bot."""

    def __init__(self, place: str, what: str) -> None:
        super().__init__(f"The database {place}: {what}")
        self.what = what


def trouble_of(error: BaseException, place: str) -> DatabaseTrouble | None:
    """The trouble behind an error, or behind what caused it; None where no database is to blame."""
    for one in _behind(error):
        if isinstance(one, DatabaseTrouble):
            return one
        if isinstance(one, sqlite3.Error | SQLAlchemyError | PermissionError):
            said = str(one).lower()
            known = next((sentence for sign, sentence in _SENTENCES if sign in said), None)
            if known is not None:
                return DatabaseTrouble(place, known)
    return None


def _behind(error: BaseException | None) -> Iterator[BaseException]:
    while error is not None:
        if isinstance(error, BaseExceptionGroup):
            for one in error.exceptions:
                yield from _behind(one)
        yield error
        error = error.__cause__ or error.__context__
