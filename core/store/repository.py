"""What all repositories do with a connection."""

from collections.abc import Mapping, Sequence
from functools import cache
from typing import Any

from sqlalchemy import ColumnElement, Executable, RowMapping, Table, bindparam, insert, select, update
from sqlalchemy.ext.asyncio import AsyncConnection

from core.errors import Defect
from core.store import engine


class NotStoredError(Defect):
    """A change was asked of a row that isn't there: whoever asked had to look first."""


class Repository:
    """Plain statements on the unit's one connection; a unit's end commits or forgets them all."""

    def __init__(self, connection: AsyncConnection) -> None:
        self._connection = connection

    async def _one(self, statement: Executable, values: Mapping[str, Any] | None = None) -> RowMapping | None:
        return (await self._connection.execute(statement, values)).mappings().first()

    async def _must(self, statement: Executable, values: Mapping[str, Any] | None = None) -> RowMapping:
        row = await self._one(statement, values)
        if row is None:
            raise NotStoredError(str(statement))
        return row

    async def _all(
        self, statement: Executable, values: Mapping[str, Any] | None = None
    ) -> Sequence[RowMapping]:
        return (await self._connection.execute(statement, values)).mappings().all()

    async def _value(self, statement: Executable, values: Mapping[str, Any] | None = None) -> Any:
        return (await self._connection.execute(statement, values)).scalar()

    async def _run(self, statement: Executable, rows: Sequence[Mapping[str, Any]] | None = None) -> None:
        await self._connection.execute(statement, rows)

    async def _by_id(self, table: Table, row_id: int) -> RowMapping | None:
        return await self._one(rows_by(table, "id"), {"it": row_id})

    async def _add(self, table: Table, **values: Any) -> RowMapping:
        return await self._must(_insert_one(table), values)

    async def _add_new(
        self, table: Table, rows: Sequence[Mapping[str, Any]], unique: str, *, returning: tuple[str, ...]
    ) -> Sequence[RowMapping]:
        """Insert those whose `unique` column isn't there yet; the given columns of these."""
        if not rows:
            return []
        statement = _insert_new(self._connection.dialect.name, table, unique, returning)
        # A list of one would take the long way that many rows are worth.
        values = rows[0] if len(rows) == 1 else rows
        return (await self._connection.execute(statement, values)).mappings().all()

    async def _put(self, table: Table, unique: str, **values: Any) -> RowMapping:
        """Insert, or change the row that has the same `unique` column."""
        changes = {name: value for name, value in values.items() if name != unique}
        statement = (
            engine.insert(self._connection.dialect.name, table)
            .values(values)
            .on_conflict_do_update(index_elements=[unique], set_=changes)
            .returning(*table.c)
        )
        return await self._must(statement)

    async def _change(self, table: Table, *where: ColumnElement[bool], **values: Any) -> int:
        """How many rows changed."""
        return (await self._connection.execute(update(table).where(*where).values(values))).rowcount

    async def _change_one(self, table: Table, row_id: int, **values: Any) -> RowMapping:
        return await self._must(update(table).where(table.c.id == row_id).values(values).returning(*table.c))


@cache
def rows_by(table: Table, column: str) -> Any:
    """Rows whose `column` is the value bound as `it`. Made once: that takes longer than to execute it."""
    return select(table).where(table.c[column] == bindparam("it"))


@cache
def _insert_one(table: Table) -> Any:
    return insert(table).returning(*table.c)


@cache
def _insert_new(dialect: str, table: Table, unique: str, returning: tuple[str, ...]) -> Any:
    return (
        engine.insert(dialect, table)
        .on_conflict_do_nothing(index_elements=[unique])
        .returning(*(table.c[name] for name in returning))
    )
