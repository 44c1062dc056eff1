"""A coach calls a week easy: for everybody in the group, or for one athlete."""

from collections.abc import Mapping
from datetime import date, timedelta

from core.athletes.easing import A_BREAK, WEEK
from core.desk.access import admitted
from core.desk.coached import athlete_in, coached_athletes, coached_groups
from core.desk.coaching.commands import CallWeekEasy
from core.desk.coaching.ordering import nobody_called
from core.desk.coaching.says import AskWhoseWeek, WeekEased
from core.desk.days import today_in
from core.desk.errors import StalePress
from core.desk.outcome import Outcome
from core.desk.versions.showing import EASY_DAYS
from core.desk.visit import Visit
from core.notation.coaching.easing import EasyWeekWish, easy_week_told, monday_of, read_easy_week
from core.notation.people import all_named
from core.scaling.orders import Pin
from core.store.records import Group, Membership
from core.understanding.ordering import strangers_in


async def as_easy_week(visit: Visit, text: str, _: int | None) -> Outcome | None:
    """`easy week`, `next week is a deload for Ilse`; None from others, and where they mean themselves."""
    groups = await coached_groups(visit)
    athletes = await coached_athletes(visit)
    strangers = strangers_in(text, tuple(athletes)) if groups else ()
    wish = read_easy_week(text, (*athletes, *strangers)) if groups else None
    if wish is None or wish.mine:
        return None
    unknown = nobody_called(visit, [one for one in strangers if one in wish.names], athletes)
    theirs = wish._replace(names=tuple(one for one in wish.names if one in athletes))
    if wish.names and not theirs.names:
        return unknown
    return await carry_out(visit, theirs, groups, athletes) + unknown


async def as_told(visit: Visit, person: str | None, text: str) -> Outcome | None:
    """Words that are understood to be of an easy week, of who is named or of all; None for whoever is unknown.

    Whoever is named anywhere is no word about everybody.
    """
    groups, athletes = await coached_groups(visit), await coached_athletes(visit)
    if not groups or (person is not None and person not in athletes):
        return None
    wish = easy_week_told(text, all_named(text, athletes) if person is None else (person,))
    return None if wish is None else await carry_out(visit, wish, groups, athletes)


async def carry_out(
    visit: Visit, wish: EasyWeekWish, groups: list[Group], athletes: Mapping[str, Membership]
) -> Outcome:
    """Of who is named at once; everybody's, and whose of several groups, is asked first, as it changes what all get."""
    named = [athletes[one] for one in wish.names]
    weeks = [calling(visit, await visit.group(one.group_id), wish, one.person_id) for one in named]
    if not weeks and (wish.yes or len(groups) > 1):
        monday = date.fromordinal(calling(visit, groups[0], wish, None).monday)
        titles = tuple((one.id, one.title) for one in groups)
        return visit.told(AskWhoseWeek(monday=monday, yes=wish.yes, groups=titles))
    told = Outcome()
    for one in weeks or [calling(visit, groups[0], wish, None)]:
        told += await call_week_easy(visit, one)
    return told


def calling(visit: Visit, group: Group, wish: EasyWeekWish, person: int | None) -> CallWeekEasy:
    monday = monday_of(today_in(group, visit.now)) + (WEEK if wish.when == "next" else timedelta(0))
    return CallWeekEasy(group=group.id, monday=monday.toordinal(), yes=wish.yes, person=person)


@admitted
async def call_week_easy(visit: Visit, command: CallWeekEasy) -> Outcome:
    """Versions that went out already stay as they are, unless they are asked for again."""
    person = command.person
    athlete = None if person is None else await athlete_in(visit.uow, command.group, person)
    monday = date.fromordinal(command.monday)
    if monday != monday_of(monday) or abs(monday - visit.now.date()) > A_BREAK:
        raise StalePress
    if command.yes:
        await visit.uow.orders.give(
            group_id=command.group,
            person_id=command.person,
            session_id=None,
            movement=EASY_DAYS,
            pin=week_from(monday),
            by_id=visit.person.id,
            now=visit.now,
        )
    else:
        await end_easy_days(visit, command.group, person, week_from(monday))
    eased = WeekEased(
        group=command.group,
        title=(await visit.group(command.group)).title,
        monday=monday,
        yes=command.yes,
        person=command.person,
        athlete=athlete.person.name if athlete else None,
    )
    return visit.told(eased) + Outcome(settles=True)


def week_from(monday: date) -> Pin:
    return Pin(block=1, line=1, since=monday, until=monday + WEEK - timedelta(days=1))


async def end_easy_days(visit: Visit, group: int, person: int | None, week: Pin) -> None:
    """Whatever was called easy on any day of that week: `easy till friday` ends with it too."""
    for one in await visit.uow.orders.standing_for(group, EASY_DAYS):
        if one.person_id == person and one.pin.meets(week):
            await visit.uow.orders.undo(one.id, visit.now)
