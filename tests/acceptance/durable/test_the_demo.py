"""The day that `make demo` plays, in this process, and how it reads."""

import re

import pytest_asyncio

from bot.rehearsal.day import STORY, play
from bot.rehearsal.day.cast import ATHLETES, ILSE, MARIT
from bot.rehearsal.day.hours import OSLO
from bot.rehearsal.excerpt import excerpt, missing
from bot.rehearsal.story import Story
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
        "Something else, for",  # bored
        "Tam         4 rounds, sun in my face",  # never taps
        "Ilse        comes into the group",
        "<photo message> 3+20",
        "Ilse        <voice message>",
        "Finn        changes that to: 3+24",
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
    await every_caption_is_borne_out(played)


async def every_caption_is_borne_out(room):
    """What a caption claims was said, and is printed under it: its words, its numbers and its people."""
    opened, happened = await room.scenes(), await room.transcript()
    assert [one.title for one in opened] == [one.title for one in STORY]
    ends = [one.place for one in opened[1:]] + [len(happened)]
    for scene, begun, end in zip(STORY, opened, ends, strict=True):
        said = happened[begun.place : end]
        assert missing(scene.shows, said) == [], scene.title
        shown = excerpt(scene.shows, said)
        assert any(one.happening.from_bot for one in shown), scene.title
        told = " ".join(line for one in shown for line in [one.happening.who, one.happening.chat, *one.lines])
        for word in claimed(scene):
            assert re.search(rf"\b{word}\b", told), f"{scene.title}: {word}"
    lines = printed(Story(STORY, OSLO), happened, opened)
    assert max(map(len, lines)) <= WIDTH
    assert len(lines) <= 380
    brief = printed(Story(STORY, OSLO, brief=True), happened, opened)
    assert [line for line in brief if "═" in line] == [line for line in lines if " * ═" in line]
    assert len(brief) <= 140


def printed(story, happened, opened):
    return [*story.lines_of(happened, opened), *story.rest(opened)]


def claimed(scene):
    names = [role.name for role in (MARIT, *ATHLETES, ILSE)]
    return re.findall(rf"\b(?:[0-9]+|{'|'.join(names)})\b", f"{scene.title} {scene.point}")


async def read(room):
    transcript = Transcript(OSLO)
    return [line for happening in await room.transcript() for line in transcript.lines_of(happening)]
