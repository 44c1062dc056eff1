"""A coach's message may hold several wishes: each is done for whom it names, and what isn't done is quoted."""

import pytest

from tests.acceptance.people import answers_what_is_asked
from tests.acceptance.worlds import world

HARD = "Thursday strength\n3 rounds:\n10 burpees\n12 bent-over rows\n15 push-ups\n200 m run"


@world
async def ilse(crew):
    person = await crew.has("Ilse")
    bo = await crew.has("Bo")
    await crew.gets(HARD)
    await answers_what_is_asked(person)
    await answers_what_is_asked(bo)
    return person


async def test_each_who_is_named_gets_what_is_said_of_them(crew, ilse):
    await crew.coach.says("Ilse no burpees, Bo no runs, n make the push-ups 8 for everyone")
    await crew.coach.hears("Done for Ilse")
    assert "burpee" not in (await crew.coach.hears("Ilse, as I'd do it")).text
    await crew.coach.hears("Done for Bo")
    assert "burpee" in (await crew.coach.hears("Bo, as I'd do it")).text
    await crew.coach.hears("stays as everybody saw it until you post this one")
    assert "8 push-ups" in (await crew.coach.hears("Here's how I read it")).text


async def test_what_stands_behind_an_order_and_nobody_gets_is_quoted(crew, ilse):
    await crew.coach.says("no burpees for Ilse. frobnicate the quux 17")
    await crew.coach.hears("Done for Ilse")
    await crew.coach.hears("I didn't get “frobnicate the quux 17”")


async def test_a_change_a_post_and_a_word_in_one_message_are_each_done(crew, ilse):
    await crew.coach.says("Friday\n3 rounds for time\n10 push-ups\n200 m run")
    await crew.coach.hears("Here's how I read it")
    await crew.coach.says("make the push-ups 8 and post it fri 530pm. also tell ilse shes doing great")
    assert "8 push-ups" in (await crew.coach.hears("Here's how I read it")).text
    await crew.coach.hears("on Friday, 6 March at 17:30")
    await crew.coach.presses("Send to Ilse", on=await crew.coach.hears("you are doing great"))
    await ilse.hears("you are doing great")


async def test_nothing_goes_out_behind_a_change_that_is_not_all_done(crew, ilse):
    await crew.coach.says("Friday\n3 rounds for time\n10 push-ups\n200 m run")
    await crew.coach.hears("Here's how I read it")
    await crew.coach.says("make the quux 8, post it now")
    assert "make the run 100 m" in (await crew.coach.hears("I've changed nothing")).text
    await crew.coach.hears("“post it now”: I haven't yet")
    assert not any("Friday" in one.text for one in await crew.group.messages)


async def test_of_several_lines_each_with_a_name_everybody_gets_their_own(crew, ilse):
    await crew.coach.says("Ilse: no burpees\nBo: half the push-ups")
    await crew.coach.hears("Done for Ilse")
    assert "burpee" not in (await crew.coach.hears("Ilse, as I'd do it")).text
    await crew.coach.hears("Done for Bo")
    assert "burpee" in (await crew.coach.hears("Bo, as I'd do it")).text


async def test_what_a_coach_leaves_out_of_all_lines_is_followed_and_taken_back(crew, ilse):
    await crew.coach.says("no jumping for Ilse ever, she has a bad knee")
    await crew.coach.hears("Ilse, in every session from now on: no jumping")
    await crew.coach.hears("I take from Ilse alone")
    await crew.coach.says("ilse normal again, as written")
    await crew.coach.hears("Taken back: Ilse gets what I'd give them")
    await crew.coach.says("ilse normal again")
    await crew.coach.hears("nothing of yours stands for Ilse")


async def test_several_are_gone_easy_on_with_what_only_they_can_tell(crew, ilse):
    await crew.coach.says("ilse is over 70, bo is pregnant. go easy on them all week")
    await crew.coach.hears("Ilse, until Sunday 8 March: easy days")
    await crew.coach.hears("Bo, until Sunday 8 March: easy days")
    await crew.coach.hears("I take from Bo alone")


