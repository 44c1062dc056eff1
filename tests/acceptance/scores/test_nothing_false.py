"""Nothing false stands on the board: no bare weight while somebody is set up, and nothing that is denied."""

from datetime import timedelta

from tests.acceptance.people import answers_what_is_asked
from tests.acceptance.worlds import world

SETS = """Tuesday
5x5 deadlifts

AMRAP 12
10 push-ups
12 air squats"""
NO_SCORE = "No scores yet"


@world
async def mats(crew):
    """Set up, with a session posted, and the first question about it open."""
    person = await crew.has("Mats")
    await crew.gets(SETS)
    await person.presses("My version")
    await person.hears("What do you have to train with?")
    return person


@world
async def ilse(crew):
    person = await crew.has("Ilse")
    await crew.gets(SETS)
    await answers_what_is_asked(person)
    return person


async def test_a_bare_weight_is_no_score_while_somebody_is_set_up(crew, mats):
    for words in (
        "78 kilo",
        "24 kg",
        "171 lb",
        "is 78 kg",
        "78",
        "20 reps",
        "175 cm",
        "3 times a week",
        "8 8 8",
    ):
        await mats.says(words)
        await mats.hears("")
    await mats.says("/board")
    await mats.hears(NO_SCORE)


async def test_a_weight_that_may_be_several_things_is_asked_about(crew, mats):
    await mats.says("24 kg")
    asked = await mats.hears("Is 24 kg something you train with, or a score?")
    assert asked.labels == ["Something I train with", "A score"]
    await mats.presses("A score", on=asked)
    await mats.hears("Noted, part 1: 24 kg")


DENIALS = (
    "no i not lift 20, this is my weight body",
    "I didn't lift 20 kg",
    "i no lift 20",
    "20 is not my score",
    "it's not 20, that is my weight",
    "wrong, i weigh 20",
    "never did 20 kg",
)


async def test_who_denies_a_score_has_it_taken_back(crew, ilse):
    for words in DENIALS:
        await ilse.says("part 1: 20 kg")
        await ilse.hears("part 1: 20 kg")
        await ilse.says(words)
        await ilse.hears("Taken off the board")
    await ilse.says("/board")
    await ilse.hears(NO_SCORE)


async def test_what_was_noted_last_goes_where_it_is_only_said_to_be_wrong(crew, ilse):
    for words in ("that's wrong", "not me"):
        await ilse.says("7+12")
        await ilse.hears("part 2: 7 rounds + 12")
        await ilse.says(words)
        await ilse.hears("Taken off the board")


async def test_what_is_denied_is_never_noted(crew, ilse):
    for words in DENIALS:
        await ilse.says(words)
        await ilse.hears("")
    await ilse.says("/board")
    await ilse.hears(NO_SCORE)


async def test_a_coach_denies_it_for_somebody(crew, ilse):
    for words in ("Ilse didn't lift 20 kg, delete that score", "Ilse never did 20 kg"):
        await ilse.says("part 1: 20 kg")
        await ilse.hears("part 1: 20 kg")
        await crew.coach.says(words)
        await crew.coach.hears("not counted by Marit")
    await crew.coach.says("/board")
    await crew.coach.hears(NO_SCORE)


async def test_what_was_not_done_beside_a_score_denies_nothing(crew, ilse):
    await ilse.says("didn't finish the last round, 7+10")
    await ilse.hears("7 rounds + 10")


async def test_the_load_of_a_score_that_is_taken_back_teaches_nothing(crew, ilse):
    await ilse.says("part 1: 20 kg")
    taught = await ilse.hears("I've also kept that you used 20 kg")
    await ilse.says("I didn't lift 20")
    await ilse.hears("Taken off the board")
    await ilse.presses("Not right: ", on=taught)
    await ilse.hears_nothing()


async def test_what_was_asked_about_another_day_is_not_asked_again_behind_help(crew, ilse):
    await ilse.says("part 1: 20 kg")
    await ilse.presses("Part 1: Not right", on=await ilse.hears("part 1: 20 kg"))
    await ilse.hears("60 kg")
    await crew.room.travels(timedelta(days=2))
    await ilse.says("/help")
    await ilse.hears("Here's what you can send me")
    await ilse.hears_nothing()
