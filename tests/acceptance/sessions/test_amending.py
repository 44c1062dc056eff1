"""A coach changes a session in words, at the read-back and after it was posted."""

from datetime import timedelta

import pytest

from tests.acceptance.people import SESSION, answers_what_is_asked

# A hundred lines take a busy machine a while.
LONG_S = 60


async def test_at_the_read_back_a_change_in_words_is_read_back_anew_and_posted(crew):
    await crew.coach.says(SESSION)
    await crew.coach.hears("Here's how I read it")
    await crew.coach.says("make the run 400 m")
    await crew.coach.hears("400 m run")
    await crew.coach.says("change the push-ups to 8")
    await crew.coach.hears("8 push-ups")
    await crew.coach.presses("Post now")
    post = await crew.group.hears("Tap for your own version")
    assert "8 push-ups" in post.text
    assert "400 m run" in post.text


async def test_a_movement_put_in_anothers_place_without_a_number_gets_one_that_is_said_back(crew):
    await crew.coach.says(SESSION)
    await crew.coach.hears("Here's how I read it")
    await crew.coach.says("swap the run for burpees")
    await crew.coach.hears("“200 m run” became 21 burpees")
    await crew.coach.hears("21 burpees")
    await crew.coach.says("make the burpees 15")
    await crew.coach.hears("15 burpees")


async def test_a_movement_that_counts_in_the_same_keeps_the_number_without_a_word(crew):
    await crew.coach.says(SESSION)
    await crew.coach.hears("Here's how I read it")
    await crew.coach.says("swap push-ups for dips")
    assert "10 dips" in (await crew.coach.hears("Here's how I read it, ")).text


async def test_after_the_post_the_change_is_a_new_draft_and_then_what_everybody_does(crew, ilse, posted):
    await crew.coach.says("change the push-ups to 8")
    await crew.coach.hears("stays as everybody saw it")
    await crew.coach.hears("8 push-ups")
    await crew.coach.presses("Post now")
    await crew.coach.hears("Posted to")
    await answers_what_is_asked(ilse)
    assert "8 push-ups" in (await ilse.last_message).text


async def test_a_change_after_the_post_marks_the_earlier_post_and_says_that_it_takes_its_place(
    crew, ilse, posted
):
    first = await crew.group.last_message
    await answers_what_is_asked(ilse)
    await crew.coach.says("change the push-ups to 8")
    await crew.coach.hears("8 push-ups")
    await crew.coach.presses("Post now")
    await crew.coach.hears("Posted to")
    second = await crew.group.hears("takes the place of the earlier post")
    assert "8 push-ups" in second.text
    assert "My version" in second.labels
    marked = await crew.group.hears("Changed since: the newer post below")
    assert marked.message_id == first.message_id
    assert "10 push-ups" in marked.text
    assert not marked.all_buttons
    await ilse.says("5+3", in_=crew.group, reply_to=marked)
    await ilse.hears("Noted: 5 rounds + 3")


async def test_another_session_of_the_day_takes_nobody_s_place(crew, posted):
    first = await crew.group.last_message
    await crew.gets("AMRAP 8\n8 sit-ups\n8 lunges")
    assert "takes the place" not in (await crew.group.last_message).text
    kept = next(one for one in await crew.group.messages if one.message_id == first.message_id)
    assert "My version" in kept.labels


async def test_a_changed_draft_that_becomes_another_day_s_session_marks_nothing(crew, posted):
    first = await crew.group.last_message
    await crew.coach.says("change the push-ups to 8")
    await crew.coach.hears("8 push-ups")
    await crew.room.travels(timedelta(days=1))
    await crew.coach.says("AMRAP 8\n8 sit-ups\n8 lunges")
    await crew.coach.hears("8 sit-ups")
    await crew.coach.presses("Post now")
    assert "takes the place" not in (await crew.group.hears("8 sit-ups")).text
    kept = next(one for one in await crew.group.messages if one.message_id == first.message_id)
    assert "My version" in kept.labels


