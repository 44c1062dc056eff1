"""A draft that was discarded can be had back as it was; what is past says that it is."""

from datetime import timedelta

from tests.acceptance.people import SESSION, answers_what_is_asked


async def test_a_discarded_draft_comes_back_by_a_tap(crew):
    await crew.coach.says(SESSION)
    await crew.coach.presses("Discard", on=await crew.coach.hears("Here's how I read it"))
    await crew.coach.presses("Bring it back", on=await crew.coach.hears("Send me another whenever"))
    again = await crew.coach.hears("Here's how I read it")
    await crew.coach.presses("Post now", on=again)
    await crew.group.hears("Tap for your own version")


async def test_once_back_it_isnt_brought_back_again(crew):
    await crew.coach.says(SESSION)
    await crew.coach.presses("Discard", on=await crew.coach.hears("Here's how I read it"))
    gone = await crew.coach.hears("Send me another whenever")
    await crew.coach.presses("Bring it back", on=gone)
    await crew.coach.presses("Post now", on=await crew.coach.hears("Here's how I read it"))
    await crew.group.hears("Tap for your own version")
    await crew.coach.presses("Bring it back", on=gone)
    await crew.coach.sees_toast("done already")


async def test_a_button_of_an_older_version_says_what_it_is_of(crew, ilse, posted):
    await answers_what_is_asked(ilse)
    older = next(one for one in await ilse.messages if "Change a line" in one.labels)
    await crew.room.travels(timedelta(days=1))
    await crew.gets("Wednesday\n3 rounds for time\n10 push-ups")
    await ilse.presses("Change a line", on=older)
    told = await ilse.hears("A newer one is there")
    assert "“Tuesday”" in told.text
    assert "My session of today" in told.labels
