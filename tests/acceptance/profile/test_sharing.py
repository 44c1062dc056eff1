"""A couple and one adjustable dumbbell: each has loads of their own, and they don't need it at the same time."""

import pytest

from tests.acceptance.versions.test_changing_a_version import answers

SESSION = "Tuesday\nAMRAP 12\n12 goblet squats @ 16/12 kg\n10 push-ups\n200 m run"


async def has(crew, name, equipment):
    person = await crew.has(name)
    if name == "Finn":
        await crew.gets(SESSION)
    await answers(person, equipment)
    return person, (await person.last_message).text


async def test_a_couple_begins_on_different_lines_each_with_their_own_weight(crew):
    finn, his = await has(crew, "Finn", "an adjustable dumbbell 2.5-24 kg that I share with Noor")
    _, hers = await has(crew, "Noor", "adjustable dumbbell 2.5 to 24 kg, shared with Finn")
    assert "You share the dumbbell with Noor: begin with “12 goblet squats" in his
    assert "while Noor begins with “10 push-ups" in his
    assert "set it to your own weight" in his
    assert "You share the dumbbell with Finn: begin with “10 push-ups" in hers
    assert "while Finn begins with “12 goblet squats" in hers
    await finn.says("/me")
    assert "adjustable dumbbell, 2.5 kg to 24 kg (shared with Noor)" in (await finn.hears("Equipment")).text


@pytest.mark.parametrize(
    ("words", "whose"),
    [
        ("I share it with Noor", "shared with Noor"),
        ("Noor and I share the dumbbell", "shared with Noor"),
        ("we share it", "shared)"),
        ("I share the adjustable dumbbell with my wife", "shared with your wife"),
    ],
)
async def test_it_can_be_told_afterwards_and_undone(crew, words, whose):
    finn, before = await has(crew, "Finn", "adjustable dumbbell 2.5-24 kg")
    assert "You share" not in before
    await finn.says(words)
    told = await finn.hears("At home you have now")
    assert whose in told.text
    await finn.says("/today")
    assert "You share the dumbbell" in (await finn.hears("Your version")).text
    await finn.presses("Undo", on=told)
    await finn.hears("Undone")
    await finn.says("/today")
    assert "You share" not in (await finn.hears("Your version")).text


async def test_asked_how_heavy_it_is_it_stays_shared(crew):
    finn = await crew.has("Finn")
    await crew.gets(SESSION)
    await finn.presses("My version")
    while "What do you have" not in (await finn.hears("")).text:
        pass
    await finn.says("I share an adjustable dumbbell with Noor")
    await finn.hears("How heavy is the dumbbell")
    await finn.says("2.5 to 24")
    await finn.hears("an adjustable dumbbell, 2.5 kg to 24 kg (shared with Noor)")
