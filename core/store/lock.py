"""One process at a time on a database: a lock that dies with its process, however that dies."""

import fcntl
import os
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from core.store.engine import path_of
from core.store.troubles import DatabaseTrouble


@contextmanager
def alone_on(place: str | Path) -> Iterator[None]:
    """Hold the database for this process. Raises DatabaseTrouble at once where another one does.

    The lock is on a file beside it, never on the database itself: closing that would drop SQLite's own locks. What is
    no file (in memory, or on a server) isn't locked.
    """
    path = path_of(place)
    if path is None:
        yield
        return
    file = _opened(path)
    try:
        _lock(file, path)
        yield
    finally:
        os.close(file)


def _opened(path: Path) -> int:
    beside = path.with_name(f"{path.name}.lock")
    try:
        return os.open(beside, os.O_RDWR | os.O_CREAT | os.O_CLOEXEC, 0o600)
    except FileNotFoundError:
        raise DatabaseTrouble(str(path), f"there is no folder {path.parent}.") from None
    except OSError as error:
        what = "it can't be written to: look at the rights of its folder, and whether its disk is full or read-only"
        raise DatabaseTrouble(str(path), f"{what} ({error.strerror}).") from None


def _lock(file: int, path: Path) -> None:
    try:
        fcntl.flock(file, fcntl.LOCK_EX | fcntl.LOCK_NB)
    except BlockingIOError:
        holder = os.pread(file, 20, 0).decode(errors="replace").strip() or "unknown"
        raise DatabaseTrouble(
            str(path),
            f"another process (number {holder}) is using it. Stop that one first, or give this one its own database.",
        ) from None
    try:
        os.ftruncate(file, 0)
        os.pwrite(file, str(os.getpid()).encode(), 0)
    except OSError:
        return  # whose it is can't be noted on a full disk; it is held all the same
