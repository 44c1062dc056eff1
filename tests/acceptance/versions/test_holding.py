"""A coach keeps one athlete's versions for their OK; the athlete is never left with nothing."""

from datetime import timedelta

import pytest

from bot.bootstrap import build
from bot.telegram.conduct import make_conduct
from tests.acceptance.people import answers_what_is_asked
from tests.acceptance.worlds import world
from tests.support.in_process import InProcessRequest

FIRST = "First\nAMRAP 10\n8 push-ups\n10 goblet squats @ 16/12 kg\n200 m run"
SECOND = "Second\nAMRAP 12\n10 push-ups\n12 goblet squats @ 16/12 kg\n200 m run"


async def knows(crew, name="Ilse"):
    """Somebody who has seen a version before."""
    person = await crew.has(name)
    await crew.gets(FIRST)
    await answers_what_is_asked(person)
    await crew.room.travels(timedelta(days=1))
    return person


@world
async def ilse(crew):
    return await knows(crew)


async def holds(crew, words="hold Ilse for my OK"):
    await crew.coach.says(words)
    await crew.coach.hears("From now on I show you Ilse's versions first")


async def asks(person):
    await person.presses("My version")
    return await person.hears("Your coach likes to look at your version before you get it")


async def test_a_held_version_goes_to_the_coach_first_and_out_with_their_ok(crew, ilse):
    await holds(crew)
    await crew.gets(SECOND)
    await asks(ilse)
    look = await crew.coach.hears("Ilse asks for their version, and you hold theirs for your OK")
    assert "10 push-ups" in look.text
    await crew.coach.presses("OK, send it to them", on=look)
    await crew.coach.hears("Sent to Ilse")
    assert "Second" in (await ilse.hears("Your version")).text
    await crew.coach.hears_nothing()


async def test_who_waits_sees_what_the_whole_group_got(crew, ilse):
    await holds(crew)
    await crew.gets(SECOND)
    await ilse.presses("The session as posted", on=await asks(ilse))
    posted = await ilse.hears("This is what everybody got")
    assert "12 goblet squats @ 16/12 kg" in posted.text
    assert "Ready ways" in posted.text


async def test_the_read_back_says_who_is_held_and_an_ok_before_the_post_spares_the_wait(crew, ilse):
    await holds(crew)
    await crew.coach.says(SECOND)
    read = await crew.coach.hears("1 needs you: Ilse (held for your OK)")
    await crew.coach.presses("Go through who needs you", on=read)
    await crew.coach.presses("Ilse", on=await crew.coach.hears("These people need you"))
    card = await crew.coach.hears("You hold their versions")
    await crew.coach.presses("OK", on=card)
    await crew.coach.hears("Ilse gets it as soon as they ask, without waiting")
    await crew.coach.presses("Post now", on=read)
    await crew.group.hears("Second")
    await ilse.presses("My version")
    await ilse.hears("Your version")


async def test_an_ok_counts_for_what_was_looked_at_not_for_what_was_written_since(crew, ilse):
    await holds(crew)
    await crew.coach.says(SECOND)
    read = await crew.coach.hears("Here's how I read it")
    await crew.coach.presses("Go through who needs you", on=read)
    await crew.coach.presses("Ilse", on=await crew.coach.hears("These people need you"))
    card = await crew.coach.hears("You hold their versions")
    await crew.coach.says(SECOND.replace("12 goblet", "14 goblet"))
    await crew.coach.hears("1 needs you: Ilse")
    await crew.coach.presses("OK", on=card)
    await crew.coach.sees_toast("before something changed")
    await crew.coach.presses("Post now")
    await crew.group.hears("14 goblet")
    await asks(ilse)


async def test_the_coach_changes_a_line_before_the_ok(crew, ilse):
    await holds(crew)
    await crew.gets(SECOND)
    await asks(ilse)
    look = await crew.coach.hears("Ilse asks for their version")
    await crew.coach.presses("Change it first", on=look)
    await crew.coach.presses("1", on=await crew.coach.hears("Ilse, as I'd do it"))
    await crew.coach.hears("Ilse:")
    await crew.coach.presses("Easier")
    await crew.coach.presses("OK", on=await crew.coach.hears("(your choice)"))
    await crew.coach.hears("Sent to Ilse")
    assert "Your coach's choice" in (await ilse.hears("Your version")).text


async def test_it_stands_until_it_is_lifted_and_what_waited_goes_out_then(crew, ilse):
    await holds(crew)
    await crew.gets(SECOND)
    await asks(ilse)
    await crew.coach.presses("OK, send it to them")
    await ilse.hears("Your version")
    await crew.room.travels(timedelta(days=1))
    await crew.gets(SECOND.replace("Second", "Third"))
    await asks(ilse)
    await crew.coach.says("stop holding Ilse")
    await crew.coach.hears("Ilse gets their versions at once again")
    assert "Third" in (await ilse.hears("Your version")).text
    await crew.room.travels(timedelta(days=1))
    await crew.gets(SECOND.replace("Second", "Fourth"))
    await ilse.presses("My version")
    await ilse.hears("Your version")


