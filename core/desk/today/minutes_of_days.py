"""`Tues and thurs 20 min`: so much time on several days to come, each kept for its day."""

from core.athletes.today import said
from core.athletes.values import Different
from core.desk.days import today_in
from core.desk.outcome import Outcome
from core.desk.talk.together import as_one
from core.desk.today.says import DayNoted
from core.desk.visit import Visit
from core.notation.calendar.moments import find_days
from core.notation.talk.chat import minutes_of_days


async def as_minutes_of_days(visit: Visit, text: str, _: int | None) -> Outcome | None:
    told = minutes_of_days(text)
    memberships = await visit.memberships() if told else ()
    if told is None or not memberships or not await visit.uow.consents.given(visit.person.id):
        return None
    today = today_in(await visit.group(memberships[0].group_id), visit.now)
    days = [day for words in told.days if (day := next(iter(find_days(words, today)), None))]
    profile, noted = await visit.profile(), Outcome()
    for day in days:
        news = Different(since=day, until=day, minutes=told.minutes)
        profile = said(profile, news, today)
        noted += visit.told(DayNoted(session_id=None, different=news, today=today))
    await visit.uow.profiles.save(visit.person.id, profile, visit.now)
    return as_one(visit, noted) if days else None
