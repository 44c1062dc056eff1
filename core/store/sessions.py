"""Sessions with all their revisions, and the versions made of them."""

from collections.abc import Collection
from datetime import date, datetime
from typing import Any, TypeVar

from sqlalchemy import RowMapping, Select, and_, func, select

from core.forecast.values import Foreseen
from core.scaling.values import Version
from core.sessions.values import Session
from core.store import documents, tables
from core.store.documents import Kind
from core.store.records import SessionRecord, SessionState, VersionRecord, VersionState
from core.store.repository import Repository
from core.values import Value

T = TypeVar("T", bound=Value)

_WAS_POSTED = (SessionState.POSTED, SessionState.WITHDRAWN)


class Documents(Repository):
    """Immutable: there is no way to change or delete one here."""

    async def add(self, kind: Kind[T], value: T, now: datetime) -> int:
        row = await self._add(
            tables.document,
            kind=kind.name,
            schema_number=kind.schema,
            body=documents.write(value),
            created_at=now,
        )
        return int(row["id"])

    async def get(self, kind: Kind[T], document_id: int) -> T | None:
        """None for a document of another kind. Raise UnknownSchemaError where it can't be read."""
        row = await self._by_id(tables.document, document_id)
        if row is None or row["kind"] != kind.name:
            return None
        return documents.read(kind, row["schema_number"], row["body"])


def _with_document(table: Any, *more: Any) -> Select[Any]:
    return select(*table.c, *more, tables.document.c.schema_number, tables.document.c.body)


def _session_of(row: RowMapping) -> SessionRecord:
    return SessionRecord(
        id=row["id"],
        group_id=row["group_id"],
        author_id=row["author_id"],
        day=row["day"],
        title=row["title"],
        revision=row["shown_revision"],
        document_id=row["document_id"],
        text=row["text"],
        session=documents.read(documents.SESSION, row["schema_number"], row["body"]),
        state=SessionState(row["state"]),
        post_at=row["post_at"],
        posted_at=row["posted_at"],
        replaces_id=row["replaces_id"],
    )


def _sessions(revision: int | None = None) -> Select[Any]:
    """Sessions at their newest revision, or at this one."""
    session, kept, document = tables.session, tables.session_revision, tables.document
    wanted = session.c.revision if revision is None else revision
    columns = (kept.c.revision.label("shown_revision"), kept.c.document_id, kept.c.text)
    return (
        _with_document(session, *columns)
        .join(kept, and_(kept.c.session_id == session.c.id, kept.c.revision == wanted))
        .join(document, document.c.id == kept.c.document_id)
    )


