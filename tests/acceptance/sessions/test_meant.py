"""The session of the day that a coach names is the one that is changed or withdrawn."""

from datetime import timedelta

import pytest

from tests.acceptance.people import SESSION


async def test_a_named_day_is_the_session_that_is_changed(crew):
    await crew.gets("Thursday strength\n3 rounds:\n15 push-ups\n200 m run")
    await crew.coach.says("Friday easy\nEMOM 10\n8 push-ups\n10 air squats")
    await crew.coach.hears("Here's how I read it")
    await crew.coach.says("make fridays push ups 6")
    assert "6 push-ups" in (await crew.coach.hears("Here's how I read it")).text


async def test_a_named_day_is_the_session_that_is_withdrawn(crew):
    await crew.gets("Thursday strength\n3 rounds:\n15 push-ups\n200 m run")
    await crew.coach.says("Friday easy\nEMOM 10\n8 push-ups\n10 air squats")
    await crew.coach.hears("Here's how I read it")
    await crew.coach.says("post it friday 6:30")
    await crew.coach.hears("on Friday, 6 March at 06:30")
    await crew.coach.says("withdraw thursdays session")
    await crew.coach.hears("Shall I withdraw Thursday strength")
    await crew.coach.says("withdraw saturdays")
    await crew.coach.hears("I know no session of that day")


async def test_a_minute_of_an_emom_is_the_line_that_has_its_turn_then(crew):
    await crew.gets("Tuesday\nEMOM 12\n8 push-ups\n6 burpees\n10 sit-ups")
    await crew.coach.says("in minute 3 do hollow holds")
    assert "hollow hold" in (await crew.coach.hears("Here's how I read it")).text


async def test_a_draft_is_moved_to_a_day_and_an_hour(crew):
    await crew.coach.says(SESSION)
    await crew.coach.says("move it to friday 7pm")
    await crew.coach.hears("on Friday, 6 March at 19:00")


async def test_an_hour_told_in_place_of_an_evening_is_of_the_evening(crew):
    await crew.coach.says(SESSION)
    await crew.coach.says("post it friday 19:00")
    await crew.coach.hears("on Friday, 6 March at 19:00")
    await crew.coach.says("can you post it at 6 instead")
    await crew.coach.hears("on Friday, 6 March at 18:00")


@pytest.mark.parametrize("words", ["can you post on fridays at 6 automatically", "always post it at 6"])
async def test_a_habit_of_posting_is_said_not_to_be_there_and_moves_nothing(crew, words):
    await crew.coach.says(SESSION)
    await crew.coach.says("post it friday 19:00")
    await crew.coach.hears("on Friday, 6 March at 19:00")
    await crew.coach.says(words)
    await crew.coach.hears("so nothing has changed")
    await crew.coach.says("what's planned?")
    await crew.coach.hears("19:00")


async def test_two_days_in_one_message_are_two_drafts_and_neither_goes_out_unnamed(crew):
    await crew.coach.says("Mon 9th\nAMRAP 10\n10 burpees\n10 squats\n\nTue 10th\n5 km run for time")
    await crew.coach.hears("That's 2 days, so here are 2 sessions")
    await crew.coach.says("post it now")
    await crew.coach.hears("Which session is that for?")
    await crew.group.hears_nothing()
    await crew.coach.says("post tuesday's at 6pm")
    await crew.coach.hears("on Tuesday, 10 March at 18:00")
    await crew.coach.says("make monday's burpees 8")
    await crew.coach.hears("8 burpees")


async def test_a_day_without_a_class_that_is_cancelled_is_the_session_of_it(crew):
    await crew.coach.says("class every wednesday at 18:30")
    await crew.coach.presses("Yes", on=await crew.coach.hears("Here's how I read your class"))
    await crew.coach.hears("Done: Live class")
    await crew.coach.says(SESSION)
    await crew.coach.says("post it friday 18:00")
    await crew.coach.hears("on Friday, 6 March at 18:00")
    await crew.coach.says("cancel friday")
    await crew.coach.hears("Shall I drop it?")


async def test_nothing_goes_out_while_the_coach_says_not_yet(crew):
    await crew.coach.says(SESSION)
    await crew.coach.hears("Here's how I read it")
    await crew.coach.says("hold it, don't post it yet")
    assert "Posted" not in (await crew.coach.hears("")).text
    await crew.group.hears_nothing()


