"""Scores: how it felt, the coach's part, and those who never tap."""

import pytest

from tests.acceptance.people import answers_screening, answers_what_is_asked, consents, start_link
from tests.acceptance.worlds import world


@world
async def ilse(crew):
    """Has her version of today's session."""
    person = await crew.has("Ilse")
    await crew.gets()
    await answers_what_is_asked(person)
    return person


async def test_effort_and_soreness_are_asked_once(crew, ilse):
    await ilse.says("7+12")
    await ilse.hears("How hard was the whole session")
    await ilse.presses("7")
    await ilse.hears("Did anything hurt?")
    await ilse.presses("Sore muscles")
    await ilse.hears("normal answer to new work")
    await ilse.says("8+1")
    await ilse.hears("Shall it be 8 rounds + 1 instead?")
    await ilse.presses("Yes, change it")
    await ilse.hears("Put right")
    await ilse.hears_nothing()


async def test_a_score_is_taken_back_in_words(crew, ilse):
    await ilse.says("7+12")
    await ilse.hears("How hard was")
    await ilse.says("delete my score")
    await ilse.hears("Taken off the board")
    await ilse.says("delete my score")
    assert "Taken off" not in (await ilse.hears("")).text


async def test_pain_is_spared_from_now_on(crew, ilse):
    await ilse.says("7+12")
    await ilse.hears("How hard was")
    await ilse.presses("7")
    await ilse.hears("Did anything hurt?")
    await ilse.presses("Something hurts")
    await ilse.hears("Where does it hurt?")
    await ilse.says("left wrist")
    await ilse.hears("I'll keep in mind")
    await ilse.says("/me")
    await ilse.hears("wrist")


async def test_a_joint_named_with_the_score_is_spared_at_once(crew, ilse):
    await ilse.says("stopped after 5 rounds, my wrist hurts")
    noted = await ilse.hears("5 rounds")
    assert "I'm sorry about your wrist" in noted.text
    spared = await ilse.hears("Until you tell me your wrist is fine")
    await ilse.hears("How hard was")
    await ilse.presses("Left", on=spared)
    await ilse.hears("Noted: your left wrist")
    await ilse.presses("7")
    await ilse.says("/me")
    await ilse.hears("sore wrist (left, I ask again")


async def test_a_sore_joint_told_with_the_score_is_pain_and_its_side_may_be_typed(crew, ilse):
    await ilse.says("7+12 but my knee is sore")
    await ilse.hears("Noted: 7 rounds + 12")
    await ilse.hears("Which side is it?")
    await ilse.says("the left one")
    await ilse.hears("Noted: your left knee")


async def test_pain_told_with_the_score_but_not_where_is_asked_for(crew, ilse):
    await ilse.says("7+12, something pulled")
    await ilse.hears("7 rounds + 12")
    await ilse.hears("Where does it hurt?")
    await ilse.says("nothing")
    await ilse.hears("nothing changes")


async def test_a_time_is_kept_with_the_pain_that_is_told_in_the_same_breath(crew, ilse):
    await crew.gets("For time\n50 push-ups\n400 m run")
    await ilse.says("8:43 but my left knee is sore")
    await ilse.hears("Noted: 8:43")
    await ilse.hears("Until you tell me your left knee is fine")
    await ilse.hears("How hard was")


@pytest.mark.parametrize("words", ["sorry, 7+10", "oops, it was 7+10", "7+10, not 7+12", "I meant 7+10"])
async def test_a_slip_that_they_name_themselves_is_put_right_unasked(crew, ilse, words):
    await ilse.says("7+12")
    await ilse.hears("How hard was")
    await ilse.says(words)
    await ilse.hears("Put right: 7 rounds + 10")
    await crew.group.hears("7 rounds + 10")


async def test_a_time_is_put_right_after_everything_was_answered(crew, ilse):
    await crew.gets("For time\n50 push-ups\n400 m run")
    await ilse.says("9:42")
    await ilse.presses("7", on=await ilse.hears("How hard was"))
    await ilse.presses("No", on=await ilse.hears("Did anything hurt?"))
    await ilse.hears("Rest well")
    await ilse.says("oops, it was 9:24")
    await ilse.hears("Put right: 9:24")
    await ilse.hears_nothing()


async def test_sorry_before_the_first_score_is_only_manners(crew, ilse):
    await ilse.says("sorry, 7+10")
    await ilse.hears("Noted: 7 rounds + 10")


