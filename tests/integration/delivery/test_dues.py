import asyncio
from datetime import timedelta

import pytest_asyncio

from bot.delivery.dues import Dues
from tests.support.durable import eventually


class Diary:
    """Carries out what is due, and notes it. `broken` kinds fail."""

    def __init__(self, store, clock):
        self.done = []
        self.tried = []
        self.broken = set()
        self._store = store
        self._clock = clock

    async def carry_out(self, due):
        self.tried.append(due.key)
        if due.kind in self.broken:
            raise RuntimeError(due.key)
        async with self._store.unit() as unit:
            await unit.dues.done(due.id, self._clock.now())
        self.done.append(due.key)


@pytest_asyncio.fixture
async def diary(store, platform, bells):
    found = Diary(store, platform.clock)
    dues = Dues(store, platform.clock, bells, found.carry_out)
    running = asyncio.create_task(dues.run())
    yield found
    dues.stop()
    await running


@pytest_asyncio.fixture
async def plan(store, platform, bells):
    async def add(key, hours, kind="post"):
        async with store.unit() as unit:
            await unit.dues.add(key, kind, platform.clock.now() + timedelta(hours=hours), {})
        bells.dues.ring()

    return add


async def test_what_is_due_is_carried_out_at_its_time_and_once(diary, plan, room):
    await plan("evening", hours=12)
    await plan("noon", hours=6)
    await asyncio.sleep(0.05)
    assert diary.done == []
    await room.travels(timedelta(hours=6))
    await eventually(lambda: diary.done == ["noon"])
    await room.travels(timedelta(hours=6))
    await eventually(lambda: diary.done == ["noon", "evening"])
    await room.travels(timedelta(days=3))
    assert diary.tried == ["noon", "evening"]


async def test_what_became_due_while_nobody_looked_is_carried_out_in_its_order(
    plan, room, store, platform, bells
):
    for hours in (3, 1, 2):
        await plan(f"hour {hours}", hours)
    await room.travels(timedelta(days=1))
    late = Diary(store, platform.clock)
    dues = Dues(store, platform.clock, bells, late.carry_out)
    running = asyncio.create_task(dues.run())
    await eventually(lambda: late.done == ["hour 1", "hour 2", "hour 3"])
    dues.stop()
    await running


async def test_what_fails_holds_nothing_up_and_is_tried_again(diary, plan, room, caplog):
    diary.broken.add("poison")
    await plan("bad", hours=1, kind="poison")
    await plan("good", hours=2)
    await room.travels(timedelta(hours=1))
    await eventually(lambda: diary.tried == ["bad"])
    await room.travels(timedelta(hours=1))
    await eventually(lambda: diary.done == ["good"] and diary.tried.count("bad") == 2)
    diary.broken.clear()
    await room.travels(timedelta(hours=1))
    await eventually(lambda: diary.done == ["good", "bad"])
    assert "RuntimeError: bad" in caplog.text
