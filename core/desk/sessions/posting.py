"""A coach drafts a session, sees how it lands on the group, and posts it."""

from datetime import date, datetime, time, timedelta
from typing import Literal

from core.athletes.easing import WEEK
from core.desk.access import admitted
from core.desk.classes.meetings import meetings_on, shown
from core.desk.coached import coached_groups
from core.desk.coaching.digest import digests_of
from core.desk.commands import DiscardSession, DraftSession, MoveDraft, PostSession
from core.desk.days import day_meant, days_of_title, group_clock_named, own_days, today_in, zone_of
from core.desk.errors import AlreadyDone, StalePress, UnknownThing
from core.desk.outcome import Outcome, Say
from core.desk.sessions.landing import how_it_lands
from core.desk.sessions.reading import board_of, marked_board, unread_lines, what_counts, with_notes
from core.desk.sessions.says import (
    DraftOver,
    GroupPost,
    NoCoachHere,
    NothingRead,
    PostReplaced,
    ReadBack,
    SeveralDays,
    WasDiscarded,
    WasPosted,
)
from core.desk.visit import Visit
from core.movements.lookup import catalogue
from core.notation.boards.days import by_days
from core.notation.boards.session import read_session
from core.scaling.ready import ready_levels
from core.sessions.values import Session
from core.store.records import Group, Purpose, SessionRecord, SessionState
from core.store.unit import Unit

# Early enough for those who train before work; a coach's habit, no source.
MORNING = time(6, 0)

Because = Literal["posted", "later", "discarded", "changed", "replaced", "moved"]


@admitted
async def draft_session(visit: Visit, command: DraftSession) -> Outcome:
    """A new draft; pasted again before posting, the same draft's next revision. A text of several days is as many."""
    groups = await coached_groups(visit)
    if not groups:
        return visit.told(NoCoachHere())
    draft = await visit.uow.sessions.newest_draft(visit.person.id, [group.id for group in groups])
    group = next((group for group in groups if draft and group.id == draft.group_id), groups[0])
    days = by_days(command.text)
    told = [text for text in days if read_session(text, catalogue(), group.units).holds_work]
    if len(told) < 2:  # noqa: PLR2004 - of one day
        return await _draft_one(visit, command.text, groups, group, draft)
    outcome = visit.told(SeveralDays(count=len(told), left=tuple(text for text in days if text not in told)))
    for text in told:
        outcome += await _draft_one(visit, text, groups, group, None)
    return outcome


async def _draft_one(
    visit: Visit, text: str, groups: list[Group], group: Group, draft: SessionRecord | None
) -> Outcome:
    """The draft of its day is revised; one for another day, or of other work, stays beside it."""
    read = read_session(text, catalogue(), group.units)
    if read.session is None:
        unread = unread_lines(text, read.unread)
        unknown = read.unknown_movements if read.format_known else ()
        return visit.told(NothingRead(unread=unread, unknown=unknown))
    day = day_meant(read.session, group, visit.now)
    of_day = await visit.uow.sessions.draft_of(visit.person.id, [one.id for one in groups], day)
    draft = of_day or (draft if draft and is_the_same_anew(draft, read.session, group, visit.now) else None)
    if draft is not None:
        record = await visit.uow.sessions.revise(
            draft.id,
            text=text,
            session=read.session,
            now=visit.now,
            day=day,
        )
        return await over(visit, draft, "replaced") + await read_back(visit, record, groups, replaces=True)
    record = await visit.uow.sessions.draft(
        group_id=group.id,
        author_id=visit.person.id,
        day=day,
        text=text,
        session=read.session,
        now=visit.now,
    )
    return await read_back(visit, record, groups)


def is_the_same_anew(draft: SessionRecord, session: Session, group: Group, now: datetime) -> bool:
    """Whether a board that names no day is a draft of a named one, pasted again: some of its work is the same."""
    today = today_in(group, now)
    if session.date or days_of_title(session, today) or not own_days(draft):
        return False
    before, after = ({line.movement for line in one.every_line} for one in (draft.session, session))
    return not before.isdisjoint(after)


