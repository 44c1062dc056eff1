"""The bot's door to the store: units of work, what came in, what goes out, what is due.

Whoever talks imports this and not the store itself, so that the desk stays the one way into the core.
"""

from core.store.records import (
    ChatKind,
    Due,
    GivenUp,
    InboxItem,
    InboxState,
    LetterFile,
    NewLetter,
    Offer,
    ParkedItem,
    Person,
    Purpose,
    Role,
)
from core.store.unit import Store, Unit

__all__ = [
    "ChatKind",
    "Due",
    "GivenUp",
    "InboxItem",
    "InboxState",
    "LetterFile",
    "NewLetter",
    "Offer",
    "ParkedItem",
    "Person",
    "Purpose",
    "Role",
    "Store",
    "Unit",
]
