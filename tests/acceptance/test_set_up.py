"""A coach adds the bot to a group and sets it up."""


async def test_the_coach_is_asked_for_the_groups_clock_and_units(crew):
    assert "Harbour crew" in (await crew.coach.last_message).text


async def test_a_city_can_be_typed_for_the_clock(bellwether, room):
    coach = await room.person("Marit")
    group = await room.group("Dune runners", admins=[coach])
    await coach.adds_bot(group)
    await group.hears("Hello Dune runners")
    await coach.presses("Start with me")
    await coach.hears("Which clock")
    await coach.says("lisbon")
    await coach.hears("Lisbon (Europe) it is")
