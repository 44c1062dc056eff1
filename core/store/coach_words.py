"""What athletes said for their coaches: kept in their own words, seen by nobody before they agreed."""

from collections.abc import Sequence
from datetime import date, datetime
from typing import Literal

from sqlalchemy import ColumnElement, RowMapping, or_, select

from core.store import tables
from core.store.records import CoachWord
from core.store.repository import Repository

_WORD = tables.coach_word


def _word_of(row: RowMapping) -> CoachWord:
    return CoachWord(
        **{
            name: row[name]
            for name in ("id", "group_id", "person_id", "about", "text", "said_at", "passed_at")
        }
    )


class CoachWords(Repository):
    async def keep(
        self,
        *,
        group_id: int,
        person_id: int,
        about: Literal["spare", "said", "unread", "announce"],
        text: str,
        now: datetime,
    ) -> CoachWord:
        """Keep it for the coaches of the group; they don't see it yet."""
        row = await self._add(
            _WORD, group_id=group_id, person_id=person_id, about=about, text=text, said_at=now
        )
        return _word_of(row)

    async def find(self, word_id: int, person_id: int) -> CoachWord | None:
        """Through whoever said it: somebody else's is not found, nor what was forgotten."""
        theirs = (_WORD.c.id == word_id, _WORD.c.person_id == person_id, _WORD.c.forgotten_at.is_(None))
        row = await self._one(select(_WORD).where(*theirs))
        return _word_of(row) if row else None

    async def pass_on(self, word_id: int, now: datetime, told_on: date | None = None) -> CoachWord:
        """Coaches see it from now on; `told_on`: they have read it already. Raise NotStoredError if there is none."""
        return _word_of(await self._change_one(_WORD, word_id, passed_at=now, told_on=told_on))

    async def hold_back(self, person_id: int, group_id: int) -> None:
        """The coaches of the group see no more of what the person spares."""
        theirs = (_WORD.c.person_id == person_id, _WORD.c.group_id == group_id, _WORD.c.about == "spare")
        await self._change(_WORD, *theirs, passed_at=None)

    async def mean(self, word_id: int, group_id: int) -> CoachWord:
        """It is for the coaches of this group. Raise NotStoredError if there is none."""
        return _word_of(await self._change_one(_WORD, word_id, group_id=group_id))

    async def forget(self, word_id: int, now: datetime) -> None:
        """Let go of the words; their id is never another's. Raise NotStoredError if there is none."""
        await self._change_one(_WORD, word_id, text="", passed_at=None, forgotten_at=now)

    async def of_person(self, person_id: int) -> list[CoachWord]:
        """List what they said, oldest first; what nobody understood only once they passed it on."""
        meant = or_(_WORD.c.about.in_(("spare", "said")), _WORD.c.passed_at.is_not(None))
        return await self._found(_WORD.c.person_id == person_id, meant)

    async def seen_of(self, group_id: int, person_id: int) -> list[CoachWord]:
        """List what the coaches of the group see of one athlete, oldest first."""
        of_them = (_WORD.c.group_id == group_id, _WORD.c.person_id == person_id)
        return await self._found(*of_them, _WORD.c.passed_at.is_not(None))

    async def to_tell(self, group_id: int, day: date) -> list[CoachWord]:
        """List what coaches haven't read yet, or read first in the digest of that day."""
        untold = or_(_WORD.c.told_on.is_(None), _WORD.c.told_on == day)
        return await self._found(_WORD.c.group_id == group_id, untold, _WORD.c.passed_at.is_not(None))

    async def told(self, words: Sequence[CoachWord], day: date) -> None:
        """They stand in the digest of that day, and in no later one."""
        ids = [one.id for one in words]
        if ids:
            await self._change(_WORD, _WORD.c.id.in_(ids), told_on=day)

    async def _found(self, *where: ColumnElement[bool]) -> list[CoachWord]:
        rows = await self._all(
            select(_WORD).where(*where, _WORD.c.forgotten_at.is_(None)).order_by(_WORD.c.id)
        )
        return [_word_of(row) for row in rows]
