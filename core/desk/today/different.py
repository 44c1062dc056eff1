"""Today is different: sick, sore, short of time, another place. It lasts to a day and never touches ability."""

import re
from collections.abc import Mapping
from datetime import date, timedelta
from typing import Final

from core.athletes.equipment import at
from core.athletes.today import as_of, differing, place_on, said
from core.athletes.values import Different, Profile, SetName
from core.desk.access import admitted
from core.desk.days import today_in
from core.desk.errors import StalePress, UnknownThing
from core.desk.outcome import Outcome
from core.desk.profile.furnishing import ask_set
from core.desk.today.says import (
    AskDifferent,
    AskMinutes,
    AskPlace,
    AskSick,
    AskSore,
    AsUsualAgain,
    DayNoted,
)
from core.desk.versions.commands import AsUsual, BeElsewhere, BeShort, BeSick, BeSore, DayLasts, TodayDiffers
from core.desk.versions.looking import current, show_again
from core.desk.versions.showing import today_of
from core.desk.visit import Visit
from core.notation.calendar.lasting import Lasting
from core.scaling.barriers import SORE
from core.store.records import SessionRecord
from core.understanding.lexicon import joined, lexicon

PLACES: Final[tuple[SetName, ...]] = ("home", "gym", "trip")
# How many days from today something may last, at a tap.
MAY_LAST: Final = (1, 2, 6)
# No difference is kept for longer than this.
LONGEST: Final = timedelta(days=60)
SORE_PLACES: Final = (*SORE, "all over")
# Where muscles that people name lie, among the places that are offered.
_LIES_IN: Final[Mapping[str, str]] = {
    "quads": "legs", "hamstrings": "legs", "feet": "calves", "biceps": "arms", "triceps": "arms", "abs": "belly",
    "lats": "back",
}  # fmt: skip
_OWN: Final = re.compile(r"^(?:my|the|both)\s+", re.IGNORECASE)


def sore_place(words: str | None) -> str | None:
    """`hammies` are legs, `my back` is the back; None for what isn't known as a muscle."""
    words = _OWN.sub("", words or "")
    muscles = [one.value for one in lexicon().senses.get(joined(words), ()) if one.kind == "muscle"]
    named = muscles[0] if muscles else words
    place = _LIES_IN.get(named, named)
    return place if place in SORE_PLACES else None


@admitted
async def today_differs(visit: Visit, command: TodayDiffers) -> Outcome:
    record, version = await current(visit, command.version)
    profile = await visit.profile()
    different = as_of(profile, await today_of(visit, record)) is not profile
    asked = AskDifferent(version_id=version.id, session_id=record.id, different=different)
    return visit.told(asked, session=record.id, version=version.id)


@admitted
async def be_sick(visit: Visit, command: BeSick) -> Outcome:
    record, version = await current(visit, command.version)
    if command.how is None:
        return Outcome(becomes=AskSick(version_id=version.id))
    return await differ(visit, record, Different(until=await today_of(visit, record), sick=command.how))


@admitted
async def be_sore(visit: Visit, command: BeSore) -> Outcome:
    record, version = await current(visit, command.version)
    if command.where is None:
        return Outcome(becomes=AskSore(version_id=version.id))
    if command.where not in SORE_PLACES:
        raise UnknownThing
    return await differ(visit, record, Different(until=await today_of(visit, record), sore=command.where))


@admitted
async def be_short(visit: Visit, command: BeShort) -> Outcome:
    record, version = await current(visit, command.version)
    if command.minutes is None:
        return Outcome(becomes=AskMinutes(version_id=version.id))
    return await differ(
        visit, record, Different(until=await today_of(visit, record), minutes=command.minutes)
    )


async def be_short_then(visit: Visit, minutes: int, lasting: Lasting) -> Outcome:
    """`Tomorrow I have 15 minutes` leaves today as it is."""
    await visit.must_consent()
    today = today_in(await visit.group((await visit.memberships())[0].group_id), visit.now)
    until = min(lasting.until or today, today + LONGEST)
    news = Different(since=lasting.since, until=until, minutes=minutes)
    await visit.uow.profiles.save(visit.person.id, said(await visit.profile(), news, today), visit.now)
    return visit.told(DayNoted(session_id=None, different=news, today=today))


