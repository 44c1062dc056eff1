"""What is trained: sessions, their versions, and what came of them."""

from dataclasses import dataclass
from datetime import date, datetime
from enum import StrEnum

from core.forecast.values import Forecast
from core.scaling.orders import Fault, Pin
from core.scaling.values import Spot, Version
from core.scores.values import Hurt, Mark, Score
from core.sessions.values import Session


class SessionState(StrEnum):
    DRAFT = "draft"
    SCHEDULED = "scheduled"
    POSTED = "posted"
    WITHDRAWN = "withdrawn"  # was posted, and its coach took it back
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


@dataclass(frozen=True, kw_only=True, slots=True)
class SessionRecord:
    """One revision of a session; `text` is the coach's own. `replaces_id`: the posted one that it is a change of."""

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
    replaces_id: int | None = None


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
class CoachOrder:
    """What stands for a movement whenever it is written for this athlete; `session_id` None: in every session.

    `person_id` None: for everybody in the group.

    The pin's block and line are those where it was decided; only what it asks for counts.
    """

    id: int
    group_id: int
    person_id: int | None
    session_id: int | None
    movement: str
    pin: Pin
    made_at: datetime


@dataclass(frozen=True, kw_only=True, slots=True)
class FaultRecord:
    """What a coach noted about one athlete of a group: it stands from `made_at` until `lifted_at`."""

    id: int
    group_id: int
    person_id: int
    fault: Fault
    by_id: int
    made_at: datetime | None
    lifted_at: datetime | None


@dataclass(frozen=True, slots=True)
class Told:
    """How a score was told. `text`: what of the words is the score; `all_of_it`: everything, where that says more.

    `message`: the chat and the platform's id of it.
    """

    text: str
    all_of_it: str | None = None
    message: tuple[int, int] | None = None


@dataclass(frozen=True, kw_only=True, slots=True)
class ScoreRecord:
    """`text` is what was typed of the score itself; `block` counts from 0."""

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
class Done:
    """A block that was done and scored: as which version, on which day of the session, and how hard it was, of 10."""

    score_id: int
    session_id: int
    day: date
    block: int
    score: Score
    version: Version
    foreseen: Forecast | None = None
    effort: int | None = None


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
