"""How a bot hears of things: long polls, offsets, kinds, redelivery."""

import asyncio

import pytest
from telegram.error import Conflict

from tests.transports import twin_of


async def ids(bot, **how):
    return [update.update_id for update in await bot.get_updates(timeout=0, **how)]


async def test_a_poll_waits_for_the_next_update_and_blocks_no_other_call(both):
    bot, room = both
    ilse = await room.person("Ilse")
    poll = asyncio.create_task(bot.get_updates(timeout=30))
    assert (await bot.get_me()).username == "bellwether_bot"
    assert not poll.done()
    await ilse.says("hello")
    [update] = await asyncio.wait_for(poll, timeout=5)
    assert update.message.text == "hello"


async def test_a_poll_with_nothing_to_tell_ends_empty(both):
    bot, _ = both
    assert await bot.get_updates(timeout=1) == ()


async def test_an_update_comes_again_until_a_later_offset_confirms_it(both):
    bot, room = both
    ilse = await room.person("Ilse")
    await ilse.says("one")
    await ilse.says("two")
    first, second = await ids(bot)
    assert await ids(bot) == [first, second]
    assert await ids(bot, offset=first) == [first, second]
    assert await room.waiting_updates() == 2
    assert await ids(bot, offset=first + 1) == [second]
    assert await ids(bot, offset=second + 1) == []
    assert await ids(bot, offset=0) == []


async def test_a_negative_offset_forgets_all_but_the_last(both):
    bot, room = both
    ilse = await room.person("Ilse")
    for number in range(4):
        await ilse.says(f"message {number}")
    every = await ids(bot)
    assert await ids(bot, offset=-2) == every[-2:]
    assert await ids(bot) == every[-2:]
    assert await ids(bot, offset=-9) == every[-2:]


@pytest.mark.parametrize(("limit", "expected"), [(2, 2), (100, 100), (0, 100), (500, 100), (None, 100)])
async def test_at_most_a_hundred_updates_come_at_once(bot, room, limit, expected):
    ilse = await room.person("Ilse")
    for number in range(105):
        await ilse.says(f"message {number}")
    assert len(await ids(bot, limit=limit)) == expected


async def test_a_second_poller_ends_the_first(both, platform):
    bot, room = both
    first = asyncio.create_task(bot.get_updates(timeout=30))
    async with twin_of(bot, platform) as twin:
        second = asyncio.create_task(twin.get_updates(timeout=30))
        with pytest.raises(Conflict, match="terminated by other getUpdates request"):
            await asyncio.wait_for(first, timeout=5)
        await (await room.person("Ilse")).says("hello")
        assert len(await asyncio.wait_for(second, timeout=5)) == 1


async def test_only_the_kinds_that_were_asked_for_come_from_then_on(bot, room):
    ilse = await room.person("Ilse")
    await ilse.says("asked before")
    await bot.get_updates(timeout=0, allowed_updates=["my_chat_member"])
    await ilse.says("not wanted")
    await ilse.blocks_bot()
    before, after = await bot.get_updates(timeout=0)
    assert before.message.text == "asked before"
    assert after.my_chat_member.new_chat_member.status == "kicked"


async def test_changes_of_members_must_be_asked_for_and_need_an_admin(bot, room):
    coach, ilse, tomas = [await room.person(name) for name in ("Coach", "Ilse", "Tomas")]
    group = await room.group("Harbour crew", admins=[coach])
    await coach.adds_bot(group)
    await ilse.joins(group)
    await bot.get_updates(timeout=0, allowed_updates=["chat_member", "my_chat_member"])
    await tomas.joins(group)
    await coach.promotes_bot(group)
    await ilse.leaves(group)
    await coach.removes(tomas, from_=group)
    kinds = [
        update for update in await bot.get_updates(timeout=0) if update.chat_member or update.my_chat_member
    ]
    told = [update.chat_member or update.my_chat_member for update in kinds]
    assert [(one.old_chat_member.status, one.new_chat_member.status) for one in told] == [
        ("left", "member"),
        ("member", "administrator"),
        ("member", "left"),
        ("member", "kicked"),
    ]


async def test_pending_updates_are_counted_and_dropped_only_on_demand(bot, room):
    await (await room.person("Ilse")).says("hello")
    assert (await bot.get_webhook_info()).pending_update_count == 1
    await bot.delete_webhook()
    assert (await bot.get_webhook_info()).pending_update_count == 1
    await bot.delete_webhook(drop_pending_updates=True)
    assert (await bot.get_webhook_info()).pending_update_count == 0
