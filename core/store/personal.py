"""Everything about one person: to hand it over, and to let it go so that the file holds nothing of it any more.

Each table that refers to a person stands here once: either its rows are theirs, or they are what the group keeps and
name them no more. A test fails for one that was forgotten.
"""

import json
from collections.abc import Iterator, Mapping
from datetime import date, datetime
from typing import Any, Final

from sqlalchemy import ColumnElement, Select, Table, and_, delete, or_, select, update
from sqlalchemy import String as Text
from sqlalchemy import cast as as_type

from core.store import tables as t
from core.store.documents import FURNISHED
from core.store.people import NOBODY
from core.store.records import InboxState, LetterState, SessionState
from core.store.repository import Repository

Rows = list[dict[str, Any]]

# Theirs, children before what they refer to.
OWN: Final[tuple[Table, ...]] = (
    t.adjustment,
    t.coach_order,
    t.coach_ok,
    t.fault,
    t.score_health,
    t.score,
    t.report,
    t.sign_up,
    t.habits,
    t.evidence,
    t.profile,
    t.coach_word,
    t.consent,
    t.membership,
    t.version,
)
# What they did for a group: it stays, and belongs to nobody by name.
GROUPS_OWN: Final[Mapping[Table, str]] = {
    t.session: "author_id",
    t.training_class: "author_id",
    t.score: "entered_by",
    t.score_mark: "by_id",
    t.coach_order: "by_id",
    t.coach_ok: "by_id",
    t.fault: "by_id",
}

_ENDED = (LetterState.SENT, LetterState.UNKNOWN, LetterState.REFUSED, LetterState.DROPPED)
_HANDLED = (InboxState.DONE, InboxState.PARKED)
_SHORTEST_NAME = 3


class Personal(Repository):
    """`erased`: something was let go in this unit, so the store washes the file after it."""

    erased: bool = False

    async def everything(self, person_id: int) -> dict[str, Rows]:
        """All rows about the person, by table; values as JSON knows them, documents in their place."""
        found = {table.name: await self._rows(select(table).where(who)) for table, who in _theirs(person_id)}
        found["written_in_groups"] = await self._written_in_groups(person_id)
        return {name: rows for name, rows in found.items() if rows}

    async def _written_in_groups(self, person_id: int) -> Rows:
        """Their own words there; never what they replied to, which somebody else may have written."""
        person = await self._must(select(t.person).where(t.person.c.id == person_id))
        messages = [t.inbox.c.body[kind] for kind in ("message", "edited_message")]
        written = or_(*(one["from"]["id"].as_integer() == person["user_id"] for one in messages))
        rows = await self._all(select(t.inbox).where(t.inbox.c.lane < 0, written).order_by(t.inbox.c.id))
        return [
            {"received_at": row["received_at"].isoformat(), "group": row["lane"], "text": words}
            for row in rows
            if (words := _words(row["body"])) is not None
        ]

    async def sessions_scored(self, person_id: int) -> list[int]:
        """The sessions on whose scoreboards they may stand."""
        statement = select(t.score.c.session_id).where(t.score.c.person_id == person_id).distinct()
        return [row["session_id"] for row in await self._all(statement.order_by(t.score.c.session_id))]

    async def erase(self, person_id: int) -> None:
        """Let go of everything about the person, wherever it names them.

        Their private chat's address stays until `close_chat`, so that they can be told.
        """
        person = await self._must(select(t.person).where(t.person.c.id == person_id))
        await self._erase_messages(person["user_id"], person["name"], person_id)
        await self._erase_rows(person_id)
        await self._run(update(t.chat).where(t.chat.c.person_id == person_id).values(person_id=None))
        await self._erase_person(person_id)
        self.erased = True

    async def close_chat(self, chat_id: int) -> None:
        """Let go of a private chat that has been nobody's since its person was erased."""
        nobodys = select(t.chat.c.id).where(t.chat.c.id == chat_id, t.chat.c.person_id.is_(None))
        await self._erase_letters(nobodys)
        await self._forget_where_told(nobodys)
        await self._run(delete(t.question).where(t.question.c.chat_id.in_(nobodys)))
        await self._run(delete(t.chat).where(t.chat.c.id.in_(nobodys)))
        self.erased = True

    async def _erase_messages(self, user_id: int, name: str, person_id: int) -> None:
        chats = select(t.chat.c.id).where(t.chat.c.person_id == person_id)
        lanes = select(t.chat.c.address).where(t.chat.c.person_id == person_id)
        # What waits of theirs is dropped with the rest: it would make them known again.
        gone: dict[str, Any] = {"body": {}, "error": None, "state": InboxState.DONE}
        await self._run(update(t.inbox).where(t.inbox.c.lane.in_(lanes)).values(**gone, lane=0))
        marks = [str(user_id), *_names(name)]
        handled = t.inbox.c.state.in_(_HANDLED)
        await self._run(
            update(t.inbox).where(handled, _tells(t.inbox.c.body, marks)).values(body={}, error=None)
        )
        await self._erase_letters(chats)
        ended = t.outbox.c.state.in_(_ENDED)
        named = or_(*(_tells(told, marks) for told in (t.outbox.c.payload, t.outbox.c.buttons)))
        await self._run(update(t.outbox).where(ended, named).values(payload={}, buttons=None))

    async def _erase_letters(self, chats: Select[Any]) -> None:
        letters = select(t.outbox.c.id).where(t.outbox.c.chat_id.in_(chats))
        for table in (t.file, t.attempt):
            await self._run(delete(table).where(table.c.outbox_id.in_(letters)))
        await self._run(delete(t.outbox).where(t.outbox.c.chat_id.in_(chats)))

    async def _erase_rows(self, person_id: int) -> None:
        chats = select(t.chat.c.id).where(t.chat.c.person_id == person_id)
        scores = select(t.score.c.id).where(t.score.c.person_id == person_id)
        await self._run(delete(t.score_mark).where(t.score_mark.c.score_id.in_(scores)))
        about = or_(*(t.question.c.refs[key].as_integer() == person_id for key in ("athlete", "person")))
        asked = t.question.c.refs["chat"].as_integer().in_(chats)
        await self._run(delete(t.question).where(or_(t.question.c.chat_id.in_(chats), about, asked)))
        await self._forget_where_told(chats)
        documents = await self._documents(t.version, t.version.c.person_id == person_id)
        for table in OWN:
            await self._run(delete(table).where(table.c.person_id == person_id))
        documents += await self._erase_drafts(person_id)
        await self._run(delete(t.due).where(_due_for(person_id)))
        await self._run(delete(t.document).where(_furnished_by(person_id)))
        await self._run(delete(t.document).where(t.document.c.id.in_(documents)))

    async def _forget_where_told(self, chats: Select[Any]) -> None:
        """Scores of others that were told in these chats stay; by which message is nobody's business any more."""
        nowhere = {"told_chat_id": None, "told_message_id": None}
        await self._run(update(t.score).where(t.score.c.told_chat_id.in_(chats)).values(**nowhere))

    async def _erase_drafts(self, person_id: int) -> list[int]:
        """Sessions that no group ever saw; the documents that were theirs."""
        drafts = select(t.session.c.id).where(
            t.session.c.author_id == person_id,
            t.session.c.state.not_in((SessionState.POSTED, SessionState.WITHDRAWN)),
        )
        revisions = t.session_revision.c.session_id.in_(drafts)
        documents = await self._documents(t.session_revision, revisions)
        for table in (t.coach_order, t.coach_ok):
            await self._run(delete(table).where(table.c.session_id.in_(drafts)))
        await self._run(delete(t.session_revision).where(revisions))
        await self._run(delete(t.session).where(t.session.c.id.in_(drafts)))
        return documents

    async def _documents(self, table: Table, where: ColumnElement[bool]) -> list[int]:
        rows = await self._all(select(table.c.document_id).where(where))
        return [row["document_id"] for row in rows]

    async def _erase_person(self, person_id: int) -> None:
        """Without a trace if nothing refers to them any more; else a row that names nobody."""
        for table, column in GROUPS_OWN.items():
            if await self._one(select(table.c[column]).where(table.c[column] == person_id).limit(1)):
                nobody = {"user_id": -person_id, "name": NOBODY, "language": "en"}
                await self._change_one(t.person, person_id, **nobody)
                return
        await self._run(delete(t.person).where(t.person.c.id == person_id))

    async def _rows(self, statement: Select[Any]) -> Rows:
        rows = [{name: _plain(value) for name, value in row.items()} for row in await self._all(statement)]
        for row in rows:
            if "document_id" in row:
                document = await self._by_id(t.document, row["document_id"])
                row["document"] = document and document["body"]
        return rows