@pytest.mark.parametrize("words", ["take it back for ilse", "undo that ilse thing!!"])
async def test_an_order_is_taken_back_by_the_name_of_whom_it_was_for(crew, ilse, words):
    await crew.coach.says("Ilse no burpees")
    await crew.coach.hears("Done for Ilse")
    await crew.coach.says("Bo no runs")
    await crew.coach.hears("Done for Bo")
    await crew.coach.says(words)
    await crew.coach.hears("Taken back: Ilse gets what I'd give them")
    await crew.coach.says("show me Ilse")
    assert "burpee" in (await crew.coach.hears("Ilse, as I'd do it")).text


async def test_rows_are_those_that_stand_there(crew, ilse):
    await crew.coach.says("no rows for Ilse")
    heard = await crew.coach.hears("Ilse")
    assert "There are no" not in heard.text


async def test_done_is_only_said_where_a_line_changed(crew, ilse):
    await crew.coach.says("Ilse no burpees")
    await crew.coach.hears("Done for Ilse")
    await crew.coach.says("Ilse no burpees")
    await crew.coach.hears("For Ilse this changes no line")


async def test_what_holds_for_a_week_needs_no_session(crew):
    await crew.has("Ilse")
    await crew.coach.says("no lunges for ilse this week")
    await crew.coach.hears("Ilse, from the next session until Sunday 8 March: no lunges")


async def test_a_word_to_all_and_one_to_somebody_are_offered_apart(crew, ilse):
    await crew.coach.says("tell everyone well done from me, and ilse: super job today")
    await crew.coach.hears("Shall everybody read this?")
    await crew.coach.presses("Send to Ilse", on=await crew.coach.hears("super job today"))
    await ilse.hears("super job today")


async def test_two_ways_of_one_movement_are_swapped(crew):
    ilse = await crew.has("Ilse")
    await crew.gets("3 rounds\n10 half squats\n10 push-ups")
    await answers_what_is_asked(ilse)
    await ilse.says("I have a chair")
    await ilse.hears("At home you have now")
    await crew.coach.says("give Ilse sit to stands instead of half squats")
    assert "half squats" not in (await crew.coach.hears("Ilse, as I'd do it")).text


async def test_everything_is_taken_back_of_one(crew, ilse):
    await crew.coach.says("no burpees for ilse ever")
    await crew.coach.hears("no burpees")
    await crew.coach.says("take everything back for ilse")
    await crew.coach.hears("Taken back: Ilse gets what I'd give them")


async def test_who_is_off_till_a_day_is_away(crew, ilse):
    await crew.coach.says("ilse is off til friday")
    await crew.coach.hears("Ilse is left out from")


async def test_rounds_for_one_are_said_to_be_everybodys(crew, ilse):
    await crew.coach.says("and 2 rounds not 3 for ilse")
    await crew.coach.hears("Rounds are the same for everybody")


async def test_what_a_coach_leaves_out_counts_before_the_athlete_told_anything(crew):
    await crew.has("Bo")
    await crew.gets("3 rounds for time\n10 squat jumps\n10 sit-ups")
    await crew.coach.says("no jumping for bo")
    await crew.coach.hears("only: no jumping.")
    assert "no jump" in (await crew.coach.hears("Bo, as I'd do it")).text


@pytest.mark.parametrize(
    ("words", "heard"),
    [
        ("ilse and bo can go heavier", "From now on {} may go heavier"),
        ("hold ilse n bo", "I show you {}'s versions first"),
        ("easy wk for ilse n bo pls", "is an easy week for {}"),
    ],
)
async def test_everybody_who_is_named_gets_what_one_alone_would(crew, ilse, words, heard):
    await crew.coach.says(words)
    for name in ("Ilse", "Bo"):
        await crew.coach.hears(heard.format(name))


async def test_nobody_who_is_named_becomes_everybody(crew, ilse):
    await crew.coach.says("who needs me? also ilse's easy week pls and leave bo out til monday")
    await crew.coach.hears("is an easy week for Ilse")
    await crew.coach.hears("Bo is left out")


async def test_words_about_somebody_whom_no_answer_names_are_quoted(crew, ilse):
    await crew.coach.says("who needs me, bo too?")
    await crew.coach.hears("I didn't get “bo too?”")
    await crew.coach.hears_nothing()


