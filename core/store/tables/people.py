"""Who is who, and what is known of them."""

from datetime import date, datetime
from typing import Any

from sqlalchemy import BigInteger, Index, UniqueConstraint
from sqlmodel import Field

from core.store.tables.row import Row, json, key, table, to


class PersonRow(Row, table=True):
    __tablename__ = "person"
    id: int | None = key()
    user_id: int = Field(sa_type=BigInteger, unique=True)
    name: str
    language: str
    created_at: datetime


class ChatRow(Row, table=True):
    __tablename__ = "chat"
    id: int | None = key()
    address: int = Field(sa_type=BigInteger, unique=True)
    kind: str
    person_id: int | None = to("person.id", default=None, nullable=True, index=True)
    reachable: bool = True
    unreachable_since: datetime | None = None
    former_address: int | None = Field(default=None, sa_type=BigInteger, index=True)
    silent_until: datetime | None = None
    only_answers: bool = False


class GroupRow(Row, table=True):
    __tablename__ = "training_group"
    id: int | None = key()
    chat_id: int = to("chat.id", unique=True)
    title: str
    zone: str | None = None
    units: str
    lighter_percent: int = 0
    other_implement: bool = False
    state: str
    created_at: datetime


class MembershipRow(Row, table=True):
    __tablename__ = "membership"
    __table_args__ = (UniqueConstraint("person_id", "group_id"),)
    id: int | None = key()
    person_id: int = to("person.id")
    group_id: int = to("training_group.id", index=True)
    role: str
    shares_limits: bool = False
    held: bool = False
    goes_heavier: bool = False
    volume_first: bool = False
    lead_minutes: int
    joined_at: datetime
    left_at: datetime | None = None


class ConsentRow(Row, table=True):
    """Append-only: withdrawing ends a row, giving anew opens another."""

    __tablename__ = "consent"
    id: int | None = key()
    person_id: int = to("person.id", index=True)
    about: str
    given_at: datetime
    withdrawn_at: datetime | None = None


class CoachWordRow(Row, table=True):
    """What an athlete said for the coaches of a group. `told_on`: the day whose digest had it first."""

    __tablename__ = "coach_word"
    __table_args__ = (Index(None, "group_id", "told_on"),)
    id: int | None = key()
    group_id: int = to("training_group.id")
    person_id: int = to("person.id", index=True)
    about: str
    text: str
    said_at: datetime
    passed_at: datetime | None = None
    told_on: date | None = None
    forgotten_at: datetime | None = None


class ProfileRow(Row, table=True):
    """A profile without its name (the person's) and evidence (rows of their own)."""

    __tablename__ = "profile"
    person_id: int = to("person.id", primary_key=True)
    schema_number: int
    body: dict[str, Any] = json()
    changed_at: datetime


class EvidenceRow(Row, table=True):
    __tablename__ = "evidence"
    id: int | None = key()
    person_id: int = to("person.id", index=True)
    movement: str
    kind: str
    day: date | None = None
    schema_number: int
    body: dict[str, Any] = json()
    added_at: datetime


person = table(PersonRow)
chat = table(ChatRow)
group = table(GroupRow)
membership = table(MembershipRow)
coach_word = table(CoachWordRow)
consent = table(ConsentRow)
profile = table(ProfileRow)
evidence = table(EvidenceRow)
