"""Who is who: people, the places they talk in, their groups."""

from dataclasses import dataclass
from datetime import datetime
from enum import StrEnum
from typing import Literal

from core.measures import MassUnit
from core.scores.values import Tolerance


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
    """A place to talk. `address` is the platform's chat id, which may change; `id` never does.

    `language`: what its person reads; None for a group, and for a private chat that is nobody's any more.
    `former_address`: where it was before it moved. `silent_until`: the platform wants no message to it before.
    `only_answers`: its person wants nothing unasked.
    """

    id: int
    address: int
    kind: ChatKind
    person_id: int | None
    reachable: bool
    unreachable_since: datetime | None
    language: str | None
    former_address: int | None = None
    silent_until: datetime | None = None
    only_answers: bool = False


@dataclass(frozen=True, kw_only=True, slots=True)
class Group:
    id: int
    chat_id: int
    title: str
    zone: str | None
    units: MassUnit
    tolerance: Tolerance
    state: GroupState
    created_at: datetime


@dataclass(frozen=True, kw_only=True, slots=True)
class Membership:
    """Who somebody is in a group.

    `own_name`: as the person calls themselves; `person.name`: as their group does. `lead_minutes`: how long before a
    class to remind. `held`: every version waits for a coach's OK. `goes_heavier`: more than written is allowed where it
    suits; `volume_first`: fewer of what is written come before an easier way.
    """

    id: int
    person: Person
    own_name: str
    group_id: int
    role: Role
    shares_limits: bool
    held: bool
    goes_heavier: bool
    volume_first: bool
    lead_minutes: int
    joined_at: datetime
    left_at: datetime | None

    @property
    def person_id(self) -> int:
        return self.person.id


@dataclass(frozen=True, kw_only=True, slots=True)
class CoachWord:
    """What an athlete said for the coaches of a group, in their own words.

    `about`: what they `spare`, whatever they `said` for them, what was `unread` and may be for them, or what
    a coach wants to `announce`. Coaches see it
    from `passed_at` on.
    """

    id: int
    group_id: int
    person_id: int
    about: Literal["spare", "said", "unread", "announce"]
    text: str
    said_at: datetime
    passed_at: datetime | None
