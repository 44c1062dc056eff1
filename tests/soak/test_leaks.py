"""Whatever anybody sends, of any group and standing: nobody sees what belongs to another group or person."""

import asyncio
import logging
from collections import Counter
from random import Random
from typing import Any

import pytest_asyncio

from tests.acceptance.conftest import bellwether, settings  # noqa: F401 - fixtures; the seal of buttons as it is
from tests.soak.attempts import altered_presses, buttons_seen, edits, links, presses, replies, texts
from tests.soak.two_groups import built
from tests.support.durable import Tables

EACH_KIND = 40
PATIENCE_S = 60


@pytest_asyncio.fixture
async def world(bellwether, room, platform):  # noqa: F811
    return await built(room, platform)


class Siege:
    """Sends attempts, one of each person at a time, and keeps what came of them."""

    def __init__(self, world, tables):
        self.world = world
        self.tables = tables
        self.made: Counter[str] = Counter()
        self.leaks: list[tuple[Any, Any]] = [(leak, "while they told it") for leak in world.leaks()]

    async def send(self, kind, attempts, knowing=True):
        """As many as there are: those of one person one after the other, of several at once.

        `knowing`: they know names of the other group, too, so that these prove nothing where they come back.
        """
        queues: dict[int, list[Any]] = {}
        for attempt in attempts:
            if not knowing and not self.world.knows(attempt.who.id, attempt.told):
                continue
            queues.setdefault(attempt.who.id, []).append(attempt)
        while any(queues.values()):
            batch = [queue.pop() for queue in queues.values() if queue]
            for one in batch:
                self.world.says(self.world.chats_of(one.who), one.told)
            happened = [one for one in batch if await one.happens(self.world)]
            self.made[kind] += len(happened)
            await self.settled()
            tried = [(self.world.name_of(one.who.id), one.act, dict(one.details)) for one in happened]
            self.leaks += [(leak, tried) for leak in self.world.leaks()]

    async def settled(self):
        loop = asyncio.get_running_loop()
        end = loop.time() + PATIENCE_S
        while self._under_way():
            assert loop.time() < end, "it never came to an end"
            await asyncio.sleep(0.004)

    def _under_way(self):
        return len(self.world.platform.bot.updates) > 0 or self.tables.column(
            "SELECT (SELECT count(*) FROM inbox WHERE state = 'waiting')"
            " + (SELECT count(*) FROM outbox WHERE state IN ('waiting', 'leased'))"
        ) != [0]


def some(random, attempts, number):
    found = list(attempts)
    return random.sample(found, min(number, len(found)))


async def test_nobody_sees_what_belongs_to_another_group_or_person(world, settings, size, caplog, capsys):  # noqa: F811
    caplog.set_level(logging.WARNING)
    random, number = Random(size), EACH_KIND * size
    siege = Siege(world, Tables(settings.database))
    await siege.settled()

    for knowing in (False, True):  # the second time there are the buttons and messages of the first, too
        await siege.send("typed", some(random, texts(world), number // 2), knowing)
        await siege.send("replied", some(random, replies(world), number // 2), knowing)
        await siege.send("edited", some(random, edits(world), number // 4))
        seen = buttons_seen(world)
        await siege.send("pressed", some(random, presses(world, seen), number))
        await siege.send("made up", some(random, altered_presses(world, seen, random), number // 2))
        await siege.send("linked", some(random, links(world, seen), number // 4))
    await evening(siege)

    failed = siege.tables.rows("SELECT body, error FROM inbox WHERE error IS NOT NULL OR state = 'parked'")
    broken = [record.getMessage() for record in caplog.records if record.exc_info]
    leaks = told(siege.leaks)
    with capsys.disabled():
        print(  # noqa: T201 - the figures of the run
            f"\n{sum(siege.made.values())} attempts ({dict(siege.made)}): {len(siege.leaks)} leaks, "
            f"{len(broken)} tracebacks, {len(failed)} failed updates",
            *leaks,
            sep="\n",
        )
    assert set(world.secrets) - world.stood == set()
    assert leaks == []
    assert failed == []
    assert broken == []
    await nobody_lost_theirs(siege)


def told(leaks):
    """Each kind of leak once, with what was tried when it came: by whom it came to, if to somebody's own chat."""
    found: dict[Any, str] = {}
    for leak, tried in leaks:
        who = leak.where.rpartition(" to ")[2]
        own = [one for one in tried if one[0] == who] if isinstance(tried, list) else tried
        found.setdefault((leak.word, leak.where, leak.text[:60]), f"{leak}\n   after {own or tried}")
    return list(found.values())


async def evening(siege):
    """What goes out by itself, too: digests, reminders and scheduled posts."""
    await siege.world.room.travels_to((await siege.world.room.now()).replace(hour=20))
    await asyncio.sleep(0.5)
    await siege.send("evening", [])
    await siege.settled()
    siege.leaks += [(leak, "in the evening") for leak in siege.world.leaks()]


async def nobody_lost_theirs(siege):
    """Nobody can erase anybody else: each is still known, with what they told."""
    for name in ("Ann", "Both", "Ben"):
        await siege.world[name].says("/me")
        await siege.settled()
        assert "here's what I know" in (await siege.world[name].last_message).text
