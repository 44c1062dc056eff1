"""Persons, the chats they can be reached in, and what they consented to."""

from datetime import datetime
from typing import Final

from sqlalchemy import RowMapping, bindparam, delete, select

from core.store import tables
from core.store.records import Chat, ChatKind, GroupState, InboxState, Person
from core.store.repository import Repository, rows_by

HEALTH = "health"
NOBODY: Final = "Somebody"

_CHATS = select(tables.chat, tables.person.c.language).outerjoin(
    tables.person, tables.chat.c.person_id == tables.person.c.id
)
_CHAT_BY_ID = _CHATS.where(tables.chat.c.id == bindparam("it"))
_CHAT_BY_ADDRESS = _CHATS.where(tables.chat.c.address == bindparam("it"))
_CHAT_BY_FORMER = _CHATS.where(tables.chat.c.former_address == bindparam("it"))
_SILENT = select(tables.chat.c.id, tables.chat.c.silent_until).where(
    tables.chat.c.silent_until > bindparam("now")
)
_NEWEST_OF_PERSON = (
    _CHATS.where(tables.chat.c.person_id == bindparam("it")).order_by(tables.chat.c.id.desc()).limit(1)
)
_STANDING = select(tables.consent.c.id).where(
    tables.consent.c.person_id == bindparam("person"),
    tables.consent.c.about == bindparam("what"),
    tables.consent.c.withdrawn_at.is_(None),
)

# Chats with no address any more are kept apart below all that the platform gives.
_NOWHERE = -(2**62)


def person_of(row: RowMapping, prefix: str = "") -> Person:
    return Person(
        id=row[f"{prefix}id"],
        user_id=row[f"{prefix}user_id"],
        name=row[f"{prefix}name"],
        language=row[f"{prefix}language"],
        created_at=row[f"{prefix}created_at"],
    )


def _chat_of(row: RowMapping) -> Chat:
    return Chat(**{**row, "kind": ChatKind(row["kind"])})


class People(Repository):
    async def meet(self, user_id: int, name: str, language: str, now: datetime) -> Person:
        """Create the person of this platform user, or refresh name and language.

        An empty name is a deleted account's: it changes nothing that is known.
        """
        known = await self.by_user(user_id)
        name = name.strip() or (known.name if known else NOBODY)
        if known is None:
            row = await self._add(
                tables.person, user_id=user_id, name=name, language=language, created_at=now
            )
            return person_of(row)
        if (known.name, known.language) == (name, language):
            return known
        return person_of(await self._change_one(tables.person, known.id, name=name, language=language))

    async def get(self, person_id: int) -> Person | None:
        row = await self._by_id(tables.person, person_id)
        return person_of(row) if row else None

    async def by_user(self, user_id: int) -> Person | None:
        row = await self._one(rows_by(tables.person, "user_id"), {"it": user_id})
        return person_of(row) if row else None


