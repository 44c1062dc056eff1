"""A session that is to be posted at its time, by whoever coaches the group then."""

from collections.abc import Mapping
from datetime import UTC, date, datetime
from typing import Any, Final

from core.desk.access import admitted
from core.desk.commands import BackToTime, PostLater
from core.desk.days import group_clock_named, own_days, zone_of
from core.desk.errors import StalePress
from core.desk.outcome import DueWish, Outcome, Say
from core.desk.sessions.posting import decided_by, open_draft, over, post
from core.desk.sessions.reading import board_of
from core.desk.sessions.says import NotPosted, WillPost
from core.desk.visit import Visit
from core.store.records import Role, SessionRecord, SessionState
from core.store.unit import Unit

POST: Final = "post"


@admitted
async def post_later(visit: Visit, command: PostLater) -> Outcome:
    record = await open_draft(visit, command.session, command.revision)
    return await to_post(visit, record, datetime.fromtimestamp(command.minute * 60, UTC))


@admitted
async def back_to_time(visit: Visit, command: BackToTime) -> Outcome:
    """As long as that time is still to come."""
    record = await open_draft(visit, command.session, command.revision)
    moment = datetime.fromtimestamp(command.minute * 60, UTC)
    if moment <= visit.now:
        raise StalePress
    return await to_post(visit, record, moment)


async def to_post(visit: Visit, record: SessionRecord, at: datetime) -> Outcome:
    """It goes out at this moment, whatever was set before."""
    told = await over(visit, record, "later")
    day = at.astimezone(zone_of(await visit.group(record.group_id))).date()
    await visit.uow.sessions.schedule(record.id, at, day)
    said = await will_post(visit, record, at)
    said = said.model_copy(update={"before": await time_before(visit, record, at)})
    minute = int(at.timestamp()) // 60
    wish = DueWish(
        key=f"post:{record.id}:{record.revision}:{minute}",
        kind=POST,
        at=at,
        refs={"session": record.id, "revision": record.revision},
    )
    say = Say(
        visit.chat,
        said,
        key=decided_by(record, f"later:{minute}:{visit.now:%Y%m%d%H%M%S}"),
        refs={"session": record.id},
    )
    return told + Outcome((say,), due=(wish,), settles=True)


async def time_before(visit: Visit, record: SessionRecord, at: datetime) -> datetime | None:
    """When it would have gone out, on the group's clock; None for what had no other time."""
    before = record.post_at
    is_moved = before is not None and before != at and before > visit.now
    return before.astimezone(zone_of(await visit.group(record.group_id))) if before and is_moved else None


async def will_post(visit: Visit, record: SessionRecord, at: datetime) -> WillPost:
    """When it goes out, with the taps that post or discard it."""
    group = await visit.group(record.group_id)
    local = at.astimezone(zone_of(group))
    others = (one for one in await visit.uow.sessions.scheduled_in([group.id]) if one.id != record.id)
    return WillPost(
        at=local,
        beside=tuple(one.title or "" for one in others if one.day == local.date()),
        zone=await group_clock_named(visit.uow, visit.person.id, group),
        group=group.title,
        session_id=record.id,
        revision=record.revision,
        title=record.session.title,
        on_top=other_day(record, local.date()),
    )


def other_day(record: SessionRecord, day: date) -> date | None:
    """The day on top of it, where it is to go out on another one."""
    return next((one for one in own_days(record) if one != day), None)


async def post_is_by(uow: Unit, refs: Mapping[str, Any]) -> tuple[int, int] | None:
    """The group that a post is for, and which user set it."""
    record = await uow.sessions.get(refs["session"])
    author = await uow.people.get(record.author_id) if record else None
    return (record.group_id, author.user_id) if record and author else None


async def post_due(uow: Unit, now: datetime, refs: Mapping[str, Any]) -> Outcome:
    """The moment of a scheduled post; silent where the session changed, was posted or discarded since."""
    record = await uow.sessions.get(refs["session"])
    if record is None or record.state is not SessionState.SCHEDULED or record.revision != refs["revision"]:
        return Outcome()
    if record.post_at is not None and record.post_at > now:
        return Outcome()
    author = await uow.groups.membership(record.author_id, record.group_id)
    if author is None or author.role is not Role.COACH:
        return await _hold_back(uow, record)
    return await post(uow, now, record)


async def _hold_back(uow: Unit, record: SessionRecord) -> Outcome:
    """Its author coaches the group no more: they hear of it, and those who do may post it themselves."""
    await uow.sessions.unschedule(record.id)
    group = await uow.groups.get(record.group_id)
    assert group is not None
    title = record.session.title
    coaches = [one.person_id for one in await uow.groups.members(group.id, role=Role.COACH)]
    for_coaches = NotPosted(
        group=group.title,
        title=title,
        board=board_of(record.session, group.units),
        session_id=record.id,
        revision=record.revision,
    )
    said = {record.author_id: NotPosted(group=group.title, title=title)} | dict.fromkeys(coaches, for_coaches)
    chats = {person: await uow.chats.private_of(person) for person in said}
    return Outcome(tuple(Say(chat.id, said[person]) for person, chat in chats.items() if chat is not None))
