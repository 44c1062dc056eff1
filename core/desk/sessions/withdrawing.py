"""A coach withdraws a session that stands in the group. Asked for first; scores that were told stay."""

import re
from typing import Final

from core.desk.access import admitted
from core.desk.classes.meetings import meets_on
from core.desk.coached import coached_groups, coached_ids
from core.desk.coaching.commands import WithdrawSession
from core.desk.commands import DiscardSession
from core.desk.days import RECENT
from core.desk.errors import AlreadyDone, StalePress, UnknownThing
from core.desk.outcome import Outcome, Say
from core.desk.sessions.meant import (
    at_hand,
    is_a_day_alone,
    is_named_alone,
    is_named_so,
    names_a_day,
    of_day,
    the_one,
    unposted,
)
from core.desk.sessions.posting import discard_session, group_post, post_key, replaced_by
from core.desk.sessions.says import (
    AskWithdraw,
    GroupPost,
    NothingOfDay,
    PostWithdrawn,
    SessionKept,
    SessionWithdrawn,
    WasWithdrawn,
)
from core.desk.sessions.scheduled import will_post
from core.desk.talk.not_got import left_over
from core.desk.visit import Visit
from core.store.records import Group, Purpose, SessionRecord, SessionState


async def withdraw_of_day(visit: Visit, text: str) -> Outcome | None:
    """The session of the day that is named, still to come or posted; where no day is named, the one posted last.

    None where nothing was posted lately, or by who coaches no group.
    """
    found = await of_day(visit, text)
    if (
        found is not None
        and found.state is not SessionState.POSTED
        and not await is_named_so(visit, text, found)
    ):
        return visit.told(NothingOfDay())
    if found is None and await names_a_day(visit, text):
        return visit.told(NothingOfDay()) if await coached_groups(visit) else None
    found = found or await posted_last(visit)
    return await withdraw_this(visit, found) if found else None


_DROPS: Final = re.compile(
    r"^\W*(?:(?:actually|no|ok|okay|please|pls|sorry|and|can you|could you|let'?s)\W+)*"
    r"(?:discard|cancel|forget|delete|drop|scrap|bin|ditch|withdraw|kill)\s+(?P<which>[^,;.!?]+)(?P<rest>.*)$",
    re.IGNORECASE | re.DOTALL,
)


async def as_dropped(visit: Visit, text: str, meant: SessionRecord | None) -> Outcome | None:
    """`Scrap sundays`, `bin friday's`: the session that is named and nothing else; None where none is named so.

    Raises WhichSession where several are.
    """
    found = _DROPS.match(text)
    if found is None or "\n" in text.strip() or "class" in text.casefold():
        return None
    named = [one for one in await unposted(visit) if await is_named_alone(visit, found["which"], one)]
    record = meant if meant in named else the_one(named)
    if record is None:
        return visit.told(NothingOfDay()) if await is_empty_day(visit, found["which"]) else None
    rest = found["rest"].strip(" ,;.!?")
    return await withdraw_this(visit, record) + (await left_over(visit, [rest]) if rest else Outcome())


async def is_empty_day(visit: Visit, which: str) -> bool:
    """Whether that is a day and nothing else, on which nothing of theirs stands and no class is."""
    if not is_a_day_alone(which) or not await coached_groups(visit):
        return False
    return await of_day(visit, which) is None and not await meets_on(visit, which)


async def withdraw_this(visit: Visit, found: SessionRecord) -> Outcome:
    """A draft goes at once; of all else it is asked first."""
    if found.state is SessionState.POSTED:
        return await withdraw_session(visit, WithdrawSession(session=found.id))
    if found.post_at is None:
        return await discard_session(visit, DiscardSession(session=found.id, revision=found.revision))
    said = await will_post(visit, found, found.post_at)
    return visit.told(said.model_copy(update={"drops": True, "beside": ()}), session=found.id)


