"""The room in a browser, as far as a browser's requests can tell."""

import asyncio
import re

import httpx
import pytest_asyncio


@pytest_asyncio.fixture
async def browser(address):
    async with httpx.AsyncClient(base_url=address, trust_env=False) as found:
        yield found


async def act(browser, name, **details):
    answer = await browser.post(f"/rehearsal/{name}", json=details)
    assert answer.status_code == 200, answer.text
    return answer.json()["result"]


async def test_the_page_brings_all_it_needs_and_nothing_from_elsewhere(browser):
    page = await browser.get("/")
    assert page.status_code == 200
    assert page.headers["content-type"].startswith("text/html")
    assert page.headers["content-security-policy"] == "default-src 'self'"
    parts = re.findall(r'(?:src|href)="([^"]+)"', page.text)
    assert set(parts) == {"/room/room.css", "/room/room.js"}
    bodies = [page.text]
    for part in (*parts, "/room/drawing.js", "/room/clock.js"):
        answer = await browser.get(part)
        assert answer.status_code == 200, part
        bodies.append(answer.text)
    assert not re.search(r"https?://|innerHTML", "".join(bodies))


async def test_only_the_pages_own_parts_are_served(browser):
    for path in ("/room/__init__.py", "/room/..%2facts.py", "/nothing"):
        assert (await browser.get(path)).status_code == 404


async def test_every_act_that_the_page_does_is_one(browser):
    script = (await browser.get("/room/room.js")).text
    for name in set(re.findall(r'act\("(\w+)"', script)):
        answer = await browser.post(f"/rehearsal/{name}", json={})
        assert "no such act" not in answer.text, name


async def test_it_shows_who_can_write_where(browser, room):
    coach, ilse = await room.person("Marit"), await room.person("Ilse")
    group = await room.group("Harbour crew", admins=[coach], members=[ilse])
    marit, other = {"id": coach.id, "name": "Marit"}, {"id": ilse.id, "name": "Ilse"}
    assert await act(browser, "cast") == [
        {"id": group.id, "label": "Harbour crew", "people": [marit, other]},
        {"id": coach.id, "label": "Marit", "people": [marit]},
        {"id": ilse.id, "label": "Ilse", "people": [other]},
    ]


async def test_it_hears_at_once_of_what_happens(browser, room):
    ilse = await room.person("Ilse")
    waiting = asyncio.create_task(act(browser, "transcript", place=0, within=10))
    await asyncio.sleep(0.05)
    await act(browser, "say", person=ilse.id, chat=ilse.id, text="hello", reply_to=None)
    [happening] = await waiting
    assert (happening["kind"], happening["message"]["text"]) == ("message", "hello")
    assert await act(browser, "transcript", place=1, within=0) == []


async def test_a_page_of_another_address_can_not_act_unasked(browser):
    headers = {"content-type": "text/plain"}
    answer = await browser.post("/rehearsal/travel", content='{"seconds": 60}', headers=headers)
    assert answer.status_code == 415
