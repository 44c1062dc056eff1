"""What only an athlete tells of themselves isn't taken from their coach; it may be passed on to them."""

import pytest


@pytest.mark.parametrize(
    "words",
    ["Ilse's got a 16 kg bell", "Ilse has a bad wrist", "note for Ilse: she can front squat the pair of 15s"],
)
async def test_what_a_coach_tells_of_an_athlete_is_offered_to_the_athlete(crew, ilse, words):
    await crew.gets()
    await crew.coach.says(words)
    asked = await crew.coach.hears("I take from Ilse alone")
    await crew.coach.presses("Send to Ilse", on=asked)
    assert words in (await ilse.hears("Marit")).text


async def test_a_score_that_a_coach_tells_is_still_a_score(crew, ilse):
    await crew.gets()
    await crew.coach.says("Ilse got 7+12")
    assert "7 rounds + 12" in (await crew.coach.hears("Noted for Ilse")).text
