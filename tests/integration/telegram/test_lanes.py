import asyncio
from collections import Counter, defaultdict
from datetime import timedelta
from itertools import count

import pytest
import pytest_asyncio
from telegram.error import NetworkError, RetryAfter, TimedOut

from bot.telegram.lanes import Lanes
from bot.telegram.tries import MOST_BEGUN
from tests.support.durable import eventually

ILSE, TOMAS = 1, 2


class Handling:
    """Handles updates as told: some fail a number of times, some wait for a gate."""

    def __init__(self, store):
        self.done = []
        self.tried = []
        self.parked = []
        self.failures: Counter[str] = Counter()
        self.errors = defaultdict(list)
        self.at_once = defaultdict(int)
        self.most_at_once = defaultdict(int)
        self.gates = {}
        self._store = store

    async def handle(self, item):
        text, lane = item.body["text"], item.lane
        self.tried.append(text)
        self.at_once[lane] += 1
        self.most_at_once[lane] = max(self.most_at_once[lane], self.at_once[lane])
        try:
            await self._handle(item, text)
        finally:
            self.at_once[lane] -= 1

    async def _handle(self, item, text):
        if text in self.gates:
            await self.gates[text].wait()
        if self.errors[text]:
            raise self.errors[text].pop()
        if self.failures[text]:
            self.failures[text] -= 1
            raise RuntimeError(text)
        async with self._store.unit() as unit:
            await unit.inbox.done(item.id)
        self.done.append(text)

    async def on_parked(self, item):
        self.parked.append(item.body["text"])


@pytest.fixture
def handling(store):
    return Handling(store)


@pytest_asyncio.fixture
async def put(store, bells, platform):
    numbers = count(1)

    async def do(lane, *texts):
        updates = [(next(numbers), lane, {"text": text}) for text in texts]
        async with store.unit() as unit:
            await unit.inbox.store(updates, platform.clock.now())
        bells.inbox.ring()

    return do


@pytest_asyncio.fixture
async def lanes(store, bells, handling, platform):
    found = Lanes(
        store, platform.clock, bells, handling.handle, handling.on_parked, width=3, jitter=lambda: 1.0
    )
    running = asyncio.create_task(found.run())
    yield found
    found.stop()
    await running


async def test_a_chat_is_handled_in_order_one_at_a_time(lanes, handling, put):
    texts = [f"message {number}" for number in range(20)]
    await put(ILSE, *texts)
    await eventually(lambda: handling.done == texts)
    assert handling.most_at_once[ILSE] == 1


async def test_a_slow_chat_holds_nobody_else_up(lanes, handling, put):
    gate = handling.gates["slow"] = asyncio.Event()
    await put(ILSE, "slow", *(f"after {number}" for number in range(20)))
    for chat in range(10, 20):
        await put(chat, f"chat {chat}")
    await eventually(lambda: len(handling.done) == 10)
    assert handling.tried.count("slow") == 1
    gate.set()
    await eventually(lambda: len(handling.done) == 31)


async def test_different_chats_are_handled_side_by_side(lanes, handling, put):
    gate = handling.gates["a"] = handling.gates["b"] = asyncio.Event()
    await put(ILSE, "a")
    await put(TOMAS, "b")
    await eventually(lambda: handling.tried == ["a", "b"])
    assert handling.done == []
    gate.set()
    await eventually(lambda: sorted(handling.done) == ["a", "b"])


async def test_no_more_chats_at_once_than_there_are_workers(lanes, handling, put):
    gate = asyncio.Event()
    for chat in range(5):
        handling.gates[f"chat {chat}"] = gate
        await put(chat, f"chat {chat}")
    await eventually(lambda: len(handling.tried) == 3)
    await asyncio.sleep(0.05)
    assert len(handling.tried) == 3
    gate.set()
    await eventually(lambda: len(handling.done) == 5)


async def test_poison_is_parked_after_three_tries_and_its_sender_is_told(
    lanes, handling, put, tables, caplog
):
    handling.failures["poison"] = 99
    await put(ILSE, "poison", "the next")
    await eventually(lambda: handling.done == ["the next"])
    assert handling.tried == ["poison"] * 3 + ["the next"]
    assert handling.parked == ["poison"]
    assert tables.rows("SELECT state, error FROM inbox ORDER BY id") == [
        ("parked", "RuntimeError: poison"),
        ("done", None),
    ]
    assert "Traceback" in caplog.text


async def test_what_works_at_the_third_try_is_not_parked(lanes, handling, put, tables):
    handling.failures["shaky"] = 2
    await put(ILSE, "shaky")
    await eventually(lambda: tables.states("inbox") == ["done"])
    assert handling.tried == ["shaky"] * 3
    assert handling.parked == []


async def test_what_the_platform_spoilt_waits_is_tried_again_and_never_counts(
    lanes, handling, put, room, tables
):
    handling.errors["stalled"] = [TimedOut()] * 5
    await put(ILSE, "stalled", "the next")
    for tries in range(1, 6):
        await eventually(lambda tries=tries: handling.tried == ["stalled"] * tries)
        await asyncio.sleep(0.02)
        await room.travels(timedelta(seconds=1))
    await eventually(lambda: handling.done == ["stalled", "the next"])
    assert handling.parked == []
    assert tables.column("SELECT attempts FROM inbox") == [1, 1]


async def test_while_one_waits_for_the_platform_other_lanes_go_on(lanes, handling, put):
    handling.errors["stalled"] = [NetworkError("Bad Gateway")] * 99
    await put(ILSE, "stalled", "behind it")
    await put(TOMAS, "elsewhere")
    await eventually(lambda: handling.done == ["elsewhere"])