def decided_by(record: SessionRecord, what: str) -> str:
    """The key of a letter whose buttons decide about a draft."""
    return f"draft:{record.id}:{record.revision}:{what}"


async def over(visit: Visit, record: SessionRecord, because: Because) -> Outcome:
    """What could be tapped of this draft can't any more: of the messages about it one at most is live."""
    group = await visit.group(record.group_id)
    said = DraftOver(title=record.session.title, board=board_of(record.session, group.units), because=because)
    keys = await visit.uow.outbox.with_buttons(f"draft:{record.id}:")
    return Outcome(tuple(Say(visit.chat, said, edits=key, refs={"session": record.id}) for key in keys))


async def read_back(
    visit: Visit, record: SessionRecord, groups: list[Group], *, replaces: bool = False, again: bool = False
) -> Outcome:
    """The session as understood, with the group view; `replaces`: the draft was another session before.

    `again`: this revision was read back before.
    """
    group = await visit.group(record.group_id)
    read = read_session(record.text, catalogue(), group.units)
    unread = unread_lines(record.text, read.unread, read.session)
    post_at = await next_free(visit, group, record)
    said = ReadBack(
        **dict(await how_it_lands(visit, record)),
        session_id=record.id,
        revision=record.revision,
        board=marked_board(record.session, unread, group.units),
        unread=unread,
        corrected=read.corrected,
        is_unscored=read.is_unscored,
        group=group.title,
        others=tuple((other.id, other.title) for other in groups if other.id != group.id),
        post_at=post_at,
        post_is_far=post_at.date() >= today_in(group, visit.now) + WEEK,
        zone=await group_clock_named(visit.uow, visit.person.id, group),
        earlier=record.revision - 1 or None,
        replaces=replaces,
    )
    key = decided_by(record, f"read:{visit.now:%Y%m%d%H%M%S}" if again else "read")
    return Outcome((Say(visit.chat, said, key=key, refs={"session": record.id}),))


@admitted
async def move_draft(visit: Visit, command: MoveDraft) -> Outcome:
    """The same text, for another of the coach's groups."""
    record = await open_draft(visit, command.session, command.revision)
    await visit.uow.sessions.discard(record.id)
    group = await visit.group(command.group)
    read = read_session(record.text, catalogue(), group.units)
    assert read.session is not None, "the text was read once"
    moved = await visit.uow.sessions.draft(
        group_id=group.id,
        author_id=visit.person.id,
        day=day_meant(read.session, group, visit.now),
        text=record.text,
        session=read.session,
        now=visit.now,
    )
    told = await over(visit, record, "moved") + await read_back(visit, moved, await coached_groups(visit))
    return told + Outcome(settles=True)


@admitted
async def post_session(visit: Visit, command: PostSession) -> Outcome:
    record = await open_draft(visit, command.session, command.revision)
    told = await over(visit, record, "posted") + await post(visit.uow, visit.now, record)
    return told + await posted(visit, record) + Outcome(settles=True)


async def posted(visit: Visit, record: SessionRecord) -> Outcome:
    group = await visit.group(record.group_id)
    day = record.session.date or today_in(group, visit.now)
    on_top = next((one for one in own_days(record) if one != day), None)
    said = WasPosted(
        group=group.title, session_id=record.id, title=record.session.title, day=day, on_top=on_top
    )
    return visit.told(said, session=record.id)


@admitted
async def discard_session(visit: Visit, command: DiscardSession) -> Outcome:
    record = await open_draft(visit, command.session, command.revision)
    await visit.uow.sessions.discard(record.id)
    gone = WasDiscarded(session_id=record.id, revision=record.revision, title=record.session.title)
    return await over(visit, record, "discarded") + visit.told(gone) + Outcome(settles=True)


