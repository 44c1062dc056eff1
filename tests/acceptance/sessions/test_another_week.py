"""What is written for a date goes out on that date, at the hour that was said. Here it is Monday, 2 March, noon."""

import pytest

BOARD = "\nAMRAP 12\n10 push-ups\n12 air squats"


async def drafted(crew, title):
    await crew.coach.says(f"{title}{BOARD}")
    return await crew.coach.hears("Here's how I read it")


async def test_a_title_of_another_week_is_offered_with_its_date(crew):
    assert "Post Wed 11 Mar 06:00" in (await drafted(crew, "Wed 11th")).labels


@pytest.mark.parametrize("words", ["post wed at 6pm", "post it at 6pm", "post it on wed 11th at 18:00"])
async def test_its_weekday_is_that_of_its_date(crew, words):
    await drafted(crew, "Wed 11th")
    await crew.coach.says(words)
    await crew.coach.hears("on Wednesday, 11 March at 18:00")


async def test_this_wednesday_and_tomorrow_are_what_they_say(crew):
    await drafted(crew, "Wed 11th")
    await crew.coach.says("post it this wed at 6pm")
    await crew.coach.hears("on Wednesday, 4 March at 18:00")
    await drafted(crew, "Wed 11th")
    await crew.coach.says("post it tomorrow at 6pm")
    await crew.coach.hears("on Tuesday, 3 March at 18:00")


async def test_of_two_wednesdays_the_nearer_is_meant(crew):
    await drafted(crew, "Wed 11th")
    await drafted(crew, "Wed 4th")
    await crew.coach.says("post wed at 6pm")
    await crew.coach.hears("on Wednesday, 4 March at 18:00")


@pytest.mark.parametrize(
    "hour", ["530pm", "5.30 in the evening", "1730", "5.30pm", "17.30", "half past five pm"]
)
async def test_an_hour_is_read_however_it_is_typed(crew, hour):
    await drafted(crew, "Thursday")
    await crew.coach.says(f"post it thurs {hour}")
    await crew.coach.hears("on Thursday, 5 March at 17:30")


async def test_an_hour_may_be_put_right(crew):
    await drafted(crew, "Thursday")
    await crew.coach.says("post it thurs at 5:30")
    await crew.coach.hears("at 05:30")
    await crew.coach.says("no 5.30 in the evening!!")
    await crew.coach.hears("on Thursday, 5 March at 17:30")


@pytest.mark.parametrize("hour", ["599pm", "late evening"])
async def test_an_hour_that_is_not_understood_is_asked(crew, hour):
    await drafted(crew, "Thursday")
    await crew.coach.says(f"post it thurs {hour}")
    await crew.coach.hears("When shall I post “Thursday”?")


async def test_what_is_coming_names_its_date(crew):
    await drafted(crew, "Wed 11th")
    await crew.coach.says("post wed at 6pm")
    await crew.coach.hears("I'll post")
    await crew.coach.says("what's scheduled?")
    await crew.coach.hears("Wednesday, 11 March at 18:00")