async def test_it_waits_as_long_as_the_platform_says(lanes, handling, put, room):
    handling.errors["stalled"] = [RetryAfter(timedelta(seconds=9))]
    await put(ILSE, "stalled")
    await eventually(lambda: handling.tried == ["stalled"])
    await asyncio.sleep(0.02)
    await room.travels(timedelta(seconds=8.9))
    await asyncio.sleep(0.05)
    assert handling.tried == ["stalled"]
    await room.travels(timedelta(seconds=0.2))
    await eventually(lambda: handling.done == ["stalled"])


async def test_many_that_hang_leave_a_way_for_others(lanes, handling, put, monkeypatch):
    monkeypatch.setattr("bot.telegram.lanes._SLOW_S", 0.05)
    gate = asyncio.Event()
    for chat in range(10, 16):
        handling.gates[f"chat {chat}"] = gate
        await put(chat, f"chat {chat}")
    await put(ILSE, "prompt")
    await eventually(lambda: handling.done == ["prompt"])
    gate.set()
    await eventually(lambda: len(handling.done) == 7)


class Dying(Handling):
    """Ends the process, as it were, while it handles `deadly`."""

    def __init__(self, store):
        super().__init__(store)
        self.died = asyncio.Event()

    async def _handle(self, item, text):
        if text == "deadly":
            self.died.set()
            await asyncio.Event().wait()
        await super()._handle(item, text)


async def test_what_ends_the_process_again_and_again_is_parked_and_nothing_beside_it(
    store, bells, platform, put, tables
):
    *lives, last = [Dying(store) for _ in range(MOST_BEGUN + 1)]
    await put(ILSE, "deadly", "behind it")
    await put(TOMAS, "beside it")
    for life in lives:
        running = asyncio.create_task(Lanes(store, platform.clock, bells, life.handle, life.on_parked).run())
        await asyncio.wait_for(life.died.wait(), 5)
        running.cancel()
        await asyncio.gather(running, return_exceptions=True)
        bells.inbox.ring()
    assert tables.column("SELECT attempts FROM inbox ORDER BY id")[0] == MOST_BEGUN
    lanes = Lanes(store, platform.clock, bells, last.handle, last.on_parked)
    running = asyncio.create_task(lanes.run())
    await eventually(lambda: tables.states("inbox") == ["parked", "done", "done"])
    lanes.stop()
    await running
    assert last.parked == ["deadly"]
    assert "deadly" not in last.tried


async def test_after_a_kill_each_suspect_is_tried_with_nothing_beside_it(
    store, bells, platform, put, handling
):
    await put(ILSE, "one")
    await put(TOMAS, "two")
    async with store.unit() as unit:
        found = await unit.inbox.next(5)
        await unit.inbox.begin([item.id for item in found])
    gate = handling.gates["one"] = asyncio.Event()
    lanes = Lanes(store, platform.clock, bells, handling.handle, handling.on_parked)
    running = asyncio.create_task(lanes.run())
    await eventually(lambda: handling.tried == ["one"])
    await asyncio.sleep(0.05)
    assert handling.tried == ["one"]
    gate.set()
    await eventually(lambda: handling.done == ["one", "two"])
    lanes.stop()
    await running


async def test_a_kill_while_everything_is_still_being_loaded_counts_against_nobody(
    store, bells, platform, put, handling, tables
):
    await put(ILSE, "one")
    async with store.unit() as unit:
        await unit.inbox.begin([item.id for item in await unit.inbox.next(5)])
    loading, loaded = asyncio.Event(), asyncio.Event()

    async def prepare():
        loading.set()
        await loaded.wait()

    def life():
        lanes = Lanes(store, platform.clock, bells, handling.handle, handling.on_parked, prepare=prepare)
        return lanes, asyncio.create_task(lanes.run())

    for _ in range(5):
        loading.clear()
        _, running = life()
        await asyncio.wait_for(loading.wait(), 5)
        running.cancel()
        await asyncio.gather(running, return_exceptions=True)
    assert tables.column("SELECT attempts FROM inbox") == [1]
    loaded.set()
    lanes, running = life()
    await eventually(lambda: handling.done == ["one"])
    lanes.stop()
    await running


async def test_a_hook_that_fails_stops_nothing(lanes, handling, put, caplog):
    async def fail(item):
        raise RuntimeError("nobody home")

    lanes._on_parked = fail
    handling.failures["poison"] = 99
    await put(ILSE, "poison", "the next")
    await eventually(lambda: handling.done == ["the next"])
    assert "nobody home" in caplog.text


async def test_what_was_left_by_a_dead_process_is_handled_at_the_start(handling, put, store, bells, platform):
    await put(ILSE, "left", "behind")
    bells.inbox._rung.clear()
    lanes = Lanes(store, platform.clock, bells, handling.handle, handling.on_parked)
    running = asyncio.create_task(lanes.run())
    await eventually(lambda: handling.done == ["left", "behind"])
    lanes.stop()
    await running


async def test_stopping_finishes_what_was_begun_and_begins_nothing(
    handling, put, store, bells, tables, platform
):
    gate = handling.gates["begun"] = asyncio.Event()
    lanes = Lanes(store, platform.clock, bells, handling.handle, handling.on_parked)
    running = asyncio.create_task(lanes.run())
    await put(ILSE, "begun", "later")
    await eventually(lambda: handling.tried == ["begun"])
    lanes.stop()
    gate.set()
    await running
    assert tables.states("inbox") == ["done", "waiting"]
