"""What a bot may send and change: lengths, buttons, rights, and the real server's words when it may not."""

from datetime import timedelta

import pytest
from telegram import InlineKeyboardButton, InlineKeyboardMarkup, ReplyParameters
from telegram.error import BadRequest, Forbidden


@pytest.fixture
async def ilse(room):
    person = await room.person("Ilse")
    await person.says("hello")
    return person


def rows(*widths: int) -> InlineKeyboardMarkup:
    return InlineKeyboardMarkup(
        [[InlineKeyboardButton("x", callback_data="x") for _ in range(width)] for width in widths]
    )


# whom it may write to


async def test_a_bot_cannot_open_a_private_chat(bot, room):
    stranger = await room.person("Stranger")
    with pytest.raises(BadRequest, match="Chat not found"):
        await bot.send_message(stranger.id, "hi")
    coach = await room.person("Coach")
    group = await room.group("Harbour crew", admins=[coach], members=[stranger])
    await coach.adds_bot(group)
    with pytest.raises(Forbidden, match="bot can't initiate conversation with a user"):
        await bot.send_message(stranger.id, "hi")


async def test_a_bot_that_is_blocked_is_told_so_until_it_is_unblocked(both):
    bot, room = both
    ilse = await room.person("Ilse")
    await ilse.says("hello")
    await ilse.blocks_bot()
    with pytest.raises(Forbidden, match="bot was blocked by the user"):
        await bot.send_message(ilse.id, "hi")
    with pytest.raises(AssertionError, match="blocked"):
        await ilse.says("are you there?")
    await ilse.unblocks_bot()
    await bot.send_message(ilse.id, "hi")
    await ilse.hears("hi")


async def test_a_deleted_account_is_unreachable(bot, ilse):
    await ilse.deletes_account()
    with pytest.raises(Forbidden, match="user is deactivated"):
        await bot.send_message(ilse.id, "hi")


@pytest.mark.parametrize(
    ("chat_id", "reason"), [("", "chat_id is empty"), ("@nobody", "chat not found"), (1, "chat not found")]
)
async def test_a_chat_that_there_is_not_is_not_found(bot, chat_id, reason):
    with pytest.raises(BadRequest, match=f"(?i){reason}"):
        await bot.send_message(chat_id, "hi")


# lengths


@pytest.mark.parametrize(
    "text", ["x" * 4096, "🦄" * 2048, "<b>" + "x" * 4096 + "</b>", "&amp;" * 4096, " " * 90 + "x" * 4096]
)
async def test_4096_characters_after_parsing_fit(bot, ilse, text):
    await bot.send_message(ilse.id, text, parse_mode="HTML")


@pytest.mark.parametrize("text", ["x" * 4097, "🦄" * 2049, "<b>" + "x" * 4096 + "</b>x"])
async def test_more_do_not(bot, ilse, text):
    with pytest.raises(BadRequest, match="Message is too long"):
        await bot.send_message(ilse.id, text, parse_mode="HTML")
    said = await bot.send_message(ilse.id, "short")
    with pytest.raises(BadRequest, match="Message_too_long"):
        await said.edit_text(text, parse_mode="HTML")


@pytest.mark.parametrize("text", ["", "  \n ", "<b></b>"])
async def test_a_text_must_say_something(bot, ilse, text):
    with pytest.raises(BadRequest, match="Message text is empty"):
        await bot.send_message(ilse.id, text, parse_mode="HTML")


# buttons


@pytest.mark.parametrize("data", ["x" * 64, "é" * 32])
async def test_64_bytes_of_data_fit_under_a_button(bot, ilse, data):
    markup = InlineKeyboardMarkup([[InlineKeyboardButton("Go", callback_data=data)]])
    await bot.send_message(ilse.id, "hi", reply_markup=markup)


@pytest.mark.parametrize("data", ["x" * 65, "é" * 33, ""])
async def test_more_or_none_do_not(bot, ilse, data):
    markup = {"inline_keyboard": [[{"text": "Go", "callback_data": data}]]}
    with pytest.raises(BadRequest, match="Button_data_invalid"):
        await bot.do_api_request("sendMessage", {"chat_id": ilse.id, "text": "hi", "reply_markup": markup})


@pytest.mark.parametrize("widths", [[8], [8] * 12 + [4]])
async def test_eight_buttons_fit_a_row_and_a_hundred_a_keyboard(bot, ilse, widths):
    await bot.send_message(ilse.id, "hi", reply_markup=rows(*widths))


@pytest.mark.parametrize("widths", [[9], [8] * 12 + [5]])
async def test_wider_or_longer_keyboards_do_not_fit(bot, ilse, widths):
    with pytest.raises(BadRequest, match="Reply markup is too long"):
        await bot.send_message(ilse.id, "hi", reply_markup=rows(*widths))


@pytest.mark.parametrize(
    ("button", "reason"),
    [
        (InlineKeyboardButton("Go"), "(?i)text buttons are unallowed"),
        (InlineKeyboardButton(" ", callback_data="x"), "must be non-empty"),
        (InlineKeyboardButton("Go", url="nonsense"), "(?i)wrong http url"),
    ],
)
async def test_a_button_needs_a_label_and_a_use(bot, ilse, button, reason):
    with pytest.raises(BadRequest, match=reason):
        await bot.send_message(ilse.id, "hi", reply_markup=InlineKeyboardMarkup([[button]]))


# answers to presses


@pytest.fixture
async def press(bot, ilse):
    await bot.send_message(ilse.id, "Ready?", reply_markup=rows(1))
    await ilse.presses("x")
    return (await bot.get_updates(timeout=0))[-1].callback_query


