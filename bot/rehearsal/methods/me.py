"""The bot itself and how it hears of things."""

from typing import TYPE_CHECKING, Any

from bot.rehearsal.methods.reading import Params, flag, integer, structure

if TYPE_CHECKING:
    from bot.rehearsal.platform import BotAccount, Platform

_ALL_AT_ONCE = 100


def get_me(_platform: "Platform", bot: "BotAccount", _params: Params) -> dict[str, Any]:
    return {
        **bot.user.json,
        "can_join_groups": True,
        "can_read_all_group_messages": not bot.privacy,
        "supports_inline_queries": False,
        "can_connect_to_business": False,
        "has_main_web_app": False,
    }


async def get_updates(_platform: "Platform", bot: "BotAccount", params: Params) -> list[dict[str, Any]]:
    wanted = structure(params, "allowed_updates")
    if wanted is not None:
        bot.updates.want(wanted)
    offset, limit = integer(params, "offset", 0), integer(params, "limit", _ALL_AT_ONCE)
    return await bot.updates.poll(offset, limit, integer(params, "timeout", 0))


def delete_webhook(_platform: "Platform", bot: "BotAccount", params: Params) -> bool:
    if flag(params, "drop_pending_updates"):
        bot.updates.clear()
    return True


def get_webhook_info(_platform: "Platform", bot: "BotAccount", _params: Params) -> dict[str, Any]:
    return {"url": "", "has_custom_certificate": False, "pending_update_count": len(bot.updates)}


METHODS = {
    "getMe": get_me,
    "getUpdates": get_updates,
    "deleteWebhook": delete_webhook,
    "getWebhookInfo": get_webhook_info,
}
