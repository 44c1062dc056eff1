"""What is due when. The database says it, a timer only wakes up for it."""

from collections.abc import Mapping
from datetime import datetime
from typing import Any

from sqlalchemy import func, select

from core.store import tables
from core.store.records import Due, DueState
from core.store.repository import Repository


class Dues(Repository):
    async def add(self, key: str, kind: str, at: datetime, refs: Mapping[str, Any]) -> bool:
        """Whether it is new: a key that was ever used, done or dropped too, is left alone."""
        row = {"key": key, "kind": kind, "at": at, "refs": dict(refs), "state": DueState.WAITING}
        return bool(await self._add_new(tables.due, [row], "key", returning=("id",)))

    async def arm(self, key: str, kind: str, at: datetime, refs: Mapping[str, Any]) -> None:
        """Let it be due at this moment, even if it was for another one or was dropped; done stays done."""
        due = tables.due
        if not await self.add(key, kind, at, refs):
            await self._change(
                due,
                due.c.key == key,
                due.c.state != DueState.DONE,
                state=DueState.WAITING,
                at=at,
                refs=dict(refs),
            )

    async def take(self, now: datetime, limit: int) -> list[Due]:
        """Find what is due by now, earliest first. It stays waiting until `done` in the same unit."""
        due = tables.due
        rows = await self._all(
            select(due.c.id, due.c.key, due.c.kind, due.c.at, due.c.refs)
            .where(due.c.state == DueState.WAITING, due.c.at <= now)
            .order_by(due.c.at, due.c.id)
            .limit(limit)
        )
        return [Due(**row) for row in rows]

    async def done(self, due_id: int, now: datetime) -> None:
        """Raise NotStoredError if there is none."""
        await self._change_one(tables.due, due_id, state=DueState.DONE, done_at=now)

    async def drop(self, key: str) -> None:
        """No longer wanted. Without effect on what is done."""
        due = tables.due
        await self._change(due, due.c.key == key, due.c.state == DueState.WAITING, state=DueState.DROPPED)

    async def next_at(self) -> datetime | None:
        due = tables.due
        moment: datetime | None = await self._value(
            select(func.min(due.c.at)).where(due.c.state == DueState.WAITING)
        )
        return moment
