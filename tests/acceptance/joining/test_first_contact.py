"""An athlete's way in: consent, screening, the questions of this session, the version."""

from datetime import timedelta

import pytest

from tests.acceptance.people import (
    HEALTHY_AND_ACTIVE,
    SCREENING,
    answers_screening,
    answers_what_is_asked,
    consents,
    passes_screening,
    start_link,
)

SYMPTOMS = ("Yes", "Yes")
DISEASE_AND_INACTIVE = ("Yes", "No", "Yes", "No")
DISEASE_AND_ACTIVE = ("Yes", "No", "Yes", "Yes")
HEALTHY_AND_INACTIVE = ("Yes", "No", "No", "No")


async def test_from_the_post_to_my_version(crew, posted):
    ilse = await crew.room.person("Ilse")
    await ilse.joins(crew.group)
    await ilse.presses("My version")
    await consents(ilse)
    await answers_screening(ilse, HEALTHY_AND_ACTIVE)
    await ilse.hears("What do you have to train with?")
    await ilse.says("one 10 kg dumbbell and a chair")
    await ilse.hears("I've noted: a dumbbell of 10 kg and a chair.")


async def test_at_most_six_taps_and_two_typed_answers(crew, ilse, posted):
    taps, typed = await answers_what_is_asked(ilse)
    assert taps <= 6
    assert typed <= 2
    assert "Your version" in (await ilse.last_message).text


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


async def test_without_consent_nothing_is_kept(crew, posted):
    bo = await crew.room.person("Bo")
    await bo.joins(crew.group)
    await bo.presses("My version")
    await bo.hears("May I keep these notes?")
    await bo.presses("No")
    await bo.hears("I keep nothing")
    await bo.presses("Yes, keep my notes")
    await bo.hears("18 or older")


async def test_a_score_told_instead_of_an_answer_counts_and_the_question_stays(crew, posted):
    bo = await crew.room.person("Bo")
    await bo.joins(crew.group)
    await bo.presses("My version")
    await bo.hears("May I keep these notes?")
    await bo.says("7+12")
    await bo.hears("I keep nothing of you without your yes")
    await bo.says("yes")
    await bo.hears("18 or older")
    await bo.says("I'm 27")
    await bo.hears("lately had any of these")
    await bo.says("7+12")
    await bo.hears("Noted: 7 rounds + 12")
    await bo.hears("lately had any of these")
    await crew.group.hears("7 rounds + 12")
    await bo.says("sorry, it was 7+10")
    await bo.hears("Put right: 7 rounds + 10")
    await bo.hears("lately had any of these")
    await bo.says("7 rounds + 11")
    await bo.presses("Yes, change it", on=await bo.hears("Shall it be 7 rounds + 11 instead?"))
    await bo.hears("Put right: 7 rounds + 11")


async def test_a_score_of_nothing_is_no_answer_either(crew):
    bo = await crew.room.person("Bo")
    await bo.joins(crew.group)
    await bo.opens(await start_link(crew.group))
    await bo.hears("May I keep these notes?")
    await bo.says("7+12")
    await bo.hears("Nothing is posted yet")
    await bo.hears("May I keep these notes?")


async def test_somebody_from_outside_the_group_gets_nothing(crew, posted):
    link = await start_link(crew.group)
    stranger = await crew.room.person("Stranger")
    await stranger.opens(link)
    await stranger.hears("for members of its group")


async def test_joining_before_anything_is_posted_is_fine(crew):
    ilse = await crew.room.person("Ilse")
    await ilse.joins(crew.group)
    await passes_screening(ilse, await start_link(crew.group))
    await ilse.hears("Nothing is posted yet")


async def test_an_answer_that_cannot_be_read_is_asked_again_kindly(crew, ilse, posted):
    await ilse.presses("My version")
    await ilse.hears("What do you have to train with?")
    await ilse.says("flurbs and gribbles")
    await ilse.hears("I didn't get “flurbs and gribbles”")
    await ilse.presses("Nothing, just me")
    await ilse.hears("?")


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


async def test_equipment_in_pounds_is_answered_in_pounds(crew, ilse, posted):
    await ilse.presses("My version")
    await ilse.hears("What do you have")
    await ilse.says("two 20 lb dumbbells")
    await ilse.hears("20 lb")


