"""Is there anything to spare? A no in any words is a no; what goes on to an exception is not."""

import pytest


async def asked(crew, ilse):
    await crew.gets("Today\nAMRAP 10\n10 air squats\n10 push-ups")
    await ilse.says("i have a 12 kg kettlebell")
    await ilse.hears("At home you have now")
    await ilse.presses("My version")
    await ilse.hears("Is there anything your body needs to spare?")


@pytest.mark.parametrize("words", ["nothing to spare", "nah its fine", "nope, just lazy", "fit as a fiddle"])
async def test_a_no_in_any_words_goes_on_to_the_next_question(crew, ilse, words):
    await asked(crew, ilse)
    await ilse.says(words)
    assert "needs to spare" not in (await ilse.hears("")).text


@pytest.mark.parametrize("words", ["all good apart from the back", "nothing at all, except on mondays"])
async def test_a_no_with_an_exception_is_asked_again(crew, ilse, words):
    await asked(crew, ilse)
    await ilse.says(words)
    await ilse.hears("Is there anything your body needs to spare?")


async def test_legs_that_are_sore_today_are_heard_and_the_question_stays(crew, ilse):
    await asked(crew, ilse)
    await ilse.says("my hammies are killing me today")
    await ilse.hears("sore legs")
    await ilse.hears("Is there anything your body needs to spare?")
