"""What an athlete did before is told to whoever asks for their own."""

from datetime import timedelta

from tests.acceptance.people import answers_what_is_asked


async def test_the_last_scores_are_told_with_what_they_were_of(crew, ilse, posted):
    await answers_what_is_asked(ilse)
    await ilse.says("7+12")
    await ilse.hears("Noted")
    await ilse.says("what were my last scores?")
    told = await ilse.hears("Your last scores")
    assert "7 rounds + 12" in told.text
    assert "push-ups" in told.text


async def test_who_told_none_is_told_so(crew, ilse):
    await ilse.says("show me my progress")
    await ilse.hears("I know of no score of yours so far")


SAME = "{}\nAMRAP 12\n8 push-ups\n15 air squats"


async def test_progress_tells_what_came_again_and_what_somebody_is_thought_to_be_able_to_do(crew, ilse):
    for day, score in (("Monday", "7+5"), ("Tuesday", "8+2")):
        await crew.gets(SAME.format(day))
        await answers_what_is_asked(ilse)
        await ilse.says(score)
        await ilse.hears("How hard was")
        await ilse.presses("8")
        await crew.room.travels(timedelta(days=1))
    await ilse.says("am I getting better?")
    told = await ilse.hears("I need 4 more scores")
    assert "7 rounds + 5 on" in told.text
    assert "Your best yet" in told.text
    assert "What I think you can do in one go" in told.text


async def test_after_six_scores_it_says_whether_somebody_gets_better(crew, ilse):
    for day in range(6):
        await crew.gets(SAME.format(f"Session {'abcdef'[day]}"))
        await answers_what_is_asked(ilse)
        await ilse.says(f"{8 + day}+2")
        await ilse.hears("How hard was")
        await ilse.presses("8")
        await crew.room.travels(timedelta(days=1))
    await ilse.says("am I getting better?")
    await ilse.hears("your last six scores")


async def test_how_somebody_gets_on_is_a_picture_too_with_what_it_shows_in_words(crew, ilse):
    for day, score in (("Monday", "7+5"), ("Tuesday", "8+2")):
        await crew.gets(SAME.format(day))
        await answers_what_is_asked(ilse)
        await ilse.says(score)
        await ilse.hears("How hard was")
        await ilse.presses("8")
        await crew.room.travels(timedelta(days=1))
    await ilse.says("am I getting better?")
    picture = await ilse.hears("2 times from")
    assert picture.kind == "photo"
    assert "first 7 rounds + 5, last 8 rounds + 2" in picture.text
    assert (await ilse.hears("I need 4 more scores")).kind == "text"
