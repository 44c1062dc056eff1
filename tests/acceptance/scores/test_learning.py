"""What scores taught counts the next time, by itself."""

import json
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest

from core.desk.post_office import Store
from core.desk.profile.learning import learn_anew
from tests.acceptance.people import answers_what_is_asked
from tests.acceptance.worlds import world
from tests.support.durable import Tables

SESSION = "{}\nAMRAP 12\n8 push-ups\n15 air squats"
CAME_TO = 8 + 2 / 23


@pytest.fixture
def tables(settings):
    return Tables(Path(settings.database))


@world
async def ilse(crew):
    """Three slow days of hers, told in earnest."""
    person = await crew.has("Ilse")
    for day in ("Monday", "Tuesday", "Wednesday"):
        await crew.gets(SESSION.format(day))
        await answers_what_is_asked(person)
        await person.says("8+2")
        await person.hears("How hard was")
        await person.presses("9")
        await crew.room.travels(timedelta(days=1))
    await crew.gets(SESSION.format("Thursday"))
    await answers_what_is_asked(person)
    return person


def learned(tables):
    (body,) = tables.column("SELECT body FROM profile")
    return json.loads(body)["learned"]


async def test_what_came_out_three_times_is_expected_the_fourth_time(ilse, tables):
    foreseen = [json.loads(one) for one in tables.column("SELECT foreseen FROM version ORDER BY id")]
    first, *_, last = (one["blocks"][0]["expected"] for one in foreseen)
    assert abs(last - CAME_TO) < abs(first - CAME_TO) / 2
    assert learned(tables)["seen"] == 3


async def test_it_can_be_made_anew_from_the_scores(ilse, tables, settings):
    before = learned(tables)
    async with Store(settings.database) as store, store.unit() as unit:
        assert await learn_anew(unit, datetime.now(UTC)) == 1
    after = learned(tables)
    told = ("on", "seen", "until")
    assert [after[name] for name in told] == [before[name] for name in told]
    assert after["names"]


async def test_a_score_that_is_taken_back_is_unlearned(crew, ilse, tables):
    await ilse.says("8+5")
    await ilse.hears("How hard was")
    await ilse.says("delete my score")
    await ilse.hears("Taken off the board")
    await ilse.says("/today")
    await ilse.hears("8 ")
    assert learned(tables)["seen"] == 3
