"""The record as a chat to read."""

from telegram import InlineKeyboardButton, InlineKeyboardMarkup

from bot.rehearsal.day import STORY
from bot.rehearsal.day.hours import OSLO
from bot.rehearsal.story import Story, contents
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


async def test_lines_that_the_bot_said_before_are_left_out_unless_all_is_wanted(bot, room):
    ilse = await room.person("Ilse")
    await ilse.says("hello")
    same = "\n".join(f"row {number}" for number in range(5))
    await bot.send_message(ilse.id, f"one\n{same}\nlast")
    await bot.send_message(ilse.id, f"two\n{same}\nend", reply_markup=BUTTONS)
    happened = await room.transcript()
    short, whole = Transcript(OSLO), Transcript(OSLO, whole=True)
    told = [line.strip() for happening in happened for line in short.lines_of(happening)]
    assert told[-4:] == ["Bellwether  two", "…", "end", "[Yes] [No]"]
    assert "row 4" in told
    assert [line for happening in happened for line in whole.lines_of(happening)].count(
        " " * 12 + "row 4"
    ) == 2


async def test_each_scene_has_its_heading_before_what_happens_in_it(bot, room):
    ilse = await room.person("Ilse")
    story = Story(Transcript(OSLO))
    for title in ("First", "Second"):
        await room.stage.do("open_scene", title=title, point=f"what there is in the {title.lower()}")
        await ilse.says(title)
    lines = story.lines_of(await room.transcript(), await room.scenes())
    heads = [place for place, line in enumerate(lines) if "═" in line]
    assert [lines[place].rstrip("═ ") for place in heads] == ["1. First", "2. Second"]
    assert lines[heads[1] + 1].strip() == "what there is in the second"
    assert "Ilse        Second" in lines[heads[1] :]


def test_the_contents_list_every_scene_of_the_day_at_its_time():
    lines = contents(STORY, OSLO)
    assert sum(":" in line for line in lines) >= len(STORY)
    assert [line for line in lines if line and not line.startswith(" ")] == [
        "Tuesday",
        "Wednesday",
        "Thursday",
    ]
    assert all(scene.title in "\n".join(lines) for scene in STORY)
