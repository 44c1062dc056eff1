"""Live classes: set up in words, signed up for, reminded of in everybody's own time, and told about after."""

from datetime import datetime, timedelta

import pytest

from bot.bootstrap import build
from bot.telegram.conduct import make_conduct
from tests.acceptance.people import answers_what_is_asked
from tests.acceptance.worlds import world
from tests.support.in_process import InProcessRequest

LINK = "https://example.org/room"
WEEKLY = f"class Tuesdays 18:30, 45 min, {LINK}"
SESSION = "AMRAP 12\n10 push-ups\n200 m run"


def berlin(text):
    """A moment of these days on the group's winter clock."""
    return datetime.fromisoformat(f"{text}+01:00")


async def set_up(crew, words=WEEKLY):
    """The coach writes it, sees it read back, and says yes; the group hears of it."""
    await crew.coach.says(words)
    await crew.coach.hears("Here's how I read your class")
    await crew.coach.presses("Yes")
    await crew.coach.hears("Done")
    return await crew.group.hears("There's a live class now")


async def comes(person, message):
    await person.presses("I'm in", on=message)
    await person.hears("You're in")


@world
async def weekly(crew):
    """Tuesdays 18:30 in Berlin; it is Monday morning."""
    return await set_up(crew)


async def test_a_class_is_set_up_in_words_and_confirmed_by_a_button(crew):
    await crew.coach.says(WEEKLY)
    read = await crew.coach.hears("Here's how I read your class, for Harbour crew")
    assert "Tuesdays at 18:30, Berlin time, 45 minutes" in read.text
    assert "The first one is Tue 3 March 18:30" in read.text
    await crew.group.hears_nothing()
    await crew.coach.presses("Yes, set it up")
    await crew.coach.hears("Done: Live class, Tuesdays at 18:30")
    assert LINK in (await crew.group.hears("There's a live class now")).text


async def test_a_bare_hour_is_asked_as_morning_or_evening(crew):
    await crew.coach.says("every Monday and Thursday at 7")
    read = await crew.coach.hears("Mondays and Thursdays at 07:00")
    assert [button.label for button in read.all_buttons][:2] == ["Yes, 07:00", "Yes, 19:00"]
    await crew.coach.presses("Yes, 19:00")
    await crew.group.hears("Mondays and Thursdays at 19:00")


async def test_half_past_seven_among_evening_classes_is_asked_as_morning_or_evening(crew, weekly):
    await crew.coach.says("class Thursdays 7:30, 45 min")
    read = await crew.coach.hears("Is that in the morning or in the evening?")
    assert [button.label for button in read.all_buttons][:2] == ["Yes, 07:30", "Yes, 19:30"]
    await crew.coach.presses("Yes, 19:30")
    await crew.group.hears("Thursdays at 19:30")


@pytest.mark.parametrize(
    "words", ["class Thursdays 07:30", "class Thursdays 7:30 am", "class Thursdays 11:30"]
)
async def test_a_morning_that_was_told_as_one_is_read_back_as_one(crew, weekly, words):
    await crew.coach.says(words)
    read = await crew.coach.hears("Here's how I read your class")
    assert ", in the morning." in read.text
    assert "Yes, set it up" in read.labels


async def test_without_another_class_half_past_seven_is_the_morning_and_says_so(crew):
    await crew.coach.says("class Thursdays 7:30")
    assert (
        "The first one is Thu 5 March 07:30, in the morning." in (await crew.coach.hears("how I read")).text
    )


async def test_a_date_moved_to_half_past_seven_stays_in_the_evening(crew, weekly):
    await crew.coach.says("move Tuesday's class to 7:30")
    await crew.coach.presses("Tue 3 March → Tue 3 March 19:30", on=await crew.coach.hears("Move this?"))
    await crew.group.hears("moves to Tue 3 March 19:30")


async def test_what_is_missing_is_asked_for(crew):
    await crew.coach.says("class every Tuesday, 45 min")
    await crew.coach.hears("At what time does it start?")
    await crew.coach.says("half past what, sorry: 18:30")
    await crew.coach.hears("Tuesdays at 18:30")


