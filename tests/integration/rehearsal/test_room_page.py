"""The room in a browser, as far as a browser's requests can tell."""

import json
import re
from pathlib import Path

import httpx
import pytest_asyncio

import bot.rehearsal.room

PARTS = [one for one in Path(bot.rehearsal.room.__file__).parent.iterdir() if one.suffix in (".js", ".css")]


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
    assert page.headers["content-security-policy"].startswith("default-src 'none'; script-src 'self';")
    bodies = {"/": page.text}
    wanted = set(re.findall(r'(?:src|href)="(/[^"]+)"', page.text))
    while wanted:
        part = wanted.pop()
        answer = await browser.get(part)
        assert answer.status_code == 200, part
        bodies[part] = answer.text
        wanted |= {f"/room/{name}" for name in re.findall(r'from "\./(\w+\.js)"', answer.text)} - set(bodies)
    assert {f"/room/{one.name}" for one in PARTS} == set(bodies) - {"/"}
    for part, body in bodies.items():
        assert not re.search(r"https?://(?!t\.me/)|innerHTML|style=", body), part


async def test_only_the_pages_own_parts_are_served(browser):
    for path in ("/room/__init__.py", "/room/feed.py", "/room/..%2facts.py", "/nothing"):
        assert (await browser.get(path)).status_code == 404


async def test_every_act_that_the_page_does_is_one(browser):
    scripts = "".join(one.read_text() for one in PARTS if one.suffix == ".js")
    acts = set(re.findall(r'\bact\("(\w+)"', scripts))
    acts |= set(re.findall(r'\b(?:doing|does)\(.*?, "([a-z_]+)", ', scripts))
    assert len(acts) > 15
    for name in acts:
        answer = await browser.post(f"/rehearsal/{name}", json={})
        assert "no such act" not in answer.text, name


async def test_it_knows_everybody_and_their_standing(browser, room):
    coach, ilse = await room.person("Marit"), await room.person("Ilse", about="two 10s")
    group = await room.group("Harbour crew", admins=[coach], members=[ilse])
    await ilse.says("hello")
    await ilse.blocks_bot()
    cast = await act(browser, "cast")
    assert cast["people"] == [
        {"id": coach.id, "name": "Marit", "about": "", "blocked": False},
        {"id": ilse.id, "name": "Ilse", "about": "two 10s", "blocked": True},
    ]
    assert cast["groups"] == [
        {
            "id": group.id,
            "label": "Harbour crew",
            "members": {str(coach.id): "creator", str(ilse.id): "member"},
        }
    ]


async def test_the_feed_tells_at_once_and_goes_on_where_it_broke_off(browser, room):
    ilse = await room.person("Ilse")
    await ilse.says("hello")
    async with browser.stream("GET", "/room/feed") as answer:
        assert answer.headers["content-type"].startswith("text/event-stream")
        events = told(answer)
        assert {name for name, _, _ in [await anext(events) for _ in range(4)]} == {
            "room", "cast", "clock", "scenes",
        }  # fmt: skip
        name, place, happened = await anext(events)
        assert (name, place, [one["message"]["text"] for one in happened]) == ("happened", "1", ["hello"])
        await ilse.says("again")
        name, place, happened = await anext(events)
        assert (place, happened[0]["person"]) == ("2", ilse.id)
    async with browser.stream("GET", "/room/feed", headers={"last-event-id": "2"}) as answer:
        events = told(answer)
        for _ in range(4):
            await anext(events)
        await ilse.says("third")
        assert [one["message"]["text"] for one in (await anext(events))[2]] == ["third"]


async def told(answer):
    """The events of a feed: name, id, document."""
    event = {}
    async for line in answer.aiter_lines():
        if line:
            field, _, value = line.partition(": ")
            event[field] = value
        else:
            yield event["event"], event.get("id"), json.loads(event["data"])
            event = {}


async def test_a_file_that_somebody_sent_is_shown_or_saved_by_its_kind(browser, room):
    ilse = await room.person("Ilse")
    photo, voice = await ilse.sends_photo(), await ilse.sends_voice()
    page = await ilse.sends_file("evil.html", b"<script>alert(1)</script>")
    for message, kind, how in (
        (photo, "image/png", "inline"),
        (voice, "audio/ogg", "inline"),
        (page, "application/octet-stream", "attachment"),
    ):
        answer = await browser.get(f"/room/file/{message.file.id}")
        assert answer.headers["content-type"] == kind
        assert answer.headers["content-disposition"].startswith(how)
        assert answer.headers["x-content-type-options"] == "nosniff"
    assert (await browser.get("/room/file/none")).status_code == 404
    part = await browser.get(f"/room/file/{page.file.id}", headers={"range": "bytes=1-6"})
    assert (part.status_code, part.content, part.headers["content-range"]) == (206, b"script", "bytes 1-6/25")


async def test_a_page_of_another_address_can_not_act_unasked(browser):
    headers = {"content-type": "text/plain"}
    answer = await browser.post("/rehearsal/travel", content='{"seconds": 60}', headers=headers)
    assert answer.status_code == 415
