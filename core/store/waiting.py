"""What a database holds that is still to come, read past the bot, whether it runs or is down."""

import sqlite3
from contextlib import closing
from dataclasses import dataclass
from datetime import UTC, datetime
from pathlib import Path

from core.store.engine import path_of
from core.store.records import DueState, InboxState, LetterState


@dataclass(frozen=True, slots=True)
class Ahead:
    """A moment that was set: `kind` as the desk names it, for whom it is, in which group."""

    at: datetime
    kind: str
    person: str | None
    group: str | None


@dataclass(frozen=True, slots=True)
class Waits:
    """How many updates were heard and not yet handled, how many letters were written and not yet sent, what is ahead.

    `kept`: how many people, sessions and scores are stored.
    """

    updates: int
    letters: int
    ahead: tuple[Ahead, ...]
    kept: dict[str, int]


# Of the times that a post was set for, the last one counts; what was set before passes in silence.
_AHEAD = """
SELECT due.at, due.kind, person.name, coalesce(direct.title, through.title)
FROM due
LEFT JOIN person ON person.id = json_extract(due.refs, '$.person')
LEFT JOIN training_group AS direct ON direct.id = json_extract(due.refs, '$.group')
LEFT JOIN session ON session.id = json_extract(due.refs, '$.session')
LEFT JOIN training_group AS through ON through.id = session.group_id
WHERE due.state = ? AND (
    due.kind != 'post' OR (
        session.state = 'scheduled' AND session.post_at = due.at
        AND session.revision = json_extract(due.refs, '$.revision')
    )
)
ORDER BY due.at, due.id LIMIT ?
"""
_KEPT = {"people": "person", "sessions": "session", "scores": "score"}


def what_waits(place: str | Path, most: int = 12) -> Waits | None:
    """Look into a database file; None while there is none, or it has no tables yet. `most`: moments ahead."""
    path = path_of(place)
    if path is None or not path.is_file():
        return None
    try:
        with closing(sqlite3.connect(f"{path.absolute().as_uri()}?mode=ro", uri=True)) as connection:
            return _read(connection, most)
    except sqlite3.OperationalError:
        return None


def _read(connection: sqlite3.Connection, most: int) -> Waits:
    def count(query: str, *values: str) -> int:
        number: int = connection.execute(f"SELECT count(*) FROM {query}", values).fetchone()[0]  # noqa: S608 - ours
        return number

    return Waits(
        updates=count("inbox WHERE state = ?", InboxState.WAITING),
        letters=count("outbox WHERE state IN (?, ?)", LetterState.WAITING, LetterState.LEASED),
        ahead=tuple(_ahead(*row) for row in connection.execute(_AHEAD, (DueState.WAITING, most))),
        kept={name: count(table) for name, table in _KEPT.items()},
    )


def _ahead(at: str, kind: str, person: str | None, group: str | None) -> Ahead:
    return Ahead(datetime.fromisoformat(at).replace(tzinfo=UTC), kind, person, group)
