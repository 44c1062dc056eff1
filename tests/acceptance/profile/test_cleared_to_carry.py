"""Whoever looks after a pregnancy or a birth agreed: told in words, it counts from then on."""

import pytest


async def pregnant(ilse):
    await ilse.says("i'm pregnant, 14 weeks")
    await ilse.hears("pregnancy")


@pytest.mark.parametrize(
    "words", ["midwife says its fine to train", "my doctor gave me the ok", "cleared by my midwife"]
)
async def test_a_word_of_the_midwife_is_kept(crew, ilse, words):
    await pregnant(ilse)
    await ilse.says(words)
    await ilse.hears("I go by that from your next version on")


@pytest.mark.parametrize("words", ["my midwife hasn't cleared me yet", "when the midwife says it's ok"])
async def test_what_is_not_said_yet_is_not_kept(crew, ilse, words):
    await pregnant(ilse)
    await ilse.says(words)
    assert not [one for one in await ilse.messages if "I go by that" in one.text]


async def test_of_nobody_who_told_of_neither(crew, ilse):
    await ilse.says("midwife says its fine to train")
    await ilse.hears("")
    assert not [one for one in await ilse.messages if "I go by that" in one.text]
