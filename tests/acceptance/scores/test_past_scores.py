"""What an athlete did before is told to whoever asks for their own."""

from tests.acceptance.people import answers_what_is_asked


async def test_the_last_scores_are_told_with_what_they_were_of(crew):
    ilse = await crew.has("Ilse")
    await crew.gets()
    await answers_what_is_asked(ilse)
    await ilse.says("7+12")
    await ilse.hears("Noted")
    await ilse.says("what were my last scores?")
    told = await ilse.hears("Your last scores")
    assert "7 rounds + 12" in told.text
    assert "push-ups" in told.text


async def test_who_told_none_is_told_so(crew):
    ilse = await crew.has("Ilse")
    await ilse.says("show me my progress")
    await ilse.hears("I know of no score of yours so far")
