"""The one free-text question that is open in a chat."""

from collections.abc import Mapping
from datetime import datetime
from typing import Any

from sqlalchemy import delete

from core.store import tables
from core.store.records import OpenQuestion
from core.store.repository import Repository, rows_by


class Questions(Repository):
    async def ask(self, chat_id: int, kind: str, refs: Mapping[str, Any], now: datetime) -> None:
        """Open this question; it takes the place of one that was open."""
        await self._put(tables.question, "chat_id", chat_id=chat_id, kind=kind, refs=dict(refs), asked_at=now)

    async def open_in(self, chat_id: int) -> OpenQuestion | None:
        question = tables.question
        row = await self._one(rows_by(question, "chat_id"), {"it": chat_id})
        return OpenQuestion(**row) if row else None

    async def close(self, chat_id: int) -> None:
        await self._run(delete(tables.question).where(tables.question.c.chat_id == chat_id))
