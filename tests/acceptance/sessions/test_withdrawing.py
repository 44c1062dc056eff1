"""A coach takes back what was posted by mistake: asked once, and nothing leads to it any more."""

from datetime import timedelta

import pytest

from tests.acceptance.people import answers_what_is_asked

OTHER = "Wednesday\nAMRAP 8\n8 sit-ups\n8 lunges"


async def withdraws(crew, words="withdraw today's session", answer="Yes, withdraw it"):
    await crew.coach.says(words)
    await crew.coach.presses(answer, on=await crew.coach.hears("Shall I withdraw"))
    return await crew.coach.hears("Withdrawn from Harbour crew")


@pytest.mark.parametrize(
    "words", ["withdraw today's session", "I posted that by mistake", "oops, delete the post please"]
)
async def test_a_post_is_withdrawn_after_one_yes(crew, words, posted):
    post = await crew.group.last_message
    await withdraws(crew, words)
    told = await crew.group.hears("Withdrawn: this session doesn't count any more")
    assert told.message_id == post.message_id
    assert "push-ups" not in told.text
    assert not told.all_buttons


async def test_the_button_under_posted_does_the_same_and_a_no_changes_nothing(crew):
    await crew.coach.says(OTHER)
    await crew.coach.presses("Post now", on=await crew.coach.hears("Here's how I read it"))
    posted = await crew.coach.hears("Posted to Harbour crew")
    await crew.group.hears("8 lunges")
    await crew.coach.presses("Withdraw it", on=posted)
    await crew.coach.presses("No, keep it", on=await crew.coach.hears("Shall I withdraw Wednesday"))
    await crew.coach.hears("it stays as it is")
    await crew.group.hears_nothing()
    await crew.coach.presses("Withdraw it", on=posted)
    await crew.coach.presses("Yes, withdraw it", on=await crew.coach.hears("Shall I withdraw Wednesday"))
    await crew.group.hears("Withdrawn")
    await crew.coach.hears("Withdrawn from")
    await crew.coach.presses("Withdraw it", on=posted)
    await crew.coach.sees_toast("done already")


async def test_whoever_has_a_version_hears_of_it_and_none_of_its_buttons_works(crew, ilse, bo, posted):
    await answers_what_is_asked(ilse)
    version = await ilse.last_message
    await withdraws(crew)
    await ilse.hears("Your coach has withdrawn Tuesday from Harbour crew")
    await ilse.presses("Change a line", on=version)
    await ilse.sees_toast("has withdrawn that session")
    await ilse.says("/today")
    await ilse.hears("Nothing is posted yet")
    await bo.says("/today")
    await bo.hears("Nothing is posted yet")


async def test_scores_that_were_told_stay_and_their_owner_is_left_in_peace(crew, ilse, posted):
    await answers_what_is_asked(ilse)
    post = next(one for one in await crew.group.messages if "Tap for your own version" in one.text)
    await ilse.says("7+12")
    await ilse.hears("How hard was")
    await withdraws(crew)
    await ilse.hears_nothing()
    board = next(one for one in await crew.group.messages if "Scoreboard" in one.text)
    assert "7 rounds + 12" in board.text
    bo = await crew.has("Bo")
    await bo.hears("Nothing is posted yet")
    await bo.says("8+1", in_=crew.group, reply_to=post)
    await bo.hears("Noted: 8 rounds + 1")


async def test_of_a_changed_post_the_earlier_one_counts_again(crew, ilse, posted):
    first = await crew.group.last_message
    await crew.coach.says("change the push-ups to 8")
    await crew.coach.presses("Post now", on=await crew.coach.hears("Here's how I read it"))
    second = await crew.group.hears("takes the place of the earlier post")
    await crew.group.hears("Changed since")
    await answers_what_is_asked(ilse)
    await withdraws(crew, answer="Yes, the earlier one counts again")
    now = {one.message_id: one for one in await crew.group.messages}
    assert "Withdrawn" in now[second.message_id].text
    assert "Changed since" not in now[first.message_id].text
    assert "My version" in now[first.message_id].labels
    told = await ilse.hears("The earlier session counts again")
    await ilse.presses("My version", on=told)
    assert "10 push-ups" in (await ilse.hears("Your version")).text


