"""The files that letters carry: kept beside the letter until it has its end, so that they are stored before sent.

One that was given up may be tried anew: it keeps its file as long as anything passing is kept.
"""

from collections.abc import Mapping, Sequence

from sqlalchemy import delete, insert, select

from core.store import tables
from core.store.records import LetterFile, LetterState
from core.store.repository import Repository

_file, _outbox = tables.file, tables.outbox
_MAY_GO = (LetterState.WAITING, LetterState.LEASED, LetterState.REFUSED, LetterState.UNKNOWN)


class Files(Repository):
    async def keep(self, files: Mapping[int, LetterFile]) -> None:
        """Keep each by its letter's id."""
        rows = [
            {"outbox_id": letter, "name": file.name, "content": file.content}
            for letter, file in files.items()
        ]
        if rows:
            await self._run(insert(_file), rows)

    async def of(self, letters: Sequence[int]) -> dict[int, LetterFile]:
        """Letter's id -> its file, for those that carry one."""
        if not letters:
            return {}
        rows = await self._all(select(_file).where(_file.c.outbox_id.in_(letters)))
        return {row["outbox_id"]: LetterFile(name=row["name"], content=row["content"]) for row in rows}

    async def drop_settled(self) -> None:
        """Let go of every file whose letter won't be sent (again)."""
        may_go = select(_outbox.c.id).where(_outbox.c.id == _file.c.outbox_id, _outbox.c.state.in_(_MAY_GO))
        await self._run(delete(_file).where(~may_go.exists()))
