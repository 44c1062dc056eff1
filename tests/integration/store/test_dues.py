from tests.integration.store.builders import NOW, minutes


async def taken(unit, now=NOW, limit=10):
    return [due.key for due in await unit.dues.take(now, limit)]


async def test_what_is_due_comes_earliest_first(store):
    async with store.unit() as unit:
        await unit.dues.add("late", "post", NOW, {"session": 1})
        await unit.dues.add("early", "post", NOW - minutes(5), {"session": 2})
        await unit.dues.add("future", "post", NOW + minutes(5), {})
        assert await taken(unit) == ["early", "late"]
        assert await taken(unit, limit=1) == ["early"]
        assert await unit.dues.next_at() == NOW - minutes(5)


async def test_a_known_key_is_left_alone_even_when_done(store):
    async with store.unit() as unit:
        assert await unit.dues.add("post:1", "post", NOW, {"session": 1})
        assert not await unit.dues.add("post:1", "post", NOW + minutes(5), {"session": 9})
        [due] = await unit.dues.take(NOW, 1)
        assert (due.kind, due.at, due.refs) == ("post", NOW, {"session": 1})
        await unit.dues.done(due.id, NOW)
        assert not await unit.dues.add("post:1", "post", NOW, {"session": 1})
        assert await taken(unit) == []


async def test_a_dropped_due_is_never_taken(store):
    async with store.unit() as unit:
        await unit.dues.add("post:1", "post", NOW, {})
        await unit.dues.drop("post:1")
        assert await taken(unit) == []
        assert await unit.dues.next_at() is None


async def test_what_is_armed_again_is_due_at_the_new_moment_even_if_dropped(store):
    async with store.unit() as unit:
        await unit.dues.arm("remind:1", "remind", NOW, {"class": 1})
        await unit.dues.arm("remind:1", "remind", NOW + minutes(5), {"class": 1})
        assert await taken(unit) == []
        assert await unit.dues.next_at() == NOW + minutes(5)
        await unit.dues.drop("remind:1")
        await unit.dues.arm("remind:1", "remind", NOW, {"class": 2})
        [due] = await unit.dues.take(NOW, 5)
        assert (due.at, due.refs) == (NOW, {"class": 2})


async def test_what_is_done_is_never_armed_again(store):
    async with store.unit() as unit:
        await unit.dues.arm("remind:1", "remind", NOW, {})
        [due] = await unit.dues.take(NOW, 1)
        await unit.dues.done(due.id, NOW)
        await unit.dues.arm("remind:1", "remind", NOW, {})
        assert await taken(unit) == []
