"""The safety questions: each end of them, slips, stop signs, and words from a doctor."""

from datetime import timedelta

import pytest

from tests.acceptance.people import (
    HEALTHY_AND_ACTIVE,
    SCREENING,
    answers_screening,
    consents,
    start_link,
)

SYMPTOMS = ("Yes", "Yes")
DISEASE_AND_INACTIVE = ("Yes", "No", "Yes", "No")
DISEASE_AND_ACTIVE = ("Yes", "No", "Yes", "Yes")
HEALTHY_AND_INACTIVE = ("Yes", "No", "No", "No")


@pytest.mark.parametrize(
    ("answers", "told"),
    [
        (("No",), "only work with adults"),
        (SYMPTOMS, "see a doctor about that before you train"),
        (DISEASE_AND_INACTIVE, "ask your doctor before you start"),
        (DISEASE_AND_ACTIVE, "moderate effort"),
        (HEALTHY_AND_INACTIVE, "start light to moderate"),
    ],
)
async def test_each_end_of_the_screening_is_told_in_plain_words(crew, answers, told):
    bo = await crew.room.person("Bo")
    await bo.joins(crew.group)
    await bo.opens(await start_link(crew.group))
    await consents(bo)
    await answers_screening(bo, answers)
    await bo.hears(told)


async def test_an_age_is_an_answer_and_a_slip_can_be_put_right(crew):
    bo = await crew.room.person("Bo")
    await bo.joins(crew.group)
    await bo.opens(await start_link(crew.group))
    await consents(bo)
    await bo.presses("No", on=await bo.hears("18 or older"))
    await bo.hears("only work with adults")
    await bo.says("oh, I pressed wrong")
    await bo.hears("18 or older")
    await bo.says("I'm 27")
    await bo.hears("lately had any of these")


async def test_with_symptoms_there_is_no_session_until_cleared(crew, posted):
    bo = await crew.room.person("Bo")
    await bo.joins(crew.group)
    await bo.opens(await start_link(crew.group))
    await consents(bo)
    await answers_screening(bo, SYMPTOMS)
    await bo.hears("see a doctor")
    await bo.says("/today")
    await bo.hears("no session for you yet")
    await bo.presses("My doctor has cleared me")
    await bo.hears("start again lighter")
    await bo.hears("What do you have to train with?")


@pytest.mark.parametrize(
    ("words", "answer"),
    [
        ("my doctor said its fine to train", "start again lighter"),
        ("I'll train when my doctor says it's fine", "no session for you yet"),
    ],
)
async def test_whoever_was_sent_to_a_doctor_first_says_in_words_that_they_are_cleared(
    crew, posted, words, answer
):
    bo = await crew.room.person("Bo")
    await bo.joins(crew.group)
    await bo.opens(await start_link(crew.group))
    await consents(bo)
    await answers_screening(bo, ("Yes", "No", "Yes", "No"))
    await bo.hears("ask your doctor before you start")
    await bo.says(words)
    await bo.says("/today")
    await bo.hears(answer)


async def test_who_is_not_adult_can_not_be_cleared_by_a_press(crew, posted):
    kid = await crew.room.person("Kid")
    await kid.joins(crew.group)
    await kid.opens(await start_link(crew.group))
    await consents(kid)
    await answers_screening(kid, ("No",))
    told = await kid.hears("only work with adults")
    await kid.says("/today")
    await kid.hears("only work with adults")
    await kid.presses_data(told, "cl:1")
    await kid.hears("only work with adults")


async def test_the_screening_comes_again_after_a_year(crew, ilse):
    await crew.room.travels(timedelta(days=366))
    await crew.gets()
    await ilse.presses("My version")
    await ilse.hears("18 or older")


async def test_yes_and_no_can_be_typed(crew):
    bo = await crew.room.person("Bo")
    await bo.joins(crew.group)
    await bo.opens(await start_link(crew.group))
    await bo.hears("May I keep these notes?")
    await bo.says("what is this?")
    await bo.hears("May I keep these notes?")
    await bo.says("sure")
    for question, answer in zip(SCREENING, ("yes im 30", "no", "nope", "yes"), strict=True):
        await bo.hears(question)
        await bo.says(answer)
    await bo.hears("good to go")


async def test_a_doubt_is_answered_with_the_advice_to_say_yes(crew):
    bo = await crew.room.person("Bo")
    await bo.joins(crew.group)
    await bo.opens(await start_link(crew.group))
    await consents(bo)
    await answers_screening(bo, ("Yes",))
    await bo.hears("lately had any of these")
    await bo.says("not sure, does it count if I had a stitch in my side?")
    await bo.hears("If you're in doubt, tap Yes")


async def test_an_interrupted_screening_goes_on_where_it_was(crew, posted):
    bo = await crew.room.person("Bo")
    await bo.joins(crew.group)
    await bo.opens(await start_link(crew.group))
    await consents(bo)
    await answers_screening(bo, ("Yes", "No"))
    await bo.hears("Has a doctor ever")
    await bo.presses("My version")
    await bo.hears("Has a doctor ever")


async def test_a_stop_sign_told_at_any_time_comes_first(crew, ilse, posted):
    await ilse.says("my chest hurts and I feel dizzy")
    await ilse.hears("Stop now and sit down")
    await ilse.says("/today")
    await ilse.hears("no session for you yet")


async def test_what_nobody_here_knows_is_never_brushed_aside(crew, ilse, posted):
    await ilse.presses("My version")
    await ilse.hears("What do you have")
    await ilse.says("a 16 kg kettlebell")
    await ilse.hears("Which is meant for you")
    await ilse.says("lighter please")
    await ilse.hears("anything your body needs to spare")
    await ilse.says("zorbitis of the flank")
    await ilse.hears("ask them before you train")
    await ilse.presses("Go gentle with me")
    await ilse.hears("What do you weigh")
    await ilse.says("skip")


