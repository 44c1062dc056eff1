"""Scores with their history: correcting one keeps what was said before."""

from collections.abc import Collection
from datetime import date, datetime

from sqlalchemy import RowMapping, func, select, true

from core.scores.values import Hurt, Mark, Score
from core.store import documents, tables
from core.store.records import Done, Marking, Report, ScoreRecord, ScoreState, Told
from core.store.repository import Repository

# Whatever else was said stays with whoever said it.
_KEPT_APART = frozenset({"pain", "note"})
# Said last, whether or not a coach lets it count.
STANDING = (ScoreState.COUNTS, ScoreState.NOT_COUNTED)


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


def _done_of(row: RowMapping) -> Done:
    foreseen = row["foreseen"] and documents.read(documents.FORESEEN, row["foreseen_schema"], row["foreseen"])
    return Done(
        score_id=row["score_id"],
        session_id=row["session_id"],
        day=row["day"],
        block=row["block"],
        score=documents.read(documents.SCORE, row["score_schema"], row["score_body"]),
        version=documents.read(documents.VERSION, row["schema_number"], row["body"]),
        foreseen=foreseen.blocks[row["block"]] if foreseen and row["block"] < len(foreseen.blocks) else None,
        effort=row["effort"],
    )


class Scores(Repository):
    async def record(
        self,
        *,
        session_id: int,
        block: int,
        person_id: int,
        version_id: int | None,
        told: Told,
        score: Score,
        entered_by: int,
        now: datetime,
    ) -> ScoreRecord:
        """Let this score count from now on; one that counted before is kept as corrected. Its pain is kept apart."""
        table = tables.score
        await self._change(
            table,
            table.c.session_id == session_id,
            table.c.person_id == person_id,
            table.c.block == block,
            table.c.state.in_(STANDING),
            state=ScoreState.CORRECTED,
        )
        row = await self._add(
            table,
            session_id=session_id,
            block=block,
            person_id=person_id,
            version_id=version_id,
            text=told.text,
            schema_number=documents.SCORE.schema,
            body=documents.write(score, without=_KEPT_APART),
            recorded_at=now,
            entered_by=entered_by,
            state=ScoreState.COUNTS,
            told_chat_id=told.message[0] if told.message else None,
            told_message_id=told.message[1] if told.message else None,
        )
        if told.all_of_it is not None:
            apart = {
                "score_id": row["id"],
                "person_id": person_id,
                "text": told.all_of_it,
                "pain": score.pain,
            }
            await self._add(tables.score_health, **apart)
        return _score_of(row)

    async def pains_in(self, session_id: int) -> dict[int, str]:
        """What hurt, in the words of whoever told it, by score."""
        score, health = tables.score, tables.score_health
        rows = await self._all(
            select(health.c.score_id, health.c.pain)
            .join(score, score.c.id == health.c.score_id)
            .where(score.c.session_id == session_id, health.c.pain.is_not(None))
        )
        return {row["score_id"]: row["pain"] for row in rows}

    async def words_of(self, score: ScoreRecord) -> str:
        """All that was typed with it, for the eyes of whoever typed it."""
        row = await self._one(
            select(tables.score_health.c.text).where(tables.score_health.c.score_id == score.id)
        )
        return row["text"] if row else score.text

    async def told_in(self, chat_id: int, message_id: int) -> list[ScoreRecord]:
        """The scores that count and came from this message, oldest first."""
        score = tables.score
        told = score.c.told_chat_id == chat_id, score.c.told_message_id == message_id
        counts = score.c.state == ScoreState.COUNTS
        rows = await self._all(select(score).where(*told, counts).order_by(score.c.id))
        return [_score_of(row) for row in rows]

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
        """By an id of our own. What comes from outside asks `find`."""
        row = await self._by_id(tables.score, score_id)
        return _score_of(row) if row else None

    async def find(self, score_id: int, groups: Collection[int]) -> ScoreRecord | None:
        """Through these groups: one told in another group is not found."""
        score, session = tables.score, tables.session
        row = await self._one(
            select(score)
            .join(session, session.c.id == score.c.session_id)
            .where(score.c.id == score_id, session.c.group_id.in_(groups))
        )
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

    async def done_by(
        self, person_id: int, limit: int, *, after: int = 0, groups: Collection[int] | None = None
    ) -> list[Done]:
        """List what this athlete did and scored with a version of their own, the newest day first.

        `after`: only scores that came after this one. `groups`: only in these.
        """
        there = tables.session.c.group_id.in_(groups) if groups is not None else true()
        score, version, document, session = tables.score, tables.version, tables.document, tables.session
        report = tables.report
        columns = (score.c.id.label("score_id"), version.c.session_id, session.c.day, score.c.block)
        foreseen = (version.c.foreseen_schema, version.c.foreseen, report.c.effort)
        as_scored = (score.c.schema_number.label("score_schema"), score.c.body.label("score_body"))
        rows = await self._all(
            select(*columns, *as_scored, *foreseen, document.c.schema_number, document.c.body)
            .join(version, version.c.id == score.c.version_id)
            .join(document, document.c.id == version.c.document_id)
            .join(session, session.c.id == score.c.session_id)
            .outerjoin(
                report,
                (report.c.session_id == score.c.session_id) & (report.c.person_id == score.c.person_id),
            )
            .where(score.c.person_id == person_id, score.c.state == ScoreState.COUNTS, score.c.id > after)
            .where(there)
            .order_by(session.c.day.desc(), score.c.id.desc())
            .limit(limit)
        )
        return [_done_of(row) for row in rows]

    async def lately_of(
        self, person_id: int, groups: Collection[int], limit: int
    ) -> list[tuple[date, Score]]:
        """The scores of one athlete that count in these groups, with the days of their sessions, the newest first."""
        score, session = tables.score, tables.session
        rows = await self._all(
            select(score, session.c.day)
            .join(session, session.c.id == score.c.session_id)
            .where(score.c.person_id == person_id, score.c.state == ScoreState.COUNTS)
            .where(session.c.group_id.in_(groups))
            .order_by(session.c.day.desc(), score.c.id.desc())
            .limit(limit)
        )
        return [(row["day"], _score_of(row).score) for row in rows]

    async def scored(self) -> list[tuple[int, str]]:
        """Everybody of whom there is a score with a version that counts, with their names."""
        score, person = tables.score, tables.person
        rows = await self._all(
            select(person.c.id, person.c.name)
            .join(score, score.c.person_id == person.c.id)
            .where(score.c.state == ScoreState.COUNTS, score.c.version_id.is_not(None))
            .distinct()
            .order_by(person.c.id)
        )
        return [(row["id"], row["name"]) for row in rows]

    async def seen_until(self, person_id: int, until: int) -> tuple[int, int]:
        """How many of their scores with a version count up to and with this one, and which is the newest of all."""
        score = tables.score
        row = await self._must(
            select(
                func.count().filter(score.c.id <= until).label("seen"),
                func.coalesce(func.max(score.c.id), 0).label("newest"),
            ).where(
                score.c.person_id == person_id,
                score.c.state == ScoreState.COUNTS,
                score.c.version_id.is_not(None),
            )
        )
        return row["seen"], row["newest"]

    async def days_of(self, person_id: int, limit: int = 60) -> list[date]:
        """List the days of sessions of which this athlete told a score, the newest first."""
        score, session = tables.score, tables.session
        rows = await self._all(
            select(session.c.day)
            .join(score, score.c.session_id == session.c.id)
            .where(score.c.person_id == person_id, score.c.state.in_(STANDING))
            .group_by(session.c.day)
            .order_by(session.c.day.desc())
            .limit(limit)
        )
        return [row["day"] for row in rows]

    async def rank_as(self, score_id: int, *, scaled: bool) -> None:
        """How it counts on the board, as decided anew; what was told stays. Raises NotStoredError."""
        row = await self._must(select(tables.score).where(tables.score.c.id == score_id))
        score = _score_of(row).score.model_copy(update={"scaled": scaled})
        await self._change_one(
            tables.score, score_id, schema_number=documents.SCORE.schema, body=documents.write(score)
        )

    async def withdraw(self, score_id: int) -> None:
        """Raise NotStoredError if there is none."""
        await self._change_one(tables.score, score_id, state=ScoreState.WITHDRAWN)

    async def mark(self, score_id: int, mark: Mark, by_id: int, now: datetime) -> None:
        """Keep a coach's decision; it counts or doesn't from now on. Raises NotStoredError."""
        await self._add(tables.score_mark, score_id=score_id, mark=mark, by_id=by_id, at=now)
        if mark is not Mark.CHECKED:
            state = ScoreState.NOT_COUNTED if mark is Mark.NOT_COUNTED else ScoreState.COUNTS
            await self._change_one(tables.score, score_id, state=state)

    async def markings(self, score_id: int) -> list[Marking]:
        """List what coaches decided about a score, oldest first."""
        marking, person = tables.score_mark, tables.person
        rows = await self._all(
            select(marking.c.mark, marking.c.at, person.c.name)
            .join(person, person.c.id == marking.c.by_id)
            .where(marking.c.score_id == score_id)
            .order_by(marking.c.id)
        )
        return [Marking(mark=Mark(row["mark"]), by=row["name"], at=row["at"]) for row in rows]

    async def standing_in(self, session_id: int) -> list[tuple[str, ScoreRecord]]:
        """List the scores of a session that count or that a coach took out, with their athletes' names."""
        score, person = tables.score, tables.person
        rows = await self._all(
            select(*score.c, person.c.name)
            .join(person, person.c.id == score.c.person_id)
            .where(score.c.session_id == session_id)
            .where(score.c.state.in_(STANDING))
            .order_by(score.c.id)
        )
        return [(row["name"], _score_of(row)) for row in rows]


