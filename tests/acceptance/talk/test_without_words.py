"""Pictures, voice messages, files, and messages that were changed: nothing is met with silence."""

import pytest

from tests.acceptance.people import SESSION, answers_what_is_asked, start_link
from tests.acceptance.worlds import world


async def newcomer(crew):
    bo = await crew.room.person("Bo")
    await bo.joins(crew.group)
    await bo.opens(await start_link(crew.group))
    await bo.hears("May I keep these notes?")
    return bo


async def with_a_version(crew):
    ilse = await crew.has("Ilse")
    await crew.gets()
    await answers_what_is_asked(ilse)
    return ilse


@world
async def ilse(crew):
    return await with_a_version(crew)


async def test_a_voice_message_is_declined_kindly_and_the_question_stands(crew):
    bo = await newcomer(crew)
    await bo.sends_voice()
    await bo.hears("I can't listen yet")
    await bo.hears("May I keep these notes?")


async def test_a_picture_in_place_of_an_answer_is_asked_again(crew):
    ilse = await crew.has("Ilse")
    await crew.gets()
    await ilse.presses("My version")
    await ilse.hears("What do you have to train with?")
    await ilse.sends_photo()
    await ilse.hears("can't look at pictures")
    await ilse.hears("What do you have to train with?")
    await ilse.sends_file("things.pdf", b"%PDF")
    await ilse.hears("can't open files")
    await ilse.hears("What do you have to train with?")


async def test_what_was_asked_of_a_coach_stands_too(bellwether, room):
    coach = await room.person("Marit")
    group = await room.group("Dune runners", admins=[coach])
    await coach.adds_bot(group)
    await group.hears("Hello")
    await coach.presses("Start with me")
    await coach.hears("Which clock")
    await coach.sends_voice()
    await coach.hears("I can't listen yet")
    await coach.hears("Which clock")
    await coach.presses("Berlin")
    await coach.hears("kg or lb")
    await coach.sends_photo()
    await coach.hears("kg or lb")


async def test_a_caption_answers_what_is_asked(crew):
    ilse = await crew.has("Ilse")
    await crew.gets()
    await ilse.presses("My version")
    await ilse.hears("What do you have to train with?")
    await ilse.sends_photo(caption="a 10 kg dumbbell and a chair")
    await ilse.hears("I've noted: a dumbbell of 10 kg and a chair.")


async def test_a_caption_that_holds_the_score_counts(crew, ilse):
    await ilse.sends_photo(caption="7+12 \N{SMILING FACE WITH OPEN MOUTH AND COLD SWEAT}")
    await ilse.hears("Noted: 7 rounds + 12")
    await crew.group.hears("Ilse")


async def test_a_picture_in_reply_to_the_post_counts_by_its_caption(crew, ilse):
    post = await crew.group.last_message
    await ilse.sends_photo(caption="6+3", in_=crew.group, reply_to=post)
    await ilse.hears("Noted: 6 rounds + 3")


async def test_a_voice_message_when_nothing_is_asked_gets_one_answer(crew, ilse):
    await ilse.sends_voice()
    await ilse.hears("I can't listen yet")
    await ilse.hears_nothing()


# changed messages


async def test_a_score_that_was_changed_is_put_right(crew, ilse):
    said = await ilse.says("7+12")
    await ilse.hears("Noted: 7 rounds + 12")
    await ilse.edits(said, "7+21")
    await ilse.hears("Put right: 7 rounds + 21")
    await ilse.edits(said, "6+21")
    await ilse.hears("Put right: 6 rounds + 21")
    await crew.group.hears("6 rounds + 21")


async def test_a_caption_that_was_changed_is_put_right_too(crew, ilse):
    said = await ilse.sends_photo(caption="7+12")
    await ilse.hears("Noted: 7 rounds + 12")
    await ilse.edits(said, "8+12")
    await ilse.hears("Put right: 8 rounds + 12")


async def test_a_score_in_the_group_that_was_changed_is_put_right(crew, ilse):
    post = await crew.group.last_message
    said = await ilse.says("7+12", in_=crew.group, reply_to=post)
    await ilse.hears("Noted: 7 rounds + 12")
    await ilse.edits(said, "7+13")
    await ilse.hears("Put right: 7 rounds + 13")


async def test_a_score_that_a_coach_entered_and_changed_is_put_right(crew, ilse):
    said = await crew.coach.says("Ilse 7+12")
    await crew.coach.hears("Noted for Ilse: 7 rounds + 12")
    await crew.coach.edits(said, "Ilse 8+1")
    await crew.coach.hears("8 rounds + 1")
    await ilse.hears("8 rounds + 1")


@pytest.mark.parametrize("after", ["7+12!!", "no, wait", "ok"])
async def test_a_score_that_became_something_else_stays_and_that_is_said(crew, after, ilse):
    said = await ilse.says("7+12")
    await ilse.hears("Noted: 7 rounds + 12")
    await crew.group.hears("7 rounds + 12")
    await ilse.edits(said, after)
    await ilse.hears("7 rounds + 12" if "7+12" in after else "please send it to me as a new message")


async def test_a_score_that_was_asked_about_may_be_changed_where_it_stands(crew, ilse):
    said = await ilse.says("7+55")
    await ilse.hears("")
    await ilse.edits(said, "7+12")
    await ilse.hears("7 rounds + 12")


async def test_a_draft_follows_its_message(crew):
    said = await crew.coach.says("AMRAP 12\n10 push-ups\n200 m run")
    await crew.coach.hears("Here's how I read it")
    await crew.coach.edits(said, "AMRAP 14\n10 push-ups\n200 m run")
    await crew.coach.hears("14")
    await crew.coach.presses("Post now")
    await crew.group.hears("14")


async def test_a_session_that_was_to_be_posted_later_is_decided_about_again(crew):
    said = await crew.coach.says("AMRAP 12\n10 push-ups\n200 m run")
    draft = await crew.coach.hears("Here's how I read it")
    later = next(button for button in draft.all_buttons if button.label.endswith("06:00"))
    await crew.coach.presses(later.label)
    await crew.coach.hears("I'll post")
    await crew.coach.edits(said, "AMRAP 14\n10 push-ups\n200 m run")
    await crew.coach.hears("Here's how I read it")
    await crew.coach.presses("Post now")
    await crew.group.hears("14")


async def test_a_posted_session_stays_as_everybody_has_seen_it(crew):
    said = await crew.coach.says(SESSION)
    await crew.coach.hears("Here's how I read it")
    await crew.coach.presses("Post now")
    await crew.coach.hears("Posted to")
    await crew.coach.edits(said, SESSION.replace("12", "14"))
    await crew.coach.hears("stands in Harbour crew already")


async def test_another_changed_message_is_answered_kindly_in_private_and_not_in_the_group(crew, ilse):
    said = await ilse.says("/help")
    await ilse.hears("Here's what you can send me")
    await ilse.edits(said, "/me")
    await ilse.hears("please send it to me as a new message")
    post = await crew.group.last_message
    chat = await ilse.says("lovely", in_=crew.group, reply_to=post)
    await ilse.edits(chat, "lovely!")
    await crew.group.hears_nothing()
    await ilse.hears_nothing()
