"""A coach adds the bot to a group and sets it up."""

import pytest_asyncio


@pytest_asyncio.fixture
async def coach(bellwether, room):
    """Marit, who has just added the bot to her Dune runners and is asked for their clock."""
    marit = await room.person("Marit")
    group = await room.group("Dune runners", admins=[marit])
    await marit.adds_bot(group)
    await group.hears("Hello Dune runners")
    await marit.presses("Start with me")
    await marit.hears("Which clock")
    return marit


async def test_the_coach_is_asked_for_the_groups_clock_and_units(crew):
    assert "Harbour crew" in (await crew.coach.last_message).text


async def test_a_city_can_be_typed_for_the_clock(coach):
    await coach.says("lisbon")
    await coach.hears("by the clock of Lisbon")


async def test_where_the_coach_is_answers_which_clock_the_group_goes_by(coach):
    await coach.says("I'm in Berlin")
    await coach.hears("by the clock of Berlin")
    await coach.says("kilos please")
    await coach.hears("loads in kg")


async def test_everything_can_be_typed_and_odd_words_only_repeat_the_question(coach):
    await coach.says("hello?")
    await coach.hears("try your country")
    await coach.says("Norway")
    await coach.hears("by the clock of Oslo")
    await coach.says("what?")
    await coach.hears("kg or lb?")
    await coach.says("pounds please")
    await coach.hears("loads in lb")
    assert "35/25 lb" in (await coach.last_message).text


async def test_an_interrupted_set_up_goes_on_where_it_was(coach):
    await coach.presses("Berlin")
    await coach.hears("kg or lb?")
    await coach.presses("Start with me")
    await coach.hears("kg or lb?")


async def test_a_place_within_a_sentence_is_offered(coach):
    await coach.says("wait what do i do now? im in hamburg germany")
    asked = await coach.hears("Which one do you mean")
    assert asked.labels == ["Berlin (Europe)"]
    await coach.presses("Berlin", on=asked)
    await coach.hears("by the clock of Berlin")


async def test_a_coach_who_asks_how_people_join_is_told_in_the_help(crew):
    await crew.coach.says("How do I add my athletes")
    await crew.coach.hears("They tap Start with me in the group")


async def test_a_coach_who_asks_who_is_in_is_told_the_names(crew):
    await crew.has("Ilse")
    await crew.has("Bo")
    await crew.coach.says("who is in the group?")
    await crew.coach.hears("Harbour crew: Ilse and Bo")


async def test_what_is_written_before_the_clock_is_known_is_heard_afterwards(coach):
    await coach.says("class every tuesday at 18:30")
    await coach.hears("I keep “class every tuesday at 18:30”")
    await coach.says("Im in Leeds")
    await coach.hears("by the clock of London")
    await coach.presses("Kilograms")
    await coach.hears("All set")
    await coach.hears("Tuesdays at 18:30, London time")
