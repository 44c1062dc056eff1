"""What a bot may ask about chats and their members."""

from typing import TYPE_CHECKING, Any

from bot.rehearsal.chats import Member
from bot.rehearsal.errors import bad_request
from bot.rehearsal.methods.access import find_chat, reach
from bot.rehearsal.methods.reading import Params, integer

if TYPE_CHECKING:
    from bot.rehearsal.platform import BotAccount, Platform

_RIGHTS = (
    "can_manage_chat", "can_delete_messages", "can_manage_video_chats", "can_restrict_members",
    "can_promote_members", "can_change_info", "can_invite_users", "can_post_stories", "can_edit_stories",
    "can_delete_stories", "can_pin_messages",
)  # fmt: skip


def member_json(member: Member) -> dict[str, Any]:
    """Tell of a member as the Bot API does; admins have every right."""
    found: dict[str, Any] = {"user": member.user.json, "status": member.status}
    match member.status:
        case "creator":
            found["is_anonymous"] = False
        case "administrator":
            found |= {"can_be_edited": False, "is_anonymous": False} | dict.fromkeys(_RIGHTS, True)
        case "kicked":
            found["until_date"] = 0
    return found


def get_chat(platform: "Platform", bot: "BotAccount", params: Params) -> dict[str, Any]:
    chat = find_chat(platform, bot, params)
    if not chat.peer:
        reach(platform, bot, params)
    found: dict[str, Any] = {
        **chat.json,
        "accent_color_id": 0,
        "max_reaction_count": 11,
        "accepted_gift_types": dict.fromkeys(
            (
                "unlimited_gifts",
                "limited_gifts",
                "unique_gifts",
                "premium_subscription",
                "gifts_from_channels",
            ),
            False,
        ),
    }
    if not chat.peer:
        found["permissions"] = {"can_send_messages": True}
    return found


def get_chat_member(platform: "Platform", bot: "BotAccount", params: Params) -> dict[str, Any]:
    chat = reach(platform, bot, params)
    user = platform.users.get(integer(params, "user_id"))
    if user is None:
        raise bad_request("user not found")
    return member_json(chat.member(user))


def get_chat_administrators(platform: "Platform", bot: "BotAccount", params: Params) -> list[dict[str, Any]]:
    chat = reach(platform, bot, params)
    if chat.peer:
        raise bad_request("there are no administrators in the private chat")
    admins = [member for member in chat.present if member.is_admin]
    return [member_json(member) for member in admins if not member.user.is_bot or member.user is bot.user]


def get_chat_member_count(platform: "Platform", bot: "BotAccount", params: Params) -> int:
    return sum(1 for _ in reach(platform, bot, params).present)


METHODS = {
    "getChat": get_chat,
    "getChatMember": get_chat_member,
    "getChatAdministrators": get_chat_administrators,
    "getChatMemberCount": get_chat_member_count,
}
