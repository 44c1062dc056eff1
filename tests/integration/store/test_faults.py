"""What a coach noted about an athlete stands from their yes until it is lifted, in its group alone."""

from decimal import Decimal

from core.scaling.orders import Fault
from tests.integration.store.builders import NOW, minutes

ROUNDS = Fault(movement="deadlift", words="keep your back flat", cap_kg=Decimal("32.5"))
FLARE = Fault(movement="push-up", words="keep your elbows in")


async def written(unit, group, coach, ilse, fault=ROUNDS):
    return await unit.faults.write(group_id=group.id, person_id=ilse.id, fault=fault, by_id=coach.id, now=NOW)


async def standing(unit, group, ilse):
    return [one.fault for one in await unit.faults.standing(group.id, ilse.id)]


async def test_what_is_only_written_stands_for_nothing(store, group, coach, ilse):
    async with store.unit() as unit:
        one = await written(unit, group, coach, ilse)
        assert await standing(unit, group, ilse) == []
        await unit.faults.make(one.id, NOW)
        assert await standing(unit, group, ilse) == [ROUNDS]


async def test_lifted_it_stands_no_more_and_is_remembered(store, group, coach, ilse):
    async with store.unit() as unit:
        for fault in (ROUNDS, FLARE):
            await unit.faults.make((await written(unit, group, coach, ilse, fault)).id, NOW)
        first, _ = await unit.faults.standing(group.id, ilse.id)
        await unit.faults.lift(first.id, NOW + minutes(5))
        assert await standing(unit, group, ilse) == [FLARE]
        assert (await unit.faults.get(first.id)).lifted_at == NOW + minutes(5)


async def test_dropped_its_words_are_gone_and_its_place_is_nobody_else_s(store, group, coach, ilse):
    async with store.unit() as unit:
        one = await written(unit, group, coach, ilse)
        await unit.faults.drop(one.id, NOW)
        left = await unit.faults.get(one.id)
        assert (left.fault.words, left.fault.cap_kg, left.made_at, left.lifted_at) == ("", None, None, NOW)
        assert (await written(unit, group, coach, ilse)).id != one.id
        assert await standing(unit, group, ilse) == []


async def test_it_counts_in_its_own_group_and_for_its_own_athlete_only(store, group, coach, ilse):
    async with store.unit() as unit:
        elsewhere = await unit.groups.open((await unit.chats.group_chat(-5001)).id, "Others", NOW)
        await unit.faults.make((await written(unit, elsewhere, coach, ilse)).id, NOW)
        await unit.faults.make((await written(unit, group, coach, coach)).id, NOW)
        assert await standing(unit, group, ilse) == []


async def test_a_person_takes_along_what_was_noted_and_it_goes_with_them(store, group, coach, ilse):
    async with store.unit() as unit:
        await unit.faults.make((await written(unit, group, coach, ilse)).id, NOW)
        [row] = (await unit.personal.everything(ilse.id))["fault"]
        assert row["body"]["words"] == "keep your back flat"
        await unit.personal.erase(ilse.id)
        assert await standing(unit, group, ilse) == []


async def test_a_coach_who_goes_leaves_it_to_the_group_without_a_name(store, group, coach, ilse):
    async with store.unit() as unit:
        await unit.faults.make((await written(unit, group, coach, ilse)).id, NOW)
        await unit.personal.erase(coach.id)
        assert await standing(unit, group, ilse) == [ROUNDS]
        assert (await unit.people.get(coach.id)).name == "Somebody"
