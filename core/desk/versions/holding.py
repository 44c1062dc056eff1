"""A coach keeps one athlete's versions for their OK, looks at one by name, or lets them go out again."""

from core.desk.access import admitted
from core.desk.coached import Roster, athlete_in, coached_athletes, coached_groups, coached_ids
from core.desk.coaching.commands import HoldAthlete, LookAtAthlete, SeeSession
from core.desk.coaching.noting import as_fault
from core.desk.coaching.ordering_says import NothingToLookAt
from core.desk.coaching.overseeing import give_ok, look_at_athlete, send_version
from core.desk.coaching.says import AthleteHeld, NobodyHeld
from core.desk.coaching.telling_for import offer_to_tell
from core.desk.days import RECENT
from core.desk.errors import UnknownThing
from core.desk.outcome import Outcome
from core.desk.sessions.posting import group_post
from core.desk.sessions.says import AsPosted
from core.desk.versions.version import session_meant
from core.desk.versions.waiting import seen_by
from core.desk.visit import Visit
from core.notation.coaching.wishes import read_body_of_another, read_hold_of_somebody, read_wish
from core.store.records import Membership, SessionRecord
from core.understanding.ordering import orders_in


async def as_wish(visit: Visit, text: str, _: int | None) -> Outcome | None:
    """What a coach wishes or has seen of one of their athletes; None where it is about nobody."""
    athletes = await coached_athletes(visit)
    wish = read_wish(text, athletes)
    if wish is None:
        if is_order(text, athletes):
            return None
        known = tuple(dict.fromkeys(one.person.name for one in athletes.everybody))
        return await as_fault(visit, text, athletes) or await hold_of_nobody(visit, text, known)
    athlete = athletes[wish.name]
    if wish.wish == "look":
        return await look_by_name(visit, athlete)
    held = wish.wish == "hold"
    return await hold_athlete(visit, HoldAthlete(group=athlete.group_id, person=athlete.person_id, yes=held))


def is_order(text: str, athletes: Roster) -> bool:
    """What shall be left out or swapped, for whatever reason, is no note about how they move."""
    plain = {"out", "other"}
    return "note" not in text.casefold() and any(
        one.step in plain and one.movement for one in orders_in(text, tuple(athletes))
    )


async def as_body_of_another(visit: Visit, text: str, _: int | None) -> Outcome | None:
    """What somebody's body must spare is theirs to tell: it is offered to be passed on."""
    athletes = await coached_athletes(visit)
    told_of = read_body_of_another(text, athletes) if athletes else None
    return None if told_of is None else await offer_to_tell(visit, athletes[told_of], text)


async def hold_of_nobody(visit: Visit, text: str, known: tuple[str, ...]) -> Outcome | None:
    """Nobody shall think that somebody is held who isn't."""
    name = read_hold_of_somebody(text)
    if name is None or not await coached_groups(visit):
        return None
    return visit.told(NobodyHeld(name=name, known=known))


async def look_by_name(visit: Visit, athlete: Membership) -> Outcome:
    """Their version of what the coach is about to post, else of what is posted."""
    draft = await visit.uow.sessions.newest_unposted(visit.person.id, await coached_ids(visit))
    if draft is None or draft.group_id != athlete.group_id:
        draft = await visit.uow.sessions.latest_posted(athlete.group_id)
    if draft is None:
        return visit.told(NothingToLookAt(athlete=athlete.person.name))
    try:
        return await look_at_athlete(visit, LookAtAthlete(session=draft.id, person=athlete.person_id))
    except UnknownThing:
        return visit.told(NothingToLookAt(athlete=athlete.person.name))


@admitted
async def hold_athlete(visit: Visit, command: HoldAthlete) -> Outcome:
    """Nothing that went out is taken back; once let go, what waited goes out."""
    athlete = await athlete_in(visit.uow, command.group, command.person)
    outcome = await (hold if command.yes else lift)(visit, athlete)
    held = AthleteHeld(
        group=command.group, person=command.person, athlete=athlete.person.name, held=command.yes
    )
    return visit.told(held) + outcome + Outcome(settles=True)


async def hold(visit: Visit, athlete: Membership) -> Outcome:
    """What they have seen of the last sessions they may go on changing."""
    for record in await recent(visit, athlete):
        if await seen_by(visit, record, athlete.person):
            await give_ok(visit, record, athlete.person_id)
    await visit.uow.groups.hold(athlete.person_id, athlete.group_id, yes=True)
    return Outcome()


async def lift(visit: Visit, athlete: Membership) -> Outcome:
    """What waits only for the coach's wish goes out."""
    unseen = [one for one in await recent(visit, athlete) if not await seen_by(visit, one, athlete.person)]
    await visit.uow.groups.hold(athlete.person_id, athlete.group_id, yes=False)
    went_out = Outcome()
    for record in unseen:
        if await seen_by(visit, record, athlete.person):
            went_out += await send_version(visit, record, athlete)
    return went_out


async def recent(visit: Visit, athlete: Membership) -> list[SessionRecord]:
    return await visit.uow.sessions.posted_since(athlete.group_id, visit.now - RECENT)


@admitted
async def see_session(visit: Visit, command: SeeSession) -> Outcome:
    """The post of the group, in private: nobody is left with nothing while their version waits."""
    record = await session_meant(visit, command.session)
    assert record is not None, "a session that is named is found or refused"
    group = await visit.group(record.group_id)
    post = await group_post(visit.uow, group, record, record.day)
    return visit.told(AsPosted(post=post), session=record.id)
