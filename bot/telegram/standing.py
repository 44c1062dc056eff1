"""Who somebody is in a group: asked of the platform between two tries of a decision, and known for a while."""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field

from telegram import Bot
from telegram.constants import ChatMemberStatus
from telegram.error import BadRequest, ChatMigrated, Forbidden, TelegramError

from bot.delivery.clock import Clock
from bot.telegram.api import call
from core.desk.post_office import Role, Store, Unit
from core.desk.visit import Sighting, Standing

_ADMINS = {ChatMemberStatus.OWNER, ChatMemberStatus.ADMINISTRATOR}
ROLE_OF: Mapping[Standing, Role | None] = {
    Standing.ADMIN: Role.COACH,
    Standing.MEMBER: Role.ATHLETE,
    Standing.OUTSIDE: None,
}
# So many people are remembered; the rest is asked for again.
_MOST = 4096

Place = tuple[int, int]
"""A group, as we number it, and a user, as the platform does."""


@dataclass(frozen=True, slots=True)
class Standings:
    """What the platform said of people lately; `forget` what it says has changed."""

    store: Store
    clock: Clock
    bot: Bot
    known: dict[Place, Sighting] = field(default_factory=dict)

    async def look_up(self, asked: Iterable[Place], *, needed: bool) -> dict[Place, Sighting]:
        """Ask the platform. Where it can't be asked and the answer isn't needed, what is stored counts for this once.

        Raises the library's TelegramError.
        """
        return {place: await self._look(place, needed=needed) for place in asked}

    def forget(self, group: int | None = None) -> None:
        """Of one group, or of all."""
        for place in [one for one in self.known if group in {None, one[0]}]:
            del self.known[place]

    async def _look(self, place: Place, *, needed: bool) -> Sighting:
        try:
            standing = await self._ask(place)
        except TelegramError:
            if needed:
                raise
            return Sighting(await self._stored(place), self.clock.now(), told=False, stored=True)
        if standing is None:
            return Sighting(Standing.OUTSIDE, self.clock.now(), told=False)
        while len(self.known) >= _MOST:
            del self.known[next(iter(self.known))]
        found = self.known[place] = Sighting(standing, self.clock.now())
        return found

    async def _ask(self, place: Place) -> Standing | None:
        """None where there is no such group, the user is not found in it, or the bot is no longer in."""
        async with self.store.reading() as uow:
            group = await uow.groups.get(place[0])
            chat = await uow.chats.get(group.chat_id) if group else None
        if chat is None:
            return None
        asked = {"chat_id": chat.address, "user_id": place[1]}
        try:
            return standing_of(await call(self.bot, "get_chat_member", asked))
        except ChatMigrated as moved:
            async with self.store.unit() as uow:
                await uow.chats.move(chat.address, moved.new_chat_id)
            return await self._ask(place)
        except (BadRequest, Forbidden):
            return None

    async def _stored(self, place: Place) -> Standing:
        async with self.store.reading() as uow:
            person = await uow.people.by_user(place[1])
            member = await uow.groups.membership(person.id, place[0]) if person else None
        if member is None:
            return Standing.OUTSIDE
        return Standing.ADMIN if member.role is Role.COACH else Standing.MEMBER


async def follow(uow: Unit, found: Iterable[tuple[Place, Sighting]]) -> None:
    """Store what was found of people whom we know: who is coach, athlete, or gone."""
    for (group, user_id), sighting in found:
        person = await uow.people.by_user(user_id) if sighting.told else None
        if person is not None:
            await uow.groups.follow(person.id, group, ROLE_OF[sighting.standing], sighting.at)


def standing_of(member: Mapping[str, object]) -> Standing:
    """From the platform's ChatMember."""
    if member["status"] in _ADMINS:
        return Standing.ADMIN
    inside = member["status"] == ChatMemberStatus.MEMBER or member.get("is_member") is True
    return Standing.MEMBER if inside else Standing.OUTSIDE
