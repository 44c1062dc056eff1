"""A coach says in words what single athletes shall do, and it is done, or said why not."""

from datetime import timedelta

import pytest

from tests.acceptance.people import answers_what_is_asked
from tests.acceptance.worlds import world

HARD = "Thursday strength\n3 rounds:\n10 burpees\n12 hip thrusts\n15 push-ups\n200 m run"


@world
async def ilse(crew):
    person = await crew.has("Ilse")
    await crew.gets(HARD)
    await answers_what_is_asked(person)
    return person


async def test_a_movement_is_left_out_until_a_day_and_comes_back_with_a_tap(crew, ilse):
    await crew.coach.says("no burpees for Ilse until sunday")
    ordered = await crew.coach.hears("Ilse, until Sunday 8 March: no burpees")
    card = await crew.coach.hears("Ilse, as I'd do it")
    assert "burpee" not in card.text
    await crew.coach.presses("Take it back", on=ordered)
    await crew.coach.hears("Taken back")
    await crew.coach.says("show me Ilse")
    assert "burpee" in (await crew.coach.hears("Ilse, as I'd do it")).text


async def test_what_is_ordered_reaches_who_has_a_version_with_an_ok(crew, ilse):
    await crew.coach.says("Ilse should do chair dips, not push-ups")
    await crew.coach.hears("Tap OK below and Ilse gets it")
    await crew.coach.presses("OK", on=await crew.coach.hears("Ilse, as I'd do it"))
    await ilse.hears("dips")


async def test_who_was_looked_at_is_meant_by_her(crew, ilse):
    await crew.coach.says("show me Ilse")
    await crew.coach.hears("Ilse, as I'd do it")
    await crew.coach.says("actually give her chair dips instead of push ups")
    await crew.coach.hears("Done for Ilse, in Thursday strength only")


async def test_what_she_has_nothing_for_is_not_ordered(crew, ilse):
    await crew.coach.says("Ilse should do rows, not runs")
    await crew.coach.hears("I can't give Ilse rows")


async def test_what_is_half_understood_changes_nothing_and_says_so(crew, ilse):
    await crew.coach.says("Ilse push-ups by feel only")
    await crew.coach.hears("I didn't get what Ilse shall do, so nothing has changed")


async def test_a_word_behind_the_order_is_offered_to_be_sent(crew, ilse):
    await crew.coach.says("ilse is out till the doc clears her, tell her to rest")
    await crew.coach.hears("From now on I show you Ilse's versions first")
    await crew.coach.presses("Send to Ilse", on=await crew.coach.hears("Please rest"))
    await ilse.hears("Please rest")


async def test_an_easy_week_may_be_several_peoples(crew, ilse):
    await crew.has("Bo")
    await crew.coach.says("easy week for Ilse and Bo")
    await crew.coach.hears("easy week for Ilse")
    await crew.coach.hears("easy week for Bo")


async def test_what_shall_be_left_out_for_whatever_reason_is_no_note(crew, ilse):
    await crew.coach.says("ilse shouldnt do burpees until her back is ok")
    await crew.coach.hears("Ilse, in every session from now on: no burpees")


async def test_a_coach_erases_nobody_else_and_never_themselves_by_that(crew, ilse):
    await crew.coach.says("delete everything ilse said")
    await crew.coach.hears("What I keep of Ilse only Ilse can have erased")


async def test_rounds_are_everybodys(crew, ilse):
    await crew.coach.says("ilse only 2 rounds")
    await crew.coach.hears("Rounds are the same for everybody, so nothing has changed for Ilse")


async def test_rows_are_what_there_is_to_row_with(crew, ilse):
    await crew.coach.says("no push-ups for ilse, rows instead")
    assert "rows" in (await crew.coach.hears("Ilse, as I'd do it")).text


async def test_a_newer_word_for_all_sessions_counts_here_too(crew, ilse):
    await crew.coach.says("ilse 100 m run only")
    await crew.coach.hears("100 m run (your choice)")
    await crew.coach.says("no running for ilse this week")
    assert "100 m run" not in (await crew.coach.hears("Ilse, as I'd do it")).text


async def test_who_is_on_holiday_is_neither_waited_for_nor_named_until_then(crew, ilse):
    await crew.coach.says("Ilse's on holiday till the 16th, leave her out")
    told = await crew.coach.hears("Ilse is left out from Monday 2 March until Monday 16 March")
    await crew.coach.says("AMRAP 8\n10 burpees\n10 air squats")
    assert "Ilse" not in (await crew.coach.hears("Here's how I read it")).text
    await crew.coach.says("who trained this week?")
    assert "Ilse" not in (await crew.coach.hears("Who trained this week")).text
    await crew.coach.presses("Take it back", on=told)
    await crew.coach.says("who trained this week?")
    await crew.coach.hears("No score from Ilse")


