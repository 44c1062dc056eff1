import asyncio
from collections import Counter, defaultdict
from itertools import count

import pytest
import pytest_asyncio

from bot.telegram.lanes import Lanes
from tests.support.durable import eventually

ILSE, TOMAS = 1, 2


class Handling:
    """Handles updates as told: some fail a number of times, some wait for a gate."""

    def __init__(self, store):
        self.done = []
        self.tried = []
        self.parked = []
        self.failures: Counter[str] = Counter()
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
async def lanes(store, bells, handling):
    found = Lanes(store, bells, handling.handle, handling.on_parked, width=3)
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


async def test_a_hook_that_fails_stops_nothing(lanes, handling, put, caplog):
    async def fail(item):
        raise RuntimeError("nobody home")

    lanes._on_parked = fail
    handling.failures["poison"] = 99
    await put(ILSE, "poison", "the next")
    await eventually(lambda: handling.done == ["the next"])
    assert "nobody home" in caplog.text


async def test_what_was_left_by_a_dead_process_is_handled_at_the_start(handling, put, store, bells):
    await put(ILSE, "left", "behind")
    bells.inbox._rung.clear()
    lanes = Lanes(store, bells, handling.handle, handling.on_parked)
    running = asyncio.create_task(lanes.run())
    await eventually(lambda: handling.done == ["left", "behind"])
    lanes.stop()
    await running


async def test_stopping_finishes_what_was_begun_and_begins_nothing(handling, put, store, bells, tables):
    gate = handling.gates["begun"] = asyncio.Event()
    lanes = Lanes(store, bells, handling.handle, handling.on_parked)
    running = asyncio.create_task(lanes.run())
    await put(ILSE, "begun", "later")
    await eventually(lambda: handling.tried == ["begun"])
    lanes.stop()
    gate.set()
    await running
    assert tables.states("inbox") == ["done", "waiting"]
