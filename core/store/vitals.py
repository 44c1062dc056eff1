"""Numbers by which the state of the store is watched."""

from datetime import datetime
from typing import cast

from sqlalchemy import Table, case, func, select

from core.store import tables
from core.store.records import InboxState, LetterState
from core.store.repository import Repository


class Vitals(Repository):
    async def inbox_by_state(self) -> dict[InboxState, int]:
        """How many updates wait, and how many were parked; those done only grow, and are left out."""
        found = await self._counts(tables.inbox, InboxState.WAITING, InboxState.PARKED)
        return {state: found.get(state, 0) for state in (InboxState.WAITING, InboxState.PARKED)}

    async def outbox_by_state(self) -> dict[LetterState, int]:
        found = await self._counts(tables.outbox, *LetterState)
        return {state: found.get(state, 0) for state in LetterState}

    async def letters_given_up(self) -> int:
        """Refused, or nobody knows: neither is sent again by itself."""
        return sum((await self._counts(tables.outbox, LetterState.REFUSED, LetterState.UNKNOWN)).values())

    async def last_sent_at(self) -> datetime | None:
        """When the last letter of those lately written was sent; None if none ever was."""
        outbox = tables.outbox.c
        sent = select(outbox.settled_at).where(outbox.state == LetterState.SENT).order_by(outbox.id.desc())
        return cast("datetime | None", await self._value(sent.limit(1)))

    async def oldest_waiting(self, now: datetime) -> dict[str, float]:
        """How many seconds the oldest waiting update, and the oldest letter that is due, have waited."""
        inbox, outbox = tables.inbox, tables.outbox
        received = await self._value(
            select(func.min(inbox.c.received_at)).where(inbox.c.state == InboxState.WAITING)
        )
        since = case((outbox.c.due_at > outbox.c.created_at, outbox.c.due_at), else_=outbox.c.created_at)
        due = await self._value(
            select(func.min(since)).where(outbox.c.state == LetterState.WAITING, outbox.c.due_at <= now)
        )
        return {"inbox": _age_s(received, now), "outbox": _age_s(due, now)}

    async def _counts(self, table: Table, *states: str) -> dict[str, int]:
        counted = select(table.c.state, func.count(table.c.id).label("count")).where(
            table.c.state.in_(states)
        )
        return {row["state"]: row["count"] for row in await self._all(counted.group_by(table.c.state))}


def _age_s(since: datetime | None, now: datetime) -> float:
    return 0.0 if since is None else max(0.0, (now - since).total_seconds())
