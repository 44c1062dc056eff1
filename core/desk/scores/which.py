"""Which session a score is of: the one of the day that is told, else the one shown last, if the words may be of it."""

from collections.abc import Sequence
from datetime import date, datetime, timedelta

from core.desk.days import LOOKS_BACK, RECENT, today_in, zone_of
from core.desk.versions.version import post_meant, session_meant
from core.desk.visit import Visit
from core.errors import BellwetherError
from core.notation.scores import read_parts, read_score
from core.notation.scores.reading import may_be_told_of
from core.notation.scores.which_day import day_told
from core.store.records import Membership, SessionRecord


class WhichSession(BellwetherError):
    """What was typed may be of any of these sessions: the visitor is asked before anything is decided.

    `to_change`: it is a coach's change, and no score.
    """

    def __init__(self, sessions: tuple[int, ...], *, to_change: bool = False) -> None:
        super().__init__(str(sessions))
        self.sessions = sessions
        self.to_change = to_change


async def session_scored(visit: Visit, text: str, session_id: int | None) -> SessionRecord | None:
    """The session replied to; else of the day that is told; else the one shown last that the words may be of.

    Where they are plainly of an older one, and may be of the last one too, or may be of several groups, raises
    WhichSession; also where a day is told on which there was none.
    """
    if session_id is not None:
        return await post_meant(visit, session_id)
    week = await shown_since(visit, LOOKS_BACK)
    recent = [one for one in week if (one.posted_at or visit.now) >= visit.now - RECENT]
    of_day = await told_day(visit, text, week)
    if of_day is not None and not of_day and recent:
        raise WhichSession(tuple(one.id for one in recent))
    found = of_day or recent
    return chosen(text, found) if found else await last_they_were_there_for(visit)


async def last_they_were_there_for(visit: Visit) -> SessionRecord | None:
    """The newest of all, unless they came after its day and never looked at it."""
    record = await session_meant(visit, None)
    if record is None or await visit.uow.versions.current(record.id, visit.person.id):
        return record
    member = next((one for one in await visit.memberships() if one.group_id == record.group_id), None)
    return record if member is None or record.day >= await joined_on(visit, member) else None


def chosen(text: str, found: Sequence[SessionRecord]) -> SessionRecord:
    plain = [one for one in found if is_plainly_of(text, one)]
    of_groups = {one.group_id: one for one in reversed(plain)}
    if len(of_groups) > 1:
        raise WhichSession(tuple(one.id for one in plain if one in of_groups.values()))
    last = found[0]
    if not plain or last in plain:
        return last
    if may_be_told_of(text, last.session):
        raise WhichSession((last.id, plain[0].id))
    return plain[0]


def is_plainly_of(text: str, record: SessionRecord) -> bool:
    return read_score(text, record.session).sure or bool(read_parts(text, record.session))


async def shown_since(visit: Visit, span: timedelta) -> list[SessionRecord]:
    """The sessions of the visitor's groups since they came, the one they saw last first."""
    found: list[tuple[datetime, int, SessionRecord]] = []
    for member in await visit.memberships():
        for record in await visit.uow.sessions.posted_since(member.group_id, visit.now - span):
            version = await visit.uow.versions.current(record.id, visit.person.id)
            posted = record.posted_at or visit.now
            if version is not None or record.day >= await joined_on(visit, member):
                shown = max(posted, version.shown_at) if version else posted
                found.append((shown, record.id, record))
    return [record for _, _, record in sorted(found, key=lambda one: one[:2], reverse=True)]


async def joined_on(visit: Visit, member: Membership) -> date:
    """What was trained before that day they weren't there for, unless they looked at it."""
    return member.joined_at.astimezone(zone_of(await visit.group(member.group_id))).date()


async def told_day(visit: Visit, text: str, week: Sequence[SessionRecord]) -> list[SessionRecord] | None:
    """The sessions of the day that the words tell, on each group's clock; None where they tell none."""
    found: list[SessionRecord] = []
    is_told = False
    for record in week:
        group = await visit.group(record.group_id)
        day = day_told(text, today_in(group, visit.now))
        is_told |= day is not None
        found += [record] if record.day == day else []
    return found if is_told else None
