"""The coach says what counts as written; versions, scores and the board follow."""

import pytest

from tests.acceptance.versions.test_changing_a_version import answers
from tests.acceptance.worlds import world

SESSION = "Tuesday\nAMRAP 12\n10 push-ups\n12 goblet squats @ 16 kg\n200 m run"


async def gets_ready(crew, equipment="a 15 kg kettlebell"):
    ilse = await crew.has("Ilse")
    await crew.gets(SESSION)
    await answers(ilse, equipment)
    return ilse


@world
async def ilse(crew):
    return await gets_ready(crew)


async def test_at_first_only_exactly_what_was_written_counts(crew, ilse):
    assert "Your version: " not in (await ilse.last_message).text
    await ilse.says("7+12")
    await ilse.hears("Noted: 7 rounds + 12, scaled")


async def test_a_little_lighter_counts_once_the_coach_says_so(crew):
    await crew.coach.says("10% lighter counts as written")
    await crew.coach.hears("up to 10% lighter, with the implement you wrote, counts as written")
    ilse = await gets_ready(crew)
    version = (await ilse.last_message).text
    assert "Your version: counts as written" in version
    assert "15 kg" in version
    await ilse.says("7+12")
    await ilse.hears("Noted: 7 rounds + 12, as written")
    assert "As written\n1. Ilse" in (await crew.group.hears("Scoreboard")).text


async def test_the_board_of_the_day_follows_by_a_button(crew, ilse):
    await ilse.says("7+12")
    await ilse.hears("scaled")
    assert "Scaled\n1. Ilse" in (await crew.group.hears("Scoreboard")).text
    await crew.coach.says("/board")
    await crew.coach.presses("Look at the scores", on=await crew.coach.hears("Scoreboard"))
    await crew.coach.presses("What counts as written", on=await crew.coach.hears("Tap a score"))
    asked = await crew.coach.hears("Only exactly what you wrote counts as written")
    assert "No lighter ✓" in asked.labels
    await crew.coach.presses("10% lighter", on=asked)
    await crew.coach.hears("One score of today moved")
    assert "As written\n1. Ilse" in (await crew.group.hears("Scoreboard")).text
    await crew.coach.says("only exactly as written counts")
    await crew.coach.hears("One score of today moved")
    assert "Scaled\n1. Ilse" in (await crew.group.hears("Scoreboard")).text


async def test_an_athletes_own_word_of_scaled_stays(crew):
    ilse = await gets_ready(crew, "a 16 kg kettlebell")
    await ilse.says("7+12 scaled")
    await ilse.hears("scaled")
    await crew.coach.says("tolerance 20%")
    await crew.coach.hears("up to 20% lighter")
    assert "moved" not in (await crew.coach.last_message).text


async def test_another_implement_of_the_same_weight_counts_if_the_coach_says_so(crew):
    await crew.coach.says("another implement counts as written")
    await crew.coach.hears("no lighter, with whatever implement, counts as written")
    ilse = await crew.has("Ilse")
    await crew.gets(SESSION.replace("goblet squats @ 16 kg", "kettlebell swings @ 16 kg"))
    await answers(ilse, "a 16 kg dumbbell")
    assert "counts as written" in (await ilse.last_message).text


@pytest.mark.parametrize("text", ["what counts as written?", "90% lighter counts as written"])
async def test_a_question_and_too_much_are_answered_with_what_counts_now(crew, text):
    await crew.coach.says(text)
    await crew.coach.hears("What counts as written in Harbour crew")


async def test_only_the_coach_says_what_counts(crew, ilse):
    await ilse.says("50% lighter counts as written")
    await ilse.presses_data(await ilse.last_message, "ot:1:50:True")
    await ilse.sees_toast("Only the coach")
