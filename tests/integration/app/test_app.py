import asyncio

import httpx
import pytest
import pytest_asyncio
from telegram.error import InvalidToken

from bot.bootstrap import build
from bot.rehearsal.platform import TOKEN
from bot.settings import Settings
from bot.telegram.receiver import what_is_wrong
from core.errors import InputError
from core.store.records import LetterState
from tests.support.durable import Tables, eventually
from tests.support.echo import echo_conduct
from tests.support.in_process import InProcessRequest


@pytest.fixture
def settings(tmp_path):
    return Settings(
        _env_file=None,
        token=TOKEN,
        api_url="http://rehearsal.invalid",
        database=str(tmp_path / "bot.db"),
        listen="127.0.0.1:0",
    )


def make_app(settings, platform, conduct=echo_conduct):
    return build(settings, conduct, clock=platform.clock, request=InProcessRequest(platform))


@pytest_asyncio.fixture
async def app(settings, platform):
    found = make_app(settings, platform)
    await found.start()
    yield found
    await found.stop()


async def get(app, path):
    async with httpx.AsyncClient(trust_env=False) as client:
        return await client.get(f"http://127.0.0.1:{app.port}{path}")


async def test_what_is_said_is_answered(app, room):
    ilse = await room.person("Ilse")
    await ilse.opens(await room.start_link())
    await ilse.says("good morning")
    assert (await ilse.hears("good morning")).text == "good morning"


async def test_what_came_while_it_was_down_is_answered_after_the_start(settings, platform, room):
    ilse = await room.person("Ilse")
    await ilse.opens(await room.start_link())
    await ilse.says("anybody there?")
    app = make_app(settings, platform)
    await app.start()
    await ilse.hears("anybody there?")
    await app.stop()


async def test_stopping_leaves_nothing_half_done(settings, platform, room):
    app = make_app(settings, platform)
    await app.start()
    ilse = await room.person("Ilse")
    await ilse.opens(await room.start_link())
    await ilse.hears("/start")
    await app.stop()
    tables = Tables(settings.database)
    assert tables.states("inbox") == ["done"]
    assert tables.states("outbox") == ["sent"]
    assert tables.column("SELECT outcome FROM attempt") == ["sent"]


async def test_a_bot_that_runs_is_healthy(app):
    answer = await get(app, "/health")
    told = answer.json()
    assert (answer.status_code, told["status"]) == (200, "ok")
    assert told["updates_put_aside"] == told["letters_given_up"] == told["oldest_letter_s"] == 0


async def test_health_says_that_the_token_is_taken_no_more(app):
    app.pulse.trouble = what_is_wrong(InvalidToken())
    answer = await get(app, "/health")
    assert answer.status_code == 503
    assert "BELLWETHER_TOKEN" in answer.json()["status"]


class BrokenClockError(Exception):
    pass


@pytest.fixture
def break_the_dues(platform, monkeypatch):
    """Let the loop that waits for dues fail at its next wait."""

    sleep_until = platform.clock.sleep_until

    async def break_down(moment):
        if moment.year >= 2030:
            raise BrokenClockError
        await sleep_until(moment)

    async def do(app):
        monkeypatch.setattr(platform.clock, "sleep_until", break_down)
        async with app.store.unit() as unit:
            await unit.dues.add("far", "none", platform.clock.now().replace(year=2030), {})
        app.bells.dues.ring()

    return do


async def test_a_bot_with_a_dead_part_is_unwell(app, break_the_dues):
    await break_the_dues(app)
    await asyncio.sleep(0.1)
    answer = await get(app, "/health")
    assert (answer.status_code, answer.json()["status"]) == (503, "Dues ended")


async def test_a_bot_with_a_dead_part_ends_loudly(settings, platform, break_the_dues):
    app = make_app(settings, platform)
    running = asyncio.create_task(app.run())
    await eventually(lambda: app.port)
    await break_the_dues(app)
    with pytest.raises(BrokenClockError):
        await running


async def test_metrics_count_what_waits_and_what_was_sent(app, room, settings):
    ilse = await room.person("Ilse")
    await ilse.opens(await room.start_link())
    await ilse.hears("/start")
    await eventually(lambda: Tables(settings.database).states("outbox") == ["sent"])
    lines = (await get(app, "/metrics")).text.splitlines()
    assert 'bellwether_inbox{state="waiting"} 0' in lines
    assert 'bellwether_sends_total{verdict="sent"} 1' in lines
    assert f'bellwether_outbox{{state="{LetterState.SENT}"}} 1' in lines


async def test_a_token_that_the_platform_does_not_know_is_named_and_not_shown(settings, platform):
    wrong = settings.model_copy(update={"token": type(settings.token)("123:wrong")})
    app = make_app(wrong, platform)
    with pytest.raises(InputError, match="BELLWETHER_TOKEN") as caught:
        await app.run()
    assert "123:wrong" not in str(caught.value)
