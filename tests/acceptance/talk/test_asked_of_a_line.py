"""Somebody asks for another way to do a line, and names what they have for it."""

from tests.acceptance.people import answers_what_is_asked


async def test_the_bike_that_is_named_takes_the_place_of_the_run(crew):
    cal = await crew.has("Cal")
    await crew.gets()
    await answers_what_is_asked(cal)
    await cal.says("can i swap the run for the bike, its icy out")
    assert "bike" in (await cal.hears("Your version")).text


async def test_a_run_may_be_done_on_a_treadmill(crew):
    cal = await crew.has("Cal")
    await crew.gets()
    await cal.says("can i do the run on the treadmill")
    await cal.hears("You can do every run on a treadmill")


async def test_what_our_own_words_mean_is_no_choice(crew):
    mats = await crew.has("Mats")
    await crew.gets()
    await mats.says("/today")
    await mats.says("one ball iron of 12 kilo and 2 dumbell 5")
    await mats.hears("a kettlebell of 12 kg and 2 dumbbells of 5 kg")
    for _ in range(2):
        await mats.says('i am not understand "lighter" what it means')
        await mats.hears("In doubt, take the lighter")
        await mats.hears("Which is meant for you?")
    await mats.says("the lighter one")
    await mats.hears("needs to spare?")