async def test_a_post_of_several_messages_is_marked_at_its_end_and_stays_readable(crew):
    slowly = f"({'slow and tall all the way down and up again, ' * 4}softly)"
    lines = f"12 goblet squats @ 16/12 kg {slowly}\n10 romanian deadlifts @ 24/16 kg {slowly}"
    parts = [f"AMRAP {number}\n{lines}" for number in range(4, 12)]
    await crew.coach.says("\n\n".join([*parts, "AMRAP 3\n200 m run"]))
    await crew.coach.hears("Here's how I read it", LONG_S)
    await crew.coach.says("post now")
    end = await crew.group.hears("Tap for your own version", LONG_S)
    begun = next(one for one in await crew.group.messages if "in 4 min" in one.text)
    assert begun.message_id != end.message_id
    await crew.coach.says("make the run 400 m")
    await crew.coach.hears("stays as everybody saw it", LONG_S)
    await crew.coach.says("post now")
    await crew.group.hears("takes the place of the earlier post", LONG_S)
    await crew.group.hears("400 m run")
    marked = await crew.group.hears("Changed since: the newer post below")
    assert marked.message_id == end.message_id
    assert "200 m run" in marked.text
    assert not marked.all_buttons
    now = {one.message_id: one for one in await crew.group.messages}
    assert now[begun.message_id].text == begun.text


async def test_a_change_that_cannot_be_carried_out_is_answered_with_how_to_say_it(crew):
    await crew.coach.says(SESSION)
    await crew.coach.hears("Here's how I read it")
    await crew.coach.says("make the push-ups easier")
    await crew.coach.hears("I've changed nothing")


async def test_an_athlete_changes_nobodys_session(crew, ilse, posted):
    await ilse.says("change the push-ups to 8")
    assert "push-ups" not in (await ilse.hears("")).text.split("\n")[0]
    assert "stays as everybody saw it" not in (await crew.coach.last_message).text


async def test_who_asks_how_it_goes_sees_a_changed_session_once(crew, ilse, bo, posted):
    await answers_what_is_asked(bo)
    await crew.coach.says("change the push-ups to 8")
    await crew.coach.hears("8 push-ups")
    await crew.coach.presses("Post now")
    await crew.coach.hears("Posted to")
    await answers_what_is_asked(ilse)
    await crew.coach.says("who's in today?")
    asked = await crew.coach.hears("Who's in today")
    assert asked.text.count("No scores yet") == 1
    assert "before you changed it" not in asked.text
    first = next(one for one in await crew.group.messages if "Changed since" in one.text)
    await bo.says("5+3", in_=crew.group, reply_to=first)
    await bo.hears("Noted: 5 rounds + 3")
    await crew.coach.says("how did it go?")
    told = (await crew.coach.hears("So far today")).text
    assert "before you changed it\nTrained: 1" in told
    assert told.count("Haven't opened it") == 0


async def test_several_changes_in_one_message_are_all_carried_out(crew):
    await crew.coach.says(SESSION)
    await crew.coach.hears("Here's how I read it")
    await crew.coach.says("make it 15 min and swap the run for burpees, and I meant 8 push-ups")
    read = (await crew.coach.hears("Here's how I read it")).text
    assert "in 15 min" in read
    assert "8 push-ups" in read
    assert "200 m run" not in read


EMOM = "Tuesday\nEMOM 10\nMin 1: 12 kettlebell swings\nMin 2: 10 burpees"
TWO_RUNS = "3 rounds for time\n400 m run\n10 push-ups\n200 m run"


async def test_what_is_put_in_for_what_goes_takes_its_place(crew):
    await crew.coach.says(EMOM)
    await crew.coach.hears("Here's how I read it")
    await crew.coach.says("take out the burpees, put in a plank 30 sec")
    read = (await crew.coach.hears("Here's how I read it")).text
    assert "Minute 2: 30 s plank" in read
    assert "burpee" not in read.split("How it lands")[0]


