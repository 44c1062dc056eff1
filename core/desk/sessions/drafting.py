"""What a coach types about their draft: `post now`, `post it tomorrow at 7`, `discard it`."""

import re
from datetime import UTC, datetime, timedelta

from core.desk.coached import coached_ids
from core.desk.commands import DiscardSession, PostLater, PostSession
from core.desk.days import today_in, zone_of
from core.desk.outcome import Outcome
from core.desk.sessions.posting import discard_session, post_session
from core.desk.sessions.says import AskWhen
from core.desk.sessions.scheduled import post_later
from core.desk.visit import Visit
from core.notation.moments import find_clock, find_days
from core.store.records import Group, SessionRecord, SessionState

_NOW = re.compile(r"^\W*(?:now|right away|please|to the group|at once)?\W*$", re.IGNORECASE)
_DISCARD = re.compile(
    r"^\W*(?:discard|cancel|forget|delete|drop|scrap)\b(?: it| that| this| the session)?\W*$", re.IGNORECASE
)


async def as_draft_order(visit: Visit, text: str, _: int | None) -> Outcome | None:
    """None unless the visitor has a draft and speaks of discarding it."""
    if not _DISCARD.match(text):
        return None
    draft = await visit.uow.sessions.newest_unposted(visit.person.id, await coached_ids(visit))
    if draft is None:
        return None
    return await discard_session(visit, DiscardSession(session=draft.id, revision=draft.revision))


async def post_at_another_time(visit: Visit, draft: SessionRecord, words: str) -> Outcome | None:
    """`Change it to 7`, once it is to be posted later; None where it isn't, or no time is named."""
    if draft.state is not SessionState.SCHEDULED:
        return None
    moment = moment_in(words, await visit.group(draft.group_id), visit.now)
    return await posting(visit, draft, words) if moment else None


async def posting(visit: Visit, draft: SessionRecord, when: str) -> Outcome:
    if _NOW.match(when):
        return await post_session(visit, PostSession(session=draft.id, revision=draft.revision))
    moment = moment_in(when, await visit.group(draft.group_id), visit.now)
    if moment is None:
        return visit.told(AskWhen())
    minute = int(moment.timestamp()) // 60
    return await post_later(visit, PostLater(session=draft.id, revision=draft.revision, minute=minute))


def moment_in(text: str, group: Group, now: datetime) -> datetime | None:
    """The moment meant on the group's clock, always to come; None where none is named. Without a day: the next."""
    clock = find_clock(text)
    if clock is None:
        return None
    days = find_days(text, today_in(group, now))
    day = days[0] if days else today_in(group, now)
    moment = datetime.combine(day, clock.at, zone_of(group))
    if moment <= now and not days:
        moment = datetime.combine(day + timedelta(days=1), clock.at, zone_of(group))
    return moment.astimezone(UTC) if moment > now else None
