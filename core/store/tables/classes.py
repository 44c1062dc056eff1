"""Classes and their dates."""

from datetime import datetime

from sqlalchemy import BigInteger, Index, UniqueConstraint
from sqlmodel import Field

from core.store.tables.row import Row, key, maybe_to, table, to


class ClassRow(Row, table=True):
    """A class. `start` is local text: `2026-03-03T18:30` on the clock of `zone`."""

    __tablename__ = "training_class"
    __table_args__ = (Index(None, "group_id", "state"),)
    id: int | None = key()
    group_id: int = to("training_group.id")
    author_id: int = to("person.id")
    title: str
    zone: str
    start: str
    rule: str | None = None
    minutes: int
    link: str | None = None
    state: str
    replaces_id: int | None = maybe_to("training_class.id")
    created_at: datetime


class OccurrenceRow(Row, table=True):
    """What was decided about one date of a class; no row means as the rule says. `slot`: 202603031830."""

    __tablename__ = "occurrence"
    class_id: int = to("training_class.id", primary_key=True)
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
    id: int | None = key()
    person_id: int = to("person.id")
    class_id: int = to("training_class.id")
    slot: int = Field(sa_type=BigInteger)
    coming: bool
    attended: bool | None = None
    changed_at: datetime


class HabitsRow(Row, table=True):
    """How a person wants to be told: their own zone, quiet hours (`22:00`), a coach's digest and its hour."""

    __tablename__ = "habits"
    person_id: int = to("person.id", primary_key=True)
    zone: str | None = None
    quiet_start: str | None = None
    quiet_end: str | None = None
    digest_at: str | None = None
    wants_digest: bool = True
    changed_at: datetime


training_class = table(ClassRow)
occurrence = table(OccurrenceRow)
sign_up = table(SignUpRow)
habits = table(HabitsRow)
