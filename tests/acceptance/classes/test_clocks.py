"""A moment is told on the clock of whoever reads it: the group's, and in private their own if they named one."""

from tests.acceptance.classes.test_classes import SESSION, berlin, comes, set_up
from tests.acceptance.people import answers_what_is_asked
from tests.acceptance.worlds import world

# 18:30 in Berlin is 12:30 in New York on that day.
TUESDAYS = "class Tuesdays 18:30, 45 min, https://example.org/room"


async def lives_in_new_york(person) -> None:
    await person.says("I live in New York")
    await person.hears("Clock: New York (your clock)")


async def looks_at_ilses_score(coach) -> str:
    await coach.says("/board")
    await coach.hears("7 rounds + 9")
    await coach.presses("Look at the scores")
    await coach.hears("Tap a score")
    await coach.presses("Ilse: 7 rounds + 9")
    await coach.hears("Typed: “7+9”, by Ilse.")
    await coach.presses("Checked")
    card = await coach.hears("checked by Marit")
    return str(card.text)


async def told_a_score(crew) -> None:
    ilse = await crew.has("Ilse")
    await crew.gets(SESSION)
    await answers_what_is_asked(ilse)
    await ilse.says("7+9")
    await ilse.hears("Noted")
    await crew.room.travels_to(berlin("2026-03-02T19:50"))


@world
async def ilse(crew):
    return await told_a_score(crew)


async def test_a_scores_history_is_told_on_the_groups_clock(crew, ilse):
    card = await looks_at_ilses_score(crew.coach)
    assert "2 March 19:50: checked by Marit" in card
    assert "UTC" not in card


async def test_a_scores_history_is_told_on_the_coachs_own_clock(crew, ilse):
    await lives_in_new_york(crew.coach)
    assert "2 March 13:50: checked by Marit" in await looks_at_ilses_score(crew.coach)


async def test_a_press_in_the_group_is_answered_on_the_pressers_own_clock(crew):
    weekly = await set_up(crew, TUESDAYS)
    bo = await crew.has("Bo")
    await lives_in_new_york(bo)
    await bo.presses("I'm in", on=weekly)
    await bo.sees_toast("You're in: Tue 3 March 12:30, New York time")


async def test_the_digest_tells_class_times_on_the_coachs_own_clock(crew):
    weekly = await set_up(crew, "class Mondays 18:00, 45 min")
    ilse = await crew.has("Ilse")
    await crew.gets(SESSION)
    await comes(ilse, weekly)
    await lives_in_new_york(crew.coach)
    await crew.room.travels_to(berlin("2026-03-02T20:00"))
    evening = await crew.coach.hears("Your evening with Harbour crew")
    assert "Live class, 12:00, New York time" in evening.text


async def test_a_coach_abroad_is_told_whose_clock_a_post_goes_by(crew):
    await lives_in_new_york(crew.coach)
    await crew.coach.says(SESSION)
    await crew.coach.hears("Here's how I read it")
    await crew.coach.presses("Post Tue 06:00, Berlin time")
    await crew.coach.hears("I'll post it to Harbour crew on Tuesday, 3 March at 06:00, Berlin time.")


async def test_a_coach_abroad_moves_a_date_on_one_clock(crew):
    await set_up(crew, TUESDAYS)
    await lives_in_new_york(crew.coach)
    await crew.coach.says("move Tuesday's class to 19:30")
    asked = await crew.coach.hears("Move this?")
    await crew.coach.presses("Tue 3 March → Tue 3 March 13:30", on=asked)
    await crew.coach.hears("Live class of Tue 3 March 12:30 moves to Tue 3 March 13:30, New York time.")
    await crew.group.hears("Live class of Tue 3 March 18:30 moves to Tue 3 March 19:30, Berlin time.")


async def test_a_coach_abroad_hears_of_a_class_called_off_on_their_clock(crew):
    await set_up(crew, TUESDAYS)
    await lives_in_new_york(crew.coach)
    await crew.coach.says("no class next Tuesday")
    await crew.coach.presses("No class Tue 3 March 12:30", on=await crew.coach.hears("Call this off?"))
    await crew.coach.hears("No class on Tue 3 March 12:30, New York time")
    await crew.group.hears("No class on Tue 3 March 18:30, Berlin time")


async def test_the_file_of_scores_says_whose_time_it_tells(crew, ilse):
    await crew.coach.says("/board")
    await crew.coach.hears("7 rounds + 9")
    await crew.coach.presses("As a file")
    await crew.coach.hears("Times are Berlin time.")
