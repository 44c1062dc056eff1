"""Letters: everything that is to be said is a row first, then sent, then settled."""

from collections.abc import Collection, Mapping, Sequence
from dataclasses import replace
from datetime import UTC, datetime
from typing import Any, Final, cast

from sqlalchemy import JSON, RowMapping, and_, bindparam, case, func, insert, literal, or_, select, update

from core.store import tables
from core.store.files import Files
from core.store.policy import PATIENCE, PRIORITIES, goes_anew, may_go_again
from core.store.records import (
    CARRYING,
    GIVEN_UP,
    ChatKind,
    Letter,
    LetterState,
    NewLetter,
    Offer,
    Outcome,
    Purpose,
    Settled,
    Settlement,
)
from core.store.repository import Repository
from core.store.settling import SEND, adoption, attempt_end, becomes, renews, settlement

_outbox, _chat, _attempt = tables.outbox, tables.chat, tables.attempt
_ahead = _outbox.alias("ahead")
_original = _outbox.alias("original")

_COLUMNS = (
    *(_outbox.c[name] for name in ("id", "chat_id", "purpose", "method", "payload", "key", "refs")),
    *(_outbox.c[name] for name in ("subject", "edits_id", "priority", "due_at", "expires_at", "state")),
    *(_outbox.c[name] for name in ("message_id", "tries", "resends")),
    _chat.c.address,
    _chat.c.kind.label("chat_kind"),
    # A chat that moved left its messages behind: none of its numbers means anything at the new address.
    case((_original.c.sent_to == _chat.c.address, _original.c.message_id)).label("edits_message_id"),
    _original.c.state.label("original_state"),
)
_LETTERS = (
    select(*_COLUMNS)
    .join(_chat, _chat.c.id == _outbox.c.chat_id)
    .outerjoin(_original, _original.c.id == _outbox.c.edits_id)
)
_UNSENT = (LetterState.WAITING, LetterState.LEASED)
# More messages than anything is answered with at once.
MOST_AT_ONCE: Final = 8
_SHOWN = (
    select(*(_outbox.c[name] for name in ("buttons", "key", "refs", "created_at", "message_id")))
    .where(_outbox.c.chat_id == bindparam("chat"), _outbox.c.state.in_((*_UNSENT, LetterState.SENT)))
    .where(_outbox.c.method.not_like("answer%"))
    .order_by(_outbox.c.id.desc())
    .limit(MOST_AT_ONCE)
)
_SHOWN_LATELY = _SHOWN.where(_outbox.c.created_at >= bindparam("since"))
_SHOWN_UNDER = _SHOWN.where(_outbox.c.message_id == bindparam("message"))
# Due since ever. What is to be sent at once must not wait for a clock that was set back.
AT_ONCE: Final = datetime(1970, 1, 1, tzinfo=UTC)
# What was said stays with the platform; here it is kept only as long as it may have to be sent.
_NOTHING = literal({}, JSON)

