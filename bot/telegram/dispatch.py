"""One update in, one transaction, letters out: who does what is one table beside."""

import logging
import re
from collections import ChainMap
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from typing import Final

from telegram import Bot

from bot.delivery.bells import Bells
from bot.delivery.clock import Clock
from bot.telegram.buttons import unpack
from bot.telegram.heard import Heard, Press, hear
from bot.telegram.letters import Cause, Writer, press_answered
from bot.telegram.patience import Patience
from bot.telegram.standing import Place, Standings, follow
from bot.telegram.typed import Tap, Typed, said_openly
from bot.telegram.use_cases import COMMANDS, USE_CASES
from core.desk import commands as c
from core.desk.commands import Command
from core.desk.errors import StandingUnknown
from core.desk.outcome import Outcome, Say
from core.desk.post_office import InboxItem, InboxState, Store, Unit
from core.desk.profile import commands as w
from core.desk.says import Lost, PutAside, Refused, Taken, TooQuick
from core.desk.talk.says import NothingWaits
from core.desk.visit import Sighting, Standing, Visit
from core.errors import Refusal

log = logging.getLogger(__name__)

# What a deep link into the private chat carries: a group to join, or a session to have my version of.
DOOR: Final = re.compile(r"(?P<kind>[gv])(?P<number>\d{1,15})")


@dataclass(frozen=True, slots=True)
class Dispatch:
    """Handles updates of the inbox; raises what is a bug, answers what is a refusal."""

    store: Store
    clock: Clock
    bot: Bot
    bells: Bells
    writer: Writer
    standings: Standings
    patience: Patience
    owner: int | None = None

    async def handle(self, item: InboxItem) -> None:
        heard = hear(dict(item.body), self.bot)
        if heard is None:
            async with self.store.unit() as uow:
                await uow.inbox.done(item.id)
            return
        if heard.standings is not None:
            await self._follow(item, heard.address, heard.standings)
            return
        if heard.is_said and not self.patience.takes(heard.user_id, heard.said_at or item.received_at):
            await self._leave_out(item, heard)
            return
        await self._decide(item, heard)
        self.bells.something_was_done()

    async def _follow(self, item: InboxItem, address: int, standings: Sequence[tuple[int, Standing]]) -> None:
        """The platform tells who is what in a group now. Nobody is made known by it who wasn't."""
        now = self.clock.now()
        async with self.store.unit() as uow:
            chat = await uow.chats.by_address(address)
            group = await uow.groups.by_chat(chat.id) if chat else None
            if group is not None:
                self.standings.forget(group.id)
                await follow(uow, [((group.id, user), Sighting(is_now, now)) for user, is_now in standings])
            await uow.inbox.done(item.id)

    async def _leave_out(self, item: InboxItem, heard: Heard) -> None:
        """One of too many: handled by nobody, and told of in private once in a while."""
        async with self.store.unit() as uow:
            if heard.private and self.patience.tells(heard.user_id, self.clock.now()):
                visit = await self._enter(uow, heard, {})
                await self._write(visit, item, heard, visit.told(TooQuick()))
            else:
                await uow.inbox.done(item.id)
        self.bells.something_was_done()

    async def _decide(self, item: InboxItem, heard: Heard) -> None:
        """Carry it out; where that needs a standing, nothing is kept, it is looked up, and decided again.

        What was looked up is stored whether or not the visitor may do what they wish.
        """
        found: dict[Place, Sighting] = {}
        while True:
            try:
                await self._carry_out(item, heard, found)
            except StandingUnknown as unknown:
                found |= await self.standings.look_up(unknown.asked, needed=unknown.needed)
            except Refusal as refusal:
                await self._refuse(item, heard, refusal, found)
                return
            else:
                return

    async def _carry_out(self, item: InboxItem, heard: Heard, found: Mapping[Place, Sighting]) -> None:
        async with self.store.unit() as uow:
            visit = await self._enter(uow, heard, found)
            stays = heard.present is None or await uow.chats.is_at(visit.chat, heard.address)
            outcome = await self._done(heard, visit) if stays else Outcome()
            await self._write(visit, item, heard, outcome)

    async def _done(self, heard: Heard, visit: Visit) -> Outcome:
        if heard.press is not None:
            outcome = await carry_out(visit, unpack(self.writer.seal.opened(heard.press, visit.chat)))
            return await settled(visit, outcome, heard.press.message_id)
        typed = Typed(self.writer.seal)
        taps = await typed.taps(visit, heard)
        outcome = Outcome()
        for tap in taps or [Tap(understand(heard))]:
            done = await carry_out(visit, tap.command)
            outcome += said_openly(visit, await settled(visit, done, tap.message_id))
        if not taps and not any(isinstance(one.what, NothingWaits) for one in outcome.says):
            return outcome
        open_ = await typed.still_open(visit, heard, taps, carry_out)
        return outcome + open_ if taps or not open_.says else open_

    async def _refuse(
        self, item: InboxItem, heard: Heard, refusal: Refusal, found: Mapping[Place, Sighting]
    ) -> None:
        said = Refused(why=type(refusal).__name__)
        async with self.store.unit() as uow:
            visit = await self._enter(uow, heard, found)
            told = Outcome(toast=said) if heard.press else visit.told(said)
            await self._write(visit, item, heard, told)

    async def parked(self, item: InboxItem) -> None:
        """Tell somebody that their message could not be handled, and whoever runs the bot that it lies there."""
        await self._tell_owner(item)
        heard = hear(dict(item.body), self.bot)
        if heard is None or not heard.private:
            return
        async with self.store.unit() as uow:
            visit = await self._enter(uow, heard, {})
            cause = Cause(f"parked:{item.update_id}", heard.language)
            await self.writer.write(uow, visit.now, cause, visit.told(Lost()))
        self.bells.something_was_done()

    async def _tell_owner(self, item: InboxItem) -> None:
        """Once an hour at most: whatever parks many updates is one thing to look into."""
        if self.owner is None:
            return
        now = self.clock.now()
        async with self.store.unit() as uow:
            chat = await uow.chats.by_address(self.owner)
            if chat is None:
                log.warning("BELLWETHER_OWNER can't be told: they haven't written to the bot yet")
                return
            count = (await uow.vitals.inbox_by_state())[InboxState.PARKED]
            told = Say(chat.id, PutAside(update=item.update_id, count=count), key=f"aside:{now:%Y%m%d%H}")
            await self.writer.write(uow, now, Cause(f"aside:{item.update_id}"), Outcome((told,)))
        self.bells.something_was_done()

    async def _enter(self, uow: Unit, heard: Heard, found: Mapping[Place, Sighting]) -> Visit:
        now = self.clock.now()
        person = await uow.people.meet(heard.user_id, heard.name, heard.language, now)
        await follow(uow, found.items())
        if heard.private:
            chat, here = await uow.chats.private_chat(person.id, heard.address), None
        else:
            chat = await uow.chats.group_chat(heard.address)
            here = await uow.groups.by_chat(chat.id)
        if here is not None and heard.present is not None:
            self.standings.forget(here.id)
        if not chat.reachable and heard.present is not False:
            await uow.chats.mark_reachable(chat.id, yes=True, now=now)
        return Visit(
            uow,
            now,
            person,
            chat.id,
            private=heard.private,
            here=here.id if here else None,
            sightings=ChainMap(dict(found), self.standings.known),
            asked={place for place, sighting in found.items() if not sighting.stored},
            said_in=chat.id,
            message_id=heard.message_id,
            replied_at=heard.reply_at,
        )

    async def _write(self, visit: Visit, item: InboxItem, heard: Heard, outcome: Outcome) -> None:
        private = visit.chat if heard.private else await private_chat(visit)
        press = await self._press(visit, heard)
        cause = Cause(f"update:{item.update_id}", heard.language, press, private)
        answered = await press_answered(visit.uow, cause, visit.now, visit.chat, outcome, self.writer)
        await visit.uow.outbox.add(answered, visit.now)
        told = await self.writer.write(visit.uow, visit.now, cause, outcome)
        if not told and heard.is_written_in_private:
            # Whoever writes gets an answer: silence looks like a bot that is gone.
            await self.writer.write(visit.uow, visit.now, cause, visit.told(Taken()))
        await visit.uow.inbox.done(item.id)

    async def _press(self, visit: Visit, heard: Heard) -> Press | None:
        """The press; what was pressed before the chat moved can't be edited any more."""
        if heard.press is None or heard.private or await visit.uow.chats.is_at(visit.chat, heard.address):
            return heard.press
        return replace(heard.press, message_id=None)


