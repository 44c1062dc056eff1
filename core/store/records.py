"""What the store hands out: frozen records with domain values inside, never table rows."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import date, datetime, time
from enum import StrEnum
from typing import Any, Literal

from core.calendar.values import Class, Quiet
from core.measures import MassUnit
from core.scaling.values import Pin, Spot, Version
from core.scores.values import Hurt, Mark, Score
from core.sessions.values import Session


class ChatKind(StrEnum):
    PRIVATE = "private"
    GROUP = "group"


class GroupState(StrEnum):
    """New until its zone is known; left when the bot was taken out."""

    NEW = "new"
    READY = "ready"
    LEFT = "left"


class Role(StrEnum):
    COACH = "coach"
    ATHLETE = "athlete"


class SessionState(StrEnum):
    DRAFT = "draft"
    SCHEDULED = "scheduled"
    POSTED = "posted"
    DISCARDED = "discarded"


class VersionState(StrEnum):
    CURRENT = "current"
    REPLACED = "replaced"


class ScoreState(StrEnum):
    """Not counted: a coach decided so, and may decide otherwise."""

    COUNTS = "counts"
    NOT_COUNTED = "not_counted"
    CORRECTED = "corrected"
    WITHDRAWN = "withdrawn"


class ClassState(StrEnum):
    """Proposed until its coach says yes; ended or discarded, nobody meets any more."""

    PROPOSED = "proposed"
    LIVE = "live"
    ENDED = "ended"
    DISCARDED = "discarded"


class OccurrenceState(StrEnum):
    CANCELLED = "cancelled"
    MOVED = "moved"


class InboxState(StrEnum):
    """Parked: failed too often; kept with its error, out of its lane's way."""

    WAITING = "waiting"
    DONE = "done"
    PARKED = "parked"


class Purpose(StrEnum):
    """What a letter is for; decides its priority and whether it may be sent a second time."""

    TAP = "tap"
    ANSWER = "answer"
    VERSION = "version"
    POST = "post"
    BOARD = "board"
    REMINDER = "reminder"
    BULK = "bulk"


class LetterState(StrEnum):
    """Unknown: maybe delivered, not sent again. Dropped: too late, superseded, or its original is gone."""

    WAITING = "waiting"
    LEASED = "leased"
    SENT = "sent"
    UNKNOWN = "unknown"
    REFUSED = "refused"
    DROPPED = "dropped"


class Outcome(StrEnum):
    """How one attempt ended. Not sent: surely not, so it may be tried again. Too late: no use any more."""

    SENT = "sent"
    NOT_SENT = "not_sent"
    UNKNOWN = "unknown"
    REFUSED = "refused"
    TOO_LATE = "too_late"


class DueState(StrEnum):
    WAITING = "waiting"
    DONE = "done"
    DROPPED = "dropped"


@dataclass(frozen=True, kw_only=True, slots=True)
class Person:
    """A human of the platform. `user_id` is the platform's, `id` ours."""

    id: int
    user_id: int
    name: str
    language: str
    created_at: datetime


@dataclass(frozen=True, kw_only=True, slots=True)
class Chat:
    """A place to talk. `address` is the platform's chat id, which may change; `id` never does."""

    id: int
    address: int
    kind: ChatKind
    person_id: int | None
    reachable: bool
    unreachable_since: datetime | None


@dataclass(frozen=True, kw_only=True, slots=True)
class Group:
    id: int
    chat_id: int
    title: str
    zone: str | None
    units: MassUnit
    state: GroupState
    created_at: datetime


@dataclass(frozen=True, kw_only=True, slots=True)
class Membership:
    """`pair`: which load of a written pair is meant; `lead_minutes`: how long before a class to remind."""

    id: int
    person: Person
    group_id: int
    role: Role
    pair: Literal[1, 2] | None
    shares_limits: bool
    lead_minutes: int
    joined_at: datetime
    left_at: datetime | None

    @property
    def person_id(self) -> int:
        return self.person.id


@dataclass(frozen=True, kw_only=True, slots=True)
class SessionRecord:
    """One revision of a session; `text` is the coach's own."""

    id: int
    group_id: int
    author_id: int
    day: date
    title: str | None
    revision: int
    document_id: int
    text: str
    session: Session
    state: SessionState
    post_at: datetime | None
    posted_at: datetime | None


@dataclass(frozen=True, kw_only=True, slots=True)
class VersionRecord:
    """A version as it was shown; `revision` counts this athlete's versions of the session."""

    id: int
    session_id: int
    session_revision: int
    person_id: int
    document_id: int
    revision: int
    version: Version
    state: VersionState
    shown_at: datetime


@dataclass(frozen=True, kw_only=True, slots=True)
class Adjustment:
    """What an athlete asked of a line: `pin` None: nothing came of it."""

    id: int
    person_id: int
    spot: Spot
    step: str
    cause: str | None
    pin: Pin | None
    made_at: datetime


@dataclass(frozen=True, kw_only=True, slots=True)
class Done:
    """A block that was done and scored: as which version, on which day of the session."""

    session_id: int
    day: date
    block: int
    score: Score
    version: Version


