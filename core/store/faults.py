"""What coaches noted about how athletes move: written first, standing once the coach said yes, until it is lifted."""

from collections.abc import Collection
from datetime import datetime

from sqlalchemy import RowMapping, bindparam, select

from core.scaling.orders import Fault
from core.store import documents, tables
from core.store.records import FaultRecord
from core.store.repository import Repository

_FAULT = tables.fault
_STANDING = (
    select(_FAULT)
    .where(_FAULT.c.group_id == bindparam("group"), _FAULT.c.person_id == bindparam("person"))
    .where(_FAULT.c.made_at.is_not(None), _FAULT.c.lifted_at.is_(None))
    .order_by(_FAULT.c.id)
)


def _fault_of(row: RowMapping) -> FaultRecord:
    return FaultRecord(
        id=row["id"],
        group_id=row["group_id"],
        person_id=row["person_id"],
        fault=documents.read(documents.FAULT, row["schema_number"], row["body"]),
        by_id=row["by_id"],
        made_at=row["made_at"],
        lifted_at=row["lifted_at"],
    )


class Faults(Repository):
    async def write(
        self, *, group_id: int, person_id: int, fault: Fault, by_id: int, now: datetime
    ) -> FaultRecord:
        """Write it down; it stands for nothing yet."""
        row = await self._add(
            tables.fault,
            group_id=group_id,
            person_id=person_id,
            schema_number=documents.FAULT.schema,
            body=documents.write(fault),
            by_id=by_id,
            written_at=now,
        )
        return _fault_of(row)

    async def get(self, fault_id: int) -> FaultRecord | None:
        """By an id of our own. What comes from outside asks `find`."""
        row = await self._by_id(tables.fault, fault_id)
        return _fault_of(row) if row else None

    async def find(self, fault_id: int, groups: Collection[int]) -> FaultRecord | None:
        """Through these groups: what was noted in another group is not found; what was dropped isn't, either."""
        found = await self.get(fault_id)
        if found is None or found.group_id not in groups or not found.fault.movement:
            return None
        return found

    async def make(self, fault_id: int, now: datetime) -> None:
        """From now on it stands. Raise NotStoredError if there is none."""
        await self._change_one(tables.fault, fault_id, made_at=now)

    async def lift(self, fault_id: int, now: datetime) -> None:
        """It stands no more. Raise NotStoredError if there is none."""
        await self._change_one(tables.fault, fault_id, lifted_at=now)

    async def drop(self, fault_id: int, now: datetime) -> None:
        """Let go of what was only written; its id is never another's. Raise NotStoredError if there is none."""
        await self._change_one(tables.fault, fault_id, body={"movement": ""}, lifted_at=now)

    async def standing(self, group_id: int, person_id: int) -> list[FaultRecord]:
        """List what stands for one athlete of a group, oldest first."""
        rows = await self._all(_STANDING, {"group": group_id, "person": person_id})
        return [_fault_of(row) for row in rows]
