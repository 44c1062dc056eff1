from tests.integration.store.builders import NOW

ANA, BEA = 11, 22


async def store_updates(store, *updates):
    async with store.unit() as unit:
        return await unit.inbox.store(
            [(number, lane, {"update_id": number}) for number, lane in updates], NOW
        )


async def next_ids(store, limit=10, busy=()):
    async with store.reading() as unit:
        return [item.update_id for item in await unit.inbox.next(limit, busy)]


async def test_an_update_is_kept_as_it_came(store):
    raw = {"update_id": 7, "message": {"text": "7+12 🏋️", "chat": {"id": -100123456789}}}
    async with store.unit() as unit:
        await unit.inbox.store([(7, -100123456789, raw)], NOW)
    async with store.reading() as unit:
        [item] = await unit.inbox.next(1)
    assert (item.body, item.lane, item.received_at, item.attempts) == (raw, -100123456789, NOW, 0)


async def test_a_repeated_update_is_no_news(store):
    assert await store_updates(store, (1, ANA), (2, ANA)) == 2
    assert await store_updates(store, (2, ANA), (3, ANA)) == 1
    assert await store_updates(store, (1, ANA), (2, ANA), (3, ANA)) == 0


async def test_an_update_repeated_after_it_was_handled_is_not_handled_again(store):
    await store_updates(store, (1, ANA))
    async with store.unit() as unit:
        [item] = await unit.inbox.next(1)
        await unit.inbox.done(item.id)
    assert await store_updates(store, (1, ANA)) == 0
    assert await next_ids(store) == []


async def test_nothing_stored_is_no_work(store):
    assert await store_updates(store) == 0


async def test_each_lane_gives_its_oldest_only(store):
    await store_updates(store, (5, ANA), (3, ANA), (4, BEA), (1, BEA))
    assert await next_ids(store) == [5, 4]


async def test_a_busy_lane_is_left_alone(store):
    await store_updates(store, (1, ANA), (2, BEA))
    assert await next_ids(store, busy=[ANA]) == [2]


async def test_no_more_are_given_than_asked_for(store):
    await store_updates(store, *((number, number) for number in range(1, 9)))
    assert await next_ids(store, limit=3) == [1, 2, 3]


async def test_a_lane_goes_on_in_order_once_its_first_is_done(store):
    await store_updates(store, (1, ANA), (2, ANA))
    async with store.unit() as unit:
        [item] = await unit.inbox.next(1)
        await unit.inbox.done(item.id)
    assert await next_ids(store) == [2]


async def test_a_failure_holds_its_lane(store):
    await store_updates(store, (1, ANA), (2, ANA))
    async with store.unit() as unit:
        [item] = await unit.inbox.next(1)
        await unit.inbox.begin([item.id])
        await unit.inbox.failed(item.id, "KeyError: 'text'", park=False)
    async with store.reading() as unit:
        [again] = await unit.inbox.next(10)
        assert await unit.inbox.interrupted() == []
    assert (again.update_id, again.attempts) == (1, 1)


async def test_a_try_is_counted_before_it_is_made_and_stands_there_if_it_never_ends(store):
    await store_updates(store, (1, ANA), (2, BEA))
    async with store.unit() as unit:
        [first, _] = await unit.inbox.next(2)
        await unit.inbox.begin([first.id])
    async with store.reading() as unit:
        assert [(one.update_id, one.attempts) for one in await unit.inbox.interrupted()] == [(1, 1)]


async def test_a_try_that_something_else_spoilt_does_not_count(store):
    await store_updates(store, (1, ANA))
    async with store.unit() as unit:
        [item] = await unit.inbox.next(1)
        await unit.inbox.begin([item.id])
        await unit.inbox.not_tried(item.id, "TimedOut: Timed out")
        assert await unit.inbox.interrupted() == []
        [again] = await unit.inbox.next(1)
    assert again.attempts == 0


async def parked(store):
    """The update of ANA with number 1, parked, and one that waits behind it."""
    await store_updates(store, (1, ANA), (2, ANA))
    async with store.unit() as unit:
        [item] = await unit.inbox.next(1)
        await unit.inbox.begin([item.id])
        await unit.inbox.failed(item.id, "KeyError: 'text'", park=True)
    return item


async def test_a_parked_update_frees_its_lane(store):
    await parked(store)
    assert await next_ids(store) == [2]


async def test_what_is_parked_can_be_looked_at_and_handled_anew(store):
    item = await parked(store)
    async with store.unit() as unit:
        [kept] = await unit.inbox.parked()
        assert (kept.id, kept.attempts, kept.error) == (item.id, 1, "KeyError: 'text'")
        assert await unit.inbox.replay([item.id + 1]) == []
        assert await unit.inbox.replay() == [item.id]
        assert await unit.inbox.parked() == []
    assert await next_ids(store) == [1]
