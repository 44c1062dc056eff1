"""Less for a while: easy weeks, the weeks after a break, and more after a gentle start."""

from datetime import timedelta

import pytest

from tests.acceptance.people import (
    answers_screening,
    answers_what_is_asked,
    consents,
    start_link,
)
from tests.acceptance.worlds import world

SESSION = "Main\n5 rounds for time\n8 push-ups\n10 air squats"


async def gets_another(crew, days=1, title="Next"):
    await crew.room.travels(timedelta(days=days))
    await crew.gets(f"{title}\n{SESSION}")


async def told(person):
    await person.presses("My version")
    return (await person.hears("Your version")).text


async def knows(crew, name="Ilse"):
    person = await crew.has(name)
    await crew.gets(SESSION)
    await answers_what_is_asked(person)
    return person


@world
async def ilse(crew):
    return await knows(crew)


async def calls_an_easy_week(crew, words="easy week"):
    """For all of them, which is asked first."""
    await crew.coach.says(words)
    asked = await crew.coach.hears("For whom? Nothing changes before your tap")
    await crew.coach.presses("Everybody in Harbour crew", on=asked)


async def test_a_coachs_easy_week_is_everybodys_until_sunday(crew, ilse):
    await calls_an_easy_week(crew, "Easy week please")
    eased = await crew.coach.hears("is an easy week for everybody in Harbour crew")
    assert "no ranks" in eased.text
    await ilse.says("/today")
    version = (await ilse.hears("Your version")).text
    assert (
        "About two thirds of the work, at an effort of 6 of 10 at most: you can talk in short sentences."
        in version
    )
    assert "3 rounds at a steady pace" in version
    await gets_another(crew, days=7)
    assert "5 rounds for time" in await told(ilse)


async def test_an_easy_week_can_be_taken_back(crew, ilse):
    await calls_an_easy_week(crew)
    await crew.coach.presses("As usual after all", on=await crew.coach.hears("is an easy week"))
    await crew.coach.hears("is as usual for everybody in Harbour crew")
    await ilse.says("/today")
    assert "5 rounds for time" in (await ilse.hears("Your version")).text


async def test_an_easy_week_may_be_one_athletes(crew):
    ilse, bo = await knows(crew), await crew.has("Bo")
    await crew.coach.says("easy week for Ilse")
    await crew.coach.hears("is an easy week for Ilse")
    await ilse.says("/today")
    assert "an easy week" in (await ilse.hears("Your version")).text
    await answers_what_is_asked(bo)
    assert "easy week" not in await told(bo)


@pytest.mark.parametrize("said", ["Ilse has earned a down week", "Recovery week: Ilse. Starting Monday."])
async def test_an_easy_week_may_be_called_in_any_words(crew, ilse, said):
    await crew.coach.says(said)
    await crew.coach.hears("is an easy week for Ilse")


async def test_an_athletes_own_easy_week_is_theirs(crew, ilse):
    await ilse.says("I need an easy week")
    await ilse.hears("Noted: an easy week, until")
    assert "3 rounds at a steady pace" in (await ilse.hears("Your version")).text
    await ilse.presses("Today is different")
    await ilse.presses("As usual again", on=await ilse.hears("What's different today?"))
    await ilse.hears("As usual again, then")
    assert "5 rounds for time" in (await ilse.hears("Your version")).text


async def test_an_easy_week_that_two_called_is_told_once(crew, ilse):
    await calls_an_easy_week(crew)
    await crew.coach.hears("is an easy week")
    await ilse.says("I need an easy week")
    assert "Today: an easy week. About two thirds" in (await ilse.hears("Your version")).text


async def test_who_asks_what_is_known_sees_how_long_it_stays_easy(crew, ilse):
    await ilse.says("back after 6 weeks")
    await ilse.hears("Noted: back after a break, until Sunday, 15 March")
    await ilse.says("/me")
    await ilse.hears("Just now: back after a break (until Sunday, 15 March)")


async def test_as_usual_may_be_asked_for_in_words(crew, ilse):
    await ilse.says("I'm shattered, an easy week please")
    await ilse.hears("Noted: an easy week")
    await ilse.says("as usual again please")
    await ilse.hears("As usual again, then")
    assert "5 rounds for time" in (await ilse.hears("Your version")).text


@pytest.mark.parametrize("words", ["no easy week for me", "as usual please"])
async def test_a_coachs_easy_week_is_not_the_athletes_to_end(crew, words, ilse):
    await calls_an_easy_week(crew)
    await crew.coach.hears("is an easy week")
    await ilse.says(words)
    await ilse.hears("Your coach has called this week easy")


async def test_a_score_of_an_easy_week_has_no_rank(crew, ilse):
    await ilse.says("I need an easy week")
    await ilse.hears("Your version")
    await ilse.says("8:43")
    assert "No rank today" in (await ilse.hears("Noted: 8:43")).text
    await ilse.says("/board")
    await ilse.hears("Nobody is on the board so far. Yours is noted")
    await ilse.says("/board", in_=crew.group)
    await crew.group.hears("No scores yet")
    await crew.coach.says("/board")
    await crew.coach.hears("Nobody is on the board so far. One score was told without a rank")