async def posted_last(visit: Visit) -> SessionRecord | None:
    recent = [one for one in await at_hand(visit) if one.posted_at and one.posted_at >= visit.now - RECENT]
    return max(recent, key=lambda one: (one.posted_at or visit.now, one.id), default=None)


@admitted
async def withdraw_session(visit: Visit, command: WithdrawSession) -> Outcome:
    record = await standing_session(visit, command.session)
    group = await visit.group(record.group_id)
    earlier = await earlier_ones(visit, record)
    match command.how:
        case None:
            return await ask_first(visit, record, group, earlier)
        case "keep":
            return visit.told(SessionKept()) + Outcome(settles=True)
        case "all":
            return await withdraw(visit, group, (record, *earlier), None)
    return await withdraw(visit, group, (record,), earlier[0] if earlier else None)


async def standing_session(visit: Visit, session_id: int) -> SessionRecord:
    """A session that stands in its group."""
    record = await visit.uow.sessions.find(session_id, await visit.group_ids())
    if record is None:
        raise UnknownThing
    if record.state is SessionState.WITHDRAWN:
        raise AlreadyDone
    if record.state is not SessionState.POSTED:
        raise StalePress
    return record


async def earlier_ones(visit: Visit, record: SessionRecord) -> tuple[SessionRecord, ...]:
    """The posts of the day whose place it took, the newest first."""
    before = await replaced_by(visit.uow, record, record.day)
    return (before, *await earlier_ones(visit, before)) if before else ()


async def ask_first(
    visit: Visit, record: SessionRecord, group: Group, earlier: tuple[SessionRecord, ...]
) -> Outcome:
    draft = await visit.uow.sessions.newest_unposted(visit.person.id, await coached_ids(visit))
    asked = AskWithdraw(
        session_id=record.id,
        group=group.title,
        title=record.session.title,
        day=record.day,
        changed=bool(earlier),
        draft=(draft.id, draft.revision) if draft and draft.id > record.id else None,
    )
    return visit.told(asked, session=record.id)


async def withdraw(
    visit: Visit, group: Group, gone: tuple[SessionRecord, ...], again: SessionRecord | None
) -> Outcome:
    """Nothing leads to what is gone any more. `again`: the earlier post that counts again, as it was."""
    told = visit.told(WasWithdrawn(group=group.title, again=again is not None))
    for record in gone:
        await visit.uow.sessions.withdraw(record.id)
        told += await rewrite(visit, group, record, PostWithdrawn(title=record.session.title, day=record.day))
    if again is not None:
        before = await replaced_by(visit.uow, again, again.day)
        post = await group_post(visit.uow, group, again, again.day)
        told += await rewrite(visit, group, again, post.model_copy(update={"replaces": before is not None}))
    return told + await tell_who_has_it(visit, group, gone[0], again) + Outcome(settles=True)


async def rewrite(
    visit: Visit, group: Group, record: SessionRecord, what: PostWithdrawn | GroupPost
) -> Outcome:
    key = post_key(record)
    if await visit.uow.outbox.by_key(key) is None:
        return Outcome()
    return Outcome((Say(group.chat_id, what, Purpose.POST, edits=key, refs={"session": record.id}),))


async def tell_who_has_it(
    visit: Visit, group: Group, record: SessionRecord, again: SessionRecord | None
) -> Outcome:
    """An edited message rings nobody's phone, and somebody with a version may be about to train."""
    said = SessionWithdrawn(
        group=group.title, title=record.session.title, day=record.day, again=again.id if again else None
    )
    says = []
    for member in await visit.uow.groups.members(group.id):
        chat = await visit.uow.chats.private_of(member.person_id)
        if chat is None or await visit.uow.versions.current(record.id, member.person_id) is None:
            continue
        if await visit.uow.scores.of_person(record.id, member.person_id):
            continue
        key = f"withdrawn:{record.id}:{member.person_id}"
        says.append(Say(chat.id, said, Purpose.REMINDER, key=key, expires_after=RECENT))
    return Outcome(tuple(says))
