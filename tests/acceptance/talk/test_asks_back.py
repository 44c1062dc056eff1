"""Whoever doesn't know what is meant hears it in plain words, and is asked again for as long as they ask."""

import pytest

from tests.acceptance.worlds import world


@world
async def asked(crew):
    """Siv was asked what she has to train with, as somebody who has never trained."""
    siv = await crew.has("Siv")
    await crew.gets("Tuesday\nAMRAP 10\n8 push-ups\n10 goblet squats @ 16/12 kg")
    await siv.presses("My version")
    await siv.hears("What do you have to train with?")
    return siv


@pytest.mark.parametrize("words", ["sorry i dont understand this", "what does that mean?"])
async def test_each_question_is_told_in_plain_words(asked, words):
    await asked.says(words)
    await asked.hears("what there is at home that you could lift")
    await asked.hears("What do you have to train with?")
    await asked.says("a 16 kg kettlebell")
    await asked.hears("16 kg and 12 kg")
    await asked.says(words)
    await asked.hears("take the lighter: tap the second key")
    await asked.hears("Which is meant for you?")


async def test_whoever_asks_three_times_is_asked_still(asked):
    for _ in range(3):
        await asked.says("what does that mean?")
        await asked.hears("Tap all that you have")
        await asked.hears("What do you have to train with?")


async def test_what_asks_anew_is_not_said_twice(asked):
    await asked.says("my version")
    await asked.hears("What do you have to train with?")
    await asked.hears_nothing()
