"""The record as a chat to read, and as a story."""

import re
from dataclasses import replace

from telegram import InlineKeyboardButton, InlineKeyboardMarkup

from bot.rehearsal.day import STORY
from bot.rehearsal.day.hours import OSLO, eve
from bot.rehearsal.day.scene import Scene, Through
from bot.rehearsal.story import Story, contents
from bot.rehearsal.transcript import WIDTH, Transcript

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


async def plays(room, scenes, *, whole=False):
    """The story of a day in which Ilse says each scene's title, a line that no caption needs behind it."""
    ilse = await room.person("Ilse")
    for scene in scenes:
        await room.stage.do("open_scene", title=scene.title, point=scene.point)
        await ilse.says(f"{scene.title}\nby the way")
    story, opened = Story(scenes, OSLO, whole=whole), await room.scenes()
    return [*story.lines_of(await room.transcript(), opened), *story.rest(opened)]


async def nobody_plays(_):
    pass


def scene(title, shows=()):
    return Scene(eve("19:00"), title, f"what there is in the {title.lower()}", nobody_plays, shows)


async def test_each_scene_is_told_under_its_heading_by_the_lines_that_show_its_point(room):
    lines = await plays(room, [scene("First", ("First",)), scene("Second", ("Second",))])
    assert [re.sub("═+", "═", line) for line in lines] == [
        "",
        "1. First ═ Tuesday 19:00",
        "            what there is in the first",
        "Ilse        First …",
        "",
        "2. Second ═ Tuesday 19:00",
        "            what there is in the second",
        "Ilse        Second …",
    ]


async def test_the_whole_story_leaves_nothing_out(room):
    lines = await plays(room, [scene("First", ("First",)), scene("Second")], whole=True)
    assert sum("by the way" in line for line in lines) == 2
    assert sum("═" in line for line in lines) == 2


async def test_a_scene_is_told_when_it_is_over(room):
    ilse = await room.person("Ilse")
    story = Story([scene("First", ("one",)), scene("Second", ("two",))], OSLO)
    await room.stage.do("open_scene", title="First", point="")
    await ilse.says("one")
    assert story.lines_of(await room.transcript(), await room.scenes()) == []
    await room.stage.do("open_scene", title="Second", point="")
    assert story.lines_of([], await room.scenes())[-1] == "Ilse        one"


def test_the_contents_list_every_scene_of_the_day_at_its_time():
    lines = contents(STORY, OSLO)
    text = "\n".join(lines)
    assert max(map(len, lines)) <= WIDTH
    for number, one in enumerate(STORY, 1):
        assert f"{number:>2}  {one.at.astimezone(OSLO):%H:%M}  {one.title}" in text
    assert all(day in text for day in ("Tuesday", "Wednesday", "Thursday"))


async def test_all_of_a_message_between_two_lines_may_be_shown_without_its_empty_ones(room):
    first = scene("First\n\nmore", (Through("First", "more"),))
    lines = await plays(room, [first, scene("Second", (Through("Second", "never said"),))])
    at = lines.index("Ilse        First")
    assert lines[at + 1] == "            more …", "what is left out behind it is marked"
    assert "Ilse        Second" not in lines


async def test_what_a_coach_in_a_hurry_reads_is_marked():
    scenes = [scene("First"), replace(scene("Second"), for_coaches=True)]
    assert len(contents(STORY, OSLO, brief=True)) == sum(one.for_coaches for one in STORY)
    listed = contents(scenes, OSLO)
    assert any(line.endswith("Second *") for line in listed)
    assert listed[-1].startswith("* If you coach")
    assert not any("*" in line for line in contents(scenes[:1], OSLO))
