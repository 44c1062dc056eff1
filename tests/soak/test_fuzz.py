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
from tests.soak.test_floods import memory_mib

UPDATES = 300  # 500 for each further size
BATCH = 100
MOST_GROWTH = 0.05  # of the memory, in the second half: what is flat stays


@pytest.mark.timeout(3600)
async def test_made_up_updates_break_nothing(intake, crew, ilse, room, size, caplog, capsys):
    caplog.set_level(logging.WARNING)
    people = [await room.person(f"P{number}") for number in range(3)]
    known = [one.id for one in (crew.coach, ilse, crew.group, *people)] + [intake.platform.bot.user.id]
    make_up = MakeUp(Random(size), known, [text.format("Ilse") for text in TEXTS])
    number = UPDATES if size == 1 else 500 * size
    kinds: Counter[str] = Counter()
    weighed: list[float] = []
    begun = perf_counter()

    for start in range(0, number, BATCH):
        updates = [make_up.update(20_000_000 + start + one) for one in range(min(BATCH, number - start))]
        await intake.takes(updates, within=600)
        kinds.update(next(key for key in one if key != "update_id") for one in updates)
        weighed.append(memory_mib())

    took = perf_counter() - begun
    broken = [record.getMessage() for record in caplog.records if record.exc_info]
    failed = intake.failures()
    with capsys.disabled():
        print(  # noqa: T201 - the figures of the run
            f"\n{number} made-up updates of {len(kinds)} kinds ({number / took:.0f}/s): "
            f"{len(broken)} tracebacks, {len(failed)} failed; {told_at(weighed)}"
        )
    assert grown(weighed) < MOST_GROWTH
    assert [(json.loads(body), error) for body, error in failed] == []
    assert broken == []
    await others_are_served(room)


def told_at(weighed):
    """The memory along the way, after each fifth."""
    fifths = [weighed[(len(weighed) - 1) * part // 5] for part in range(6)]
    return "memory " + ", ".join(f"{one:.0f}" for one in fifths) + " MiB"


def grown(weighed):
    """By which share the memory grew from the middle to the end."""
    return weighed[-1] / weighed[len(weighed) // 2] - 1


async def others_are_served(room):
    crew = await founded(room, "Jetty crew", coach="Sunniva")
    ida = await crew.has("Ida")
    await ida.says("/me")
    await ida.hears("what I know")