class Sessions(Repository):
    async def draft(
        self,
        *,
        group_id: int,
        author_id: int,
        day: date,
        text: str,
        session: Session,
        now: datetime,
        replaces_id: int | None = None,
    ) -> SessionRecord:
        """Begin a new draft, at revision 1; `replaces_id`: the posted session that it is a change of."""
        row = await self._add(
            tables.session,
            group_id=group_id,
            author_id=author_id,
            day=day,
            title=session.title,
            revision=1,
            state=SessionState.DRAFT,
            replaces_id=replaces_id,
        )
        return await self._keep(row["id"], 1, text, session, now)

    async def revise(
        self, session_id: int, text: str, session: Session, now: datetime, day: date | None = None
    ) -> SessionRecord:
        """Add the next revision; the earlier ones stay. `day`: where that moved. Raises NotStoredError."""
        moved = {"day": day} if day else {}
        row = await self._change_one(
            tables.session, session_id, revision=tables.session.c.revision + 1, title=session.title, **moved
        )
        return await self._keep(session_id, row["revision"], text, session, now)

    async def get(self, session_id: int, revision: int | None = None) -> SessionRecord | None:
        """By an id of our own, at its newest revision or at this one. What comes from outside asks `find`."""
        return await self._first(_sessions(revision).where(tables.session.c.id == session_id))

    async def find(
        self, session_id: int, groups: Collection[int], revision: int | None = None
    ) -> SessionRecord | None:
        """Through these groups: one of another group is not found. At its newest revision, or at this one."""
        session = tables.session
        return await self._first(
            _sessions(revision).where(session.c.id == session_id, session.c.group_id.in_(groups))
        )

    async def schedule(self, session_id: int, post_at: datetime, day: date) -> None:
        """To be posted then, as the session of that day."""
        await self._change_one(
            tables.session, session_id, state=SessionState.SCHEDULED, post_at=post_at, day=day
        )

    async def unschedule(self, session_id: int) -> None:
        """A draft again."""
        await self._change_one(tables.session, session_id, state=SessionState.DRAFT, post_at=None)

    async def mark_posted(self, session_id: int, now: datetime, day: date | None = None) -> None:
        """Posted now; `day`: the day it is for, where that has moved since it was drafted."""
        moved = {} if day is None else {"day": day}
        await self._change_one(tables.session, session_id, state=SessionState.POSTED, posted_at=now, **moved)

    async def discard(self, session_id: int) -> None:
        await self._change_one(tables.session, session_id, state=SessionState.DISCARDED)

    async def bring_back(self, session_id: int) -> None:
        """A draft again, as it was when it was discarded."""
        await self._change_one(tables.session, session_id, state=SessionState.DRAFT)

    async def withdraw(self, session_id: int) -> None:
        """Taken back; when it was posted stays known."""
        await self._change_one(tables.session, session_id, state=SessionState.WITHDRAWN)

    async def posted_on(self, group_id: int, day: date) -> SessionRecord | None:
        """Find the group's session of this day; the newest if several were posted."""
        session = tables.session
        return await self._first(
            _sessions()
            .where(session.c.group_id == group_id, session.c.state == SessionState.POSTED)
            .where(session.c.day == day)
            .order_by(session.c.posted_at.desc(), session.c.id.desc())
        )

    async def all_posted_on(self, group_id: int, day: date) -> list[SessionRecord]:
        """List the group's sessions of this day, oldest first, those among them that were withdrawn."""
        session = tables.session
        rows = await self._all(
            _sessions()
            .where(session.c.group_id == group_id, session.c.state.in_(_WAS_POSTED))
            .where(session.c.day == day)
            .order_by(session.c.posted_at, session.c.id)
        )
        return [_session_of(row) for row in rows]

    async def latest_posted(self, group_id: int) -> SessionRecord | None:
        session = tables.session
        return await self._first(
            _sessions()
            .where(session.c.group_id == group_id, session.c.state == SessionState.POSTED)
            .order_by(session.c.posted_at.desc(), session.c.id.desc())
        )

    async def posted_since(self, group_id: int, moment: datetime) -> list[SessionRecord]:
        """List the group's sessions posted at or after `moment`, the newest first."""
        session = tables.session
        rows = await self._all(
            _sessions()
            .where(session.c.group_id == group_id, session.c.state == SessionState.POSTED)
            .where(session.c.posted_at >= moment)
            .order_by(session.c.posted_at.desc(), session.c.id.desc())
        )
        return [_session_of(row) for row in rows]

    async def drafts(self, author_id: int, groups: Collection[int]) -> list[SessionRecord]:
        """List what has no time yet of this author, for the groups that they coach now, the newest first."""
        session = tables.session
        rows = await self._all(
            _sessions()
            .where(session.c.state == SessionState.DRAFT, session.c.author_id == author_id)
            .where(session.c.group_id.in_(groups))
            .order_by(session.c.id.desc())
        )
        return [_session_of(row) for row in rows]

    async def newest_draft(self, author_id: int, groups: Collection[int]) -> SessionRecord | None:
        return await self._newest_in({SessionState.DRAFT}, author_id, groups)

    async def draft_of(self, author_id: int, groups: Collection[int], day: date) -> SessionRecord | None:
        """The newest draft that is for a day."""
        return await self._newest_in({SessionState.DRAFT}, author_id, groups, day)

    async def newest_unposted(self, author_id: int, groups: Collection[int]) -> SessionRecord | None:
        """The same, or one that is to be posted later."""
        return await self._newest_in({SessionState.DRAFT, SessionState.SCHEDULED}, author_id, groups)

    async def scheduled_in(self, groups: Collection[int]) -> list[SessionRecord]:
        """List what is to be posted in these groups, the first first."""
        session = tables.session
        rows = await self._all(
            _sessions()
            .where(session.c.state == SessionState.SCHEDULED, session.c.group_id.in_(groups))
            .order_by(session.c.post_at, session.c.id)
        )
        return [_session_of(row) for row in rows]

    async def last_set_for(self, group_id: int) -> datetime | None:
        """When the group's newest session that was set for later went out, or will."""
        session = tables.session
        newest = await self._first(
            _sessions()
            .where(session.c.group_id == group_id, session.c.post_at.is_not(None))
            .where(session.c.state.in_({SessionState.SCHEDULED, SessionState.POSTED}))
            .order_by(session.c.id.desc())
        )
        return newest.post_at if newest else None

    async def written_as(self, author_id: int, text: str, groups: Collection[int]) -> SessionRecord | None:
        """Find the newest session whose author's words are these now, of these groups."""
        session, kept = tables.session, tables.session_revision
        theirs = session.c.author_id == author_id, session.c.state != SessionState.DISCARDED
        said = func.trim(kept.c.text) == text.strip(), session.c.group_id.in_(groups)
        return await self._first(_sessions().where(*theirs, *said).order_by(session.c.id.desc()))

    async def _newest_in(
        self,
        states: Collection[SessionState],
        author_id: int,
        groups: Collection[int],
        day: date | None = None,
    ) -> SessionRecord | None:
        session = tables.session
        on_day = [] if day is None else [session.c.day == day]
        return await self._first(
            _sessions()
            .where(session.c.author_id == author_id, session.c.state.in_(states))
            .where(session.c.group_id.in_(groups), *on_day)
            .order_by(session.c.id.desc())
        )

    async def _keep(
        self, session_id: int, revision: int, text: str, session: Session, now: datetime
    ) -> SessionRecord:
        document_id = await Documents(self._connection).add(documents.SESSION, session, now)
        await self._add(
            tables.session_revision,
            session_id=session_id,
            revision=revision,
            document_id=document_id,
            text=text,
            created_at=now,
        )
        return _session_of(await self._must(_sessions().where(tables.session.c.id == session_id)))

    async def _first(self, statement: Select[Any]) -> SessionRecord | None:
        row = await self._one(statement.limit(1))
        return _session_of(row) if row else None


