"""What a coach says of athletes, to them, or to all, is never taken for the coach's own."""

from tests.acceptance.people import answers_what_is_asked

BOARD = "3 rounds for time\n10 squats\n10 push-ups\n400 m run"


async def test_who_cant_make_it_is_left_out_that_day(crew):
    await crew.has("Ilse")
    await crew.has("Bo")
    await crew.coach.says("ilse cant make it tmrw. bo neither")
    await crew.coach.hears("Ilse is left out on Tuesday 3 March, that day only")
    await crew.coach.hears("Bo is left out on Tuesday 3 March, that day only")


async def test_a_word_to_the_group_is_shown_before_it_goes_there(crew):
    await crew.coach.says("tell the group i'm sorry for the late post")
    asked = await crew.coach.hears("Shall everybody read this?")
    assert "i'm sorry for the late post" in asked.text
    await crew.coach.says("remind everyone to bring a mat")
    await crew.coach.hears("Please bring a mat")


async def test_an_order_is_taken_back_by_what_it_was_about(crew):
    ilse = await crew.has("Ilse")
    await crew.gets(BOARD)
    await answers_what_is_asked(ilse)
    await crew.coach.says("Ilse: no squats")
    await crew.coach.hears("Ilse, as I'd do it")
    await crew.coach.says("scrap ilse's squats thing")
    await crew.coach.hears("Taken back: Ilse gets what I'd give them")


async def test_easier_for_all_is_answered_with_what_there_is(crew):
    await crew.gets(BOARD)
    await crew.coach.says("make it easier for everyone")
    await crew.coach.hears("asks less of everybody until Sunday")


async def test_what_nobody_could_read_goes_out_by_a_tap_alone(crew):
    await crew.coach.says("Tuesday\n3 rounds for time\n10 squats\n6 wobblekins 300 m")
    await crew.coach.hears("Here's how I read it")
    await crew.coach.says("post it now")
    asked = await crew.coach.hears("it would be in nobody's version")
    assert "wobblekins" in asked.text
    assert not any("10 squats" in one.text for one in await crew.group.messages)
    await crew.coach.presses("Post without them", on=asked)
    await crew.group.hears("10 squats")
