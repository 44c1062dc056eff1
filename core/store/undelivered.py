"""Letters that were given up: kept as they are, for people to look at and to send again."""

from collections.abc import Collection

from sqlalchemy import or_, select, update

from core.store import tables
from core.store.outbox import AT_ONCE
from core.store.records import CARRYING, GIVEN_UP, GivenUp, LetterState
from core.store.repository import Repository

_outbox, _chat, _attempt, _file = tables.outbox, tables.chat, tables.attempt, tables.file
_LAST_REASON = (
    select(_attempt.c.detail)
    .where(_attempt.c.outbox_id == _outbox.c.id)
    .order_by(_attempt.c.number.desc())
    .limit(1)
    .scalar_subquery()
)
_TO_LOOK_AT = (
    select(
        *(
            _outbox.c[name]
            for name in ("id", "purpose", "method", "state", "tries", "created_at", "settled_at")
        ),
        _chat.c.address,
        _LAST_REASON.label("why"),
    )
    .join(_chat, _chat.c.id == _outbox.c.chat_id)
    .where(_outbox.c.state.in_(GIVEN_UP))
    .order_by(_outbox.c.id)
)
_WHOLE = or_(
    _outbox.c.method.not_in(CARRYING),
    select(_file.c.outbox_id).where(_file.c.outbox_id == _outbox.c.id).exists(),
)


class Undelivered(Repository):
    async def all(self) -> list[GivenUp]:
        """List the letters that were refused, or tried in vain for too long; oldest first."""
        return [GivenUp(**row) for row in await self._all(_TO_LOOK_AT)]

    async def replay(self, letters: Collection[int] | None = None) -> list[int]:
        """Put letters that were given up (all, where none are named) back to be sent; the ids of those.

        One whose file was let go since stays where it is.
        """
        again = update(_outbox).where(_outbox.c.state.in_(GIVEN_UP), _WHOLE).returning(_outbox.c.id)
        if letters is not None:
            again = again.where(_outbox.c.id.in_(letters))
        fresh = again.values(
            state=LetterState.WAITING, resends=0, due_at=AT_ONCE, expires_at=None, settled_at=None
        )
        return sorted(row["id"] for row in await self._all(fresh))
