"""`I'm travelling, only a band`: today takes place elsewhere, with what is there."""

from datetime import date
from typing import Final

from core.athletes.equipment import at, furnished
from core.athletes.today import said
from core.athletes.values import Different, Equipment
from core.desk.commands import MyVersion
from core.desk.days import RECENT, today_in
from core.desk.entry import CONSENT, SCREENING
from core.desk.furnishing import ask_set, keep
from core.desk.outcome import Outcome
from core.desk.says.today import DayNoted
from core.desk.today import LONGEST, differ
from core.desk.versions import my_version, session_meant
from core.desk.visit import Visit
from core.desk.waiting import seen_by
from core.notation.elsewhere import Elsewhere, may_be_elsewhere, read_elsewhere
from core.notation.equipment_changes import EquipmentChange
from core.scaling.values import Ask
from core.store.records import OpenQuestion, SessionRecord

ASKED_OTHERWISE: Final = frozenset({CONSENT, SCREENING, "coach", "score", "class"})


async def as_elsewhere(visit: Visit, text: str, _: int | None) -> Outcome | None:
    """Whoever names no equipment must have a version before them: else it may be just talk."""
    memberships = await visit.memberships() if may_be_elsewhere(text) else []
    if not memberships or not await visit.uow.consents.given(visit.person.id):
        return None
    today = today_in(await visit.group(memberships[0].group_id), visit.now)
    told = read_elsewhere(text, today, (await visit.profile()).units)
    question = await visit.uow.questions.open_in(visit.chat) if told else None
    if told is None or (question is not None and question.kind in ASKED_OTHERWISE):
        return None
    record = await before_them(visit)
    if told.things is not None:
        there = await be_there(visit, told, told.things, today, record)
        return there + await go_on(visit, question) if record is None else there
    if told.later or record is None:
        return None
    if told.unread or at(await visit.profile(), told.place) is None:
        unread = (told.unread,) if told.unread else ()
        return await ask_set(visit, told.place, record.id, unread, last_day(told, today))
    return await differ(visit, record, Different(until=last_day(told, today) or today, place=told.place))


def last_day(told: Elsewhere, today: date) -> date | None:
    """The last day that was named, within reason."""
    return min(max(told.until, today), today + LONGEST) if told.until else None


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
    news = Different(until=last_day(told, today) or today, place=told.place)
    if record is not None:
        return kept + await differ(visit, record, news)
    there = said(furnished(await visit.profile(), told.place, things), news, today)
    await visit.uow.profiles.save(visit.person.id, there, visit.now)
    return kept + visit.told(DayNoted(session_id=None, different=news, today=today))
