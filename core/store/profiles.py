"""What is known of each athlete, and the evidence for it."""

from datetime import datetime

from sqlalchemy import RowMapping, delete, select

from core.athletes.values import Evidence, Profile
from core.store import documents, tables
from core.store.repository import Repository, rows_by

_EVIDENCE_OF = rows_by(tables.evidence, "person_id").order_by(tables.evidence.c.id)
_KEPT_ELSEWHERE = frozenset({"name", "evidence"})
# Of what somebody showed, so much is kept: older pieces say nothing beside so many newer ones.
MOST_EVIDENCE = 500


class Profiles(Repository):
    async def get(self, person_id: int, name: str) -> Profile:
        """Read the profile with all its evidence, oldest first; nothing known yet makes an empty one."""
        row = await self._one(rows_by(tables.profile, "person_id"), {"it": person_id})
        evidence = await self._evidence(person_id)
        if row is None:
            return Profile(name=name, evidence=evidence)
        return documents.read(
            documents.PROFILE, row["schema_number"], row["body"], name=name, evidence=evidence
        )

    async def save(self, person_id: int, profile: Profile, now: datetime) -> None:
        """Keep everything but the name and the evidence, which have rows of their own."""
        await self._put(
            tables.profile,
            "person_id",
            person_id=person_id,
            schema_number=documents.PROFILE.schema,
            body=documents.write(profile, without=_KEPT_ELSEWHERE),
            changed_at=now,
        )

    async def add_evidence(self, person_id: int, evidence: Evidence, now: datetime) -> int:
        """Keep it, and return by which id it can be taken back."""
        row = await self._add(
            tables.evidence,
            person_id=person_id,
            movement=evidence.movement,
            kind=evidence.kind,
            day=evidence.on,
            schema_number=documents.EVIDENCE.schema,
            body=documents.write(evidence),
            added_at=now,
        )
        await self._forget_oldest(person_id)
        return int(row["id"])

    async def _forget_oldest(self, person_id: int) -> None:
        table = tables.evidence
        theirs = select(table.c.id).where(table.c.person_id == person_id)
        newest = theirs.order_by(table.c.id.desc()).offset(MOST_EVIDENCE)
        if ids := [row["id"] for row in await self._all(newest.limit(MOST_EVIDENCE))]:
            await self._run(delete(table).where(table.c.id.in_(ids)))

    async def told(self, person_id: int) -> tuple[tuple[int, Evidence], ...]:
        """What they said of their ability themselves, oldest first, each with the id by which it can be taken back."""
        rows = await self._all(_EVIDENCE_OF, {"it": person_id})
        found = ((int(row["id"]), _evidence_in(row)) for row in rows)
        return tuple((id_, one) for id_, one in found if one.kind == "test")

    async def take_back(self, person_id: int, evidence_id: int) -> bool:
        """Let a piece of this person's evidence go; False where there is none of that id."""
        evidence = tables.evidence
        theirs = (evidence.c.id == evidence_id) & (evidence.c.person_id == person_id)
        if await self._one(select(evidence.c.id).where(theirs)) is None:
            return False
        await self._run(delete(evidence).where(theirs))
        return True

    async def take_back_told_with(self, person_id: int, kind: str, at: datetime) -> None:
        """Let all evidence of that kind go that was added at that moment, with what it was told with."""
        evidence = tables.evidence
        theirs = (evidence.c.person_id == person_id) & (evidence.c.kind == kind)
        await self._run(delete(evidence).where(theirs & (evidence.c.added_at == at)))

    async def _evidence(self, person_id: int) -> tuple[Evidence, ...]:
        rows = await self._all(_EVIDENCE_OF, {"it": person_id})
        return tuple(map(_evidence_in, rows))


def _evidence_in(row: RowMapping) -> Evidence:
    return documents.read(documents.EVIDENCE, row["schema_number"], row["body"])
