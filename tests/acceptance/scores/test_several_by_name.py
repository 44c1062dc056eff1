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
    await jonas.hears("And part 3")
    await jonas.says("plank 45 45 40")
    await jonas.hears("2:10")


async def test_equal_sets_are_no_most_in_a_row(crew, jonas):
    await jonas.says("lunges 8 8 8")
    told = await jonas.hears("24 reps")
    assert "in a row" not in told.text


async def test_whoever_says_that_it_is_wrong_is_asked_which(crew, jonas):
    await jonas.says("lunges 8 8 8, push ups 12 10 10")
    await jonas.hears("And part 3")
    await jonas.says("that's wrong")
    asked = await jonas.hears("Which one isn't right?")
    assert len(asked.labels) == 2


AMRAP = "Part A\n5 x 5 deadlifts @ 32/24 kg\n\nPart B\n15 min amrap\n12 squats\n200 m run"


@world
async def bo(crew):
    person = await crew.has("Bo")
    await crew.has("Jonas")
    await crew.gets(AMRAP)
    return person


async def test_the_scores_of_several_are_noted_on_one_screen_with_everybody_who_is_named(crew, bo):
    await crew.coach.says("Jonas 4+3 scaled, Bo 3+2, Tove 5 and Bo 3")
    told = await crew.coach.hears("Noted for Monday's session")
    assert "Jonas, part 2: 4 rounds + 3, scaled" in told.text
    assert "Bo, part 2: 3 rounds + 2" in told.text
    assert "Bo, part 2: 3 rounds instead of 3 rounds + 2" in told.text
    assert "Tove: I know nobody of that name in Harbour crew" in told.text
    assert "3 rounds + 2" in (await bo.hears("Marit noted your score")).text


async def test_what_takes_the_place_of_earlier_scores_is_one_tap_for_all(crew, bo):
    await crew.coach.says("Jonas 4+3, Bo 3+2")
    await crew.coach.hears("Noted for Monday's session")
    await crew.coach.says("Jonas 5+1, Bo 4+2")
    asked = await crew.coach.hears("Jonas, part 2: 5 rounds + 1 instead of 4 rounds + 3")
    assert "Bo, part 2: 4 rounds + 2 instead of 3 rounds + 2" in asked.text
    await crew.coach.presses("Yes, change both", on=asked)
    noted = await crew.coach.hears("Noted for Monday's session")
    assert "5 rounds + 1" in noted.text
    assert "4 rounds + 2" in noted.text


async def test_a_score_without_a_number_is_named_and_says_how(crew, bo):
    await crew.coach.says("Jonas DNF, Bo 3+2")
    assert "Jonas didn't finish: how far did they get?" in (await crew.coach.hears("Not noted")).text


async def test_a_score_is_of_whom_it_stands_with(crew, bo):
    await crew.coach.says("Jonas did great today, Bo 3+2")
    await crew.coach.hears("Noted for Bo")


async def test_an_order_beside_scores_is_carried_out_too(crew, bo):
    await crew.coach.says("Jonas 4+3, Bo 3+2 and no burpees for Bo this week")
    await crew.coach.hears("Noted for Monday's session")
    await crew.coach.hears("Bo, until Sunday 8 March: no burpees")


async def test_nobody_who_is_unknown_is_left_out(crew, bo):
    await crew.coach.says("Tove DNF, Finn 4+1 scaled")
    await crew.coach.hears("I know nobody called Tove or Finn in Harbour crew")


async def test_which_of_two_scores_goes_is_asked(crew, bo):
    await crew.coach.says("Bo 3+2")
    await crew.coach.hears("Noted for Bo")
    await crew.coach.says("Bo 60 kg")
    await crew.coach.hears("Noted for Bo, part 1")
    await crew.coach.says("delete Bos score")
    asked = await crew.coach.hears("Bo has 2 scores there")
    await crew.coach.presses("Both", on=asked)
    await bo.hears("off the board for now")
    await bo.hears("off the board for now")
