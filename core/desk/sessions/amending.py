"""A coach changes a session in words, before it is posted or after: `make the row 200 m`."""

import re

from core.desk.coached import coached_groups
from core.desk.days import today_in
from core.desk.outcome import Outcome
from core.desk.sessions.posting import read_back
from core.desk.sessions.says import AmendedAfterPost, AmountCarried, NotAmended
from core.desk.visit import Visit
from core.measures import MassUnit
from core.movements.lookup import catalogue
from core.notation.editing import edited, names_a_line
from core.notation.edits import Edit, read_edits, read_several
from core.notation.session import read_session
from core.notation.writing import write_line
from core.scaling.carrying import carried_over
from core.sessions.values import Line, Session
from core.store.records import Group, SessionRecord, SessionState


async def as_amendment(visit: Visit, text: str, _: int | None) -> Outcome | None:
    """None unless the visitor has a session that is yet to be posted, or one of today, and it can be meant."""
    edits, several = read_edits(text), read_several(text)
    groups = await coached_groups(visit) if edits or several else []
    record = await newest(visit, groups) if groups else None
    if record is None:
        return None
    group = await visit.group(record.group_id)
    words = amended(record.text, edits, group.units) or all_amended(record.text, several, group.units)
    if words is not None:
        said = carried_in(record.session, session_in(words, group), text, group.units)
        told = visit.told(said) if said else Outcome()
        return told + await amend(visit, record, group, words)
    if any(names_a_line(record.text, edit, catalogue(), group.units) for edit in sum(several, edits)):
        return visit.told(NotAmended())
    return None


def amended(text: str, edits: tuple[Edit, ...], units: MassUnit) -> str | None:
    """The text after the first reading of the wish that can be carried out."""
    found = (edited(text, edit, catalogue(), units, in_stead) for edit in edits)
    return next((words for words in found if words is not None), None)


def all_amended(text: str, wishes: tuple[tuple[Edit, ...], ...], units: MassUnit) -> str | None:
    """The text after all of several changes; None where one of them can't be carried out."""
    words: str | None = text
    for edits in wishes:
        words = amended(words, edits, units) if words else None
    return words if wishes else None


def in_stead(old: Line, new: Line) -> Line:
    return carried_over(old, new, catalogue())


def session_in(words: str, group: Group) -> Session:
    session = read_session(words, catalogue(), group.units).session
    assert session is not None, "an edit is checked by reading"
    return session


def carried_in(before: Session, after: Session, wish: str, units: MassUnit) -> AmountCarried | None:
    """The line with another movement whose amount the coach didn't name and that had to be worked out."""
    if re.search(r"[0-9]|\bmax\b", wish):
        return None
    pairs = zip(lines_of(before), lines_of(after), strict=False)
    found = next(((was, now) for was, now in pairs if was.movement != now.movement), None)
    if found is None or found[1].amount is None:
        return None
    was, now = found
    if (was.amount, was.unit, was.per_side) == (now.amount, now.unit, now.per_side):
        return None
    bare = now.model_copy(update={"amount": None, "amount_to": None, "second_amount": None})
    words, instead, name = (write_line(one, units, catalogue()) for one in (was, now, bare))
    return AmountCarried(was=words, now=instead, name=name)


def lines_of(session: Session) -> list[Line]:
    return [line for block in session.blocks for line in (*block.buy_in, *block.lines, *block.cash_out)]


async def newest(visit: Visit, groups: list[Group]) -> SessionRecord | None:
    """What the coach wrote last: a draft, or what stands in a group today."""
    found = [await visit.uow.sessions.newest_unposted(visit.person.id, [one.id for one in groups])]
    found += [await visit.uow.sessions.posted_on(one.id, today_in(one, visit.now)) for one in groups]
    return max((one for one in found if one is not None), key=lambda one: one.id, default=None)


async def amend(visit: Visit, record: SessionRecord, group: Group, words: str) -> Outcome:
    """A draft becomes what its text says now; what was posted stays, and a new draft says it."""
    session = session_in(words, group)
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
        replaces_id=record.id,
    )
    return visit.told(AmendedAfterPost(group=group.title)) + await read_back(visit, draft, groups)
