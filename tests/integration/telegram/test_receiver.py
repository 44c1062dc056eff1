import asyncio

import pytest
import pytest_asyncio
from telegram.error import NetworkError

from bot.rehearsal import errors
from bot.telegram.receiver import Receiver
from tests.support.durable import eventually


class Pauses:
    """Takes no time, and remembers how long each pause would have been."""

    def __init__(self):
        self.seconds = []

    async def __call__(self, seconds):
        self.seconds.append(seconds)
        await asyncio.sleep(0)


@pytest.fixture
def pauses():
    return Pauses()


@pytest.fixture
def receiver(bot, store, platform, bells, pauses):
    return Receiver(bot, store, platform.clock, bells, pause=pauses, jitter=lambda: 1.0)


@pytest_asyncio.fixture
async def running(receiver):
    task = asyncio.create_task(receiver.run())
    yield task
    receiver.stop()
    await task


@pytest_asyncio.fixture
async def ilse(room):
    person = await room.person("Ilse")
    await person.opens(await room.start_link())
    return person


def said(tables):
    return tables.column("SELECT json_extract(body, '$.message.text') FROM inbox ORDER BY id")


async def test_updates_are_kept_in_the_lane_of_their_chat(running, ilse, tables):
    await ilse.says("hello")
    await eventually(lambda: said(tables) == ["/start", "hello"])
    assert tables.column("SELECT DISTINCT lane FROM inbox") == [ilse.id]


async def test_an_update_is_confirmed_only_after_it_is_kept(running, ilse, room, platform, tables):
    kept_when_confirmed = []

    def look(call):
        if "offset" in call.params:
            kept_when_confirmed.append(len(tables.states("inbox")))

    platform.on_call.append(look)
    await ilse.says("hello")
    await eventually(lambda: len(kept_when_confirmed) >= 2)
    assert kept_when_confirmed[:2] == [1, 2]
    assert await room.waiting_updates() == 0


async def test_what_could_not_be_kept_is_not_confirmed(receiver, ilse, room, store, monkeypatch):
    def no_disk():
        raise OSError("disk full")

    monkeypatch.setattr(store, "unit", no_disk)
    with pytest.raises(OSError, match="disk full"):
        await receiver.run()
    assert await room.waiting_updates() == 1


async def test_the_same_update_twice_is_kept_once(receiver, ilse, tables):
    twice = {"update_id": 5, "message": {"message_id": 1, "chat": {"id": ilse.id}, "text": "hello"}}
    await receiver.receive([twice])
    await receiver.receive([twice])
    assert said(tables) == ["hello"]


async def test_a_second_poller_makes_it_wait(running, room, ilse, pauses, tables, caplog):
    await room.faults.decline("getUpdates", errors.conflict("terminated by other getUpdates request"))
    await ilse.says("hello")
    await eventually(lambda: said(tables) == ["/start", "hello"])
    assert pauses.seconds == [0.25]
    assert "another process" in caplog.text


async def test_it_waits_as_long_as_the_platform_asks(running, room, ilse, pauses, tables):
    await room.faults.decline("getUpdates", errors.too_many_requests(9))
    await ilse.says("hello")
    await eventually(lambda: said(tables) == ["/start", "hello"])
    assert pauses.seconds == [9.0]


async def test_stopping_breaks_off_the_poll(receiver):
    task = asyncio.create_task(receiver.run())
    await asyncio.sleep(0.05)
    receiver.stop()
    async with asyncio.timeout(1):
        await task


@pytest.fixture
def offsets_of(receiver, monkeypatch):
    """Poll a platform that gives these answers, and return the offset of each call."""

    async def run(*answers):
        left, offsets = list(answers), []

        async def answer_next(_bot, _method, params, _timeout):
            offsets.append(params.get("offset"))
            answer = left.pop(0)
            if not left:
                receiver.stop()
            if isinstance(answer, Exception):
                raise answer
            return answer

        monkeypatch.setattr("bot.telegram.receiver.call", answer_next)
        await receiver.run()
        return offsets

    return run


def update(update_id):
    return {"update_id": update_id, "message": {"chat": {"id": 1}}}


async def test_a_poll_that_fails_is_repeated_with_its_offset(offsets_of):
    assert await offsets_of([update(7)], NetworkError("lost"), []) == [None, 8, 8]


async def test_numbers_that_begin_anew_after_a_quiet_week_are_received_too(offsets_of, tables):
    assert await offsets_of([update(900)], [], [update(3)], []) == [None, 901, None, 4]
    assert tables.column("SELECT update_id FROM inbox ORDER BY id") == [900, 3]


async def test_a_failing_network_is_tried_again_with_growing_pauses(offsets_of, pauses):
    await offsets_of(*[NetworkError("lost")] * 110, [])
    assert pauses.seconds == sorted(pauses.seconds)
    assert (pauses.seconds[0], pauses.seconds[-1]) == (0.25, 30.0)


async def test_a_poll_that_hangs_is_begun_anew_when_the_platform_answers_others_again(
    receiver, bells, platform, ilse, tables, monkeypatch
):
    call, never, silent = platform.call, asyncio.Event(), [True]

    async def hang(token, method, params):
        if silent[0]:
            await never.wait()
        return await call(token, method, params)

    monkeypatch.setattr(platform, "call", hang)
    await ilse.says("hello")
    task = asyncio.create_task(receiver.run())
    await asyncio.sleep(0.05)
    silent[0] = False
    bells.back.ring()
    await eventually(lambda: said(tables)[-1:] == ["hello"])
    receiver.stop()
    await task