async def test_a_version_that_needs_the_coach_waits_for_their_ok(crew):
    lene = await crew.has("Lene")
    await crew.gets()
    await lene.presses("My version")
    await lene.hears("What do you have")
    await lene.presses("Nothing, just me")
    await lene.hears("anything your body needs to spare")
    await lene.says("pregnant")
    await lene.hears("Which week of your pregnancy")
    await lene.presses("Week 14 to 27, no word yet")
    await lene.hears("What do you weigh")
    await lene.presses("Skip")
    while "your coach looks at your version first" not in (message := await lene.hears("")).text:
        if message.all_buttons:
            await lene.presses(message.all_buttons[-1].label, on=message)
    look = await crew.coach.hears("Lene told me something")
    assert "pregnan" not in look.text
    await crew.coach.presses("OK, send it to them")
    await lene.hears("Your version")


async def test_a_pregnancy_that_is_told_with_its_week_is_not_asked_about(crew):
    lene = await crew.has("Lene")
    await crew.gets("for time\n10 burpees\n15 squats")
    await lene.presses("My version")
    await lene.hears("What do you have")
    await lene.says("a chair")
    await lene.hears("anything your body needs to spare")
    await lene.says("24 weeks pregnant, my midwife is fine with training")
    message = await lene.hears("I'll keep in mind: pregnancy")
    assert "Which week" not in message.text


async def test_after_a_birth_whoever_was_cleared_gets_a_version(crew):
    lene = await crew.has("Lene")
    await crew.gets("for time\n10 burpees\n200 m run")
    await lene.presses("My version")
    await lene.hears("What do you have")
    await lene.says("a chair")
    await lene.hears("anything your body needs to spare")
    await lene.says("just had a baby")
    await lene.hears("How long ago was the birth")
    await lene.says("ten weeks or so")
    await lene.hears("How long ago was the birth")
    await lene.says("10 weeks, cleared")
    message = await lene.hears("")
    while "Your version" not in message.text:
        await lene.presses(message.all_buttons[0].label, on=message)
        message = await lene.hears("")
    assert "200 m run" not in message.text


async def test_whoever_has_nothing_taps_what_a_household_has(crew, ilse):
    await crew.gets("for time\n10 goblet squats @ 16/12 kg\n15 squats")
    await ilse.presses("My version")
    await ilse.hears("What do you have to train with?")
    for label in ("A bag to fill", "A sturdy chair", "Stairs"):
        await ilse.presses(label)
        assert f"\N{CHECK MARK} {label}" in (await ilse.hears("What do you have to train with?")).labels
    await ilse.presses("\N{CHECK MARK} Stairs")
    assert "Stairs" in (await ilse.hears("What do you have to train with?")).labels
    await ilse.presses("That's all I have")
    noted = await ilse.hears("I've noted: a backpack for up to 14 kg and a chair.")
    assert "the usual weight for the backpack" in noted.text
    assert "stairs" not in noted.text


async def test_what_was_ticked_stays_when_the_rest_is_typed(crew, ilse):
    await crew.gets("for time\n10 goblet squats @ 16/12 kg\n15 squats")
    await ilse.presses("My version")
    await ilse.hears("What do you have to train with?")
    await ilse.presses("A sturdy chair")
    await ilse.hears("What do you have to train with?")
    await ilse.says("a 10 kg dumbbell")
    await ilse.hears("I've noted: a dumbbell of 10 kg and a chair.")


async def test_me_shows_and_changes_what_is_known(crew, ilse, posted):
    await answers_what_is_asked(ilse)
    await ilse.says("/me")
    await ilse.hears("Only you see this")
    await ilse.presses("Equipment")
    await ilse.hears("What do you have to train with?")
    await ilse.says("a 16 kg kettlebell")
    await ilse.hears("16 kg")
    await ilse.says("/me")
    await ilse.hears("Only you see this")
    await ilse.presses("To spare")
    await ilse.hears("anything your body needs to spare")
    await ilse.presses("No, all fine")
    await ilse.hears("Send /today")
    await ilse.says("/me")
    await ilse.hears("Only you see this")
    await ilse.presses("Weight")
    await ilse.hears("What do you weigh")
    await ilse.presses("Skip")
    await ilse.hears("Send /today")


async def test_a_thing_without_a_weight_is_asked_about(crew, ilse, posted):
    await ilse.presses("My version")
    await ilse.hears("What do you have")
    await ilse.says("a kettlebell and a chair")
    await ilse.hears("How heavy is the kettlebell")
    await ilse.says("dunno")
    await ilse.hears("I didn't get that")
    await ilse.says("16")
    await ilse.hears("a kettlebell of 16 kg")


