"""What a use case decides: what is to be said to whom, and what is due when. No words."""

from dataclasses import dataclass, field
from datetime import datetime, timedelta
from typing import ClassVar

from core.store.records import Purpose
from core.values import Value


class Said(Value):
    """Base of everything the bot can say; worded in `bot.words`.

    `stands_alone`: it carries a file, or asks with buttons that don't say what they are about.
    """

    stands_alone: ClassVar[bool] = False


@dataclass(frozen=True, slots=True)
class Say:
    """`what` goes to the chat `to` (row id).

    `key` makes it unique for ever (None: it belongs to its cause alone). `subject`: the newest letter of a
    subject replaces those still waiting. `edits`: the key of the letter whose message this one rewrites.
    `refs`: what a reply to it speaks of. `replies_to`: the message of that chat that it is a reply to.
    """

    to: int
    what: Said
    purpose: Purpose = Purpose.ANSWER
    key: str | None = None
    subject: str | None = None
    edits: str | None = None
    refs: dict[str, int] = field(default_factory=dict)
    expires_after: timedelta | None = None
    replies_to: int | None = None


@dataclass(frozen=True, slots=True)
class DueWish:
    """Something to do at a moment: `kind` with its references, once for ever per `key`."""

    key: str
    kind: str
    at: datetime
    refs: dict[str, int | str]


@dataclass(frozen=True, slots=True)
class Outcome:
    """`toast` is the short answer to a press, if there is more to say than silence.

    `settles`: the pressed message has its answer now and loses its buttons. `becomes`: what the pressed
    message says from now on instead.
    """

    says: tuple[Say, ...] = ()
    due: tuple[DueWish, ...] = ()
    toast: Said | None = None
    settles: bool = False
    becomes: Said | None = None

    def __add__(self, other: "Outcome") -> "Outcome":
        return Outcome(
            self.says + other.says,
            self.due + other.due,
            self.toast or other.toast,
            self.settles or other.settles,
            self.becomes or other.becomes,
        )
