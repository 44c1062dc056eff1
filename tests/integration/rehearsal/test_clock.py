"""One contract for every clock: the real one, the rehearsal's, and the rehearsal's followed over HTTP."""

import asyncio
from datetime import UTC, datetime, timedelta, timezone

import pytest
import pytest_asyncio

from bot.delivery.clock import RealClock
from bot.rehearsal.clock import RehearsalClock
from bot.rehearsal.remote_clock import RemoteClock

SOON = timedelta(milliseconds=60)


async def real_time_passes(_moment: datetime) -> None:
    """The real clock reaches every moment by itself."""


@pytest_asyncio.fixture(params=["real", "rehearsal", "rehearsal that runs", "remote"])
async def clock_and_reach(request, platform, room, remote_room, address):
    """A clock, and how to make it reach a moment."""
    if request.param == "real":
        async with RealClock() as clock:
            yield clock, real_time_passes
    elif request.param == "rehearsal":
        yield platform.clock, room.travels_to
    elif request.param == "rehearsal that runs":
        platform.clock.let_run()
        yield platform.clock, real_time_passes
    else:
        async with RemoteClock(address) as remote:
            yield remote, remote_room.travels_to


@pytest.fixture
def clock(clock_and_reach):
    return clock_and_reach[0]


@pytest.fixture
def reach(clock_and_reach):
    return clock_and_reach[1]


async def test_the_moment_is_aware_and_in_utc(clock):
    assert clock.now().tzinfo is UTC


async def test_a_sleeper_wakes_when_the_moment_is_reached_not_before(clock, reach):
    due = clock.now() + SOON
    sleeper = asyncio.create_task(clock.sleep_until(due))
    await asyncio.sleep(0)
    assert not sleeper.done()
    await reach(due)
    await asyncio.wait_for(sleeper, timeout=5)
    assert clock.now() >= due


async def test_a_moment_that_has_passed_is_not_waited_for(clock):
    await asyncio.wait_for(clock.sleep_until(clock.now() - timedelta(hours=1)), timeout=5)
    await asyncio.wait_for(clock.sleep_until(clock.now()), timeout=5)


async def test_sleepers_wake_in_the_order_of_their_moments(clock, reach):
    woken = []

    async def sleep(name: str, due: datetime) -> None:
        await clock.sleep_until(due)
        woken.append(name)

    late, early = clock.now() + 2 * SOON, clock.now() + SOON
    sleepers = [asyncio.create_task(sleep("late", late)), asyncio.create_task(sleep("early", early))]
    await asyncio.sleep(0)
    await reach(early)
    await reach(late)
    await asyncio.wait_for(asyncio.gather(*sleepers), timeout=5)
    assert woken == ["early", "late"]


async def test_one_sleeper_that_gives_up_does_not_keep_the_others_from_waking(clock, reach):
    due = clock.now() + SOON
    first, second = (asyncio.create_task(clock.sleep_until(due)) for _ in range(2))
    await asyncio.sleep(0)
    first.cancel()
    await asyncio.sleep(0)
    await reach(due)
    await asyncio.wait_for(second, timeout=5)
    assert first.cancelled()


async def test_budget_seconds_never_run_backwards_and_follow_the_time(clock, reach):
    before, due = clock.monotonic(), clock.now() + SOON
    await reach(due)
    await clock.sleep_until(due)
    assert clock.monotonic() - before >= SOON.total_seconds() * 0.99


async def test_another_zone_names_the_same_moment(clock, reach):
    due = (clock.now() + SOON).astimezone(timezone(timedelta(hours=5)))
    await reach(due)
    await asyncio.wait_for(clock.sleep_until(due), timeout=5)


async def test_a_moment_without_a_zone_is_refused(clock):
    with pytest.raises(ValueError, match="zone"):
        await clock.sleep_until(datetime(2026, 3, 2, 9, 0))


# What only a rehearsal's clock does.


async def test_time_stands_still_until_it_is_moved():
    clock = RehearsalClock(datetime(2026, 3, 2, 9, 0, tzinfo=UTC))
    assert clock.now() == clock.now() == datetime(2026, 3, 2, 9, 0, tzinfo=UTC)
    clock.travel(timedelta(days=3))
    assert clock.now() == datetime(2026, 3, 5, 9, 0, tzinfo=UTC)


async def test_time_never_goes_back(platform, room):
    with pytest.raises(ValueError, match="never goes back"):
        platform.clock.travel(timedelta(seconds=-1))
    with pytest.raises(AssertionError, match="never goes back"):
        await room.travels(timedelta(seconds=-1))


async def test_whole_processes_travel_together(platform, address, remote_room):
    async with RemoteClock(address) as one, RemoteClock(address) as other:
        await remote_room.travels(timedelta(hours=6))
        assert one.now() == other.now() == platform.clock.now() == await remote_room.now()


async def test_a_running_clock_runs_in_other_processes_too(platform, address, remote_room):
    async with RemoteClock(address) as remote:
        await remote_room.lets_time_run()
        await asyncio.wait_for(remote.sleep_until(remote.now() + SOON), timeout=5)
        await remote_room.lets_time_run(runs=False)
        assert remote.now() == remote.now()


async def test_a_process_that_died_does_not_stop_the_time(platform, address, room):
    remote = RemoteClock(address)
    await remote._stage.do("follow_clock", follower="killed", version=0, within=0.0)
    await remote._stage.close()
    there = platform.clock.now() + timedelta(hours=1)
    await asyncio.wait_for(room.travels_to(there), timeout=10)
    assert platform.clock.now() == there


async def test_a_span_is_slept_through_whatever_the_clock_shows(clock, reach):
    second = clock.monotonic() + SOON.total_seconds()
    sleeper = asyncio.create_task(clock.sleep_to(second))
    await asyncio.sleep(0)
    assert not sleeper.done()
    await reach(clock.now() + SOON)
    await asyncio.wait_for(sleeper, timeout=5)


async def test_a_sleeper_notices_that_the_clock_was_set_forward():
    ahead = [timedelta(0)]
    async with RealClock(lambda: datetime.now(UTC) + ahead[0], look_every_s=0.02) as clock:
        sleeper = asyncio.create_task(clock.sleep_until(clock.now() + timedelta(hours=2)))
        await asyncio.sleep(0.05)
        assert not sleeper.done()
        ahead[0] = timedelta(hours=2)
        await asyncio.wait_for(sleeper, timeout=5)
