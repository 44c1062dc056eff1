"""Carries one letter to the platform."""

import logging
from typing import Any

from telegram import Bot, InputFile
from telegram.error import TelegramError

from bot.delivery.verdicts import Rejected, Verdict, accepted, judge
from bot.telegram.api import SEND_TIMEOUT_S, call
from core.store.records import Letter

log = logging.getLogger(__name__)


async def deliver(bot: Bot, letter: Letter) -> Verdict:
    """Send a letter and judge what became of it. Never raises."""
    try:
        return accepted(await call(bot, letter.method, params_of(letter), SEND_TIMEOUT_S))
    except TelegramError as error:
        return judge(error)
    except Exception as error:
        # A letter that can't even be written as a request must not stop all the others.
        log.exception("letter %d (%s) could not be sent", letter.id, letter.method)
        return Rejected(f"{type(error).__name__}: {error}")


def params_of(letter: Letter) -> dict[str, Any]:
    """Return the parameters of the call: payload, file, the chat's address of now, the message to be edited."""
    params = dict(letter.payload)
    if is_message(letter):
        params["chat_id"] = letter.address
    if letter.method == "send_message":
        params.pop("message_id", None)  # of what was to be edited, and is gone
    elif letter.edits_message_id is not None:
        params["message_id"] = letter.edits_message_id
    if letter.file is not None:
        kind = letter.method.removeprefix("send_")
        params[kind] = InputFile(letter.file.content, filename=letter.file.name)
    return params


def is_message(letter: Letter) -> bool:
    """Say whether it goes to a chat; the answer to a press goes to the press, and counts for no limit."""
    return not letter.method.startswith("answer_")
