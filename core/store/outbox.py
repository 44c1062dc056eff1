"""Letters: everything that is to be said is a row first, then sent, then settled."""

from collections.abc import Collection, Mapping, Sequence
from dataclasses import replace
from datetime import datetime
from typing import Any, cast

from sqlalchemy import JSON, RowMapping, bindparam, case, func, insert, literal, or_, select, update
from sqlmodel import UTCDateTime

from core.store import tables
from core.store.files import Files
from core.store.policy import PRIORITIES, may_go_again
from core.store.records import (
    CARRYING,
    ChatKind,
    Letter,
    LetterState,
    NewLetter,
    Outcome,
    Purpose,
    Settled,
)
from core.store.repository import Repository

_outbox, _chat, _attempt = tables.outbox, tables.chat, tables.attempt
_ahead = _outbox.alias("ahead")
_original = _outbox.alias("original")

_COLUMNS = (
    *(_outbox.c[name] for name in ("id", "chat_id", "purpose", "method", "payload", "key", "refs")),
    *(_outbox.c[name] for name in ("subject", "edits_id", "priority", "due_at", "expires_at", "state")),
    *(_outbox.c[name] for name in ("message_id", "tries", "resends")),
    _chat.c.address,
    _chat.c.kind.label("chat_kind"),
    _original.c.message_id.label("edits_message_id"),
)
_LETTERS = (
    select(*_COLUMNS)
    .join(_chat, _chat.c.id == _outbox.c.chat_id)
    .outerjoin(_original, _original.c.id == _outbox.c.edits_id)
)
_UNSENT = (LetterState.WAITING, LetterState.LEASED)
# What was said stays with the platform; here it is kept only as long as it may have to be sent.
_NOTHING = literal({}, JSON)

# An earlier letter of the same chat goes first once it is due. One that was tried keeps its place even while
# it waits to be tried again; one that was never due yet holds nothing up.
_HELD_BACK = (
    select(_ahead.c.id)
    .where(_ahead.c.chat_id == _outbox.c.chat_id, _ahead.c.id < _outbox.c.id)
    .where(_ahead.c.state.in_(_UNSENT))
    .where(
        or_(
            _ahead.c.state == LetterState.LEASED,
            _ahead.c.tries > 0,
            _ahead.c.due_at <= bindparam("now"),
        )
    )
    .exists()
)
_READY = (
    _LETTERS.where(_outbox.c.state == LetterState.WAITING)
    # In priority order the first few are found at once; by due time all that is due would have to be sorted.
    # The function keeps the database from choosing the latter.
    .where(func.coalesce(_outbox.c.due_at, _outbox.c.due_at) <= bindparam("now"))
    .where(_outbox.c.chat_id.not_in(bindparam("blocked", expanding=True)))
    .where(
        or_(
            _outbox.c.edits_id.is_(None),
            _original.c.message_id.is_not(None),
            _original.c.state.not_in(_UNSENT),
        )
    )
    .where(~_HELD_BACK)
    .order_by(_outbox.c.priority, _outbox.c.id)
    .limit(bindparam("most"))
)
_NEXT_DUE = select(func.min(_outbox.c.due_at)).where(_outbox.c.state == LetterState.WAITING)
_NEXT_DUE_AFTER = _NEXT_DUE.where(_outbox.c.due_at > bindparam("after"))
_TOO_LATE = (
    update(_outbox)
    .where(_outbox.c.state == LetterState.WAITING, _outbox.c.expires_at <= bindparam("now"))
    .values(state=LetterState.DROPPED, settled_at=bindparam("now"), payload=_NOTHING)
)
_ORPHANED = (
    update(_outbox)
    .where(_outbox.c.state == LetterState.WAITING, _outbox.c.edits_id.is_not(None))
    .where(
        select(_original.c.id)
        .where(_original.c.id == _outbox.c.edits_id)
        .where(_original.c.state.not_in(_UNSENT), _original.c.message_id.is_(None))
        .exists()
    )
    .values(state=LetterState.DROPPED, settled_at=bindparam("now"), payload=_NOTHING)
)
_LEASE = (
    update(_outbox)
    .where(_outbox.c.id == bindparam("letter"))
    .values(state=LetterState.LEASED, leased_until=bindparam("until"), tries=_outbox.c.tries + 1)
)
_SUPERSEDE = (
    update(_outbox)
    .where(_outbox.c.subject == bindparam("about"), _outbox.c.state == LetterState.WAITING)
    .where(_outbox.c.id < bindparam("newest"), _outbox.c.id != bindparam("edited"))
    .values(state=LetterState.DROPPED, settled_at=bindparam("now"), payload=_NOTHING)
)
_END_ATTEMPT = (
    update(_attempt)
    .where(_attempt.c.outbox_id == bindparam("letter"), _attempt.c.ended_at.is_(None))
    .values(ended_at=bindparam("now"), outcome=bindparam("how"), detail=bindparam("why"))
)
# That a letter did arrive is true whatever was thought of it meanwhile; all else is told of a lease only.
_SETTLE = (
    update(_outbox)
    .where(_outbox.c.id == bindparam("letter"))
    .where(or_(_outbox.c.state == LetterState.LEASED, bindparam("becomes") == LetterState.SENT))
    .where(_outbox.c.state != LetterState.SENT)
    .values(
        state=bindparam("becomes"),
        payload=case((bindparam("becomes") == LetterState.SENT, _NOTHING), else_=_outbox.c.payload),
        message_id=bindparam("message"),
        due_at=func.coalesce(bindparam("again_at", type_=UTCDateTime()), _outbox.c.due_at),
        settled_at=bindparam("at"),
        leased_until=None,
        resends=_outbox.c.resends + bindparam("more"),
    )
)
_ENDS = {
    Outcome.SENT: LetterState.SENT,
    Outcome.REFUSED: LetterState.REFUSED,
    Outcome.NOT_SENT: LetterState.WAITING,
    Outcome.UNKNOWN: LetterState.UNKNOWN,
    Outcome.TOO_LATE: LetterState.DROPPED,
}


