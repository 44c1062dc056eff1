"""How somebody is reminded, told in words or by buttons: lead, own clock, quiet hours, the hour of the digest."""

from collections.abc import Mapping
from dataclasses import replace
from datetime import time
from typing import Any
from zoneinfo import available_timezones

from core.calendar.values import Quiet
from core.desk.access import admitted
from core.desk.classes.commands import (
    AboutReminders,
    AskHabit,
    SetDigest,
    SetLead,
    SetOwnZone,
    SetQuiet,
    WantDigest,
)
from core.desk.classes.reminding import arm_all_of
from core.desk.classes.says import AskAboutHabit, MyReminders
from core.desk.coaching.digest import DIGEST_AT, plan_digests_anew
from core.desk.errors import NotAMember, UnknownThing
from core.desk.outcome import Outcome
from core.desk.visit import Visit
from core.notation.calendar.reminding import (
    DigestHour,
    DigestWanted,
    Lead,
    OwnZone,
    QuietHours,
    Wish,
    read_digest,
    read_lead,
    read_quiet,
)
from core.notation.calendar.zones import read_zone
from core.store.records import Membership, ReminderHabits

LONGEST_LEAD = 7 * 24 * 60
_DAY_MINUTES = 24 * 60
ASKED = frozenset({"lead", "quiet", "own_zone", "digest"})


@admitted
async def about_reminders(visit: Visit, _: AboutReminders) -> Outcome:
    return await show_habits(visit)


async def show_habits(visit: Visit, *, saved: bool = False, by_the_clock: bool = False) -> Outcome:
    """What is kept, on whose clock, and for coaches when the digest comes."""
    memberships = await members_only(visit)
    told = await visit.uow.habits.get(visit.person.id)
    group = await visit.group(memberships[0].group_id)
    coach = bool(await visit.coached())
    digest_at = (told.digest_at or DIGEST_AT) if told.wants_digest else None
    said = MyReminders(
        zone=told.zone or group.zone or "UTC",
        own_zone=told.zone is not None,
        lead_minutes=memberships[0].lead_minutes,
        quiet=told.quiet,
        coach=coach,
        digest_at=digest_at if coach else None,
        saved=saved,
        by_the_clock=by_the_clock,
    )
    return visit.told(said)


async def members_only(visit: Visit) -> list[Membership]:
    memberships = await visit.memberships()
    if not memberships:
        raise NotAMember
    return memberships


@admitted
async def set_lead(visit: Visit, command: SetLead) -> Outcome:
    """How long before a class, in all the person's groups."""
    if not 0 <= command.minutes <= LONGEST_LEAD:
        raise UnknownThing
    for member in await members_only(visit):
        await visit.uow.groups.set_lead(visit.person.id, member.group_id, command.minutes)
    visit.changed()
    return await changed(visit)


@admitted
async def set_quiet(visit: Visit, command: SetQuiet) -> Outcome:
    if not (0 <= command.start < _DAY_MINUTES and 0 <= command.end < _DAY_MINUTES):
        raise UnknownThing
    none = command.start == command.end
    quiet = None if none else Quiet(start=wall(command.start), end=wall(command.end))
    return await save(visit, quiet=quiet)


def minute_of(wall: time | None) -> int:
    return 0 if wall is None else wall.hour * 60 + wall.minute


def wall(minute: int) -> time:
    return time(minute // 60, minute % 60)


@admitted
async def set_own_zone(visit: Visit, command: SetOwnZone) -> Outcome:
    if command.zone not in available_timezones():
        raise UnknownThing
    return await save(visit, zone=command.zone)


@admitted
async def set_digest(visit: Visit, command: SetDigest) -> Outcome:
    if not 0 <= command.minute < _DAY_MINUTES:
        raise UnknownThing
    saved = await save(visit, digest_at=wall(command.minute), wants_digest=True)
    await plan_digests_anew(visit)
    return saved


@admitted
async def want_digest(visit: Visit, command: WantDigest) -> Outcome:
    """On again, it comes at the hour that was kept."""
    saved = await save(visit, wants_digest=command.yes)
    await plan_digests_anew(visit)
    return saved


async def save(visit: Visit, **facts: Any) -> Outcome:
    await members_only(visit)
    told: ReminderHabits = replace(await visit.uow.habits.get(visit.person.id), **facts)
    await visit.uow.habits.save(visit.person.id, told, visit.now)
    return await changed(visit)


async def changed(visit: Visit) -> Outcome:
    """Plan all reminders anew and show what is kept now."""
    await visit.uow.questions.close(visit.chat)
    await arm_all_of(visit.uow, visit.now, visit.person.id)
    return await show_habits(visit, saved=True) + Outcome(settles=True)


@admitted
async def ask_habit(visit: Visit, command: AskHabit) -> Outcome:
    """Ask for one of them in words; the next free text may be the answer."""
    if command.which not in ASKED:
        raise UnknownThing
    await members_only(visit)
    await visit.uow.questions.ask(visit.chat, command.which, {"which": command.which}, visit.now)
    return visit.told(AskAboutHabit(which=command.which))


async def tell_habit(visit: Visit, refs: Mapping[str, Any], text: str) -> Outcome:
    """The answer to that."""
    wish = READERS[refs["which"]](text)
    if wish is None:
        return visit.told(AskAboutHabit(which=refs["which"], again=True))
    return await fulfil(visit, wish)


async def fulfil(visit: Visit, wish: Wish) -> Outcome:
    """Do as wished; where a place may be several, ask which."""
    match wish:
        case Lead(minutes=minutes):
            return await set_lead(visit, SetLead(minutes=minutes))
        case QuietHours(start=start, end=end):
            return await set_quiet(visit, SetQuiet(start=minute_of(start), end=minute_of(end)))
        case DigestHour(at=at):
            return await set_digest(visit, SetDigest(minute=at.hour * 60 + at.minute))
        case DigestWanted(yes=yes):
            return await want_digest(visit, WantDigest(yes=yes))
        case OwnZone(zones=(zone,)):
            return await set_own_zone(visit, SetOwnZone(zone=zone))
        case OwnZone(zones=zones):
            return visit.told(AskAboutHabit(which="own_zone", zones=zones))


def _as_lead(text: str) -> Wish | None:
    minutes = read_lead(text)
    return None if minutes is None else Lead(minutes=minutes)


def _as_zone(text: str) -> Wish | None:
    zones = read_zone(text)
    return OwnZone(zones=zones[:4]) if zones else None


READERS = {"lead": _as_lead, "quiet": read_quiet, "own_zone": _as_zone, "digest": read_digest}