async def test_a_post_keeps_its_hour_on_a_new_clock(crew):
    await crew.coach.says(SESSION)
    await crew.coach.says("post it friday 18:00")
    await crew.coach.hears("on Friday, 6 March at 18:00")
    await crew.coach.says("set the group's clock to London time")
    await crew.coach.hears("keeps its hour on the new clock")
    await crew.coach.says("what's planned?")
    assert "18:00" in (await crew.coach.hears("for Harbour crew")).text


async def two_on_friday(crew):
    for title, when in (("Fri green", "6.30pm"), ("Friday, along the quay", "8am")):
        await crew.coach.says(f"{title}\n3 rounds for time\n10 squats\n200 m run")
        await crew.coach.hears("Here's how I read it")
        await crew.coach.says(f"post it fri {when}")
        await crew.coach.hears("on Friday, 6 March at")


async def test_a_session_is_moved_to_another_day_at_the_same_time(crew):
    await crew.coach.says("Friday quay\n3 rounds for time\n10 squats\n200 m run")
    await crew.coach.hears("Here's how I read it")
    await crew.coach.says("post it fri 8am")
    await crew.coach.hears("on Friday, 6 March at 08:00")
    await crew.coach.says("move friday to saturday same time")
    await crew.coach.hears("on Saturday, 7 March at 08:00")


@pytest.mark.parametrize("words", ["make fridays green saturday 9am", "move fridays green to sat 9am"])
async def test_of_two_on_a_day_the_one_is_moved_whose_title_is_named(crew, words):
    await two_on_friday(crew)
    await crew.coach.says(words)
    await crew.coach.hears("on Saturday, 7 March at 09:00")
    await crew.coach.says("what's scheduled?")
    told = (await crew.coach.hears("Friday, along the quay")).text
    assert "Friday, 6 March at 08:00" in told
    assert "Saturday, 7 March at 09:00" in told
    await crew.coach.says("withdraw fri green")
    await crew.coach.hears("“Fri green” is set to go")


async def test_a_title_that_none_has_moves_and_drops_none(crew):
    await two_on_friday(crew)
    await crew.coach.says("move fridays purple to sat 9")
    await crew.coach.hears("Which one?")
    await crew.coach.says("withdraw fri purple")
    await crew.coach.hears("I know no session of that day")


async def test_what_is_put_off_to_a_weekday_goes_out_behind_its_day(crew):
    await crew.coach.says("Friday quay\n3 rounds for time\n10 squats\n200 m run")
    await crew.coach.hears("Here's how I read it")
    await crew.coach.says("post it fri 8am")
    await crew.coach.hears("on Friday, 6 March at 08:00")
    await crew.coach.says("postpone fridays to monday")
    await crew.coach.hears("on Monday, 9 March at 08:00")


async def test_both_at_once_posts_none(crew):
    await crew.coach.says("Friday quay\n3 rounds for time\n10 squats\n200 m run")
    await crew.coach.hears("Here's how I read it")
    await crew.coach.says("yes post both")
    await crew.coach.hears("I've posted nothing yet")


@pytest.mark.parametrize(("words", "at"), [("an hour later", "09:00"), ("30 min earlier", "07:30")])
async def test_a_post_is_put_off_by_so_much(crew, words, at):
    await crew.coach.says("Friday quay\n3 rounds for time\n10 squats\n200 m run")
    await crew.coach.hears("Here's how I read it")
    await crew.coach.says("post it fri 8am")
    await crew.coach.hears("on Friday, 6 March at 08:00")
    await crew.coach.says(f"make fridays post {words}")
    await crew.coach.hears(f"on Friday, 6 March at {at}")


FRIDAY = "Friday track\n10 min easy run\n6 x 400 m run, rest 90 s"
SATURDAY = "Saturday steel\n3 rounds for time\n10 sit-ups\n12 burpees"
SUNDAY = "Sunday burner\nAMRAP 12\n8 burpees\n10 sit-ups"


async def beside_each_other(crew, *texts):
    for text in texts:
        await crew.coach.says(text)
        await crew.coach.hears("Here's how I read it")


@pytest.mark.parametrize("joint", [" and ", ", ", "\n", " / ", " n "])
async def test_each_draft_that_is_named_is_set_for_its_own_day(crew, joint):
    await beside_each_other(crew, FRIDAY, SUNDAY)
    await crew.coach.says(f"post fri at 6{joint}sun at 8:30")
    await crew.coach.hears("I'll post “Friday track” to Harbour crew on Friday, 6 March at 06:00")
    await crew.coach.hears("I'll post “Sunday burner” to Harbour crew on Sunday, 8 March at 08:30")


