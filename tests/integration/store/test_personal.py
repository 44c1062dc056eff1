"""What refers to a person from inside a document is told and let go like the rest."""

from core.athletes.values import Equipment, Furnished
from core.store.documents import FURNISHED
from tests.integration.store.builders import NOW


async def changes_equipment(unit, person):
    chair = (Equipment(implement="chair"),)
    kept = Furnished(person_id=person.id, place="home", before=None, after=chair)
    await unit.dues.add(f"review:{person.id}", "review", NOW, {"person": person.id, "limit": "wrist"})
    return await unit.documents.add(FURNISHED, kept, NOW)


async def test_equipment_that_came_and_questions_to_come_are_let_go(store, ilse, coach):
    async with store.unit() as unit:
        mine, theirs = await changes_equipment(unit, ilse), await changes_equipment(unit, coach)
        told = await unit.personal.everything(ilse.id)
        assert [row["id"] for row in told["document"]] == [mine]
        assert [row["kind"] for row in told["due"]] == ["review"]
        await unit.personal.erase(ilse.id)
        assert await unit.documents.get(FURNISHED, mine) is None
        assert await unit.documents.get(FURNISHED, theirs) is not None
        assert [due.refs["person"] for due in await unit.dues.take(NOW, 5)] == [coach.id]