async def test_of_a_changed_post_both_may_go(crew, posted):
    await crew.coach.says("change the push-ups to 8")
    await crew.coach.presses("Post now", on=await crew.coach.hears("Here's how I read it"))
    await crew.group.hears("Changed since")
    await withdraws(crew, answer="Yes, and the earlier one too")
    posts = [one for one in await crew.group.messages if "Withdrawn: this session" in one.text]
    assert len(posts) == 2
    bo = await crew.has("Bo")
    await bo.hears("Nothing is posted yet")


async def test_another_session_takes_nobodys_place_afterwards(crew, posted):
    await withdraws(crew)
    await crew.group.hears("Withdrawn")
    await crew.gets(OTHER)
    assert "takes the place" not in (await crew.group.last_message).text
    ilse = await crew.has("Ilse")
    await answers_what_is_asked(ilse)
    assert "Wednesday" in (await ilse.last_message).text


async def test_a_day_whose_only_session_was_withdrawn_has_no_digest(crew, posted):
    await withdraws(crew)
    await crew.room.travels(timedelta(hours=20))
    await crew.coach.hears_nothing()


async def test_the_digest_tells_of_a_withdrawn_session_only_what_was_told_of_it(crew, ilse, posted):
    await answers_what_is_asked(ilse)
    await ilse.says("7+12")
    await ilse.hears("Noted")
    await withdraws(crew)
    await crew.coach.says("how did it go?")
    told = (await crew.coach.hears("So far today")).text
    assert "Tuesday, withdrawn\nTrained: 1" in told


async def test_an_athlete_withdraws_nothing(crew, ilse, posted):
    await answers_what_is_asked(ilse)
    version = await ilse.last_message
    await ilse.says("withdraw today's session")
    assert "ithdraw it" not in str((await ilse.hears("")).labels)
    await ilse.presses_data(version, "wd:1:one")
    await ilse.sees_toast("Only the coach")
    await crew.group.hears_nothing()


async def test_with_a_draft_in_hand_it_is_asked_which_of_the_two_is_meant(crew, posted):
    await crew.coach.says(OTHER)
    await crew.coach.hears("Here's how I read it")
    await crew.coach.says("withdraw the session")
    await crew.coach.presses("No, discard my draft", on=await crew.coach.hears("Shall I withdraw Tuesday"))
    await crew.coach.hears("Discarded")
    await crew.group.hears_nothing()


async def test_the_day_that_is_named_is_the_one_that_is_meant(crew):
    await crew.gets()
    await crew.coach.says("Wednesday\n5 rounds for time\n10 air squats\n10 burpees")
    await crew.coach.hears("Here's how I read it")
    await crew.coach.says("post it tomorrow at 7")
    await crew.coach.hears("I'll post")
    await crew.coach.says("withdraw tomorrow's session")
    told = await crew.coach.hears("Shall I drop it?")
    assert "Discard" in [one.label for one in told.all_buttons]


async def test_who_needs_me_is_of_all_that_is_still_to_come(crew):
    await crew.coach.says("Wednesday\n5 rounds for time\n10 air squats\n10 burpees")
    await crew.coach.hears("Here's how I read it")
    await crew.coach.says("post it tomorrow at 7")
    await crew.coach.hears("I'll post")
    await crew.coach.says("Thursday\nAMRAP 10\n10 air squats\n10 burpees")
    await crew.coach.hears("Here's how I read it")
    await crew.coach.says("who needs me?")
    told = (await crew.coach.hears("Nobody needs you")).text
    assert "Wednesday" in told
    assert "Thursday" in told