async def test_what_has_another_day_on_top_is_asked_about_before_it_is_set(crew):
    await beside_each_other(crew, FRIDAY)
    await crew.coach.says("post thu at 7")
    asked = await crew.coach.hears("“Friday track” says Friday on top")
    assert asked.labels == ["Post Fri 07:00", "Post Thu 07:00"]
    await crew.coach.presses("Post Thu 07:00", on=asked)
    await crew.coach.hears("on Thursday, 5 March at 07:00. (It says Friday on top.)")


@pytest.mark.parametrize(
    "words", ["the class is at 6:30pm tue, and 7am thurs, fix it", "class is 7am fri now"]
)
async def test_a_time_told_of_a_class_is_none_of_a_session(crew, words):
    await beside_each_other(crew, FRIDAY)
    await crew.coach.says(words)
    await crew.coach.hears("lass")
    await crew.coach.says("what's scheduled?")
    await crew.coach.hears("Friday track for Harbour crew: a draft, without a time yet")


async def drafts(crew, *texts):
    """The last is a draft, those before it are to be posted on their days."""
    for text in texts[:-1]:
        await crew.coach.says(text)
        await crew.coach.hears("Here's how I read it")
        await crew.coach.says(f"post it {text.split()[0]} 6am")
        await crew.coach.hears("I'll post")
    await crew.coach.says(texts[-1])
    await crew.coach.hears("Here's how I read it")


async def test_a_change_that_several_may_mean_asks_which(crew):
    await drafts(crew, SATURDAY, SUNDAY)
    await crew.coach.says("forget the sit-ups")
    asked = await crew.coach.hears("Which session is that for?")
    await crew.coach.presses("Saturday: Saturday steel", on=asked)
    board = (await crew.coach.hears("Here's how I read it")).text
    assert "Saturday steel" in board
    assert "sit-up" not in board


async def test_a_change_that_one_alone_can_have_is_made_there(crew):
    await drafts(crew, FRIDAY, SUNDAY)
    await crew.coach.says("make the run 5 x 400")
    board = (await crew.coach.hears("Here's how I read it")).text
    assert "Friday track" in board
    assert "5 rounds" in board
    assert "10 min run" in board


@pytest.mark.parametrize("words", ["scrap sundays", "discard sunday", "bin sunday's"])
async def test_what_is_dropped_by_its_day_alone_is_that(crew, words):
    await drafts(crew, SATURDAY, SUNDAY)
    await crew.coach.says(words)
    await crew.coach.hears("Discarded")
    await crew.coach.says(words)
    await crew.coach.hears("I know no session of that day")


async def test_what_was_moved_goes_back_by_undo(crew):
    await drafts(crew, FRIDAY)
    await crew.coach.says("post friday 6am")
    await crew.coach.hears("on Friday, 6 March at 06:00")
    await crew.coach.says("whats friday again? move it to 7")
    await crew.coach.hears("on Friday, 6 March at 07:00")
    await crew.room.travels(timedelta(minutes=1))
    await crew.coach.says("undo that")
    await crew.coach.hears("on Friday, 6 March at 06:00")


async def test_a_board_under_a_change_of_plan_is_a_session_of_that_day(crew):
    await drafts(crew, FRIDAY)
    await crew.coach.says("change of plan for tmrw:\n5 rounds for time\n10 box jumps\n200 m run\ncap 18 min")
    read = await crew.coach.hears("10 box jumps")
    assert any("Post Tue" in one.label for one in read.all_buttons)


TRACK = "Thu track\nwarm up 10 min easy jog\n6x400, 90s rest\ncooldown 5 min walk"
LEGS = "Wed: legs\n12 min amrap\n10 swings\n10 push-ups"


async def writes(crew, *boards):
    for board in boards:
        await crew.coach.says(board)
        await crew.coach.hears("Here's how I read it")


@pytest.mark.parametrize(
    ("words", "told"),
    [
        ("make it 8x400", "8 rounds"),
        ("in thu change the rest to 2 min", "Rest 2 min between rounds"),
        ("drop the cooldown and call it Midweek grind", "Thu - Midweek grind"),
    ],
)
async def test_a_change_is_of_the_draft_in_which_all_of_it_can_be_made(crew, words, told):
    await writes(crew, TRACK, LEGS)
    await crew.coach.says(words)
    assert told in (await crew.coach.hears("Here's how I read it")).text


