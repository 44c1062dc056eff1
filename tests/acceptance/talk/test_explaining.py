"""Somebody new asks what a word means, or how a movement is done."""

import pytest

from tests.acceptance.people import answers_what_is_asked


@pytest.mark.parametrize(
    ("asked", "told"),
    [
        ("whats amrap", "as many rounds as possible"),
        ("what does cap mean??", "the most time there is"),
        ("what is EMOM?", "every minute on the minute"),
        ("what's a kb", "a round weight with a handle"),
    ],
)
async def test_a_word_of_the_trade_is_explained(crew, asked, told):
    ilse = await crew.has("Ilse")
    await ilse.says(asked)
    await ilse.hears(told)


async def test_what_was_asked_for_is_explained_and_then_the_way_they_have_it(crew):
    ilse = await crew.has("Ilse")
    await crew.gets()
    await answers_what_is_asked(ilse)
    version = (await ilse.last_message).text
    assert "push-ups with your hands on a chair" in version
    await ilse.says("how do i do a push up?")
    shown = (await ilse.hears("ush-up")).text
    assert shown.startswith("Push-up: push-ups on the floor")
    assert "chair" in shown.partition("As you have it today:")[2]
    await ilse.says("what is a box jump?")
    told = (await ilse.hears("Box jump")).text
    assert "As you have it today" not in told


async def test_the_question_that_is_open_stays_so(crew):
    await crew.gets()
    ilse = await crew.has("Ilse")
    await ilse.hears("What do you have to train with?")
    await ilse.says("what does amrap mean")
    await ilse.hears("as many rounds as possible")
    await ilse.says("a chair")
    await ilse.hears("I've noted: a chair")