async def test_an_easier_week_is_told_with_its_reason(crew, ilse):
    await crew.coach.says("Ilse needs to take it easier this week, shes had a cold")
    await crew.coach.hears("Ilse, until Sunday 8 March: easy days")


async def test_two_weeks_are_two_weeks(crew, ilse):
    await crew.coach.says("no burpees for Ilse for 2 weeks")
    await crew.coach.hears("Ilse, until Monday 16 March: no burpees")


async def test_a_name_without_its_apostrophe_is_a_name(crew, ilse):
    await crew.coach.says("lower Ilses burpee reps")
    await crew.coach.hears("Done for Ilse")


async def test_how_a_movement_is_done_is_part_of_the_order(crew, ilse):
    await crew.coach.says("Ilse should do her push-ups on a chair")
    await crew.coach.hears("Done for Ilse")
    assert "hands on a chair" in (await crew.coach.hears("Ilse, as I'd do it")).text


async def test_a_way_that_nobody_can_do_at_home_changes_nothing(crew, ilse):
    await crew.coach.says("Ilse should do her push-ups on rings")
    await crew.coach.hears("I can't give Ilse push-ups in that way")


async def test_a_weight_that_is_not_there_is_why_it_can_not_be_given(crew, ilse):
    await crew.coach.says("give Ilse 20 kg for the hip thrusts")
    await crew.coach.hears("Ilse told me of nothing that weighs 20 kg")


async def test_a_number_for_a_number_is_of_the_line_that_has_it(crew, ilse):
    await crew.coach.says("Ilse 10 not 15")
    await crew.coach.hears("Done for Ilse")
    assert "10 push-ups" in (await crew.coach.hears("Ilse, as I'd do it")).text
    await crew.coach.says("Ilse 10 not 99")
    await crew.coach.hears("Nothing in Thursday strength has 99")


async def test_until_a_weekday_that_is_today_is_until_the_next_one(crew, ilse):
    await crew.coach.says("Ilse will be away until next monday, please leave her out")
    await crew.coach.hears("Ilse is left out from Monday 2 March until Monday 9 March")


async def test_a_wish_in_many_words_holds_for_the_session_in_hand_alone(crew, ilse):
    await crew.coach.says("I would like Ilse to do 6 burpees")
    await crew.coach.hears("Done for Ilse, in Thursday strength only")


async def test_a_holiday_of_so_long_needs_no_word_for_how_long(crew, ilse):
    await crew.coach.says("Ilse is in vacation 2 week")
    await crew.coach.hears("Ilse is left out from Monday 2 March until Monday 16 March")


async def test_who_is_back_is_counted_in_again(crew, ilse):
    await crew.coach.says("leave Ilse out this week")
    await crew.coach.hears("Ilse is left out")
    await crew.coach.says("Ilse is back")
    await crew.coach.hears("Ilse is counted in again")
    await crew.coach.says("who trained this week?")
    await crew.coach.hears("No score from Ilse")
    await crew.coach.says("Ilse is back from holiday")
    await crew.coach.hears("wasn't left out of anything")


async def test_no_running_is_no_running_on_the_spot_either(crew, ilse):
    await crew.coach.says("Ilse's hurt her hamstring. no running till monday")
    await crew.coach.hears("no runs")
    assert " run" not in (await crew.coach.hears("Ilse, as I'd do it")).text


SQUATS = "Saturday bells\n3 rounds:\n12 air squats\n15 goblet squats @ 16/12 kg\n200 m run\n12 lunges"


async def test_a_family_is_all_that_is_called_so_and_stands_in_for_nothing(crew, ilse):
    await crew.coach.says(SQUATS)
    await crew.coach.hears("Here's how I read it")
    await crew.coach.says("no squats for Ilse")
    await crew.coach.hears("Done for Ilse, in Saturday bells only: no squats.")
    assert "squat" not in (await crew.coach.hears("Ilse, as I'd do it")).text.casefold()
    await crew.coach.says("Ilse: no lunges")
    await crew.coach.hears("no lunges")
    text = (await crew.coach.hears("Ilse, as I'd do it")).text.casefold()
    assert "squat" not in text
    assert "lunge" not in text


