"""Ask the platform who somebody is in a group, just before a decision that depends on it."""

from collections.abc import Mapping
from dataclasses import dataclass

from telegram import Bot
from telegram.constants import ChatMemberStatus
from telegram.error import BadRequest, Forbidden

from bot.telegram.api import call
from bot.telegram.heard import Heard
from core.desk import class_commands as k
from core.desk import commands as c
from core.desk.commands import Command
from core.desk.post_office import Store, Unit
from core.desk.visit import Standing

_ADMINS = {ChatMemberStatus.OWNER, ChatMemberStatus.ADMINISTRATOR}


@dataclass(frozen=True, slots=True)
class Standings:
    """Gathers before the transaction: no network call happens inside one."""

    store: Store
    bot: Bot

    async def touched_by(self, heard: Heard, command: Command) -> Mapping[int, Standing]:
        """Standing of the person in the group that `command` needs it for; usually none."""
        async with self.store.reading() as uow:
            group_id = await group_of(uow, heard, command)
            group = await uow.groups.get(group_id) if group_id else None
            chat = await uow.chats.get(group.chat_id) if group else None
        if group is None or chat is None:
            return {}
        return {group.id: await self._ask(chat.address, heard.user_id)}

    async def _ask(self, address: int, user_id: int) -> Standing:
        try:
            member = await call(self.bot, "get_chat_member", {"chat_id": address, "user_id": user_id})
        except (BadRequest, Forbidden):
            return Standing.OUTSIDE  # not found there, or the bot is no longer in
        return standing_of(member)


def standing_of(member: Mapping[str, object]) -> Standing:
    """From the platform's ChatMember."""
    if member["status"] in _ADMINS:
        return Standing.ADMIN
    inside = member["status"] == ChatMemberStatus.MEMBER or member.get("is_member") is True
    return Standing.MEMBER if inside else Standing.OUTSIDE


async def group_of(uow: Unit, heard: Heard, command: Command) -> int | None:
    """Which group's standing the command depends on."""
    match command:
        case c.JoinGroup() | c.SetZone() | c.SetUnits() | c.MoveDraft() | k.PlaceClass():
            return command.group
        case c.PostSession() | c.PostLater():
            return await group_of_session(uow, command.session)
        case c.MyVersion(session=int(session)):
            return await group_to_enter(uow, heard, await group_of_session(uow, session))
        case c.Tell():
            return await group_asked_for(uow, heard)
    return await group_of_class(uow, heard, command)


async def group_of_session(uow: Unit, session_id: int) -> int | None:
    record = await uow.sessions.get(session_id)
    return record.group_id if record else None


async def group_of_class(uow: Unit, heard: Heard, command: Command) -> int | None:
    """The group of the class, for its coach; for somebody who signs up, if they aren't known there yet."""
    match command:
        case k.ComeTo():
            record = await uow.classes.get(command.class_id)
            return await group_to_enter(uow, heard, record.group_id if record else None)
        case (
            k.ConfirmClass()
            | k.ManageClass()
            | k.ChangeClass()
            | k.EndClass()
            | k.CancelDate()
            | k.MoveDate()
        ):
            record = await uow.classes.get(command.class_id)
            return record.group_id if record else None
    return None


async def group_to_enter(uow: Unit, heard: Heard, group_id: int | None) -> int | None:
    """The group, unless the person belongs to it already."""
    person = await uow.people.by_user(heard.user_id)
    if group_id is None or person is None:
        return group_id
    return None if await uow.groups.membership(person.id, group_id) else group_id


async def group_asked_for(uow: Unit, heard: Heard) -> int | None:
    """The group that a coach may be deciding about in words: one being set up, or the one of their draft."""
    chat = await uow.chats.by_address(heard.address)
    if chat is None or chat.person_id is None:
        return None
    question = await uow.questions.open_in(chat.id)
    if question is not None and question.kind in {"zone", "units"}:
        return int(question.refs["group"])
    draft = await uow.sessions.newest_unposted(chat.person_id)
    return draft.group_id if draft else None
