"""Who asks, where and when, inside which unit of work: what every use case is given beside its command."""

from collections.abc import Collection, Mapping
from collections.abc import Set as AbstractSet
from dataclasses import dataclass, field, replace
from datetime import datetime, timedelta
from enum import StrEnum
from typing import Final, Self

from core.athletes.values import Profile
from core.desk.errors import NeedsConsent, StandingUnknown, UnknownThing
from core.desk.outcome import Outcome, Said, Say
from core.store.records import Group, Membership, Person, Purpose, Role
from core.store.unit import Unit

# How long the platform's word on somebody is taken for true; it is dropped at once when the platform tells of a
# change. A coach decides over others, so theirs is asked for again soon (estimates).
COACH_LASTS: Final = timedelta(minutes=1)
MEMBER_LASTS: Final = timedelta(hours=6)


class Standing(StrEnum):
    """What the platform says of a person in a group chat."""

    ADMIN = "admin"
    MEMBER = "member"
    OUTSIDE = "outside"


@dataclass(frozen=True, slots=True)
class Sighting:
    """A standing, and when it was looked up.

    `told` False: the platform couldn't tell, so nothing of it is stored. `stored`: it couldn't even be asked, and this
    is what the store knows; nothing that needs the platform's word goes by that.
    """

    standing: Standing
    at: datetime
    told: bool = True
    stored: bool = False


# By group and platform user: whoever comes for the first time has no row of ours yet.
Sightings = Mapping[tuple[int, int], Sighting]


@dataclass(frozen=True, slots=True)
class Visit:
    """One thing said or pressed by `person` in the chat `chat` (row id) at `now`.

    `private`: it is their own chat. `here`: the group whose chat it is; nothing of another group is seen from there.
    `sightings`: what the platform said, as far as it was asked, and `asked` for this very decision; one that needs more
    raises StandingUnknown, so that no network call happens inside a transaction and none without need. `seen`: nobody
    visits, somebody looks at what this person would see. `meant`: whom the visitor means by a name that several have.
    `said_in`, `message_id`: the chat and the platform's id of the message that was said. `replied_at`: the address at
    which the message stands that is replied to, for a chat that has moved since.
    """

    uow: Unit
    now: datetime
    person: Person
    chat: int
    private: bool = True
    here: int | None = None
    sightings: Sightings = field(default_factory=dict)
    asked: AbstractSet[tuple[int, int]] = frozenset()
    seen: bool = False
    meant: Mapping[str, int] = field(default_factory=dict)
    said_in: int | None = None
    message_id: int | None = None
    replied_at: int | None = None
    _belongs: dict[int, list[Membership]] = field(default_factory=dict, repr=False, compare=False)

    async def memberships(self) -> list[Membership]:
        """The groups that the visitor belongs to, oldest first; in a group's chat that group alone.

        Asked of the store once a visit, and of the platform now and then.
        """
        if self.person.id not in self._belongs:
            self._belongs[self.person.id] = await self.uow.groups.groups_of(self.person.id)
        stored = self._belongs[self.person.id]
        if self.here is not None:
            stored = [one for one in stored if one.group_id == self.here]
        if self.seen:
            return stored
        if not stored:
            await self._may_be_back()
        self._must_know(stored, MEMBER_LASTS, needed=False)
        places = {one.group_id: self.sightings[one.group_id, one.person.user_id] for one in stored}
        return [one for one in stored if places[one.group_id].standing is not Standing.OUTSIDE]

    async def _may_be_back(self) -> None:
        """That they joined again may still wait in the group's lane: whoever belongs nowhere any more is looked up."""
        left = {
            (one.group_id, one.person.user_id) for one in await self.uow.groups.groups_left(self.person.id)
        }
        if left - self.asked:
            raise StandingUnknown(frozenset(left), needed=False)

    def changed(self) -> None:
        """Something about their memberships was written."""
        self._belongs.clear()

    async def coached(self) -> list[Membership]:
        """Those of them that the visitor coaches, as the platform has just said."""
        if self.seen:
            return []
        own = [one for one in await self.memberships() if one.role is Role.COACH]
        self._must_know(own, COACH_LASTS, needed=True)
        return own

    async def group_ids(self) -> tuple[int, ...]:
        """The groups through which the visitor finds anything; in a group's chat, that group, whoever talks there."""
        if self.here is not None:
            return (self.here,)
        return tuple([one.group_id for one in await self.memberships()])

    async def membership(self, group: int) -> Membership | None:
        return next((one for one in await self.memberships() if one.group_id == group), None)

    async def group(self, group: int) -> Group:
        """A group of the visitor's, or a refusal."""
        if group not in await self.group_ids():
            raise UnknownThing
        found = await self.uow.groups.get(group)
        if found is None:
            raise UnknownThing
        return found

    async def title_of(self, group: int) -> str | None:
        """The title of the group that something is about, for whoever may take it for another's."""
        if not self.private or len(await self.memberships()) <= 1:
            return None
        return (await self.group(group)).title

    async def enter(self, group: int) -> bool:
        """Let somebody belong to a group whom the platform knows in it; False for people from outside."""
        if await self.membership(group) is not None:
            return True
        standing = self.standing(group)
        if standing is Standing.OUTSIDE:
            return False
        role = Role.COACH if standing is Standing.ADMIN else Role.ATHLETE
        await self.uow.groups.join(self.person.id, group, role, self.now)
        self.changed()
        return True

    def standing(self, group: int) -> Standing:
        """What the platform says of the visitor in a group, asked for this very decision."""
        self.must_ask({group})
        return self.sightings[group, self.person.user_id].standing

    def must_ask(self, groups: Collection[int]) -> None:
        """Nothing is decided before the platform was asked of the visitor in these groups."""
        places = {(group, self.person.user_id) for group in groups}
        if places - self.asked:
            raise StandingUnknown(frozenset(places), needed=True)

    def must_have_seen(self, members: list[Membership]) -> None:
        """What is told to these coaches is told to people whom the platform has just called so."""
        self._must_know(members, COACH_LASTS, needed=False)

    def _must_know(self, members: list[Membership], lasts: timedelta, *, needed: bool) -> None:
        """Whoever wasn't looked up lately is looked up, and stored anew, before anything is decided."""
        asked = {(one.group_id, one.person.user_id) for one in members}
        found = {one: self.sightings[one] for one in asked if one in self.sightings}
        known = {
            one
            for one, sighting in found.items()
            if is_fresh(sighting, self.now, lasts) and not (needed and sighting.stored)
        }
        if asked - known:
            raise StandingUnknown(frozenset(asked - known), needed=needed)

    def seen_as(self, person: Person, chat: int | None = None) -> Self:
        """What this person would see; nothing of it is their own doing."""
        return replace(
            self, person=person, chat=self.chat if chat is None else chat, private=True, here=None, seen=True
        )

    async def must_consent(self) -> None:
        """Equipment, limits and ability are stored only after consent."""
        if not await self.uow.consents.given(self.person.id):
            raise NeedsConsent

    async def profile(self) -> Profile:
        return await self.uow.profiles.get(self.person.id, name=self.person.name)

    def told(self, what: Said, purpose: Purpose = Purpose.ANSWER, **refs: int) -> Outcome:
        """An outcome that says one thing back to the visitor."""
        return Outcome((Say(self.chat, what, purpose, refs=refs),))


def is_fresh(sighting: Sighting, now: datetime, lasts: timedelta) -> bool:
    """A clock that was put back makes nothing last longer."""
    return timedelta(0) <= now - sighting.at <= lasts
