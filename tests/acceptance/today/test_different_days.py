"""Today is different: sick, sore, short of time, another place. And equipment that comes and goes."""

from datetime import timedelta

import pytest

from tests.acceptance.versions.test_changing_a_version import SESSION, has_a_version, new_version
from tests.acceptance.worlds import world


async def says_today(person, label):
    await person.presses("Today is different")
    await person.presses(label, on=await person.hears("What's different today?"))


@world
async def ilse(crew):
    return await has_a_version(crew)


async def test_a_fever_means_rest_and_well_again_begins_gently(crew, ilse):
    await says_today(ilse, "Sick")
    await ilse.presses("Fever", on=await ilse.hears("How is it?"))
    await ilse.hears("Rest until it's gone and two days more")
    rest = await ilse.hears("Rest today")
    await ilse.presses("I'm well again", on=rest)
    await ilse.hears("ten easy minutes")
    gentle = await new_version(ilse)
    assert "8 minutes, round after round at an easy pace" in gentle
    assert "nothing to chase, no rank" in gentle


async def test_what_stands_on_a_button_may_be_typed(crew, ilse):
    await ilse.presses("Today is different")
    await ilse.hears("What's different today?")
    await ilse.says("short of time")
    await ilse.hears("How long")
    await ilse.says("5 minutes")
    await ilse.hears("Noted: 5 minutes, for today")


async def test_who_gets_over_something_does_ten_easy_minutes(crew, ilse):
    await says_today(ilse, "Sick")
    await ilse.presses("Getting over it", on=await ilse.hears("How is it?"))
    await ilse.hears("Noted: getting over something, for today")
    gentle = await new_version(ilse)
    assert "8 minutes, round after round at an easy pace" in gentle
    assert "nothing to chase, no rank" in gentle
    assert "Ten easy minutes first" in gentle
    await crew.room.travels(timedelta(days=1))
    await ilse.says("/today")
    assert "12 minutes, as many rounds" in await new_version(ilse)


async def test_what_is_different_may_last(crew, ilse):
    await says_today(ilse, "Short of time")
    await ilse.presses("5 minutes", on=await ilse.hears("How long"))
    noted = await ilse.hears("Noted: 5 minutes, for today")
    await new_version(ilse)
    await ilse.presses(noted.all_buttons[1].label, on=noted)
    await ilse.hears("Noted: 5 minutes, until")
    await crew.room.travels(timedelta(days=2))
    await ilse.says("/today")
    assert "4 minutes, as many rounds" in await new_version(ilse)
    await crew.room.travels(timedelta(days=1))
    await ilse.says("/today")
    assert "12 minutes, as many rounds" in await new_version(ilse)
    await ilse.presses(noted.all_buttons[1].label, on=noted)
    await ilse.sees_toast("before something changed")


async def test_a_score_of_a_shorter_day_is_marked_on_the_board(crew, ilse):
    await says_today(ilse, "Short of time")
    await ilse.presses("5 minutes", on=await ilse.hears("How long"))
    await new_version(ilse)
    await ilse.says("2+12")
    await ilse.hears("Noted: 2 rounds + 12, scaled (had 4 min)")
    assert "1. Ilse  2 rounds + 12 (had 4 min)" in (await crew.group.hears("Scoreboard")).text


async def test_sore_all_over_is_light_and_as_usual_takes_it_back(crew, ilse):
    await says_today(ilse, "Sore")
    await ilse.presses("All over", on=await ilse.hears("muscles sore"))
    await ilse.hears("Noted: sore all over")
    assert "Today: sore all over" in await new_version(ilse)
    await says_today(ilse, "As usual again")
    await ilse.hears("As usual again, then")
    assert "sore" not in await new_version(ilse)


async def test_another_place_is_asked_for_once_and_then_known(crew, ilse):
    await says_today(ilse, "Another place")
    await ilse.presses("Away from home", on=await ilse.hears("Where do you train"))
    await ilse.hears("What do you have to train with away from home?")
    await ilse.says("flurbs")
    await ilse.hears("I didn't get “flurbs”")
    await ilse.says("just a band")
    await ilse.hears("Away from home you have now: a")
    away = await new_version(ilse)
    assert "Today: away from home" in away
    assert "kg)" not in away
    await says_today(ilse, "Another place")
    await ilse.presses("At home", on=await ilse.hears("Where do you train"))
    await ilse.hears("Noted: at home")
    assert "(16 kg kettlebell)" in await new_version(ilse)


