"""What athletes weigh, told when nobody asked."""

import pytest

from tests.acceptance.people import start_link
from tests.acceptance.versions.test_changing_a_version import has_a_version
from tests.acceptance.worlds import world


@world
async def ilse(crew):
    return await has_a_version(crew)


@pytest.mark.parametrize("words", ["74kg", "I weigh 74kg", "my weight is 74"])
async def test_a_late_body_weight_is_kept_and_is_no_score(crew, words, ilse):
    await ilse.says(words)
    noted = await ilse.hears("Noted as your body weight: 74 kg")
    assert "Nobody else sees it" in noted.text
    await ilse.says("/me")
    await ilse.hears("Weight: 74 kg")
    await crew.group.hears_nothing()


async def test_a_body_weight_that_was_misread_is_asked_for_again(crew, ilse):
    await ilse.says("I weigh 163 lb")
    noted = await ilse.hears("your body weight: 163 lb")
    await ilse.presses("Not right", on=noted)
    await ilse.hears("What do you weigh")
    await ilse.says("72")
    await ilse.says("/me")
    await ilse.hears("Weight: 72 kg")


async def test_where_a_weight_is_the_score_a_weight_alone_is_one(crew, ilse):
    await crew.gets("Find a heavy single deadlift in 15 min")
    await ilse.says("74kg")
    await ilse.hears("Noted: 74 kg")


async def test_a_body_weight_told_instead_of_an_answer_is_kept_and_the_question_stays(crew):
    ilse = await crew.has("Ilse")
    await crew.gets()
    await ilse.presses("My version")
    await ilse.hears("What do you have")
    await ilse.says("I weigh 74kg")
    await ilse.hears("your body weight: 74 kg")
    await ilse.hears("What do you have")


async def test_nothing_is_kept_before_consent(crew):
    bo = await crew.room.person("Bo")
    await bo.joins(crew.group)
    await bo.opens(await start_link(crew.group))
    await bo.hears("May I keep these notes?")
    await bo.says("I weigh 74kg")
    await bo.hears("May I keep these notes?")


async def test_who_reads_pounds_says_so(crew, ilse, posted):
    await ilse.says("a 16 kg kettlebell")
    await ilse.hears("kettlebell of 16 kg")
    await ilse.says("can you show me pounds instead of kilos")
    await ilse.hears("I write your loads in pounds")
    await ilse.says("/me")
    assert "lb" in (await ilse.hears("here's what I know")).text


async def test_a_coach_speaks_of_the_group(crew):
    await crew.coach.says("we use pounds")
    await crew.coach.hears("loads in lb")
