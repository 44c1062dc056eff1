"""The side of what hurts: asked, told in words, kept, and shown where it matters."""

from datetime import timedelta

import pytest

from tests.acceptance.people import answers_what_is_asked
from tests.acceptance.worlds import world

SESSION = "Tuesday\nAMRAP 12\n10 push-ups\n12 goblet squats @ 16/12 kg\n200 m run"


async def has_a_version(crew, spares=None):
    ilse = await crew.has("Ilse")
    await crew.gets(SESSION)
    if spares is None:
        await answers_what_is_asked(ilse)
        return ilse
    await ilse.presses("My version")
    while "Your version" not in (message := await ilse.hears("")).text:
        if "your body needs to spare" in message.text or "body needs to spare" in message.text:
            await ilse.says(spares)
        elif "What do you have" in message.text:
            await ilse.says("a 10 kg dumbbell and a chair")
        elif "What do you weigh" in message.text:
            await ilse.says("62")
        elif message.all_buttons:
            await ilse.presses(message.all_buttons[0].label, on=message)
    return ilse


async def me(ilse):
    await ilse.says("/me")
    return await ilse.hears("here's what I know")


@world
async def ilse(crew):
    return await has_a_version(crew)


async def test_the_side_is_kept_from_the_first_question_on(crew):
    ilse = await has_a_version(crew, "left wrist and my right knee, no jumping")
    assert "Left wrist: Keep your wrists straight" in (await ilse.last_message).text
    known = (await me(ilse)).text
    assert "sore wrist (left, I ask again on 9 March)" in known
    assert "sore knee (right, I ask again on 9 March)" in known
    assert "no jumping" in known


async def test_what_was_understood_is_shown_with_its_side(crew, ilse):
    await ilse.presses("To spare", on=await me(ilse))
    await ilse.hears("needs to spare")
    await ilse.says("sore left wrist")
    await ilse.hears("I'll keep in mind: sore wrist (left)")


async def test_my_left_wrist_hurts_can_be_said_at_any_time(crew, ilse):
    await ilse.says("my left wrist hurts")
    await ilse.hears("I'm sorry about your left wrist")
    assert "Left wrist: Keep your wrists straight" in (await ilse.hears("Your version")).text
    assert "sore wrist (left" in (await me(ilse)).text
    await crew.room.travels(timedelta(days=8))
    await ilse.hears("How is your left wrist?")


async def test_the_athlete_says_when_it_is_over(crew, ilse):
    await ilse.says("my left wrist hurts")
    await ilse.hears("Your version")
    await ilse.says("my wrist is fine again")
    await ilse.hears("Your left wrist may work again")
    assert "Left wrist" not in (await ilse.hears("Your version")).text
    assert "To spare: nothing" in (await me(ilse)).text


async def test_a_side_that_changes_no_line_is_only_noted(crew, ilse):
    await ilse.says("my wrist hurts")
    asked = await ilse.hears("Which side is it?")
    await ilse.hears("Your version")
    await ilse.presses("Left", on=asked)
    await ilse.hears("Noted: your left wrist. Your version stays as it is.")
    await ilse.hears_nothing()


@pytest.mark.parametrize("words", ["it's the left one", "the left", "on the left side"])
async def test_the_side_may_be_told_days_later(crew, words, ilse):
    await ilse.says("my wrist hurts")
    await ilse.hears("Your version")
    await crew.room.travels(timedelta(days=2))
    await ilse.says("right")
    await ilse.hears("Nothing was waiting")
    await ilse.says(words)
    await ilse.hears("Noted: your left wrist.")
    assert "sore wrist (left" in (await me(ilse)).text


async def test_a_version_that_is_another_by_now_is_shown_with_the_side(crew, ilse):
    await ilse.says("I only have 5 minutes today")
    await ilse.hears("Your version")
    await ilse.says("my wrist hurts")
    await ilse.hears("Your version")
    await crew.room.travels(timedelta(days=1))
    await ilse.says("it's the left one")
    noted = await ilse.hears("Noted: your left wrist.")
    assert "stays as it is" not in noted.text
    assert "12 minutes" in (await ilse.hears("Your version")).text


async def test_of_two_pains_of_one_day_the_side_alone_names_none(crew, ilse):
    await ilse.says("my wrist and my knee hurt")
    await ilse.hears("Your version")
    await ilse.says("the left one")
    await ilse.hears("I didn't get")


async def test_told_again_without_a_side_it_is_still_the_left_one(crew, ilse):
    await ilse.says("my left wrist hurts")
    await ilse.hears("Your version")
    await ilse.says("ouch, my wrist still hurts")
    await ilse.hears("I'm sorry about your left wrist")


async def test_the_coach_sees_the_side_only_if_the_athlete_agrees(crew, ilse):
    await ilse.says("my left wrist hurts")
    await ilse.hears("Your version")
    assert "wrist" not in (await looked_at(crew)).text
    await ilse.presses("Let my coach see what I spare", on=await me(ilse))
    await ilse.hears("Your coach sees from now on what you spare")
    assert "Spares: sore wrist (left)." in (await looked_at(crew)).text
    await ilse.presses("Keep what I spare from my coach", on=await me(ilse))
    await ilse.hears("doesn't see any more what you spare")
    assert "wrist" not in (await looked_at(crew)).text


async def looked_at(crew):
    await crew.coach.says("show me Ilse")
    return await crew.coach.hears("Ilse, as I'd do it")


@pytest.mark.parametrize("text", ["my left wrist hurts", "my wrist is fine again"])
async def test_nothing_of_it_is_kept_before_consent(crew, text):
    bo = await crew.room.person("Bo")
    await bo.joins(crew.group)
    await bo.says(text)
    await bo.hears("Hello!")
