"""Words about how it goes with a version before them: the same questions as its buttons ask."""

from datetime import date

from core.athletes.today import said
from core.athletes.values import Different
from core.desk.days import RECENT
from core.desk.outcome import Outcome
from core.desk.today.different import LONGEST, be_short, be_sore
from core.desk.today.says import AskMinutes, AskSick, AskSore, DayNoted
from core.desk.versions.adjusting import change_lines
from core.desk.versions.commands import BeShort, BeSore, ChangeLines
from core.desk.versions.says import StopWhatHurts
from core.desk.versions.showing import today_of
from core.desk.versions.version import session_meant
from core.desk.versions.waiting import seen_by
from core.desk.visit import Visit
from core.notation.feelings import Feeling, read_feeling
from core.notation.lasting import Lasting, read_lasting
from core.store.records import SessionRecord


async def as_feeling(visit: Visit, text: str, _: int | None) -> Outcome | None:
    """`I feel sick`, `too hard`; None for all else, and where no version is before them."""
    feeling = read_feeling(text)
    record = await session_meant(visit, None) if feeling else None
    if feeling is None or record is None or record.posted_at is None:
        return None
    if record.posted_at < visit.now - RECENT:
        return None
    today = await today_of(visit, record)
    lasting = read_lasting(text.lower(), today)
    if feeling.minutes is not None and lasting.since is not None:
        return await be_short_then(visit, record, feeling.minutes, lasting, today)
    shown = await seen_by(visit, record, visit.person)
    return await ask_about(visit, feeling, shown.id) if shown else None


async def be_short_then(
    visit: Visit, record: SessionRecord, minutes: int, lasting: Lasting, today: date
) -> Outcome:
    """`Tomorrow I have 15 minutes` leaves today as it is."""
    await visit.must_consent()
    until = min(lasting.until or today, today + LONGEST)
    news = Different(since=lasting.since, until=until, minutes=minutes)
    await visit.uow.profiles.save(visit.person.id, said(await visit.profile(), news, today), visit.now)
    return visit.told(DayNoted(session_id=record.id, different=news, today=today))


async def ask_about(visit: Visit, feeling: Feeling, version: int) -> Outcome:
    """The question that the button of that name asks."""
    await visit.must_consent()
    match feeling.kind:
        case "sick":
            return visit.told(AskSick(version_id=version))
        case "sore" if feeling.where is not None:
            return await be_sore(visit, BeSore(version=version, where=feeling.where))
        case "sore":
            return visit.told(AskSore(version_id=version))
        case "short" if feeling.minutes is not None:
            return await be_short(visit, BeShort(version=version, minutes=feeling.minutes))
        case "short":
            return visit.told(AskMinutes(version_id=version))
    lines = await change_lines(visit, ChangeLines(version=version))
    return visit.told(StopWhatHurts()) + lines if feeling.kind == "hurts" else lines
