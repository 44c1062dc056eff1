"""The methods of the Bot API that the stand-in knows, by lower-case name.

Each is `(platform, bot, params) -> result`. To add one, write it into the file of its subject and name it in
that file's `METHODS`.
"""

from collections.abc import Callable, Mapping
from typing import TYPE_CHECKING, Any, NamedTuple

from bot.rehearsal.methods import chats, commands, me, media, messages, presses

if TYPE_CHECKING:
    from bot.rehearsal.platform import BotAccount, Platform

Do = Callable[["Platform", "BotAccount", dict[str, Any]], Any]


class Method(NamedTuple):
    name: str
    do: Do


def _table(*subjects: Mapping[str, Do]) -> dict[str, Method]:
    return {name.lower(): Method(name, do) for subject in subjects for name, do in subject.items()}


METHODS = _table(
    me.METHODS, messages.METHODS, media.METHODS, presses.METHODS, chats.METHODS, commands.METHODS
)
