"""Whom a bot may reach: finding chats and messages, and the errors of those it may not."""

from typing import TYPE_CHECKING

from bot.rehearsal.chats import Chat, Message, User
from bot.rehearsal.errors import Declined, bad_request, forbidden, migrated
from bot.rehearsal.methods.reading import Params, integer

if TYPE_CHECKING:
    from bot.rehearsal.platform import BotAccount, Platform


def find_chat(platform: "Platform", bot: "BotAccount", params: Params) -> Chat:
    """Return the chat that `chat_id` names, if the bot ever met it. Raises Declined (400)."""
    if not params.get("chat_id"):
        raise bad_request("chat_id is empty")
    chat_id = _number(params)
    chat = _private(platform, bot, chat_id) if chat_id > 0 else platform.groups.get(chat_id)
    if chat is None or bot.user.id not in chat.members:
        raise bad_request("chat not found")
    if chat.moved_to is not None:
        raise migrated(chat.moved_to.id)
    return chat


def _number(params: Params) -> int:
    try:
        return integer(params, "chat_id")
    except Declined:
        raise bad_request("chat not found") from None  # as for an unknown @username


def _private(platform: "Platform", bot: "BotAccount", user_id: int) -> Chat | None:
    user = platform.users.get(user_id)
    if user is None:
        return None
    chat = platform.private_chat(bot, user)
    return chat if chat.messages or _has_met(platform, bot, user) else None


def _has_met(platform: "Platform", bot: "BotAccount", user: User) -> bool:
    return any(
        bot.user.id in group.members and user.id in group.members for group in platform.groups.values()
    )


def reach(platform: "Platform", bot: "BotAccount", params: Params) -> Chat:
    """Return the chat if the bot may write to it now. Raises Declined (400, 403)."""
    chat = find_chat(platform, bot, params)
    reason = _shut_out_of_private(bot, chat) if chat.peer else _shut_out_of_group(bot, chat)
    if reason:
        raise forbidden(reason)
    return chat


def _shut_out_of_private(bot: "BotAccount", chat: Chat) -> str | None:
    assert chat.peer is not None
    if chat.peer.is_bot:
        return "bot can't send messages to bots"
    if chat.peer.deleted:
        return "user is deactivated"
    match chat.member(bot.user).status:
        case "kicked":
            return "bot was blocked by the user"
        case "left":
            return "bot can't initiate conversation with a user"
    return None


def _shut_out_of_group(bot: "BotAccount", chat: Chat) -> str | None:
    name = "group" if chat.kind == "group" else "supergroup"
    match chat.member(bot.user).status:
        case "kicked":
            return f"bot was kicked from the {name} chat"
        case "left":
            return f"bot is not a member of the {name} chat"
    return None


def find_message(chat: Chat, message_id: int) -> Message | None:
    message = chat.messages.get(message_id)
    return None if message is None or message.deleted else message
