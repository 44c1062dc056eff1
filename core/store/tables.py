"""The tables: rows, not the domain. Only this package knows them."""

from datetime import date, datetime
from typing import Any, ClassVar, cast

from sqlalchemy import JSON, BigInteger, Index, Integer, MetaData, Table, UniqueConstraint
from sqlmodel import Field, SQLModel

# SQLite counts rows up by itself only where the key's type is exactly INTEGER.
BIG = cast("type[Any]", BigInteger().with_variant(Integer, "sqlite"))


def _key() -> Any:
    return Field(default=None, primary_key=True, sa_type=BIG)


def _to(column: str, **more: Any) -> Any:
    return Field(foreign_key=column, sa_type=BIG, **more)


def _maybe_to(column: str) -> Any:
    return _to(column, default=None, nullable=True)


def _json() -> Any:
    return Field(sa_type=JSON)


class Row(SQLModel):
    metadata: ClassVar[MetaData] = MetaData(
        naming_convention={
            "ix": "ix_%(table_name)s_%(column_0_N_name)s",
            "uq": "uq_%(table_name)s_%(column_0_N_name)s",
            "fk": "fk_%(table_name)s_%(column_0_name)s_%(referred_table_name)s",
            "pk": "pk_%(table_name)s",
        }
    )


class PersonRow(Row, table=True):
    __tablename__ = "person"
    id: int | None = _key()
    user_id: int = Field(sa_type=BigInteger, unique=True)
    name: str
    language: str
    created_at: datetime


class ChatRow(Row, table=True):
    __tablename__ = "chat"
    id: int | None = _key()
    address: int = Field(sa_type=BigInteger, unique=True)
    kind: str
    person_id: int | None = _to("person.id", default=None, nullable=True, index=True)
    reachable: bool = True
    unreachable_since: datetime | None = None


class GroupRow(Row, table=True):
    __tablename__ = "training_group"
    id: int | None = _key()
    chat_id: int = _to("chat.id", unique=True)
    title: str
    zone: str | None = None
    units: str
    state: str
    created_at: datetime


class MembershipRow(Row, table=True):
    __tablename__ = "membership"
    __table_args__ = (UniqueConstraint("person_id", "group_id"),)
    id: int | None = _key()
    person_id: int = _to("person.id")
    group_id: int = _to("training_group.id", index=True)
    role: str
    pair: int | None = None
    shares_limits: bool = False
    lead_minutes: int
    joined_at: datetime
    left_at: datetime | None = None


class ConsentRow(Row, table=True):
    """Append-only: withdrawing ends a row, giving anew opens another."""

    __tablename__ = "consent"
    id: int | None = _key()
    person_id: int = _to("person.id", index=True)
    about: str
    given_at: datetime
    withdrawn_at: datetime | None = None


class ProfileRow(Row, table=True):
    """A profile without its name (the person's) and evidence (rows of their own)."""

    __tablename__ = "profile"
    person_id: int = _to("person.id", primary_key=True)
    schema_number: int
    body: dict[str, Any] = _json()
    changed_at: datetime


class EvidenceRow(Row, table=True):
    __tablename__ = "evidence"
    id: int | None = _key()
    person_id: int = _to("person.id", index=True)
    movement: str
    kind: str
    day: date | None = None
    schema_number: int
    body: dict[str, Any] = _json()
    added_at: datetime


class DocumentRow(Row, table=True):
    """Immutable."""

    __tablename__ = "document"
    id: int | None = _key()
    kind: str
    schema_number: int
    body: dict[str, Any] = _json()
    created_at: datetime


class SessionRow(Row, table=True):
    __tablename__ = "session"
    __table_args__ = (
        Index(None, "group_id", "state", "day"),
        Index(None, "group_id", "state", "posted_at"),
        Index(None, "author_id", "state"),
    )
    id: int | None = _key()
    group_id: int = _to("training_group.id")
    author_id: int = _to("person.id")
    day: date
    title: str | None = None
    revision: int
    state: str
    post_at: datetime | None = None
    posted_at: datetime | None = None