@pytest.mark.parametrize(
    ("words", "heard"),
    [
        ("easy week for Ilse till sun", ["Ilse, from the next session until Sunday 8 March: easy days"]),
        ("keep Bo light till fri", ["Bo, from the next session until Friday 6 March: easy days"]),
        (
            "Bo has a bad heart, keep him easy",
            ["Bo, from the next session until you take it back: easy days", "I take from Bo"],
        ),
        (
            "no burpees for Ilse and Bo this wk",
            [
                "Ilse, from the next session until Sunday 8 March: no burpees",
                "Bo, from the next session until Sunday",
            ],
        ),
        (
            "easy on Ilse for the next 10 days",
            ["Ilse, from the next session until Thursday 12 March: easy days"],
        ),
    ],
)
async def test_what_is_ordered_of_days_needs_no_session_and_ends_when_it_is_told(crew, words, heard):
    await crew.has("Ilse")
    await crew.has("Bo")
    await crew.coach.says(words)
    for one in heard:
        await crew.coach.hears(one)


@pytest.mark.parametrize("words", ["no burpees for Zoe and Ilse this week", "easy week for Ilse and Zoe"])
async def test_who_is_not_there_is_named_beside_who_is(crew, ilse, words):
    await crew.coach.says(words)
    assert "Ilse" in (await crew.coach.hears("Sunday 8 March")).text
    await crew.coach.hears("I know nobody called Zoe, so nothing has changed there")


async def test_an_easy_week_for_nobody_who_is_there_is_no_bodys(crew):
    await crew.coach.says("easy week for Zoe")
    await crew.coach.hears("I know nobody called Zoe")
    await crew.coach.hears_nothing()


async def test_what_was_ordered_and_stands_is_listed_and_taken_back_by_a_tap(crew, ilse):
    for words in (
        "no burpees for Ilse this week",
        "Ilse: max 12 kg",
        "easy week for Ilse till sunday",
        "Bo away till friday",
        "nothing overhead for Bo",
    ):
        await crew.coach.says(words)
        await crew.coach.hears("Bo" if "Bo" in words else "Ilse")
    await crew.coach.says("what have I ordered for Ilse?")
    told = await crew.coach.hears("What stands of yours")
    assert "1. Ilse, until Sunday 8 March: no burpees" in told.text
    assert "2. Ilse, in every session from now on: 12 kg at most" in told.text
    assert "3. Ilse, until Sunday 8 March: easy days" in told.text
    await crew.coach.presses("Take back 1", on=told)
    await crew.coach.hears("Taken back")
    await crew.coach.says("who is away?")
    assert "1. Bo, until Friday 6 March: left out" in (await crew.coach.hears("What stands of yours")).text
    await crew.coach.says("what stands for Ilse")
    await crew.coach.hears("No order of yours stands for Ilse")  # all was said in one moment here


async def test_until_a_month_is_until_it_begins(crew, ilse):
    await crew.coach.says("no burpees for Ilse til may")
    await crew.coach.hears("Ilse, until Thursday 30 April: no burpees")


async def test_a_version_is_shown_once_behind_several_orders(crew, ilse):
    await crew.coach.says("no burpees and no planks for Ilse this week")
    await crew.coach.hears("Ilse, as I'd do it")
    shown = [one for one in await crew.coach.messages if "as I'd do it" in one.text]
    assert len(shown) == 1


async def test_a_most_in_the_hands_is_kept_for_every_session_and_told_as_the_reason(crew):
    await crew.has("Tove")
    await crew.gets("AMRAP 12\n12 swings 16 kg")
    await crew.coach.says("nothing heavier than 8 kg for Tove this month")
    await crew.coach.hears("Tove, until Tuesday 31 March: 8 kg at most in the hands altogether")


async def test_easy_days_ease_what_is_posted_in_them_and_end_with_a_word(crew):
    ilse = await crew.has("Ilse")
    await crew.coach.says("keep Ilse light till fri")
    await crew.coach.hears("until Friday 6 March")
    await crew.gets(HARD)
    await answers_what_is_asked(ilse)
    await ilse.says("my version")
    assert "an easy week" in (await ilse.hears("Thursday strength")).text
    await crew.coach.says("ilse normal again")
    await crew.coach.hears("Taken back: Ilse gets what I'd give them")


async def test_an_order_that_comes_to_nothing_leaves_the_earlier_one_standing(crew, ilse):
    await crew.coach.says("Ilse skip burpees")
    await crew.coach.hears("Done for Ilse")
    await crew.coach.says("Ilse swap burpees for muscle-ups until sunday")
    await crew.coach.hears("Nothing has changed")
    assert "burpee" not in (await crew.coach.hears("Ilse, as I'd do it")).text
