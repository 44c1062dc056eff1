"""Nothing lands on a day that isn't meant: a score is of the session shown last, if it may be, or is asked about."""

from datetime import timedelta

import pytest

from tests.acceptance.people import answers_what_is_asked
from tests.acceptance.worlds import world

FOR_TIME = "For time\n50 push-ups\n400 m run"
INTERVALS = "Intervals:\n5 x 400 m run\nrest 2 min between"


@world
async def ilse(crew):
    person = await crew.has("Ilse")
    await crew.gets()
    await answers_what_is_asked(person)
    return person


async def test_the_receipt_names_the_session(crew, ilse):
    await ilse.says("7+12")
    assert ", for “Tuesday” on " in (await ilse.hears("Noted: 7 rounds + 12")).text


async def test_a_score_goes_to_the_session_shown_last_if_it_may_be_of_that(crew, ilse):
    await crew.gets(FOR_TIME)
    await ilse.says("8:43")
    await ilse.hears("Noted: 8:43")
    await crew.group.hears("8:43")


async def test_what_is_plainly_of_an_older_one_and_of_no_other_goes_there(crew, ilse):
    await crew.gets(FOR_TIME)
    await ilse.says("7+12")
    await ilse.hears("Noted: 7 rounds + 12")


async def test_one_time_of_five_intervals_never_lands_on_the_day_before(crew, ilse):
    await crew.gets(FOR_TIME)
    await crew.gets(INTERVALS)
    await ilse.says("4:35")
    asked = await ilse.hears("Which session is that for?")
    assert len(asked.all_buttons) == 2
    await ilse.presses(asked.all_buttons[1].label, on=asked)
    await ilse.hears("Noted: 4:35")


@pytest.mark.parametrize("words", ["yesterday's session: 7+12", "forgot to post yesterday, 7+12"])
async def test_a_day_without_a_session_is_asked_about(crew, ilse, words):
    await ilse.says(words)
    await ilse.hears("Which session is that for?")
    await ilse.hears_nothing()


async def test_today_may_be_said(crew, ilse):
    await ilse.says("today's session: 7+12")
    await ilse.hears("Noted: 7 rounds + 12")


async def test_no_score_is_of_a_day_before_somebody_came(crew):
    await crew.gets()
    await crew.room.travels(timedelta(days=1))
    late = await crew.has("Alva")
    await late.says("did it!! got through 2 rounds, bit wobbly")
    await late.hears("")
    assert not [one for one in await crew.group.messages if "Scoreboard" in one.text]
    assert not [one for one in await late.messages if "Noted" in one.text]