class SessionRevisionRow(Row, table=True):
    """Every revision is kept: versions and scores refer to the one they were made from."""

    __tablename__ = "session_revision"
    session_id: int = _to("session.id", primary_key=True)
    revision: int = Field(primary_key=True)
    document_id: int = _to("document.id")
    text: str
    created_at: datetime


class VersionRow(Row, table=True):
    __tablename__ = "version"
    __table_args__ = (UniqueConstraint("session_id", "person_id", "revision"),)
    id: int | None = _key()
    session_id: int = _to("session.id")
    session_revision: int
    person_id: int = _to("person.id", index=True)
    document_id: int = _to("document.id")
    revision: int
    state: str
    shown_at: datetime


class AdjustmentRow(Row, table=True):
    """A line changed as its athlete asked: why, and the pin that came of it. Undone ones are kept."""

    __tablename__ = "adjustment"
    __table_args__ = (Index(None, "session_id", "person_id"),)
    id: int | None = _key()
    session_id: int = _to("session.id")
    person_id: int = _to("person.id")
    version_id: int = _to("version.id")
    block: int
    part: str
    line: int
    step: str
    cause: str | None = None
    schema_number: int
    body: dict[str, Any] | None = Field(default=None, sa_type=JSON, nullable=True)
    made_at: datetime
    undone_at: datetime | None = None


class ScoreRow(Row, table=True):
    __tablename__ = "score"
    __table_args__ = (
        Index(None, "session_id", "block", "state"),
        Index(None, "session_id", "person_id"),
    )
    id: int | None = _key()
    session_id: int = _to("session.id")
    block: int
    person_id: int = _to("person.id", index=True)
    version_id: int | None = _maybe_to("version.id")
    text: str
    schema_number: int
    body: dict[str, Any] = _json()
    recorded_at: datetime
    entered_by: int = _to("person.id")
    state: str


class CoachOrderRow(Row, table=True):
    """What a coach decided for one athlete: of one session, or (without one) of every session to come."""

    __tablename__ = "coach_order"
    __table_args__ = (Index(None, "group_id", "person_id"),)
    id: int | None = _key()
    group_id: int = _to("training_group.id")
    person_id: int = _to("person.id")
    session_id: int | None = _maybe_to("session.id")
    movement: str
    schema_number: int
    body: dict[str, Any] = _json()
    by_id: int = _to("person.id")
    made_at: datetime
    undone_at: datetime | None = None


class ScoreMarkRow(Row, table=True):
    """What coaches decided about a score, one row each time."""

    __tablename__ = "score_mark"
    id: int | None = _key()
    score_id: int = _to("score.id", index=True)
    mark: str
    by_id: int = _to("person.id")
    at: datetime


class ReportRow(Row, table=True):
    """How a whole session felt to one athlete; `hurt` is null until asked."""

    __tablename__ = "report"
    __table_args__ = (UniqueConstraint("session_id", "person_id"),)
    id: int | None = _key()
    session_id: int = _to("session.id")
    person_id: int = _to("person.id")
    effort: int | None = None
    hurt: str | None = None
    changed_at: datetime


class ClassRow(Row, table=True):
    """A class. `start` is local text: `2026-03-03T18:30` on the clock of `zone`."""

    __tablename__ = "training_class"
    __table_args__ = (Index(None, "group_id", "state"),)
    id: int | None = _key()
    group_id: int = _to("training_group.id")
    author_id: int = _to("person.id")
    title: str
    zone: str
    start: str
    rule: str | None = None
    minutes: int
    link: str | None = None
    state: str
    replaces_id: int | None = _maybe_to("training_class.id")
    created_at: datetime


class OccurrenceRow(Row, table=True):
    """What was decided about one date of a class; no row means as the rule says. `slot`: 202603031830."""

    __tablename__ = "occurrence"
    class_id: int = _to("training_class.id", primary_key=True)
    slot: int = Field(sa_type=BigInteger, primary_key=True)
    state: str
    moved_to: int | None = Field(default=None, sa_type=BigInteger)
    changed_at: datetime


