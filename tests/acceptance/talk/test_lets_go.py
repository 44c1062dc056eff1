"""A question that is open lets go: what is told beside it is done, and it is asked once more, and no more."""

from tests.acceptance.people import answers_what_is_asked
from tests.acceptance.worlds import world

PARTS = """Tuesday
5x5 deadlifts

AMRAP 12
10 push-ups
12 goblet squats @ 24/16 kg"""
WHICH = "Which part is that score for"


@world
async def tam(crew):
    person = await crew.has("Tam")
    await crew.gets(PARTS)
    await answers_what_is_asked(person)
    return person


async def test_an_effort_is_kept_while_it_is_asked_which_part_a_score_is_of(crew, tam):
    await tam.says("13:04")
    await tam.hears(WHICH)
    await tam.says("rpe 8")
    await tam.hears("Did anything hurt?")
    await tam.hears(WHICH)


async def test_so_is_one_in_other_words(crew, tam):
    await tam.says("13:04")
    await tam.hears(WHICH)
    await tam.says("felt good though! maybe a 6")
    await tam.hears("Did anything hurt?")


async def test_what_was_told_first_waits_for_its_part_and_goes_in_the_end(crew, tam):
    await tam.says("13:04")
    await tam.hears(WHICH)
    await tam.says("24 felt heavy, went back to 16 after round 2")
    await tam.hears(WHICH)
    await tam.says("24 felt heavy, went back to 16 after round 2")
    await tam.hears("I don't know which part “13:04” belongs to")


async def test_a_part_is_named_by_a_tap_or_alone(crew, tam):
    await tam.says("13:04")
    asked = await tam.hears(WHICH)
    await tam.presses("Part 2", on=asked)
    await tam.hears("How many rounds and repetitions did you do?")


async def test_equipment_is_noted_and_the_question_comes_once_more_only(crew, tam):
    await tam.says("13:04")
    await tam.hears(WHICH)
    await tam.says("I've got a rower now too and 2 24kg kettlebells")
    await tam.hears("a rowing machine")
    await tam.hears(WHICH)
    await tam.says("I sold the rower")
    await tam.hears("rowing machine")
    await tam.hears_nothing()


async def test_an_effort_and_what_niggled_are_both_kept_before_any_score(crew, tam):
    await tam.says("rpe 8, shoulder niggled a bit on the last set")
    told = await tam.hears("Until you tell me your shoulder is fine")
    assert "I didn't get" not in told.text
    await tam.hears("And part 1")


async def test_of_a_movement_that_is_not_there_nothing_is_told(crew, tam):
    await tam.says("how heavy should I go on swings")
    await tam.hears("There's no swing in your version")


async def test_an_old_key_of_a_question_that_was_answered_does_nothing(crew):
    tam = await crew.has("Tam")
    await crew.gets(PARTS)
    await tam.presses("My version")
    await tam.presses("Nothing, just me", on=await tam.hears("What do you have to train with?"))
    asked = await tam.hears("needs to spare?")
    await tam.says("my left knee")
    await tam.hears("sore knee")
    await tam.presses("No, all fine", on=asked)
    await tam.sees_toast("You've answered that already")
