"""One transaction for all units that wait for their turn at the same time: one commit makes all of them lasting.

Most of what a small unit costs is the disk at its commit. Each unit is still kept or forgotten by itself.
"""

from asyncio import Future, get_running_loop, shield
from collections.abc import AsyncIterator
from contextlib import asynccontextmanager

from sqlalchemy.ext.asyncio import AsyncConnection

from core.errors import Defect


class TransactionLostError(Defect):
    """The database gave up a transaction that units shared: nothing of any of them was kept."""


class Transaction:
    """Begun, it takes in one part after the other until it is ended."""

    def __init__(self, connection: AsyncConnection) -> None:
        self.connection = connection
        self._whole = connection.begin()
        self._ended: Future[None] = get_running_loop().create_future()
        self.lost = False
        """The database gave it up: it must be ended before anything else is written."""

    async def begin(self) -> None:
        await self._whole.start()

    @asynccontextmanager
    async def part(self) -> AsyncIterator[None]:
        """What is written inside is kept with the rest; after an error, it never was."""
        await self._mark("SAVEPOINT part")
        try:
            yield
        except BaseException:
            await self._mark("ROLLBACK TO SAVEPOINT part")
            await self._mark("RELEASE SAVEPOINT part")
            raise
        await self._mark("RELEASE SAVEPOINT part")

    async def end(self) -> None:
        """Commit. Whoever waits for `lasting` hears what became of it."""
        try:
            await self._commit()
        except Exception as error:  # noqa: BLE001 - raised for each whose part it was
            self._ended.set_exception(error)
            await self._undo()
        else:
            self._ended.set_result(None)
        finally:
            self._ended.cancel()

    async def lasting(self) -> None:
        """Return once it is committed. Raises what went wrong: then nothing of it was kept."""
        await shield(self._ended)

    async def _commit(self) -> None:
        if self.lost:
            raise TransactionLostError("the parts of a transaction were undone together")
        await self._whole.commit()

    async def _undo(self) -> None:
        await self._whole.rollback()
        # To SQLAlchemy a commit that failed is an end too; to the database it need not be.
        await self.connection.run_sync(lambda connection: connection.connection.rollback())

    async def _mark(self, statement: str) -> None:
        try:
            await self.connection.exec_driver_sql(statement)
        except BaseException:
            # With a full disk, say, the database undoes everything, the savepoint too. It must not go on
            # as if the earlier parts were still there.
            self.lost = True
            raise
