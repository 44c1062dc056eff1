"""Versions that wait for a coach's OK: for somebody held by the coach, or whose limits ask for it (design case 8)."""

from dataclasses import replace
from typing import Literal

from core.desk.outcome import Outcome, Said, Say
from core.desk.says.versions import HeldForCoach, LookAtVersion
from core.desk.visit import Visit
from core.scaling.values import Version
from core.store.records import Person, Role, SessionRecord, VersionRecord

# `told`: something the athlete told asks for it; that is their own business. `held`: the coach wished it.
Why = Literal["told", "held"]


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
    if shown is None or await waits_for(replace(visit, person=athlete), record, shown.version):
        return None
    return shown


async def wait(visit: Visit, record: SessionRecord, shown: VersionRecord, why: Why) -> Outcome:
    """Tell the athlete that it waits; every coach gets it to look at, once per athlete and session."""
    group = await visit.group(record.group_id)
    what = LookAtVersion(
        session_id=record.id,
        revision=record.revision,
        person=visit.person.id,
        version=shown.version,
        why=why,
        units=group.units,
    )
    says = await to_coaches(visit, group.id, what, f"look:{record.id}:{visit.person.id}")
    return visit.told(HeldForCoach(session_id=record.id, why=why)) + Outcome(says)


async def to_coaches(visit: Visit, group_id: int, what: Said, key: str) -> tuple[Say, ...]:
    """The same to every coach who has a private chat, once for ever per `key`."""
    coaches = await visit.uow.groups.members(group_id, role=Role.COACH)
    chats = [await visit.uow.chats.private_of(coach.person_id) for coach in coaches]
    return tuple(Say(chat.id, what, key=f"{key}:{chat.id}") for chat in chats if chat is not None)