async def test_a_no_sets_nothing_up(crew):
    await crew.coach.says(WEEKLY)
    await crew.coach.hears("Here's how I read your class")
    await crew.coach.presses("No")
    await crew.coach.hears("nothing was set up")
    await crew.coach.presses_again()
    await crew.coach.sees_toast("before something changed")
    await crew.group.hears_nothing()


async def test_an_athlete_sets_no_class_up(crew, weekly, ilse):
    await ilse.hears("Nothing is posted yet")
    await ilse.says(WEEKLY)
    assert "Set it up" not in str((await ilse.hears("")).labels)


async def test_who_signed_up_is_reminded_once_with_link_and_version(crew, weekly, ilse, bo):
    await comes(ilse, weekly)
    await crew.room.travels_to(berlin("2026-03-03T09:00"))
    await crew.gets(SESSION)
    await crew.room.travels_to(berlin("2026-03-03T17:29"))
    await ilse.hears_nothing()
    await crew.room.travels_to(berlin("2026-03-03T17:30"))
    reminder = await ilse.hears("starts in 1 hour")
    assert LINK in reminder.text
    await ilse.presses("My version", on=reminder)
    await ilse.hears("What do you have to train with?")
    await crew.room.travels_to(berlin("2026-03-03T18:00"))
    await ilse.hears_nothing()
    assert "starts in" not in "".join(one.text for one in await bo.messages)


async def test_the_press_in_the_group_needs_no_private_chat(crew, weekly):
    stranger = await crew.room.person("Tam")
    await stranger.joins(crew.group)
    await stranger.presses("I'm in", on=weekly)
    toast = await stranger.sees_toast("You're in: Tue 3 March 18:30, Berlin time")
    assert "Talk to me in private" in toast.text
    await stranger.presses("I'm in", on=weekly)
    await stranger.sees_toast("You're in already")
    await crew.coach.says("classes")
    await crew.coach.hears("In so far: Tam")


async def test_an_outsider_can_not_sign_up(crew, weekly):
    stranger = await crew.room.person("Stranger")
    await stranger.opens(await crew.room.start_link())
    hello = await stranger.hears("Hello!")
    await stranger.presses_data(hello, weekly.button("I'm in").data)
    await stranger.sees_toast("for members of its group")


async def test_the_days_session_shows_the_class_with_a_button(crew, weekly):
    await crew.room.travels_to(berlin("2026-03-03T09:00"))
    await crew.coach.says(SESSION)
    await crew.coach.hears("Here's how I read it")
    await crew.coach.presses("Post now")
    post = await crew.group.hears("Live today: Live class, Tue 3 March 18:30, Berlin time (45 min)")
    ilse = await crew.has("Ilse")
    await ilse.presses("I'm in at 18:30", on=post)
    await ilse.sees_toast("You're in")


async def test_two_people_in_two_zones_are_reminded_by_their_own_clocks(crew, weekly, ilse, bo):
    await bo.says("I live in New York")
    await bo.hears("Clock: New York (your clock)")
    await comes(ilse, weekly)
    await bo.presses("I'm in", on=weekly)
    await bo.hears("Tue 3 March 12:30, New York time")
    await bo.says("remind me 2 hours before")
    await bo.hears("2 hours before")
    await crew.room.travels_to(berlin("2026-03-03T16:30"))
    await bo.hears("starts in 2 hours: Tue 3 March 12:30, New York time")
    await ilse.hears_nothing()
    await crew.room.travels_to(berlin("2026-03-03T17:30"))
    await ilse.hears("starts in 1 hour: Tue 3 March 18:30, Berlin time")
    await bo.hears_nothing()


