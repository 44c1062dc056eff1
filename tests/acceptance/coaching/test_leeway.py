"""What a coach lets one athlete do: heavier than written, or fewer before it gets easier."""

import pytest

from tests.acceptance.versions.test_changing_a_version import answers
from tests.acceptance.worlds import world

ROWS = "5 rounds for time\n8 single-arm rows each side @ 8 kg"


async def has_only_heavier(crew):
    ilse = await crew.has("Ilse")
    await crew.gets(ROWS)
    await answers(ilse, "a 12 kg dumbbell")
    return ilse


async def card(crew, reply):
    await crew.coach.presses("Look at their version", on=reply)
    return await crew.coach.hears("Ilse, as I'd do it")


@world
async def ilse(crew):
    return await has_only_heavier(crew)


async def test_the_coach_hears_that_only_something_heavier_is_there_and_lets_it_be_used(crew, ilse):
    needed = await crew.coach.hears("their 12 kg would suit them, if you let them go heavier")
    await crew.coach.presses("Let them go heavier, always", on=await card(crew, needed))
    await crew.coach.hears("From now on Ilse may go heavier than you write")
    await ilse.says("/today")
    assert "12 kg dumbbell" in (await ilse.hears("Your version")).text


async def test_it_is_taken_back_by_the_button_or_in_words(crew, ilse):
    await crew.coach.says("let Ilse go heavier")
    given = await crew.coach.hears("From now on Ilse may go heavier than you write")
    await crew.coach.presses("Take it back", on=given)
    await crew.coach.hears("Ilse goes no heavier than you write any more")
    await ilse.says("/today")
    assert "12 kg dumbbell" not in (await ilse.hears("Your version")).text
    await crew.coach.says("Ilse may go heavier")
    await crew.coach.hears("From now on Ilse may go heavier")
    await crew.coach.says("no heavier for Ilse")
    await crew.coach.hears("Ilse goes no heavier than you write any more")


async def test_volume_first_keeps_the_way_and_takes_repetitions_off(crew):
    ilse = await crew.has("Ilse")
    await crew.gets("6 rounds for time\n30 push-ups")
    await answers(ilse, "a table")
    await ilse.says("I can do 25 push-ups")
    await ilse.hears("25 push-ups")
    await crew.coach.says("volume first for Ilse")
    await crew.coach.hears("they do fewer of what you wrote before it gets easier")
    await ilse.says("/today")
    version = (await ilse.hears("Your version")).text
    assert "Fewer, so that every one of them stays clean" in version
    await crew.coach.says("what does Ilse do")
    await crew.coach.presses(
        "An easier way first again", on=await crew.coach.hears("they do fewer, before it gets easier")
    )
    await crew.coach.hears("an easier way comes first again")


@pytest.mark.parametrize("words", ["let Ilse go heavier", "volume first for Ilse"])
async def test_no_athlete_decides_that(crew, words, ilse):
    await ilse.says(words)
    heard = await ilse.hears("")
    assert "From now on" not in heard.text
