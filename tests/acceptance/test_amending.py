"""A coach changes a session in words, at the read-back and after it was posted."""

from tests.acceptance.people import SESSION, answers_what_is_asked


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


async def test_after_the_post_the_change_is_a_new_draft_and_then_what_everybody_does(crew):
    ilse = await crew.has("Ilse")
    await crew.gets()
    await crew.coach.says("change the push-ups to 8")
    await crew.coach.hears("stays as everybody saw it")
    await crew.coach.hears("8 push-ups")
    await crew.coach.presses("Post now")
    await crew.coach.hears("Posted to")
    await answers_what_is_asked(ilse)
    assert "8 push-ups" in (await ilse.last_message).text


async def test_a_change_that_cannot_be_carried_out_is_answered_with_how_to_say_it(crew):
    await crew.coach.says(SESSION)
    await crew.coach.hears("Here's how I read it")
    await crew.coach.says("make the push-ups easier")
    await crew.coach.hears("what it should become")


async def test_an_athlete_changes_nobodys_session(crew):
    ilse = await crew.has("Ilse")
    await crew.gets()
    await ilse.says("change the push-ups to 8")
    assert "push-ups" not in (await ilse.hears("")).text.split("\n")[0]
    assert "stays as everybody saw it" not in (await crew.coach.last_message).text