async def test_who_is_cleared_before_the_screening_was_through_answers_the_rest(crew, posted):
    bo = await crew.room.person("Bo")
    await bo.joins(crew.group)
    await bo.opens(await start_link(crew.group))
    await consents(bo)
    await bo.hears("Are you 18 or older?")
    await bo.says("I get a bit dizzy when I stand up sometimes")
    await bo.hears("emergency")
    await bo.presses("My doctor has cleared me")
    await bo.hears("Are you 18 or older?")
    await bo.says("yes")
    await bo.hears("Has a doctor ever")
    await bo.says("no")
    await bo.hears("Over the last three months")
    await bo.says("2-3 times a week")
    await bo.hears("If you're in doubt, tap No")
    await bo.says("yes")
    await bo.hears("start again lighter than before")


async def test_a_failing_heart_waits_for_a_doctors_word_and_is_told_how_to_go_on(crew, bo):
    await crew.gets("for time\n400 m run\n10 burpees\n15 squats")
    await bo.presses("My version")
    await bo.hears("What do you have")
    await bo.presses("Nothing, just me")
    await bo.hears("anything your body needs to spare")
    await bo.says("heart failure")
    await bo.hears("change what you spare under /me")


async def test_a_question_from_days_ago_changes_nobody(crew):
    bo = await crew.room.person("Bo")
    await bo.joins(crew.group)
    await bo.opens(await start_link(crew.group))
    await consents(bo)
    await answers_screening(bo, ("Yes", "No", "No"))
    first = await bo.hears("last three months")
    await bo.says("maybe")
    await bo.presses("Yes", on=await bo.hears("last three months"))
    await bo.hears("good to go")
    await crew.room.travels(timedelta(days=6))
    await bo.presses("No", on=first)
    await bo.sees_toast("before something changed")


async def test_a_slip_in_the_safety_questions_is_put_right_by_asking_them_anew(crew):
    ilse = await crew.room.person("Ilse")
    await ilse.joins(crew.group)
    await ilse.opens(await start_link(crew.group))
    await consents(ilse)
    await answers_screening(ilse, ("Yes", "No", "No", "No"))
    await ilse.hears("start light to moderate")
    await ilse.says("I train 4x a week actually, answered the last one wrong")
    for question, answer in zip(SCREENING[1:], HEALTHY_AND_ACTIVE[1:], strict=True):
        await ilse.presses(answer, on=await ilse.hears(question))
    await ilse.hears("good to go")


async def test_other_answers_let_nobody_in_who_was_told_to_see_a_doctor(crew):
    ilse = await crew.room.person("Ilse")
    await ilse.joins(crew.group)
    await ilse.opens(await start_link(crew.group))
    await consents(ilse)
    await answers_screening(ilse, ("Yes", "Yes"))
    await ilse.hears("see a doctor")
    await ilse.says("I answered the last one wrong")
    await ilse.hears("Have you been cleared since?")


async def test_what_they_have_is_kept_while_the_safety_questions_are_asked(crew):
    ilse = await crew.room.person("Ilse")
    await ilse.joins(crew.group)
    await ilse.opens(await start_link(crew.group))
    await consents(ilse)
    await ilse.hears("18 or older")
    await ilse.says("a 16 kg kettlebell and stairs")
    await ilse.hears("a kettlebell of 16 kg and stairs")
    await ilse.hears("18 or older")


async def test_an_age_that_was_a_slip_is_put_right(crew):
    ilse = await crew.has("Ilse")
    await ilse.says("i'm 16")
    await ilse.hears("I can only work with adults")
    await ilse.says("sorry i meant 61")
    await ilse.hears("18 or older")


async def asked_for_signs(crew):
    """Whoever just told their age, and was asked about the signs."""
    alva = await crew.room.person("Alva")
    await alva.joins(crew.group)
    await alva.opens(await start_link(crew.group))
    await consents(alva)
    await alva.hears("18 or older")
    await alva.says("im 54 and havent done anything since school")
    await alva.hears("lately had any of these")
    return alva


async def test_out_of_breath_on_the_stairs_is_asked_about_once_more(crew):
    alva = await asked_for_signs(crew)
    await alva.says("not really, bit out of breath on the stairs")
    await alva.hears("Out of breath at rest, lying down, from one slow flight")
    await alva.says("no, nothing like that")
    await alva.hears("Has a doctor ever")


async def test_a_true_sign_stops_and_the_age_is_not_asked_again(crew):
    alva = await asked_for_signs(crew)
    await alva.says("chest hurts a bit sometimes")
    await alva.presses("You got me wrong", on=await alva.hears("Stop now and sit down"))
    await alva.hears("One question, to be sure")
    await alva.says("no, nothing like that")
    await alva.hears("Has a doctor ever")


async def test_a_no_by_mistake_is_put_right_in_words(crew):
    bea = await crew.room.person("Bea")
    await bea.joins(crew.group)
    await bea.opens(await start_link(crew.group))
    await consents(bea)
    await answers_screening(bea, ("No",))
    await bea.hears("only work with adults")
    await bea.says("sorry I am an adult, I'm 54")
    await bea.hears("18 or older")
    await bea.says("i pressed the wrong thing")
    asked = await bea.hears("I train adults only")
    assert "in doubt" not in asked.text
    await bea.says("yes")
    await bea.hears("lately had any of these")
