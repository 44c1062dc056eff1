"""An athlete names the line and what is wrong with it: it is done at once, and nothing is asked back."""

from tests.acceptance.people import answers_what_is_asked
from tests.acceptance.worlds import world


@world
async def ilse(crew):
    person = await crew.has("Ilse")
    await crew.gets("Tuesday\n3 rounds for time:\n10 burpees\n15 push-ups\n200 m run")
    await answers_what_is_asked(person)
    return person


async def test_the_weather_is_no_limit_of_the_body(crew, ilse):
    await ilse.says("can't do the run, its pouring")
    await ilse.hears("Changed:")
    await ilse.says("what do I spare?")
    assert "run" not in (await ilse.hears("")).text


async def test_another_movement_takes_the_place_of_the_one_that_is_named(crew, ilse):
    await ilse.says("swap burpees for squats")
    assert "squat" in (await ilse.hears("Changed:")).text


async def test_a_machine_that_is_asked_for_is_there_today(crew, ilse):
    await ilse.says("can i use an erg instead of the run?")
    changed = await ilse.hears("Changed: 250 m row")
    assert "Today: with the rowing machine" in changed.text


async def test_what_isnt_there_is_not_put_in(crew, ilse):
    await ilse.says("can i do bench press instead of the push-ups?")
    await ilse.hears("I can't give you bench presses for it")


async def test_shorter_is_shorter_at_once(crew, ilse):
    await ilse.says("can u make it shorter")
    await ilse.hears("Your version")


async def test_what_was_told_last_is_fine_again(crew, ilse):
    await ilse.says("my left knee hurts")
    await ilse.hears("I'm sorry about your left knee")
    await ilse.says("its better now")
    await ilse.presses("It's gone", on=await ilse.hears("How is your left knee?"))
    await ilse.says("my left knee hurts")
    await ilse.hears("I'm sorry about your left knee")
    await ilse.says("it's fine again")
    await ilse.hears("left knee")


async def test_a_period_is_no_fever(crew, ilse):
    await ilse.says("feeling rubbish, period cramps")
    await ilse.presses("Shorter today", on=await ilse.hears("Moving gently often helps"))
    await ilse.hears("Your version")
    await ilse.says("is it ok to train with a cold?")
    await ilse.hears("above the neck")


async def test_that_nothing_hurt_in_a_session_ends_nothing_that_is_spared(crew, ilse):
    await ilse.says("my left knee hurts")
    await ilse.hears("I'm sorry about your left knee")
    await ilse.says("9:40")
    await ilse.hears("How hard was the whole session")
    await ilse.says("4")
    await ilse.hears("Did anything hurt?")
    await ilse.says("no pain")
    await ilse.says("/me")
    await ilse.hears("To spare: sore knee (left")