# An earlier letter of the same chat goes first once it is due, as long as there is patience with it. One that was
# tried keeps its place even while it waits to be tried again; one that was never due yet holds nothing up.
_HELD_BACK = (
    select(_ahead.c.id)
    .where(_ahead.c.chat_id == _outbox.c.chat_id, _ahead.c.id < _outbox.c.id)
    .where(_ahead.c.state.in_(_UNSENT))
    .where(
        or_(
            _ahead.c.state == LetterState.LEASED,
            and_(
                _ahead.c.resends < PATIENCE,
                or_(_ahead.c.tries > 0, _ahead.c.due_at <= bindparam("now")),
            ),
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
    .where(_outbox.c.id.not_in(bindparam("resting", expanding=True)))
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
_DROP = (
    update(_outbox)
    .where(_outbox.c.id == bindparam("letter"))
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
        method=bindparam("how"),
        message_id=bindparam("message"),
        sent_to=bindparam("where"),
        settled_at=bindparam("at"),
        leased_until=None,
        resends=_outbox.c.resends + bindparam("more"),
    )
)
# What was sent anew stands in the place of what it was to edit: later edits, and replies, mean the new message.
_ADOPT = (
    update(_outbox)
    .where(_outbox.c.id == bindparam("original"))
    .values(
        message_id=bindparam("message"), sent_to=bindparam("where"), state=LetterState.SENT, payload=_NOTHING
    )
)
_PUT_BACK = (
    update(_outbox)
    .where(_outbox.c.id == bindparam("letter"), _outbox.c.state == LetterState.LEASED)
    .values(state=LetterState.WAITING, leased_until=None)
)
_SETTLING = (
    select(
        *(_outbox.c[name] for name in ("id", "purpose", "method", "due_at", "created_at", "edits_id")),
        _original.c.message_id.label("original_message"),
        _original.c.sent_to.label("original_address"),
        _original.c.pinned,
    )
    .outerjoin(_original, _original.c.id == _outbox.c.edits_id)
    .where(_outbox.c.id.in_(bindparam("ids", expanding=True)))
)
_KILLED = "the process ended before there was an answer"


def _cause(key: str) -> list[str]:
    """`update:7:2` -> what its letters have in common: what they answer, or what they are about."""
    return key.split(":")[:2]


def _letter_of(row: RowMapping) -> Letter:
    kinds = {
        "chat_kind": ChatKind(row["chat_kind"]),
        "purpose": Purpose(row["purpose"]),
        "state": LetterState(row["state"]),
    }
    found = {**row, **kinds}
    original = found.pop("original_state")
    is_orphan = row["edits_id"] is not None and row["edits_message_id"] is None and original not in _UNSENT
    if is_orphan and goes_anew(Purpose(row["purpose"]), row["method"]):
        found["method"] = SEND
    return Letter(**found)


def _row_of(letter: NewLetter, now: datetime) -> dict[str, Any]:
    return {
        "chat_id": letter.chat_id,
        "purpose": letter.purpose,
        "method": letter.method,
        "payload": dict(letter.payload),
        "key": letter.key,
        "refs": dict(letter.refs),
        "buttons": dict(letter.buttons) or None,
        "subject": letter.subject,
        "edits_id": letter.edits_id,
        "priority": PRIORITIES[letter.purpose],
        "due_at": letter.due_at or AT_ONCE,
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

    async def with_buttons(self, prefix: str) -> list[str]:
        """List the keys that begin so, of letters with buttons that no other letter has edited."""
        edited = select(_outbox.c.edits_id).where(_outbox.c.edits_id.is_not(None))
        found = select(_outbox.c.key, _outbox.c.buttons).where(
            _outbox.c.key.startswith(prefix, autoescape=True), _outbox.c.id.not_in(edited)
        )
        return [row["key"] for row in await self._all(found.order_by(_outbox.c.id)) if row["buttons"]]

    async def by_message(self, chat_id: int, message_id: int, address: int | None = None) -> Letter | None:
        """Find the letter that became this message; the latest that stands for it.

        `address`: where it stands, if that may not be where the chat is now.
        """
        sent = _LETTERS.where(
            _outbox.c.chat_id == chat_id,
            _outbox.c.message_id == message_id,
            _outbox.c.sent_to == (_chat.c.address if address is None else address),
        )
        row = await self._one(sent.order_by(_outbox.c.id.desc()).limit(1))
        return _letter_of(row) if row else None

    async def offered_lately(self, chat_id: int, since: datetime, causes: int = 1) -> list[list[Offer]]:
        """The buttons under what was said to each of the last things that happened, the newest and the lowest first.

        What is just being sent counts: that it arrived is known a moment after they see it.
        """
        rows = await self._all(_SHOWN_LATELY, {"chat": chat_id, "since": since})
        found: dict[tuple[str, ...], list[Offer]] = {}
        for row in rows:
            offer = Offer(message_id=row["message_id"], buttons=row["buttons"] or {})
            found.setdefault(tuple(_cause(row["key"])), []).append(offer)
        return list(found.values())[:causes]

    async def last_refs(self, chat_id: int, since: datetime) -> list[Mapping[str, int]]:
        """What the last messages speak of, the newest first."""
        rows = await self._all(_SHOWN_LATELY, {"chat": chat_id, "since": since})
        return [row["refs"] for row in rows]

    async def last_sessions(self, chat_id: int, since: datetime) -> frozenset[int]:
        """The sessions of which the last messages speak that speak of any, said in one moment."""
        rows = await self._all(_SHOWN_LATELY, {"chat": chat_id, "since": since})
        about = [row for row in rows if "session" in row["refs"]]
        return frozenset(
            row["refs"]["session"] for row in about if row["created_at"] == about[0]["created_at"]
        )

    async def offered_under(self, chat_id: int, message_id: int) -> list[Offer]:
        """The same of one message, as it is now."""
        rows = await self._all(_SHOWN_UNDER, {"chat": chat_id, "message": message_id})
        return [Offer(message_id=message_id, buttons=row["buttons"] or {}) for row in rows[:1]]

    async def mark_answered(self, chat_id: int, message_id: int) -> None:
        """What stands under it is offered no more, though a late press still finds its way."""
        under = (_outbox.c.chat_id == chat_id) & (_outbox.c.message_id == message_id)
        await self._change(_outbox, under, buttons=None)

    async def mark_pinned(self, chat_id: int, message_id: int) -> None:
        """Somebody pinned a message of ours; without effect on other messages."""
        found = await self.by_message(chat_id, message_id)
        if found is not None:
            await self._change(_outbox, _outbox.c.id == (found.edits_id or found.id), pinned=True)

    async def lease(
        self,
        now: datetime,
        limit: int,
        until: datetime,
        blocked_chats: Collection[int] = (),
        resting: Collection[int] = (),
    ) -> list[Letter]:
        """Take up to `limit` letters to send before `until`, by priority, then age.

        Of each chat only the oldest that is due, so that its order holds; an edit waits for its original, and
        becomes a message of its own where that has none (any more). What expired, or has nothing to edit, is
        dropped when its turn comes. Letters that are `resting` wait. Opens an attempt for each.
        """
        letters = await self._ready(now, limit, blocked_chats, resting)
        if useless := [letter.id for letter in letters if _is_useless(letter)]:
            await self._run(_DROP, [{"letter": one, "now": now} for one in useless])
        if useless or any(_is_too_late(letter, now) for letter in letters):
            await self._connection.execute(_TOO_LATE, {"now": now})
            return await self.lease(now, limit, until, blocked_chats, resting)
        if letters:
            await self._run(_LEASE, [{"letter": letter.id, "until": until} for letter in letters])
            await self._run(insert(_attempt), [_attempt_row(letter, now) for letter in letters])
        files = await Files(self._connection).of([one.id for one in letters if one.method in CARRYING])
        return [
            replace(one, state=LetterState.LEASED, tries=one.tries + 1, file=files.get(one.id))
            for one in letters
        ]

    async def settle(self, results: Sequence[Settled], now: datetime) -> Settlement:
        """Write down how sending ended; what may go again is put back, what failed for too long is given up."""
        if not results:
            return Settlement()
        await self._run(_END_ATTEMPT, [attempt_end(result, now) for result in results])
        found = await self._all(_SETTLING, {"ids": [result.letter_id for result in results]})
        rows = {row["id"]: row for row in found}
        # Whoever was erased meanwhile took their letters along.
        known = [(result, rows[result.letter_id]) for result in results if result.letter_id in rows]
        if known:
            await self._run(_SETTLE, [settlement(result, row, now) for result, row in known])
        renewed = {row["edits_id"]: result for result, row in known if renews(result, row)}
        if renewed:
            await self._run(_ADOPT, [adoption(original, result) for original, result in renewed.items()])
        return Settlement(
            given_up=frozenset(
                row["id"] for result, row in known if becomes(result.outcome, row, now) in GIVEN_UP
            ),
            to_pin=frozenset(
                row["edits_id"] for _, row in known if row["edits_id"] in renewed and row["pinned"]
            ),
        )

    async def recover(self, now: datetime, at_start: bool = False) -> int:
        """Put back each letter whose lease ran out; with `at_start` every one, since its process is dead.

        Nobody knows whether it arrived, and it is nobody's fault: it simply goes again, where it may. How many
        there were. `at_start` is only for the one process that sends.
        """
        lost = select(_outbox.c.id, _outbox.c.purpose, _outbox.c.method).where(
            _outbox.c.state == LetterState.LEASED
        )
        if not at_start:
            lost = lost.where(_outbox.c.leased_until <= now)
        rows = await self._all(lost)
        again = [row["id"] for row in rows if may_go_again(Purpose(row["purpose"]), row["method"])]
        ended = [{"letter": i, "now": now, "how": Outcome.UNKNOWN, "why": _KILLED} for i in again]
        if ended:
            await self._run(_END_ATTEMPT, ended)
            await self._run(_PUT_BACK, [{"letter": i} for i in again])
        unsure = [
            Settled(letter_id=row["id"], outcome=Outcome.UNKNOWN) for row in rows if row["id"] not in again
        ]
        await self.settle(unsure, now)
        return len(rows)

    async def next_due_at(self, after: datetime | None = None) -> datetime | None:
        """When the next waiting letter is due (later than `after`); None if none waits."""
        if after is None:
            return cast("datetime | None", await self._value(_NEXT_DUE))
        return cast("datetime | None", await self._value(_NEXT_DUE_AFTER, {"after": after}))

    async def _ready(
        self, now: datetime, limit: int, blocked: Collection[int], resting: Collection[int]
    ) -> list[Letter]:
        values = {"now": now, "blocked": list(blocked), "resting": list(resting), "most": limit}
        found = await self._connection.execute(_READY, values)
        return [_letter_of(row) for row in found.mappings()]


def _is_useless(letter: Letter) -> bool:
    """Nothing to edit, and not worth a message of its own."""
    return letter.edits_id is not None and letter.edits_message_id is None and letter.method != SEND


def _is_too_late(letter: Letter, now: datetime) -> bool:
    return letter.expires_at is not None and letter.expires_at <= now


def _attempt_row(letter: Letter, now: datetime) -> dict[str, Any]:
    return {"outbox_id": letter.id, "number": letter.tries + 1, "started_at": now}
