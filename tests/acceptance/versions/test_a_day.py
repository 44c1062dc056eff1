"""The main job: a session is posted, made personal, done, scored, and shown."""

from datetime import timedelta

from tests.acceptance.people import answers_what_is_asked


async def test_the_coach_sees_the_session_read_back_before_it_is_posted(crew):
    await crew.coach.says("AMRAP 12\n10 push-ups\n12 goblet squats @ 16/12 kg\n200 m run")
    await crew.coach.hears("Here's how I read it, for Harbour crew")
    await crew.group.hears_nothing()
    await crew.coach.presses("Post now")
    await crew.coach.hears("Posted to Harbour crew")
    await crew.group.hears("10 push-ups")


async def test_plain_words_to_the_group_are_posted_as_they_stand(crew):
    await crew.coach.says("AMRAP 12\n10 push-ups\n200 m run\nBreathe, everybody!")
    await crew.coach.hears("as your words to the group:\n• “Breathe, everybody!”")
    await crew.coach.presses("Post now")
    await crew.group.hears("Breathe, everybody!")


async def test_work_that_is_not_understood_is_named_at_its_place_first(crew):
    await crew.coach.says("AMRAP 12\n10 push-ups\n10 flurble hops\n200 m run")
    draft = await crew.coach.hears("in nobody's version yet")
    assert "line 3: “10 flurble hops”" in draft.text
    await crew.coach.presses("Post without them")
    await crew.group.hears("10 flurble hops")


async def test_pasting_again_changes_the_draft(crew):
    await crew.coach.says("AMRAP 12\n10 push-ups\n200 m run")
    first = await crew.coach.hears("Here's how I read it")
    await crew.coach.says("AMRAP 14\n10 push-ups\n200 m run")
    await crew.coach.hears("14")
    await crew.coach.presses("Post now", on=first)
    await crew.coach.sees_toast("before something changed")
    await crew.coach.presses("Post now")
    await crew.group.hears("14")


async def test_a_discarded_session_is_gone(crew):
    await crew.coach.says("AMRAP 12\n10 push-ups\n200 m run")
    draft = await crew.coach.hears("Here's how I read it")
    await crew.coach.presses("Discard")
    await crew.coach.hears("Discarded")
    await crew.coach.presses("Post now", on=draft)
    await crew.coach.sees_toast("before something changed")
    await crew.group.hears_nothing()


async def test_a_scheduled_session_is_posted_when_it_is_due(crew):
    await crew.coach.says("AMRAP 12\n10 push-ups\n200 m run")
    draft = await crew.coach.hears("Here's how I read it")
    later = next(button for button in draft.all_buttons if button.label.endswith("06:00"))
    await crew.coach.presses(later.label)
    await crew.coach.hears("I'll post")
    await crew.group.hears_nothing()
    await crew.room.travels_to(await morning_after(crew.room))
    await crew.group.hears("10 push-ups")


async def morning_after(room):
    return await room.now() + timedelta(days=1, hours=1)


async def test_a_score_in_words_is_noted_ranked_and_shown(crew, ilse, bo, posted):
    for athlete in (ilse, bo):
        await answers_what_is_asked(athlete)
    await ilse.says("7+12")
    await ilse.hears("7 rounds + 12")
    await crew.group.hears("Scoreboard")
    board = await crew.group.last_message
    assert "Ilse" in board.text
    await bo.says("8 rounds and 3")
    await bo.hears("place 1 of 2")
    again = await crew.group.hears("Bo")
    assert again.message_id == board.message_id


async def test_a_score_as_a_reply_in_the_group_counts(crew, ilse, posted):
    await answers_what_is_asked(ilse)
    post = next(one for one in await crew.group.messages if "Tap for your own version" in one.text)
    await ilse.says("7+12", in_=crew.group, reply_to=post)
    await ilse.hears("7 rounds + 12")


async def test_a_score_can_be_put_right_and_taken_back(crew, ilse, posted):
    await answers_what_is_asked(ilse)
    await ilse.says("7+12")
    await ilse.hears("Noted")
    await ilse.presses("Not right")
    await ilse.hears("What should it be")
    await ilse.says("6+12")
    await ilse.hears("Put right: 6 rounds + 12")
    await crew.group.hears("6 rounds + 12")
    await ilse.presses("Take it back")
    await ilse.hears("Taken off the board")
    await crew.group.hears("No scores yet")


async def test_movements_that_nobody_knows_are_named(crew):
    await crew.coach.says("For time:\n10 flurble hops\n20 zorbs")
    await crew.coach.hears("I don't know “flurble hops” and “zorbs” yet")
