import asyncio

import pytest
import pytest_asyncio
from telegram import InputFile
from telegram.error import BadRequest, NetworkError, TelegramError

from bot.delivery.verdicts import NotSent, NotTaken, TooFast, Unknown, judge
from bot.rehearsal import errors
from bot.rehearsal.platform import TOKEN
from bot.telegram.api import call, make_bot
from bot.telegram.transport import Transport
from tests.soak.line import line_to


@pytest_asyncio.fixture
async def remote_bot(address):
    async with make_bot(TOKEN, address) as found:
        yield found


@pytest_asyncio.fixture
async def ilse(room):
    person = await room.person("Ilse")
    await person.opens(await room.start_link())
    return person


async def send(bot, person, text="hello", **details):
    return await call(bot, "send_message", {"chat_id": person.id, "text": text}, **details)


async def test_a_call_arrives_with_every_letter(remote_bot, ilse):
    text = "Ærø & 东京 <3 🏋️ =?&+%\n10"
    answer = await send(remote_bot, ilse, text)
    assert (await ilse.hears(text)).message_id == answer["message_id"]


async def test_a_keyboard_arrives_as_it_is(remote_bot, ilse):
    keyboard = {"inline_keyboard": [[{"text": "Yes", "callback_data": "yes"}]]}
    params = {"chat_id": ilse.id, "text": "Well?", "reply_markup": keyboard}
    await call(remote_bot, "send_message", params)
    assert (await ilse.hears("Well?")).labels == ["Yes"]


async def test_the_platform_s_refusal_is_told(remote_bot, ilse):
    with pytest.raises(BadRequest, match="empty"):
        await send(remote_bot, ilse, "")


async def test_silence_asked_for_is_told(remote_bot, room, ilse):
    await room.faults.decline("sendMessage", errors.too_many_requests(3))
    verdict = await verdict_on(send(remote_bot, ilse))
    assert isinstance(verdict, TooFast)
    assert verdict.wait.total_seconds() == 3


async def test_where_nobody_listens_nothing_was_sent(ilse, unused_tcp_port):
    async with Transport(1.0) as transport:
        with pytest.raises(NetworkError) as caught:
            await transport.do_request(f"http://127.0.0.1:{unused_tcp_port}/", "POST")
    assert isinstance(judge(caught.value), NotSent)


async def test_an_answer_that_does_not_come_leaves_its_fate_unknown(remote_bot, room, ilse):
    await room.faults.lose_answer("sendMessage")
    verdict = await verdict_on(send(remote_bot, ilse, read_timeout=0.2))
    assert isinstance(verdict, Unknown)
    await ilse.hears("hello")


async def test_a_connection_that_breaks_leaves_its_fate_unknown():
    async def hang_up(_reader, writer):
        writer.close()
        await writer.wait_closed()

    async with await asyncio.start_server(hang_up, "127.0.0.1", 0) as server, Transport(1.0) as transport:
        port = server.sockets[0].getsockname()[1]
        with pytest.raises(NetworkError) as caught:
            await transport.do_request(f"http://127.0.0.1:{port}/", "POST")
    assert isinstance(judge(caught.value), Unknown)


async def test_a_file_is_uploaded_with_its_name():
    received: asyncio.Queue[bytes] = asyncio.Queue()

    async def take(reader, writer):
        head = await reader.readuntil(b"\r\n\r\n")
        length = int(head.lower().split(b"content-length:")[1].split(b"\r\n")[0])
        await received.put(await reader.readexactly(length))
        writer.write(b'HTTP/1.1 200 OK\r\nContent-Length: 26\r\n\r\n{"ok": true, "result": {}}')
        await writer.drain()
        writer.close()
        await writer.wait_closed()

    async with await asyncio.start_server(take, "127.0.0.1", 0) as server:
        port = server.sockets[0].getsockname()[1]
        bot = make_bot(TOKEN, f"http://127.0.0.1:{port}")
        await bot._request[1].initialize()
        plan = InputFile(b"BEGIN:VCALENDAR", filename="class.ics")
        await call(bot, "send_document", {"chat_id": 1, "document": plan, "caption": "Tuesday"})
        await bot._request[1].shutdown()
        server.close()
    body = await received.get()
    assert b'filename="class.ics"' in body
    assert b"BEGIN:VCALENDAR" in body
    assert b"Tuesday" in body


async def test_a_transport_can_be_closed_and_opened_again(address):
    transport = Transport(1.0)
    for _ in range(2):
        async with transport:
            status, _ = await transport.do_request(f"{address}/bot{TOKEN}/getMe", "POST")
            assert status == 200


async def verdict_on(sending):
    with pytest.raises(TelegramError) as caught:
        await sending
    return judge(caught.value)


async def test_a_gateways_own_page_is_a_failure_of_the_platform_and_no_traceback(platform, address, caplog):
    async with line_to(address) as line, make_bot(TOKEN, f"http://127.0.0.1:{line.port}") as bot:
        await line.becomes("fails")
        verdict = await verdict_on(call(bot, "get_me", {}))
    assert isinstance(verdict, NotTaken)
    assert "Traceback" not in caplog.text


async def test_over_a_line_that_drops_nobody_knows_what_arrived(platform, address):
    async with line_to(address) as line, make_bot(TOKEN, f"http://127.0.0.1:{line.port}") as bot:
        await line.becomes("drops")
        assert isinstance(await verdict_on(call(bot, "get_me", {})), Unknown)
        await line.becomes("refuses")
        assert isinstance(await verdict_on(call(bot, "get_me", {})), NotSent)
