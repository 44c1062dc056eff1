"""What a session comes to for a group: in the read-back, on asking, and for a change that isn't made yet."""

from tests.acceptance.people import answers_what_is_asked
from tests.acceptance.worlds import world

RUN = "Tuesday\n5 x 400 m run, rest 2 min"


@world
async def two(crew):
    """Ilse and Bo, of whom enough is known."""
    people = [await crew.has(name) for name in ("Ilse", "Bo")]
    await crew.gets("Monday\nAMRAP 10\n10 push-ups\n15 air squats")
    for one in people:
        await answers_what_is_asked(one)
    return people


async def test_a_draft_says_what_it_comes_to(crew, two):
    await crew.coach.says(RUN)
    assert "I'd expect" in (await crew.coach.hears("Here's how I read it")).text


async def test_a_coach_asks_how_long_it_takes_them(crew, two):
    await crew.gets(RUN)
    await crew.coach.says("how long will it take them?")
    told = await crew.coach.hears("What I'd expect")
    assert "Ilse: about" in told.text
    assert "Bo: about" in told.text


async def test_how_long_is_asked_of_what_is_about_to_be_posted(crew, two):
    await crew.coach.says(RUN)
    await crew.coach.hears("Here's how I read it")
    await crew.coach.says("how long will it take them?")
    assert "Ilse: about" in (await crew.coach.hears("What I'd expect")).text


async def test_what_if_tells_the_difference_and_changes_nothing(crew, two):
    await crew.coach.says(RUN)
    draft = await crew.coach.hears("Here's how I read it")
    await crew.coach.says("what if I made the run 200 m?")
    told = await crew.coach.hears("What that would do")
    assert "Ilse: " in told.text
    assert "(now " in told.text
    assert "Nothing is changed yet" in told.text
    assert "400 m run" in draft.text


async def test_what_takes_longer_than_any_class_is_doubted(crew, two):
    await crew.coach.says("Tuesday\n3 rounds for time\n5 km run\n10 squats")
    assert "please check how often" in (await crew.coach.hears("Here's how I read it")).text


async def test_what_takes_as_long_as_usual_is_not(crew, two):
    await crew.coach.says("Tuesday\n3 rounds for time\n400 m run\n10 squats")
    assert "please check" not in (await crew.coach.hears("Here's how I read it")).text


async def test_a_coach_asks_how_a_draft_lands_and_nothing_changes(crew, two):
    await crew.coach.says(RUN)
    read = await crew.coach.hears("Here's how I read it")
    await crew.coach.says("how does it land?")
    told = await crew.coach.hears("How it lands on your people")
    assert told.message_id != read.message_id
    assert not told.labels