async def test_what_nobody_can_weigh_is_left_out(crew, ilse, posted):
    await ilse.presses("My version")
    await ilse.hears("What do you have")
    await ilse.says("a kettlebell and a chair")
    await ilse.hears("How heavy is the kettlebell")
    await ilse.presses("I can't tell")
    noted = await ilse.hears("I've noted")
    assert "kettlebell" not in noted.text


async def test_who_can_not_tell_a_number_is_not_asked_twice(crew, ilse, posted):
    await ilse.presses("My version")
    await ilse.hears("What do you have")
    await ilse.says("nothing")
    await ilse.hears("anything your body needs to spare")
    await ilse.presses("No, all fine")
    await ilse.hears("What do you weigh")
    await ilse.presses("Skip")
    await ilse.hears("in a row when you're fresh")
    await ilse.says("no idea")
    await ilse.hears("Your version")


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


async def test_bottles_are_called_bottles(crew, ilse, posted):
    await ilse.presses("My version")
    await ilse.hears("What do you have")
    await ilse.says("two water bottles")
    noted = await ilse.hears("2 water bottles for up to 1.5 kg")
    assert "the usual weight for the water bottle" in noted.text
    assert "jug" not in noted.text


async def test_a_stranger_who_tells_a_score_is_shown_the_way_in(crew):
    tam = await crew.room.person("Tam")
    await tam.says("i did 3 rounds")
    await tam.hears("tap Start with me in its chat")


async def test_a_coach_who_has_posted_nothing_is_not_told_to_wait_for_their_coach(crew):
    await crew.coach.says("8:43")
    told = await crew.coach.hears("Nothing is posted yet")
    assert "your coach" not in told.text


async def test_who_sits_in_a_wheelchair_gets_a_version_to_do_on_the_seat(crew):
    runa = await crew.has("Runa")
    await crew.gets("for time\n400 m run\n10 burpees\n15 squats")
    await runa.presses("My version")
    await runa.hears("What do you have")
    await runa.says("my wheelchair")
    await runa.hears("anything your body needs to spare")
    await runa.says("I'm in a wheelchair")
    asked = await runa.hears("I'll keep in mind: sitting only")
    assert "does your trunk hold itself" in asked.text
    await runa.presses("Trunk holds, no floor")
    message = await runa.hears("Your version")
    for words in ("wheelchair push", "punches ahead, sitting", "Brakes on"):
        assert words in message.text


async def test_a_failing_heart_waits_for_a_doctors_word_and_is_told_how_to_go_on(crew, bo):
    await crew.gets("for time\n400 m run\n10 burpees\n15 squats")
    await bo.presses("My version")
    await bo.hears("What do you have")
    await bo.presses("Nothing, just me")
    await bo.hears("anything your body needs to spare")
    await bo.says("heart failure")
    await bo.hears("change what you spare under /me")


async def test_whoever_has_no_weight_hears_that_a_bag_does(crew, ilse):
    await crew.gets("for time\n12 goblet squats @ 16/12 kg\n10 burpees")
    told = await answers(ilse, "Nothing, just me")
    assert "A bag with bottles or books in it does for the goblet squats, about" in told.text


async def test_a_lifter_reads_how_to_climb_to_the_heavy_sets(crew, bo):
    await crew.gets("5 x 5 back squat @ 80 kg\nrest 3 min")
    told = await answers(bo, "a barbell from 20 to 120 kg in steps of 2.5")
    climb = told.text.split("Then up to the heavy ones")[1].split("\n\n")[0]
    assert "8 back squats (20 kg barbell)" in climb


async def answers(person, things):
    """Answers whatever is asked, `things` by a tap or typed; what a strong person would."""
    await person.presses("My version")
    for _ in range(12):
        message = await person.hears("")
        if "Your version" in message.text:
            return message
        if "What do you have" in message.text and things in message.labels:
            await person.presses(things)
        elif "What do you have" in message.text and message.all_buttons:
            await person.says(things)
        elif "in a row when you're fresh" in message.text:
            await person.says("12")
        elif message.all_buttons:
            await person.presses(message.all_buttons[0].label, on=message)
    raise AssertionError("no version after twelve messages")


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
