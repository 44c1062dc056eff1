"""Somebody names the day of the class they come to, or can't come to."""

import pytest


@pytest.fixture
async def two_classes(crew):
    for day in ("Tuesdays", "Thursdays"):
        await crew.coach.says(f"class {day} 18:30, 45 min, https://example.org/room")
        await crew.coach.hears("Here's how I read your class")
        await crew.coach.presses("Yes")
        await crew.coach.hears("Done")
    return crew


async def test_whoever_names_a_day_is_in_for_the_class_of_that_day(two_classes):
    ilse = await two_classes.has("Ilse")
    await ilse.says("sign me up for thursday")
    told = await ilse.hears("You're in")
    assert "Thu" in told.text
    await ilse.says("can't make thursday after all")
    told = await ilse.hears("you're not in for")
    assert "Thu" in told.text


async def test_without_a_day_the_dates_are_shown(two_classes):
    ilse = await two_classes.has("Ilse")
    await ilse.says("sign me up for class")
    await ilse.hears("Live classes")
