"""An athlete's way in: consent, screening, the questions of this session, the version."""

from datetime import timedelta

import pytest

from tests.acceptance.people import (
    HEALTHY_AND_ACTIVE,
    answers_screening,
    answers_what_is_asked,
    consents,
    passes_screening,
    start_link,
)

SYMPTOMS = ("Yes", "Yes")
DISEASE_AND_INACTIVE = ("Yes", "No", "Yes", "No")
DISEASE_AND_ACTIVE = ("Yes", "No", "Yes", "Yes")
HEALTHY_AND_INACTIVE = ("Yes", "No", "No", "No")


async def test_from_the_post_to_my_version(crew):
    await crew.gets()
    ilse = await crew.room.person("Ilse")
    await ilse.joins(crew.group)
    await ilse.presses("My version")
    await consents(ilse)
    await answers_screening(ilse, HEALTHY_AND_ACTIVE)
    await ilse.hears("What do you have to train with?")
    await ilse.says("one 10 kg dumbbell and a chair")
    await ilse.hears("I've noted: a dumbbell of 10 kg and a chair.")


async def test_at_most_six_taps_and_two_typed_answers(crew):
    ilse = await crew.has("Ilse")
    await crew.gets()
    taps, typed = await answers_what_is_asked(ilse)
    assert taps <= 6
    assert typed <= 2
    assert "Your version" in (await ilse.last_message).text


@pytest.mark.parametrize(
    ("answers", "told"),
    [
        (("No",), "only work with adults"),
        (SYMPTOMS, "see a doctor about that before you train"),
        (DISEASE_AND_INACTIVE, "ask your doctor before you start"),
        (DISEASE_AND_ACTIVE, "moderate effort"),
        (HEALTHY_AND_INACTIVE, "start light to moderate"),
    ],
)
async def test_each_end_of_the_screening_is_told_in_plain_words(crew, answers, told):
    bo = await crew.room.person("Bo")
    await bo.joins(crew.group)
    await bo.opens(await start_link(crew.group))
    await consents(bo)
    await answers_screening(bo, answers)
    await bo.hears(told)


async def test_with_symptoms_there_is_no_session_until_cleared(crew):
    await crew.gets()
    bo = await crew.room.person("Bo")
    await bo.joins(crew.group)
    await bo.opens(await start_link(crew.group))
    await consents(bo)
    await answers_screening(bo, SYMPTOMS)
    await bo.hears("see a doctor")
    await bo.says("/today")
    await bo.hears("no session for you yet")
    await bo.presses("My doctor has cleared me")
    await bo.hears("start again lighter")
    await bo.hears("What do you have to train with?")


async def test_without_consent_nothing_is_kept(crew):
    await crew.gets()
    bo = await crew.room.person("Bo")
    await bo.joins(crew.group)
    await bo.presses("My version")
    await bo.hears("May I keep these notes?")
    await bo.presses("No")
    await bo.hears("I keep nothing")
    await bo.presses("Yes, keep my notes")
    await bo.hears("18 or older")


async def test_somebody_from_outside_the_group_gets_nothing(crew):
    await crew.gets()
    link = await start_link(crew.group)
    stranger = await crew.room.person("Stranger")
    await stranger.opens(link)
    await stranger.hears("for members of its group")


async def test_joining_before_anything_is_posted_is_fine(crew):
    ilse = await crew.room.person("Ilse")
    await ilse.joins(crew.group)
    await passes_screening(ilse, await start_link(crew.group))
    await ilse.hears("Nothing is posted yet")


async def test_an_answer_that_cannot_be_read_is_asked_again_kindly(crew):
    ilse = await crew.has("Ilse")
    await crew.gets()
    await ilse.presses("My version")
    await ilse.hears("What do you have to train with?")
    await ilse.says("flurbs and gribbles")
    await ilse.hears("I didn't get “flurbs and gribbles”")
    await ilse.presses("Nothing, just me")
    await ilse.hears("?")


async def test_who_is_not_adult_can_not_be_cleared_by_a_press(crew):
    await crew.gets()
    kid = await crew.room.person("Kid")
    await kid.joins(crew.group)
    await kid.opens(await start_link(crew.group))
    await consents(kid)
    await answers_screening(kid, ("No",))
    told = await kid.hears("only work with adults")
    await kid.says("/today")
    await kid.hears("only work with adults")
    await kid.presses_data(told, "cl:1")
    await kid.hears("only work with adults")


async def test_the_screening_comes_again_after_a_year(crew):
    ilse = await crew.has("Ilse")
    await crew.room.travels(timedelta(days=366))
    await crew.gets()
    await ilse.presses("My version")
    await ilse.hears("18 or older")
