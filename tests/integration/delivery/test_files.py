"""A letter may carry a file: stored before it is sent, with the same ends as any other."""

from datetime import timedelta

import pytest_asyncio

from bot.rehearsal import errors
from core.store.records import LetterFile
from tests.support.durable import eventually

SCORES = LetterFile(name="scores.csv", content=b"name,score\r\nIlse,7+12\r\n")


class Carrying:
    """Puts letters with a file into the outbox."""

    def __init__(self, post):
        self._post = post

    async def file(self, address, **details):
        payload = {"caption": "<b>Scores</b>", "parse_mode": "HTML"}
        return await self._post.letter(
            address, method="send_document", payload=payload, file=SCORES, **details
        )


@pytest_asyncio.fixture
async def carrying(post):
    return Carrying(post)


def kept(tables):
    return tables.rows("SELECT name, content FROM file")


async def test_a_file_is_stored_before_it_is_sent_and_let_go_after(running, carrying, ilse, tables):
    await carrying.file(ilse.id)
    assert kept(tables) == [("scores.csv", SCORES.content)]
    await running.sender()
    seen = await ilse.hears("Scores")
    assert (seen.file.name, await ilse.downloads(seen)) == ("scores.csv", SCORES.content)
    await eventually(lambda: tables.states("outbox") == ["sent"])
    assert kept(tables) == []


async def test_a_file_whose_answer_was_lost_is_sent_once_more(running, carrying, ilse, room, tables):
    await room.faults.lose_answer("sendDocument")
    await carrying.file(ilse.id)
    await room.lets_time_run()
    await running.sender()
    await eventually(lambda: tables.states("outbox") == ["sent"])
    assert [one.kind for one in await ilse.messages if one.from_bot] == ["document", "document"]
    assert kept(tables) == []


async def test_a_file_that_came_too_fast_is_kept_until_it_may_go(running, carrying, ilse, room, tables):
    await room.faults.decline("sendDocument", errors.too_many_requests(3))
    await carrying.file(ilse.id)
    await running.sender()
    await eventually(lambda: tables.column("SELECT outcome FROM attempt") == ["not_sent"])
    assert len(kept(tables)) == 1
    await room.travels(timedelta(seconds=3.1))
    await ilse.hears("Scores")


async def test_a_file_that_nobody_takes_is_kept_to_be_tried_anew(
    running, carrying, ilse, tables, store, bells, platform
):
    await ilse.blocks_bot()
    letter = await carrying.file(ilse.id)
    await running.sender()
    await eventually(lambda: tables.states("outbox") == ["refused"])
    await ilse.unblocks_bot()
    async with store.unit() as unit:
        assert await unit.undelivered.replay() == [letter]
        chat = await unit.chats.by_address(ilse.id)
        await unit.chats.mark_reachable(chat.id, yes=True, now=platform.clock.now())
    bells.outbox.ring()
    seen = await ilse.hears("Scores")
    assert await ilse.downloads(seen) == SCORES.content
    await eventually(lambda: kept(tables) == [])


async def test_a_file_that_nobody_took_is_let_go_in_time_and_then_its_letter_is_not_tried_anew(
    running, carrying, ilse, tables, store, platform
):
    await ilse.blocks_bot()
    await carrying.file(ilse.id)
    await running.sender()
    await eventually(lambda: tables.states("outbox") == ["refused"])
    async with store.unit() as unit:
        await unit.keeping.let_go(platform.clock.now() + timedelta(days=1))
    assert kept(tables) == []
    async with store.unit() as unit:
        assert await unit.undelivered.replay() == []


async def test_a_file_that_expired_unsent_is_let_go_at_the_next_start(
    running, carrying, ilse, platform, tables, room
):
    await carrying.file(ilse.id, expires_at=platform.clock.now() + timedelta(minutes=1))
    await room.travels(timedelta(minutes=2))
    sender = await running.sender()
    await eventually(lambda: tables.states("outbox") == ["dropped"])
    await running.stop(sender)
    await running.sender()
    await eventually(lambda: kept(tables) == [])


async def test_what_was_said_is_not_kept_once_it_was_sent(running, post, ilse, tables):
    await post.letter(ilse.id, "just between us")
    await running.sender()
    await eventually(lambda: tables.states("outbox") == ["sent"])
    assert tables.column("SELECT payload FROM outbox") == ["{}"]
