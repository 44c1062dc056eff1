"""The first words with the platform, said until it answers."""

import asyncio
import logging
from collections.abc import Awaitable, Callable, Iterable
from random import random
from typing import Any

from telegram import Bot
from telegram.error import InvalidToken, TelegramError

from bot.delivery.backoff import PLATFORM_AWAY
from bot.telegram.api import call
from core.errors import InputError

log = logging.getLogger(__name__)


async def connect(bot: Bot) -> None:
    """Learn the bot's own name. Raises InputError for a token that the platform doesn't know."""
    try:
        await _until_answered(bot.initialize)
    except InvalidToken:
        # The library's own text holds the token.
        raise InputError("BELLWETHER_TOKEN", "the platform doesn't know this token.") from None


async def register(bot: Bot, commands: Iterable[dict[str, Any]]) -> None:
    """Tell the platform what can be typed: parameters of `set_my_commands`, one call each."""
    for params in commands:
        await _until_answered(lambda params=params: call(bot, "set_my_commands", params))  # type: ignore[misc]


async def _until_answered(ask: Callable[[], Awaitable[object]]) -> None:
    backoff = PLATFORM_AWAY
    while True:
        try:
            await ask()
        except InvalidToken:
            raise
        except TelegramError as error:
            backoff = backoff.after_failure()
            wait_s = backoff.wait_s(random())  # noqa: S311 - spreads tries, guards nothing
            log.warning("the platform doesn't answer, next try in %.1f s: %s", wait_s, error)
            await asyncio.sleep(wait_s)
        else:
            return
