"""A coach notes how somebody moves: read back, said yes to, told kindly, seen with every version until it is lifted."""

from datetime import timedelta

import pytest

from tests.acceptance.people import passes_screening, start_link
from tests.acceptance.worlds import world

LIFTS = "Lifts\nAMRAP 12\n8 deadlifts @ 60 kg\n10 push-ups"
NOTE = "Ilse: deadlifts at most 30 kg, her back rounds"
CUE = "Your coach: your back rounds. At most 30 kg in your hands."


async def lifter(crew, name="Ilse"):
    """Somebody who lifts 60 kg easily, before any session."""
    person = await crew.has(name)
    await crew.gets(LIFTS)
    await person.presses("My version")
    for _ in range(12):
        message = await person.hears("")
        if "Your version" in message.text:
            break
        if "What do you have" in message.text:
            await person.says("a 20, 30, 40 and 60 kg barbell and a chair")
        elif "What do you weigh" in message.text:
            await person.says("70")
        elif "in a row" in message.text and message.all_buttons:
            await person.says("30")
        elif message.all_buttons:
            await person.presses(message.all_buttons[0].label, on=message)
    assert "8 deadlifts with a barbell (60 kg barbell)" in message.text, message.text
    return person


async def notes(crew, words=NOTE):
    await crew.coach.says(words)
    read = await crew.coach.hears("Shall I note this for Ilse?")
    await crew.coach.presses("Yes, note it", on=read)
    await crew.coach.hears("Noted, and Ilse knows")
    return read


async def version_of(person):
    await person.says("/today")
    return (await person.hears("Your version")).text


@world
async def ilse(crew):
    return await lifter(crew)


async def test_the_coach_sees_what_will_be_read_and_the_athlete_reads_just_that(crew, ilse):
    read = await notes(crew)
    assert CUE in read.text
    assert "at most 30 kg in the hands altogether" in read.text
    told = await ilse.hears("Your coach looked closely at your deadlifts")
    assert CUE in told.text
    assert "never the group" in told.text
    text = await version_of(ilse)
    assert "8 deadlifts with a barbell (30 kg barbell): Lighter for now: your coach noted something" in text
    assert CUE in text
    assert text.count("Your coach:") == 1
    assert CUE not in (await crew.group.last_message).text


async def test_without_a_number_it_gets_lighter_and_the_words_are_there(crew, ilse):
    read = await notes(crew, "note for Ilse: keep the back flat in deadlifts")
    assert "half of what they can do" in read.text
    await ilse.hears("each set stays well within what you can do")
    assert "Your coach: keep the back flat.\n" in await version_of(ilse) + "\n"


async def test_in_other_words_it_is_read_back_again_and_the_first_can_not_be_said_yes_to(crew, ilse):
    await crew.coach.says(NOTE)
    first = await crew.coach.hears("Shall I note this")
    await crew.coach.presses("Other words", on=first)
    await crew.coach.hears("How should Ilse read it?")
    await crew.coach.says("keep your back flat")
    second = await crew.coach.hears("Shall I note this")
    assert "Your coach: keep your back flat. At most 30 kg" in second.text
    await crew.coach.presses_data(first, "fk:1")
    await crew.coach.sees_toast("before something changed")
    await crew.coach.presses("Yes, note it", on=second)
    assert "keep your back flat" in (await ilse.hears("Your coach looked closely")).text


async def test_words_that_are_too_long_to_help_are_asked_for_again(crew):
    await crew.has("Ilse")
    await crew.coach.says(NOTE)
    await crew.coach.presses("Other words", on=await crew.coach.hears("Shall I note this"))
    await crew.coach.says("keep your back flat and your ribs down " * 6)
    await crew.coach.hears("A little shorter")
    await crew.coach.sends_voice()
    await crew.coach.hears("A little shorter")


async def test_no_notes_nothing(crew, ilse):
    await crew.coach.says(NOTE)
    await crew.coach.presses("No", on=await crew.coach.hears("Shall I note this"))
    await crew.coach.hears("nothing is noted")
    await ilse.hears_nothing()
    assert "Your coach:" not in await version_of(ilse)


async def test_a_second_press_does_nothing(crew, ilse):
    read = await notes(crew)
    await ilse.hears("Your coach looked closely")
    await crew.coach.presses_data(read, "fk:1")
    await crew.coach.sees_toast("done already")
    await crew.coach.presses_data(read, "fd:1")
    await crew.coach.sees_toast("done already")
    await ilse.hears_nothing()
    assert CUE in await version_of(ilse)


async def lifts_and_checks(crew, ilse):
    await ilse.hears("your coach is happy with your deadlifts")
    text = await version_of(ilse)
    assert "8 deadlifts with a barbell (60 kg barbell)" in text
    assert "Your coach:" not in text


@pytest.mark.parametrize(
    "words", ["Ilse's deadlift is fine now", "lift the note on Ilse", "lift the note on Ilse's deadlifts"]
)
async def test_it_is_lifted_in_words(crew, words, ilse):
    await notes(crew)
    await ilse.hears("Your coach looked closely")
    await crew.coach.says(words)
    await crew.coach.hears("Lifted: Ilse's deadlifts")
    await lifts_and_checks(crew, ilse)