class Reports(Repository):
    """How sessions felt, one row per athlete and session."""

    async def tell(
        self,
        session_id: int,
        person_id: int,
        now: datetime,
        *,
        effort: int | None = None,
        hurt: Hurt | None = None,
    ) -> Report:
        """Keep what is given; what is None stays as it was."""
        report = tables.report
        told = {name: value for name, value in (("effort", effort), ("hurt", hurt)) if value is not None}
        if await self.of(session_id, person_id) is None:
            added = await self._add(
                report, session_id=session_id, person_id=person_id, changed_at=now, **told
            )
            return _report_of(added)
        mine = (report.c.session_id == session_id, report.c.person_id == person_id)
        await self._change(report, *mine, changed_at=now, **told)
        changed = await self.of(session_id, person_id)
        assert changed is not None, "it was just written"
        return changed

    async def of(self, session_id: int, person_id: int) -> Report | None:
        row = await self._row(session_id, person_id)
        return _report_of(row) if row else None

    async def all_of(self, session_id: int) -> list[Report]:
        report = tables.report
        rows = await self._all(select(report).where(report.c.session_id == session_id).order_by(report.c.id))
        return [_report_of(row) for row in rows]

    async def _row(self, session_id: int, person_id: int) -> RowMapping | None:
        report = tables.report
        return await self._one(
            select(report).where(report.c.session_id == session_id, report.c.person_id == person_id)
        )


def _report_of(row: RowMapping) -> Report:
    return Report(
        session_id=row["session_id"],
        person_id=row["person_id"],
        effort=row["effort"],
        hurt=Hurt(row["hurt"]) if row["hurt"] else None,
        changed_at=row["changed_at"],
    )
