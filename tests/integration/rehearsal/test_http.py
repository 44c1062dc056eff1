"""The Bot API over HTTP, whatever way a library sends its parameters."""

import asyncio
import json
import sys

import httpx
import pytest_asyncio

from bot.rehearsal.platform import TOKEN
from bot.rehearsal.server import serving

KEYBOARD = {"inline_keyboard": [[{"text": "Go", "callback_data": "g"}]]}


@pytest_asyncio.fixture
async def client(address):
    async with httpx.AsyncClient(base_url=f"{address}/bot{TOKEN}/", trust_env=False) as found:
        yield found


@pytest_asyncio.fixture
async def ilse(room):
    person = await room.person("Ilse")
    await person.says("hello")
    return person


async def test_parameters_may_come_as_json_form_multipart_or_in_the_address(client, ilse):
    plain = {"chat_id": str(ilse.id), "text": "[1] & é", "reply_markup": json.dumps(KEYBOARD)}
    await client.post("sendMessage", json={"chat_id": ilse.id, "text": "[1] & é", "reply_markup": KEYBOARD})
    await client.post("sendMessage", data=plain)
    await client.post("sendMessage", files={name: (None, value) for name, value in plain.items()})
    await client.get("sendMessage", params=plain)
    await client.post("SENDMESSAGE", data=plain)
    assert [(one.text, one.labels) for one in await ilse.messages][1:] == [("[1] & é", ["Go"])] * 5


async def test_errors_carry_code_and_description_in_status_and_body(client, ilse):
    response = await client.post("sendMessage", json={"chat_id": ilse.id, "text": ""})
    assert response.status_code == 400
    assert response.json() == {
        "ok": False,
        "error_code": 400,
        "description": "Bad Request: message text is empty",
    }


async def test_broken_bodies_are_refused(client, ilse):
    headers = {"content-type": "application/json"}
    response = await client.post("sendMessage", content=b"{", headers=headers)
    assert response.status_code == 400
    response = await client.post("sendMessage", data={"chat_id": ilse.id, "text": "hi", "reply_markup": "{"})
    assert response.json()["description"] == "Bad Request: can't parse reply_markup JSON object"


async def test_a_wrong_token_is_unauthorized(address):
    async with httpx.AsyncClient(trust_env=False) as client:
        response = await client.get(f"{address}/bot1:wrong/getMe")
    assert (response.status_code, response.json()["description"]) == (401, "Unauthorized")


async def test_an_unknown_method_is_not_found(client, platform):
    assert (await client.get("noSuchThing")).status_code == 404
    assert platform.complaints == ["unknown method: noSuchThing"]
    platform.complaints.clear()


async def test_a_poller_that_went_away_swallows_nothing(client, ilse):
    before = (await client.get("getUpdates")).json()["result"][-1]["update_id"]
    poll = asyncio.create_task(client.get("getUpdates", params={"timeout": 30, "offset": before + 1}))
    await asyncio.sleep(0.05)
    poll.cancel()
    await ilse.says("still here?")
    found = (await client.get("getUpdates", params={"timeout": 1})).json()["result"]
    assert [update["message"]["text"] for update in found] == ["still here?"]


async def test_it_runs_as_a_process_of_its_own_until_interrupted():
    process = await asyncio.create_subprocess_exec(
        sys.executable, "-m", "bot.rehearsal", stdout=asyncio.subprocess.PIPE
    )
    assert process.stdout is not None
    address = (await asyncio.wait_for(process.stdout.readline(), timeout=30)).decode().strip()
    async with httpx.AsyncClient(trust_env=False) as client:
        assert (await client.get(f"{address}/bot{TOKEN}/getMe")).json()["ok"]
    process.terminate()
    assert await asyncio.wait_for(process.wait(), timeout=10) == 0


async def test_an_open_poll_does_not_keep_the_server_from_stopping(platform):
    async with httpx.AsyncClient(trust_env=False) as client:
        async with serving(platform) as address:
            poll = asyncio.create_task(client.get(f"{address}/bot{TOKEN}/getUpdates", params={"timeout": 50}))
            await asyncio.sleep(0.1)
        await asyncio.wait([poll], timeout=5)
        assert poll.done()
        poll.exception()
