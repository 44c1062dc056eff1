"""What is read of an update: what the bot needs, whatever else the platform puts into it."""

import pytest
from telegram import Bot

from bot.telegram.heard import hear

ILSE = {"id": 5, "is_bot": False, "first_name": "Ilse"}
PRIVATE = {"id": 5, "type": "private"}


@pytest.fixture
def bot():
    return Bot("7:token")


def message(**more):
    return {"message_id": 3, "date": 1_772_000_000, "chat": PRIVATE, "from": ILSE} | more


def press(shown):
    return {
        "update_id": 1,
        "callback_query": {"id": "q", "from": ILSE, "chat_instance": "1", "message": shown},
    }


def test_what_nobody_knows_yet_stays_unread(bot):
    strange = {
        "text": "7+12",
        "poll": {"new": True},
        "story": 7,
        "sticker": [],
        "reply_to_message": message(poll=3),
    }

    heard = hear({"update_id": 1, "message": message(**strange)}, bot)

    assert (heard.text, heard.reply_to) == ("7+12", 3)


def test_an_update_of_a_kind_that_is_never_asked_for_tells_nothing(bot):
    assert hear({"update_id": 1, "poll": {"new": True}}, bot) is None


def test_a_deleted_account_has_no_name(bot):
    nobody = ILSE | {"first_name": ""}

    assert hear({"update_id": 1, "message": message(text="hi") | {"from": nobody}}, bot).name == ""


def test_a_message_under_a_button_keeps_its_formatting(bot):
    bold = {"type": "bold", "offset": 0, "length": 2}

    assert hear(press(message(text="hi <you>", entities=[bold])), bot).press.html == "<b>hi</b> &lt;you&gt;"


def test_formatting_that_ends_within_a_character_is_left_out(bot):
    half = {"type": "bold", "offset": 0, "length": 1}

    assert hear(press(message(text="💪 <you>", entities=[half])), bot).press.html == "💪 &lt;you&gt;"


def test_a_message_without_words_under_a_button_has_none(bot):
    bold = {"type": "bold", "offset": 0, "length": 2}

    assert hear(press(message(entities=[bold])), bot).press.html is None
