"""A pasted week is a session for each of its days. Here it is Monday noon."""

WEEK = """Tue 3rd
20 min easy run
3x10 squats
Wed - off, sleep
Thu 5th
5 x 400 m run, 90 s rest"""


async def heard_of(crew, text):
    await crew.coach.says(text)
    return await crew.coach.hears("one for each")


async def test_each_day_is_a_session_with_its_own_day_to_post(crew):
    told = await heard_of(crew, WEEK)
    assert "2 sessions" in told.text
    assert "Wed - off, sleep" in told.text
    read = await crew.coach.hears("400 m run")
    assert "Post Thu 06:00" in read.labels


async def test_a_day_that_is_pasted_again_is_the_next_revision_of_that_day(crew):
    await heard_of(crew, WEEK)
    await crew.coach.hears("400 m run")
    await crew.coach.says("Tue 3rd\n30 min easy run\n3x12 squats")
    read = await crew.coach.hears("30 min run")
    assert "Post Tue 06:00" in read.labels


async def test_a_session_of_one_day_is_one(crew):
    await crew.coach.says("Thu 5th\n5 x 400 m run, 90 s rest")
    read = await crew.coach.hears("Here's how I read it")
    assert "one for each" not in read.text
