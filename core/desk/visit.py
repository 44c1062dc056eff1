"""Who asks, where and when, inside which unit of work: what every use case is given beside its command."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import datetime
from enum import StrEnum

from core.athletes.values import Profile
from core.desk.errors import NeedsConsent, NotAMember, NotTheCoach, StandingUnknown, UnknownThing
from core.desk.outcome import Outcome, Said, Say
from core.store.records import Group, Membership, Person, Purpose, Role
from core.store.unit import Unit


class Standing(StrEnum):
    """What the platform says of a person in a group chat, looked up just before the decision."""

    ADMIN = "admin"
    MEMBER = "member"
    OUTSIDE = "outside"


@dataclass(frozen=True, slots=True)
class Visit:
    """One thing said or pressed by `person` in the chat `chat` (row id) at `now`.

    `standings` holds their standing by group id, as far as it was looked up; a decision that needs another raises
    StandingUnknown, so that no network call happens inside a transaction and none without need. `replied_at`: the
    address at which the message stands that is replied to, for a chat that has moved since.
    """

    uow: Unit
    now: datetime
    person: Person
    chat: int
    standings: Mapping[int, Standing] = field(default_factory=dict)
    replied_at: int | None = None
    _belongs: dict[int, list[Membership]] = field(default_factory=dict, repr=False, compare=False)

    def must_belong(self, group: int) -> Standing:
        """Standing in the group; refuses people from outside."""
        if group not in self.standings:
            raise StandingUnknown(group)
        standing = self.standings[group]
        if standing is Standing.OUTSIDE:
            raise NotAMember
        return standing

    def must_coach(self, group: int) -> None:
        """Refuses everyone but the group's admins."""
        if self.must_belong(group) is not Standing.ADMIN:
            raise NotTheCoach

    async def memberships(self) -> list[Membership]:
        """The groups that the visitor belongs to, oldest first; asked of the store once a visit."""
        if self.person.id not in self._belongs:
            self._belongs[self.person.id] = await self.uow.groups.groups_of(self.person.id)
        return self._belongs[self.person.id]

    async def join(self, group: int, role: Role) -> None:
        """Let the visitor belong to a group."""
        await self.uow.groups.join(self.person.id, group, role, self.now)
        self._belongs.clear()

    async def must_consent(self) -> None:
        """Equipment, limits and ability are stored only after consent."""
        if not await self.uow.consents.given(self.person.id):
            raise NeedsConsent

    async def profile(self) -> Profile:
        return await self.uow.profiles.get(self.person.id, name=self.person.name)

    async def group(self, group: int) -> Group:
        """The group, or a refusal."""
        found = await self.uow.groups.get(group)
        if found is None:
            raise UnknownThing
        return found

    def told(self, what: Said, purpose: Purpose = Purpose.ANSWER, **refs: int) -> Outcome:
        """An outcome that says one thing back to the visitor."""
        return Outcome((Say(self.chat, what, purpose, refs=refs),))