async def test_a_gym_with_everything(crew):
    ilse = await has_a_version(crew, equipment="nothing")
    await ilse.says("at the gym I have everything")
    await ilse.hears("In the gym you have now")
    await says_today(ilse, "Another place")
    await ilse.presses("In a gym", on=await ilse.hears("Where do you train"))
    await ilse.hears("Noted: in the gym")
    assert "(16 kg" in await new_version(ilse)
    await ilse.says("/me")
    await ilse.hears("In the gym: everything that a gym has")


@pytest.mark.parametrize(
    ("said", "told"),
    [
        ("bought a 24", "New: a kettlebell of 24 kg"),
        ("sold the chair", "Gone: the chair"),
        ("lent my 16 kg kettlebell to my brother", "Gone: a kettlebell of 16 kg"),
        ("trip: a band", "Away from home you have now"),
    ],
)
async def test_equipment_comes_and_goes_in_words_and_a_tap_undoes_it(crew, said, told, ilse):
    await ilse.says("/me")
    before = (await ilse.hears("here's what I know")).text
    await ilse.says(said)
    read_back = await ilse.hears(told)
    await ilse.presses("Undo", on=read_back)
    await ilse.hears("Undone.")
    await ilse.says("/me")
    assert (await ilse.hears("here's what I know")).text == before
    await ilse.presses("Undo", on=read_back)
    await ilse.sees_toast("before something changed")


async def test_a_weight_of_nobody_knows_what_is_asked_about(crew):
    ilse = await has_a_version(crew, equipment="nothing")
    await ilse.says("bought a 16")
    await ilse.presses("Kettlebell", on=await ilse.hears("16 kg of what?"))
    await ilse.hears("New: a kettlebell of 16 kg")
    await ilse.says("/today")
    assert "(16 kg kettlebell)" in await new_version(ilse)


async def test_an_older_change_is_not_undone_over_a_newer_one(crew, ilse):
    await ilse.says("bought a 24")
    first = await ilse.hears("New: a kettlebell of 24 kg")
    await ilse.says("sold the chair")
    await ilse.hears("Gone: the chair")
    await ilse.presses("Undo", on=first)
    await ilse.sees_toast("before something changed")


async def test_a_set_can_be_told_from_what_is_known_of_me(crew, ilse):
    await ilse.says("/me")
    await ilse.presses("Away from home", on=await ilse.hears("here's what I know"))
    await ilse.hears("What do you have to train with away from home?")
    await ilse.says("a band and a chair")
    await ilse.hears("Away from home you have now")


@pytest.mark.parametrize("talk", ["sold out tonight?", "I lost 5 kg!", "bought groceries", "broke my record"])
async def test_ordinary_chat_changes_no_equipment(crew, talk, ilse):
    await ilse.says(talk)
    assert "Undo" not in str((await ilse.hears("")).labels)


async def test_what_was_only_told_is_called_no_last_time(crew):
    ilse = await crew.has("Ilse")
    await ilse.says("I can do 14 push-ups")
    await ilse.hears("14 push-ups")
    await crew.room.travels(timedelta(days=1))
    await crew.gets("AMRAP 12\n10 push-ups")
    await ilse.presses("My version")
    await ilse.presses("Nothing, just me", on=await ilse.hears("What do you have"))
    await ilse.presses("No, all fine", on=await ilse.hears("needs to spare"))
    version = (await ilse.hears("Your version")).text
    assert "14 in a row.)" in version
    assert "(You told me on" in version
    assert "Last time" not in version


async def test_last_time_stands_beside_the_line(crew, ilse):
    assert "Last time" not in (await ilse.last_message).text
    await ilse.says("7+12")
    await ilse.hears("Noted")
    await crew.room.travels(timedelta(days=7))
    await crew.gets(SESSION.replace("Tuesday", "Again"))
    await ilse.presses("My version")
    again = await new_version(ilse)
    assert "16 kg, 12 at a time, 7 rounds + 12.)" in again
