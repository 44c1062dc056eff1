"""What athletes asked of single lines, with what came of it; the newest word on a line stands."""

from datetime import datetime

from sqlalchemy import ColumnElement, RowMapping, select

from core.scaling.orders import Pin
from core.scaling.values import Spot
from core.store import documents, tables
from core.store.records import Adjustment
from core.store.repository import Repository


def _adjustment_of(row: RowMapping) -> Adjustment:
    body = row["body"]
    return Adjustment(
        id=row["id"],
        person_id=row["person_id"],
        spot=Spot(row["block"], row["part"], row["line"]),
        step=row["step"],
        cause=row["cause"],
        pin=None if body is None else documents.read(documents.PIN, row["schema_number"], body),
        made_at=row["made_at"],
    )


class Adjustments(Repository):
    async def add(
        self,
        *,
        session_id: int,
        person_id: int,
        version_id: int,
        spot: Spot,
        step: str,
        cause: str | None,
        pin: Pin | None,
        now: datetime,
    ) -> None:
        """Keep what was asked of a line. With a pin it takes the place of what was asked of it before."""
        if pin is not None:
            await self.undo(session_id, person_id, spot, now)
        await self._add(
            tables.adjustment,
            session_id=session_id,
            person_id=person_id,
            version_id=version_id,
            **spot._asdict(),
            step=step,
            cause=cause,
            schema_number=documents.PIN.schema,
            body=None if pin is None else documents.write(pin),
            made_at=now,
        )

    async def undo(self, session_id: int, person_id: int, spot: Spot, now: datetime) -> None:
        """Back to what would be chosen for this line."""
        line = tables.adjustment.c
        at_spot = (line.block == spot.block, line.part == spot.part, line.line == spot.line)
        await self._change(
            tables.adjustment, *_of(session_id, person_id), *at_spot, line.undone_at.is_(None), undone_at=now
        )

    async def standing(self, session_id: int, person_id: int) -> tuple[Pin, ...]:
        """List the pins that an athlete's version of a session is made with."""
        table = tables.adjustment
        rows = await self._all(
            select(table)
            .where(*_of(session_id, person_id), table.c.undone_at.is_(None))
            .order_by(table.c.id.desc())
        )
        return tuple(one.pin for one in map(_adjustment_of, rows) if one.pin is not None)

    async def of_session(self, session_id: int) -> list[Adjustment]:
        """List all that was asked in a session, oldest first, what was undone too."""
        table = tables.adjustment
        rows = await self._all(select(table).where(table.c.session_id == session_id).order_by(table.c.id))
        return [_adjustment_of(row) for row in rows]


def _of(session_id: int, person_id: int) -> tuple[ColumnElement[bool], ColumnElement[bool]]:
    line = tables.adjustment.c
    return line.session_id == session_id, line.person_id == person_id