class Chats(Repository):
    async def private_chat(self, person_id: int, address: int) -> Chat:
        """Find or create the chat with this person alone."""
        return await self._open(address, ChatKind.PRIVATE, person_id)

    async def group_chat(self, address: int) -> Chat:
        """Find or create a group's chat."""
        return await self._open(address, ChatKind.GROUP, None)

    async def get(self, chat_id: int) -> Chat | None:
        row = await self._one(_CHAT_BY_ID, {"it": chat_id})
        return _chat_of(row) if row else None

    async def by_address(self, address: int) -> Chat | None:
        """Find a chat by the address that it has, or had before it moved."""
        row = await self._one(_CHAT_BY_ADDRESS, {"it": address})
        if row is None:
            row = await self._one(_CHAT_BY_FORMER, {"it": address})
        return _chat_of(row) if row else None

    async def private_of(self, person_id: int) -> Chat | None:
        """Where this person can be told something in private; None if they never opened a chat."""
        row = await self._one(_NEWEST_OF_PERSON, {"it": person_id})
        return _chat_of(row) if row else None

    async def is_at(self, chat_id: int, address: int) -> bool:
        """Whether the chat is there now, and not only was there before it moved."""
        chat = await self.get(chat_id)
        return chat is not None and chat.address == address

    async def move(self, old_address: int, new_address: int) -> Chat | None:
        """Follow a chat to its new address. Told twice, it moves once; None if neither is known.

        What still waits to be handled from the old address keeps its place before all from the new one.
        """
        chat, stray = await self.by_address(old_address), await self.by_address(new_address)
        if chat is None or chat.address == new_address:
            return stray
        if stray is not None:
            await self._take_in(stray, chat)
        await self._change_one(tables.chat, chat.id, address=new_address, former_address=old_address)
        waiting = tables.inbox.c.state == InboxState.WAITING
        await self._change(tables.inbox, tables.inbox.c.lane == old_address, waiting, lane=new_address)
        return await self._known(chat.id)

    async def _take_in(self, stray: Chat, chat: Chat) -> None:
        """An update from the new address came before the move was known, and made a second chat of it."""
        outbox, group, question = tables.outbox, tables.group, tables.question
        await self._change(outbox, outbox.c.chat_id == stray.id, chat_id=chat.id)
        await self._change(group, group.c.chat_id == stray.id, state=GroupState.LEFT)
        await self._run(delete(question).where(question.c.chat_id == stray.id))
        await self._change_one(tables.chat, stray.id, address=_NOWHERE - stray.id, reachable=False)

    async def keep_silent(self, chat_id: int, until: datetime) -> None:
        """The platform wants no message to this chat until then."""
        await self._change(tables.chat, tables.chat.c.id == chat_id, silent_until=until)

    async def silent(self, now: datetime) -> dict[int, datetime]:
        """The chats that the platform wants silence towards, each with its end."""
        rows = await self._all(_SILENT, {"now": now})
        return {row["id"]: row["silent_until"] for row in rows}

    async def answer_only(self, chat_id: int, yes: bool) -> None:
        """Whether its person gets nothing but answers."""
        await self._change_one(tables.chat, chat_id, only_answers=yes)

    async def mark_reachable(self, chat_id: int, yes: bool, now: datetime) -> None:
        """`unreachable_since` keeps the first moment."""
        chat = tables.chat
        await self._change(
            chat,
            chat.c.id == chat_id,
            chat.c.reachable != yes,
            reachable=yes,
            unreachable_since=None if yes else now,
        )

    async def _open(self, address: int, kind: ChatKind, person_id: int | None) -> Chat:
        known = await self.by_address(address)
        if known is not None and known.person_id == person_id:
            return known
        if known is not None:
            # Whoever was erased and writes again is somebody new in the same chat.
            await self._change_one(tables.chat, known.id, person_id=person_id)
            return await self._known(known.id)
        row = await self._add(tables.chat, address=address, kind=kind, person_id=person_id, reachable=True)
        return await self._known(row["id"])

    async def _known(self, chat_id: int) -> Chat:
        return _chat_of(await self._must(_CHAT_BY_ID, {"it": chat_id}))


class Consents(Repository):
    """A history: each time it was given is a row of its own."""

    async def give(self, person_id: int, now: datetime, about: str = HEALTH) -> None:
        """Record a consent; giving again what is given changes nothing."""
        if not await self.given(person_id, about):
            await self._add(tables.consent, person_id=person_id, about=about, given_at=now)

    async def withdraw(self, person_id: int, now: datetime, about: str = HEALTH) -> None:
        consent = tables.consent
        await self._change(
            consent,
            consent.c.person_id == person_id,
            consent.c.about == about,
            consent.c.withdrawn_at.is_(None),
            withdrawn_at=now,
        )

    async def given(self, person_id: int, about: str = HEALTH) -> bool:
        return await self._one(_STANDING, {"person": person_id, "what": about}) is not None