async def open_draft(visit: Visit, session_id: int, revision: int) -> SessionRecord:
    """A session that can still be posted, at the revision the coach looked at."""
    record = await visit.uow.sessions.find(session_id, await visit.group_ids())
    if record is None:
        raise UnknownThing
    if record.state is SessionState.POSTED:
        raise AlreadyDone
    if record.state is SessionState.DISCARDED or record.revision != revision:
        raise StalePress
    return record


async def post(uow: Unit, now: datetime, record: SessionRecord) -> Outcome:
    """Say the session to its group, once for ever."""
    group = await uow.groups.get(record.group_id)
    assert group is not None
    day = record.session.date or today_in(group, now)
    await uow.sessions.mark_posted(record.id, now, day)
    earlier = await replaced_by(uow, record, day)
    said = await group_post(uow, group, record, day)
    said = said.model_copy(update={"replaces": earlier is not None})
    say = Say(group.chat_id, said, Purpose.POST, key=post_key(record), refs={"session": record.id})
    posted = Outcome((say,), due=await digests_of(uow, now, group, day))
    return posted + await mark_replaced(uow, group, earlier) if earlier else posted


def post_key(record: SessionRecord) -> str:
    """The key of the letter that is a session's post."""
    return f"post:{record.id}:{record.revision}"


async def replaced_by(uow: Unit, record: SessionRecord, day: date) -> SessionRecord | None:
    """The posted session that this one is a change of; another day's draft may have grown out of it."""
    earlier = await uow.sessions.get(record.replaces_id) if record.replaces_id else None
    return earlier if earlier and earlier.state is SessionState.POSTED and earlier.day == day else None


async def mark_replaced(uow: Unit, group: Group, earlier: SessionRecord) -> Outcome:
    """The earlier post stays to be read, but it says that it was changed, and loses its buttons."""
    key = post_key(earlier)
    if await uow.outbox.by_key(key) is None:
        return Outcome()
    what = PostReplaced(post=await group_post(uow, group, earlier, earlier.day))
    return Outcome((Say(group.chat_id, what, Purpose.POST, edits=key, refs={"session": earlier.id}),))


async def group_post(uow: Unit, group: Group, record: SessionRecord, day: date) -> GroupPost:
    """The session as everybody in the group reads it."""
    session, notes = with_notes(record, group)
    ready = ready_levels(record.session, catalogue())
    return GroupPost(
        session_id=record.id,
        title=record.session.title,
        day=day,
        board=board_of(session, group.units),
        notes=notes,
        counts=what_counts(record.session),
        classes=tuple(shown(one) for one in await meetings_on(uow, group.id, day)),
        lighter=ready.lighter,
        no_equipment=ready.no_equipment,
        units=group.units,
    )


async def usual_hour(visit: Visit, group: Group) -> time:
    """The hour on the group's clock for which its last session was set; of none, an early one."""
    last = await visit.uow.sessions.last_set_for(group.id)
    return last.astimezone(zone_of(group)).time() if last else MORNING


async def next_free(visit: Visit, group: Group, record: SessionRecord) -> datetime:
    """The usual hour of the day it is written for; of one for no day of its own, the next that has no session yet."""
    hour = await usual_hour(visit, group)
    moment = next_at(hour, group, visit.now, record.day)
    if day_meant(record.session, group, visit.now) > today_in(group, visit.now):
        return moment
    taken = {one.day for one in await visit.uow.sessions.scheduled_in([group.id]) if one.id != record.id}
    while moment.date() in taken:
        moment = datetime.combine(moment.date() + timedelta(days=1), hour, zone_of(group))
    return moment


def next_at(hour: time, group: Group, now: datetime, day: date | None = None) -> datetime:
    """The next time this `hour` comes on the group's clock, of this `day` if it is ahead.

    In a gap the offset before it counts (RFC 5545 3.3.5).
    """
    local = now.astimezone(zone_of(group))
    soonest = local.date() if local.time() < hour else local.date() + timedelta(days=1)
    return datetime.combine(max(soonest, day or soonest), hour, zone_of(group))