async def test_what_stands_is_listed_and_lifted_by_a_button_once(crew, ilse):
    await notes(crew)
    await ilse.hears("Your coach looked closely")
    await notes(crew, "watch Ilse's push-ups, elbows flare")
    await ilse.hears("Your coach looked closely at your push-ups")
    await crew.coach.says("notes on Ilse")
    listed = await crew.coach.hears("Your notes that stand")
    assert "Ilse, deadlifts: \u201cyour back rounds\u201d, at most 30 kg" in listed.text
    assert "Ilse, push-ups: \u201cyour elbows flare\u201d" in listed.text
    await crew.coach.presses("Lift Ilse: deadlifts", on=listed)
    await crew.coach.hears("Lifted: Ilse's deadlifts")
    await ilse.hears("your coach is happy with your deadlifts")
    await crew.coach.presses("Lift Ilse: deadlifts", on=listed)
    await crew.coach.sees_toast("done already")
    await crew.coach.says("lift all notes on Ilse")
    await crew.coach.hears("Lifted: Ilse's push-ups")
    await ilse.hears("your coach is happy with your push-ups")
    await crew.coach.says("notes")
    await crew.coach.hears("No note stands for anybody")


async def test_the_view_of_an_athlete_shows_what_stands_and_lifts_it(crew, ilse):
    await notes(crew)
    await ilse.hears("Your coach looked closely")
    await crew.coach.says("show me Ilse")
    card = await crew.coach.hears("Ilse, as I'd do it")
    assert "8 deadlifts with a barbell (30 kg barbell)" in card.text
    assert "Your notes:\n\u2022 deadlifts: \u201cyour back rounds\u201d, at most 30 kg" in card.text
    await crew.coach.presses("Lift Ilse: deadlifts", on=card)
    await lifts_and_checks(crew, ilse)


async def test_another_coach_of_the_group_lifts_it_too(crew, ilse):
    await notes(crew)
    await ilse.hears("Your coach looked closely")
    tove = await crew.room.person("Tove")
    await tove.joins(crew.group)
    await crew.coach.promotes(tove, in_=crew.group)
    await passes_screening(tove, await start_link(crew.group))
    await tove.says("notes on Ilse")
    await tove.presses("Lift Ilse: deadlifts", on=await tove.hears("Your notes that stand"))
    await tove.hears("Lifted")
    await ilse.hears("your coach is happy with your deadlifts")


async def test_nobody_else_notes_or_lifts(crew, ilse):
    read = await notes(crew)
    await ilse.hears("Your coach looked closely")
    await ilse.presses_data(await ilse.last_message, "fl:1")
    await ilse.sees_toast("Only the coach")
    await ilse.says("Ilse rounds her back in deadlifts")
    await ilse.hears("")
    await crew.coach.hears_nothing()
    assert "Shall I note this" in read.text


async def test_the_athlete_s_own_wish_does_not_get_round_it(crew, ilse):
    await notes(crew)
    await ilse.hears("Your coach looked closely")
    await version_of(ilse)
    await ilse.presses("Change a line")
    choice = await ilse.hears("Which line")
    await ilse.presses(choice.all_buttons[0].label, on=choice)
    await ilse.presses("As written", on=await ilse.hears("What would you like?"))
    await ilse.hears("Your coach noted something about how you do this, so I keep to that")


async def test_what_the_coach_decides_later_goes_past_it(crew, ilse):
    await notes(crew)
    await ilse.hears("Your coach looked closely")
    await crew.room.travels(timedelta(minutes=1))
    await crew.coach.says("show me Ilse")
    await crew.coach.presses("1", on=await crew.coach.hears("Ilse, as I'd do it"))
    await crew.coach.presses("As written", on=await crew.coach.hears("Ilse: 8 deadlifts"))
    await crew.coach.hears("8 deadlifts with a barbell (60 kg barbell) (your choice)")
    text = await version_of(ilse)
    assert "8 deadlifts with a barbell (60 kg barbell): Your coach's choice." in text
    assert "Your coach: your back rounds." in text
    await crew.room.travels(timedelta(minutes=1))
    await notes(crew, "cap Ilse's deadlifts at 20 kg")
    assert "8 deadlifts with a barbell (20 kg barbell)" in await version_of(ilse)


async def test_a_note_for_nothing_in_particular_is_asked_for(crew):
    await crew.has("Ilse")
    await crew.coach.says("note for Ilse: rounds her back")
    await crew.coach.hears("Which movement is it about?")
    await crew.coach.says("note for Ilse: deadlifts")
    await crew.coach.hears("What about deadlifts?")


async def test_what_does_not_stand_can_not_be_lifted(crew, ilse):
    await crew.coach.says("Ilse's deadlift is fine now")
    await crew.coach.hears("No note stands for Ilse")


async def test_other_words_with_a_name_in_them_are_no_score_and_thanks_are_none(crew, ilse):
    await crew.coach.says(NOTE)
    await crew.coach.presses("Other words", on=await crew.coach.hears("Shall I note this"))
    await crew.coach.hears("How should Ilse read it?")
    await crew.coach.says("thanks!")
    await crew.coach.hears("You're welcome")
    await crew.coach.says("Ilse, keep your back flat")
    assert "Your coach: Ilse, keep your back flat." in (await crew.coach.hears("Shall I note this")).text