async def test_a_reminder_waits_for_the_end_of_quiet_hours(crew):
    early = await set_up(crew, "class Tuesdays 07:30, 30 min")
    ilse, bo = await crew.has("Ilse"), await crew.has("Bo")
    await ilse.says("quiet hours 22 to 7")
    await ilse.hears("Quiet hours: 22:00 to 07:00")
    await bo.says("quiet from 22:00 to 7:25")
    await bo.hears("Quiet hours: 22:00 to 07:25")
    await ilse.presses("I'm in", on=early)
    await ilse.hears("I'll remind you at 07:00")
    await bo.presses("I'm in", on=early)
    await bo.hears("I'll remind you on Mon 2 March 21:59")
    await crew.room.travels_to(berlin("2026-03-02T21:59"))
    await bo.hears("starts in 9 hours and 31 minutes")
    await crew.room.travels_to(berlin("2026-03-03T06:59"))
    await ilse.hears_nothing()
    await crew.room.travels_to(berlin("2026-03-03T07:00"))
    await ilse.hears("starts in 30 minutes")
    await bo.hears_nothing()


async def test_a_restart_between_planning_and_the_moment_loses_and_doubles_nothing(
    crew, weekly, bellwether, settings, platform
):
    ilse = await crew.has("Ilse")
    await comes(ilse, weekly)
    await bellwether.stop()
    await crew.room.travels_to(berlin("2026-03-03T17:45"))
    for _ in range(2):
        again = build(settings, make_conduct, clock=platform.clock, request=InProcessRequest(platform))
        await again.start()
        if _ == 0:
            await ilse.hears("starts in 45 minutes")
        await ilse.hears_nothing()
        await again.stop()
    reminders = [one for one in await ilse.messages if "starts in" in one.text]
    assert len(reminders) == 1


async def test_a_class_called_off_after_sign_up_is_told_and_not_reminded_of(crew, weekly, ilse):
    await comes(ilse, weekly)
    await crew.coach.says("no class next Tuesday")
    asked = await crew.coach.hears("Call this off?")
    assert "In so far: Ilse" in asked.text
    await crew.group.hears_nothing()
    await crew.coach.presses("No class Tue 3 March 18:30", on=asked)
    await crew.coach.hears("I've told the group and the one who had signed up")
    await crew.group.hears("No class on Tue 3 March 18:30")
    await ilse.hears("No class on Tue 3 March 18:30")
    await crew.room.travels_to(berlin("2026-03-04T09:00"))
    await ilse.hears_nothing()
    await ilse.says("/classes")
    assert "Tue 10 March" in (await ilse.hears("Live classes")).text


async def test_a_moved_date_keeps_its_people_and_reminds_once(crew, weekly, ilse):
    await comes(ilse, weekly)
    await crew.coach.says("move Tuesday's class to Wednesday 19:00")
    await crew.coach.hears("Move this?")
    await crew.coach.presses("Tue 3 March → Wed 4 March 19:00")
    await crew.coach.hears("Done")
    await crew.group.hears("moves to Wed 4 March 19:00")
    await ilse.hears("moves to Wed 4 March 19:00")
    await crew.room.travels_to(berlin("2026-03-03T23:00"))
    await ilse.hears_nothing()
    await crew.room.travels_to(berlin("2026-03-04T18:00"))
    await ilse.hears("starts in 1 hour: Wed 4 March 19:00")


async def test_who_was_reminded_and_is_moved_is_not_reminded_again(crew, weekly, ilse):
    await comes(ilse, weekly)
    await crew.room.travels_to(berlin("2026-03-03T17:30"))
    await ilse.hears("starts in 1 hour")
    await crew.coach.says("move class today to 20:30")
    await crew.coach.hears("Move this?")
    await crew.coach.presses("Tue 3 March")
    await ilse.hears("moves to Tue 3 March 20:30")
    await crew.room.travels_to(berlin("2026-03-03T20:00"))
    await ilse.hears_nothing()


async def test_who_drops_out_is_neither_reminded_nor_asked(crew, weekly, ilse):
    await comes(ilse, weekly)
    await ilse.presses("Can't make it")
    await ilse.hears("you're not in")
    await crew.room.travels_to(berlin("2026-03-04T09:00"))
    await ilse.hears_nothing()


