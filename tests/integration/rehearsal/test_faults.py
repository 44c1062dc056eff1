"""Troubles on demand, and the limits on speed."""

from datetime import timedelta

import httpx
import pytest
from telegram import Bot
from telegram.error import BadRequest, Forbidden, NetworkError, RetryAfter, TimedOut
from telegram.request import HTTPXRequest

from bot.rehearsal.errors import forbidden, not_modified, too_many_requests
from bot.rehearsal.platform import TOKEN
from bot.rehearsal.rates import BURST_PER_CHAT


@pytest.fixture
async def ilse(room):
    person = await room.person("Ilse")
    await person.says("hello")
    return person


async def test_the_next_calls_are_declined_and_later_ones_are_not(both):
    bot, room = both
    ilse = await room.person("Ilse")
    await ilse.says("hello")
    await room.faults.decline("sendMessage", too_many_requests(3), times=2)
    for _ in range(2):
        with pytest.raises(RetryAfter) as refused:
            await bot.send_message(ilse.id, "hi")
        assert refused.value._retry_after == timedelta(seconds=3)
    assert await room.faults.pending() == 0
    await bot.send_message(ilse.id, "hi at last")
    assert [message.text for message in await ilse.messages] == ["hello", "hi at last"]


async def test_a_fault_can_wait_for_one_chat(bot, room, ilse):
    tomas = await room.person("Tomas")
    await tomas.says("hello")
    await room.faults.decline("sendMessage", forbidden("bot was blocked by the user"), to=tomas)
    await bot.send_message(ilse.id, "hi")
    with pytest.raises(Forbidden, match="blocked"):
        await bot.send_message(tomas.id, "hi")


async def test_a_fault_for_every_method_spares_the_poll(bot, room, ilse):
    await room.faults.decline("*", not_modified())
    assert len(await bot.get_updates(timeout=0)) == 1
    with pytest.raises(BadRequest, match="Message is not modified"):
        await bot.get_me()


@pytest.mark.parametrize(
    ("seeming", "cause"),
    [
        ("connect timeout", httpx.ConnectTimeout),
        ("pool timeout", httpx.PoolTimeout),
        ("read timeout", httpx.ReadTimeout),
    ],
)
async def test_a_lost_request_did_nothing(bot, room, ilse, seeming, cause):
    await room.faults.lose_request("sendMessage", seeming=seeming)
    with pytest.raises(TimedOut) as lost:
        await bot.send_message(ilse.id, "hi")
    assert isinstance(lost.value.__cause__, cause)
    await ilse.hears_nothing(for_=0)


async def test_a_failed_connection_is_a_network_error_and_did_nothing(bot, room, ilse):
    await room.faults.lose_request("sendMessage", seeming="connect error")
    with pytest.raises(NetworkError) as lost:
        await bot.send_message(ilse.id, "hi")
    assert isinstance(lost.value.__cause__, httpx.ConnectError)
    await ilse.hears_nothing(for_=0)


async def test_a_lost_answer_hides_what_happened(bot, room, ilse):
    await room.faults.lose_answer("sendMessage")
    with pytest.raises(TimedOut) as lost:
        await bot.send_message(ilse.id, "hi")
    assert isinstance(lost.value.__cause__, httpx.ReadTimeout)
    await ilse.hears("hi")


async def test_a_bad_gateway_tells_nothing_either_way(both):
    bot, room = both
    ilse = await room.person("Ilse")
    await ilse.says("hello")
    await room.faults.lose_answer("sendMessage", seeming="bad gateway")
    with pytest.raises(NetworkError, match="Bad Gateway"):
        await bot.send_message(ilse.id, "hi")
    await ilse.hears("hi")
    await room.faults.lose_request("sendMessage", seeming="bad gateway")
    with pytest.raises(NetworkError, match="Bad Gateway"):
        await bot.send_message(ilse.id, "hi again")
    await ilse.hears_nothing(for_=0.05)


@pytest.mark.parametrize("takes_effect", [True, False])
async def test_over_http_the_bot_waits_in_vain(address, remote_room, takes_effect):
    ilse = await remote_room.person("Ilse")
    await ilse.says("hello")
    lose = remote_room.faults.lose_answer if takes_effect else remote_room.faults.lose_request
    await lose("sendMessage")
    async with Bot(TOKEN, f"{address}/bot", request=HTTPXRequest(read_timeout=0.3)) as impatient:
        with pytest.raises(TimedOut) as lost:
            await impatient.send_message(ilse.id, "hi")
    assert isinstance(lost.value.__cause__, httpx.ReadTimeout)
    assert len(await ilse.messages) == (2 if takes_effect else 1)


async def test_nothing_is_limited_until_asked_for(bot, ilse):
    for number in range(40):
        await bot.send_message(ilse.id, str(number))


async def test_a_chat_takes_one_message_a_second_after_a_short_burst(bot, room, ilse):
    await room.faults.enforce_rates()
    for number in range(BURST_PER_CHAT):
        await bot.send_message(ilse.id, str(number))
    with pytest.raises(RetryAfter) as refused:
        await bot.send_message(ilse.id, "too fast")
    await room.travels(refused.value._retry_after)
    await bot.send_message(ilse.id, "patient")
    assert (await ilse.last_message).text == "patient"


async def test_a_group_takes_twenty_messages_a_minute(bot, room):
    coach = await room.person("Coach")
    group = await room.group("Harbour crew", admins=[coach])
    await coach.adds_bot(group)
    await room.faults.enforce_rates()
    for number in range(20):
        await bot.send_message(group.id, str(number))
        await room.travels(timedelta(seconds=1))
    with pytest.raises(RetryAfter) as refused:
        await bot.send_message(group.id, "too many")
    assert refused.value._retry_after == timedelta(seconds=40)
    await room.travels(timedelta(seconds=40))
    await bot.send_message(group.id, "patient")


async def test_a_bot_sends_thirty_messages_a_second_in_all(bot, room):
    people = [await room.person(f"Athlete {number}") for number in range(31)]
    for person in people:
        await person.says("hello")
    await room.faults.enforce_rates()
    for person in people[:30]:
        await bot.send_message(person.id, "hi")
    with pytest.raises(RetryAfter):
        await bot.send_message(people[30].id, "hi")
    await room.travels(timedelta(seconds=1))
    await bot.send_message(people[30].id, "hi")
