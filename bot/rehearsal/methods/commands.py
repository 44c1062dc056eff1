"""The bot's list of commands, per scope and language."""

import json
import re
from typing import TYPE_CHECKING, Any

from telegram.constants import BotCommandLimit

from bot.rehearsal.errors import bad_request
from bot.rehearsal.methods.reading import Params, structure, text

if TYPE_CHECKING:
    from bot.rehearsal.platform import BotAccount, Platform

_COMMAND = re.compile(rf"[a-z0-9_]{{{BotCommandLimit.MIN_COMMAND},{BotCommandLimit.MAX_COMMAND}}}")


def _place(params: Params) -> str:
    scope = structure(params, "scope") or {"type": "default"}
    return json.dumps([scope, text(params, "language_code")], sort_keys=True)


def set_my_commands(_platform: "Platform", bot: "BotAccount", params: Params) -> bool:
    commands = structure(params, "commands") or []
    if len(commands) > BotCommandLimit.MAX_COMMAND_NUMBER:
        raise bad_request("BOT_COMMANDS_TOO_MUCH")
    for command in commands:
        _check(command)
    bot.commands[_place(params)] = commands
    return True


def _check(command: dict[str, Any]) -> None:
    if not _COMMAND.fullmatch(str(command.get("command", ""))):
        raise bad_request("BOT_COMMAND_INVALID")
    length = len(str(command.get("description", "")))
    if not BotCommandLimit.MIN_DESCRIPTION <= length <= BotCommandLimit.MAX_DESCRIPTION:
        raise bad_request("BOT_COMMAND_DESCRIPTION_INVALID")


def get_my_commands(_platform: "Platform", bot: "BotAccount", params: Params) -> list[dict[str, Any]]:
    return bot.commands.get(_place(params), [])


def delete_my_commands(_platform: "Platform", bot: "BotAccount", params: Params) -> bool:
    bot.commands.pop(_place(params), None)
    return True


METHODS = {
    "setMyCommands": set_my_commands,
    "getMyCommands": get_my_commands,
    "deleteMyCommands": delete_my_commands,
}
