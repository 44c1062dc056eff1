"""Nothing was told for weeks: one question whether they trained meanwhile, before their next version."""

from datetime import date

from core.athletes.easing import A_BREAK, WEEK, may_have_had_a_break
from core.athletes.values import Profile
from core.desk.outcome import Outcome
from core.desk.today.says import AskBreak
from core.desk.visit import Visit
from core.store.records import SessionRecord

BREAK = "break"


async def trained_on(visit: Visit) -> list[date]:
    """The days of which they told a score, the newest first."""
    return await visit.uow.scores.days_of(visit.person.id)


async def ask_of_break(visit: Visit, record: SessionRecord, profile: Profile, day: date) -> Outcome | None:
    """None where there is nothing to ask; the answer may be typed."""
    if profile.asked_on is not None and day - profile.asked_on < A_BREAK:
        return None
    trained = await trained_on(visit)
    if not may_have_had_a_break(profile, trained, day):
        return None
    await visit.uow.questions.ask(visit.chat, BREAK, {"session": record.id}, visit.now)
    return visit.told(AskBreak(session_id=record.id, weeks=(day - max(trained)) // WEEK))
