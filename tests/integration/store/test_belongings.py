"""An id from outside leads to its group and its owner; through other groups, or other people, nothing is found."""

import pytest

from core.athletes.values import Furnished
from core.scaling.orders import Fault
from core.store import documents
from core.store.belongings import Home, Thing
from core.store.records import Role
from tests.integration.store.builders import NOW
from tests.integration.store.test_training import SESSION, VERSION, draft, record


@pytest.fixture
async def other(store):
    """Somebody in another group."""
    async with store.unit() as unit:
        chat = await unit.chats.group_chat(-900)
        group = await unit.groups.open(chat_id=chat.id, title="Other crew", now=NOW)
        person = await unit.people.meet(900, "Bo", "en", NOW)
        await unit.groups.join(person.id, group.id, Role.COACH, NOW)
    return group, person


async def test_everything_is_found_through_its_group_alone(store, group, coach, ilse, other):
    async with store.unit() as unit:
        made = await draft(unit, group, coach)
        score = await record(unit, made.id, ilse, 7)
        fault = await unit.faults.write(
            group_id=group.id,
            person_id=ilse.id,
            fault=Fault(movement="deadlift", words="flat back", cap_kg=None),
            by_id=coach.id,
            now=NOW,
        )
        ours, theirs = [group.id], [other[0].id]
        assert await unit.sessions.find(made.id, ours) == made
        assert await unit.sessions.find(made.id, theirs) is None
        assert await unit.scores.find(score.id, ours) == score
        assert await unit.scores.find(score.id, theirs) is None
        assert await unit.faults.find(fault.id, ours) == fault
        assert await unit.faults.find(fault.id, theirs) is None
        assert await unit.belongings.home_of(Thing.SESSION, made.id) == Home(group.id, coach.id)
        assert await unit.belongings.home_of(Thing.SCORE, score.id) == Home(group.id, ilse.id)
        assert await unit.belongings.home_of(Thing.FAULT, fault.id) == Home(group.id, coach.id)


async def test_a_version_is_found_by_its_athlete_alone(store, group, coach, ilse, other):
    async with store.unit() as unit:
        made = await draft(unit, group, coach)
        shown = await unit.versions.show(made.id, 1, ilse.id, VERSION, NOW)
        assert await unit.versions.find(shown.id, ilse.id) == shown
        assert await unit.versions.find(shown.id, other[1].id) is None
        assert await unit.belongings.home_of(Thing.VERSION, shown.id) == Home(group.id, ilse.id)


async def test_a_document_of_another_kind_is_no_change_of_equipment(store, ilse):
    async with store.unit() as unit:
        session = await unit.documents.add(documents.SESSION, SESSION, NOW)
        change = await unit.documents.add(
            documents.FURNISHED, Furnished(person_id=ilse.id, place="home", before=None, after=()), NOW
        )
        assert await unit.documents.get(documents.FURNISHED, session) is None
        assert await unit.belongings.home_of(Thing.FURNISHED, session) is None
        assert await unit.belongings.home_of(Thing.FURNISHED, change) == Home(None, ilse.id)


@pytest.mark.parametrize("thing", Thing)
async def test_what_isnt_there_has_no_home(store, thing):
    async with store.unit() as unit:
        assert await unit.belongings.home_of(thing, 404) is None
