"""The door to the platform: the library's Bot, called with raw methods and raw JSON."""

import os
import warnings
from typing import Any

from telegram import Bot
from telegram.request import BaseRequest
from telegram.warnings import PTBUserWarning

from bot.telegram.transport import Transport

# Raw calls on purpose: the inbox stores what came and the outbox what goes, whatever the library knows of it.
warnings.filterwarnings("ignore", r"Please use 'Bot\.", PTBUserWarning)
# The library moves from numbers to timedelta, and warns at each 429 until one opts in.
os.environ.setdefault("PTB_TIMEDELTA", "true")

# A question is asked again, and somebody waits for what hangs on it.
_READ_TIMEOUT_S = 8.0
# Whether a message arrived is worth to be waited for: else it goes twice.
SEND_TIMEOUT_S = 25.0


def make_bot(token: str, api_url: str, request: BaseRequest | None = None) -> Bot:
    """Make the library's Bot for an API at `api_url`; `request` carries its calls in place of the network."""
    base = api_url.rstrip("/")
    return Bot(
        token,
        base_url=f"{base}/bot",
        base_file_url=f"{base}/file/bot",
        request=request or Transport(_READ_TIMEOUT_S),
        get_updates_request=request or Transport(_READ_TIMEOUT_S),
    )


async def call(bot: Bot, method: str, params: dict[str, Any], read_timeout: float = _READ_TIMEOUT_S) -> Any:
    """Call a Bot API method (snake_case) and return its `result`. Raises the library's TelegramError."""
    return await bot.do_api_request(method, api_kwargs=params, read_timeout=read_timeout)
