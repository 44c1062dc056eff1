"""Athletes who train somewhere else say so in words."""

from datetime import timedelta

import pytest

from tests.acceptance.versions.test_changing_a_version import has_a_version, new_version
from tests.acceptance.worlds import world


@world
async def ilse(crew):
    return await has_a_version(crew)


@pytest.mark.parametrize(
    ("words", "there"),
    [("I'm travelling, only a band", "a band"), ("at my mum's, no weights", "nothing, just you")],
)
async def test_today_takes_place_with_what_is_there(crew, words, there, ilse):
    await ilse.says(words)
    await ilse.hears(f"Away from home you have now: {there}")
    noted = await ilse.hears("Noted: away from home, for today. Does it last longer?")
    assert "kettlebell" not in await new_version(ilse)
    await ilse.presses(noted.all_buttons[1].label, on=noted)
    await ilse.hears("Noted: away from home, until Wednesday, 4 March")
    await ilse.says("/me")
    assert "8 kg" in (await ilse.hears("Equipment:")).text


async def test_a_day_that_is_named_is_kept(crew, ilse):
    await ilse.says("on holiday until sunday with just a band")
    noted = await ilse.hears("Noted: away from home, until Sunday, 8 March")
    await ilse.presses("As usual again", on=noted)
    await ilse.hears("As usual again")


async def test_what_is_there_is_asked_for_where_it_was_not_said(crew, ilse):
    await ilse.says("I'm travelling")
    await ilse.hears("What do you have to train with away from home?")
    await ilse.says("a band")
    await ilse.hears("Away from home you have now: a band")
    assert "kettlebell" not in await new_version(ilse)


async def test_the_last_day_stays_known_while_the_weight_is_asked_for(crew, ilse):
    await ilse.says("I'm at my mum's until Friday with one kettlebell")
    await ilse.hears("I didn't get “one kettlebell”. What do you have to train with away from home?")
    await ilse.says("a 12 kg kettlebell")
    await ilse.hears("Away from home you have now: a kettlebell of 12 kg")
    await ilse.hears("Noted: away from home, until Friday, 6 March")
    await ilse.hears("Your version")


async def test_next_week_begins_on_its_monday_and_ends_by_itself(crew, ilse):
    await ilse.says("next week I only have a band")
    await ilse.hears("Away from home you have now: a band")
    await ilse.hears("Noted: away from home, from Monday, 9 March until Sunday, 15 March.")
    await ilse.hears_nothing()
    await ilse.says("/today")
    assert "away from home" not in (await ilse.hears("Your version")).text
    await crew.room.travels(timedelta(days=7))
    await ilse.says("/today")
    there = (await ilse.hears("Your version")).text
    assert "Today: away from home" in there
    assert "kettlebell" not in there
    await crew.room.travels(timedelta(days=7))
    await ilse.says("/today")
    assert "away from home" not in (await ilse.hears("Your version")).text


async def test_what_is_there_next_week_is_asked_for_and_today_stays_as_it_is(crew, ilse):
    await ilse.says("next week I'm at my mum's")
    await ilse.hears("What do you have to train with away from home?")
    await ilse.says("a 12 kg kettlebell")
    await ilse.hears("Away from home you have now")
    noted = await ilse.hears("from Monday, 9 March until Sunday, 15 March")
    await ilse.hears_nothing()
    await ilse.presses("As usual again", on=noted)
    await ilse.hears("As usual again, then.")


async def test_a_day_that_comes_leaves_the_days_before_it_as_they_were(crew, ilse):
    await ilse.says("I'm travelling until friday, only a band")
    await ilse.hears("Your version")
    await ilse.says("next week I only have a 12 kg kettlebell")
    await ilse.hears("from Monday, 9 March until Sunday, 15 March")
    await ilse.says("/today")
    assert "Today: away from home" in (await ilse.hears("Your version")).text


async def test_short_of_time_tomorrow_is_not_short_of_time_today(crew, ilse):
    await ilse.says("tomorrow I have only 5 minutes")
    await ilse.hears("Noted: 5 minutes, for Tuesday, 3 March.")
    await ilse.hears_nothing()
    await crew.room.travels(timedelta(days=1))
    await ilse.says("/today")
    assert "Today: 5 minutes" in (await ilse.hears("Your version")).text


async def test_it_may_be_told_before_there_is_a_session(crew):
    ilse = await crew.has("Ilse")
    await ilse.says("I'm travelling, only a band")
    await ilse.hears("Away from home you have now: a band")
    await ilse.hears("Noted: away from home, for today")


async def test_who_is_travelling_when_asked_for_equipment_goes_on_to_their_version(crew):
    await crew.gets()
    ilse = await crew.has("Ilse")
    await ilse.hears("What do you have to train with?")
    await ilse.says("im travelling, only got a band")
    await ilse.hears("Away from home you have now: a band")
    await ilse.hears("Noted: away from home, for today")
    await ilse.hears("anything your body needs to spare")


async def test_what_was_forgotten_comes_into_the_next_version(crew, ilse):
    await ilse.says("oh I also have a 16 kg kettlebell")
    await ilse.hears("16 kg")
    await ilse.says("/today")
    assert "16 kg kettlebell" in (await ilse.hears("Your version")).text


async def test_who_is_at_the_gym_gets_what_fits_there(crew, ilse):
    await ilse.says("im at the gym today, they have everything")
    await ilse.hears("In the gym you have now")
    await ilse.hears("Noted: in the gym")
    await ilse.hears("Your version")


async def test_who_is_back_home_sooner_says_so(crew, ilse):
    await ilse.says("I'm travelling this week, only a band")
    assert "Today: away from home" in (await ilse.hears("Your version")).text
    await ilse.says("I'm back home")
    await ilse.hears("As usual again, then")
    assert "away from home" not in (await ilse.hears("Your version")).text


async def test_who_never_was_away_is_welcome_home_to_no_effect(crew, ilse):
    await ilse.says("I'm back home")
    await ilse.hears("Welcome home!")