@world
async def away(crew):
    """Five weeks without a word from Ilse: herself, and what she is asked."""
    ilse = await knows(crew)
    await ilse.says("8:43")
    await ilse.hears("Noted: 8:43")
    await gets_another(crew, days=35)
    await ilse.presses("My version")
    return ilse, await ilse.hears("For 5 weeks I heard of no session of yours")


async def test_after_weeks_without_a_word_it_asks_once_whether_there_was_a_break(crew, away):
    ilse, asked = away
    await ilse.presses("No, I had a break", on=asked)
    await ilse.hears("Noted: back after a break, until")
    version = (await ilse.hears("Your version")).text
    assert "Half of the work, at an effort of 4 of 10 at most" in version
    assert "3 rounds at an easy pace" in version
    await gets_another(crew, days=7)
    assert "Three quarters of the work" in await told(ilse)
    await gets_another(crew, days=7, title="Third")
    assert "5 rounds for time" in await told(ilse)


async def test_who_says_why_they_were_away_was_away(away):
    ilse, _ = away
    await ilse.says("can I do a bit more")
    await ilse.hears("I didn't get that. Did you train in the last weeks?")
    await ilse.says("I was ill and then on holidays")
    await ilse.hears("Noted: back after a break")


@pytest.mark.parametrize("words", ["yes", "yes I trained", "I kept running"])
async def test_who_trained_meanwhile_goes_on_as_usual(away, words):
    ilse, _ = away
    await ilse.says(words)
    assert "5 rounds for time" in (await ilse.hears("Your version")).text
    await ilse.says("/today")
    assert "5 rounds for time" in (await ilse.hears("Your version")).text


async def test_a_break_may_be_told_unasked(crew, ilse):
    await ilse.says("back after 5 weeks off")
    await ilse.hears("Half of everything in the first week")
    assert "Half of the work" in (await ilse.hears("Your version")).text


async def test_a_short_break_changes_nothing(crew, ilse):
    await ilse.says("I was away for a week")
    await ilse.hears("you lose very little")


@world
async def gentle(crew):
    """Healthy, and inactive so far: six sessions in three weeks."""
    ilse = await crew.room.person("Ilse")
    await ilse.joins(crew.group)
    await ilse.opens(await start_link(crew.group))
    await consents(ilse)
    await answers_screening(ilse, ("Yes", "No", "No", "No"))
    for number in range(1, 7):
        await gets_another(crew, days=3, title=f"Day {number}")
        await answers_what_is_asked(ilse)
        await ilse.says("20:00")
        await ilse.presses("3", on=await ilse.hears("How hard was the whole session"))
        await ilse.presses("No", on=await ilse.hears("Did anything hurt"))
    return ilse


async def test_whoever_started_gently_decides_when_it_may_be_more(crew, gentle):
    ilse = gentle
    asked = await ilse.hears("That was session number 6 since you started gently")
    await ilse.presses("Yes, a bit more", on=asked)
    await ilse.hears("about three quarters of the work, until")
    await gets_another(crew, days=2, title="More")
    assert "Three quarters of the work, at an effort of 5 of 10 at most" in await told(ilse)
    await ilse.presses("Yes, a bit more", on=asked)
    await ilse.sees_toast("before something changed")
    await gets_another(crew, days=27, title="Later")
    await ilse.presses("My version")
    await ilse.presses("Yes, as usual", on=await ilse.hears("Did you train meanwhile?"))
    assert "5 rounds for time" in (await ilse.hears("Your version")).text


async def test_who_started_gently_and_wants_more_hears_when(crew):
    ilse = await crew.room.person("Ilse")
    await ilse.joins(crew.group)
    await ilse.opens(await start_link(crew.group))
    await consents(ilse)
    await answers_screening(ilse, ("Yes", "No", "No", "No"))
    await ilse.hears("start light to moderate")
    await ilse.says("can I do a bit more please?")
    assert "after 6 sessions and two weeks" in (await ilse.hears("You started gently")).text


async def test_whoever_stays_gentle_is_asked_again_later(crew, gentle):
    ilse = gentle
    await ilse.presses("Stay gentle", on=await ilse.hears("That was session number 6"))
    await ilse.hears("Gentle it stays")
    await gets_another(crew, days=2, title="More")
    assert "at an easy pace" in await told(ilse)


async def test_all_rounds_of_an_eased_version_are_all_of_it(crew, ilse):
    await ilse.says("I need an easy week")
    await ilse.hears("3 rounds at a steady pace")
    await ilse.says("3 rounds in 9:10")
    noted = await ilse.hears("")
    assert "Did you stop" not in noted.text
    assert "9:10" in noted.text
