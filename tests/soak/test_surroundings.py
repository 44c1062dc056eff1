"""What goes wrong around a running bot: a clear sentence, no traceback, and nothing lost once it is well again.

What is wrong before it starts stands in tests/integration/app/test_surroundings.py.
"""

import asyncio
import ctypes
import json
import os
import resource
import socket
import sqlite3
import sys
from contextlib import asynccontextmanager, closing
from datetime import timedelta
from time import monotonic
from urllib.error import HTTPError, URLError
from urllib.request import urlopen

import pytest
import pytest_asyncio

from bot.bootstrap import build
from bot.rehearsal.clock import Reading, SettableClock
from bot.rehearsal.errors import too_many_requests
from bot.rehearsal.platform import TOKEN
from bot.telegram.conduct import make_conduct
from tests.acceptance.conftest import settings  # noqa: F401 - a fixture
from tests.soak.line import line_to
from tests.soak.operated import PATIENCE_S, Bot, assert_one_sentence
from tests.support.in_process import InProcessRequest


@pytest.fixture
def bot(address, tmp_path):
    return Bot(address, tmp_path)


@pytest_asyncio.fixture
async def ilse(remote_room):
    await remote_room.lets_time_run()
    return await remote_room.person("Ilse")


async def greets(person, room):
    await person.opens(await room.start_link())
    await person.hears("Hello", within=PATIENCE_S)


async def is_answered(person, within=PATIENCE_S):
    """Somebody says what was not answered yet, and begins with nothing unheard."""
    await person.hears("Hello", within=within)


async def ending(process):
    _, complaint = await asyncio.wait_for(process.communicate(), PATIENCE_S * 3)
    return process.returncode, "", complaint.decode()


async def test_a_database_that_is_held_while_it_runs_loses_nothing(bot, remote_room, ilse, size):
    held_s = 3 if size == 1 else 40  # longer than it waits
    process = bot.process("serve")
    await greets(ilse, remote_room)
    with closing(sqlite3.connect(bot.database, isolation_level=None)) as other:
        other.execute("BEGIN IMMEDIATE")
        await ilse.says("/help")
        await asyncio.sleep(held_s)
    if size > 1:
        assert_one_sentence(await ending(process), "holding it for too long")
        async with bot.serving():
            await is_answered(ilse)
        return
    await is_answered(ilse)
    process.terminate()
    assert "Traceback" not in (await ending(process))[2]


async def test_a_disk_that_is_full_is_named_and_what_was_said_comes_again(bot, remote_room, ilse):
    process = bot.process("serve")
    await greets(ilse, remote_room)

    resource.prlimit(process.pid, resource.RLIMIT_FSIZE, (4096, resource.RLIM_INFINITY))
    await ilse.says("/help")

    assert_one_sentence(await ending(process), "disk")
    async with bot.serving():
        await is_answered(ilse)
    assert "sound" in (await bot.run("check"))[1]


def _may_write_what_the_rights_allow():
    """The superuser is bound by a file's rights only without this capability (linux/capability.h: 1)."""
    if sys.platform == "linux" and os.getuid() == 0:
        drop, override = 24, 1
        ctypes.CDLL(None).prctl(drop, override, 0, 0, 0)


async def test_a_file_that_can_only_be_read_is_named(bot, remote_room, ilse):
    async with bot.serving():
        await greets(ilse, remote_room)
    bot.database.chmod(0o400)
    bot.folder.chmod(0o500)
    try:
        process = await bot.loaded_anew("serve", before=_may_write_what_the_rights_allow)
        ended = await ending(process)
    finally:
        bot.folder.chmod(0o700)
        bot.database.chmod(0o600)

    assert_one_sentence(ended, str(bot.folder), "rights")
    async with bot.serving():
        await ilse.says("/help")
        await is_answered(ilse)


async def test_a_token_that_is_revoked_while_it_runs_is_named_by_health(bot, platform, remote_room, ilse):
    place = f"127.0.0.1:{_free_port()}"
    async with bot.serving(BELLWETHER_LISTEN=place):
        await greets(ilse, remote_room)
        known = platform.bots.pop(TOKEN)
        known.updates._wake()  # ends the poll that is under way

        status = await _status_with(place, "BELLWETHER_TOKEN")

        assert TOKEN not in status
        platform.bots[TOKEN] = known
        await ilse.says("/help")
        await is_answered(ilse)


async def test_a_platform_that_is_away_at_the_start_is_waited_for(bot, address, remote_room, ilse, size):
    async with line_to(address) as line:
        await line.becomes("refuses")
        async with bot.serving(BELLWETHER_API_URL=f"http://127.0.0.1:{line.port}"):
            await ilse.opens(await remote_room.start_link())
            await asyncio.sleep(4 if size == 1 else 60)
            await line.becomes("up")
            back = monotonic()
            await ilse.hears("Hello", within=PATIENCE_S)
            late = monotonic() - back
    assert late < 15


def _free_port():
    with socket.socket() as found:
        found.bind(("127.0.0.1", 0))
        return found.getsockname()[1]


async def _status_with(place, word):
    """What /health says once it says that; it is asked in a thread, as from outside."""
    status = ""
    for _ in range(PATIENCE_S * 5):
        status = await asyncio.to_thread(_health, place)
        if word in status:
            return status
        await asyncio.sleep(0.2)
    raise AssertionError(f"never said {word}: {status}")


def _health(place):
    try:
        with urlopen(f"http://{place}/health") as answer:
            return json.load(answer)["status"]
    except HTTPError as error:
        return str(json.load(error)["status"])
    except URLError as error:
        return str(error)


class Jumping(SettableClock):
    """A clock that somebody sets, back too; its timer runs on, as the machine's does."""

    def monotonic(self):
        return monotonic()

    async def sleep_to(self, second):
        await asyncio.sleep(second - monotonic())

    def jumps(self, by):
        self._set(Reading(self.now() + by, runs=True, version=self.read().version + 1))


@asynccontextmanager
async def running(platform, settings):  # noqa: F811
    platform.clock.let_run()
    clock = Jumping(Reading(platform.clock.now(), runs=True, version=1))
    app = build(settings, make_conduct, clock=clock, request=InProcessRequest(platform))
    await app.start()
    yield clock
    await app.stop()


@pytest.mark.parametrize("hours", [-2, 2])
async def test_a_clock_that_jumps_holds_no_answer_up(platform, settings, room, hours, caplog):  # noqa: F811
    async with running(platform, settings) as clock:
        ilse = await room.person("Ilse")
        await ilse.opens(await room.start_link())
        await ilse.hears("Hello")
        await room.faults.decline("sendMessage", too_many_requests(2))
        await ilse.says("/help")
        await asyncio.sleep(0.5)
        clock.jumps(timedelta(hours=hours))

        await is_answered(ilse, within=10)
        await ilse.says("/help")
        await is_answered(ilse, within=10)
    assert [one.getMessage() for one in caplog.records if one.exc_info] == []
