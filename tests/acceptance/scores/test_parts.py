"""A session with two scored parts: each has its score, and how hard it was is asked once, at the end."""

import pytest

from tests.acceptance.people import answers_what_is_asked
from tests.acceptance.worlds import world

TWO_PARTS = """Part A: AMRAP 8
10 push-ups
10 air squats

Part B: max calories in 5 min on the rower"""


@world
async def ilse(crew):
    """Has her version of a session of two scored parts."""
    person = await crew.has("Ilse")
    await crew.gets(TWO_PARTS)
    await answers_what_is_asked(person)
    return person


async def test_how_hard_it_was_is_asked_after_the_last_part_and_once(crew, ilse):
    await ilse.says("6+3")
    await ilse.hears("Noted, part 1: 6 rounds + 3")
    await ilse.hears("And part 2 (Main 2)? Write me that score too.")
    await ilse.hears_nothing()
    await ilse.says("80 cal")
    await ilse.hears("Noted, part 2: 80")
    await ilse.hears("How hard was the whole session")
    await ilse.says("sorry, part 1 was 6+4")
    await ilse.hears("Put right, part 1: 6 rounds + 4")
    await ilse.hears_nothing()


async def test_the_parts_may_be_told_from_the_last_one_on(crew, ilse):
    await ilse.says("part 2: 80 cal")
    await ilse.hears("Noted, part 2")
    await ilse.hears("And part 1 (Main 1)?")
    await ilse.says("6+3")
    await ilse.hears("Noted, part 1: 6 rounds + 3")
    await ilse.hears("How hard was the whole session")


@pytest.mark.parametrize("words", ["", "that's all", "no", "didn't do the second part", "I skipped part B"])
async def test_whoever_did_one_part_only_says_so(crew, ilse, words):
    await ilse.says("6+3")
    asked = await ilse.hears("And part 2")
    await (ilse.says(words) if words else ilse.presses("That was all", on=asked))
    await ilse.hears("How hard was the whole session")
    await ilse.says("8")
    await ilse.hears("Did anything hurt?")
    await ilse.says("no")
    await ilse.hears("Rest well!")


@pytest.mark.parametrize(
    "words",
    [
        "6+3 first part, 80 cals second",
        "80 cals second part and 6+3 first",
        "first: 6+3\nsecond: 80 cals",
        "part A 6+3, part B 80 cal",
        "A: 6+3 B: 80 cal, that was fun",
        "6+3, 80 cals second part",
    ],
)
async def test_both_parts_may_be_told_at_once(crew, ilse, words):
    await ilse.says(words)
    await ilse.hears("Noted, part 1: 6 rounds + 3")
    await ilse.hears("Noted, part 2: 80")
    await ilse.hears("How hard was the whole session")
    board = await crew.group.hears("Scoreboard")
    assert "6 rounds + 3" in board.text
    assert "80" in board.text
    await ilse.hears_nothing()


async def test_both_parts_told_at_once_take_the_place_of_what_was_told_before(crew, ilse):
    await ilse.says("6+3")
    await ilse.hears("And part 2")
    await ilse.says("first 6+4, second 80 cal, my left knee hurts")
    await ilse.hears("Put right, part 1: 6 rounds + 4")
    await ilse.hears("Noted, part 2: 80")
    await ilse.hears("Until you tell me your left knee is fine")
    await ilse.hears("How hard was the whole session")


async def test_a_coach_enters_both_parts_for_somebody(crew, ilse):
    await crew.coach.says("Ilse part A 6+3, part B 80 cal")
    await crew.coach.hears("Noted for Ilse, part 1: 6 rounds + 3")
    await crew.coach.hears("Noted for Ilse, part 2: 80")
    await ilse.hears("Marit noted your score for you")


async def test_an_effort_named_as_one_is_taken_between_the_parts(crew, ilse):
    await ilse.says("6+3")
    await ilse.hears("And part 2")
    await ilse.says("rpe 8")
    await ilse.presses("No", on=await ilse.hears("Did anything hurt?"))
    await ilse.hears("Rest well!")
    await ilse.says("80 cal")
    await ilse.hears("Noted, part 2")
    await ilse.hears_nothing()


async def test_pain_told_with_the_first_part_is_heard_at_once_and_the_second_asked_for(crew, ilse):
    await ilse.says("stopped after 5 rounds, my left wrist hurts")
    await ilse.hears("Noted, part 1: 5 rounds")
    await ilse.hears("Until you tell me your left wrist is fine")
    await ilse.hears("And part 2")
    await ilse.hears_nothing()


THREE_PARTS = """Part 1: Back squat 5x5

Part 2: AMRAP 10
10 push-ups
10 air squats

Part 3: 3 sets of max plank, rest 1 min"""


@world
async def bo(crew):
    """Has his version of a session of three scored parts."""
    person = await crew.has("Bo")
    await crew.gets(THREE_PARTS)
    await answers_what_is_asked(person)
    return person


async def test_three_parts_told_at_once_are_each_noted_once(crew, bo):
    await bo.says("60 kg, 6+3, 40 38 36")
    noted = await bo.hears("Noted, part 1: 60 kg")
    assert noted.text.count("Noted, part") == 3
    assert "Put right" not in noted.text
    assert {f"Part {n}: Not right" for n in (1, 2, 3)} <= set(noted.labels)
    await bo.hears("How hard was the whole session")


async def test_a_number_alone_is_of_the_part_that_was_asked_for(crew, bo):
    await bo.says("p1 60 kg")
    await bo.hears("And part 2")
    await bo.says("6")
    await bo.hears("Noted, part 2: 6 rounds")
    await bo.hears("And part 3")
    await bo.says("that's all")
    await bo.hears("How hard was the whole session")


async def test_a_letter_that_names_another_part_is_asked_about(crew, ilse):
    await ilse.says("A 55kg B 6+8")
    await ilse.hears("Did you mean 6 rounds + 8?")
