"""Several parts told by name: each is noted, the rest is asked once, and what is of no part is said to be left."""

from tests.acceptance.people import answers_what_is_asked
from tests.acceptance.worlds import world

RUN_AND_STRENGTH = """Tuesday
20 min easy run

3 x 8 lunges
3 x 10 push ups
3x30s plank"""


@world
async def jonas(crew):
    person = await crew.has("Jonas")
    await crew.gets(RUN_AND_STRENGTH)
    await answers_what_is_asked(person)
    return person


async def test_each_part_is_noted_and_the_rest_is_asked_once(crew, jonas):
    await jonas.says("ran 4.1k, lunges 8 8 8, push ups 12 10 10")
    told = await jonas.hears("24 reps")
    assert "32 reps" in told.text
    assert "“ran 4.1k”: no part of this session is scored by that" in told.text
    await jonas.hears("And part 4")
    await jonas.says("plank 45 45 40")
    await jonas.hears("2:10")


async def test_equal_sets_are_no_most_in_a_row(crew, jonas):
    await jonas.says("lunges 8 8 8")
    told = await jonas.hears("24 reps")
    assert "in a row" not in told.text


async def test_whoever_says_that_it_is_wrong_is_asked_which(crew, jonas):
    await jonas.says("lunges 8 8 8, push ups 12 10 10")
    await jonas.hears("And part 4")
    await jonas.says("that's wrong")
    asked = await jonas.hears("Which one isn't right?")
    assert len(asked.labels) == 2


async def test_a_coach_tells_several_peoples_scores_in_one_breath(crew, jonas):
    bo = await crew.has("Bo")
    await crew.gets("Part A\n5 x 5 deadlifts @ 32/24 kg\n\nPart B\n4 rounds for time\n12 squats\n200 m run")
    await crew.coach.says("Jonas 15:10, Bo 14:20 scaled")
    await crew.coach.hears("Noted for Jonas, part 2: 15:10")
    await crew.coach.hears("Noted for Bo, part 2: 14:20")
    assert "14:20" in (await bo.hears("Marit noted your score")).text
