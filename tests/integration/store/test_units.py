"""One transaction: all or nothing, one after the other."""

import asyncio

import pytest
from sqlalchemy import event
from sqlalchemy.exc import IntegrityError, OperationalError, StatementError

from core.store.repository import NotStoredError
from core.store.transaction import TransactionLostError
from tests.integration.store.builders import NOW, letter


async def waiting(store):
    async with store.reading() as unit:
        return len(await unit.inbox.next(100))


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


async def test_what_is_written_in_a_trial_is_forgotten_and_what_stands_around_it_kept(store):
    async with store.unit() as unit:
        await unit.inbox.store([(1, 1, {})], NOW)
        async with unit.trial():
            assert await unit.inbox.store([(2, 1, {})], NOW) == 1
    assert await waiting(store) == 1


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


async def test_units_that_wait_share_a_commit(store):
    commits: list[object] = []
    event.listen(store.engine.sync_engine, "commit", commits.append)
    await asyncio.gather(*(keep_update(store, number) for number in range(10)))
    assert await waiting(store) == 10
    assert len(commits) < 10


async def test_a_unit_alone_is_committed_when_it_returns(store):
    commits: list[object] = []
    event.listen(store.engine.sync_engine, "commit", commits.append)
    await keep_update(store, 1)
    assert len(commits) == 1


async def test_an_error_undoes_one_of_those_that_share_a_commit_and_no_other(store):
    async def fail():
        async with store.unit() as unit:
            await unit.inbox.store([(2, 2, {})], NOW)
            raise Boom

    told = await asyncio.gather(keep_update(store, 1), fail(), keep_update(store, 3), return_exceptions=True)
    assert [type(one) for one in told] == [type(None), Boom, type(None)]
    async with store.reading() as unit:
        assert [item.update_id for item in await unit.inbox.next(10)] == [1, 3]


async def test_what_the_database_gave_up_was_kept_for_nobody_and_the_next_go_on(store):
    async def lose():
        async with store.unit() as unit:
            # As the database does by itself when the disk is full.
            await unit.inbox._connection.exec_driver_sql("ROLLBACK")

    told = await asyncio.gather(keep_update(store, 1), lose(), keep_update(store, 3), return_exceptions=True)
    assert [type(one) for one in told] == [TransactionLostError, OperationalError, type(None)]
    async with store.reading() as unit:
        assert [item.update_id for item in await unit.inbox.next(10)] == [3]


async def test_a_commit_that_fails_is_told_to_everybody_who_shared_it(store):
    def fail(_connection):
        raise Boom

    event.listen(store.engine.sync_engine, "commit", fail)
    told = await asyncio.gather(keep_update(store, 1), keep_update(store, 2), return_exceptions=True)
    event.remove(store.engine.sync_engine, "commit", fail)
    assert [type(one) for one in told] == [Boom, Boom]
    assert await waiting(store) == 0
    await keep_update(store, 3)
    assert await waiting(store) == 1


async def keep_update(store, number):
    async with store.unit() as unit:
        await unit.inbox.store([(number, number, {})], NOW)
