"""Scores with their history: correcting one keeps what was said before."""

from datetime import datetime

from sqlalchemy import RowMapping, select

from core.scores.values import Score
from core.store import documents, tables
from core.store.records import ScoreRecord, ScoreState
from core.store.repository import Repository


def _score_of(row: RowMapping) -> ScoreRecord:
    return ScoreRecord(
        id=row["id"],
        session_id=row["session_id"],
        block=row["block"],
        person_id=row["person_id"],
        version_id=row["version_id"],
        text=row["text"],
        score=documents.read(documents.SCORE, row["schema_number"], row["body"]),
        recorded_at=row["recorded_at"],
        entered_by=row["entered_by"],
        state=ScoreState(row["state"]),
    )


class Scores(Repository):
    async def record(
        self,
        *,
        session_id: int,
        block: int,
        person_id: int,
        version_id: int | None,
        text: str,
        score: Score,
        entered_by: int,
        now: datetime,
    ) -> ScoreRecord:
        """Let this score count from now on; one that counted before is kept as corrected."""
        table = tables.score
        await self._change(
            table,
            table.c.session_id == session_id,
            table.c.person_id == person_id,
            table.c.block == block,
            table.c.state == ScoreState.COUNTS,
            state=ScoreState.CORRECTED,
        )
        row = await self._add(
            table,
            session_id=session_id,
            block=block,
            person_id=person_id,
            version_id=version_id,
            text=text,
            schema_number=documents.SCORE.schema,
            body=documents.write(score),
            recorded_at=now,
            entered_by=entered_by,
            state=ScoreState.COUNTS,
        )
        return _score_of(row)

    async def counting(self, session_id: int, block: int) -> list[tuple[str, ScoreRecord]]:
        """List the scores that count, each with its athlete's name, in the order they came in."""
        score, person = tables.score, tables.person
        rows = await self._all(
            select(*score.c, person.c.name)
            .join(person, person.c.id == score.c.person_id)
            .where(score.c.session_id == session_id, score.c.block == block)
            .where(score.c.state == ScoreState.COUNTS)
            .order_by(score.c.id)
        )
        return [(row["name"], _score_of(row)) for row in rows]

    async def get(self, score_id: int) -> ScoreRecord | None:
        row = await self._by_id(tables.score, score_id)
        return _score_of(row) if row else None

    async def of_person(self, session_id: int, person_id: int) -> list[ScoreRecord]:
        """List all that this athlete reported for the session, corrected and withdrawn too, oldest first."""
        score = tables.score
        rows = await self._all(
            select(score)
            .where(score.c.session_id == session_id, score.c.person_id == person_id)
            .order_by(score.c.id)
        )
        return [_score_of(row) for row in rows]

    async def withdraw(self, score_id: int) -> None:
        """Raise NotStoredError if there is none."""
        await self._change_one(tables.score, score_id, state=ScoreState.WITHDRAWN)
