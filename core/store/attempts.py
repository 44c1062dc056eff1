"""Tries to send a letter, as far as something is asked of them by themselves."""

from datetime import datetime

from sqlalchemy import select

from core.store import tables
from core.store.records import Try
from core.store.repository import Repository

_outbox, _chat, _attempt = tables.outbox, tables.chat, tables.attempt
# The attempts of the last minute are among these, however fast the bot talked.
_LATELY = 2500
_TRIES = (
    select(_outbox.c.chat_id, _chat.c.address, _attempt.c.started_at)
    .join(_outbox, _outbox.c.id == _attempt.c.outbox_id)
    .join(_chat, _chat.c.id == _outbox.c.chat_id)
    .where(_outbox.c.method.not_like("answer%"))
    .order_by(_attempt.c.id.desc())
    .limit(_LATELY)
)


class Attempts(Repository):
    async def lately(self, since: datetime) -> list[Try]:
        """The messages that were on their way to chats `since` then, latest first: the platform still counts them."""
        rows = await self._all(_TRIES)
        tries = [Try(row["chat_id"], row["address"], row["started_at"]) for row in rows]
        return [one for one in tries if one.at >= since]
