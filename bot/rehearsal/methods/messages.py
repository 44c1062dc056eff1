"""Sending, editing and deleting text messages, and reacting to messages."""

from dataclasses import replace
from datetime import timedelta
from typing import TYPE_CHECKING, Any

from telegram.constants import ChatAction, MessageLimit, ReactionEmoji

from bot.rehearsal.chats import Chat, Content, Message
from bot.rehearsal.errors import bad_request, not_modified
from bot.rehearsal.formatting import Formatted, commands_and_mentions, read_html, trimmed, utf16_length
from bot.rehearsal.keyboard import read_keyboard
from bot.rehearsal.methods.access import find_message, reach
from bot.rehearsal.methods.reading import Params, integer, structure, text

if TYPE_CHECKING:
    from bot.rehearsal.platform import BotAccount, Platform

DELETABLE_FOR = timedelta(hours=48)  # Bot API, deleteMessage


def send_message(platform: "Platform", bot: "BotAccount", params: Params) -> dict[str, Any]:
    chat = reach(platform, bot, params)
    content = _content(platform, params, "message is too long")
    replied = replied_to(chat, params)
    platform.rates.check(bot.user.id, chat.id)
    return platform.post(chat, bot.user, content, replied).json


def _content(platform: "Platform", params: Params, too_long: str) -> Content:
    if params.get("message_thread_id"):
        raise bad_request("message thread not found")
    found = formatted(platform, params, "text")
    if not found.text:
        raise bad_request("message text is empty")
    # Characters are counted as UTF-16 units: the strictest reading of the documented limit.
    if utf16_length(found.text) > MessageLimit.MAX_TEXT_LENGTH:
        raise bad_request(too_long)
    entities = (found.entities or commands_and_mentions(found.text))[: MessageLimit.MESSAGE_ENTITIES]
    return Content(found.text, entities, read_keyboard(params.get("reply_markup")))


def formatted(platform: "Platform", params: Params, name: str) -> Formatted:
    """Read the text or caption of a call. Raises Declined (400)."""
    source, mode = text(params, name), text(params, "parse_mode").lower()
    if mode == "html":
        return read_html(source)
    if mode:
        platform.complaints.append(f"parse mode not rehearsed: {mode}")
        raise bad_request("unsupported parse_mode")
    return trimmed(source, structure(params, "entities" if name == "text" else f"{name}_entities") or [])


def replied_to(chat: Chat, params: Params) -> Message | None:
    """Return the message that a call replies to, if it does. Raises Declined (400)."""
    reply = structure(params, "reply_parameters")
    if not reply:
        return None
    message = find_message(chat, integer(reply, "message_id"))
    if message is None and not reply.get("allow_sending_without_reply"):
        raise bad_request("message to be replied not found")
    return message


def edit_message_text(platform: "Platform", bot: "BotAccount", params: Params) -> dict[str, Any]:
    message = _editable(platform, bot, params)
    if message.content.media is not None:
        raise bad_request("there is no text in the message to edit")
    return _change(platform, message, _content(platform, params, "MESSAGE_TOO_LONG"))


def edit_message_reply_markup(platform: "Platform", bot: "BotAccount", params: Params) -> dict[str, Any]:
    message = _editable(platform, bot, params)
    return _change(
        platform, message, replace(message.content, keyboard=read_keyboard(params.get("reply_markup")))
    )


def _editable(platform: "Platform", bot: "BotAccount", params: Params) -> Message:
    chat = reach(platform, bot, params)
    message = find_message(chat, integer(params, "message_id"))
    if message is None:
        raise bad_request("message to edit not found")
    if message.sender is not bot.user:
        raise bad_request("message can't be edited")
    return message


def _change(platform: "Platform", message: Message, content: Content) -> dict[str, Any]:
    if content == message.content:
        raise not_modified()
    platform.rates.check(message.sender.id, message.chat.id)
    message.edited = platform.clock.now()
    if content.text != message.content.text:
        message.reworded = message.edited
    message.content = content
    platform.note("edit", message.sender, message)
    return message.json


def delete_message(platform: "Platform", bot: "BotAccount", params: Params) -> bool:
    chat = reach(platform, bot, params)
    message = find_message(chat, integer(params, "message_id"))
    if message is None:
        raise bad_request("message to delete not found")
    if platform.clock.now() - message.sent > DELETABLE_FOR:
        raise bad_request("message can't be deleted for everyone")
    if not _may_delete(bot, message):
        raise bad_request("message can't be deleted")
    message.deleted = True
    platform.note("delete", bot.user, message)
    return True


def pin_chat_message(platform: "Platform", bot: "BotAccount", params: Params) -> bool:
    chat = reach(platform, bot, params)
    message = find_message(chat, integer(params, "message_id"))
    if message is None:
        raise bad_request("message to pin not found")
    if chat.peer is None and not chat.member(bot.user).is_admin:
        raise bad_request("not enough rights to manage pinned messages in the chat")
    chat.pinned.append(message)
    platform.post(chat, bot.user, Content(extra={"pinned_message": message.bare_json}))
    return True


def _may_delete(bot: "BotAccount", message: Message) -> bool:
    is_own = message.sender is bot.user
    return is_own or message.chat.kind == "private" or message.chat.member(bot.user).is_admin


def set_message_reaction(platform: "Platform", bot: "BotAccount", params: Params) -> bool:
    chat = reach(platform, bot, params)
    message = find_message(chat, integer(params, "message_id"))
    if message is None:
        raise bad_request("message to react not found")
    reactions = structure(params, "reaction") or []
    if len(reactions) > 1:
        raise bad_request("REACTIONS_TOO_MANY")
    if any(reaction.get("emoji") not in set(ReactionEmoji) for reaction in reactions):
        raise bad_request("REACTION_INVALID")
    message.reactions = reactions
    platform.note("reaction", bot.user, message, "".join(reaction["emoji"] for reaction in reactions))
    return True


def send_chat_action(platform: "Platform", bot: "BotAccount", params: Params) -> bool:
    reach(platform, bot, params)
    if text(params, "action") not in set(ChatAction):
        raise bad_request("wrong parameter action in request")
    return True


METHODS = {
    "sendMessage": send_message,
    "editMessageText": edit_message_text,
    "editMessageReplyMarkup": edit_message_reply_markup,
    "deleteMessage": delete_message,
    "pinChatMessage": pin_chat_message,
    "setMessageReaction": set_message_reaction,
    "sendChatAction": send_chat_action,
}