def _theirs(person_id: int) -> Iterator[tuple[Table, ColumnElement[bool]]]:
    """Each table with the condition for the rows that are about the person."""
    chats = select(t.chat.c.id).where(t.chat.c.person_id == person_id)
    lanes = select(t.chat.c.address).where(t.chat.c.person_id == person_id)
    scores = select(t.score.c.id).where(t.score.c.person_id == person_id)
    sessions = select(t.session.c.id).where(t.session.c.author_id == person_id)
    groups = select(t.membership.c.group_id).where(t.membership.c.person_id == person_id)
    yield t.person, t.person.c.id == person_id
    yield t.chat, t.chat.c.person_id == person_id
    yield t.group, t.group.c.id.in_(groups)
    for table in reversed(OWN):
        yield table, table.c.person_id == person_id
    yield t.score_mark, t.score_mark.c.score_id.in_(scores)
    yield t.question, t.question.c.chat_id.in_(chats)
    yield t.session, t.session.c.author_id == person_id
    yield t.session_revision, t.session_revision.c.session_id.in_(sessions)
    yield t.training_class, t.training_class.c.author_id == person_id
    yield t.document, _furnished_by(person_id)
    yield t.due, _due_for(person_id)
    yield t.inbox, t.inbox.c.lane.in_(lanes)
    yield t.outbox, t.outbox.c.chat_id.in_(chats)


def _due_for(person_id: int) -> ColumnElement[bool]:
    """What is to be asked of them, or reminded them of."""
    due: ColumnElement[bool] = t.due.c.refs["person"].as_integer() == person_id
    return due


def _furnished_by(person_id: int) -> ColumnElement[bool]:
    """What came and went of their equipment: documents that only an undo button refers to."""
    document = t.document.c
    return and_(document.kind == FURNISHED.name, document.body["person_id"].as_integer() == person_id)


def _names(name: str) -> list[str]:
    """How a name may stand in stored JSON: whole, and by its words; too many hits do no harm."""
    words = [name, *(word for word in name.split() if len(word) >= _SHORTEST_NAME)]
    return [json.dumps(word)[1:-1] for word in dict.fromkeys(words)]


def _tells(body: ColumnElement[Any], marks: list[str]) -> ColumnElement[bool]:
    text = as_type(body, Text)
    return or_(*(text.contains(mark, autoescape=True) for mark in marks))


def _words(body: Mapping[str, Any]) -> str | None:
    message = body.get("message") or body.get("edited_message") or {}
    words: str | None = message.get("text") or message.get("caption")
    return words


def _plain(value: Any) -> Any:
    return value.isoformat() if isinstance(value, (date, datetime)) else value
