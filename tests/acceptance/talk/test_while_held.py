"""Whoever is held after a stop sign is heard: what is told is kept, what is asked is answered, and nobody trains."""

from tests.acceptance.people import answers_what_is_asked
from tests.acceptance.worlds import world

HELD = "no session for you yet"


@world
async def alva(crew):
    person = await crew.has("Alva")
    await crew.gets()
    await answers_what_is_asked(person)
    await person.says("i got dizzy after the second one")
    await person.hears("Stop now and sit down")
    return person


async def test_what_is_told_is_kept_and_the_stop_is_said_once(crew, alva):
    await alva.says("i have a dodgy hip and asthma")
    told = await alva.hears("sore hip")
    assert "asthma" in told.text
    assert told.text.count(HELD) == 1
    assert "/today" not in told.text


async def test_everything_is_forgotten_at_a_word(crew, alva):
    await alva.says("delete everything you know")
    await alva.hears("Shall I erase everything I've stored about you?")


async def test_a_question_about_the_bot_is_answered(crew, alva):
    await alva.says("how many calories")
    await alva.hears("I don't count calories")


async def test_nothing_leads_to_training(crew, alva):
    for words in (
        "whats on",
        "/today",
        "make it easier",
        "is it ok to do squats",
        "what?",
        "I have 20 minutes",
    ):
        await alva.says(words)
        await alva.hears(HELD)