async def test_whoever_changes_the_lead_is_reminded_by_the_new_one(crew, weekly, ilse):
    await comes(ilse, weekly)
    await ilse.says("/me")
    await ilse.hears("here's what I know")
    await ilse.presses("Reminders and clock")
    await ilse.hears("1 hour before")
    await ilse.presses("How early")
    await ilse.hears("How long before a class")
    await ilse.says("three quarters? no, 15 minutes")
    await ilse.hears("15 minutes before")
    await crew.room.travels_to(berlin("2026-03-03T18:00"))
    await ilse.hears_nothing()
    await crew.room.travels_to(berlin("2026-03-03T18:15"))
    await ilse.hears("starts in 15 minutes")


async def test_a_class_is_changed_by_its_coach(crew, weekly, ilse):
    await comes(ilse, weekly)
    await crew.coach.says("/classes")
    await crew.coach.hears("Live classes")
    await crew.coach.presses("Change Live class")
    await crew.coach.hears("In so far: Ilse")
    await crew.coach.presses("Change it")
    await crew.coach.hears("How should it be from now on?")
    await crew.coach.says("Wednesdays 19:00")
    read = await crew.coach.hears("Wednesdays at 19:00")
    assert LINK in read.text
    await crew.coach.presses("Yes, set it up")
    await crew.group.hears("The class has changed")
    await ilse.hears("no longer takes place")
    await crew.room.travels_to(berlin("2026-03-03T18:00"))
    await ilse.hears_nothing()


async def test_a_class_can_end(crew, weekly):
    await crew.coach.says("/classes")
    await crew.coach.hears("Live classes")
    await crew.coach.presses("Change Live class")
    await crew.coach.hears("Tuesdays at 18:30")
    await crew.coach.presses("End it")
    await crew.group.hears("no longer takes place")
    await crew.coach.says("classes")
    await crew.coach.hears("No live class is planned")


async def test_only_the_coach_calls_a_date_off(crew, weekly):
    await crew.coach.says("no class tomorrow")
    asked = await crew.coach.hears("Call this off?")
    ilse = await crew.has("Ilse")
    mine = await ilse.hears("Nothing is posted yet")
    await ilse.presses_data(mine, asked.button("No class").data)
    await ilse.sees_toast("Only the coach")
    await crew.group.hears_nothing()


async def test_a_coach_asks_who_is_in_for_class(crew, weekly, ilse):
    await comes(ilse, weekly)
    await crew.coach.says("who is in for class")
    assert "In so far: Ilse" in (await crew.coach.hears("Live classes")).text


async def test_a_day_without_class_is_told_with_the_next_dates(crew, weekly):
    await crew.coach.says("no class on Friday")
    answer = await crew.coach.hears("There's no class on Friday, 6 March")
    assert answer.button("No class Tue 3 March 18:30")


async def test_after_the_class_those_who_signed_up_are_asked(crew, weekly, ilse, bo):
    await comes(ilse, weekly)
    await crew.room.travels_to(berlin("2026-03-03T17:30"))
    await ilse.hears("starts in 1 hour")
    await crew.room.travels_to(berlin("2026-03-03T19:15"))
    await ilse.hears("Were you there?")
    await ilse.presses("Yes")
    await ilse.hears("Good to hear!")
    assert "Were you there" not in "".join(one.text for one in await bo.messages)


async def test_who_signs_up_too_late_for_a_reminder_gets_the_link_at_once(crew, weekly, ilse):
    await crew.room.travels_to(berlin("2026-03-03T18:00"))
    await ilse.presses("I'm in", on=weekly)
    assert LINK in (await ilse.hears("You're in")).text
    await crew.room.travels(timedelta(minutes=20))
    await ilse.hears_nothing()


async def test_a_date_that_is_over_can_not_be_signed_up_for(crew, weekly, ilse):
    await crew.room.travels_to(berlin("2026-03-04T09:00"))
    await ilse.presses("I'm in", on=weekly)
    await ilse.sees_toast("before something changed")


