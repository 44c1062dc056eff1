"""Somebody asks, or supposes: it is answered, nothing is noted, and the open question stays."""

import pytest

from tests.acceptance.people import start_link
from tests.acceptance.worlds import world


@world
async def asked_to_spare(crew):
    """Ilse is on the way to her version, and was just asked what her body needs to spare."""
    ilse = await crew.has("Ilse")
    await crew.gets()
    await ilse.presses("My version")
    await ilse.hears("What do you have")
    await ilse.says("a 16 kg kettlebell and a chair")
    await ilse.presses("The second", on=await ilse.hears("Which is meant for you"))
    await ilse.hears("anything your body needs to spare")
    return ilse


@pytest.mark.parametrize(
    ("words", "answered"),
    [
        ("is it ok to do squats with 16 kg?", "how it feels decides"),
        ("is it ok to stop halfway", "you don't have to"),
        ("what if i can't finish it?", "you don't have to"),
        ("can i do it tomorrow instead", "train when it suits you"),
    ],
)
async def test_a_question_is_no_answer_to_ours(asked_to_spare, words, answered):
    await asked_to_spare.says(words)
    await asked_to_spare.hears(answered)
    await asked_to_spare.hears("anything your body needs to spare")
    await asked_to_spare.presses("No, all fine")
    await asked_to_spare.hears("Good")


async def test_with_a_condition_licensed_care_is_asked_first(asked_to_spare):
    await asked_to_spare.says("pregnant, 20 weeks")
    await asked_to_spare.hears("pregnancy")
    await asked_to_spare.says("is it ok to do squats with 16 kg?")
    told = await asked_to_spare.hears("for your midwife or doctor first")
    assert "Ask my coach" in told.labels


async def test_what_was_only_supposed_is_noted_by_a_tap(asked_to_spare):
    await asked_to_spare.says("I might be at the gym tomorrow")
    await asked_to_spare.presses("Yes, note it", on=await asked_to_spare.hears("I've noted nothing of"))
    await asked_to_spare.hears("gym")


async def test_whoever_is_afraid_is_answered_kindly(asked_to_spare):
    await asked_to_spare.says("im scared of looking stupid")
    await asked_to_spare.hears("nobody is behind here")
    await asked_to_spare.hears("anything your body needs to spare")


async def test_a_stop_sign_that_is_only_supposed_reaches_no_coach(crew, asked_to_spare):
    await asked_to_spare.says("what if I feel dizzy?")
    await asked_to_spare.hears("If you feel that yourself, now: stop")
    await crew.coach.hears_nothing()


async def test_help_before_the_yes_says_what_it_is_about(crew, posted):
    bo = await crew.room.person("Bo")
    await bo.joins(crew.group)
    await bo.opens(await start_link(crew.group))
    await bo.hears("May I keep these notes?")
    await bo.says("help")
    await bo.hears("eight short questions, about two minutes")
    await bo.presses("No", on=await bo.hears("May I keep these notes?"))
    await bo.hears("I keep nothing")
    await bo.says("help")
    assert "Yes, keep my notes" in (await bo.hears("You said no to notes")).labels


async def test_help_alone_is_all_understood(crew):
    await crew.coach.says("help")
    assert "didn't get" not in (await crew.coach.hears("Here's what you can send me")).text


async def test_an_ok_is_of_what_was_asked_last(crew, posted, ilse):
    """Of a score that was asked about before nothing is published by it."""
    await crew.coach.says("Ilse got 7+12?")
    await crew.coach.hears("Did you mean 7 rounds + 12?")
    await crew.coach.says("message Ilse: well done")
    await crew.coach.hears("Shall Ilse read this")
    await crew.coach.says("ok")
    await ilse.hears("well done")
    assert "7 rounds" not in "".join(one.text for one in await ilse.messages)


async def test_whoever_is_ill_before_there_is_a_version_is_told_to_rest(crew, ilse, posted):
    await ilse.says("im ill")
    assert "rest" in (await ilse.hears("Get well soon")).text


async def test_what_comes_is_seen_once_it_is_posted(ilse):
    await ilse.says("what is on tomorrow")
    assert "Classes" in (await ilse.hears("once your coach posts it")).labels


async def test_a_yes_to_how_hard_it_was_is_no_pain(crew, ilse, posted):
    await ilse.says("7+12")
    await ilse.hears("How hard was the whole session")
    await ilse.says("yes")
    await ilse.hears("How hard was the whole session")
