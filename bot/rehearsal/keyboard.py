"""Buttons under a message, checked as the server checks them."""

import json
import re
from typing import Any
from urllib.parse import urlsplit

from telegram.constants import InlineKeyboardButtonLimit, InlineKeyboardMarkupLimit, MessageLimit

from bot.rehearsal.errors import bad_request

Json = dict[str, Any]
_OTHER_KEYBOARDS = ("keyboard", "remove_keyboard", "force_reply")
_START_LINK = re.compile(r"^(?:https?://)?t\.me/(?P<bot>\w+)(?:\?start=(?P<payload>[^&#]*))?$")
_PAYLOAD = re.compile(rf"[A-Za-z0-9_-]{{1,{MessageLimit.DEEP_LINK_LENGTH}}}")


def read_keyboard(markup: Json | str | None) -> Json | None:
    """Return the inline keyboard of a `reply_markup`, or None for another kind. Raises Declined (400)."""
    if isinstance(markup, str):
        markup = _parsed(markup)
    if markup is None:
        return None
    if not isinstance(markup, dict):
        raise bad_request("object expected as reply markup")
    if "inline_keyboard" not in markup:
        if not any(kind in markup for kind in _OTHER_KEYBOARDS):
            raise bad_request("can't parse reply keyboard markup JSON object")
        return None
    rows = [[_checked(button) for button in row] for row in markup["inline_keyboard"] if row]
    _check_size(rows)
    return {"inline_keyboard": rows} if rows else None


def _parsed(markup: str) -> Json | None:
    try:
        found: Json | None = json.loads(markup or "null")
    except ValueError:
        raise bad_request("can't parse reply keyboard markup JSON object") from None
    return found


def _check_size(rows: list[list[Json]]) -> None:
    too_wide = any(len(row) > InlineKeyboardMarkupLimit.BUTTONS_PER_ROW for row in rows)
    too_many = sum(len(row) for row in rows) > InlineKeyboardMarkupLimit.TOTAL_BUTTON_NUMBER
    if too_wide or too_many:
        raise bad_request("reply markup is too long")


def _checked(button: Json) -> Json:
    if not isinstance(button, dict) or not isinstance(button.get("text"), str):
        raise bad_request('can\'t parse inline keyboard button: Field "text" must be of type String')
    if not button["text"].strip():
        raise bad_request("inline keyboard button text must be non-empty")
    if "callback_data" in button:
        _check_data(button["callback_data"])
    elif "url" in button:
        _check_url(button["url"])
    elif not any(use in button for use in ("web_app", "login_url", "copy_text", "switch_inline_query")):
        raise bad_request(
            "can't parse inline keyboard button: Text buttons are unallowed in the inline keyboard"
        )
    return button


def _check_data(data: str) -> None:
    if not 1 <= len(data.encode()) <= InlineKeyboardButtonLimit.MAX_CALLBACK_DATA:
        raise bad_request("BUTTON_DATA_INVALID")


def _check_url(url: str) -> None:
    parts = urlsplit(url)
    if parts.scheme == "tg" or (parts.scheme in ("http", "https") and parts.hostname):
        return
    raise bad_request(f"inline keyboard button URL '{url}' is invalid: Wrong HTTP URL")


def start_payload(link: str, bot_username: str) -> str | None:
    """Return the payload of a link that starts this bot ("" for none), or None for any other link."""
    found = _START_LINK.match(link)
    if found is None or found["bot"].lower() != bot_username.lower():
        return None
    return found["payload"] or ""


def is_payload(text: str) -> bool:
    return _PAYLOAD.fullmatch(text) is not None
