"""More after a gentle start: whoever was new to training decides it, once they have done enough gently."""

from datetime import date

from core.athletes.easing import GENTLE_SESSIONS, STARTS_GENTLY, beginning_on, may_do_more
from core.athletes.today import said
from core.athletes.values import Screening
from core.desk.access import admitted
from core.desk.days import today_in
from core.desk.errors import StalePress
from core.desk.outcome import Outcome
from core.desk.today.breaks import trained_on
from core.desk.today.says import AskMore, MoreDecided, MoreLater
from core.desk.versions.commands import DoMore
from core.desk.visit import Visit
from core.notation.coaching.easing import asks_for_more


async def own_day(visit: Visit) -> date:
    """The day it is in the first of their groups."""
    memberships = await visit.memberships()
    return today_in(await visit.group(memberships[0].group_id), visit.now)


async def offer_more(visit: Visit) -> Outcome:
    """Whoever started gently, and has for long enough, is asked whether it may be more; once in a while."""
    profile = await visit.profile()
    if profile.screening is not Screening.MODERATE or not await visit.memberships():
        return Outcome()
    trained, day = await trained_on(visit), await own_day(visit)
    if not may_do_more(profile, trained, day):
        return Outcome()
    asked = profile.model_copy(update={"asked_on": day})
    await visit.uow.profiles.save(visit.person.id, asked, visit.now)
    since = profile.screened_on or date.min
    return visit.told(AskMore(sessions=len({one for one in trained if one >= since})))


async def as_more(visit: Visit, text: str, _: int | None) -> Outcome | None:
    """Whoever starts gently hears when it may be more, or is asked at once; None for everybody else."""
    profile = await visit.profile()
    gently = profile.screening is Screening.MODERATE and profile.branch in STARTS_GENTLY
    if not gently or not asks_for_more(text) or not await visit.memberships():
        return None
    await visit.must_consent()
    since = profile.screened_on or date.min
    sessions = len({one for one in await trained_on(visit) if one >= since})
    if may_do_more(
        profile.model_copy(update={"asked_on": None}), await trained_on(visit), await own_day(visit)
    ):
        return visit.told(AskMore(sessions=sessions))
    return visit.told(MoreLater(sessions=sessions, needed=GENTLE_SESSIONS))


@admitted
async def do_more(visit: Visit, command: DoMore) -> Outcome:
    """The athlete, not the coach, says so; some weeks with a little less come first."""
    profile, day = await visit.profile(), await own_day(visit)
    if not may_do_more(profile.model_copy(update={"asked_on": None}), await trained_on(visit), day):
        raise StalePress
    if not command.yes:
        return visit.told(MoreDecided(until=None)) + Outcome(settles=True)
    news = beginning_on(day)
    more = said(profile, news, day).model_copy(update={"screening": Screening.CLEAR})
    await visit.uow.profiles.save(visit.person.id, more, visit.now)
    return visit.told(MoreDecided(until=news.until)) + Outcome(settles=True)
