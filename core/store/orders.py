"""What coaches decided for single athletes or for all of a group, and to what they said OK."""

from datetime import date, datetime

from sqlalchemy import RowMapping, bindparam, or_, select

from core.scaling.orders import Pin
from core.store import documents, tables
from core.store.records import CoachOrder
from core.store.repository import Repository


def _order_of(row: RowMapping) -> CoachOrder:
    return CoachOrder(
        id=row["id"],
        group_id=row["group_id"],
        person_id=row["person_id"],
        session_id=row["session_id"],
        movement=row["movement"],
        pin=documents.read(documents.PIN, row["schema_number"], row["body"]),
        made_at=row["made_at"],
    )


_ORDER = tables.coach_order
# Asked for every version, so it is built once.
_OF_ALL = (
    select(_ORDER)
    .where(_ORDER.c.group_id == bindparam("group"), _ORDER.c.person_id.is_(None))
    .where(_ORDER.c.undone_at.is_(None))
    .order_by(_ORDER.c.id)
)


class CoachOrders(Repository):
    async def give(
        self,
        *,
        group_id: int,
        person_id: int | None,
        session_id: int | None,
        movement: str,
        pin: Pin,
        by_id: int,
        now: datetime,
    ) -> CoachOrder:
        """Let this stand for the movement, for one athlete or (None) for all of the group.

        What stood for it on the same days, in the same place, gives way.
        """
        table = tables.coach_order
        same = (
            table.c.group_id == group_id,
            table.c.person_id == person_id if person_id else table.c.person_id.is_(None),
            table.c.session_id == session_id if session_id else table.c.session_id.is_(None),
            table.c.movement == movement,
            table.c.undone_at.is_(None),
        )
        for row in await self._all(select(table).where(*same)):
            if _order_of(row).pin.meets(pin):
                await self.undo(row["id"], now)
        row = await self._add(
            table,
            group_id=group_id,
            person_id=person_id,
            session_id=session_id,
            movement=movement,
            schema_number=documents.PIN.schema,
            body=documents.write(pin),
            by_id=by_id,
            made_at=now,
        )
        return _order_of(row)

    async def standing(
        self, group_id: int, person_id: int, session_id: int | None = None, day: date | None = None
    ) -> list[CoachOrder]:
        """List what stands: standing orders first, then those of the session, so that the later wins.

        `day`: only what counts on it.
        """
        table = tables.coach_order
        rows = await self._all(
            select(table)
            .where(table.c.group_id == group_id, table.c.person_id == person_id)
            .where(or_(table.c.session_id.is_(None), table.c.session_id == session_id))
            .where(table.c.undone_at.is_(None))
            .order_by(table.c.session_id.is_not(None), table.c.id)
        )
        found = map(_order_of, rows)
        return [one for one in found if day is None or one.pin.counts_on(day)]

    async def standing_for(self, group_id: int, movement: str) -> list[CoachOrder]:
        """List what stands in a group for one movement in every session, the oldest first."""
        table = tables.coach_order
        rows = await self._all(
            select(table)
            .where(table.c.group_id == group_id, table.c.movement == movement, table.c.session_id.is_(None))
            .where(table.c.undone_at.is_(None))
            .order_by(table.c.id)
        )
        return [_order_of(row) for row in rows]

    async def of_everybody(self, group_id: int, day: date) -> list[CoachOrder]:
        """List what counts on a day for all of a group, the oldest first."""
        found = map(_order_of, await self._all(_OF_ALL, {"group": group_id}))
        return [one for one in found if one.pin.counts_on(day)]

    async def find(self, order_id: int, group_id: int, person_id: int) -> CoachOrder | None:
        """Through the athlete of a group: somebody else's is not found."""
        row = await self._by_id(tables.coach_order, order_id)
        found = _order_of(row) if row else None
        return found if found and (found.group_id, found.person_id) == (group_id, person_id) else None

    async def undo(self, order_id: int, now: datetime) -> None:
        """Raise NotStoredError if there is none."""
        await self._change_one(tables.coach_order, order_id, undone_at=now)


class CoachOks(Repository):
    async def give(
        self, *, session_id: int, revision: int, person_id: int, by_id: int, now: datetime
    ) -> None:
        """A coach's OK to what this athlete does in the session as it stands; given twice, the first counts."""
        if person_id in await self.given(session_id, revision):
            return
        await self._add(
            tables.coach_ok,
            session_id=session_id,
            session_revision=revision,
            person_id=person_id,
            by_id=by_id,
            at=now,
        )

    async def given(self, session_id: int, revision: int) -> frozenset[int]:
        """To whose versions of this revision a coach said OK: person ids."""
        table = tables.coach_ok
        rows = await self._all(
            select(table.c.person_id).where(
                table.c.session_id == session_id, table.c.session_revision == revision
            )
        )
        return frozenset(row["person_id"] for row in rows)
