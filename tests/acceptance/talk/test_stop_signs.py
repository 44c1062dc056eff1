"""Stop signs, told or asked about: safety first, and nobody is locked out without a word."""

import pytest

from tests.acceptance.people import consents, start_link
from tests.acceptance.versions.test_changing_a_version import has_a_version
from tests.acceptance.worlds import world

ASKED = "is it normal to feel dizzy after burpees?"


@world
async def ilse(crew):
    return await has_a_version(crew)


async def test_who_only_asked_is_held_and_told_how_to_go_on(crew, ilse):
    await ilse.says(ASKED)
    held = await ilse.hears("to be safe I hold your sessions")
    assert "call your local emergency number" in held.text
    await ilse.says("/today")
    await ilse.hears("no session for you yet")
    await ilse.presses("I was only asking", on=held)
    await ilse.presses("No, none of it", on=await ilse.hears("One question, to be sure"))
    await ilse.hears("Your version")
    await ilse.says("7+12")
    await ilse.hears("You're the first on the board")


async def test_the_way_out_goes_in_words_too(crew, ilse):
    await ilse.says(ASKED)
    await ilse.hears("to be safe I hold your sessions")
    await ilse.says("I was only asking")
    await ilse.hears("One question, to be sure")
    await ilse.says("no")
    await ilse.hears("Your version")


@pytest.mark.parametrize("answer", ["Yes", "yes, sometimes"])
async def test_who_had_a_sign_after_all_waits_for_their_doctor(crew, answer, ilse):
    await ilse.says("I feel dizzy")
    stop = await ilse.hears("Stop now and sit down")
    await ilse.presses("You got me wrong", on=stop)
    asked = await ilse.hears("One question, to be sure")
    await (ilse.presses(answer, on=asked) if answer == "Yes" else ilse.says(answer))
    await ilse.hears("no session for you yet" if answer == "Yes" else "One question, to be sure")
    await ilse.says("/today")
    await ilse.hears("no session for you yet")


async def test_who_was_cleared_may_write_it(crew, ilse):
    await ilse.says("I feel dizzy")
    await ilse.hears("Stop now and sit down")
    await ilse.says("my doctor has cleared me")
    await ilse.hears("start again lighter than before")


async def test_a_sign_before_the_first_questions_were_answered_leads_back_to_them(crew):
    from_the_start = await crew.room.person("Bo")
    await from_the_start.joins(crew.group)
    await from_the_start.opens(await start_link(crew.group))
    await consents(from_the_start)
    await from_the_start.hears("Are you 18 or older?")
    await from_the_start.says(ASKED)
    await from_the_start.presses("I was only asking", on=await from_the_start.hears("to be safe"))
    await from_the_start.presses("No, none of it", on=await from_the_start.hears("One question, to be sure"))
    await from_the_start.hears("Are you 18 or older?")


async def test_somebody_elses_sign_is_answered_and_holds_nobody(crew, ilse):
    await ilse.says("what should I do if somebody feels faint?")
    await ilse.hears("call your local emergency number")
    await ilse.says("/today")
    await ilse.hears("Your version")


async def test_a_sign_of_somebody_of_the_group_who_is_named_holds_nobody(crew):
    await crew.has("Bo")
    ilse = await has_a_version(crew)
    await ilse.says("Bo fainted")
    await ilse.hears("call your local emergency number")
    await ilse.says("/today")
    await ilse.hears("Your version")


@pytest.mark.parametrize("words", ["Kim fainted", "ilse fainted"])
async def test_a_name_that_may_be_anybodys_or_their_own_holds_them(crew, words, ilse):
    await ilse.says(words)
    await ilse.hears("Stop now and sit down")


async def test_words_that_are_no_answer_are_told_what_waits_for_one(crew, ilse):
    await ilse.says("felt woozy at the end")
    await ilse.hears("Stop now and sit down")
    await ilse.says("I'm fine now")
    await ilse.hears("Good that you say so")
    await ilse.says("6+2")
    await ilse.hears("Your sessions wait for this answer first")
    await ilse.says("my doctor says all good")
    await ilse.hears("start again lighter than before")


async def test_a_sign_of_a_pregnancy_leads_to_the_midwife_and_no_score_is_cheered(crew, ilse):
    await ilse.says("I'm bleeding")
    await ilse.hears("")
    await ilse.says("/me")
    await ilse.presses("To spare", on=await ilse.hears("here's what I know"))
    await ilse.hears("spare")
    await ilse.says("I'm 20 weeks pregnant")
    await ilse.hears("pregnancy")
    await ilse.says("4 rounds, felt some contractions")
    told = await ilse.hears("Call your midwife or your doctor now")
    assert "Well done" not in told.text
    await ilse.says("I'm bleeding")
    await ilse.hears("Call your midwife or your doctor now")
    await crew.group.hears_nothing()


async def test_whoever_is_held_always_reads_how_to_go_on(crew, ilse):
    await ilse.says("im dizzy")
    await ilse.hears("Stop now and sit down")
    await ilse.says("ok it passed, i just stood up too quick")
    told = await ilse.hears("a doctor should look at first")
    assert told.labels == ["My doctor has cleared me", "You got me wrong"]
