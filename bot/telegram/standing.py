"""Ask the platform who somebody is in a group, between two tries of a decision that depends on it."""

from collections.abc import Mapping

from telegram import Bot
from telegram.constants import ChatMemberStatus
from telegram.error import BadRequest, Forbidden

from bot.telegram.api import call
from core.desk.post_office import Store
from core.desk.visit import Standing

_ADMINS = {ChatMemberStatus.OWNER, ChatMemberStatus.ADMINISTRATOR}


async def standing_in(store: Store, bot: Bot, group_id: int, user_id: int) -> Standing:
    """Outside where there is no such group, the person is not found in it, or the bot is no longer in."""
    async with store.reading() as uow:
        group = await uow.groups.get(group_id)
        chat = await uow.chats.get(group.chat_id) if group else None
    if chat is None:
        return Standing.OUTSIDE
    try:
        return standing_of(await call(bot, "get_chat_member", {"chat_id": chat.address, "user_id": user_id}))
    except (BadRequest, Forbidden):
        return Standing.OUTSIDE


def standing_of(member: Mapping[str, object]) -> Standing:
    """From the platform's ChatMember."""
    if member["status"] in _ADMINS:
        return Standing.ADMIN
    inside = member["status"] == ChatMemberStatus.MEMBER or member.get("is_member") is True
    return Standing.MEMBER if inside else Standing.OUTSIDE