async def test_what_went_out_before_the_hold_can_still_be_changed(crew, ilse):
    await crew.gets(SECOND)
    await ilse.presses("My version")
    await ilse.hears("Your version")
    await holds(crew)
    await ilse.presses("Today is different")
    await ilse.presses("Short of time", on=await ilse.hears("What's different"))
    await ilse.presses("10 minutes", on=await ilse.hears("How long"))
    await ilse.hears("Your version")


async def test_a_hold_outlives_a_restart(crew, bellwether, platform, settings, ilse):
    await holds(crew)
    await crew.gets(SECOND)
    await asks(ilse)
    look = await crew.coach.hears("Ilse asks for their version")
    await bellwether.stop()
    again = build(settings, make_conduct, clock=platform.clock, request=InProcessRequest(platform))
    await again.start()
    try:
        await ilse.says("/today")
        await ilse.hears("Your coach likes to look at your version")
        await crew.coach.presses("OK, send it to them", on=look)
        await ilse.hears("Your version")
    finally:
        await again.stop()


async def test_an_athletes_page_is_shown_by_name_and_holds_by_a_button(crew, ilse):
    await crew.gets(SECOND)
    await crew.coach.says("show me Ilse")
    await crew.coach.presses("Hold for my OK, always", on=await crew.coach.hears("Ilse, as I'd do it"))
    told = await crew.coach.hears("From now on I show you Ilse's versions first")
    await asks(ilse)
    await crew.coach.hears("Ilse asks for their version")
    await crew.coach.presses("Stop holding their versions", on=told)
    await crew.coach.hears("at once again")
    await ilse.hears("Your version")


async def test_a_score_without_having_seen_a_version_says_so(crew, ilse):
    await holds(crew)
    await crew.gets(SECOND)
    await asks(ilse)
    await ilse.says("7+12")
    noted = await ilse.hears("Noted")
    assert "It was as written" in [button.label for button in noted.all_buttons], noted


async def test_a_forgotten_ok_is_asked_for_once_more(crew, ilse):
    await holds(crew)
    await crew.gets(SECOND)
    await asks(ilse)
    await crew.coach.hears("Ilse asks for their version")
    await crew.room.travels(timedelta(hours=2, minutes=1))
    again = await crew.coach.hears("Ilse is still waiting for your OK")
    await crew.room.travels(timedelta(hours=3))
    await crew.coach.hears_nothing()
    await crew.coach.presses("OK, send it to them", on=again)
    await ilse.hears("Your version")


async def test_nobody_is_asked_again_for_what_has_gone_out(crew, ilse):
    await holds(crew)
    await crew.gets(SECOND)
    await asks(ilse)
    await crew.coach.presses("OK, send it to them", on=await crew.coach.hears("Ilse asks for their version"))
    await crew.coach.hears("Sent to Ilse")
    await crew.room.travels(timedelta(hours=3))
    await crew.coach.hears_nothing()


async def test_only_the_coach_holds(crew, ilse, bo):
    await bo.hears("What do you have")
    await bo.says("hold Ilse for my OK")
    await bo.hears("I didn't get")
    await bo.presses_data(await bo.last_message, "oh:1:2:True")
    await bo.sees_toast("Only the coach")
    await ilse.hears_nothing()


@pytest.mark.parametrize("name", ["Ilse", "what does ilse get?"])
async def test_with_no_session_there_is_nothing_to_look_at(crew, name):
    await crew.has("Ilse")
    await crew.coach.says(name)
    await crew.coach.hears("There's no session to show you for Ilse")


async def test_a_coach_is_told_that_nobody_is_held_by_a_name_i_do_not_know(crew):
    await crew.coach.says("hold Tove for my OK")
    await crew.coach.hears("I can't tell who “Tove” is, so nobody is held. Nobody has joined me yet")
    await crew.has("Ilse Berg")
    await crew.has("Ilse Vik")
    await crew.coach.says("can i hold ilse for my ok?")
    asked = await crew.coach.hears("There's more than one Ilse here")
    await crew.coach.presses("Ilse Vik", on=asked)
    await crew.coach.hears("Ilse Vik's versions first")


async def test_what_a_body_must_spare_is_taken_from_its_owner_only(crew, ilse):
    await crew.coach.says("Ilse has a bad shoulder, no overhead for her")
    await crew.coach.hears(
        "I take from Ilse alone, so by itself that changes nothing yet. Shall I pass this on"
    )
    await ilse.hears_nothing()
