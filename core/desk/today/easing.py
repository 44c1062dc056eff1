"""Less for a while, as an athlete says it: back after a break, or an easy week of their own."""

from collections.abc import Mapping
from datetime import timedelta
from typing import Any, Final

from core.athletes.easing import WEEK, back_from, easy_week_from
from core.athletes.today import said
from core.athletes.values import Different
from core.desk.access import admitted
from core.desk.coached import coached_groups
from core.desk.commands import MyVersion
from core.desk.outcome import Outcome
from core.desk.today.different import as_usual, differ, session_of
from core.desk.today.elsewhere import before_them
from core.desk.today.says import AskBreak, BackSoon, CoachsEasyWeek, DayNoted
from core.desk.versions.commands import AsUsual, BeBack, SayBreak, TakeItEasy
from core.desk.versions.looking import current
from core.desk.versions.more import own_day
from core.desk.versions.showing import profile_today, today_of
from core.desk.versions.version import my_version
from core.desk.visit import Visit
from core.notation.coaching.easing import (
    EasyWeekWish,
    asks_for_as_usual,
    monday_of,
    read_break,
    read_easy_week,
    read_own_easy_week,
    says_had_a_break,
)
from core.notation.talk.yes_no import read_yes_no

# After a shorter break than this little is lost (estimate).
SHORT_BREAK: Final = timedelta(days=21)


@admitted
async def be_back(visit: Visit, command: BeBack) -> Outcome:
    record, _ = await current(visit, command.version)
    return await differ(visit, record, back_from(await today_of(visit, record)))


@admitted
async def take_it_easy(visit: Visit, command: TakeItEasy) -> Outcome:
    record, _ = await current(visit, command.version)
    return await differ(visit, record, easy_week_from(await today_of(visit, record)))


async def as_easing(visit: Visit, text: str, _: int | None) -> Outcome | None:
    """`back after a month off`, `I need an easy week`; None from strangers, and before consent."""
    usual = asks_for_as_usual(text)
    away, wish = read_break(text), await easy_week_in(visit, text)
    if away is None and wish is None and not usual:
        return None
    if not await visit.memberships() or not await visit.uow.consents.given(visit.person.id):
        return None
    if usual:
        return await usual_again(visit)
    if wish is not None:
        return await own_easy_week(visit, wish)
    if timedelta(0) < timedelta(days=away or 0) < SHORT_BREAK:
        return visit.told(BackSoon())
    return await ease(visit, back_from(await own_day(visit)))


async def easy_week_in(visit: Visit, text: str) -> EasyWeekWish | None:
    """A coach may speak of anybody: of them only words that are about nothing else count."""
    wish = read_easy_week(text)
    return wish if wish is not None or await coached_groups(visit) else read_own_easy_week(text)


async def usual_again(visit: Visit) -> Outcome | None:
    """Nothing is different any more; None where nothing was, and no version to go by."""
    record = await before_them(visit)
    if record is None or not (await visit.profile()).different:
        return await not_their_own(visit)
    return await as_usual(visit, AsUsual(session=record.id))


async def not_their_own(visit: Visit) -> Outcome | None:
    """The week is easy by the coach's word, which the athlete can't take back; None where it isn't."""
    record = await before_them(visit)
    if record is None or (await profile_today(visit, record)).today.easing is None:
        return None
    return visit.told(CoachsEasyWeek())


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
        return await not_their_own(visit)
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


@admitted
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
    """Whether they trained, in words; what can't be read is asked again."""
    session, had = refs["session"], read_had_a_break(text)
    if had is None:
        return visit.told(AskBreak(session_id=session, weeks=None))
    return await say_break(visit, SayBreak(session=session, had=had))


def read_had_a_break(text: str) -> bool | None:
    """Of the answer to `Did you train meanwhile?`."""
    if read_break(text) is not None:
        return True
    trained = read_yes_no(text)
    return says_had_a_break(text) if trained is None else not trained
