"""What an athlete wishes: each act with its use case, the same that its button has."""

from core.desk.classes.coming import come_or_stay_away, see_classes
from core.desk.classes.commands import AboutReminders, SeeClasses, SetLead, SetQuiet
from core.desk.classes.habits import about_reminders, fulfil, set_lead, set_quiet, show_habits
from core.desk.coached import coached_athletes, coached_ids
from core.desk.coaching.ordering_says import OnlyTheyErase
from core.desk.commands import (
    AboutMe,
    MyVersion,
    OnlyAnswer,
    SetUnits,
)
from core.desk.joining.groups import set_units
from core.desk.outcome import Outcome
from core.desk.profile.commands import ExportMine, ForgetMe
from core.desk.profile.own import export_mine, forget_me
from core.desk.profile.weighing import keep_units
from core.desk.talk.helping import about_me
from core.desk.talk.keeping_quiet import only_answer, wants_only_answers
from core.desk.talk.passing_on import as_for_coach, offer
from core.desk.talk.scene import Scene
from core.desk.versions.commands import GiveTimer
from core.desk.versions.timing import give_timer
from core.desk.versions.version import my_version
from core.desk.visit import Visit
from core.notation.calendar.reminding import OwnZone, names_an_hour
from core.notation.calendar.zones import places_in, read_zone
from core.notation.people import find_name
from core.understanding import acts as a


async def classes(visit: Visit, _: a.Act, __: Scene) -> Outcome | None:
    return await see_classes(visit, SeeClasses())


async def joins_class(visit: Visit, act: a.JoinsClass, _: Scene) -> Outcome | None:
    return await come_or_stay_away(visit, act.text, coming=True)


async def leaves_class(visit: Visit, act: a.LeavesClass, _: Scene) -> Outcome | None:
    return await come_or_stay_away(visit, act.text, coming=False) if await visit.memberships() else None


async def no_reminders(visit: Visit, act: a.NoReminders, scene: Scene) -> Outcome | None:
    """Of one day is a matter of the classes."""
    return await reminders(visit, act, scene) if act.day else await only_answer(visit, OnlyAnswer(yes=True))


async def remind(visit: Visit, act: a.Remind, scene: Scene) -> Outcome | None:
    if await wants_only_answers(visit):
        return await only_answer(visit, OnlyAnswer(yes=False))
    if act.minutes_before is None and names_an_hour(act.text) and await visit.memberships():
        return await show_habits(visit, by_the_clock=True)
    if act.minutes_before is None:
        return await reminders(visit, act, scene)
    return await set_lead(visit, SetLead(minutes=act.minutes_before))


async def reminders(visit: Visit, _: a.Act, __: Scene) -> Outcome | None:
    return await about_reminders(visit, AboutReminders()) if await visit.memberships() else None


async def zone(visit: Visit, act: a.Zone, scene: Scene) -> Outcome | None:
    """Their own clock, where a place is told."""
    zones = places_in(act.place or act.text) or read_zone(act.place or act.text)
    if not zones:
        return await reminders(visit, act, scene)
    return await fulfil(visit, OwnZone(zones=zones[:4])) if await visit.memberships() else None


async def quiet(visit: Visit, act: a.Quiet, scene: Scene) -> Outcome | None:
    if act.since is None or act.to is None:
        return await reminders(visit, act, scene)
    return await set_quiet(visit, SetQuiet(start=minute(act.since), end=minute(act.to)))


def minute(clock: str) -> int:
    """`22:30` as minutes of the day."""
    hour, _, past = clock.partition(":")
    return int(hour) * 60 + int(past or 0)


async def units(visit: Visit, act: a.Units, _: Scene) -> Outcome | None:
    """A coach speaks of the one group they coach."""
    coached = await coached_ids(visit)
    if len(coached) == 1:
        return await set_units(visit, SetUnits(group=coached[0], units=act.units))
    return await keep_units(visit, act.units)


async def me(visit: Visit, _: a.Act, __: Scene) -> Outcome | None:
    return await about_me(visit, AboutMe())


async def forget(visit: Visit, act: a.ForgetMe, _: Scene) -> Outcome | None:
    """Everybody erases only what is theirs: `delete everything Kim said` erases nothing of a coach."""
    athletes = await coached_athletes(visit)
    named = find_name(act.text, tuple(athletes)) if athletes else None
    if named is not None:
        return visit.told(OnlyTheyErase(athlete=named.name))
    return await forget_me(visit, ForgetMe())


async def export(visit: Visit, _: a.ExportMe, __: Scene) -> Outcome | None:
    return await export_mine(visit, ExportMine())


async def timer(visit: Visit, _: a.WantsTimer, scene: Scene) -> Outcome | None:
    """Of the session before them; of one that is over nobody needs a clock."""
    if scene.record is None:
        return await my_version(visit, MyVersion())
    return await give_timer(visit, GiveTimer(session=scene.record.id))


async def to_coach(visit: Visit, act: a.ToCoach, _: Scene) -> Outcome | None:
    """In their words: with their yes, unless they say that the coach is to be told."""
    return await as_for_coach(visit, act.text, None) or await offer(visit, (act.text,), agreed=False)
