"""Raw updates: stored before they are confirmed, handled one lane at a time in order."""

from collections.abc import Collection, Mapping, Sequence
from datetime import datetime
from typing import Any

from sqlalchemy import bindparam, or_, select, update

from core.store import tables
from core.store.records import InboxItem, InboxState, ParkedItem
from core.store.repository import Repository

_inbox = tables.inbox
_earlier = _inbox.alias("earlier")

_COLUMNS = tuple(_inbox.c[name] for name in ("id", "update_id", "lane", "body", "received_at", "attempts"))
_NEXT = (
    select(*_COLUMNS)
    .where(_inbox.c.state == InboxState.WAITING)
    .where(_inbox.c.lane.not_in(bindparam("busy", expanding=True)))
    .where(
        ~select(_earlier.c.id)
        .where(
            _earlier.c.state == InboxState.WAITING,
            _earlier.c.lane == _inbox.c.lane,
            _earlier.c.id < _inbox.c.id,
        )
        .exists()
    )
    .order_by(_inbox.c.id)
    .limit(bindparam("most"))
)
_DONE = update(_inbox).where(_inbox.c.id == bindparam("item")).values(state=InboxState.DONE)
# An update that was being handled when its process ended may be what ended it.
_INTERRUPTED = (
    select(*_COLUMNS)
    .where(_inbox.c.state == InboxState.WAITING, _inbox.c.attempts > 0, _inbox.c.error.is_(None))
    .order_by(_inbox.c.id)
)
_BEGIN = (
    update(_inbox).where(_inbox.c.id == bindparam("item")).values(attempts=_inbox.c.attempts + 1, error=None)
)
_NOT_TRIED = (
    update(_inbox)
    .where(_inbox.c.id == bindparam("item"))
    .values(attempts=_inbox.c.attempts - 1, error=bindparam("what"))
)
_FAILED = (
    update(_inbox)
    .where(_inbox.c.id == bindparam("item"))
    .values(error=bindparam("what"), state=bindparam("becomes"))
)
_PARKED = select(*_COLUMNS, _inbox.c.error).where(_inbox.c.state == InboxState.PARKED).order_by(_inbox.c.id)


class Inbox(Repository):
    async def store(self, updates: Sequence[tuple[int, int, Mapping[str, Any]]], now: datetime) -> int:
        """Keep (update_id, lane, raw update); how many were new. An update that is known is left alone."""
        rows = [
            {
                "update_id": update_id,
                "lane": lane,
                "body": dict(body),
                "received_at": now,
                "state": InboxState.WAITING,
                "attempts": 0,
            }
            for update_id, lane, body in updates
        ]
        return len(await self._add_new(_inbox, rows, "update_id", returning=("id",)))

    async def next(self, limit: int, lanes_busy: Collection[int] = ()) -> list[InboxItem]:
        """Find the oldest waiting update of each lane that isn't busy: one per lane, oldest first."""
        result = await self._connection.execute(_NEXT, {"busy": list(lanes_busy), "most": limit})
        return [InboxItem(**row) for row in result.mappings()]

    async def interrupted(self) -> list[InboxItem]:
        """Those that were begun and have no end, since their process ended first; oldest first."""
        return [InboxItem(**row) for row in await self._all(_INTERRUPTED)]

    async def begin(self, items: Sequence[int]) -> None:
        """Count a try of each, before it is made: whatever ends the process was tried too."""
        await self._run(_BEGIN, [{"item": item} for item in items])

    async def not_tried(self, item_id: int, why: str | None) -> None:
        """The try that was begun doesn't count: it was never made, or something else spoilt it."""
        await self._connection.execute(_NOT_TRIED, {"item": item_id, "what": why})

    async def done(self, item_id: int) -> None:
        await self._connection.execute(_DONE, {"item": item_id})

    async def failed(self, item_id: int, error: str, park: bool) -> None:
        """Keep why a try failed. Parked, it leaves its lane free and stays for people to look at."""
        becomes = InboxState.PARKED if park else InboxState.WAITING
        await self._connection.execute(_FAILED, {"item": item_id, "what": error, "becomes": becomes})

    async def parked(self) -> list[ParkedItem]:
        """List what was parked, oldest first."""
        return [ParkedItem(**row) for row in await self._all(_PARKED)]

    async def replay(self, items: Collection[int] | None = None) -> list[int]:
        """Let what was parked (all, where none are named) be handled anew; the ids of those."""
        again = update(_inbox).where(_inbox.c.state == InboxState.PARKED).returning(_inbox.c.id)
        if items is not None:
            again = again.where(_inbox.c.id.in_(items))
        fresh = again.values(state=InboxState.WAITING, attempts=0, error=None)
        return sorted(row["id"] for row in await self._all(fresh))

    async def words_of(self, lane: int, message_id: int) -> str | None:
        """What a message said when it was last handled, by the platform's id; None if that isn't known."""
        told = [_inbox.c.body[kind] for kind in ("message", "edited_message")]
        newest = (
            select(_inbox.c.body)
            .where(_inbox.c.state == InboxState.DONE, _inbox.c.lane == lane)
            .where(or_(*(message["message_id"].as_integer() == message_id for message in told)))
            .order_by(_inbox.c.id.desc())
            .limit(1)
        )
        body = await self._value(newest)
        message = (body or {}).get("edited_message") or (body or {}).get("message") or {}
        words: str | None = message.get("text") or message.get("caption")
        return words
