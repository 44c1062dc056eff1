"""What a coach says beside a class: its name before the yes, once only, for a week, half an hour past."""

import pytest


async def read_back(crew, words):
    await crew.coach.says(words)
    return (await crew.coach.hears("Here's how I read your class")).text


async def test_a_class_is_named_and_set_up_in_words(crew):
    await read_back(crew, "class thursdays 7.30pm, 45 min")
    assert "Evening training" in await read_back(crew, "call it evening training")
    await crew.coach.says("yea ok set it up")
    await crew.coach.hears("Done: Evening training")
    await crew.group.hears("Evening training")


async def test_one_date_is_moved_where_it_is_said_of_this_week_only(crew):
    await read_back(crew, "class thursdays 7.30pm, 45 min")
    await crew.coach.presses("Yes, set it up")
    await crew.group.hears("There's a live class now")
    await crew.coach.says("thurs class moved to 7pm this week only")
    asked = await crew.coach.hears("Move this?")
    assert "Thu 5 March → Thu 5 March 19:00" in asked.labels[0]


async def test_a_class_that_is_moved_to_a_day_is_the_one_nearest_to_it(crew):
    await read_back(crew, "class wednesdays 18:00, 60 min")
    await crew.coach.presses("Yes, set it up")
    await crew.group.hears("There's a live class now")
    await crew.coach.says("move the class to thursday 19:00")
    asked = await crew.coach.hears("Move this?")
    assert asked.labels == ["Wed 4 March → Thu 5 March 19:00", "No, leave it"]


async def test_no_class_this_week_is_said_of_the_dates_of_this_week_alone(crew):
    await read_back(crew, "class mondays and thursdays 7.30pm, 45 min")
    await crew.coach.presses("Yes, set it up")
    await crew.group.hears("There's a live class now")
    await crew.coach.says("no class this week")
    labels = (await crew.coach.hears("Call")).labels
    assert any("5 March" in one for one in labels)
    assert not any("9 March" in one or "12 March" in one for one in labels)


@pytest.mark.parametrize(
    "words", ["class thursdays half 7 in the hall", "class thursdays half past seven in our hall"]
)
async def test_half_seven_is_asked_about_and_a_hall_is_no_name(crew, words):
    told = await read_back(crew, words)
    assert "Live class" in told
    assert "07:30" in told
    assert "morning or in the evening?" in told


@pytest.mark.parametrize("words", ["not now", "never mind"])
async def test_what_is_missing_of_a_class_may_be_left(crew, words):
    await crew.coach.says("class thursdays, 45 min")
    await crew.coach.hears("At what time does it start?")
    await crew.coach.says(words)
    await crew.coach.hears("Dropped, nothing was set up")


async def labels_after(crew, words, told):
    await crew.coach.says(words)
    return (await crew.coach.hears(told)).labels


async def test_two_hours_are_two_classes_and_no_name(crew):
    await crew.coach.says("class Tues 18:30 45min and thurs 7am 30 min, https://example.org/live")
    await crew.coach.hears("Tuesdays at 18:30, Berlin time, 45 minutes")
    await crew.coach.hears("Thursdays at 07:00, Berlin time, 30 minutes")


async def test_how_the_class_is_now_takes_the_place_of_how_it_was_and_is_said_of_no_session(crew):
    await crew.coach.says("Sat: hero\n3 rounds for time\n10 push-ups\n15 air squats")
    await crew.coach.hears("Here's how I read it")
    await read_back(crew, "class tuesdays 18:00, 45 min")
    await crew.coach.presses("Yes, set it up")
    await crew.coach.says("the class is at 6:30pm tue, and 7am thurs, fix it")
    assert "takes the place of the one before" in (await crew.coach.hears("Tuesdays at 18:30")).text
    await crew.coach.hears("Thursdays at 07:00")
    await crew.coach.says("whats scheduled")
    await crew.coach.hears("a draft, without a time yet")


@pytest.mark.parametrize(
    ("words", "told"),
    [
        ("not 18:15 but 19", "Tuesdays at 19:00, Berlin time, 45 minutes"),
        ("make it thursdays, 30 min", "Thursdays at 18:15, Berlin time, 30 minutes"),
        ("no 18:30", "Tuesdays at 18:30, Berlin time, 45 minutes"),
    ],
)
async def test_what_is_told_behind_a_class_that_waits_puts_it_right(crew, words, told):
    await read_back(crew, "class tuesdays 18:15, 45 min")
    assert told in await read_back(crew, words)


async def test_an_hour_of_this_week_moves_its_dates_and_no_other(crew):
    await read_back(crew, "class mondays and thursdays 7.30pm, 45 min")
    await crew.coach.presses("Yes, set it up")
    labels = await labels_after(crew, "class at 19:00 this week", "Move this?")
    assert [one.partition(" → ")[0] for one in labels if "→" in one] == ["Mon 2 March", "Thu 5 March"]


@pytest.mark.parametrize(
    ("words", "told"),
    [
        ("hello i want make class wednesday evening 7 oclock", "Wednesdays at 19:00"),
        ("we meet mon and thu 19:00-20:00", "Mondays and Thursdays at 19:00, Berlin time, 60 minutes"),
    ],
)
async def test_a_class_is_wished_in_plain_words(crew, words, told):
    assert told in await read_back(crew, words)


async def test_of_a_class_and_a_session_in_one_message_each_goes_where_it_is_told(crew):
    await read_back(crew, "class tuesdays 18:30")
    await crew.coach.presses("Yes, set it up")
    await crew.coach.says("Sat: hero\n3 rounds for time\n10 push-ups")
    await crew.coach.says("move the class to wed, and the session to sun at 10")
    labels = (await crew.coach.hears("Move this?")).labels
    assert "Tue 3 March → Wed 4 March 18:30" in labels
    await crew.coach.hears("I'll post “Sat - hero” to Harbour crew on Sunday, 8 March at 10:00")


async def test_of_several_that_wait_the_one_on_the_day_that_is_told_is_put_right(crew):
    await crew.coach.says("class tues 18:30 and thurs 7am")
    await crew.coach.hears("Thursdays at 07:00")
    assert "Tuesdays at 19:00" in await read_back(crew, "tues at 19:00")
