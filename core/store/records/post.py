"""What came in, what goes out, what is due."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import datetime
from enum import StrEnum
from typing import Any

from core.store.records.people import ChatKind


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
    """Unknown: maybe delivered, and given up. Dropped: too late, superseded, or its original is gone."""

    WAITING = "waiting"
    LEASED = "leased"
    SENT = "sent"
    UNKNOWN = "unknown"
    REFUSED = "refused"
    DROPPED = "dropped"


# Never or maybe never there, and no longer tried.
GIVEN_UP = (LetterState.REFUSED, LetterState.UNKNOWN)


class Outcome(StrEnum):
    """How one attempt ended. Not sent: surely not, so it may be tried again. Too late: no use any more.

    Not taken: the platform answered with a failure of its own. Gone: there is nothing left to edit.
    """

    SENT = "sent"
    NOT_SENT = "not_sent"
    NOT_TAKEN = "not_taken"
    GONE = "gone"
    UNKNOWN = "unknown"
    REFUSED = "refused"
    TOO_LATE = "too_late"


class DueState(StrEnum):
    WAITING = "waiting"
    DONE = "done"
    DROPPED = "dropped"


@dataclass(frozen=True, kw_only=True, slots=True)
class OpenQuestion:
    """The one free-text question that is open in a chat."""

    chat_id: int
    kind: str
    refs: Mapping[str, Any]
    asked_at: datetime


@dataclass(frozen=True, kw_only=True, slots=True)
class InboxItem:
    """A raw update. `attempts`: how often handling it was begun, but for tries that the platform spoilt."""

    id: int
    update_id: int
    lane: int
    body: Mapping[str, Any]
    received_at: datetime
    attempts: int


@dataclass(frozen=True, kw_only=True, slots=True)
class ParkedItem(InboxItem):
    """A raw update that was given up, with the reason."""

    error: str | None


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
    `buttons`: label -> data of what stands under it; kept when the payload is let go, as a button may be typed.
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
    buttons: Mapping[str, str] = field(default_factory=dict)


@dataclass(frozen=True, kw_only=True, slots=True)
class Letter:
    """A letter in the outbox.

    `address` and `chat_kind`: the chat's of now. `message_id`: the sent message. `edits_message_id`: the one
    to be edited, once known. `tries`: attempts so far; `resends`: how many of them nobody knows the end of, or
    the platform failed at.
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
class Offer:
    """Label -> data of the buttons under a message of ours; `message_id` once it is known."""

    message_id: int | None
    buttons: Mapping[str, str]


@dataclass(frozen=True, kw_only=True, slots=True)
class Settled:
    """How sending a leased letter ended.

    `message_id` belongs to SENT, and so does `address`: where it was sent. `detail`: the platform's words, for
    people who look into it.
    """

    letter_id: int
    outcome: Outcome
    message_id: int | None = None
    address: int | None = None
    detail: str | None = None


@dataclass(frozen=True, slots=True)
class Settlement:
    """What followed from it: the letters `given_up`, and those `to_pin` anew, as another message stands for them."""

    given_up: frozenset[int] = frozenset()
    to_pin: frozenset[int] = frozenset()


@dataclass(frozen=True, slots=True)
class Try:
    """A message that was on its way to a chat at a moment, whatever became of it."""

    chat_id: int
    address: int
    at: datetime


@dataclass(frozen=True, kw_only=True, slots=True)
class GivenUp:
    """A letter that was refused, or tried in vain for too long. `why`: what the platform said last."""

    id: int
    purpose: str
    method: str
    state: str
    address: int
    tries: int
    created_at: datetime
    settled_at: datetime | None
    why: str | None


@dataclass(frozen=True, kw_only=True, slots=True)
class Due:
    """Something due at a moment: references only, worded when it is due."""

    id: int
    key: str
    kind: str
    at: datetime
    refs: Mapping[str, Any]
