"""One transaction: all or nothing, one after the other."""

import asyncio

import pytest
from sqlalchemy.exc import IntegrityError, StatementError

from core.store.repository import NotStoredError
from tests.integration.store.builders import NOW, letter


async def waiting(store):
    async with store.reading() as unit:
        return await unit.inbox.waiting_count()


class Boom(Exception):
    pass


async def test_an_error_leaves_nothing_behind(store, private):
    async def fail_at_the_end():
        async with store.unit() as unit:
            await unit.inbox.store([(1, 1, {})], NOW)
            await unit.outbox.add([letter("hello", private.id)], NOW)
            raise Boom

    with pytest.raises(Boom):
        await fail_at_the_end()
    assert await waiting(store) == 0
    async with store.reading() as unit:
        assert await unit.outbox.by_key("hello") is None


async def test_a_cancelled_unit_leaves_nothing_and_stops_nobody(store):
    begun = asyncio.Event()

    async def hang():
        async with store.unit() as unit:
            await unit.inbox.store([(1, 1, {})], NOW)
            begun.set()
            await asyncio.Event().wait()

    task = asyncio.create_task(hang())
    await begun.wait()
    task.cancel()
    with pytest.raises(asyncio.CancelledError):
        await task
    async with store.unit() as unit:
        assert await unit.inbox.store([(1, 1, {})], NOW) == 1


async def test_units_queue_up_and_see_what_was_written_before(store, ilse):
    async def count_up():
        async with store.unit() as unit:
            person = await unit.people.by_user(ilse.user_id)
            await asyncio.sleep(0)
            await unit.people.meet(ilse.user_id, f"{person.name}!", "en", NOW)

    await asyncio.gather(*(count_up() for _ in range(10)))
    async with store.reading() as unit:
        assert (await unit.people.get(ilse.id)).name == "Ilse!!!!!!!!!!"


async def test_what_is_read_is_what_was_committed(store):
    async with store.unit() as unit:
        await unit.inbox.store([(1, 1, {})], NOW)
    assert await waiting(store) == 1


async def test_what_is_written_while_reading_is_forgotten(store):
    async with store.reading() as unit:
        await unit.inbox.store([(1, 1, {})], NOW)
    assert await waiting(store) == 0


async def test_a_row_that_refers_to_nothing_is_refused(store):
    with pytest.raises(IntegrityError):
        async with store.unit() as unit:
            await unit.outbox.add([letter("hello", chat_id=404)], NOW)


async def test_changing_what_is_not_there_is_a_defect(store):
    async with store.unit() as unit:
        with pytest.raises(NotStoredError):
            await unit.sessions.discard(404)


async def test_a_naive_moment_is_refused(store):
    with pytest.raises(StatementError, match="naive"):
        async with store.unit() as unit:
            await unit.dues.add("key", "post", NOW.replace(tzinfo=None), {})
