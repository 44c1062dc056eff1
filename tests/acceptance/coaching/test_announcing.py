"""A coach's word for everybody is shown first, and posted once they tap."""

import pytest


async def test_a_word_for_everybody_is_shown_and_then_posted(crew):
    await crew.coach.says("announce: no class on Friday, the hall is closed")
    asked = await crew.coach.hears("Shall everybody read this?")
    assert "no class on Friday, the hall is closed" in asked.text
    await crew.coach.presses("Post to Harbour crew")
    await crew.coach.hears("It goes to Harbour crew now")
    posted = await crew.group.hears("Marit has a word for everybody")
    assert "no class on Friday, the hall is closed" in posted.text
    assert "announce" not in posted.text


async def test_it_is_posted_once(crew):
    await crew.coach.says("announce: bring water tomorrow")
    asked = await crew.coach.hears("Shall everybody read this?")
    await crew.coach.presses("Post to", on=asked)
    await crew.coach.hears("It goes to")
    await crew.coach.presses("Post to", on=asked)
    await crew.coach.sees_toast("")
    told = [one for one in await crew.group.messages if "bring water tomorrow" in one.text]
    assert len(told) == 1


async def test_what_is_left_alone_is_read_by_nobody(crew):
    await crew.coach.says("tell everybody to bring a towel")
    asked = await crew.coach.hears("Shall everybody read this?")
    await crew.coach.presses("No, leave it", on=asked)
    await crew.coach.hears("nobody reads it")
    assert not [one for one in await crew.group.messages if "towel" in one.text]


async def test_an_athlete_announces_nothing(crew, ilse):
    await ilse.says("announce: party at mine")
    heard = await ilse.hears("")
    assert "Shall everybody read this" not in heard.text


@pytest.mark.parametrize(
    "typed", ["message Ilse: well done today", "tell Ilse well done today", "send Ilse: well done today"]
)
async def test_a_word_to_one_athlete_is_read_by_nobody_else(crew, ilse, typed):
    await crew.coach.says(typed)
    await crew.coach.presses("Send to Ilse", on=await crew.coach.hears("nobody else"))
    assert "“well done today”" in (await ilse.hears("has a word for you")).text
    await crew.group.hears_nothing()


async def test_a_word_to_somebody_unknown_goes_to_nobody(crew, ilse):
    await crew.coach.says("tell Rut: well done today")
    assert "Ilse" in (await crew.coach.hears("nobody reads it")).text
    await crew.group.hears_nothing()


async def test_a_question_goes_to_who_is_meant_and_the_answer_comes_back(crew, ilse):
    await crew.coach.says("ask Ilse how her knee is")
    await crew.coach.presses("Ask Ilse", on=await crew.coach.hears("how your knee is"))
    await ilse.hears("Marit asks how your knee is")
    await ilse.says("much better")
    await crew.coach.hears("Ilse answers: “much better”")


async def test_what_stands_behind_announce_is_an_order_to_nobody(crew, ilse):
    await crew.coach.says("announce: no class tomorrow, leave Ilse out of the lift list")
    await crew.coach.hears("Shall everybody read this?")


@pytest.mark.parametrize("words", ["Please send Ilse a message: see you soon", "tell ilse to text me, bye"])
async def test_a_word_to_one_is_never_offered_to_everybody(crew, ilse, words):
    await crew.coach.says(words)
    asked = await crew.coach.hears("Shall Ilse read this, and nobody else?")
    assert not any("Harbour crew" in one for one in asked.labels)


async def test_who_has_told_no_score_is_asked_with_one_tap(crew, ilse):
    bo = await crew.has("Bo")
    await crew.gets()
    await ilse.says("3+2")
    await ilse.hears("Noted")
    await crew.coach.says("whos not reported? ping them")
    await crew.coach.hears("So far today")
    asked = await crew.coach.hears("yet from Bo. Shall I ask them")
    await crew.coach.presses("Yes, ask them", on=asked)
    await bo.hears("Marit would like to hear how")
    assert not any("would like to hear" in one.text for one in await ilse.messages)


@pytest.mark.parametrize(
    "words",
    [
        "no push-ups for the beginners",
        "give the over 60s less",
        "easy week for my seniors",
        "no burpees for anyone over 60",
        "everybody under 18 only squats",
        "no jumping for anyone with bad knees",
        "those older than 65 walk",
    ],
)
async def test_of_a_part_of_the_group_it_is_said_that_nobody_knows_who_that_is(crew, words):
    await crew.coach.says(words)
    await crew.coach.hears("I keep no groups within your group")
