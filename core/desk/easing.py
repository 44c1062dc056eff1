"""Less for a while, as an athlete says it: back after a break, or an easy week of their own."""

from collections.abc import Mapping
from datetime import timedelta
from typing import Any, Final

from core.athletes.easing import WEEK, back_from, easy_week_from
from core.athletes.today import said
from core.athletes.values import Different
from core.desk.commands import MyVersion
from core.desk.elsewhere import before_them
from core.desk.looking import current
from core.desk.more import own_day
from core.desk.outcome import Outcome
from core.desk.says.today import BackSoon, DayNoted
from core.desk.showing import today_of
from core.desk.today import differ, session_of
from core.desk.version_commands import BeBack, SayBreak, TakeItEasy
from core.desk.versions import my_version
from core.desk.visit import Visit
from core.notation.easing import EasyWeekWish, monday_of, read_break, read_easy_week
from core.notation.yes_no import read_yes_no

# After a shorter break than this little is lost (estimate).
SHORT_BREAK: Final = timedelta(days=21)


async def be_back(visit: Visit, command: BeBack) -> Outcome:
    record, _ = await current(visit, command.version)
    return await differ(visit, record, back_from(await today_of(visit, record)))


async def take_it_easy(visit: Visit, command: TakeItEasy) -> Outcome:
    record, _ = await current(visit, command.version)
    return await differ(visit, record, easy_week_from(await today_of(visit, record)))


async def as_easing(visit: Visit, text: str, _: int | None) -> Outcome | None:
    """`back after a month off`, `I need an easy week`; None from strangers, and before consent."""
    away, wish = read_break(text), read_easy_week(text)
    if away is None and wish is None:
        return None
    if not await visit.memberships() or not await visit.uow.consents.given(visit.person.id):
        return None
    if wish is not None:
        return await own_easy_week(visit, wish)
    if timedelta(0) < timedelta(days=away or 0) < SHORT_BREAK:
        return visit.told(BackSoon())
    return await ease(visit, back_from(await own_day(visit)))


async def own_easy_week(visit: Visit, wish: EasyWeekWish) -> Outcome | None:
    """Seven days from today, or from next Monday."""
    if not wish.yes:
        return await end_own_easy_week(visit)
    day = await own_day(visit)
    return await ease(visit, easy_week_from(monday_of(day) + WEEK if wish.when == "next" else day))


async def end_own_easy_week(visit: Visit) -> Outcome | None:
    profile = await visit.profile()
    kept = tuple(one for one in profile.different if one.ease != "easy-week")
    if kept == profile.different:
        return None
    await visit.uow.profiles.save(visit.person.id, profile.model_copy(update={"different": kept}), visit.now)
    return await my_version(visit, MyVersion())


async def ease(visit: Visit, news: Different) -> Outcome:
    """Kept for its days; a version that is before them is made anew."""
    day = await own_day(visit)
    record = await before_them(visit)
    if record is not None and news.since is not None and news.since <= day:
        return await differ(visit, record, news)
    await visit.uow.profiles.save(visit.person.id, said(await visit.profile(), news, day), visit.now)
    return visit.told(DayNoted(session_id=None, different=news, today=day))


async def say_break(visit: Visit, command: SayBreak) -> Outcome:
    """A break makes two gentle weeks; either answer is believed, and not asked for again for long."""
    record = await session_of(visit, command.session)
    day = await today_of(visit, record)
    profile = (await visit.profile()).model_copy(update={"asked_on": day})
    if command.had:
        profile = said(profile, back_from(day), day)
    await visit.uow.profiles.save(visit.person.id, profile, visit.now)
    await visit.uow.questions.close(visit.chat)
    noted = visit.told(DayNoted(session_id=record.id, different=back_from(day), today=day))
    shown = await my_version(visit, MyVersion(session=record.id))
    return (noted if command.had else Outcome()) + shown + Outcome(settles=True)


async def tell_break(visit: Visit, refs: Mapping[str, Any], text: str) -> Outcome:
    """Whether they trained, in words; what can't be read is asked again with the version."""
    trained = read_yes_no(text)
    if read_break(text) is not None:
        trained = False
    if trained is None:
        return await my_version(visit, MyVersion(session=refs["session"]))
    return await say_break(visit, SayBreak(session=refs["session"], had=not trained))
