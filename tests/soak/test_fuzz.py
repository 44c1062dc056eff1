"""Whatever the platform may hand over: nothing is parked, nothing breaks, and everybody else is answered."""

import json
import logging
from collections import Counter
from random import Random
from time import perf_counter

import pytest

from tests.acceptance.people import founded
from tests.soak.attempts import TEXTS
from tests.soak.made_up import MakeUp

UPDATES = 300  # 500 for each further size


@pytest.mark.timeout(3600)
async def test_made_up_updates_break_nothing(intake, crew, ilse, room, size, caplog, capsys):
    caplog.set_level(logging.WARNING)
    people = [await room.person(f"P{number}") for number in range(3)]
    known = [one.id for one in (crew.coach, ilse, crew.group, *people)] + [intake.platform.bot.user.id]
    make_up = MakeUp(Random(size), known, [text.format("Ilse") for text in TEXTS])
    updates = [make_up.update(20_000_000 + number) for number in range(UPDATES if size == 1 else 500 * size)]
    begun = perf_counter()

    await intake.takes(updates, within=3000)

    took = perf_counter() - begun
    broken = [record.getMessage() for record in caplog.records if record.exc_info]
    failed = intake.failures()
    kinds = Counter(next(key for key in one if key != "update_id") for one in updates)
    with capsys.disabled():
        print(  # noqa: T201 - the figures of the run
            f"\n{len(updates)} made-up updates of {len(kinds)} kinds ({len(updates) / took:.0f}/s): "
            f"{len(broken)} tracebacks, {len(failed)} failed"
        )
    assert [(json.loads(body), error) for body, error in failed] == []
    assert broken == []
    await others_are_served(room)


async def others_are_served(room):
    crew = await founded(room, "Jetty crew", coach="Sunniva")
    ida = await crew.has("Ida")
    await ida.says("/me")
    await ida.hears("what I know")
