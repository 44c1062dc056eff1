"""Behind the stage: the bot's process, the network, the limits, and time that jumps over nothing."""

import asyncio
from datetime import timedelta
from urllib.parse import urlsplit

import pytest
import pytest_asyncio
from telegram import Bot
from telegram.error import NetworkError, RetryAfter

from bot.rehearsal.backstage import Backstage
from bot.rehearsal.bot_process import BotProcess
from bot.rehearsal.cable import Cable
from bot.rehearsal.errors import NotPossible
from bot.rehearsal.platform import TOKEN
from core.store.waiting import what_waits
from tests.integration.store.test_training import SESSION
from tests.support.durable import store, tables

__all__ = ["store", "tables"]


@pytest_asyncio.fixture
async def cable(address):
    found = Cable(urlsplit(address).port)
    await found.mend()
    yield found
    found.cut()


@pytest.fixture
def process(tmp_path, address):
    return BotProcess(tmp_path, calls=address, clock=address)


class Standing:
    """A process that does nothing, on a database."""

    is_alive = True

    def __init__(self, database):
        self.database = database

    async def start(self):
        self.is_alive = True

    async def kill(self):
        self.is_alive = False


@pytest.fixture
def backstage(platform, tables, cable):
    platform.backstage = Backstage(platform, Standing(tables.path), cable)
    return platform.backstage


async def test_a_cut_network_lets_nothing_through_until_it_is_mended(cable, room):
    ilse = await room.person("Ilse")
    await ilse.says("hello")
    async with Bot(TOKEN, f"{cable.address}/bot") as bot:
        await bot.send_message(ilse.id, "before")
        cable.cut()
        with pytest.raises(NetworkError):
            await bot.send_message(ilse.id, "meanwhile")
        await cable.mend()
        await bot.send_message(ilse.id, "after")
    assert [one.text for one in await ilse.messages] == ["hello", "before", "after"]


async def test_a_poll_that_waits_is_broken_off_by_a_cut(cable):
    async with Bot(TOKEN, f"{cable.address}/bot") as bot:
        waiting = asyncio.create_task(bot.get_updates(timeout=30))
        await asyncio.sleep(0.2)
        cable.cut()
        with pytest.raises(NetworkError):
            await waiting


async def test_used_up_limits_take_nothing_for_so_long(platform, bot, room):
    ilse = await room.person("Ilse")
    await ilse.says("hello")
    platform.rates.use_up(30)
    with pytest.raises(RetryAfter) as told:
        await bot.send_message(ilse.id, "too much")
    assert told.value.retry_after == timedelta(seconds=30)
    await room.travels(timedelta(seconds=30))
    assert platform.rates.used_up_until is None
    await bot.send_message(ilse.id, "now it goes")


async def test_a_killed_process_is_gone_at_once_and_can_be_started_again(process):
    for _ in range(2):
        await process.start()
        assert process.is_alive
        await process.kill()
        assert not process.is_alive


async def test_the_bot_is_up_once_it_asks_for_what_people_said(platform, backstage, bot):
    assert (await backstage.state())["bot"] == "starting"
    await bot.get_updates(timeout=0)
    assert (await backstage.state())["bot"] == "up"
    backstage.bot.is_alive = False
    assert (await backstage.state())["bot"] == "down"


async def test_a_bot_that_ends_before_it_asks_is_not_waited_for(process, platform, cable, monkeypatch):
    backstage = Backstage(platform, process, cable)
    monkeypatch.setitem(process._environment, "BELLWETHER_DATABASE", "/nowhere/at/all.db")
    await process.start()
    assert not await backstage.is_up(within=60)
    assert not process.is_alive
    assert "/nowhere" in process.last_words


async def test_what_waits_is_read_whether_the_bot_runs_or_not(backstage, store, platform):
    at = platform.clock.now() + timedelta(hours=1)
    async with store.unit() as unit:
        ilse = await unit.people.meet(7, "Ilse", "en", platform.clock.now())
        await unit.dues.add("one", "remind", at, {"person": ilse.id})
    waits = (await backstage.state())["waits"]
    assert waits["kept"]["people"] == 1
    assert waits["ahead"] == [{"at": at.isoformat(), "what": "Ilse's reminder"}]


async def test_a_post_is_ahead_at_the_time_that_was_set_last(backstage, store, platform):
    now = platform.clock.now()
    first, last = now + timedelta(minutes=18), now + timedelta(minutes=30)
    async with store.unit() as unit:
        marit = await unit.people.meet(7, "Marit", "en", now)
        chat = await unit.chats.group_chat(-5000)
        group = await unit.groups.open(chat.id, "Harbour crew", now)
        draft = await unit.sessions.draft(
            group_id=group.id, author_id=marit.id, day=now.date(), text="", session=SESSION, now=now
        )
        for at in (first, last):
            await unit.sessions.schedule(draft.id, at, at.date())
            await unit.dues.add(f"post {at}", "post", at, {"session": draft.id, "revision": draft.revision})
    ahead = (await backstage.state())["waits"]["ahead"]
    assert ahead == [{"at": last.isoformat(), "what": "the session for Harbour crew"}]
    async with store.unit() as unit:
        await unit.sessions.unschedule(draft.id)
    assert (await backstage.state())["waits"]["ahead"] == []


async def test_before_there_are_tables_nothing_waits(tmp_path):
    assert what_waits(tmp_path / "none.db") is None
    (tmp_path / "empty.db").touch()
    assert what_waits(tmp_path / "empty.db") is None


async def test_the_time_goes_by_way_of_every_moment_that_was_set(
    backstage, store, platform, room, monkeypatch
):
    start = platform.clock.now()
    async with store.unit() as unit:
        for hours in (1, 3, 50):
            await unit.dues.add(f"due {hours}", "digest", start + timedelta(hours=hours), {})
    came = []
    travel = platform.clock.travel_to

    def watched(moment):
        came.append((moment - start) // timedelta(hours=1))
        travel(moment)

    monkeypatch.setattr(platform.clock, "travel_to", watched)
    monkeypatch.setattr(backstage, "_settled", nothing)
    await room.stage.do("go_on", to=(start + timedelta(hours=24)).isoformat())
    assert came == [1, 3, 24]


async def nothing():
    pass


async def test_while_the_day_plays_nobody_else_moves_the_time(backstage, room, platform):
    ended = []
    backstage.skip = lambda: ended.append(True)
    for act, details in (
        ("go_on", {"to": platform.clock.now().isoformat()}),
        ("let_it_run", {"runs": False}),
    ):
        with pytest.raises(NotPossible, match="still plays"):
            await room.stage.do(act, **details)
    await room.stage.do("skip_day")
    assert ended == [True]


async def test_a_room_without_a_bot_of_its_own_says_so(room):
    with pytest.raises(NotPossible, match="nothing behind"):
        await room.stage.do("kill_bot")
