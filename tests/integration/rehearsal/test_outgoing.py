"""The check of outgoing calls finds what it is for."""

import pytest
from telegram.error import TelegramError

from bot.rehearsal.platform import Call
from tests.outgoing import faults_of

BUTTON = {"text": "Go", "callback_data": "g"}


def call(platform, method: str, **params) -> Call:
    return Call(platform.bot, method, params)


def test_right_calls_pass(platform):
    markup = {"inline_keyboard": [[BUTTON]]}
    assert faults_of(call(platform, "sendMessage", chat_id=1, text="hi", reply_markup=markup)) == []
    assert faults_of(call(platform, "getMe")) == []


@pytest.mark.parametrize(
    "params",
    [
        {"chat_id": 1},
        {"chat_id": 1, "text": "hi", "txet": "hi"},
        {"chat_id": [1], "text": "hi"},
        {"chat_id": 1, "text": "hi", "reply_markup": {"inline_keybord": [[BUTTON]]}},
        {"chat_id": 1, "text": "hi", "reply_markup": {"inline_keyboard": [[BUTTON | {"colour": "red"}]]}},
        {"chat_id": 1, "text": "hi", "reply_markup": {"inline_keyboard": [BUTTON]}},
        {"chat_id": 1, "text": "hi", "reply_parameters": {"message_id": 1, "qoute": "x"}},
    ],
)
def test_missing_mistyped_and_unknown_fields_are_found(platform, params):
    assert faults_of(call(platform, "sendMessage", **params))


def test_an_unknown_method_is_found(platform):
    assert faults_of(call(platform, "sendMesage"))


async def test_calls_are_watched_through_both_transports(both, outgoing):
    bot, room = both
    ilse = await room.person("Ilse")
    await ilse.says("hello")
    markup = {"inline_keyboard": [[{"text": "Go", "calback_data": "g"}]]}
    with pytest.raises(TelegramError):
        await bot.do_api_request("sendMessage", {"chat_id": ilse.id, "text": "hi", "reply_markup": markup})
    assert outgoing.faults == ["sendMessage: unknown field reply_markup.inline_keyboard.0.0.calback_data"]
    outgoing.faults.clear()