async def test_a_score_with_its_reason_is_understood_after_not_right(crew, ilse):
    await ilse.says("9+3")
    await ilse.presses("Not right", on=await ilse.hears("Noted"))
    await ilse.hears("What should it be")
    await ilse.says("8 rounds, missed one")
    await ilse.hears("Put right: 8 rounds")


async def test_a_score_told_instead_of_where_it_hurts_is_a_score(crew, ilse):
    await ilse.says("7+12")
    await ilse.presses("7", on=await ilse.hears("How hard was"))
    await ilse.presses("Something hurts", on=await ilse.hears("Did anything hurt?"))
    await ilse.hears("Where does it hurt?")
    await ilse.says("sorry, 7+10")
    await ilse.hears("Put right: 7 rounds + 10")


@pytest.mark.parametrize("answer", ["Yes, keep it so", "yes", "really!", "300 rounds"])
async def test_a_score_that_can_hardly_be_is_asked_about_once(crew, ilse, answer):
    await ilse.says("300 rounds")
    asked = await ilse.hears("Really 300 rounds?")
    await (ilse.presses(answer, on=asked) if answer.startswith("Yes") else ilse.says(answer))
    await ilse.hears("Noted: 300 rounds")


async def test_a_slip_is_simply_told_anew(crew, ilse):
    await ilse.says("300 rounds")
    await ilse.hears("Really 300 rounds?")
    await ilse.says("oops, 3 rounds")
    await ilse.hears("Noted: 3 rounds")


async def test_a_time_of_seconds_is_asked_about_once(crew, ilse):
    await crew.gets("For time\n50 push-ups\n400 m run")
    await ilse.says("4 seconds")
    await ilse.hears("Really 0:04?")
    await ilse.says("yes")
    await ilse.hears("Noted: 0:04")


async def test_a_yes_to_a_question_that_no_yes_answers_is_asked_again(crew, ilse):
    await ilse.says("7 rounds and 8:43 and 9 rounds")
    await ilse.hears("Which one counts")
    await ilse.says("yes")
    await ilse.hears("How many rounds")


async def test_an_effort_named_as_one_answers_no_question_about_the_score(crew, ilse):
    await ilse.says("7+12")
    await ilse.hears("How hard was the whole session")
    await ilse.says("8+1")
    await ilse.hears("Shall it be 8 rounds + 1 instead?")
    await ilse.says("rpe 6")
    await ilse.hears("Did anything hurt?")


@pytest.mark.parametrize("words", ["Ilse: stairs are fine", "Ilse: no swings"])
async def test_what_a_coach_says_of_somebody_without_a_number_is_no_score(crew, ilse, words):
    await crew.coach.says(words)
    assert "Noted" not in (await crew.coach.hears("")).text


async def test_a_coach_enters_a_score_for_somebody(crew, ilse):
    await crew.coach.says("Ilse got 7 rounds and 12 reps")
    await crew.coach.hears("Noted for Ilse: 7 rounds + 12")
    await ilse.hears("Marit noted your score for you: 7 rounds + 12")
    await crew.group.hears("7 rounds + 12")


async def test_an_athlete_can_not_enter_a_score_for_somebody_else(crew, ilse, bo):
    await bo.hears("What do you have")
    await bo.says("Ilse 7+12")
    await crew.group.hears_nothing()


async def test_a_coach_takes_a_score_out_and_lets_it_count_again(crew, ilse):
    await ilse.says("9+1")
    await ilse.hears("Noted")
    await crew.group.hears("9 rounds + 1")
    await crew.coach.says("/board")
    await crew.coach.hears("9 rounds + 1")
    await crew.coach.presses("Look at the scores")
    await crew.coach.hears("Tap a score")
    await crew.coach.presses("Ilse: 9 rounds + 1")
    await crew.coach.hears("Typed: “9+1”, by Ilse.")
    await crew.coach.presses("Don't count it")
    await ilse.hears("off the board for now")
    await crew.group.hears("No scores yet")
    await crew.coach.hears("not counted by Marit")
    await crew.coach.presses("Count it again")
    await ilse.hears("counts again")
    await crew.group.hears("9 rounds + 1")


