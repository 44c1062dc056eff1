"""`I'm travelling, only a band`: today takes place elsewhere, with what is there."""

from datetime import date

from core.athletes.equipment import at
from core.athletes.today import said
from core.athletes.values import Different, Equipment
from core.desk.commands import MyVersion
from core.desk.days import RECENT, today_in
from core.desk.outcome import Outcome
from core.desk.profile.furnishing import ask_set, keep
from core.desk.talk.asked import keeps
from core.desk.today.different import LONGEST, differ
from core.desk.today.says import AsUsualAgain, AtHomeAlready, DayNoted
from core.desk.versions.version import my_version, session_meant
from core.desk.versions.waiting import seen_by
from core.desk.visit import Visit
from core.scaling.values import Ask
from core.store.records import OpenQuestion, SessionRecord
from core.understanding.acts import Elsewhere as ElsewhereAct
from core.understanding.elsewhere import Elsewhere, elsewhere_in, may_be_elsewhere, read_elsewhere
from core.understanding.equipment_changes import EquipmentChange


async def as_elsewhere(visit: Visit, text: str, _: int | None) -> Outcome | None:
    """Whoever names no equipment must have a version before them: else it may be just talk."""
    memberships = await visit.memberships() if may_be_elsewhere(text) else []
    if not memberships or not await visit.uow.consents.given(visit.person.id):
        return None
    today = today_in(await visit.group(memberships[0].group_id), visit.now)
    told = read_elsewhere(text, today, (await visit.profile()).units)
    return await be_elsewhere(visit, told, today) if told else None


async def elsewhere(visit: Visit, act: ElsewhereAct, text: str) -> Outcome | None:
    """The same of words that were understood to tell it."""
    memberships = await visit.memberships()
    if not memberships or not await visit.uow.consents.given(visit.person.id):
        return None
    today = today_in(await visit.group(memberships[0].group_id), visit.now)
    return await be_elsewhere(visit, elsewhere_in(act, text, today), today)


async def be_elsewhere(visit: Visit, told: Elsewhere, today: date) -> Outcome | None:
    question = await visit.uow.questions.open_in(visit.chat)
    if await keeps(visit, "elsewhere"):
        return None
    record = await before_them(visit)
    if told.things is not None:
        there = await be_there(visit, told, told.things, today, record)
        return there + await go_on(visit, question) if record is None and told.since is None else there
    if told.later or record is None:
        return None
    days = days_of(told, today)
    if told.unread or at(await visit.profile(), told.place) is None:
        named = days if told.until else None
        return await ask_set(visit, told.place, record.id, (told.unread,) if told.unread else (), named)
    return await differ(visit, record, days) if told.since is None else await note(visit, days, today, record)


async def home_again(visit: Visit) -> Outcome:
    """They train at home again, before the days they had named are over."""
    profile = await visit.profile()
    kept = tuple(one for one in profile.different if one.place is None)
    if kept == profile.different:
        return visit.told(AtHomeAlready())
    await visit.uow.profiles.save(visit.person.id, profile.model_copy(update={"different": kept}), visit.now)
    record = await before_them(visit)
    shown = await my_version(visit, MyVersion(session=record.id)) if record else Outcome()
    return visit.told(AsUsualAgain(gently=False)) + shown


def days_of(told: Elsewhere, today: date) -> Different:
    """When they are there, within reason; today, if no day was named."""
    first = told.since or today
    until = min(max(told.until or first, first), today + LONGEST)
    return Different(since=told.since, until=until, place=told.place)


async def note(visit: Visit, days: Different, today: date, record: SessionRecord | None) -> Outcome:
    """Kept, with no version to make anew."""
    await visit.uow.profiles.save(visit.person.id, said(await visit.profile(), days, today), visit.now)
    return visit.told(DayNoted(session_id=record.id if record else None, different=days, today=today))


async def go_on(visit: Visit, question: OpenQuestion | None) -> Outcome:
    """What was asked for a version that isn't there yet: on to the next question, or to the version."""
    if question is None or question.kind not in set(Ask):
        return Outcome()
    return await my_version(visit, MyVersion(session=question.refs["session"]))


async def before_them(visit: Visit) -> SessionRecord | None:
    """The session that they have a version of and may still do."""
    record = await session_meant(visit, None)
    if record is None or record.posted_at is None or record.posted_at < visit.now - RECENT:
        return None
    return record if await seen_by(visit, record, visit.person) else None


async def be_there(
    visit: Visit,
    told: Elsewhere,
    things: tuple[Equipment, ...],
    today: date,
    record: SessionRecord | None,
) -> Outcome:
    """Read back what is there; from today, if it is so today, with the version that comes of it."""
    change = EquipmentChange(place=told.place, whole=things)
    kept = await keep(visit, await visit.profile(), told.place, things, change)
    if told.later:
        return kept
    news = days_of(told, today)
    if record is None or told.since is not None:
        return kept + await note(visit, news, today, record)
    return kept + await differ(visit, record, news)
