"""One adjustable dumbbell, in the athlete's own words: a sensible load, and a reason that is true."""

import pytest

SESSION = "Tuesday\nAMRAP 12\n12 goblet squats @ 24/16 kg\n10 push-ups\n200 m run"


async def version_of(crew, things, in_a_row):
    noor = await crew.has("Noor")
    await crew.gets(SESSION)
    await noor.presses("My version")
    for _ in range(12):
        message = await noor.hears("")
        if "Your version" in message.text:
            return message.text
        if "What do you have" in message.text:
            await noor.says(things)
        elif "What do you weigh" in message.text:
            await noor.says("62")
        elif "two loads" in message.text and message.all_buttons:
            await noor.presses("The second (lighter)", on=message)
        elif "goblet squats" in message.text and "in a row" in message.text:
            await noor.says(in_a_row)
        elif message.all_buttons:
            likely = next(one for one in message.labels if one.startswith(("About", "No, all fine")))
            await noor.presses(likely, on=message)
    raise AssertionError("no version after twelve messages")


@pytest.mark.parametrize(
    "things", ["one adjustable dumbbell, 2.5 to 24 kg", "a dumbbell I can set from 2.5 to 24"]
)
async def test_the_load_follows_what_goes_in_a_row(crew, things):
    version = await version_of(crew, things, "12")
    assert (
        "12 goblet squats (10 kg dumbbell): 16 kg would be heavy for so many in a row, so this is lighter"
        in version
    )


async def test_a_strong_one_gets_the_setting_next_to_what_was_written(crew):
    version = await version_of(crew, "adjustable 2.5-24 kg dumbbell", "25")
    assert "12 goblet squats (15 kg dumbbell): You don't have 16 kg for this" in version


async def test_who_can_not_tell_starts_light_because_nobody_knows(crew):
    version = await version_of(crew, "an adjustable dumbbell up to 24 kg", "no idea")
    assert "I don't know yet how you do with goblet squats" in version
    assert "You don't have" not in version
