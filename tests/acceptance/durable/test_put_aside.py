"""What can't be handled or worked out is put aside: whom it concerns is told, and nobody else is held up."""

import pytest_asyncio

from bot.bootstrap import build
from bot.telegram import dispatch
from core.desk.sessions import landing
from core.desk.versions import version
from tests.acceptance.people import answers_what_is_asked
from tests.support.in_process import InProcessRequest


def fails_for(name, of):
    """A reckoning that isn't ready for what is stored about this person."""

    def reckon(*given, **more):
        if any(getattr(one, "name", None) == name for one in given):
            raise ZeroDivisionError
        return of(*given, **more)

    return reckon


class Owned:
    """The running bot, with somebody who runs it."""

    def __init__(self, room, owner):
        self.room = room
        self.owner = owner


@pytest_asyncio.fixture
async def owned(platform, settings, room):
    owner = await room.person("Odd")
    mine = settings.model_copy(update={"owner": owner.id})
    app = build(mine, clock=platform.clock, request=InProcessRequest(platform))
    await app.start()
    yield Owned(room, owner)
    await app.stop()


def _breaks_on(words, understand):
    def broken(heard):
        if heard.text == words:
            raise KeyError(words)
        return understand(heard)

    return broken


async def test_whoever_runs_it_hears_of_an_update_that_was_put_aside(owned, monkeypatch):
    monkeypatch.setattr(dispatch, "understand", _breaks_on("boom", dispatch.understand))
    ilse = await owned.room.person("Ilse")
    for person in (owned.owner, ilse):
        await person.opens(await owned.room.start_link())
        await person.hears("Hello")

    await ilse.says("boom")

    told = await owned.owner.hears("I couldn't handle update")
    assert "bellwether parked" in told.text
    assert "boom" not in told.text
    await ilse.hears("Something went wrong on my side")
    await ilse.says("/help")
    await ilse.hears("Hello")


async def test_many_that_are_put_aside_are_one_word_to_whoever_runs_it(owned, monkeypatch):
    monkeypatch.setattr(dispatch, "understand", _breaks_on("boom", dispatch.understand))
    ilse = await owned.room.person("Ilse")
    for person in (owned.owner, ilse):
        await person.opens(await owned.room.start_link())
        await person.hears("Hello")

    for _ in range(2):
        await ilse.says("boom")
        await ilse.hears("Something went wrong on my side")

    await owned.owner.hears("I couldn't handle update")
    await owned.owner.hears_nothing()


async def test_nobody_whose_data_does_not_add_up_holds_up_their_coach(crew, monkeypatch, ilse, bo, posted):
    for person in (ilse, bo):
        await answers_what_is_asked(person)
    for place in (version, landing):
        for reckoning in ("version_today", "next_question"):
            monkeypatch.setattr(place, reckoning, fails_for("Ilse", getattr(place, reckoning)))

    await ilse.says("/today")
    await ilse.hears("doesn't add up")
    await bo.says("/today")
    await bo.hears("Your version")
    await crew.coach.says("AMRAP 9\n5 push-ups\n10 air squats")
    read = await crew.coach.hears("Here's how I read it")
    assert "can't work out a version for Ilse" in read.text
    await crew.coach.presses("Post now")
    await crew.coach.hears("Posted to")
