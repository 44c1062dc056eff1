"""Which bot hears of what: privacy mode, and the updates about members.

Privacy mode as the Bot API's "features" page tells it. A bot in a group always hears service messages;
beyond that, unless it is an admin or joined with privacy off, only commands for it, and replies to it or to
what was meant for it.
"""

from typing import TYPE_CHECKING

from bot.rehearsal.chats import Chat, Json, Member, Message, Status, User
from bot.rehearsal.formatting import part
from bot.rehearsal.methods.chats import member_json

if TYPE_CHECKING:
    from bot.rehearsal.platform import BotAccount, Platform


def tell_of_message(platform: "Platform", message: Message, kind: str = "message") -> None:
    """Queue a person's message or edit for every bot that may hear it."""
    message.meant_for = _addressee(message)
    for user in message.chat.present_bots:
        if user is not message.sender and hears(user, message):
            platform.bot_of(user).updates.add(kind, message.json)


def hears(bot: User, message: Message) -> bool:
    member = message.chat.member(bot)
    return (
        message.chat.kind == "private"
        or member.is_admin
        or member.hears_all
        or message.content.is_service
        or message.meant_for is bot
    )


def _addressee(message: Message) -> User | None:
    return _commanded(message) or _replied_to(message)


def _commanded(message: Message) -> User | None:
    """Return the bot that a command names, or for a general command the bot that spoke last."""
    text = message.content.text or ""
    for entity in message.content.entities:
        if entity["type"] == "bot_command" and entity["offset"] == 0:
            _, _, name = part(text, entity).partition("@")
            return _bot_named(message.chat, name) if name else _last_speaker(message.chat)
    return None


def _bot_named(chat: Chat, name: str) -> User | None:
    return next((bot for bot in chat.present_bots if (bot.username or "").lower() == name.lower()), None)


def _last_speaker(chat: Chat) -> User | None:
    bots = chat.present_bots
    if len(bots) == 1:
        return bots[0]
    return next(
        (message.sender for message in reversed(chat.messages.values()) if message.sender in bots), None
    )


def _replied_to(message: Message) -> User | None:
    reply = message.reply_to
    if reply is None:
        return None
    return reply.sender if reply.sender.is_bot else reply.meant_for


def change_status(platform: "Platform", chat: Chat, who: User, user: User, status: Status) -> None:
    """Give a user another place in a chat and tell bots: the one concerned, and admins that asked for it."""
    old = chat.member(user)
    new = Member(user, status, hears_all=_hears_all(platform, old))
    chat.members[user.id] = new
    change: Json = {
        "chat": chat.json,
        "from": who.json,
        "date": int(platform.clock.now().timestamp()),
        "old_chat_member": member_json(old),
        "new_chat_member": member_json(new),
    }
    if user.is_bot:
        platform.bot_of(user).updates.add("my_chat_member", change)
    for bot in _admin_bots(platform, chat):
        if bot.user is not user:
            bot.updates.add("chat_member", change)


def _hears_all(platform: "Platform", old: Member) -> bool:
    """Privacy mode is settled when a bot joins; promoting it later changes nothing about it."""
    if old.is_present or not old.user.is_bot:
        return old.hears_all
    return not platform.bot_of(old.user).privacy


def _admin_bots(platform: "Platform", chat: Chat) -> list["BotAccount"]:
    return [platform.bot_of(bot) for bot in chat.present_bots if chat.member(bot).is_admin]
