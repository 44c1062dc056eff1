"""Consent means consent, adults only, and whoever wants no messages gets none."""

import pytest

from tests.acceptance.people import answers_what_is_asked, consents, start_link


async def refuses(crew):
    sam = await crew.room.person("Sam")
    await sam.joins(crew.group)
    await sam.opens(await start_link(crew.group))
    await sam.hears("May I keep")
    await sam.presses("No")
    await sam.hears("I keep nothing")
    return sam


async def test_a_score_of_somebody_who_refused_is_neither_kept_nor_shown(crew, posted):
    sam = await refuses(crew)
    await sam.says("7+12")
    await sam.hears("I keep nothing of you without your yes")
    await crew.coach.says("/board")
    board = await crew.coach.hears("")
    assert "Sam" not in board.text
    assert not [one for one in await crew.group.messages if "7 rounds" in one.text]


async def test_whoever_then_agrees_tells_it_again_and_it_counts(crew, posted):
    sam = await refuses(crew)
    await sam.says("7+12")
    await sam.hears("I keep nothing of you without your yes")
    await sam.presses("Yes, keep my notes")
    await sam.hears("18 or older")
    await sam.says("yes")
    await sam.hears("lately had any of these")
    await sam.says("7+12")
    await sam.hears("Noted: 7 rounds + 12")


async def test_a_coach_can_not_put_somebody_on_the_board_who_did_not_agree(crew, posted):
    await refuses(crew)
    await crew.coach.says("Sam 7+12")
    await crew.coach.hears("I keep nothing of Sam yet")


async def test_an_old_no_after_a_yes_asks_whether_everything_shall_go(crew):
    sam = await crew.room.person("Sam")
    await sam.joins(crew.group)
    await sam.opens(await start_link(crew.group))
    asked = await sam.hears("May I keep")
    await sam.presses("Yes, keep them")
    await sam.hears("18 or older")
    await sam.presses("No", on=asked)
    heard = await sam.hears("")
    assert "I keep nothing" not in heard.text


@pytest.mark.parametrize("words", ["im 16 but strong", "I'm 15", "i'm only 14 years old", "I am not 18 yet"])
async def test_whoever_says_at_any_time_that_they_are_no_adult_gets_no_session(crew, words):
    kai = await crew.has("Kai")
    await crew.gets()
    await kai.says(words)
    await kai.hears("only work with adults")
    await kai.says("/today")
    await kai.hears("only work with adults")


async def test_no_second_tap_leads_round_the_age(crew, posted):
    kai = await crew.room.person("Kai")
    await kai.joins(crew.group)
    await kai.opens(await start_link(crew.group))
    await consents(kai)
    asked = await kai.hears("18 or older")
    await kai.says("im 16 but strong")
    await kai.hears("only work with adults")
    await kai.presses("Yes", on=asked)
    await kai.hears("only work with adults")
    await kai.says("9+3")
    await kai.hears("only work with adults")


@pytest.mark.parametrize(
    "words", ["I'm 16 reps short of eight rounds", "I'm 12 weeks pregnant", "my son is 15"]
)
async def test_other_numbers_are_no_age(crew, words, ilse):
    await ilse.says(words)
    heard = await ilse.hears("")
    assert "only work with adults" not in heard.text


@pytest.mark.parametrize("words", ["stop messaging me", "turn off all notifications"])
async def test_whoever_wants_no_messages_gets_answers_only_and_can_undo_it(crew, words, ilse, posted):
    await answers_what_is_asked(ilse)
    await ilse.says(words)
    asked = await ilse.hears("from now on I only answer")
    await crew.coach.says("Ilse 7+12")
    await crew.coach.hears("Noted for Ilse")
    await ilse.says("/board")
    await ilse.hears("Scoreboard")
    await ilse.presses("Message me again", on=asked)
    await ilse.hears("You get reminders and questions from me again")
    await crew.coach.says("Ilse 7+13")
    await crew.coach.hears("")
    told = [one.text for one in await ilse.messages]
    assert not [one for one in told if "entered" in one]
