"""Copies of a database: made while it is in use, brought back, looked through. SQLite files only."""

import os
import sqlite3
from collections.abc import Iterator, Sequence
from contextlib import closing, contextmanager
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path

from core.store.engine import path_of
from core.store.lock import alone_on
from core.store.migrate import newest
from core.store.records import DueState, InboxState, LetterState
from core.store.troubles import DatabaseTrouble, trouble_of

_MOST_FINDINGS = 20
_ONLY_OURS = 0o600
_HEADER = b"SQLite format 3\x00"


@dataclass(frozen=True, slots=True)
class Looked:
    """What is in a database: `findings` say what is wrong with it, none if nothing is."""

    path: Path
    revision: str | None
    findings: tuple[str, ...]
    counts: dict[str, int]


@dataclass(frozen=True, slots=True)
class Restored:
    """What came of it: where what was there before is kept, and what of the copy is too old to be sent."""

    path: Path
    kept: Path | None
    letters_dropped: int
    dues_dropped: int


def back_up(place: str | Path, to: Path) -> Looked:
    """Copy the database as it is at this moment, whole even while it is written to. Raises DatabaseTrouble.

    Without what was erased; only this user may read it. A file that is there already is left alone.
    """
    path = _file(place)
    if to.exists():
        raise DatabaseTrouble(
            str(path), f"there is a file {to} already; it is left as it is. Choose another name."
        )
    beside = to.with_name(f"{to.name}.part")
    beside.unlink(missing_ok=True)
    with _told_of(path):
        os.close(os.open(beside, os.O_CREAT | os.O_WRONLY, _ONLY_OURS))
        with closing(_reading(path)) as connection:
            connection.execute("VACUUM INTO ?", (str(beside),))
        found = look_through(beside)
        if found.findings:
            beside.unlink()
            raise DatabaseTrouble(str(path), f"a copy would be damaged: {found.findings[0]}")
        _settle(beside)
        beside.replace(to)
    return found


def restore(place: str | Path, copy: Path, now: datetime) -> Restored:
    """Put a copy in the database's place; what was there is kept beside it. Raises DatabaseTrouble.

    Letters that still waited in the copy were sent since, most likely, and dues that have passed are past: both are
    dropped. What people had said and wasn't handled yet stays, and is handled at the next start.
    """
    path = path_of(place)
    if path is None:
        raise DatabaseTrouble(str(place), "only a database in a file can be restored.")
    found = look_through(copy)
    if found.findings:
        raise DatabaseTrouble(str(copy), f"it is no good copy: {found.findings[0].partition(';')[0]}.")
    with alone_on(path), _told_of(path):
        fresh = path.with_name(f"{path.name}.restoring")
        fresh.unlink(missing_ok=True)
        with closing(_reading(copy)) as connection:
            connection.execute("VACUUM INTO ?", (str(fresh),))
        letters, dues = _let_go_of_the_old(fresh, now)
        fresh.chmod(_ONLY_OURS)
        _settle(fresh)
        kept = _put_aside(path, now)
        fresh.replace(path)
        _settle(path)
    return Restored(path, kept, letters, dues)


def look_through(place: str | Path) -> Looked:
    """Read every page and every reference; changes nothing, and may be done while the bot runs."""
    path = _file(place)
    if path.stat().st_size == 0:
        return Looked(path, None, ("the file is empty",), {})
    try:
        with closing(_reading(path)) as connection:
            findings = [*_damage(connection), *_loose_ends(connection)]
            revision = _revision(connection)
            counts = dict(_counts(connection)) if revision is not None and not findings else {}
    except sqlite3.Error as error:
        trouble = trouble_of(error, str(path))
        return Looked(path, None, (trouble.what if trouble else str(error),), {})
    if strange := _strange(revision):
        findings.append(strange)
    return Looked(path, revision, tuple(findings), counts)


def must_be_usable(place: str | Path) -> None:
    """A quick look before a start. Raises DatabaseTrouble for a file that can be no database of ours."""
    path = path_of(place)
    if path is None or not path.exists():
        return
    if path.is_dir():
        raise DatabaseTrouble(str(path), "this is a folder, not a file.")
    try:
        with path.open("rb") as file:
            beginning = file.read(len(_HEADER))
    except OSError as error:
        raise DatabaseTrouble(str(path), f"it can't be read ({error.strerror}).") from None
    if not beginning:
        raise DatabaseTrouble(
            str(path),
            "the file is empty, as if its content was lost. Bring a copy back, or remove it to begin anew.",
        )
    if beginning != _HEADER:
        raise DatabaseTrouble(str(path), "this file is no database, or its beginning is broken.")


