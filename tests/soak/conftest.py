"""The whole bot in this process, and a way to hand it updates that no app would send."""

import os

import pytest

from bot.telegram.receiver import Receiver
from tests.acceptance.conftest import afresh, bellwether, crew, platform, settings, worlds  # noqa: F401 - fixtures
from tests.acceptance.people import answers_what_is_asked
from tests.acceptance.worlds import world
from tests.support.durable import Tables, eventually

# How long it goes on: 1 is what `make check` can wait for, `make soak` sets more.
SIZE = int(os.environ.get("BELLWETHER_SOAK", "1"))


@pytest.fixture
def size() -> int:
    return SIZE


class Intake:
    """Hands raw updates to the running bot, past the stand-in, and says what became of them."""

    def __init__(self, app, platform, tables):  # noqa: F811
        self.app = app
        self.tables = tables
        self.platform = platform
        self._receiver = Receiver(app._bot, app.store, platform.clock, app.bells)
        self._number = 10_000_000

    @property
    def now(self):
        return int(self.platform.clock.now().timestamp())

    def update(self, **content):
        self._number += 1
        return {"update_id": self._number, **content}

    def user(self, person):
        return {"id": person.id, "is_bot": False, "first_name": person.name, "language_code": "en"}

    def text(self, person, text, number=1, **more):
        chat = {"id": person.id, "type": "private", "first_name": person.name}
        message = {
            "message_id": number,
            "date": self.now,
            "chat": chat,
            "from": self.user(person),
            "text": text,
        }
        return self.update(message=message | more)

    def press(self, person, data, *, chat=None, keyboard=()):
        chat = chat or {"id": person.id, "type": "private", "first_name": person.name}
        message = {"message_id": 1, "date": self.now, "chat": chat, "text": "?"}
        if keyboard:
            rows = [[{"text": "?", "callback_data": one}] for one in keyboard]
            message["reply_markup"] = {"inline_keyboard": rows}
        query = {"id": f"q{self._number}", "from": self.user(person), "chat_instance": "1", "data": data}
        return self.update(callback_query=query | {"message": message})

    async def takes(self, updates, within=120.0):
        """Hand them over, and return once all are handled."""
        for start in range(0, len(updates), 100):
            await self._receiver.receive(updates[start : start + 100])
        await eventually(lambda: not self.waiting(), within)

    def chats_of(self, *people):
        """Each with the row of their private chat."""
        rows = dict(self.tables.rows("SELECT address, id FROM chat"))
        return [(person, rows[person.id]) for person in people]

    def waiting(self):
        return self.tables.column("SELECT count(*) FROM inbox WHERE state = 'waiting'")[0]

    def failures(self):
        """Updates that failed, even once, with the error."""
        return self.tables.rows("SELECT body, error FROM inbox WHERE error IS NOT NULL OR state = 'parked'")


@pytest.fixture
def intake(bellwether, platform, settings):  # noqa: F811
    return Intake(bellwether, platform, Tables(settings.database))


@world
async def ilse(crew):  # noqa: F811
    """An athlete who has a version of the posted session, and told a score."""
    found = await crew.has("Ilse")
    await crew.gets()
    await answers_what_is_asked(found)
    await found.says("7+12")
    await found.hears("7 rounds + 12")
    return found
