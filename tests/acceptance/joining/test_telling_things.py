"""What a newcomer has to train with: typed, ticked, weighed or not; and what they tell beside a yes."""

import pytest

from tests.acceptance.people import start_link


async def test_equipment_in_pounds_is_answered_in_pounds(crew, ilse, posted):
    await ilse.presses("My version")
    await ilse.hears("What do you have")
    await ilse.says("two 20 lb dumbbells")
    await ilse.hears("20 lb")


async def test_whoever_has_nothing_taps_what_a_household_has(crew, ilse):
    await crew.gets("for time\n10 goblet squats @ 16/12 kg\n15 squats")
    await ilse.presses("My version")
    await ilse.hears("What do you have to train with?")
    for label in ("A bag to fill", "A sturdy chair", "Stairs"):
        await ilse.presses(label)
        assert f"\N{CHECK MARK} {label}" in (await ilse.hears("What do you have to train with?")).labels
    await ilse.presses("\N{CHECK MARK} Stairs")
    assert "Stairs" in (await ilse.hears("What do you have to train with?")).labels
    await ilse.presses("That's all I have")
    noted = await ilse.hears("I've noted: a backpack for up to 14 kg and a chair.")
    assert "the usual weight for the backpack" in noted.text
    assert "stairs" not in noted.text


async def test_what_was_ticked_stays_when_the_rest_is_typed(crew, ilse):
    await crew.gets("for time\n10 goblet squats @ 16/12 kg\n15 squats")
    await ilse.presses("My version")
    await ilse.hears("What do you have to train with?")
    await ilse.presses("A sturdy chair")
    await ilse.hears("What do you have to train with?")
    await ilse.says("a 10 kg dumbbell")
    await ilse.hears("I've noted: a dumbbell of 10 kg and a chair.")


async def test_a_thing_without_a_weight_is_asked_about(crew, ilse, posted):
    await ilse.presses("My version")
    await ilse.hears("What do you have")
    await ilse.says("a kettlebell and a chair")
    await ilse.hears("How heavy is the kettlebell")
    await ilse.says("as heavy as a dog")
    await ilse.hears("I didn't get that")
    await ilse.says("16")
    await ilse.hears("a kettlebell of 16 kg")


async def test_what_nobody_can_weigh_is_left_out(crew, ilse, posted):
    await ilse.presses("My version")
    await ilse.hears("What do you have")
    await ilse.says("a kettlebell and a chair")
    await ilse.hears("How heavy is the kettlebell")
    await ilse.presses("I can't tell")
    noted = await ilse.hears("I've noted")
    assert "kettlebell" not in noted.text


@pytest.mark.parametrize("words", ["dunno", "couldn't tell you", "beats me, sorry"])
async def test_whoever_cannot_tell_a_weight_goes_on_without_the_thing(crew, ilse, posted, words):
    await ilse.presses("My version")
    await ilse.hears("What do you have")
    await ilse.says("a kettlebell and a chair")
    await ilse.hears("How heavy is the kettlebell")
    await ilse.says(words)
    await ilse.hears("I leave the kettlebell out for now")
    await ilse.hears("anything your body needs to spare")


async def test_who_can_not_tell_a_number_is_not_asked_twice(crew, ilse, posted):
    await ilse.presses("My version")
    await ilse.hears("What do you have")
    await ilse.says("nothing")
    await ilse.hears("anything your body needs to spare")
    await ilse.presses("No, all fine")
    await ilse.hears("What do you weigh")
    await ilse.presses("Skip")
    await ilse.hears("in a row when you're fresh")
    await ilse.says("no idea")
    await ilse.hears("Your version")


async def test_bottles_are_called_bottles(crew, ilse, posted):
    await ilse.presses("My version")
    await ilse.hears("What do you have")
    await ilse.says("two water bottles")
    noted = await ilse.hears("2 water bottles for up to 1.5 kg")
    assert "the usual weight for the water bottle" in noted.text
    assert "jug" not in noted.text


async def test_whoever_has_no_weight_hears_that_a_bag_does(crew, ilse):
    await crew.gets("for time\n12 goblet squats @ 16/12 kg\n10 burpees")
    told = await answers(ilse, "Nothing, just me")
    assert "A bag with bottles or books in it does for the goblet squats, about" in told.text


async def test_a_lifter_reads_how_to_climb_to_the_heavy_sets(crew, bo):
    await crew.gets("5 x 5 back squat @ 80 kg\nrest 3 min")
    told = await answers(bo, "a barbell from 20 to 120 kg in steps of 2.5")
    climb = told.text.split("Then up to the heavy ones")[1].split("\n\n")[0]
    assert "8 back squats (20 kg barbell)" in climb


async def answers(person, things):
    """Answers whatever is asked, `things` by a tap or typed; what a strong person would."""
    await person.presses("My version")
    for _ in range(12):
        message = await person.hears("")
        if "Your version" in message.text:
            return message
        if "What do you have" in message.text and things in message.labels:
            await person.presses(things)
        elif "What do you have" in message.text and message.all_buttons:
            await person.says(things)
        elif "in a row when you're fresh" in message.text:
            await person.says("12")
        elif message.all_buttons:
            await person.presses(message.all_buttons[0].label, on=message)
    raise AssertionError("no version after twelve messages")


async def test_what_is_told_beside_a_yes_and_an_age_is_kept(crew):
    tove = await crew.room.person("Tove")
    await tove.joins(crew.group)
    await tove.opens(await start_link(crew.group))
    await tove.hears("May I keep these notes?")
    await tove.says("yes, and I have asthma")
    await tove.hears("keep in mind: asthma")
    await tove.hears("Are you 18 or older?")
    await tove.says("45, and a dodgy knee")
    await tove.hears("keep in mind: sore knee")
    await tove.hears("Have you lately had any of these")


async def test_whoever_said_no_and_says_yes_later_is_asked_in_full(crew):
    per = await crew.room.person("Per")
    await per.joins(crew.group)
    await per.opens(await start_link(crew.group))
    await per.hears("May I keep these notes?")
    await per.says("nope")
    await per.hears("I keep nothing")
    await per.says("ok yes then, i got 2 x 10kg dbs")
    await per.hears("May I keep these notes?")
