"""Whom the visitor coaches, and whom they mean by a name."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass

from core.desk.errors import UnknownThing
from core.desk.visit import Visit
from core.errors import BellwetherError
from core.store.records import Group, Membership, Role
from core.store.unit import Unit


class WhoIsMeant(BellwetherError):
    """Several have the name that was typed: the visitor is asked before anything is decided."""

    def __init__(self, name: str, members: Sequence[Membership]) -> None:
        super().__init__(name)
        self.name = name
        self.members = tuple(members)


@dataclass(frozen=True, slots=True)
class Roster(Mapping[str, Membership]):
    """Athletes by what they may be called. To look up a name that several have raises WhoIsMeant.

    `meant`: which membership the visitor said they mean by a name, folded.
    """

    named: Mapping[str, tuple[Membership, ...]]
    meant: Mapping[str, int]

    def __getitem__(self, name: str) -> Membership:
        members = self.named[name]
        chosen = self.meant.get(name.casefold())
        found = [one for one in members if one.id == chosen] or members
        if len(found) > 1:
            raise WhoIsMeant(name, members)
        return found[0]

    def __iter__(self) -> Iterator[str]:
        return iter(self.named)

    def __len__(self) -> int:
        return len(self.named)

    @property
    def everybody(self) -> list[Membership]:
        """Each membership once, oldest first."""
        every = {one.id: one for members in self.named.values() for one in members}
        return [every[number] for number in sorted(every)]


def roster_of(members: Sequence[Membership], meant: Mapping[str, int]) -> Roster:
    """By the names that the groups call them, by names of their own that several have, and by such first names."""
    named: dict[str, list[Membership]] = {}
    for one in members:
        for name in dict.fromkeys((one.person.name, one.own_name)):
            named.setdefault(name, []).append(one)
    firsts: dict[str, list[Membership]] = {}
    for one in members:
        firsts.setdefault(one.own_name.split()[0] if one.own_name.split() else "", []).append(one)
    whole = {name.casefold() for name in named}
    shared = {
        first: found
        for first, found in firsts.items()
        if len(found) > 1 and first and first.casefold() not in whole
    }
    return Roster({name: tuple(found) for name, found in (named | shared).items()}, meant)


async def coached_groups(visit: Visit) -> list[Group]:
    """The groups whose coach the visitor is, the oldest first."""
    return [await visit.group(one.group_id) for one in await visit.coached()]


async def coached_ids(visit: Visit) -> tuple[int, ...]:
    return tuple([one.group_id for one in await visit.coached()])


async def coached_athletes(visit: Visit) -> Roster:
    """Everybody in these groups, by name."""
    found = [
        one
        for group in await coached_ids(visit)
        for one in await visit.uow.groups.members(group, role=Role.ATHLETE)
    ]
    return roster_of(found, visit.meant)


async def athlete_in(uow: Unit, group: int, person: int) -> Membership:
    """Somebody who belongs to a group, as the group calls them; or a refusal."""
    found = [one for one in await uow.groups.members(group) if one.person_id == person]
    if not found:
        raise UnknownThing
    return found[0]


async def names_in(uow: Unit, group: int) -> dict[int, str]:
    """What the group calls its members, by person."""
    return {one.person_id: one.person.name for one in await uow.groups.members(group)}


async def called_in(visit: Visit, group: int) -> str:
    """What the group calls the visitor."""
    return (await names_in(visit.uow, group)).get(visit.person.id, visit.person.name)
