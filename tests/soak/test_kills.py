"""A day of many kills, with a platform that stumbles, a group that moves and somebody who blocks: nothing is lost."""

import asyncio
import sys
from datetime import timedelta
from random import Random

import pytest
import pytest_asyncio

from tests.acceptance.conftest import running_room  # noqa: F401 - a fixture
from tests.acceptance.mortal import Mortal, assert_every_update_was_kept
from tests.acceptance.people import answers_what_is_asked, founded
from tests.soak.line import line_to
from tests.soak.shaking import Stumbling, Talker, figures, moment, states_left

KILLS = 3  # 25 for each further size
AT_A_STRETCH = 10
PATIENCE_S = 120
MOMENT_COMES_S = 10
SESSION = "Tuesday\nAMRAP 12\n5 push-ups\n10 air squats\n5 lunges"


@pytest_asyncio.fixture
async def line(address):
    async with line_to(address) as found:
        yield found


@pytest_asyncio.fixture
async def mortal(platform, address, line, tmp_path):
    """The process, talking to the platform over the line and following its clock past it."""
    over = f"http://127.0.0.1:{line.port}"
    found = Mortal(platform, over, tmp_path / "bellwether.db", tmp_path / "bot.log", clock=address)
    living = asyncio.create_task(found.live())
    yield found
    living.cancel()
    ended = await asyncio.gather(living, return_exceptions=True)
    sys.stdout.write(f"{found.log}\n{ended}")


class Day:
    """The talk of one group, and how often its bot was killed."""

    def __init__(self, crew, talkers, mortal, stumbling, random):
        self.crew = crew
        self.talkers = talkers
        self.mortal = mortal
        self.stumbling = stumbling
        self.random = random

    async def goes_on(self, number):
        """One more kill in the middle of everybody's words."""
        self.mortal.arm(moment(self.random))
        kills = self.mortal.ends
        await self.stumbling.stumbles()
        for talker in self.talkers:
            await talker.says(number)
        for talker in self.talkers:
            if number == 0 or self.random.random() < 0.3:
                await talker.scores(self.random.randrange(2, 15), self.random.randrange(1, 20))
        loop = asyncio.get_running_loop()
        end = loop.time() + MOMENT_COMES_S
        while self.mortal.ends == kills:
            if loop.time() > end:
                self.mortal._kill()
                end = loop.time() + MOMENT_COMES_S
            await asyncio.sleep(0.05)
        if self.random.random() < 0.7:  # else the next kill comes in the middle of its start
            await self._gets_on()

    async def _gets_on(self):
        """Until it has handled something since its last start, or is given up waiting for."""
        loop = asyncio.get_running_loop()
        end, done = loop.time() + MOMENT_COMES_S * 2, self._done()
        while self._done() == done and states_left(self.mortal.tables) and loop.time() < end:  # noqa: ASYNC110
            await asyncio.sleep(0.1)

    def _done(self):
        return self.mortal.tables.column("SELECT count(*) FROM inbox WHERE state = 'done'")

    async def catches_up(self):
        """Nobody goes on writing for hours where nothing answers."""
        loop = asyncio.get_running_loop()
        end = loop.time() + PATIENCE_S
        while self._waiting() and loop.time() < end:  # noqa: ASYNC110 - nothing tells of it
            await asyncio.sleep(0.5)

    def _waiting(self):
        return self.mortal.tables.column("SELECT count(*) FROM inbox WHERE state = 'waiting'")[0]

    async def ends(self):
        self.stumbling.recovers()
        loop = asyncio.get_running_loop()
        end = loop.time() + PATIENCE_S
        while left := states_left(self.mortal.tables):
            assert loop.time() < end, f"still under way: {left}"
            await asyncio.sleep(1)
            await self.crew.room.travels(timedelta(minutes=1))  # what failed often waits longer and longer


@pytest.mark.timeout(7200)
async def test_a_day_of_kills_loses_nothing(mortal, running_room, platform, line, size, capsys):  # noqa: F811
    random = Random(size)
    kills = KILLS if size == 1 else 25 * size
    crew = await founded(running_room, "Harbour crew", coach="Marit")
    talkers = [Talker(await crew.has(name), f"{name.lower()}s") for name in ("Ilse", "Bo", "Tam")[: 1 + size]]
    blocker = await crew.has("Vix")
    await crew.gets(SESSION)
    for talker in talkers:
        await answers_what_is_asked(talker.person)
    day = Day(crew, talkers, mortal, Stumbling(platform, line, random), random)

    for number in range(kills):
        await day.goes_on(number)
        if number % AT_A_STRETCH == AT_A_STRETCH - 1:
            await day.catches_up()
        if number == kills // 3:
            await blocker.blocks_bot()
        if number == kills // 2:
            await crew.group.becomes_supergroup(crew.coach)
    await day.ends()

    found = await figures(crew, talkers)
    with capsys.disabled():
        print(  # noqa: T201 - the figures of the run
            f"\n{mortal.kills} kills, {sum(day.stumbling.kinds.values())} troubles "
            f"({dict(day.stumbling.kinds)}), {found.words} words: {len(found.lost)} lost, {found.repeated} repeated "
            f"({day.stumbling.doubtful} sends were in doubt beside the kills), {len(found.overtaken)} overtaken"
        )
    assert found.lost == found.overtaken == ()
    assert found.repeated <= mortal.kills + day.stumbling.doubtful
    assert_every_update_was_kept(mortal.tables)
    assert "Traceback" not in mortal.log
    await the_board_is_right(crew, talkers)


async def the_board_is_right(crew, talkers):
    boards = [one.text for one in await crew.group.messages if "Scoreboard" in one.text]
    for talker in talkers:
        assert talker.board_line in boards[-1]