async def settled(visit: Visit, outcome: Outcome, message_id: int | None) -> Outcome:
    """What has its answer isn't open any more."""
    if outcome.settles and message_id is not None:
        await visit.uow.outbox.mark_answered(visit.chat, message_id)
    return outcome


async def carry_out(visit: Visit, command: Command) -> Outcome:
    return await USE_CASES[type(command)](visit, command)


async def private_chat(visit: Visit) -> int | None:
    """Where somebody who wrote in a group is answered beside it."""
    chat = await visit.uow.chats.private_of(visit.person.id)
    return chat.id if chat else None


def understand(heard: Heard) -> Command:
    """What the person wants who didn't press a button, as a command."""
    happened = what_happened(heard)
    if happened is not None:
        return happened
    if heard.changed is not None:
        return w.Retell(message_id=heard.changed, text=heard.text or "", in_group=not heard.private)
    if heard.private:
        return said_in_private(heard)
    return c.TalkInGroup(title=heard.title, command=heard.command, text=heard.text, reply_to=heard.reply_to)


def what_happened(heard: Heard) -> Command | None:
    """What a chat itself tells of; None where somebody said something."""
    if heard.present is not None:
        return in_or_out(heard)
    if heard.moved_to is not None:
        return c.MoveGroup(old=heard.address, new=heard.moved_to)
    if heard.moved_from is not None:
        return c.MoveGroup(old=heard.moved_from, new=heard.address)
    return None if heard.pinned is None else c.PinMessage(message_id=heard.pinned)


def said_in_private(heard: Heard) -> Command:
    if not heard.text or not heard.text.strip():
        return c.SendNoText(media=heard.media)
    if heard.command is not None:
        return typed_command(heard)
    return c.Tell(text=heard.text, reply_to=heard.reply_to)


def in_or_out(heard: Heard) -> Command:
    """The bot was added, removed, blocked or unblocked."""
    if heard.private:
        return c.Reach(yes=bool(heard.present))
    return c.OpenGroup(title=heard.title) if heard.present else c.LeaveGroup()


def typed_command(heard: Heard) -> Command:
    """`/start` with where it leads to, or one of COMMANDS; anything else asks for help."""
    door = DOOR.fullmatch(heard.argument)
    if heard.command == "start" and door:
        number = int(door["number"])
        return c.JoinGroup(group=number) if door["kind"] == "g" else c.MyVersion(session=number)
    if heard.command == "start":
        return c.ComeBack()
    make, _ = COMMANDS.get(heard.command or "", COMMANDS["help"])
    return make()