@pytest.mark.parametrize(
    ("words", "told"),
    [
        ("post thu tomorrow", "I'll post “Thu track” to Harbour crew on Tuesday, 3 March"),
        ("post wed thu at 6", "I'll post “Wed - legs” to Harbour crew on Thursday, 5 March at 06:00"),
        ("post wed now", "Posted to Harbour crew: “Wed - legs”"),
        ("discard it", "Which session is that for?"),
    ],
)
async def test_an_order_is_of_the_draft_that_it_names_and_of_no_other(crew, words, told):
    await writes(crew, TRACK, LEGS)
    await crew.coach.says(words)
    await crew.coach.hears(told)


@pytest.mark.parametrize(
    ("words", "title"),
    [
        ("use the same as wed for sun", "Sunday - legs"),
        ("repeat wednesdays one on friday", "Friday - legs"),
        ("same again as legs for tomorrow", "Tuesday - legs"),
    ],
)
async def test_a_session_is_taken_once_more_for_another_day(crew, words, title):
    await writes(crew, TRACK, LEGS)
    await crew.coach.says(words)
    assert title in (await crew.coach.hears("Here's how I read it")).text
    await crew.coach.says("what's scheduled?")
    assert "Wed - legs" in (await crew.coach.hears("without a time yet")).text


async def test_a_session_of_a_day_that_had_none_is_not_taken_once_more(crew):
    await writes(crew, LEGS)
    await crew.coach.says("repeat last wednesdays one")
    await crew.coach.hears("I know no session of that day")


async def test_a_post_is_moved_by_whole_days(crew):
    await writes(crew, LEGS)
    await crew.coach.says("post wed at 6")
    await crew.coach.says("move wed back a day")
    await crew.coach.hears("on Thursday, 5 March at 06:00")


async def test_a_reply_to_a_draft_is_said_of_that_draft(crew):
    await crew.coach.says("Friday\nAMRAP 10\n400 m run\n10 push-ups")
    friday = await crew.coach.hears("Here's how I read it")
    await crew.coach.says("Saturday\nAMRAP 12\n10 air squats\n400 m run")
    await crew.coach.hears("Here's how I read it")
    await crew.coach.says("make the run 300 m", reply_to=friday)
    assert "300 m run\n10 push-ups" in (await crew.coach.hears("Here's how I read it")).text


@pytest.mark.parametrize(
    "words",
    ["wed at 5am, thu at 5:30", "wed 5am thu 5.30", "post wed 5am and thu 5:30", "wed 5am / thu 5:30"],
)
async def test_a_list_of_days_and_hours_sets_each_of_them(crew, words):
    await writes(crew, LEGS, TRACK)
    await crew.coach.says(words)
    await crew.coach.hears("I'll post “Wed - legs” to Harbour crew on Wednesday, 4 March at 05:00")
    await crew.coach.hears("I'll post “Thu track” to Harbour crew on Thursday, 5 March at 05:30")


@pytest.mark.parametrize("words", ["post both at 5am", "schedule all 2 for 5am on their days"])
async def test_all_of_them_go_out_at_that_hour_of_their_own_days(crew, words):
    await writes(crew, LEGS, TRACK)
    await crew.coach.says(words)
    await crew.coach.hears("on Wednesday, 4 March at 05:00")
    await crew.coach.hears("on Thursday, 5 March at 05:00")


async def test_an_hour_that_is_over_is_said_to_be_and_of_which_session(crew):
    await writes(crew, LEGS.replace("Wed", "Mon"))
    await crew.coach.says("post mon at 5am")
    await crew.coach.hears("Monday, 2 March at 05:00 is over. When shall I post “Mon - legs”?")


async def test_a_day_may_get_a_name(crew):
    await writes(crew, LEGS, TRACK)
    await crew.coach.says("call thu Sunny laps")
    assert "Thu - Sunny laps" in (await crew.coach.hears("Here's how I read it")).text


async def test_a_day_of_a_list_that_has_no_session_is_quoted_and_no_class(crew):
    await writes(crew, LEGS)
    await crew.coach.says("wed 5am, thu 6am")
    await crew.coach.hears("on Wednesday, 4 March at 05:00")
    assert "thu 6am" in (await crew.coach.hears("I didn't get")).text


async def test_a_change_of_a_named_day_that_cant_be_told_makes_no_class(crew):
    await writes(crew, "Tue: legs\n3 rounds for time\n10 squats\n10 burpees")
    await crew.coach.says("make tuesdays reps 6")
    await crew.coach.hears("I've changed nothing")
