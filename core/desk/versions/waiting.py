"""Versions that wait for a coach's OK: for somebody held by the coach, or whose limits ask for it."""

from collections.abc import Mapping
from datetime import datetime, timedelta
from typing import Any, Literal

from core.calendar.reminders import outside_quiet
from core.desk.classes.reminding import habits_of
from core.desk.coached import called_in, names_in
from core.desk.outcome import DueWish, Outcome, Said, Say
from core.desk.versions.says import HeldForCoach, LookAtVersion
from core.desk.visit import Visit
from core.scaling.values import Version
from core.store.records import (
    Group,
    Membership,
    Person,
    Purpose,
    Role,
    SessionRecord,
    SessionState,
    VersionRecord,
)
from core.store.unit import Unit

# `told`: something the athlete told asks for it; that is their own business. `held`: the coach wished it.
Why = Literal["told", "held"]

STILL_WAITS = "still waits"
# A coach may be on the road; after that they have forgotten it, and somebody wants to train.
PATIENCE = timedelta(hours=2)
# Who hasn't had it by then has done something else.
_MEANT_FOR = timedelta(hours=12)


def why_waiting(version: Version, *, held: bool) -> Why | None:
    """Why a coach must look at the whole version first; None where it may go out."""
    if any(need.written is None for need in version.needs_coach):
        return "told"
    return "held" if held else None


async def waits_for(visit: Visit, record: SessionRecord, version: Version) -> Why | None:
    """Why the visitor's version still waits for an OK; None where it needs none, or has it."""
    why = why_waiting(version, held=await is_held(visit, record.group_id))
    return None if why is None or await has_ok(visit, record) else why


async def is_held(visit: Visit, group_id: int) -> bool:
    membership = await visit.uow.groups.membership(visit.person.id, group_id)
    return membership is not None and membership.held


async def has_ok(visit: Visit, record: SessionRecord) -> bool:
    """Whether a coach said OK to the visitor's version of the session as it stands."""
    return visit.person.id in await visit.uow.oks.given(record.id, record.revision)


async def seen_by(visit: Visit, record: SessionRecord, athlete: Person) -> VersionRecord | None:
    """The version that went out to an athlete last; one that waits has not been seen."""
    shown = await visit.uow.versions.current(record.id, athlete.id)
    if shown is None or await waits_for(visit.seen_as(athlete), record, shown.version):
        return None
    return shown


async def wait(visit: Visit, record: SessionRecord, shown: VersionRecord, why: Why) -> Outcome:
    """Tell the athlete that it waits; every coach gets it to look at, and once more if they forget it."""
    group = await visit.group(record.group_id)
    look = look_at(record, shown, why, group, await called_in(visit, group.id))
    says = await to_coaches(visit, group.id, look, f"look:{record.id}:{visit.person.id}")
    due = [await _ask_again(visit, record, coach, group) for coach in await coaches_of(visit, group.id)]
    return visit.told(HeldForCoach(session_id=record.id, why=why)) + Outcome(says, tuple(due))


def look_at(
    record: SessionRecord, shown: VersionRecord, why: Why, group: Group, name: str, *, again: bool = False
) -> LookAtVersion:
    """What a coach gets to look at."""
    return LookAtVersion(
        session_id=record.id,
        revision=record.revision,
        person=shown.person_id,
        version=shown.version.model_copy(update={"athlete": name}),
        why=why,
        units=group.units,
        again=again,
    )


async def _ask_again(visit: Visit, record: SessionRecord, coach: Membership, group: Group) -> DueWish:
    """Once, when their patience is over, outside the coach's quiet hours."""
    habits = await habits_of(visit.uow, coach.person_id, group.id, group.zone or "UTC")
    return DueWish(
        key=f"{STILL_WAITS}:{record.id}:{visit.person.id}:{coach.person_id}",
        kind=STILL_WAITS,
        at=outside_quiet(visit.now + PATIENCE, habits),
        refs={"session": record.id, "person": visit.person.id, "coach": coach.person_id},
    )


async def still_waits_due(uow: Unit, _: datetime, refs: Mapping[str, Any]) -> Outcome:
    """Ask the coach again; silent where it has gone out, or nobody holds it any more."""
    record = await uow.sessions.get(refs["session"])
    chat = await uow.chats.private_of(refs["coach"])
    if record is None or record.state is SessionState.WITHDRAWN or chat is None:
        return Outcome()
    if refs["person"] in await uow.oks.given(record.id, record.revision):
        return Outcome()
    shown = await uow.versions.current(record.id, refs["person"])
    group = await uow.groups.get(record.group_id)
    member = await uow.groups.membership(refs["person"], record.group_id)
    coach = await uow.groups.membership(refs["coach"], record.group_id)
    if shown is None or group is None or member is None or coach is None or coach.role is not Role.COACH:
        return Outcome()
    why = why_waiting(shown.version, held=member.held)
    if why is None:
        return Outcome()
    names = await names_in(uow, group.id)
    look = look_at(record, shown, why, group, names[member.person_id], again=True)
    return Outcome((Say(chat.id, look, Purpose.REMINDER, expires_after=_MEANT_FOR),))


async def to_coaches(visit: Visit, group_id: int, what: Said, key: str) -> tuple[Say, ...]:
    """The same to every coach who has a private chat, once for ever per `key`."""
    chats = [await visit.uow.chats.private_of(one.person_id) for one in await coaches_of(visit, group_id)]
    return tuple(Say(chat.id, what, key=f"{key}:{chat.id}") for chat in chats if chat is not None)


async def coaches_of(visit: Visit, group_id: int) -> list[Membership]:
    """Whom the platform calls so now."""
    coaches = await visit.uow.groups.members(group_id, role=Role.COACH)
    visit.must_have_seen(coaches)
    return coaches


async def waits_for_coach(uow: Unit, refs: Mapping[str, Any]) -> tuple[int, int] | None:
    """The group whose coach is asked again, and which user that is."""
    record, coach = await uow.sessions.get(refs["session"]), await uow.people.get(refs["coach"])
    return (record.group_id, coach.user_id) if record and coach else None
