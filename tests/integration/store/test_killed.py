"""What was committed survives the death of its process."""

import asyncio
import sys
from pathlib import Path

import pytest
from sqlalchemy import select

from core.store import tables
from core.store.unit import Store
from tests.integration.store.builders import NOW

ROUNDS = 5
STORING = Path(__file__).with_name("storing.py")


async def store_and_die(place, first, confirmed_before_death):
    """The numbers that the process said it had committed before SIGKILL ended it in the midst of its work."""
    process = await asyncio.create_subprocess_exec(
        sys.executable, STORING, str(place), str(first), stdout=asyncio.subprocess.PIPE
    )
    assert process.stdout is not None
    heard = [await process.stdout.readline() for _ in range(confirmed_before_death)]
    process.kill()
    rest = await process.stdout.read()
    await process.wait()
    return [int(line) for line in b"".join([*heard, rest]).split(b"\n")[:-1]]


async def stored(place):
    async with Store(place) as store, store.engine.connect() as connection:
        return set((await connection.execute(select(tables.inbox.c.update_id))).scalars())


async def test_nothing_that_was_committed_is_lost(migrated, tmp_path):
    place = tmp_path / "killed.db"
    place.write_bytes(migrated.read_bytes())
    said = set()
    for turn in range(ROUNDS):
        said |= set(await store_and_die(place, first=turn * 10_000, confirmed_before_death=7 + turn))
    kept = await stored(place)
    assert len(said) >= 7 * ROUNDS
    assert said <= kept
    # At most the one unit of each round whose commit was not yet told.
    assert len(kept - said) <= ROUNDS


async def test_the_dead_leave_no_lock_behind(migrated, tmp_path):
    place = tmp_path / "killed.db"
    place.write_bytes(migrated.read_bytes())
    await store_and_die(place, first=0, confirmed_before_death=3)
    async with Store(place) as store, store.unit() as unit:
        assert await unit.inbox.store([(999_999, 1, {})], NOW) == 1


async def test_two_processes_wait_for_each_other(migrated, tmp_path):
    place = tmp_path / "shared.db"
    place.write_bytes(migrated.read_bytes())

    async def fill(store, first):
        for number in range(first, first + 20):
            async with store.unit() as unit:
                await unit.inbox.store([(number, 1, {})], NOW)

    async with Store(place) as one, Store(place) as other:
        await asyncio.gather(fill(one, 0), fill(other, 100))
    assert await stored(place) == {*range(20), *range(100, 120)}


async def test_a_unit_cancelled_while_it_waits_for_another_process_spoils_nothing(migrated, tmp_path):
    place = tmp_path / "shared.db"
    place.write_bytes(migrated.read_bytes())

    async def store_one(store, number, pause=0.0):
        async with store.unit() as unit:
            await unit.inbox.store([(number, 1, {})], NOW)
            await asyncio.sleep(pause)

    async with Store(place) as one, Store(place) as other:
        await store_one(other, 1)
        slow = asyncio.create_task(store_one(one, 2, pause=0.5))
        await asyncio.sleep(0.1)
        with pytest.raises(TimeoutError):
            await asyncio.wait_for(store_one(other, 3), timeout=0.1)
        await slow
        await store_one(other, 4)
        await store_one(one, 5)
    assert await stored(place) == {1, 2, 4, 5}
