"""Sessions, versions and scores."""

from datetime import date, datetime
from typing import Any

from sqlalchemy import JSON, BigInteger, Index, UniqueConstraint
from sqlmodel import Field

from core.store.tables.row import Row, json, key, maybe_to, table, to


class DocumentRow(Row, table=True):
    """Immutable."""

    __tablename__ = "document"
    id: int | None = key()
    kind: str
    schema_number: int
    body: dict[str, Any] = json()
    created_at: datetime


class SessionRow(Row, table=True):
    __tablename__ = "session"
    __table_args__ = (
        Index(None, "group_id", "state", "day"),
        Index(None, "group_id", "state", "posted_at"),
        Index(None, "author_id", "state"),
    )
    id: int | None = key()
    group_id: int = to("training_group.id")
    author_id: int = to("person.id")
    day: date
    title: str | None = None
    revision: int
    state: str
    post_at: datetime | None = None
    posted_at: datetime | None = None
    replaces_id: int | None = maybe_to("session.id")


class SessionRevisionRow(Row, table=True):
    """Every revision is kept: versions and scores refer to the one they were made from."""

    __tablename__ = "session_revision"
    session_id: int = to("session.id", primary_key=True)
    revision: int = Field(primary_key=True)
    document_id: int = to("document.id")
    text: str
    created_at: datetime


class VersionRow(Row, table=True):
    __tablename__ = "version"
    __table_args__ = (UniqueConstraint("session_id", "person_id", "revision"),)
    id: int | None = key()
    session_id: int = to("session.id")
    session_revision: int
    person_id: int = to("person.id", index=True)
    document_id: int = to("document.id")
    revision: int
    state: str
    shown_at: datetime
    foreseen_schema: int | None = None
    foreseen: dict[str, Any] | None = Field(default=None, sa_type=JSON, nullable=True)


class AdjustmentRow(Row, table=True):
    """A line changed as its athlete asked: why, and the pin that came of it. Undone ones are kept."""

    __tablename__ = "adjustment"
    __table_args__ = (Index(None, "session_id", "person_id"),)
    id: int | None = key()
    session_id: int = to("session.id")
    person_id: int = to("person.id")
    version_id: int = to("version.id")
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
        Index(None, "told_chat_id", "told_message_id"),
    )
    id: int | None = key()
    session_id: int = to("session.id")
    block: int
    person_id: int = to("person.id", index=True)
    version_id: int | None = maybe_to("version.id")
    text: str
    schema_number: int
    body: dict[str, Any] = json()
    recorded_at: datetime
    entered_by: int = to("person.id")
    state: str
    told_chat_id: int | None = maybe_to("chat.id")
    told_message_id: int | None = Field(default=None, sa_type=BigInteger)


class ScoreHealthRow(Row, table=True):
    """What was typed with a score, whole, where it says more than the score does; `pain`: the part that hurt."""

    __tablename__ = "score_health"
    score_id: int = to("score.id", primary_key=True)
    person_id: int = to("person.id", index=True)
    text: str
    pain: str | None = None


class CoachOrderRow(Row, table=True):
    """What a coach decided for one athlete, or (without one) for all: of a session, or (without one) of all to come."""

    __tablename__ = "coach_order"
    __table_args__ = (Index(None, "group_id", "person_id"),)
    id: int | None = key()
    group_id: int = to("training_group.id")
    person_id: int | None = maybe_to("person.id")
    session_id: int | None = maybe_to("session.id")
    movement: str
    schema_number: int
    body: dict[str, Any] = json()
    by_id: int = to("person.id")
    made_at: datetime
    undone_at: datetime | None = None


class CoachOkRow(Row, table=True):
    """A coach has looked at what one athlete does in a session, and it may go out."""

    __tablename__ = "coach_ok"
    __table_args__ = (UniqueConstraint("session_id", "session_revision", "person_id"),)
    id: int | None = key()
    session_id: int = to("session.id")
    session_revision: int
    person_id: int = to("person.id", index=True)
    by_id: int = to("person.id")
    at: datetime


class FaultRow(Row, table=True):
    """How an athlete moves, noted by a coach; without `made_at` it stands for nothing: yet, or never."""

    __tablename__ = "fault"
    __table_args__ = (Index(None, "group_id", "person_id"),)
    id: int | None = key()
    group_id: int = to("training_group.id")
    person_id: int = to("person.id")
    schema_number: int
    body: dict[str, Any] = json()
    by_id: int = to("person.id")
    written_at: datetime
    made_at: datetime | None = None
    lifted_at: datetime | None = None


class ScoreMarkRow(Row, table=True):
    """What coaches decided about a score, one row each time."""

    __tablename__ = "score_mark"
    id: int | None = key()
    score_id: int = to("score.id", index=True)
    mark: str
    by_id: int = to("person.id")
    at: datetime


class ReportRow(Row, table=True):
    """How a whole session felt to one athlete; `hurt` is null until asked."""

    __tablename__ = "report"
    __table_args__ = (UniqueConstraint("session_id", "person_id"),)
    id: int | None = key()
    session_id: int = to("session.id")
    person_id: int = to("person.id")
    effort: int | None = None
    hurt: str | None = None
    changed_at: datetime


document = table(DocumentRow)
session = table(SessionRow)
session_revision = table(SessionRevisionRow)
version = table(VersionRow)
adjustment = table(AdjustmentRow)
score = table(ScoreRow)
score_health = table(ScoreHealthRow)
coach_order = table(CoachOrderRow)
coach_ok = table(CoachOkRow)
fault = table(FaultRow)
score_mark = table(ScoreMarkRow)
report = table(ReportRow)
