"""A session is for the day that the coach wrote above it. Here it is Monday noon."""

from tests.acceptance.people import answers_what_is_asked

BOARD = "\nAMRAP 12\n10 push-ups\n12 air squats"


async def offered(crew, title):
    await crew.coach.says(f"{title}{BOARD}")
    read = await crew.coach.hears("Here's how I read it")
    return [label for label in read.labels if label.startswith("Post ")]


async def test_a_title_that_begins_with_a_weekday_is_offered_for_that_day(crew):
    assert await offered(crew, "Saturday on the quay") == ["Post now", "Post Sat 06:00"]


async def test_any_other_title_is_offered_for_the_next_morning(crew):
    assert await offered(crew, "Long one, as every Saturday") == ["Post now", "Post Tue 06:00"]


async def test_who_is_needed_is_told_by_the_day_of_each_session(crew, ilse, posted):
    await answers_what_is_asked(ilse)
    await crew.coach.says("hold Ilse for my OK")
    await crew.coach.hears("From now on I show you")
    assert await offered(crew, "Wednesday") == ["Post now", "Post Wed 06:00"]
    await crew.coach.presses("Post Wed 06:00", on=await crew.coach.last_message)
    await crew.coach.hears("I'll post")
    assert await offered(crew, "Saturday") == ["Post now", "Post Sat 06:00"]
    await crew.coach.says("who needs me?")
    needing = await crew.coach.hears("These people need you")
    assert needing.labels == ["Ilse", "Who needs you Saturday"]
    await crew.coach.presses("Who needs you Saturday", on=needing)
    assert "Saturday, not posted yet" in (await crew.coach.hears("These people need you")).text


async def test_a_morning_that_has_a_session_is_not_offered_again(crew):
    assert await offered(crew, "Quay day") == ["Post now", "Post Tue 06:00"]
    await crew.coach.presses("Post Tue 06:00", on=await crew.coach.last_message)
    await crew.coach.hears("I'll post")
    assert await offered(crew, "Engine") == ["Post now", "Post Wed 06:00"]


async def test_the_hour_that_was_chosen_last_is_offered_from_then_on(crew):
    await offered(crew, "Quay day")
    await crew.coach.says("post it tomorrow at 18:00")
    await crew.coach.hears("I'll post “Quay day” to Harbour crew on Tuesday, 3 March at 18:00.")
    assert await offered(crew, "Engine") == ["Post now", "Post Mon 18:00"]
    assert await offered(crew, "Saturday on the quay") == ["Post now", "Post Sat 18:00"]


async def test_a_second_session_of_a_day_is_said(crew):
    await offered(crew, "Quay day")
    await crew.coach.presses("Post Tue 06:00", on=await crew.coach.last_message)
    await crew.coach.hears("I'll post")
    await offered(crew, "Engine")
    await crew.coach.says("post it tomorrow at 7")
    told = await crew.coach.hears("I'll post “Engine” to Harbour crew on Tuesday, 3 March at 07:00.")
    assert "Another goes out that day too: “Quay day”." in told.text


async def test_what_is_posted_on_another_day_than_it_says_is_told_for_which_it_counts(crew):
    await crew.coach.says("Thursday test\nAMRAP 8\n10 push-ups\n12 sit-ups")
    await crew.coach.hears("Here's how I read it")
    await crew.coach.says("post it now")
    await crew.coach.hears("It says Thursday on top, and counts for today, Monday.")


async def test_work_that_nobody_would_get_is_asked_about_before_it_has_its_time(crew):
    await crew.coach.says("AMRAP 8\n10 push-ups\n10 wobblehops")
    await crew.coach.hears("Here's how I read it")
    await crew.coach.says("post it tomorrow at 7")
    await crew.coach.hears("10 wobblehops”")
    await crew.coach.presses("Post without them")
    await crew.coach.hears("on Tuesday, 3 March at 07:00")
