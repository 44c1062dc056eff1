"""The operator's door to the store: copies, checks, and what is wrong with a database."""

from core.store.copies import Looked, Restored, back_up, look_through, must_be_current, restore
from core.store.troubles import DatabaseTrouble
from core.store.waiting import Waits, what_waits

__all__ = [
    "DatabaseTrouble",
    "Looked",
    "Restored",
    "Waits",
    "back_up",
    "look_through",
    "must_be_current",
    "restore",
    "what_waits",
]