async def test_of_somebody_who_never_agreed_to_anything_a_score_in_the_group_is_not_kept(crew):
    tam = await crew.room.person("Tam")
    await tam.joins(crew.group)
    await crew.gets()
    post = await crew.group.last_message
    await tam.says("stopped after 6 rounds, my wrist hurts", in_=crew.group, reply_to=post)
    told = await crew.group.hears("I keep nothing of you without your yes")
    assert "Talk to me" in told.labels
    assert not any(word in told.text for word in ("wrist", "safety", "questions"))
    await crew.coach.says("/board")
    await crew.coach.hears("No scores yet")


async def test_whose_age_nobody_knows_stands_on_no_board(crew):
    tam = await crew.room.person("Tam")
    await tam.joins(crew.group)
    await tam.opens(await start_link(crew.group))
    await consents(tam)
    await tam.hears("Are you 18 or older?")
    await crew.gets()
    post = await crew.group.last_message
    await tam.says("6+10", in_=crew.group, reply_to=post)
    await tam.hears("I only work with adults, so I need one answer first")
    await tam.says("8 rounds")
    await tam.hears("I need one answer first")
    await tam.hears("Are you 18 or older?")
    await tam.says("im 73 pet")
    await tam.hears("lately had any of these")
    await tam.says("6+10")
    await tam.hears("Noted: 6 rounds + 10")
    await crew.group.hears("6 rounds + 10")


async def test_of_whoever_is_no_adult_a_coach_can_tell_no_score(crew):
    tam = await crew.room.person("Tam")
    await tam.joins(crew.group)
    await tam.opens(await start_link(crew.group))
    await consents(tam)
    await tam.hears("Are you 18 or older?")
    await crew.gets()
    await tam.says("im 14 my mam is in it too")
    await tam.hears("only work with adults")
    await tam.says("my left knee hurts")
    await tam.hears("only work with adults")
    await crew.coach.says("Tam got 6+10")
    await crew.coach.hears("hasn't told me yet that they're 18 or older")
    await tam.says("sorry, I'm 41")
    await tam.hears("18 or older")


async def test_whoever_turns_out_to_be_a_child_goes_from_the_board(crew, ilse, posted):
    await ilse.says("7+12")
    await crew.group.hears("7 rounds + 12")
    await ilse.says("im 14")
    await ilse.hears("only work with adults")
    await crew.group.hears("No scores yet")


async def test_who_blocked_the_private_chat_is_answered_in_the_group(crew, ilse):
    post = next(one for one in await crew.group.messages if "Tap for your own version" in one.text)
    await ilse.blocks_bot()
    await ilse.says("7+12", in_=crew.group, reply_to=post)
    await crew.group.hears("Noted: 7 rounds + 12")
    assert not any("How hard" in one.text for one in await crew.group.messages)


async def test_of_two_sessions_a_day_the_one_that_the_score_fits_is_meant(crew, ilse):
    await crew.gets("For time, cap 10 min\n50 push-ups\n400 m run")
    await ilse.says("5+3")
    await ilse.hears("Noted: 5 rounds + 3")


async def test_a_score_on_light_duty_shows_nothing_in_the_group(crew):
    bo = await crew.room.person("Bo")
    await bo.joins(crew.group)
    await bo.opens(await start_link(crew.group))
    await consents(bo)
    await answers_screening(bo, ("Yes", "No", "Yes", "Yes"))
    await crew.gets()
    await answers_what_is_asked(bo)
    await bo.says("5+3")
    await bo.hears("No rank today")
    await crew.group.hears_nothing()


async def test_a_late_score_counts_for_its_own_session(crew, ilse):
    first = next(one for one in await crew.group.messages if "Tap for your own version" in one.text)
    await crew.gets("AMRAP 10\n8 push-ups\n100 m run")
    await ilse.says("7+12", in_=crew.group, reply_to=first)
    await ilse.hears("7 rounds + 12")
    await crew.group.hears("Scoreboard · Tuesday")


async def test_calories_are_calories_from_the_read_back_to_the_board(crew, ilse, bo):
    await crew.coach.says("max calories in 10 min on the rower")
    assert "Max calories in 10 min" in (await crew.coach.hears("Here's how I read it")).text
    await crew.coach.presses("Post now")
    await crew.group.hears("Max calories in 10 min")
    await bo.says("120 cal")
    await bo.hears("Noted: 120 cal")
    await crew.group.hears("1. Bo  120 cal")
    await ilse.says("/today")
    await ilse.hears("Your version")
    await ilse.says("90")
    await ilse.hears("Noted: 90 reps, scaled")


