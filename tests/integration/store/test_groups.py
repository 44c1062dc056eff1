from datetime import timedelta

from core.measures import MassUnit
from core.store.records import GroupState, Role
from tests.integration.store.builders import NOW

LATER = NOW + timedelta(days=1)


async def test_a_group_is_new_until_its_units_are_told(store, group):
    assert (group.state, group.units) == (GroupState.NEW, MassUnit.KG)
    async with store.unit() as unit:
        assert (await unit.groups.set_up(group.id, zone="Europe/Vienna")).state is GroupState.NEW
        ready = await unit.groups.set_up(group.id, units=MassUnit.LB)
    assert (ready.state, ready.zone, ready.units) == (GroupState.READY, "Europe/Vienna", MassUnit.LB)


async def test_a_group_that_took_the_bot_back_is_as_it_was(store, group_chat, group):
    async with store.unit() as unit:
        ready = await unit.groups.set_up(group.id, zone="Europe/Vienna", units=MassUnit.KG)
        await unit.groups.mark_left(group.id)
        assert (await unit.groups.get(group.id)).state is GroupState.LEFT
        assert await unit.groups.open(group_chat.id, ready.title, LATER) == ready


async def test_joining_twice_is_joining_once(store, ilse, group):
    async with store.unit() as unit:
        first = await unit.groups.join(ilse.id, group.id, Role.ATHLETE, NOW)
        assert await unit.groups.join(ilse.id, group.id, Role.ATHLETE, LATER) == first
        assert await unit.groups.members(group.id) == [first]


async def test_a_coach_who_joins_as_an_athlete_stays_coach(store, coach, group):
    async with store.unit() as unit:
        await unit.groups.join(coach.id, group.id, Role.COACH, NOW)
        assert (await unit.groups.join(coach.id, group.id, Role.ATHLETE, NOW)).role is Role.COACH


async def test_an_athlete_who_joins_as_coach_is_coach(store, coach, group):
    async with store.unit() as unit:
        await unit.groups.join(coach.id, group.id, Role.ATHLETE, NOW)
        assert (await unit.groups.join(coach.id, group.id, Role.COACH, NOW)).role is Role.COACH


async def test_a_former_coach_comes_back_in_the_role_of_now(store, coach, group):
    async with store.unit() as unit:
        await unit.groups.join(coach.id, group.id, Role.COACH, NOW)
        await unit.groups.follow(coach.id, group.id, None, NOW)
        back = await unit.groups.join(coach.id, group.id, Role.ATHLETE, LATER)
    assert (back.role, back.joined_at, back.left_at) == (Role.ATHLETE, LATER, None)


async def test_members_are_found_by_role_with_who_they_are(store, ilse, coach, group):
    async with store.unit() as unit:
        await unit.groups.join(coach.id, group.id, Role.COACH, NOW)
        await unit.groups.join(ilse.id, group.id, Role.ATHLETE, NOW)
        athletes = await unit.groups.members(group.id, role=Role.ATHLETE)
        assert [one.person for one in athletes] == [ilse]
        assert len(await unit.groups.members(group.id)) == 2


async def test_who_left_is_no_member(store, ilse, group):
    async with store.unit() as unit:
        await unit.groups.join(ilse.id, group.id, Role.ATHLETE, NOW)
        await unit.groups.follow(ilse.id, group.id, None, LATER)
        assert await unit.groups.members(group.id) == []
        assert await unit.groups.groups_of(ilse.id) == []
        assert await unit.groups.membership(ilse.id, group.id) is None


async def test_a_group_without_the_bot_is_nobodys_group(store, ilse, group):
    async with store.unit() as unit:
        await unit.groups.join(ilse.id, group.id, Role.ATHLETE, NOW)
        assert [one.group_id for one in await unit.groups.groups_of(ilse.id)] == [group.id]
        await unit.groups.mark_left(group.id)
        assert await unit.groups.groups_of(ilse.id) == []


async def test_what_a_member_chose_is_kept(store, ilse, group):
    async with store.unit() as unit:
        await unit.groups.join(ilse.id, group.id, Role.ATHLETE, NOW)
        await unit.groups.follow(ilse.id, group.id, Role.COACH, NOW)
        await unit.groups.share_limits(ilse.id, group.id, yes=True)
        member = await unit.groups.membership(ilse.id, group.id)
    assert (member.role, member.shares_limits) == (Role.COACH, True)


async def test_what_the_platform_says_is_followed(store, ilse, group):
    async with store.unit() as unit:
        await unit.groups.join(ilse.id, group.id, Role.COACH, NOW)
        await unit.groups.follow(ilse.id, group.id, Role.ATHLETE, NOW)
        assert (await unit.groups.membership(ilse.id, group.id)).role is Role.ATHLETE
        await unit.groups.follow(ilse.id, group.id, None, NOW)
        assert await unit.groups.membership(ilse.id, group.id) is None
        await unit.groups.follow(ilse.id, group.id, Role.ATHLETE, LATER)
        assert (await unit.groups.membership(ilse.id, group.id)).joined_at == LATER


async def test_nobody_is_made_a_member_by_following_them(store, ilse, group):
    async with store.unit() as unit:
        await unit.groups.follow(ilse.id, group.id, Role.ATHLETE, NOW)
        assert await unit.groups.members(group.id) == []


async def test_two_of_one_name_are_told_apart_in_the_order_they_came(store, ilse, group):
    async with store.unit() as unit:
        other = await unit.people.meet(77, "ilse", "en", NOW)
        await unit.groups.join(ilse.id, group.id, Role.ATHLETE, NOW)
        await unit.groups.join(other.id, group.id, Role.ATHLETE, LATER)
        found = await unit.groups.members(group.id)
    assert [(one.person.name, one.own_name) for one in found] == [("Ilse", "Ilse"), ("ilse (2)", "ilse")]
