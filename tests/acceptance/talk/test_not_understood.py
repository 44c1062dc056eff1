"""No wall: what isn't understood is quoted in one line with the nearest thing to tap; several things, one answer."""

import pytest

from bot.words.en.talk.helping import OF_ATHLETE
from tests.acceptance.people import answers_what_is_asked
from tests.acceptance.worlds import world


@world
async def ilse(crew):
    """Has her version of today's session."""
    person = await crew.has("Ilse")
    await crew.gets()
    await answers_what_is_asked(person)
    return person


async def test_what_nobody_can_read_is_quoted_in_one_line(crew, ilse):
    await ilse.says("the blue one is under the shelf")
    told = await ilse.hears("I didn't get “the blue one is under the shelf”.")
    assert "\n" not in told.text
    assert "What can I write?" in told.labels


async def test_words_for_nobody_reach_the_coach_with_a_tap(crew, ilse):
    await ilse.says("the blue one is under the shelf")
    await ilse.presses("Tell my coach", on=await ilse.hears("I didn't get"))
    await ilse.hears("Your coach in Harbour crew reads it")
    await crew.coach.hears("Ilse has this for you: “the blue one is under the shelf”")


async def test_what_was_not_passed_on_is_none_of_their_notes(crew, ilse):
    await ilse.says("the blue one is under the shelf")
    await ilse.hears("I didn't get")
    await ilse.says("my notes")
    await ilse.hears("You've told me nothing for your coach")


async def test_help_is_short_and_the_rest_is_a_tap_away(crew, ilse):
    await ilse.says("/help")
    short = await ilse.hears("Here's what you can send me")
    assert short.text.count("•") <= 3
    await ilse.presses("Show me all", on=short)
    whole = await ilse.hears("Here's what you can send me")
    assert "/forget" in whole.text
    assert whole.html.count("<blockquote expandable>") == len(OF_ATHLETE) - 1, (
        "all but the daily lines are folded"
    )


async def test_help_for_a_coach_is_about_coaching(crew):
    await crew.coach.says("/help")
    assert "give them a session" in (await crew.coach.hears("Here's what you can send me")).text


@pytest.mark.parametrize("words", ["how long should this take?", "what should I aim for?"])
async def test_how_long_and_how_to_pace_are_answered_with_what_is_known_of_them(ilse, words):
    await ilse.says(words)
    told = await ilse.hears("The session has 12 minutes")
    assert "I don't know yet: tell me a score or two" in told.text
    assert "begin so that you could go on talking" in told.text.lower()


async def test_whoever_has_no_version_yet_hears_what_the_session_says(crew, bo, posted):
    await bo.says("how long should this take?")
    assert "Begin so that you could go on talking" in (await bo.hears("The session has 12 minutes")).text


@pytest.mark.parametrize(
    ("words", "told"),
    [
        ("bit short today, only 10 minutes", "10 minutes"),
        ("only have 15 min, kids asleep", "15 minutes"),
        ("sick today :(", "How is it?"),
        ("can I have the link", "class"),
        ("stop messaging me", "I only answer"),
        ("delete my data please", "rase"),
        ("can you make it easier", "Which line"),
        ("how am I doing?", "I know of no score of yours so far"),
    ],
)
async def test_ordinary_sentences_meet_what_their_buttons_do(ilse, words, told):
    await ilse.says(words)
    await ilse.hears(told)


async def test_what_cannot_be_answered_yet_goes_to_the_coach_if_they_wish(crew, ilse):
    await ilse.says("did it as written")
    await ilse.presses("Ask my coach", on=await ilse.hears("I have no score of yours to change"))
    await crew.coach.hears("Ilse has this for you: “did it as written”")


@pytest.mark.parametrize(
    "words", ["send everybody a word that the gym is closed", "next", "Friday is a holiday"]
)
async def test_a_coach_is_answered_in_a_line_or_two_too(crew, words):
    await crew.coach.says(words)
    told = await crew.coach.hears("")
    assert told.text.count("\n") <= 2
    await crew.group.hears_nothing()


async def test_two_things_told_at_once_are_both_taken_and_come_back_as_one_answer(crew, ilse):
    await ilse.says("I only have 10 minutes and can I have the link")
    told = await ilse.hears("Noted: ")
    assert "10 minutes" in told.text
    assert "class" in told.text


async def test_a_thing_and_what_to_spare_answer_the_question_about_things_together(crew, bo, posted):
    await bo.presses("My version")
    await bo.hears("What do you have")
    await bo.says("got a 10 kg db and a bad knee")
    await bo.hears("knee")
    await bo.says("/me")
    assert "dumbbell" in (await bo.hears("knee")).text


async def test_what_is_plainly_no_answer_is_heard_and_the_question_stays(crew, bo, posted):
    await bo.presses("My version")
    await bo.hears("What do you have")
    await bo.says("stop messaging me")
    await bo.hears("remind")
    await bo.says("a 10 kg dumbbell")
    await bo.hears("dumbbell")