async def test_how_it_felt_may_be_typed(crew, ilse):
    await ilse.says("7+12")
    await ilse.hears("How hard was")
    await ilse.says("8")
    await ilse.hears("Did anything hurt?")
    await ilse.says("no")
    await ilse.hears("Good to hear. Rest well!")
    await ilse.says("8")
    await ilse.hears("Shall it be 8 rounds instead?")


async def test_an_effort_with_words_behind_it_is_no_other_score(crew, ilse):
    await ilse.says("7+12")
    await ilse.hears("How hard was the whole session")
    await ilse.says("9, felt awful")
    await ilse.hears("Did anything hurt?")
    assert "1. Ilse  7 rounds + 12" in (await crew.group.hears("Scoreboard")).text


async def test_what_hurt_is_spared_when_it_is_typed_as_the_answer(crew, ilse):
    await ilse.says("7+12")
    await ilse.hears("How hard was")
    await ilse.says("it was really hard like 9")
    await ilse.hears("Did anything hurt?")
    await ilse.says("yes my left elbow")
    await ilse.hears("Until you tell me your left elbow is fine")
    await ilse.hears_nothing()


async def test_pain_told_while_a_score_is_asked_about_is_heard_and_the_question_stays(crew, ilse):
    await ilse.says("70 rounds")
    await ilse.hears("Really 70 rounds")
    await ilse.says("my back is KILLING me")
    await ilse.hears("I'm sorry about your lower back")
    await ilse.says("where do i see the others")
    await ilse.hears("No scores yet")
    await ilse.says("no i mean 7")
    await ilse.hears("Noted: 7 rounds")


async def test_pain_told_after_the_score_brings_no_new_version_of_what_is_done(crew, ilse):
    await ilse.says("7+12")
    await ilse.presses("7", on=await ilse.hears("How hard was"))
    await ilse.hears("Did anything hurt?")
    await ilse.says("my left knee hurts")
    await ilse.hears("I'm sorry about your left knee")
    await ilse.hears_nothing()


async def test_rounds_told_of_a_session_for_time_are_no_time_on_the_board(crew, bo):
    await crew.gets("For time\n5 rounds\n10 push-ups\n15 sit-ups\n200 m run\ncap 20")
    await answers_what_is_asked(bo)
    await bo.says("i did 3 rounds and a bit in 20 min")
    await bo.hears("Did you stop after 3 rounds?")
    await bo.says("3 rounds + 12")
    await bo.hears("Noted: capped, 3 rounds + 12")


@pytest.mark.parametrize(("words", "noted"), [("8 n 10", "8 rounds + 10"), ("7+12 rpe 8", "7 rounds + 12")])
async def test_what_means_nothing_else_is_taken_as_the_score_it_reads_as(crew, ilse, words, noted):
    await ilse.says(words)
    await ilse.hears(f"Noted: {noted}")


async def test_an_effort_told_with_the_score_is_not_asked_for(crew, ilse):
    await ilse.says("7+2 rpe 8")
    await ilse.hears("Noted: 7 rounds + 2")
    await ilse.presses("No", on=await ilse.hears("Did anything hurt?"))
    await ilse.hears("Rest well!")
    await ilse.hears_nothing()


async def test_a_score_amid_a_story_is_asked_back_when_it_may_be_another(crew, ilse):
    await ilse.says("8.12 in the hotel, carpet burns")
    asked = await ilse.hears("Did you mean 8 rounds + 12?")
    await ilse.presses("Yes, keep it so", on=asked)
    await ilse.hears("Noted: 8 rounds + 12")


async def test_whoever_puts_a_score_right_is_told_of_which_session(crew, ilse):
    await ilse.says("8+2")
    await ilse.presses("Not right", on=await ilse.hears("Noted: 8 rounds + 2"))
    await ilse.hears("What should it be, for")


async def test_what_somebody_could_do_once_stands_on_no_board(crew, ilse):
    await ilse.says("i could do 12 push ups once")
    await ilse.hears("I didn't get")


async def test_so_many_told_with_a_question_is_both_noted_and_answered(crew, ilse):
    await ilse.says("did 3 of em. knackered. my legs r shaking is that ok")
    noted = await ilse.hears("Noted: 3 rounds")
    assert "how it feels decides" in noted.text
