"""What is expected of the visitor today: from their version as it went out, and from what they showed so far."""

from core.desk.versions.showing import profile_today, today_of
from core.desk.versions.waiting import seen_by
from core.desk.visit import Visit
from core.forecast.forecast import outlook_of
from core.forecast.people import People
from core.forecast.today import length_s
from core.forecast.values import Outlook
from core.movements.lookup import catalogue
from core.store.records import SessionRecord


async def minutes_of_theirs(visit: Visit, record: SessionRecord) -> float | None:
    """How long their own version takes the visitor, rests included and warm-up not; None while they have none."""
    shown = await seen_by(visit, record, visit.person)
    return None if shown is None else length_s(shown.version, await _people(visit, record)) / 60


async def outlooks_of(visit: Visit, record: SessionRecord) -> tuple[Outlook | None, ...]:
    """For each block; None where nothing is expected. Empty while they have no version."""
    shown = await seen_by(visit, record, visit.person)
    if shown is None:
        return ()
    return outlook_of(shown.version, await _people(visit, record))


async def _people(visit: Visit, record: SessionRecord) -> People:
    return People(await profile_today(visit, record), catalogue(), (await today_of(visit, record)).year)