def must_be_current(place: str | Path) -> None:
    """For what looks into a database and upgrades no tables. Raises DatabaseTrouble for any but the newest."""
    must_be_usable(place)
    path = path_of(place)
    if path is None:
        return
    with _told_of(path), closing(_reading(path)) as connection:
        known = _revision(connection)
    if strange := _strange(known):
        raise DatabaseTrouble(str(path), f"{strange}.")
    if known != newest():
        older = f"its tables (number {known}) are older than this program (number {newest()})."
        raise DatabaseTrouble(str(path), f"{older} Start the bot once: it brings them up to date.")


def _strange(revision: str | None) -> str | None:
    """What is wrong with tables of this revision, where this program can't know them."""
    if revision is None:
        return "these are not Bellwether's tables"
    if revision > newest():
        return f"its tables (number {revision}) are newer than this program (number {newest()}): update it"
    return None


def _file(place: str | Path) -> Path:
    path = path_of(place)
    if path is None:
        raise DatabaseTrouble(str(place), "this works with a database in a file only.")
    if not path.is_file():
        raise DatabaseTrouble(str(path), "there is no such file.")
    return path


def _reading(path: Path) -> sqlite3.Connection:
    return sqlite3.connect(f"{path.absolute().as_uri()}?mode=ro", uri=True, timeout=30)


@contextmanager
def _told_of(path: Path) -> Iterator[None]:
    try:
        yield
    except (sqlite3.Error, OSError) as error:
        trouble = trouble_of(error, str(path))
        raise trouble or DatabaseTrouble(str(path), f"that didn't work: {error}.") from error


def _damage(connection: sqlite3.Connection) -> list[str]:
    found = [row[0] for row in connection.execute(f"PRAGMA integrity_check({_MOST_FINDINGS})")]
    return [] if found == ["ok"] else found


def _loose_ends(connection: sqlite3.Connection) -> list[str]:
    rows = connection.execute("PRAGMA foreign_key_check").fetchmany(_MOST_FINDINGS)
    return [f"row {row[1]} of {row[0]} speaks of a row of {row[2]} that isn't there" for row in rows]


def _revision(connection: sqlite3.Connection) -> str | None:
    there = connection.execute("SELECT 1 FROM sqlite_master WHERE name = 'alembic_version'").fetchone()
    row = connection.execute("SELECT version_num FROM alembic_version").fetchone() if there else None
    return row[0] if row else None


_COUNTED = (
    ("people", "SELECT count(*) FROM person", ()),
    ("groups", "SELECT count(*) FROM training_group", ()),
    ("sessions", "SELECT count(*) FROM session", ()),
    ("scores", "SELECT count(*) FROM score", ()),
    ("updates waiting", "SELECT count(*) FROM inbox WHERE state = ?", (InboxState.WAITING,)),
    ("updates put aside", "SELECT count(*) FROM inbox WHERE state = ?", (InboxState.PARKED,)),
    ("letters waiting", "SELECT count(*) FROM outbox WHERE state = ?", (LetterState.WAITING,)),
    ("letters refused", "SELECT count(*) FROM outbox WHERE state = ?", (LetterState.REFUSED,)),
)


def _counts(connection: sqlite3.Connection) -> Iterator[tuple[str, int]]:
    for name, query, values in _COUNTED:
        yield name, connection.execute(query, values).fetchone()[0]


def _let_go_of_the_old(path: Path, now: datetime) -> tuple[int, int]:
    """How many letters and dues."""
    moment = _as_stored(now)
    unsent = (LetterState.WAITING, LetterState.LEASED)
    with closing(sqlite3.connect(path)) as connection, connection:
        letters = connection.execute(
            "UPDATE outbox SET state = ?, payload = '{}', settled_at = ?, leased_until = NULL WHERE state IN (?, ?)",
            (LetterState.DROPPED, moment, *unsent),
        ).rowcount
        connection.execute("DELETE FROM file")
        dues = connection.execute(
            "UPDATE due SET state = ?, done_at = ? WHERE state = ? AND at < ?",
            (DueState.DROPPED, moment, DueState.WAITING, moment),
        ).rowcount
    return letters, dues


def _as_stored(moment: datetime) -> str:
    return moment.replace(tzinfo=None).isoformat(sep=" ", timespec="microseconds")


def _put_aside(path: Path, now: datetime) -> Path | None:
    """Keep what is there, with its log, under another name."""
    there = [one for one in _with_logs(path) if one.exists()]
    if not path.exists():
        for log in there:
            log.unlink()
        return None
    kept = path.with_name(f"{path.name}.before-{now:%Y%m%d-%H%M%S}")
    for one in there:
        one.rename(kept.with_name(kept.name + one.name.removeprefix(path.name)))
    return kept


def _with_logs(path: Path) -> Sequence[Path]:
    return [path.with_name(path.name + end) for end in ("-wal", "-shm", "")]


def _settle(path: Path) -> None:
    """On the disk, the name too."""
    for one in (path, path.parent):
        file = os.open(one, os.O_RDONLY)
        try:
            os.fsync(file)
        finally:
            os.close(file)
