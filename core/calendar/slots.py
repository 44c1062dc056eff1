"""A local start as one number that anyone can read: `202603031830`. Keys, references and buttons carry it."""

from datetime import datetime


def slot_of(local: datetime) -> int:
    """`2026-03-03T18:30` -> 202603031830."""
    return int(f"{local:%Y%m%d%H%M}")


def local_of(slot: int) -> datetime:
    """`202603031830` -> 2026-03-03T18:30. Raises ValueError for what is no moment."""
    return datetime.strptime(f"{slot:012}", "%Y%m%d%H%M")  # noqa: DTZ007 - local on purpose
