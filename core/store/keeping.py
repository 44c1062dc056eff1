"""What is kept for a while only: raw updates, letters that had their end, dues that were done."""

from collections.abc import Mapping, Sequence
from datetime import datetime
from typing import Any

from sqlalchemy import JSON, delete, literal, select, update

from core.store import tables as t
from core.store.records import DueState, InboxState, LetterState, Purpose
from core.store.repository import Repository

_NOTHING = literal({}, JSON)
_ENDED = (LetterState.SENT, LetterState.DROPPED, LetterState.UNKNOWN)
# What nobody replies to after so long, and whose key needn't be known any more.
_PASSING = (Purpose.TAP, Purpose.ANSWER, Purpose.REMINDER, Purpose.BULK)


class Keeping(Repository):
    async def handled(
        self, before: datetime, after_id: int, limit: int
    ) -> list[tuple[int, Mapping[str, Any]]]:
        """Updates that were handled and came before, each with its words; those behind an id, in order."""
        inbox = t.inbox.c
        rows = await self._all(
            select(inbox.id, inbox.body)
            .where(inbox.state == InboxState.DONE, inbox.received_at < before, inbox.id > after_id)
            .order_by(inbox.id)
            .limit(limit)
        )
        return [(row["id"], row["body"]) for row in rows]

    async def empty(self, update_ids: Sequence[int]) -> None:
        """Let go of what was said in these; that they came stays known."""
        await self._run(update(t.inbox).where(t.inbox.c.id.in_(update_ids)).values(body=_NOTHING))

    async def let_go(self, before: datetime) -> int:
        """Let go of what had its end before. How many rows there were."""
        ended = (
            select(t.outbox.c.id)
            .where(t.outbox.c.state.in_(_ENDED), t.outbox.c.purpose.in_(_PASSING))
            .where(t.outbox.c.settled_at < before)
            .where(t.outbox.c.id.not_in(select(t.outbox.c.edits_id).where(t.outbox.c.edits_id.is_not(None))))
        )
        gone = 0
        for statement in (
            delete(t.inbox).where(t.inbox.c.state == InboxState.DONE, t.inbox.c.received_at < before),
            delete(t.file).where(
                t.file.c.outbox_id.in_(select(t.outbox.c.id).where(t.outbox.c.settled_at < before))
            ),
            delete(t.attempt).where(t.attempt.c.outbox_id.in_(ended)),
            delete(t.outbox).where(t.outbox.c.id.in_(ended)),
            delete(t.due).where(t.due.c.state != DueState.WAITING, t.due.c.at < before),
        ):
            gone += (await self._connection.execute(statement)).rowcount
        return gone
