"""The record as a chat to read."""

from telegram import InlineKeyboardButton, InlineKeyboardMarkup

from bot.rehearsal.day.hours import OSLO
from bot.rehearsal.transcript import Transcript

QUESTION = "Have you lately had any of these: pain or pressure in the chest, or unusual breathlessness?"
BUTTONS = InlineKeyboardMarkup(
    [[InlineKeyboardButton(label, callback_data=label) for label in ("Yes", "No")]]
)


async def read(room):
    transcript = Transcript(OSLO)
    return [line for happening in await room.transcript() for line in transcript.lines_of(happening)]


async def test_lines_of_one_conversation_stand_under_one_heading(bot, room):
    ilse = await room.person("Ilse")
    await ilse.says("hello")
    await bot.send_message(ilse.id, "Hello Ilse!")
    assert await read(room) == [
        "",
        "Monday 07:00 · Ilse with Bellwether ".ljust(110, "─"),
        "Ilse        hello",
        "Bellwether  Hello Ilse!",
    ]


async def test_a_question_asked_in_the_same_words_stands_behind_its_answer(bot, room):
    for name in ("Ilse", "Bo"):
        person = await room.person(name)
        await person.says("hello")
        await bot.send_message(person.id, QUESTION, reply_markup=BUTTONS)
        await person.presses("No")
    lines = await read(room)
    assert "Ilse        taps [No]" in lines
    assert "Bo          taps [No]   (Have you lately had any of these: pain or pressure in the …)" in lines


async def test_a_message_that_only_lost_its_buttons_and_an_empty_answer_are_left_out(bot, room):
    ilse = await room.person("Ilse")
    await ilse.says("hello")
    said = await bot.send_message(ilse.id, "Ready?", reply_markup=BUTTONS)
    await ilse.presses("Yes")
    before = await read(room)
    press = (await bot.get_updates())[-1].callback_query
    await press.answer()
    await said.edit_text("Ready?\n\n→ Yes")
    assert await read(room) == before
    await said.edit_text("Go!")
    assert (await read(room))[-1] == "Bellwether  (edited) Go!"


async def test_what_is_no_text_is_told_in_words(room):
    coach, ilse = await room.person("Marit"), await room.person("Ilse")
    group = await room.group("Harbour crew", admins=[coach])
    await coach.adds_bot(group)
    await ilse.joins(group)
    await ilse.sends_photo(caption="7+12")
    await ilse.edits(await ilse.says("7+1"), "7+2")
    await ilse.leaves(group)
    lines = [line for line in await read(room) if line and "─" not in line]
    assert lines == [
        "Marit       adds Bellwether to the group",
        "Ilse        comes into the group",
        "Ilse        <photo message> 7+12",
        "Ilse        7+1",
        "Ilse        changes that to: 7+2",
        "Ilse        leaves the group",
    ]