@admitted
async def be_elsewhere(visit: Visit, command: BeElsewhere) -> Outcome:
    """A place whose equipment is not known yet is asked for in words."""
    record, version = await current(visit, command.version)
    profile, today = await visit.profile(), await today_of(visit, record)
    if command.place is None:
        known = tuple(place for place in PLACES if at(profile, place) is not None)
        here = place_on(profile, today)
        return Outcome(becomes=AskPlace(version_id=version.id, known=known, here=here))
    if at(profile, command.place) is None:
        return await ask_set(visit, command.place, record.id) + Outcome(settles=True)
    return await differ(visit, record, Different(until=today, place=command.place))


async def keep_for_today(
    visit: Visit, record: SessionRecord, *, minutes: int | None = None, sore: str | None = None
) -> Outcome:
    """Before there is a version of the session: the first will go by it."""
    await visit.must_consent()
    today = await today_of(visit, record)
    news = Different(until=today, minutes=minutes, sore=sore)
    await visit.uow.profiles.save(visit.person.id, said(await visit.profile(), news, today), visit.now)
    return visit.told(DayNoted(session_id=None, different=news, today=today))


async def differ(visit: Visit, record: SessionRecord, news: Different) -> Outcome:
    """Keep it for today, offer to let it last, and show the version that comes of it."""
    today = await today_of(visit, record)
    await visit.uow.profiles.save(visit.person.id, said(await visit.profile(), news, today), visit.now)
    choices = tuple(today + timedelta(days=days) for days in MAY_LAST) if news.until <= today else ()
    noted = DayNoted(session_id=record.id, different=news, today=today, choices=choices)
    return visit.told(noted) + await show_again(visit, record.id, "today")


@admitted
async def day_lasts(visit: Visit, command: DayLasts) -> Outcome:
    """What was said of today lasts until a later day."""
    record = await session_of(visit, command.session)
    profile, today = await visit.profile(), await today_of(visit, record)
    known = next((one for one in differing(profile, today) if kind_of(one) == command.kind), None)
    until = date.fromordinal(command.until)
    if known is None or not today <= until <= today + LONGEST:
        raise StalePress
    news = known.model_copy(update={"until": until})
    await visit.uow.profiles.save(visit.person.id, said(profile, news, today), visit.now)
    noted = DayNoted(session_id=record.id, different=news, today=today)
    return Outcome(becomes=noted)


def kind_of(different: Different) -> str:
    """Which difference a button speaks of."""
    if different.sick:
        return "sick"
    if different.minutes is not None:
        return "minutes"
    if different.ease is not None:
        return different.ease
    return different.sore or ("place" if different.place else "lacks")


@admitted
async def as_usual(visit: Visit, command: AsUsual) -> Outcome:
    """Well and at home again. After a fever it starts with ten easy minutes (common practice, no source)."""
    record = await session_of(visit, command.session)
    profile, today = await visit.profile(), await today_of(visit, record)
    if not profile.different:
        raise StalePress
    gently = as_of(profile, today).today.sick
    await visit.uow.profiles.save(visit.person.id, usual(profile, today, gently=gently), visit.now)
    return visit.told(AsUsualAgain(gently=gently)) + await show_again(visit, record.id, "today")


def usual(profile: Profile, today: date, *, gently: bool) -> Profile:
    """Nothing is different any more; the first weeks of somebody new go on."""
    kept = tuple(one for one in profile.different if one.ease == "new")
    recovering = (Different(until=today, sick="recovering"),) if gently else ()
    return profile.model_copy(update={"different": (*kept, *recovering)})


async def session_of(visit: Visit, session_id: int) -> SessionRecord:
    """A posted session of one of the visitor's groups."""
    record = await visit.uow.sessions.find(session_id, await visit.group_ids())
    if record is None or record.posted_at is None:
        raise UnknownThing
    await visit.must_consent()
    return record
