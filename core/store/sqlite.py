"""All that is SQLite's own: how a connection is set up, and which statements are worth a trip to its thread."""

import sqlite3
from asyncio import to_thread
from collections.abc import Callable, Sequence
from typing import Any, Self

import aiosqlite
from sqlalchemy import Connection, Engine, event

BUSY_TIMEOUT_S = 30
_LAST_WORD_S = 2.0

_BEGIN_TO_WRITE = "BEGIN IMMEDIATE"

# With secure_delete what is erased is overwritten, instead of standing in the file until something else does it.
_PRAGMAS = (
    "journal_mode=WAL",
    "synchronous=FULL",
    "secure_delete=ON",
    f"busy_timeout={BUSY_TIMEOUT_S * 1000}",
)


def connector(path: str, *, foreign_keys: bool) -> Callable[[], Any]:
    """Make what an engine calls for each new connection."""

    async def connect() -> aiosqlite.Connection:
        connection = _NearConnection(lambda: _open(path, foreign_keys=foreign_keys), iter_chunk_size=64)
        connection._thread.daemon = True  # noqa: SLF001  (as SQLAlchemy does: a leaked one must not hang the exit)
        try:
            return await connection
        except BaseException:
            # It failed in its thread, which has a last word for this loop: it must not come after the loop's end.
            await to_thread(connection._thread.join, _LAST_WORD_S)  # noqa: SLF001
            raise

    return connect


async def empty_log(connection: Any) -> None:
    """Move the write-ahead log into the file and cut it to nothing; as far as nobody is just reading it."""
    await connection.execute("PRAGMA wal_checkpoint(TRUNCATE)")


def begin_as_asked(engine: Engine) -> None:
    """Let a transaction with the execution option `writes` begin with the right to write."""
    event.listen(engine, "begin", _begin)


def _begin(connection: Connection) -> None:
    writes = connection.get_execution_options().get("writes", False)
    connection.exec_driver_sql(_BEGIN_TO_WRITE if writes else "BEGIN")


def _open(path: str, *, foreign_keys: bool) -> sqlite3.Connection:
    # Without isolation_level=None the driver begins by itself: late, and without the right to write.
    # It is used from two threads, but never from both at once: see `_NearConnection`.
    connection = sqlite3.connect(path, isolation_level=None, timeout=BUSY_TIMEOUT_S, check_same_thread=False)
    for pragma in (*_PRAGMAS, f"foreign_keys={int(foreign_keys)}"):
        connection.execute(f"PRAGMA {pragma}")
    return connection


class _WholeCursor:
    """A cursor as SQLAlchemy uses one: opened, executed, fetched and closed in one call.

    The library's own takes a trip to the connection's thread for each of them, which is most of what a small
    statement costs.
    """

    def __init__(self, connection: "_NearConnection") -> None:
        self._connection = connection
        self._rows: list[Any] = []
        self.description: Any = None
        self.rowcount = -1
        self.lastrowid: int | None = None
        self.arraysize = 1

    async def __aenter__(self) -> Self:
        return self

    async def execute(self, sql: str, parameters: Sequence[Any] = ()) -> Self:
        await self._connection.run(self._run, "execute", sql, parameters)
        if sql == _BEGIN_TO_WRITE:
            self._connection.may_write()
        return self

    async def executemany(self, sql: str, parameters: Sequence[Any]) -> Self:
        await self._connection.run(self._run, "executemany", sql, parameters)
        return self

    async def fetchall(self) -> list[Any]:
        rows, self._rows = self._rows, []
        return rows

    async def close(self) -> None:
        self._rows = []

    def _run(self, connection: sqlite3.Connection, how: str, sql: str, parameters: Sequence[Any]) -> None:
        cursor = connection.cursor()
        try:
            getattr(cursor, how)(sql, parameters)
            self._rows = cursor.fetchall()
            self.description, self.lastrowid = cursor.description, cursor.lastrowid
            self.rowcount = cursor.rowcount
        finally:
            cursor.close()


class _NearConnection(aiosqlite.Connection):
    """Has a thread for what may take long: waiting for the right to write, waiting for the disk, reading much.

    Once it has the right to write, a statement waits for nobody and takes less than the trip to the thread; so
    it runs where it is asked, until the transaction ends.
    """

    _is_writing = False

    def cursor(self) -> Any:
        return _WholeCursor(self)

    def may_write(self) -> None:
        self._is_writing = True

    async def run(self, function: Callable[..., None], *arguments: Any) -> None:
        """Call `function(connection, *arguments)`."""
        if self._is_writing:
            function(self._conn, *arguments)
        else:
            await self._execute(function, self._conn, *arguments)  # type: ignore[no-untyped-call]

    async def commit(self) -> None:
        # Before, not after: whatever comes next, cancelled or not, queues up behind it in the thread.
        self._is_writing = False
        await super().commit()

    async def rollback(self) -> None:
        self._is_writing = False
        await super().rollback()
