"""Somebody new asks what a word means, or how a movement is done."""

import pytest

from tests.acceptance.people import answers_what_is_asked
from tests.acceptance.worlds import world


@world
async def ilse(crew):
    return await with_a_version(crew)


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
    way = next(line for line in version.splitlines() if "push-ups" in line).partition("push-ups ")[2]
    assert way
    await ilse.says("how do i do a push up?")
    shown = (await ilse.hears("ush-up")).text
    assert shown.startswith("Push-up: push-ups on the floor")
    assert way in shown.partition("As you have it today:")[2]
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


SPARED = "AMRAP 12\n10 box jumps\n12 goblet squats @ 16/12 kg\n200 m run"


async def with_a_version(crew, session=SPARED):
    ilse = await crew.has("Ilse")
    await crew.gets(session)
    await answers_what_is_asked(ilse)
    return ilse


async def test_why_is_answered_with_the_lines_that_were_changed(crew, ilse):
    await ilse.says("why are the box jumps different?")
    told = await ilse.hears("You don't have a box")
    assert "200 m run" not in told.text
    assert "Warm-up" not in told.text
    await ilse.presses("My whole version", on=told)
    await ilse.hears("Your version")


async def test_how_heavy_is_answered_with_that_line(crew, ilse):
    await ilse.says("how heavy are the goblet squats?")
    told = await ilse.hears("goblet squats")
    assert "200 m run" not in told.text


async def test_what_is_asked_about_is_explained_before_what_stands_in_for_it(crew, ilse):
    await ilse.says("what is a box jump?")
    told = (await ilse.hears("As you have it today")).text
    asked, instead = told.split("As you have it today")
    assert asked.startswith("Box jump\nStart:")
    assert "Start:" in instead


async def test_the_longest_name_is_what_is_asked_about(crew):
    ilse = await crew.has("Ilse")
    await ilse.says("whats a single arm row")
    assert "Weight to your lowest rib" in (await ilse.hears("ingle-arm row")).text