async def test_of_several_changes_what_could_not_be_done_is_quoted_and_the_rest_is_done(crew):
    await crew.coach.says(SESSION)
    await crew.coach.hears("Here's how I read it")
    await crew.coach.says("make the run 400 m and swap the push-ups for florbles")
    assert "“swap the push-ups for florbles”" in (await crew.coach.hears("I've changed the rest")).text
    assert "400 m run" in (await crew.coach.hears("Here's how I read it")).text


async def test_a_turn_that_is_left_out_says_what_comes_up_more_often(crew):
    await crew.coach.says(EMOM)
    await crew.coach.hears("Here's how I read it")
    await crew.coach.says("drop the burpees")
    assert "10 times, where it was 5" in (await crew.coach.hears("Mind the turns")).text
    await crew.coach.presses("Back to how it was", on=await crew.coach.hears("Here's how I read it"))
    assert "Here's how I read it" in (await crew.coach.hears("Minute 2: 10 burpees")).text


async def test_which_of_two_lines_is_asked_with_both_as_buttons(crew):
    await crew.coach.says(TWO_RUNS)
    await crew.coach.hears("Here's how I read it")
    await crew.coach.says("make the run 300 m")
    asked = await crew.coach.hears("which line do you mean?")
    assert asked.labels == ["400 m run", "200 m run"]
    await crew.coach.presses("200 m run", on=asked)
    read = (await crew.coach.hears("Here's how I read it")).text
    assert "400 m run" in read
    assert "300 m run" in read
    assert "200 m run" not in read


async def test_words_that_may_be_a_change_put_no_session_in_the_place_of_another_unasked(crew):
    await crew.coach.says(SESSION)
    await crew.coach.hears("Here's how I read it")
    await crew.coach.says("warm up is 5 min easy jog not rest")
    asked = await crew.coach.hears("or a session of its own?")
    await crew.coach.presses("A change", on=asked)
    await crew.coach.hears("I've changed nothing")
    await crew.coach.says("post now")
    assert "10 push-ups" in (await crew.group.hears("Tap for your own version")).text


async def test_a_draft_that_another_took_the_place_of_comes_back_by_a_tap(crew):
    await crew.coach.says(SESSION)
    await crew.coach.hears("Here's how I read it")
    await crew.coach.says("Tuesday\nAMRAP 8\n8 sit-ups\n8 lunges")
    read = await crew.coach.hears("takes the place of the draft before it")
    await crew.coach.presses("Back to the one before", on=read)
    assert "Here's how I read it" in (await crew.coach.hears("10 push-ups")).text


async def test_whoever_says_that_the_draft_is_wrong_takes_nothing_from_those_who_train(crew, posted):
    await crew.coach.says("AMRAP 8\n8 sit-ups\n8 lunges")
    await crew.coach.hears("Here's how I read it")
    await crew.coach.says("AMRAP 9\n9 sit-ups")
    await crew.coach.hears("Here's how I read it")
    await crew.coach.says("no thats wrong, I meant change the session from before")
    await crew.coach.presses("Back to how it was", on=await crew.coach.hears("go back to how it was"))
    assert "8 lunges" in (await crew.coach.hears("Here's how I read it")).text


async def test_of_all_messages_about_a_draft_one_alone_can_be_tapped(crew):
    await crew.coach.says(SESSION)
    first = await crew.coach.hears("Here's how I read it")
    await crew.coach.says("make the run 400 m")
    second = await crew.coach.hears("Here's how I read it")
    await crew.coach.says("post it tomorrow at 7")
    later = await crew.coach.hears("I'll post")
    assert await live(crew, first, second, later) == [later.message_id]
    await crew.coach.says("post now")
    await crew.group.hears("Tap for your own version")
    assert await live(crew, first, second, later) == []


async def live(crew, *messages):
    now = {one.message_id: one for one in await crew.coach.messages}
    return [one.message_id for one in messages if now[one.message_id].all_buttons]


