"""The user's voice says and hears the same whether the platform is in this process or behind HTTP."""

import pytest
from telegram import InlineKeyboardButton, InlineKeyboardMarkup


def keyboard(**data_of_label: str) -> InlineKeyboardMarkup:
    return InlineKeyboardMarkup(
        [[InlineKeyboardButton(label, callback_data=data)] for label, data in data_of_label.items()]
    )


async def updates(bot, after: int = 0):
    return await bot.get_updates(offset=after + 1 if after else None, timeout=2)


async def test_a_link_opens_the_private_chat_and_says_its_payload(both):
    bot, room = both
    ilse = await room.person("Ilse", username="ilse_rows", language="nl")
    await ilse.opens(await room.start_link("join_7"))
    [update] = await updates(bot)
    assert update.message.text == "/start join_7"
    assert (update.effective_user.id, update.effective_user.language_code) == (ilse.id, "nl")


async def test_a_person_hears_what_the_bot_says_and_how_it_looks(both):
    bot, room = both
    ilse = await room.person("Ilse")
    await ilse.says("hello")
    await bot.send_message(
        ilse.id, "Hi <b>you</b>", parse_mode="HTML", reply_markup=keyboard(Yes="y", No="n")
    )
    heard = await ilse.hears("Hi you")
    assert (heard.html, heard.labels, heard.from_bot) == ("Hi <b>you</b>", ["Yes", "No"], True)
    assert (await ilse.last_message) == heard
    assert [message.text for message in await ilse.messages] == ["hello", "Hi you"]


async def test_hearing_goes_on_where_it_stopped_and_counts_edits(both):
    bot, room = both
    ilse = await room.person("Ilse")
    await ilse.says("hello")
    said = await bot.send_message(ilse.id, "Round 1")
    await ilse.hears("Round")
    await said.edit_text("Round 2")
    assert (await ilse.hears("Round")).text == "Round 2"
    await ilse.hears_nothing(for_=0.05)


async def test_what_is_not_heard_is_told_with_the_last_messages(both):
    bot, room = both
    ilse = await room.person("Ilse")
    await ilse.says("hello")
    await bot.send_message(ilse.id, "Good morning")
    with pytest.raises(AssertionError, match=r"(?s)didn't hear 'evening'.*Bellwether: Good morning"):
        await ilse.hears("evening", within=0.05)
    await ilse.hears("morning")


async def test_hearing_nothing_fails_when_something_is_said(both):
    bot, room = both
    ilse = await room.person("Ilse")
    await ilse.says("hello")
    await bot.send_message(ilse.id, "Boo")
    with pytest.raises(AssertionError, match="Boo"):
        await ilse.hears_nothing(for_=5)


async def test_a_press_brings_its_data_and_its_answer_is_seen(both):
    bot, room = both
    ilse = await room.person("Ilse")
    await ilse.says("hello")
    await bot.send_message(
        ilse.id, "Ready?", reply_markup=keyboard(**{"Post now": "p:1", "Post at ...": "p:2"})
    )
    assert await ilse.last_toast is None
    await ilse.presses("Post n")
    _, update = await updates(bot)
    assert (update.callback_query.data, update.callback_query.from_user.id) == ("p:1", ilse.id)
    await update.callback_query.answer("Posted")
    assert (await ilse.sees_toast("Post")).text == "Posted"
    assert (await ilse.last_toast).text == "Posted"


async def test_a_missing_or_ambiguous_label_lists_the_buttons_there_are(both):
    bot, room = both
    ilse = await room.person("Ilse")
    await ilse.says("hello")
    await bot.send_message(
        ilse.id, "Ready?", reply_markup=keyboard(**{"Post now": "p:1", "Post later": "p:2"})
    )
    with pytest.raises(AssertionError, match=r"'Post now', 'Post later'"):
        await ilse.presses("Delete")
    with pytest.raises(AssertionError, match="more than one"):
        await ilse.presses("Post")


async def test_buttons_that_are_gone_can_still_be_pressed_on_the_message_as_it_was_seen(both):
    bot, room = both
    ilse = await room.person("Ilse")
    await ilse.says("hello")
    said = await bot.send_message(ilse.id, "Ready?", reply_markup=keyboard(Go="go:1"))
    seen = await ilse.last_message
    await said.edit_text("Gone")
    await ilse.presses("Go", on=seen)
    await ilse.presses_again()
    presses = [update.callback_query for update in await updates(bot) if update.callback_query]
    assert [press.data for press in presses] == ["go:1", "go:1"]
    assert presses[0].id != presses[1].id