def _version_of(row: RowMapping) -> VersionRecord:
    return VersionRecord(
        id=row["id"],
        session_id=row["session_id"],
        session_revision=row["session_revision"],
        person_id=row["person_id"],
        document_id=row["document_id"],
        revision=row["revision"],
        version=documents.read(documents.VERSION, row["schema_number"], row["body"]),
        state=VersionState(row["state"]),
        shown_at=row["shown_at"],
    )


class Versions(Repository):
    """A version is frozen when shown; a change makes another one."""

    async def show(
        self, session_id: int, session_revision: int, person_id: int, version: Version, now: datetime
    ) -> VersionRecord:
        """Keep what this athlete is shown now; it replaces the version they were shown before."""
        earlier = await self.current(session_id, person_id)
        if earlier is not None:
            await self._change_one(tables.version, earlier.id, state=VersionState.REPLACED)
        document_id = await Documents(self._connection).add(documents.VERSION, version, now)
        row = await self._add(
            tables.version,
            session_id=session_id,
            session_revision=session_revision,
            person_id=person_id,
            document_id=document_id,
            revision=1 if earlier is None else earlier.revision + 1,
            state=VersionState.CURRENT,
            shown_at=now,
        )
        return _version_of(await self._must(self._versions().where(tables.version.c.id == row["id"])))

    async def foresee(self, version_id: int, foreseen: Foreseen) -> None:
        """Keep what was expected of it when it was shown. Raises NotStoredError."""
        await self._change_one(
            tables.version,
            version_id,
            foreseen_schema=documents.FORESEEN.schema,
            foreseen=documents.write(foreseen),
        )

    async def current(self, session_id: int, person_id: int) -> VersionRecord | None:
        """Find the version this athlete was shown last."""
        version = tables.version
        row = await self._one(
            self._versions()
            .where(version.c.session_id == session_id, version.c.person_id == person_id)
            .order_by(version.c.revision.desc())
            .limit(1)
        )
        return _version_of(row) if row else None

    async def get(self, version_id: int) -> VersionRecord | None:
        """By an id of our own. What comes from outside asks `find`."""
        row = await self._one(self._versions().where(tables.version.c.id == version_id))
        return _version_of(row) if row else None

    async def find(self, version_id: int, person_id: int) -> VersionRecord | None:
        """Through this athlete: somebody else's is not found."""
        found = await self.get(version_id)
        return found if found is not None and found.person_id == person_id else None

    @staticmethod
    def _versions() -> Select[Any]:
        version, document = tables.version, tables.document
        return _with_document(version).join(document, document.c.id == version.c.document_id)
