import asyncio
from datetime import timedelta

import pytest

from bot.delivery.bells import Bell, Wake, sleep_until
from bot.rehearsal.clock import RehearsalClock


@pytest.fixture
def clock():
    return RehearsalClock()


async def test_a_bell_wakes_who_sleeps(clock):
    bell = Bell()
    sleeping = asyncio.create_task(sleep_until(clock, Wake(), bell))
    await asyncio.sleep(0)
    bell.ring()
    async with asyncio.timeout(1):
        await sleeping


async def test_a_ring_while_nobody_waits_is_not_lost_and_counts_once(clock):
    bell = Bell()
    bell.ring()
    bell.ring()
    async with asyncio.timeout(1):
        await sleep_until(clock, Wake(), bell)
    with pytest.raises(TimeoutError):
        async with asyncio.timeout(0.05):
            await sleep_until(clock, Wake(), bell)


async def test_the_moment_wakes_too(clock):
    moment = clock.now() + timedelta(hours=1)
    sleeping = asyncio.create_task(sleep_until(clock, Wake(moment), Bell()))
    await asyncio.sleep(0)
    clock.travel_to(moment)
    async with asyncio.timeout(1):
        await sleeping


async def test_so_does_the_end_of_a_pause(clock):
    sleeping = asyncio.create_task(sleep_until(clock, Wake(second=clock.monotonic() + 30), Bell()))
    await asyncio.sleep(0)
    clock.travel(timedelta(seconds=30))
    async with asyncio.timeout(1):
        await sleeping


async def test_so_does_the_end_of_another_task(clock):
    other = asyncio.create_task(asyncio.sleep(0))
    async with asyncio.timeout(1):
        await sleep_until(clock, Wake(), Bell(), [other])


async def test_a_clock_that_fails_is_heard(clock, monkeypatch):
    async def fail(_moment):
        raise OSError("no clock")

    monkeypatch.setattr(clock, "sleep_until", fail)
    with pytest.raises(OSError, match="no clock"):
        await sleep_until(clock, Wake(clock.now()), Bell())
