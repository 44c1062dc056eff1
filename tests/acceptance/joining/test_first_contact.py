"""An athlete's way in: consent, screening, the questions of this session, the version."""

from tests.acceptance.people import (
    HEALTHY_AND_ACTIVE,
    answers_screening,
    answers_what_is_asked,
    consents,
    passes_screening,
    start_link,
)


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
