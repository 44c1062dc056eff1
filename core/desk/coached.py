"""Whom the visitor coaches."""

from core.desk.errors import NotTheCoach, UnknownThing
from core.desk.visit import Visit
from core.store.records import Group, Membership, Role


async def coached_groups(visit: Visit) -> list[Group]:
    """The groups whose coach the visitor is, the oldest first."""
    memberships = await visit.memberships()
    return [await visit.group(one.group_id) for one in memberships if one.role is Role.COACH]


async def coached_athletes(visit: Visit) -> dict[str, Membership]:
    """Everybody in these groups, by name."""
    return {
        one.person.name: one
        for group in await coached_groups(visit)
        for one in await visit.uow.groups.members(group.id, role=Role.ATHLETE)
    }


async def must_be_coach_of(visit: Visit, group: int) -> None:
    """Refuses everybody but the group's coaches."""
    own = await visit.uow.groups.membership(visit.person.id, group)
    if own is None or own.role is not Role.COACH:
        raise NotTheCoach


async def coached_athlete(visit: Visit, group: int, person: int) -> Membership:
    """One athlete of a group that the visitor coaches, or a refusal."""
    await must_be_coach_of(visit, group)
    athlete = await visit.uow.groups.membership(person, group)
    if athlete is None:
        raise UnknownThing
    return athlete