async def test_what_stands_in_spares_what_is_told_beside_it(crew, ilse):
    await crew.coach.says(SQUATS)
    await crew.coach.hears("Here's how I read it")
    await crew.coach.says("Ilse has a bad knee, no squats for her")
    await crew.coach.hears("no squats. What stands in spares, for that session: sore knee.")
    assert "200 m run" not in (await crew.coach.hears("Ilse, as I'd do it")).text


async def test_an_order_without_a_day_is_of_what_comes_next(crew, ilse):
    await crew.coach.says("Saturday bells\n3 rounds:\n12 push-ups\n200 m run")
    await crew.coach.presses("Post Sat", on=await crew.coach.hears("Here's how I read it"))
    await crew.coach.hears("I'll post")
    await crew.room.travels(timedelta(hours=3))
    await crew.coach.says("no push-ups for Ilse")
    await crew.coach.hears("in Thursday strength only")


@pytest.mark.parametrize(
    "why", ["he had shoulder surgery", "had a heart attack last year", "he's got a fever"]
)
async def test_an_illness_told_beside_an_order_is_offered_to_be_passed_on_and_the_order_stands(
    crew, ilse, why
):
    await crew.coach.says(f"Ilse can't do push-ups, {why}")
    await crew.coach.hears("Done for Ilse, in Thursday strength only: no push-ups")
    await crew.coach.hears("I take from Ilse alone, so by itself that changes nothing yet")


async def test_so_many_less_are_taken_off_what_is_written(crew, ilse):
    await crew.coach.says("4 burpees less for Ilse")
    await crew.coach.hears("4 off the burpees")
    assert "1. 6 " in (await crew.coach.hears("Ilse, as I'd do it")).text


async def test_no_more_is_taken_off_than_is_written(crew, ilse):
    await crew.coach.says("15 burpees less for Ilse")
    await crew.coach.hears("nothing has changed")


async def test_what_may_be_done_again_is_left_out_no_more(crew, ilse):
    await crew.coach.says("no running for Ilse this week")
    await crew.coach.hears("Ilse, until Sunday 8 March: no runs")
    await crew.coach.says("Ilse can run again")
    await crew.coach.hears("of the runs for Ilse counts no longer")
    assert "200 m run" in (await crew.coach.hears("Ilse, as I'd do it")).text


async def test_what_only_they_can_have_told_is_offered_to_be_passed_on(crew, ilse):
    await crew.coach.says("Ilse can run again")
    await crew.coach.hears("I take from Ilse alone")


async def test_who_gets_a_break_is_left_out(crew, ilse):
    await crew.coach.says("give Ilse a break")
    await crew.coach.hears("Ilse is left out from Monday 2 March until you take it back")


@pytest.mark.parametrize("words", ["can Ilse do 2 of the runs as walks", "Ilse skips the last round"])
async def test_some_rounds_alone_are_nobodys_own(crew, ilse, words):
    await crew.coach.says(words)
    await crew.coach.hears("Rounds are the same for everybody, so nothing has changed for Ilse")


async def test_a_coach_asks_whom_they_hold(crew, ilse):
    await crew.coach.says("who's held?")
    await crew.coach.hears("You hold nobody's versions")
    await crew.coach.says("hold Ilse")
    await crew.coach.hears("From now on I show you Ilse's versions first")
    await crew.coach.says("who is on hold")
    await crew.coach.hears("You see these versions first: Ilse")


async def test_what_was_told_of_their_body_is_passed_on_as_said_to_them(crew, ilse):
    await crew.coach.says("Ilse told me her wrist is sore, so no push-ups for her today")
    await crew.coach.presses("Send to Ilse", on=await crew.coach.hears("your wrist is sore"))
    await ilse.hears("\u201cyour wrist is sore\u201d")


async def test_why_somebody_has_not_done_it_is_asked_of_them(crew, ilse):
    await crew.coach.says("ilse hasnt done it, ask her why")
    await crew.coach.presses("Ask Ilse", on=await crew.coach.hears("why you haven't done it"))
    await ilse.hears("Marit asks why you haven't done it")


async def test_what_is_told_of_one_body_is_passed_on_to_nobody_else(crew, ilse):
    await crew.has("Bo")
    await crew.coach.says("ilse is pregnant, go easy on her. bo's back is sore so no burpees")
    hers = await crew.coach.hears("you are pregnant")
    his = await crew.coach.hears("your back is sore")
    assert "back" not in hers.text
    assert "pregnant" not in his.text
