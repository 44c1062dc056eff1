"""Answers to presses."""

from datetime import timedelta
from typing import TYPE_CHECKING

from telegram.constants import CallbackQueryLimit

from bot.rehearsal.errors import bad_request
from bot.rehearsal.keyboard import start_payload
from bot.rehearsal.methods.reading import Params, text

if TYPE_CHECKING:
    from bot.rehearsal.platform import BotAccount, Platform

ANSWERABLE_FOR = timedelta(minutes=1)  # unpublished: estimate


def answer_callback_query(platform: "Platform", bot: "BotAccount", params: Params) -> bool:
    shown, url = text(params, "text"), params.get("url")
    if len(shown) > CallbackQueryLimit.ANSWER_CALLBACK_QUERY_TEXT_LENGTH:
        raise bad_request("MESSAGE_TOO_LONG")
    if url and start_payload(str(url), bot.user.username or "") is None:
        raise bad_request("URL_INVALID")
    query = platform.queries.pop(text(params, "callback_query_id"), None)
    if query is None or query.bot is not bot or platform.clock.now() - query.asked > ANSWERABLE_FOR:
        raise bad_request("query is too old and response timeout expired or query ID is invalid")
    platform.toast(query, shown, str(url) if url else None)
    return True


METHODS = {"answerCallbackQuery": answer_callback_query}
