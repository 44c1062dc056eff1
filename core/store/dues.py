"""What is due when. The database says it, a timer only wakes up for it."""

from collections.abc import Mapping
from datetime import datetime
from typing import Any

from sqlalchemy import bindparam, func, select

from core.store import tables
from core.store.records import Due, DueState
from core.store.repository import Repository

_due = tables.due
_DUE_BY = (
    select(_due.c.id, _due.c.key, _due.c.kind, _due.c.at, _due.c.refs)
    .where(_due.c.state == DueState.WAITING, _due.c.at <= bindparam("now"))
    .order_by(_due.c.at, _due.c.id)
    .limit(bindparam("most"))
)


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
        return [Due(**row) for row in await self._all(_DUE_BY, {"now": now, "most": limit})]

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