async def test_the_time_of_a_scheduled_session_is_changed_in_words(crew):
    await crew.coach.says(SESSION)
    await crew.coach.hears("Here's how I read it")
    await crew.coach.says("post tomorrow at half 6 in the morning pls")
    assert "Tuesday, 3 March at 06:30" in (await crew.coach.hears("I'll post")).text
    await crew.coach.says("actually make it 7")
    assert "Tuesday, 3 March at 07:00" in (await crew.coach.hears("I'll post")).text
    await crew.coach.says("make the run 400 m")
    assert "400 m run" in (await crew.coach.hears("Here's how I read it")).text
    assert "Tuesday, 3 March at 07:00" in (await crew.coach.hears("I'll post")).text
    await crew.coach.says("move it to thursday")
    assert "Thursday, 5 March at 07:00" in (await crew.coach.hears("I'll post")).text
    await crew.room.travels(timedelta(days=4))
    assert "400 m run" in (await crew.group.hears("Tap for your own version")).text


async def test_what_is_scheduled_is_told_with_its_time_and_a_draft_without_one(crew):
    await crew.coach.says("what's scheduled?")
    await crew.coach.hears("Nothing is scheduled")
    await crew.coach.says(SESSION)
    await crew.coach.hears("Here's how I read it")
    await crew.coach.says("post it tomorrow at 7")
    await crew.coach.hears("I'll post")
    await crew.coach.says("AMRAP 8\n8 sit-ups\n8 lunges")
    await crew.coach.hears("Here's how I read it")
    await crew.coach.says("what's scheduled?")
    told = (await crew.coach.hears("Another time")).text
    assert "Tuesday for Harbour crew: Tuesday, 3 March at 07:00" in told
    assert "a draft, without a time yet" in told


async def test_a_number_of_rounds_alone_changes_the_draft_in_hand(crew):
    await crew.coach.says("3 rounds for time\n10 push-ups\n12 air squats")
    await crew.coach.hears("Here's how I read it")
    await crew.coach.says("5 rounds")
    assert "5 rounds for time" in (await crew.coach.hears("Here's how I read it")).text


async def test_what_is_left_out_stands_for_nothing(crew):
    await crew.coach.says("3 rounds for time\n10 push-ups\n12 air squats")
    await crew.coach.hears("Here's how I read it")
    await crew.coach.says("drop the push-ups")
    await crew.coach.hears("Here's how I read it")
    assert not [one for one in await crew.coach.messages if "You named no number" in one.text]


async def test_what_was_misread_is_told_right_and_what_is_right_already_is_said_to_be(crew):
    await crew.coach.says("Warm-up\n10 squats\n\nMain\nFor 5 minutes:\n10 burpees\n200 m run")
    await crew.coach.hears("As many rounds as possible in 5 min")
    await crew.coach.says("that's rounds, not minutes")
    await crew.coach.hears("5 rounds")
    await crew.coach.says("it's 5 rounds")
    await crew.coach.hears("That's how I have it")
    await crew.coach.says("make the burpees 5 and add 10 jumping jacks")
    told = (await crew.coach.hears("10 jumping jacks")).text
    assert told.index("5 burpees") < told.index("10 jumping jacks")


async def test_one_thing_to_do_is_asked_about_where_a_draft_is_in_hand(crew):
    await crew.coach.says("EMOM 12\n1: 12 swings @ 24/16\n2: 10 push-ups")
    await crew.coach.hears("Here's how I read it")
    await crew.coach.says("in minute 3 do hollow holds")
    asked = await crew.coach.hears("a change of the one in hand, or a session of its own?")
    assert [one.label for one in asked.all_buttons] == ["A change", "A new session"]


@pytest.mark.parametrize("words", ["today is a rest day!", "rest day tomorrow", "no training tomorrow guys"])
async def test_a_rest_day_is_told_to_everybody_with_the_coachs_yes(crew, words):
    await crew.coach.says(words)
    asked = await crew.coach.hears("Shall everybody read this?")
    await crew.coach.presses("Post to Harbour crew", on=asked)
    assert words in (await crew.group.hears(words)).text
