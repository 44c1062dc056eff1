"""Where a row belongs that somebody names by its id: to which group, and to whom."""

from dataclasses import dataclass
from enum import StrEnum
from typing import Any, Final

from sqlalchemy import Integer, bindparam, literal, select

from core.store import tables as t
from core.store.documents import FURNISHED
from core.store.repository import Repository


class Thing(StrEnum):
    """What an id from outside may name."""

    GROUP = "group"
    SESSION = "session"
    VERSION = "version"
    SCORE = "score"
    CLASS = "class"
    FAULT = "fault"
    WORD = "word"
    LETTER = "letter"
    EVIDENCE = "evidence"
    FURNISHED = "furnished"
    ORDER = "order"


@dataclass(frozen=True, slots=True)
class Home:
    """`group_id`: None for what is a person's alone. `owner_id`: whose it is, or who wrote it; None for a group."""

    group_id: int | None
    owner_id: int | None


_NOTHING = literal(None, Integer)
_OF_SESSION = t.session.c.group_id


def _homes(table: Any, group: Any, owner: Any) -> Any:
    return select(group.label("group_id"), owner.label("owner_id")).where(table.c.id == bindparam("it"))


_HOMES: Final = {
    Thing.GROUP: _homes(t.group, t.group.c.id, _NOTHING),
    Thing.SESSION: _homes(t.session, _OF_SESSION, t.session.c.author_id),
    Thing.VERSION: _homes(t.version, _OF_SESSION, t.version.c.person_id).join(
        t.session, t.session.c.id == t.version.c.session_id
    ),
    Thing.SCORE: _homes(t.score, _OF_SESSION, t.score.c.person_id).join(
        t.session, t.session.c.id == t.score.c.session_id
    ),
    Thing.CLASS: _homes(t.training_class, t.training_class.c.group_id, t.training_class.c.author_id),
    Thing.FAULT: _homes(t.fault, t.fault.c.group_id, t.fault.c.by_id),
    Thing.WORD: _homes(t.coach_word, t.coach_word.c.group_id, t.coach_word.c.person_id),
    Thing.LETTER: _homes(t.outbox, t.group.c.id, _NOTHING).join(
        t.group, t.group.c.chat_id == t.outbox.c.chat_id
    ),
    Thing.ORDER: _homes(t.coach_order, t.coach_order.c.group_id, t.coach_order.c.by_id),
    Thing.EVIDENCE: _homes(t.evidence, _NOTHING, t.evidence.c.person_id),
    Thing.FURNISHED: _homes(t.document, _NOTHING, t.document.c.body["person_id"].as_integer()).where(
        t.document.c.kind == FURNISHED.name
    ),
}


class Belongings(Repository):
    async def home_of(self, thing: Thing, row_id: int) -> Home | None:
        """None where there is no such row."""
        row = await self._one(_HOMES[thing], {"it": row_id})
        return Home(row["group_id"], row["owner_id"]) if row else None
