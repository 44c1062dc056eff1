"""What is to be posted, and when; and the draft that has no time yet."""

from collections.abc import Sequence

from core.desk.coached import coached_groups
from core.desk.days import group_clock_named, zone_of
from core.desk.outcome import Outcome
from core.desk.sessions.says import Coming, WhatsComing, WhichDraft
from core.desk.visit import Visit
from core.store.records import SessionRecord


async def whats_scheduled(visit: Visit) -> Outcome | None:
    """None for whoever coaches no group. Of all who coach their groups, with the visitor's own drafts behind it."""
    groups = [one.id for one in await coached_groups(visit)]
    if not groups:
        return None
    records = await visit.uow.sessions.scheduled_in(groups)
    records += reversed(await visit.uow.sessions.drafts(visit.person.id, groups))
    return visit.told(WhatsComing(sessions=tuple([await coming(visit, one) for one in records])))


async def which_draft(visit: Visit, drafts: Sequence[SessionRecord]) -> Outcome:
    return visit.told(WhichDraft(sessions=tuple([await coming(visit, one) for one in reversed(drafts)])))


async def coming(visit: Visit, record: SessionRecord) -> Coming:
    group = await visit.group(record.group_id)
    return Coming(
        title=record.session.title,
        day=record.day,
        group=group.title,
        at=record.post_at.astimezone(zone_of(group)) if record.post_at else None,
        zone=await group_clock_named(visit.uow, visit.person.id, group),
    )