@dataclass(frozen=True, kw_only=True, slots=True)
class ScoreRecord:
    """`text` is what was typed; `block` counts from 0."""

    id: int
    session_id: int
    block: int
    person_id: int
    version_id: int | None
    text: str
    score: Score
    recorded_at: datetime
    entered_by: int
    state: ScoreState


@dataclass(frozen=True, kw_only=True, slots=True)
class CoachOrder:
    """What stands for a movement whenever it is written for this athlete; `session_id` None: in every session.

    The pin's block and line are those where it was decided; only what it asks for counts.
    """

    id: int
    group_id: int
    person_id: int
    session_id: int | None
    movement: str
    pin: Pin
    made_at: datetime


@dataclass(frozen=True, kw_only=True, slots=True)
class Marking:
    """One decision of a coach about a score."""

    mark: Mark
    by: str
    at: datetime


@dataclass(frozen=True, kw_only=True, slots=True)
class Report:
    """How a session felt: `effort` 0 to 10; None where it wasn't told."""

    session_id: int
    person_id: int
    effort: int | None
    hurt: Hurt | None
    changed_at: datetime


@dataclass(frozen=True, kw_only=True, slots=True)
class ClassRecord:
    """A class of a group, with what was decided about single dates inside `of`."""

    id: int
    group_id: int
    author_id: int
    of: Class
    state: ClassState
    replaces_id: int | None
    created_at: datetime


@dataclass(frozen=True, kw_only=True, slots=True)
class SignUp:
    """Whether a person comes on the date `slot` (its original local start); `attended`: as they told."""

    person_id: int
    class_id: int
    slot: int
    coming: bool
    attended: bool | None


@dataclass(frozen=True, kw_only=True, slots=True)
class ReminderHabits:
    """What a person told about being reminded; None where the group's clock or a default serves."""

    zone: str | None = None
    quiet: Quiet | None = None
    digest_at: time | None = None


@dataclass(frozen=True, kw_only=True, slots=True)
class OpenQuestion:
    """The one free-text question that is open in a chat."""

    chat_id: int
    kind: str
    refs: Mapping[str, Any]
    asked_at: datetime


@dataclass(frozen=True, kw_only=True, slots=True)
class InboxItem:
    """A raw update. `attempts`: how often handling it has failed."""

    id: int
    update_id: int
    lane: int
    body: Mapping[str, Any]
    received_at: datetime
    attempts: int


# Methods whose letters carry a file.
CARRYING = frozenset({"send_document", "send_photo", "send_voice"})


@dataclass(frozen=True, kw_only=True, slots=True)
class LetterFile:
    name: str
    content: bytes


@dataclass(frozen=True, kw_only=True, slots=True)
class NewLetter:
    """A message to be sent.

    `key`: the unique business key; a second letter with it is left out. `refs`: what a reply to it speaks of.
    `subject`: what this letter is the newest state of; waiting letters of the same subject give way to it.
    `edits_id`: the letter whose sent message this one edits. `due_at` None means now; past `expires_at` it is
    no longer worth sending. `file`: what a method of `CARRYING` carries; the payload holds its caption.
    """

    chat_id: int
    purpose: Purpose
    method: str
    payload: Mapping[str, Any]
    key: str
    refs: Mapping[str, Any] = field(default_factory=dict)
    subject: str | None = None
    edits_id: int | None = None
    due_at: datetime | None = None
    expires_at: datetime | None = None
    file: LetterFile | None = None


@dataclass(frozen=True, kw_only=True, slots=True)
class Letter:
    """A letter in the outbox.

    `address` and `chat_kind`: the chat's of now. `message_id`: the sent message. `edits_message_id`: the one
    to be edited, once known. `tries`: attempts so far; `resends`: how many of them came after an unknown end.
    `payload` is empty once it was sent or dropped: what was said is no longer ours to keep. `file` comes only
    with a lease.
    """

    id: int
    chat_id: int
    address: int
    chat_kind: ChatKind
    purpose: Purpose
    method: str
    payload: Mapping[str, Any]
    key: str
    refs: Mapping[str, Any]
    subject: str | None
    edits_id: int | None
    edits_message_id: int | None
    priority: int
    due_at: datetime
    expires_at: datetime | None
    state: LetterState
    message_id: int | None
    tries: int
    resends: int
    file: LetterFile | None = None


@dataclass(frozen=True, kw_only=True, slots=True)
class Settled:
    """How sending a leased letter ended.

    `message_id` belongs to SENT. `again_at`: when to try again, for NOT_SENT and for an UNKNOWN that may be
    repeated; None means at once. `detail`: the platform's words, for people who look into it.
    """

    letter_id: int
    outcome: Outcome
    message_id: int | None = None
    again_at: datetime | None = None
    detail: str | None = None


@dataclass(frozen=True, kw_only=True, slots=True)
class Due:
    """Something due at a moment: references only, worded when it is due."""

    id: int
    key: str
    kind: str
    at: datetime
    refs: Mapping[str, Any]
