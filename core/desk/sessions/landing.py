"""How a session lands on a group: everybody's version, and who needs the coach."""

import logging
from collections.abc import Sequence
from dataclasses import dataclass

from core.athletes.values import Profile
from core.desk.coaching.absence import away_on
from core.desk.sessions.says import HowItLands, InNeed
from core.desk.versions.showing import orders_for, profile_today
from core.desk.versions.version import UNREADY
from core.desk.visit import Visit
from core.forecast.forecast import outlook_of
from core.forecast.group import group_outlook
from core.forecast.people import People
from core.forecast.today import version_today
from core.forecast.values import GroupOutlook
from core.movements.lookup import catalogue
from core.scaling.group import view_of
from core.scaling.needs import calling, first_of_each
from core.scaling.questions import next_question
from core.scaling.values import Ask, NeedsCoach, Version, Withheld
from core.sessions.values import Session
from core.store.records import Person, Role, SessionRecord

log = logging.getLogger(__name__)

# Without these nothing can be told of somebody; what else isn't known yet makes their version careful.
NEEDED_FIRST = frozenset({Ask.EQUIPMENT, Ask.LIMITS})


@dataclass(frozen=True, slots=True)
class Tried:
    """A session tried on one athlete, with everything that was decided for them."""

    person: Person
    profile: Profile
    version: Version | Withheld
    held: bool


async def how_it_lands(visit: Visit, record: SessionRecord) -> HowItLands:
    tried, waiting = await try_on_group(visit, record)
    return HowItLands(
        title=record.session.title,
        view=view_of([one.version for one in tried]),
        needs=tuple(await in_need(visit, record, tried)),
        waiting=waiting,
        expected=expected_of(record.session, tried, visit.now.year),
    )


async def try_on_group(visit: Visit, record: SessionRecord) -> tuple[list[Tried], tuple[str, ...]]:
    """Every athlete's version, and the names of those still on their way in; without who is away that day."""
    tried: list[Tried] = []
    waiting: list[str] = []
    away = await away_on(visit.uow, record.group_id, record.day)
    for member in await visit.uow.groups.members(record.group_id, role=Role.ATHLETE):
        if member.person_id in away:
            continue
        theirs = visit.seen_as(member.person)
        one = await try_on(theirs, record, held=member.held)
        if one is None:
            waiting.append(member.person.name)
        else:
            tried.append(one)
    return tried, tuple(waiting)


async def try_on(theirs: Visit, record: SessionRecord, *, held: bool) -> Tried | None:
    """The session tried on whose visit it is; None for somebody still on their way in.

    `unclear` where what is stored about them can't be worked out: it takes nothing from the others.
    """
    person = theirs.person
    try:
        return await _try_on(theirs, record, held=held)
    except UNREADY:
        log.exception("no version can be worked out for person %d", person.id)
        unclear = Withheld(athlete=person.name, because="unclear")
        return Tried(person, Profile(name=person.name), unclear, held)


async def _try_on(theirs: Visit, record: SessionRecord, *, held: bool) -> Tried | None:
    profile = await profile_today(theirs, record)
    if profile.screening is None:
        return None
    version = version_today(
        record.session, profile, catalogue(), await orders_for(theirs, record), year=theirs.now.year
    )
    question = next_question(profile, record.session, catalogue())
    if isinstance(version, Version) and question and question.ask in NEEDED_FIRST:
        return None
    return Tried(theirs.person, profile, version, held)


async def in_need(visit: Visit, record: SessionRecord, tried: Sequence[Tried]) -> list[InNeed]:
    """Whom a coach should look at, and hasn't yet, as something needs them or their versions are held.

    The gravest come first; of equally grave ones, those who have it to themselves.
    """
    done = await visit.uow.oks.given(record.id, record.revision)
    found = [
        one
        for one in tried
        if isinstance(one.version, Version) and (needs_of(one) or one.held) and one.person.id not in done
    ]
    firsts = zip(found, first_of_each([needs_of(one) for one in found]), strict=True)
    return [
        InNeed(person=one.person.id, name=one.person.name, first=first and first.need, held=one.held)
        for one, first in sorted(firsts, key=lambda pair: pair[1].place if pair[1] else ())
    ]


def needs_of(one: Tried) -> tuple[NeedsCoach, ...]:
    return calling(one.version.needs_coach) if isinstance(one.version, Version) else ()


def expected_of(session: Session, tried: Sequence[Tried], year: int) -> GroupOutlook | None:
    """Of everybody on whom the session was tried."""
    return group_outlook(
        session,
        {
            one.person.name: outlook_of(one.version, People(one.profile, catalogue(), year))
            if isinstance(one.version, Version)
            else ()
            for one in tried
        },
    )