async def test_an_answer_has_at_most_200_characters(press, ilse):
    with pytest.raises(BadRequest, match="Message_too_long"):
        await press.answer("x" * 201)
    await press.answer("x" * 200)
    assert (await ilse.last_toast).text == "x" * 200


async def test_a_press_is_answered_once_and_soon(press, room):
    await press.answer()
    with pytest.raises(
        BadRequest, match="Query is too old and response timeout expired or query id is invalid"
    ):
        await press.answer()


async def test_an_old_press_is_no_longer_answered(press, room):
    await room.travels(timedelta(minutes=2))
    with pytest.raises(BadRequest, match="Query is too old"):
        await press.answer()


async def test_an_answer_may_open_the_bots_own_link_and_no_other(press, room, ilse):
    with pytest.raises(BadRequest, match="Url_invalid"):
        await press.answer(url="https://example.org")
    await press.answer(url=await room.start_link("v_1"))
    await ilse.opens((await ilse.last_toast).url)


# changing and deleting


async def test_an_edit_that_changes_nothing_is_refused(bot, ilse):
    said = await bot.send_message(ilse.id, "Round <b>1</b>", parse_mode="HTML", reply_markup=rows(1))
    with pytest.raises(BadRequest, match="Message is not modified: specified new message content"):
        await said.edit_text("Round <b>1</b>", parse_mode="HTML", reply_markup=rows(1))
    with pytest.raises(BadRequest, match="Message is not modified"):
        await said.edit_reply_markup(rows(1))
    assert (await said.edit_reply_markup()).reply_markup is None
    assert (await said.edit_text("Round 1")).edit_date is not None


async def test_only_its_own_messages_that_exist_are_edited(bot, ilse):
    with pytest.raises(BadRequest, match="Message can't be edited"):
        await bot.edit_message_text("hi", ilse.id, 1)
    with pytest.raises(BadRequest, match="Message to edit not found"):
        await bot.edit_message_text("hi", ilse.id, 99)


async def test_messages_are_deleted_within_48_hours(bot, room, ilse):
    first, second = [await bot.send_message(ilse.id, text) for text in ("first", "second")]
    await room.travels(timedelta(hours=48))
    assert await first.delete()
    await room.travels(timedelta(seconds=1))
    with pytest.raises(BadRequest, match="Message can't be deleted for everyone"):
        await second.delete()
    assert [message.text for message in await ilse.messages] == ["hello", "second"]


async def test_a_reply_needs_its_message_unless_told_otherwise(bot, ilse):
    assert (
        await bot.send_message(ilse.id, "hi", reply_parameters=ReplyParameters(1))
    ).reply_to_message.text == "hello"
    with pytest.raises(BadRequest, match="Message to be replied not found"):
        await bot.send_message(ilse.id, "hi", reply_parameters=ReplyParameters(99))
    await bot.send_message(
        ilse.id, "hi", reply_parameters=ReplyParameters(99, allow_sending_without_reply=True)
    )


async def test_reactions_are_of_the_known_ones(bot, ilse):
    await bot.set_message_reaction(ilse.id, 1, "👍")
    assert (await ilse.messages)[0].reactions == "👍"
    with pytest.raises(BadRequest, match="Reaction_invalid"):
        await bot.set_message_reaction(ilse.id, 1, "🦄🦄")
    await bot.set_message_reaction(ilse.id, 1)
    assert (await ilse.messages)[0].reactions == ""


async def test_typing_is_shown_only_where_the_bot_may_write(bot, room, ilse):
    assert await bot.send_chat_action(ilse.id, "typing")
    with pytest.raises(BadRequest, match="Wrong parameter action"):
        await bot.send_chat_action(ilse.id, "juggling")
    await ilse.blocks_bot()
    with pytest.raises(Forbidden):
        await bot.send_chat_action(ilse.id, "typing")


# commands


async def test_commands_are_kept_per_scope_and_language(bot):
    await bot.set_my_commands([("start", "Begin")])
    await bot.set_my_commands([("start", "Beginnen")], language_code="nl")
    assert [one.description for one in await bot.get_my_commands()] == ["Begin"]
    assert [one.description for one in await bot.get_my_commands(language_code="nl")] == ["Beginnen"]
    await bot.delete_my_commands(language_code="nl")
    assert await bot.get_my_commands(language_code="nl") == ()


@pytest.mark.parametrize(
    ("command", "reason"),
    [
        (("Start", "x"), "Bot_command_invalid"),
        (("s" * 33, "x"), "Bot_command_invalid"),
        (("s", "x" * 257), "description"),
    ],
)
async def test_commands_keep_their_limits(bot, command, reason):
    with pytest.raises(BadRequest, match=reason):
        await bot.set_my_commands([command])


# what the stand-in doesn't know


async def test_an_unknown_method_is_not_found_and_fails_the_test(bot, platform):
    with pytest.raises(Exception, match="sendCarrierPigeon"):
        await bot.do_api_request("sendCarrierPigeon")
    assert platform.complaints == ["unknown method: sendCarrierPigeon"]
    platform.complaints.clear()


async def test_a_parse_mode_that_is_not_rehearsed_fails_the_test(bot, platform, ilse):
    with pytest.raises(BadRequest, match="Unsupported parse_mode"):
        await bot.send_message(ilse.id, "hi", parse_mode="MarkdownV2")
    assert platform.complaints == ["parse mode not rehearsed: markdownv2"]
    platform.complaints.clear()
