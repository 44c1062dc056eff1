"""Classes, sign-ups and habits: what goes in comes out, and single dates are remembered."""

from datetime import datetime, time, timedelta

import pytest

from core.calendar.slots import slot_of
from core.calendar.values import Class, Quiet
from core.store.records import ClassState, ReminderHabits, Role
from tests.integration.store.builders import NOW, minutes

TUESDAY = datetime(2026, 3, 3, 18, 30)
NEXT = TUESDAY + timedelta(days=7)
WEEKLY = Class(
    title="Strength",
    zone="Europe/Berlin",
    start=TUESDAY,
    rule="FREQ=WEEKLY;BYDAY=TU",
    minutes=45,
    link="https://example.org/room",
)


async def propose(unit, group, author, **more):
    return await unit.classes.propose(group_id=group.id, author_id=author.id, of=WEEKLY, now=NOW, **more)


@pytest.fixture
async def weekly(store, group, coach):
    async with store.unit() as unit:
        made = await propose(unit, group, coach)
        await unit.classes.set_state(made.id, ClassState.LIVE)
        return await unit.classes.get(made.id)


async def test_a_class_comes_back_as_it_was_proposed(store, group, coach):
    async with store.unit() as unit:
        made = await propose(unit, group, coach)
        assert await unit.classes.get(made.id) == made
        assert await unit.classes.live(group.id) == []
        assert await unit.classes.get(404) is None
    assert (made.of, made.state, made.author_id) == (WEEKLY, ClassState.PROPOSED, coach.id)


async def test_a_class_lives_until_it_ends(store, group, weekly):
    async with store.unit() as unit:
        assert await unit.classes.live(group.id) == [weekly]
        await unit.classes.set_state(weekly.id, ClassState.ENDED)
        assert await unit.classes.live(group.id) == []


async def test_a_class_remembers_what_it_replaces_and_can_be_put_off(store, group, coach, weekly):
    async with store.unit() as unit:
        other = await propose(unit, group, coach, replaces_id=weekly.id)
        await unit.classes.put_off(other.id, TUESDAY + timedelta(hours=1), None)
        found = await unit.classes.get(other.id)
    assert (found.replaces_id, found.of.start, found.of.rule) == (
        weekly.id,
        TUESDAY + timedelta(hours=1),
        None,
    )


async def test_single_dates_are_called_off_or_moved_and_the_last_word_counts(store, weekly):
    async with store.unit() as unit:
        await unit.classes.cancel(weekly.id, TUESDAY, NOW)
        await unit.classes.move(weekly.id, NEXT, NEXT + timedelta(hours=1), NOW)
        found = await unit.classes.get(weekly.id)
        assert (found.of.cancelled, found.of.moved) == ({TUESDAY}, {NEXT: NEXT + timedelta(hours=1)})
        await unit.classes.cancel(weekly.id, NEXT, NOW + minutes(5))
        again = await unit.classes.get(weekly.id)
    assert (again.of.cancelled, again.of.moved) == ({TUESDAY, NEXT}, {})


async def test_signing_up_twice_counts_once(store, weekly, ilse):
    async with store.unit() as unit:
        slot = slot_of(TUESDAY)
        assert await unit.sign_ups.put(ilse.id, weekly.id, slot, NOW, coming=True)
        assert not await unit.sign_ups.put(ilse.id, weekly.id, slot, NOW, coming=True)
        [(person, found)] = await unit.sign_ups.coming(weekly.id, slot)
    assert (person, found.coming, found.attended) == (ilse, True, None)


async def test_who_drops_out_no_longer_comes_and_may_come_again(store, weekly, ilse):
    async with store.unit() as unit:
        slot = slot_of(TUESDAY)
        assert not await unit.sign_ups.put(ilse.id, weekly.id, slot, NOW, coming=False)
        await unit.sign_ups.put(ilse.id, weekly.id, slot, NOW, coming=True)
        assert await unit.sign_ups.put(ilse.id, weekly.id, slot, NOW, coming=False)
        assert await unit.sign_ups.coming(weekly.id, slot) == []
        assert await unit.sign_ups.of_person(ilse.id, slot) == []
        assert await unit.sign_ups.put(ilse.id, weekly.id, slot, NOW, coming=True)
        assert (await unit.sign_ups.get(ilse.id, weekly.id, slot)).coming


async def test_sign_ups_are_listed_from_a_date_on(store, weekly, ilse, coach):
    async with store.unit() as unit:
        for person, day in ((ilse, TUESDAY), (ilse, NEXT), (coach, NEXT)):
            await unit.sign_ups.put(person.id, weekly.id, slot_of(day), NOW, coming=True)
        mine = await unit.sign_ups.of_person(ilse.id, slot_of(TUESDAY))
        later = await unit.sign_ups.coming_from(weekly.id, slot_of(NEXT))
    assert [one.slot for one in mine] == [202603031830, 202603101830]
    assert [person.name for person, _ in later] == ["Ilse", "Bero"]


async def test_attendance_is_kept_with_the_sign_up(store, weekly, ilse):
    async with store.unit() as unit:
        await unit.sign_ups.put(ilse.id, weekly.id, slot_of(TUESDAY), NOW, coming=True)
        await unit.sign_ups.tell_attended(ilse.id, weekly.id, slot_of(TUESDAY), yes=False)
        assert (await unit.sign_ups.get(ilse.id, weekly.id, slot_of(TUESDAY))).attended is False
        assert await unit.sign_ups.get(ilse.id, weekly.id, 1) is None


async def test_habits_of_somebody_new_are_empty_and_then_what_they_told(store, ilse):
    told = ReminderHabits(
        zone="Europe/Lisbon", quiet=Quiet(start=time(22), end=time(7)), digest_at=time(21, 15)
    )
    async with store.unit() as unit:
        assert await unit.habits.get(ilse.id) == ReminderHabits()
        await unit.habits.save(ilse.id, told, NOW)
        assert await unit.habits.get(ilse.id) == told
        await unit.habits.save(ilse.id, ReminderHabits(), NOW)
        assert await unit.habits.get(ilse.id) == ReminderHabits()


async def test_the_lead_is_the_memberships(store, ilse, group):
    async with store.unit() as unit:
        await unit.groups.join(ilse.id, group.id, Role.ATHLETE, NOW)
        await unit.groups.set_lead(ilse.id, group.id, 15)
        assert (await unit.groups.membership(ilse.id, group.id)).lead_minutes == 15
