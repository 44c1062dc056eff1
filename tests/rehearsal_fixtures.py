"""The stand-in for tests: `platform` in this process, `room` with its voices, `address` over HTTP.

Whatever the bot did that the stand-in or the Bot API doesn't know fails the test when it ends.
"""

from collections.abc import AsyncIterator, Iterator
from contextlib import contextmanager
from typing import TYPE_CHECKING

import pytest
import pytest_asyncio

from bot.rehearsal.platform import Platform
from bot.rehearsal.server import serving
from bot.rehearsal.stage import RemoteStage
from bot.rehearsal.voice import Room

if TYPE_CHECKING:
    from tests.outgoing import OutgoingCheck


@pytest.fixture
def outgoing() -> "OutgoingCheck":
    # Its library takes six seconds to load: only tests with a platform wait for it.
    from tests.outgoing import OutgoingCheck  # noqa: PLC0415

    return OutgoingCheck()


@contextmanager
def watched(platform: Platform, outgoing: "OutgoingCheck") -> Iterator[Platform]:
    """Fail at the end for what went wrong on it."""
    platform.on_call.append(outgoing)
    yield platform
    platform.on_call.remove(outgoing)
    assert platform.complaints == [], "the bot asked for what the stand-in doesn't know"
    assert outgoing.faults == [], "the bot made calls that the Bot API doesn't know so"


@pytest.fixture
def platform(outgoing: "OutgoingCheck") -> Iterator[Platform]:
    """A fresh platform. Add `platform.complaints.clear()` to a test that provokes complaints on purpose."""
    with watched(Platform(), outgoing) as found:
        yield found


@pytest.fixture
def room(platform: Platform) -> Room:
    """The room of the platform, in this process."""
    return Room.of(platform)


@pytest_asyncio.fixture
async def address(platform: Platform) -> AsyncIterator[str]:
    """The platform behind HTTP: `http://127.0.0.1:PORT`."""
    async with serving(platform) as url:
        yield url


@pytest_asyncio.fixture
async def remote_room(address: str) -> AsyncIterator[Room]:
    """The room of the platform, spoken to over HTTP with the same words."""
    stage = RemoteStage(address)
    yield Room(stage)
    await stage.close()