def _letter_of(row: RowMapping) -> Letter:
    kinds = {
        "chat_kind": ChatKind(row["chat_kind"]),
        "purpose": Purpose(row["purpose"]),
        "state": LetterState(row["state"]),
    }
    return Letter(**{**row, **kinds})


def _row_of(letter: NewLetter, now: datetime) -> dict[str, Any]:
    return {
        "chat_id": letter.chat_id,
        "purpose": letter.purpose,
        "method": letter.method,
        "payload": dict(letter.payload),
        "key": letter.key,
        "refs": dict(letter.refs),
        "subject": letter.subject,
        "edits_id": letter.edits_id,
        "priority": PRIORITIES[letter.purpose],
        "due_at": letter.due_at or now,
        "expires_at": letter.expires_at,
        "state": LetterState.WAITING,
        "tries": 0,
        "resends": 0,
        "created_at": now,
    }


class Outbox(Repository):
    async def add(self, letters: Sequence[NewLetter], now: datetime) -> dict[str, int]:
        """Key -> id of the letters that are new; a key that is known is left alone.

        Earlier waiting letters of a new letter's subject are dropped, but never the one that it edits.
        """
        rows = [_row_of(letter, now) for letter in letters]
        new = await self._add_new(_outbox, rows, "key", returning=("id", "key"))
        ids = {row["key"]: int(row["id"]) for row in new}
        carried = {ids[one.key]: one.file for one in letters if one.file and one.key in ids}
        await Files(self._connection).keep(carried)
        replacing = [
            {
                "about": letter.subject,
                "newest": ids[letter.key],
                "edited": letter.edits_id or 0,
                "now": now,
            }
            for letter in letters
            if letter.subject is not None and letter.key in ids
        ]
        if replacing:
            await self._run(_SUPERSEDE, replacing)
        return ids

    async def get(self, letter_id: int) -> Letter | None:
        row = await self._one(_LETTERS.where(_outbox.c.id == letter_id))
        return _letter_of(row) if row else None

    async def by_key(self, key: str) -> Letter | None:
        row = await self._one(_LETTERS.where(_outbox.c.key == key))
        return _letter_of(row) if row else None

    async def by_message(self, chat_id: int, message_id: int) -> Letter | None:
        """Find the letter that became this message; the latest one where it was edited since."""
        sent = _LETTERS.where(_outbox.c.chat_id == chat_id, _outbox.c.message_id == message_id)
        row = await self._one(sent.order_by(_outbox.c.id.desc()).limit(1))
        return _letter_of(row) if row else None

    async def lease(
        self, now: datetime, limit: int, until: datetime, blocked_chats: Collection[int] = ()
    ) -> list[Letter]:
        """Take up to `limit` letters to send before `until`, by priority, then age.

        Of each chat only the oldest that is due, so that its order holds; an edit waits for its original.
        What expired, or edits a letter that never got a message, is dropped when its turn comes. Opens an
        attempt for each.
        """
        letters = await self._ready(now, limit, blocked_chats)
        if any(_is_useless(letter, now) for letter in letters):
            await self._connection.execute(_TOO_LATE, {"now": now})
            await self._connection.execute(_ORPHANED, {"now": now})
            letters = await self._ready(now, limit, blocked_chats)
        if letters:
            await self._run(_LEASE, [{"letter": letter.id, "until": until} for letter in letters])
            await self._run(insert(_attempt), [_attempt_row(letter, now) for letter in letters])
        files = await Files(self._connection).of([one.id for one in letters if one.method in CARRYING])
        return [
            replace(one, state=LetterState.LEASED, tries=one.tries + 1, file=files.get(one.id))
            for one in letters
        ]

    async def settle(self, results: Sequence[Settled], now: datetime) -> None:
        """Write down how sending ended. NOT_SENT is put back; UNKNOWN too where it may go again."""
        if not results:
            return
        again = await self._may_go_again([r.letter_id for r in results if r.outcome is Outcome.UNKNOWN])
        await self._run(_END_ATTEMPT, [_attempt_end(result, now) for result in results])
        await self._run(_SETTLE, [_settlement(result, result.letter_id in again, now) for result in results])

    async def recover(self, now: datetime, at_start: bool = False) -> int:
        """Settle as unknown each lease that ran out; with `at_start` every lease, since its process is dead.

        How many there were. `at_start` is only for the one process that sends.
        """
        lost = select(_outbox.c.id).where(_outbox.c.state == LetterState.LEASED)
        if not at_start:
            lost = lost.where(_outbox.c.leased_until <= now)
        ids = [row["id"] for row in await self._all(lost)]
        await self.settle([Settled(letter_id=i, outcome=Outcome.UNKNOWN) for i in ids], now)
        return len(ids)

    async def next_due_at(self, after: datetime | None = None) -> datetime | None:
        """When the next waiting letter is due (later than `after`); None if none waits."""
        if after is None:
            return cast("datetime | None", await self._value(_NEXT_DUE))
        return cast("datetime | None", await self._value(_NEXT_DUE_AFTER, {"after": after}))

    async def _ready(self, now: datetime, limit: int, blocked: Collection[int]) -> list[Letter]:
        values = {"now": now, "blocked": list(blocked), "most": limit}
        found = await self._connection.execute(_READY, values)
        return [_letter_of(row) for row in found.mappings()]

    async def _may_go_again(self, ids: Sequence[int]) -> set[int]:
        if not ids:
            return set()
        rows = await self._all(
            select(_outbox.c.id, _outbox.c.purpose, _outbox.c.method, _outbox.c.resends).where(
                _outbox.c.id.in_(ids)
            )
        )
        return {
            row["id"] for row in rows if may_go_again(Purpose(row["purpose"]), row["method"], row["resends"])
        }


def _is_useless(letter: Letter, now: datetime) -> bool:
    too_late = letter.expires_at is not None and letter.expires_at <= now
    return too_late or (letter.edits_id is not None and letter.edits_message_id is None)


def _attempt_row(letter: Letter, now: datetime) -> dict[str, Any]:
    return {"outbox_id": letter.id, "number": letter.tries + 1, "started_at": now}


def _attempt_end(result: Settled, now: datetime) -> dict[str, Any]:
    return {"letter": result.letter_id, "now": now, "how": result.outcome, "why": result.detail}


def _settlement(result: Settled, again: bool, now: datetime) -> Mapping[str, Any]:
    becomes = LetterState.WAITING if again else _ENDS[result.outcome]
    return {
        "letter": result.letter_id,
        "becomes": becomes,
        "message": result.message_id,
        "again_at": result.again_at,
        "at": None if becomes is LetterState.WAITING else now,
        "more": int(again),
    }
