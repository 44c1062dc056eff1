"""What an athlete said for their coach: theirs alone until they agree, in one digest, and gone when they say so."""

from datetime import date

from tests.integration.store.builders import NOW, minutes

DAY, NEXT = date(2026, 3, 2), date(2026, 3, 3)


async def keeps(unit, group, ilse, text="metal plate in my foot", about="spare"):
    return await unit.words.keep(group_id=group.id, person_id=ilse.id, about=about, text=text, now=NOW)


async def seen(unit, group, ilse):
    return [one.text for one in await unit.words.seen_of(group.id, ilse.id)]


async def test_nobody_sees_it_before_they_agree(store, group, ilse):
    async with store.unit() as unit:
        word = await keeps(unit, group, ilse)
        assert (await seen(unit, group, ilse), await unit.words.to_tell(group.id, DAY)) == ([], [])
        await unit.words.pass_on(word.id, NOW + minutes(1))
        assert await seen(unit, group, ilse) == ["metal plate in my foot"]
        assert (await unit.words.find(word.id, ilse.id)).passed_at == NOW + minutes(1)


async def test_it_stands_in_the_digest_of_one_day(store, group, ilse):
    async with store.unit() as unit:
        await unit.words.pass_on((await keeps(unit, group, ilse)).id, NOW)
        found = await unit.words.to_tell(group.id, DAY)
        await unit.words.told(found, DAY)
        assert await unit.words.to_tell(group.id, DAY) == found
        assert await unit.words.to_tell(group.id, NEXT) == []
        await unit.words.told([], NEXT)


async def test_what_was_told_at_once_is_in_no_digest_of_another_day(store, group, ilse):
    async with store.unit() as unit:
        word = await keeps(unit, group, ilse, about="said")
        await unit.words.pass_on(word.id, NOW, told_on=DAY)
        assert await unit.words.to_tell(group.id, NEXT) == []


async def test_held_back_coaches_see_no_more_of_what_is_spared(store, group, ilse):
    async with store.unit() as unit:
        for about in ("spare", "said"):
            await unit.words.pass_on((await keeps(unit, group, ilse, about, about)).id, NOW)
        await unit.words.hold_back(ilse.id, group.id)
        assert await seen(unit, group, ilse) == ["said"]
        assert [one.text for one in await unit.words.of_person(ilse.id)] == ["spare", "said"]


async def test_forgotten_its_words_are_gone_and_its_place_is_nobody_else_s(store, group, ilse):
    async with store.unit() as unit:
        word = await keeps(unit, group, ilse)
        await unit.words.pass_on(word.id, NOW)
        await unit.words.forget(word.id, NOW)
        assert await unit.words.find(word.id, ilse.id) is None
        assert (await seen(unit, group, ilse), await unit.words.of_person(ilse.id)) == ([], [])
        assert "metal" not in str((await unit.personal.everything(ilse.id))["coach_word"])
        assert (await keeps(unit, group, ilse)).id != word.id


async def test_it_is_taken_along_and_erased_with_its_person(store, group, ilse):
    async with store.unit() as unit:
        word = await keeps(unit, group, ilse)
        [row] = (await unit.personal.everything(ilse.id))["coach_word"]
        assert row["text"] == "metal plate in my foot"
        await unit.personal.erase(ilse.id)
        assert await unit.words.find(word.id, ilse.id) is None
