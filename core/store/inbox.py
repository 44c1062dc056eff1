"""Raw updates: stored before they are confirmed, handled one lane at a time in order."""

from collections.abc import Collection, Mapping, Sequence
from datetime import datetime
from typing import Any

from sqlalchemy import bindparam, func, or_, select, update

from core.store import tables
from core.store.records import InboxItem, InboxState
from core.store.repository import Repository

_inbox = tables.inbox
_earlier = _inbox.alias("earlier")

_NEXT = (
    select(*(_inbox.c[name] for name in ("id", "update_id", "lane", "body", "received_at", "attempts")))
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
_FAILED = (
    update(_inbox)
    .where(_inbox.c.id == bindparam("item"))
    .values(attempts=_inbox.c.attempts + 1, error=bindparam("what"), state=bindparam("becomes"))
)


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

    async def done(self, item_id: int) -> None:
        await self._connection.execute(_DONE, {"item": item_id})

    async def failed(self, item_id: int, error: str, park: bool) -> None:
        """Count a failure. Parked, it leaves its lane free and stays for people to look at."""
        becomes = InboxState.PARKED if park else InboxState.WAITING
        await self._connection.execute(_FAILED, {"item": item_id, "what": error, "becomes": becomes})

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

    async def waiting_count(self) -> int:
        return int(
            await self._value(select(func.count(_inbox.c.id)).where(_inbox.c.state == InboxState.WAITING))
        )
