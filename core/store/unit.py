"""The store, and the unit of work: everything of one cause is written together, or not at all."""

import asyncio
from collections.abc import AsyncIterator
from contextlib import AsyncExitStack, asynccontextmanager
from pathlib import Path
from typing import Self

from sqlalchemy.ext.asyncio import AsyncConnection, AsyncEngine

from core.store.adjustments import Adjustments
from core.store.attempts import Attempts
from core.store.belongings import Belongings
from core.store.classes import Classes, HabitsOfPeople, SignUps
from core.store.coach_words import CoachWords
from core.store.dues import Dues
from core.store.engine import is_memory, open_engine, wash
from core.store.faults import Faults
from core.store.files import Files
from core.store.groups import Groups
from core.store.inbox import Inbox
from core.store.keeping import Keeping
from core.store.orders import CoachOks, CoachOrders
from core.store.outbox import Outbox
from core.store.people import Chats, Consents, People
from core.store.personal import Personal
from core.store.profiles import Profiles
from core.store.questions import Questions
from core.store.scores import Reports, Scores
from core.store.secrets import Secrets
from core.store.sessions import Documents, Sessions, Versions
from core.store.transaction import Transaction
from core.store.turns import Turns
from core.store.undelivered import Undelivered
from core.store.vitals import Vitals


class Unit:
    """A unit of work: all repositories over one connection."""

    def __init__(self, connection: AsyncConnection) -> None:
        self.people = People(connection)
        self.chats = Chats(connection)
        self.consents = Consents(connection)
        self.groups = Groups(connection)
        self.belongings = Belongings(connection)
        self.profiles = Profiles(connection)
        self.documents = Documents(connection)
        self.sessions = Sessions(connection)
        self.versions = Versions(connection)
        self.adjustments = Adjustments(connection)
        self.scores = Scores(connection)
        self.reports = Reports(connection)
        self.orders = CoachOrders(connection)
        self.oks = CoachOks(connection)
        self.faults = Faults(connection)
        self.words = CoachWords(connection)
        self.classes = Classes(connection)
        self.sign_ups = SignUps(connection)
        self.habits = HabitsOfPeople(connection)
        self.questions = Questions(connection)
        self.inbox = Inbox(connection)
        self.outbox = Outbox(connection)
        self.attempts = Attempts(connection)
        self.undelivered = Undelivered(connection)
        self.files = Files(connection)
        self.dues = Dues(connection)
        self.secrets = Secrets(connection)
        self.keeping = Keeping(connection)
        self.vitals = Vitals(connection)
        self.personal = Personal(connection)
        self._connection = connection

    @asynccontextmanager
    async def trial(self) -> AsyncIterator[None]:
        """To see whether something can be done: nothing that is written inside is kept."""
        await self._connection.exec_driver_sql("SAVEPOINT trial")
        try:
            yield
        finally:
            await self._connection.exec_driver_sql("ROLLBACK TO SAVEPOINT trial")
            await self._connection.exec_driver_sql("RELEASE SAVEPOINT trial")


class Store:
    """One database, opened by path or URL; its tables are made by `core.store.migrate.migrate`.

    Not reentrant: a unit opened inside a unit of the same task waits for itself.
    """

    def __init__(self, place: str | Path) -> None:
        self.engine: AsyncEngine = open_engine(place)
        self.press_key = b""
        """With which presses are checked, once `know_secrets` has read it."""
        self._writer: AsyncConnection | None = None
        self._open: Transaction | None = None
        self._ending: asyncio.Task[None] | None = None
        self._turns = Turns()
        self._reading_queues = is_memory(self.engine)

    async def __aenter__(self) -> Self:
        return self

    async def __aexit__(self, *_error: object) -> None:
        await self.close()

    @asynccontextmanager
    async def unit(self, *, urgent: bool = False) -> AsyncIterator[Unit]:
        """Committed when this returns, forgotten on any error. Units queue up; those that wait share a commit.

        What is `urgent` goes before all that waits, and is committed without it.
        """
        async with self._turns.turn(urgent=urgent):
            transaction = await self._transaction()
            try:
                async with transaction.part():
                    unit = Unit(transaction.connection)
                    yield unit
            finally:
                if transaction.lost or urgent:
                    await self._end()
        await transaction.lasting()
        if unit.personal.erased:
            await self._wash()

    @asynccontextmanager
    async def reading(self) -> AsyncIterator[Unit]:
        """One snapshot to read from, which waits for no writer. What is written in it is forgotten."""
        async with AsyncExitStack() as stack:
            if self._reading_queues:
                await stack.enter_async_context(self._turns.turn())
                await self._end()
            yield Unit(await stack.enter_async_context(self.engine.connect()))

    async def know_secrets(self) -> None:
        """Read what no one else may know, and make it where it isn't there yet."""
        async with self.unit() as unit:
            self.press_key = await unit.secrets.get("press")

    async def close(self) -> None:
        if self._ending is not None:
            await self._ending
        if self._writer is not None:
            await self._writer.close()
            self._writer = None
        await self.engine.dispose()

    async def _transaction(self) -> Transaction:
        """Return the one that is open, or begin one that ends behind all who wait for their turn by now."""
        if self._open is None:
            transaction = Transaction(await self._writing())
            await transaction.begin()
            self._open = transaction
            self._ending = asyncio.create_task(self._end_in_turn(transaction))
        return self._open

    async def _end_in_turn(self, transaction: Transaction) -> None:
        async with self._turns.turn():
            if self._open is transaction:
                await self._end()

    async def _end(self) -> None:
        transaction, self._open = self._open, None
        if transaction is not None:
            await transaction.end()

    async def _wash(self) -> None:
        async with self._turns.turn():
            await self._end()
            await wash(await self._writing())

    async def _writing(self) -> AsyncConnection:
        """Open the one connection that writes; it is kept, for the pool would reset it after each unit."""
        if self._writer is None:
            self._writer = await self.engine.execution_options(writes=True).connect()
        return self._writer
