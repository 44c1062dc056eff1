"""A coach changes a session in words, before it is posted or after: `make the row 200 m`."""

from core.desk.days import today_in
from core.desk.outcome import Outcome
from core.desk.says.sessions import AmendedAfterPost, NotAmended
from core.desk.sessions import coached_groups, read_back
from core.desk.visit import Visit
from core.measures import MassUnit
from core.movements.lookup import catalogue
from core.notation.editing import edited, names_a_line
from core.notation.edits import Edit, read_edits
from core.notation.session import read_session
from core.store.records import Group, SessionRecord, SessionState


async def as_amendment(visit: Visit, text: str, _: int | None) -> Outcome | None:
    """None unless the visitor has a session that is yet to be posted, or one of today, and it can be meant."""
    edits = read_edits(text)
    groups = await coached_groups(visit) if edits else []
    record = await newest(visit, groups) if groups else None
    if record is None:
        return None
    group = await visit.group(record.group_id)
    words = amended(record.text, edits, group.units)
    if words is not None:
        return await amend(visit, record, group, words)
    if any(names_a_line(record.text, edit, catalogue(), group.units) for edit in edits):
        return visit.told(NotAmended())
    return None


def amended(text: str, edits: tuple[Edit, ...], units: MassUnit) -> str | None:
    """The text after the first reading of the wish that can be carried out."""
    found = (edited(text, edit, catalogue(), units) for edit in edits)
    return next((words for words in found if words is not None), None)


async def newest(visit: Visit, groups: list[Group]) -> SessionRecord | None:
    """What the coach wrote last: a draft, or what stands in a group today."""
    found = [await visit.uow.sessions.newest_unposted(visit.person.id)]
    found += [await visit.uow.sessions.posted_on(one.id, today_in(one, visit.now)) for one in groups]
    return max((one for one in found if one is not None), key=lambda one: one.id, default=None)


async def amend(visit: Visit, record: SessionRecord, group: Group, words: str) -> Outcome:
    """A draft becomes what its text says now; what was posted stays, and a new draft says it."""
    session = read_session(words, catalogue(), group.units).session
    assert session is not None, "an edit is checked by reading"
    groups = await coached_groups(visit)
    if record.state is not SessionState.POSTED:
        revised = await visit.uow.sessions.revise(record.id, text=words, session=session, now=visit.now)
        return await read_back(visit, revised, groups)
    draft = await visit.uow.sessions.draft(
        group_id=group.id,
        author_id=visit.person.id,
        day=record.day,
        text=words,
        session=session,
        now=visit.now,
    )
    return visit.told(AmendedAfterPost(group=group.title)) + await read_back(visit, draft, groups)