async def test_a_class_that_is_held_once(crew):
    await set_up(crew, "class on 14 March at 10:00, 1.5 hours, Open house")
    ilse = await crew.has("Ilse")
    await ilse.says("classes")
    await ilse.hears("Sat 14 March 10:00: Open house, 90 min")


async def test_the_clocks_change_and_the_class_stays_at_its_hour(crew):
    sunday = await set_up(crew, "class Sundays 18:30")
    ilse = await crew.has("Ilse")
    await crew.room.travels_to(datetime.fromisoformat("2026-03-28T12:00+01:00"))
    await ilse.says("classes")
    listed = await ilse.hears("Live classes")
    await ilse.presses("I'm in: Sun 29 March 18:30", on=listed)
    await ilse.hears("You're in")
    await crew.room.travels_to(datetime.fromisoformat("2026-03-29T17:30+02:00"))
    await ilse.hears("starts in 1 hour")
    assert sunday.button("I'm in: Sun 8 March 18:30")


async def test_a_class_said_to_be_at_another_time_is_moved_by_a_press(crew, weekly, ilse):
    await comes(ilse, weekly)
    await crew.coach.says("tomorrow's class is at 7pm instead")
    asked = await crew.coach.hears("Move this?")
    await crew.coach.presses("Tue 3 March → Tue 3 March 19:00", on=asked)
    await ilse.hears("19:00")


async def test_a_bare_hour_for_a_class_in_the_evening_is_of_the_evening_and_said_back(crew, weekly):
    await crew.coach.says("class at 7 instead")
    asked = await crew.coach.hears("Move this?")
    await crew.coach.presses("Tue 3 March → Tue 3 March 19:00", on=asked)
    await crew.group.hears("19:00")


async def test_a_coach_asks_who_is_in(crew, weekly, ilse, bo):
    await comes(ilse, weekly)
    await crew.gets(SESSION)
    await answers_what_is_asked(bo)
    await crew.coach.says("who's in tomorrow?")
    assert "Signed up (1): Ilse" in (await crew.coach.hears("Who's in")).text
    await crew.coach.says("who's in today?")
    today = (await crew.coach.hears("Who's in today")).text
    assert "Looked at their version: Bo" in today
    assert "No scores yet" in today
    await bo.says("5+3")
    await bo.hears("Noted")
    await crew.coach.says("who's in today?")
    assert "Told a score: Bo" in (await crew.coach.hears("Who's in today")).text


async def test_a_coach_asks_who_is_not_in(crew, weekly, ilse, bo):
    await comes(ilse, weekly)
    await crew.coach.says("who's not in tomorrow?")
    told = (await crew.coach.hears("Who's in")).text
    assert "Signed up (1): Ilse\nNot so far: Bo" in told


@pytest.mark.parametrize(
    "words", ["I won't make it tomorrow", "sorry, can't do tuesday", "we cannot hold it tomorrow"]
)
async def test_a_coach_who_will_not_be_there_calls_their_class_off_with_a_tap(crew, weekly, words):
    await crew.coach.says(words)
    await crew.coach.presses("No class", on=await crew.coach.hears("Call this off?"))
    await crew.group.hears("is called off")


async def test_who_is_in_is_told_to_no_athlete(crew, weekly, ilse, bo):
    await comes(ilse, weekly)
    await bo.says("who's in tomorrow?")
    assert "Signed up" not in (await bo.hears("")).text


async def test_a_board_under_a_weekday_is_no_class(crew):
    await crew.coach.says("Tues\n20 min easy run\n3 x 12 lunges\n3 x 10 push ups\ncool down walk 5 min")
    read = await crew.coach.hears("Here's how I read it")
    assert "12 lunges" in read.text


@pytest.mark.parametrize(
    ("words", "told"),
    [
        ("i want class every monday 19 o clock, link https://example.org/a", "Mondays at 19:00"),
        ("From next week on we train on Tuesdays and Thursdays at 18:00 online", "Thursdays at 18:00"),
    ],
)
async def test_a_class_may_be_told_in_any_words(crew, words, told):
    await crew.coach.says(words)
    await crew.coach.hears(told)
