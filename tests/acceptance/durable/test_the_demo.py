"""The day that `make demo` plays, in this process, and how it reads."""

import pytest_asyncio

from bot.rehearsal.day import play
from bot.rehearsal.day.cast import ATHLETES, ILSE
from bot.rehearsal.day.hours import OSLO
from bot.rehearsal.transcript import WIDTH, Transcript
from tests.support.durable import Tables, eventually


@pytest_asyncio.fixture
async def played(bellwether, room):
    await play(room)
    return room


async def test_the_whole_day_of_a_dozen_different_people(played, settings):
    lines = await read(played)
    text = "\n".join(lines)
    assert len(ATHLETES) + 1 >= 10
    for role in (*ATHLETES, ILSE):
        assert f"\n{role.name} " in text, f"{role.name} did nothing"
    for happened in (
        "taps [Nothing, just me]",
        "no jumping",
        "until you've been cleared",  # the screening stops somebody
        "nothing to chase, no rank",  # light duty
        "your coach looks at your version first",
        "adjustable dumbbell",
        "35 lb kettlebell",
        "Something else, for a change",  # bored
        "Tam         5 rounds, sun in my face",  # never taps
        "Ilse        comes into the group",
        "<photo message> 5+20",
        "Ilse        <voice message>",
        "Finn        changes that to: 5+24",
        "New York time",
        "Today: 10 minutes",
        "Your evening with Harbour crew",
        "taps [Go through who needs you]",
        "Your coach's choice",  # and what came of it
        "You share the dumbbell with Noor",
    ):
        assert happened in text, happened
    tables = Tables(settings.database)
    await eventually(lambda: set(tables.states("inbox")) == {"done"})
    await eventually(lambda: {"waiting", "leased"}.isdisjoint(tables.states("outbox")))
    assert max(map(len, lines)) <= WIDTH


async def read(room):
    transcript = Transcript(OSLO)
    return [line for happening in await room.transcript() for line in transcript.lines_of(happening)]
