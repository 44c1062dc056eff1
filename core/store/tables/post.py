"""What came in, what goes out, what is due."""

from datetime import datetime
from typing import Any

from sqlalchemy import JSON, BigInteger, Index, UniqueConstraint
from sqlmodel import Field

from core.store.tables.row import Row, json, key, maybe_to, table, to


class QuestionRow(Row, table=True):
    __tablename__ = "question"
    chat_id: int = to("chat.id", primary_key=True)
    kind: str
    refs: dict[str, Any] = json()
    asked_at: datetime


class InboxRow(Row, table=True):
    __tablename__ = "inbox"
    __table_args__ = (Index(None, "state", "lane", "id"), Index(None, "state", "id"))
    id: int | None = key()
    update_id: int = Field(sa_type=BigInteger, unique=True)
    lane: int = Field(sa_type=BigInteger)
    body: dict[str, Any] = json()
    received_at: datetime
    state: str
    attempts: int = 0
    error: str | None = None


class OutboxRow(Row, table=True):
    __tablename__ = "outbox"
    __table_args__ = (
        Index(None, "state", "priority", "id"),
        Index(None, "chat_id", "state", "id"),
        Index(None, "chat_id", "message_id"),
        Index(None, "state", "due_at"),
        Index(None, "state", "expires_at"),
        Index(None, "state", "leased_until"),
        Index(None, "state", "edits_id"),
        Index(None, "subject", "state"),
    )
    id: int | None = key()
    chat_id: int = to("chat.id")
    purpose: str
    method: str
    payload: dict[str, Any] = json()
    refs: dict[str, Any] = json()
    buttons: dict[str, Any] | None = Field(default=None, sa_type=JSON(none_as_null=True))
    key: str = Field(unique=True)
    subject: str | None = None
    edits_id: int | None = maybe_to("outbox.id")
    priority: int
    due_at: datetime
    expires_at: datetime | None = None
    state: str
    leased_until: datetime | None = None
    message_id: int | None = Field(default=None, sa_type=BigInteger)
    sent_to: int | None = Field(default=None, sa_type=BigInteger)
    pinned: bool = False
    tries: int = 0
    resends: int = 0
    created_at: datetime
    settled_at: datetime | None = None


class FileRow(Row, table=True):
    """What a letter carries, until the letter has its end."""

    __tablename__ = "file"
    outbox_id: int = to("outbox.id", primary_key=True)
    name: str
    content: bytes


class AttemptRow(Row, table=True):
    """One try to send a letter; without an outcome while it is on its way."""

    __tablename__ = "attempt"
    __table_args__ = (UniqueConstraint("outbox_id", "number"),)
    id: int | None = key()
    outbox_id: int = to("outbox.id")
    number: int
    started_at: datetime
    ended_at: datetime | None = None
    outcome: str | None = None
    detail: str | None = None


class DueRow(Row, table=True):
    __tablename__ = "due"
    __table_args__ = (Index(None, "state", "at", "id"),)
    id: int | None = key()
    key: str = Field(unique=True)
    kind: str
    at: datetime
    refs: dict[str, Any] = json()
    state: str
    done_at: datetime | None = None


class SecretRow(Row, table=True):
    """A key that never leaves the database."""

    __tablename__ = "secret"
    name: str = Field(primary_key=True)
    value: bytes


question = table(QuestionRow)
inbox = table(InboxRow)
outbox = table(OutboxRow)
file = table(FileRow)
attempt = table(AttemptRow)
due = table(DueRow)
secret = table(SecretRow)
