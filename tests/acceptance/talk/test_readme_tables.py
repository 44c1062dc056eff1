"""The README's tables of what one writes and what happens, tried line by line."""

import re
from pathlib import Path

from tests.acceptance.worlds import world

README = (Path(__file__).parents[3] / "README.md").read_text("utf-8")
SESSION = "AMRAP 12\n10 push-ups\n12 goblet squats @ 16/12 kg\n200 m run"


def table(heading):
    """What is written, and the words that are to come back."""
    part = README.split(f"## What {heading} writes, and what happens")[1]
    lines = part.split("| --- | --- | --- |\n")[1].split("\n\n")[0].splitlines()
    found = [re.match(r"\| `([^`]+)`[^|]*\|[^|]*\| (.*) \|$", line) for line in lines]
    return [(one[1], re.findall(r"“([^”]+)”", one[2])) for one in found if one]


@world
async def ilse(crew):
    """Somebody with a version, in the coach's Harbour crew."""
    found = await crew.has("Ilse")
    await crew.gets(SESSION)
    await found.presses("My version")
    await found.hears("What do you have to train with")
    return found


async def tries(person, rows):
    for written, told in rows:
        await person.says(written)
        for words in told:
            await person.hears(words)


async def test_what_an_athlete_writes(ilse):
    rows = table("an athlete")
    assert len(rows) >= 14
    await tries(ilse, [row for row in rows if row[0] not in ("/today", "/forget")])
    await ilse.says("/forget")
    await ilse.hears("?")


async def test_what_a_coach_writes(crew, ilse):
    coach = crew.coach
    await ilse.says("two 10s and a chair")
    await ilse.says("my left knee hurts")
    await ilse.hears("keep in mind")
    await coach.says(SESSION)
    await coach.hears("Here's how I read it")
    rows = table("a coach")
    assert len(rows) >= 13
    await tries(coach, rows)