async def test_a_stranger_in_the_group_can_press_and_even_forge_a_press(both):
    bot, room = both
    coach, stranger = await room.person("Coach"), await room.person("Stranger")
    group = await room.group("Harbour crew", admins=[coach], members=[stranger])
    await coach.adds_bot(group)
    await bot.send_message(group.id, "Session", reply_markup=keyboard(Post="p"))
    await stranger.presses_data(await group.last_message, "admin:1")
    assert (await updates(bot))[-1].callback_query.data == "admin:1"


async def test_nobody_presses_in_a_private_chat_of_others(both):
    bot, room = both
    ilse, stranger = await room.person("Ilse"), await room.person("Stranger")
    await ilse.says("hello")
    await bot.send_message(ilse.id, "Secret", reply_markup=keyboard(Go="g"))
    with pytest.raises(AssertionError, match="not in Ilse"):
        await stranger.presses("Go", on=await ilse.last_message)


async def test_a_link_under_a_message_is_opened(both):
    bot, room = both
    coach = await room.person("Coach")
    group = await room.group("Harbour crew", admins=[coach])
    await coach.adds_bot(group)
    button = InlineKeyboardButton("My version", url=await room.start_link("v_1"))
    await bot.send_message(group.id, "Session", reply_markup=InlineKeyboardMarkup([[button]]))
    await coach.presses("My version")
    assert (await updates(bot))[-1].message.text == "/start v_1"


@pytest.mark.parametrize("payload", ["x" * 65, "a=b", "a%20b"])
async def test_a_payload_that_the_platform_would_not_take_is_refused(both, payload):
    _, room = both
    ilse = await room.person("Ilse")
    with pytest.raises(AssertionError, match="payload"):
        await ilse.opens(f"{await room.start_link()}?start={payload}")


async def test_a_group_hears_the_bot_and_not_its_members(both):
    bot, room = both
    coach, ilse = await room.person("Coach"), await room.person("Ilse")
    group = await room.group("Harbour crew", admins=[coach], members=[ilse])
    await coach.adds_bot(group)
    await ilse.says("Scoreboard please", in_=group)
    await bot.send_message(group.id, "Scoreboard: empty")
    assert (await group.hears("Scoreboard")).text == "Scoreboard: empty"


async def test_replies_name_the_message_they_answer(both):
    bot, room = both
    ilse = await room.person("Ilse")
    await ilse.says("hello")
    await bot.send_message(ilse.id, "Your score?")
    await ilse.says("7+12", reply_to=await ilse.last_message)
    assert (await updates(bot))[-1].message.reply_to_message.text == "Your score?"


async def test_ten_thousand_characters_go_out_as_three_messages_and_empty_ones_not_at_all(both):
    bot, room = both
    ilse = await room.person("Ilse")
    await ilse.says("x" * 10_000)
    assert [len(update.message.text) for update in await updates(bot)] == [4096, 4096, 1808]
    with pytest.raises(AssertionError, match="empty"):
        await ilse.says("  ")


async def test_things_without_text_arrive_too(both):
    bot, room = both
    ilse = await room.person("Ilse")
    await ilse.sends("sticker")
    await ilse.sends("location")
    sticker, location = await updates(bot)
    assert sticker.message.sticker
    assert location.message.location


async def test_an_edited_message_is_told_as_such(both):
    bot, room = both
    ilse = await room.person("Ilse")
    message = await ilse.says("7+11")
    await ilse.edits(message, "7+12")
    assert (await updates(bot))[-1].edited_message.text == "7+12"


async def test_the_transcript_tells_who_said_and_pressed_what_when(both):
    bot, room = both
    ilse = await room.person("Ilse")
    await ilse.says("hello")
    await bot.send_message(ilse.id, "Ready?", reply_markup=keyboard(Go="g"))
    await ilse.presses("Go")
    update = (await updates(bot))[-1]
    await update.callback_query.answer("Off you go")
    await bot.set_message_reaction(ilse.id, 1, "👍")
    told = [(one.who, one.kind, one.text) for one in await room.transcript()]
    assert told == [
        ("Ilse", "message", "hello"),
        ("Bellwether", "message", "Ready?"),
        ("Ilse", "press", "Go"),
        ("Bellwether", "toast", "Off you go"),
        ("Bellwether", "reaction", "👍"),
    ]
    assert {one.chat for one in await room.transcript()} == {"Ilse (private)"}
    assert {one.at for one in await room.transcript()} == {await room.now()}
