"""When people meet, and how they want to be reminded."""

from dataclasses import dataclass
from datetime import datetime, time
from enum import StrEnum

from core.calendar.values import Class, Quiet


class ClassState(StrEnum):
    """Proposed until its coach says yes; ended or discarded, nobody meets any more."""

    PROPOSED = "proposed"
    LIVE = "live"
    ENDED = "ended"
    DISCARDED = "discarded"


class OccurrenceState(StrEnum):
    CANCELLED = "cancelled"
    MOVED = "moved"


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
    """What a person told about being reminded; None where the group's clock or a default serves.

    `digest_at`: when a coach's evening digest comes; `wants_digest`: whether it comes at all.
    """

    zone: str | None = None
    quiet: Quiet | None = None
    digest_at: time | None = None
    wants_digest: bool = True
