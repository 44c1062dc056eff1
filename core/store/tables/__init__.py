"""The tables: rows, not the domain. Only the store knows them; whoever imports this has them all declared."""

from core.store.tables.classes import (
    habits,
    occurrence,
    sign_up,
    training_class,
)
from core.store.tables.people import (
    chat,
    consent,
    evidence,
    group,
    membership,
    person,
    profile,
)
from core.store.tables.post import (
    attempt,
    due,
    file,
    inbox,
    outbox,
    question,
)
from core.store.tables.row import Row
from core.store.tables.training import (
    adjustment,
    coach_ok,
    coach_order,
    document,
    easy_week,
    fault,
    report,
    score,
    score_mark,
    session,
    session_revision,
    version,
)

__all__ = [
    "Row",
    "adjustment",
    "attempt",
    "chat",
    "coach_ok",
    "coach_order",
    "consent",
    "document",
    "due",
    "easy_week",
    "evidence",
    "fault",
    "file",
    "group",
    "habits",
    "inbox",
    "membership",
    "occurrence",
    "outbox",
    "person",
    "profile",
    "question",
    "report",
    "score",
    "score_mark",
    "session",
    "session_revision",
    "sign_up",
    "training_class",
    "version",
]
