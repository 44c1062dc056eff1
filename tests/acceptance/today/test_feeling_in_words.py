"""With a version before them, athletes say in words what its buttons say."""

import pytest

from tests.acceptance.versions.test_changing_a_version import has_a_version, new_version
from tests.acceptance.worlds import world


@world
async def ilse(crew):
    return await has_a_version(crew)


@pytest.mark.parametrize("words", ["my knee hurts a bit now", "ouch, pain in my knee"])
async def test_a_joint_that_hurts_is_spared(crew, words, ilse):
    await ilse.says(words)
    await ilse.hears("I leave out what loads it")
    await new_version(ilse)


async def test_health_that_is_told_unasked_is_spared_beside_the_rest(crew, ilse):
    await ilse.says("my left wrist hurts")
    await ilse.hears("I'm sorry about your left wrist")
    await ilse.says("I just found out I'm pregnant")
    await ilse.hears("Which week of your pregnancy")
    await ilse.presses("Up to week 13, no word yet")
    await ilse.hears("With what you told me, your coach looks at your version first")
    await ilse.says("/me")
    spared = (await ilse.hears("To spare:")).text.split("To spare:")[1].split("\n")[0]
    assert "wrist" in spared
    assert "pregnancy" in spared


async def test_who_says_where_they_are_sore_is_not_asked_where(crew, ilse):
    await ilse.says("my legs are really sore today")
    await ilse.hears("Noted: sore legs, for today")
    assert "Today: sore legs" in await new_version(ilse)


async def test_what_is_told_to_spare_is_seen_in_the_version_at_once(crew, ilse):
    await ilse.says("no jumping for me please")
    assert "I'll keep in mind: no jumping" in (await ilse.hears("Your version")).text


async def test_a_joint_that_will_not_move_back_is_no_sore_back(crew, ilse):
    await ilse.says("7+12, my left wrist hurts")
    await ilse.hears("Until you tell me your left wrist is fine")
    await ilse.says("can't bend it back")
    noted = await ilse.hears("your left wrist")
    assert "have it looked at by a doctor" in noted.text
    await ilse.says("/me")
    assert "back" not in (await ilse.hears("To spare:")).text.split("To spare:")[1].split("\n")[0]


async def test_what_was_taken_for_pain_by_mistake_works_again(crew, ilse):
    await ilse.says("my back hurts")
    await ilse.hears("I'm sorry about your lower back")
    await ilse.says("not my back, only my left wrist")
    await ilse.hears("I'm sorry about your left wrist")
    await ilse.says("/me")
    spared = (await ilse.hears("To spare:")).text.split("To spare:")[1].split("\n")[0]
    assert "wrist" in spared
    assert "back" not in spared


async def test_something_that_hurts_is_stopped_first(crew, ilse):
    await ilse.says("ouch, this really hurts")
    told = await ilse.hears("Stop what hurts")
    assert "Which line would you like to change?" in told.text


@pytest.mark.parametrize(
    "words",
    ["that's too hard, can I have something easier?", "I can't do planks", "thats way too light for me"],
)
async def test_what_is_too_hard_or_too_light_can_be_changed(crew, words, ilse):
    await ilse.says(words)
    choice = await ilse.hears("Which line would you like to change?")
    assert choice.all_buttons


async def test_who_feels_sick_is_asked_how_it_is(crew, ilse):
    await ilse.says("I feel sick today")
    await ilse.presses("Fever", on=await ilse.hears("How is it?"))
    await ilse.hears("Rest until it's gone and two days more")


async def test_who_is_short_of_time_gets_a_shorter_version(crew, ilse):
    await ilse.says("I have 5 minutes only")
    await ilse.hears("Noted: 5 minutes, for today")
    assert "4 minutes, as many rounds" in await new_version(ilse)
