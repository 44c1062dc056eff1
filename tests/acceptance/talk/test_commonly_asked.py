"""Questions about the bot itself get their own answer, and what is open is asked once more, in short."""

import pytest

from tests.acceptance.people import start_link


@pytest.mark.parametrize(
    ("asked", "answer"),
    [
        ("do i have to be fit", "whoever has never trained starts gently"),
        ("am i gonna be seen by others", "Nobody sees you train"),
        ("what is this?", "I'm a program"),
        ("what happens next", "If you say yes"),
    ],
)
async def test_before_the_yes(crew, asked, answer):
    alva = await crew.room.person("Alva")
    await alva.joins(crew.group)
    await alva.opens(await start_link(crew.group))
    await alva.hears("May I keep these notes?")
    await alva.says(asked)
    await alva.hears(answer)
    again = await alva.hears("May I keep these notes?")
    assert "question above" in again.text


@pytest.mark.parametrize(
    ("asked", "answer"),
    [
        ("how do I post for two groups?", "add me to each group"),
        ("can I schedule a whole week at once?", "One session at a time"),
        ("how do I see Jonas", "A name alone"),
        ("how do I undo something?", "Write undo"),
    ],
)
async def test_a_coach(crew, asked, answer):
    await crew.coach.says(asked)
    await crew.coach.hears(answer)


async def test_a_coach_sets_the_groups_clock_in_words(crew):
    await crew.coach.says("set the group's clock to London time")
    await crew.coach.hears("Harbour crew goes by the clock of London (Europe) now")


async def test_who_cannot_tell_starts_gently_and_is_not_asked_twice(crew):
    alva = await crew.has("Alva")
    await crew.gets("Tuesday\nAMRAP 10\n8 push-ups\n10 goblet squats @ 16/12 kg")
    await alva.presses("My version")
    await alva.hears("What do you have")
    await alva.says("a 16 kg kettlebell")
    await alva.hears("Which is meant for you?")
    await alva.says("i dont know any of this, never done a push up")
    await alva.hears("we start gently")


async def test_what_is_known_is_shown_to_whoever_asks(crew):
    ilse = await crew.has("Ilse")
    await ilse.says("what do you know about me")
    await ilse.hears("here's what I know")