class SignUpRow(Row, table=True):
    __tablename__ = "sign_up"
    __table_args__ = (
        UniqueConstraint("person_id", "class_id", "slot"),
        Index(None, "class_id", "slot"),
    )
    id: int | None = _key()
    person_id: int = _to("person.id")
    class_id: int = _to("training_class.id")
    slot: int = Field(sa_type=BigInteger)
    coming: bool
    attended: bool | None = None
    changed_at: datetime


class HabitsRow(Row, table=True):
    """How a person wants to be told: their own zone, quiet hours (`22:00`), the hour of a coach's digest."""

    __tablename__ = "habits"
    person_id: int = _to("person.id", primary_key=True)
    zone: str | None = None
    quiet_start: str | None = None
    quiet_end: str | None = None
    digest_at: str | None = None
    changed_at: datetime


class QuestionRow(Row, table=True):
    __tablename__ = "question"
    chat_id: int = _to("chat.id", primary_key=True)
    kind: str
    refs: dict[str, Any] = _json()
    asked_at: datetime


class InboxRow(Row, table=True):
    __tablename__ = "inbox"
    __table_args__ = (Index(None, "state", "lane", "id"), Index(None, "state", "id"))
    id: int | None = _key()
    update_id: int = Field(sa_type=BigInteger, unique=True)
    lane: int = Field(sa_type=BigInteger)
    body: dict[str, Any] = _json()
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
    id: int | None = _key()
    chat_id: int = _to("chat.id")
    purpose: str
    method: str
    payload: dict[str, Any] = _json()
    refs: dict[str, Any] = _json()
    key: str = Field(unique=True)
    subject: str | None = None
    edits_id: int | None = _maybe_to("outbox.id")
    priority: int
    due_at: datetime
    expires_at: datetime | None = None
    state: str
    leased_until: datetime | None = None
    message_id: int | None = Field(default=None, sa_type=BigInteger)
    tries: int = 0
    resends: int = 0
    created_at: datetime
    settled_at: datetime | None = None


class FileRow(Row, table=True):
    """What a letter carries, until the letter has its end."""

    __tablename__ = "file"
    outbox_id: int = _to("outbox.id", primary_key=True)
    name: str
    content: bytes


class AttemptRow(Row, table=True):
    """One try to send a letter; without an outcome while it is on its way."""

    __tablename__ = "attempt"
    __table_args__ = (UniqueConstraint("outbox_id", "number"),)
    id: int | None = _key()
    outbox_id: int = _to("outbox.id")
    number: int
    started_at: datetime
    ended_at: datetime | None = None
    outcome: str | None = None
    detail: str | None = None


class DueRow(Row, table=True):
    __tablename__ = "due"
    __table_args__ = (Index(None, "state", "at", "id"),)
    id: int | None = _key()
    key: str = Field(unique=True)
    kind: str
    at: datetime
    refs: dict[str, Any] = _json()
    state: str
    done_at: datetime | None = None


def _table(row: type[Row]) -> Table:
    return Row.metadata.tables[str(row.__tablename__)]


person = _table(PersonRow)
chat = _table(ChatRow)
group = _table(GroupRow)
membership = _table(MembershipRow)
consent = _table(ConsentRow)
profile = _table(ProfileRow)
evidence = _table(EvidenceRow)
document = _table(DocumentRow)
session = _table(SessionRow)
session_revision = _table(SessionRevisionRow)
version = _table(VersionRow)
adjustment = _table(AdjustmentRow)
score = _table(ScoreRow)
coach_order = _table(CoachOrderRow)
score_mark = _table(ScoreMarkRow)
report = _table(ReportRow)
training_class = _table(ClassRow)
occurrence = _table(OccurrenceRow)
sign_up = _table(SignUpRow)
habits = _table(HabitsRow)
question = _table(QuestionRow)
inbox = _table(InboxRow)
outbox = _table(OutboxRow)
file = _table(FileRow)
attempt = _table(AttemptRow)
due = _table(DueRow)
