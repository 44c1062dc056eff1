"""Much at once, and for long: others are still served, and nothing grows."""

import asyncio
import os
from functools import partial
from pathlib import Path
from time import perf_counter

import pytest_asyncio

from bot.bootstrap import build
from bot.telegram.conduct import make_conduct
from bot.telegram.patience import BURST, Patience
from core.athletes.values import Equipment, Profile, Screening
from core.movements.lookup import catalogue
from core.notation.boards.session import read_session
from core.scaling.version import version_for
from tests.soak.conftest import Intake
from tests.support.durable import Tables, eventually
from tests.support.in_process import InProcessRequest

PAGE = os.sysconf("SC_PAGE_SIZE")


def say(capsys, measured):
    """Print what was measured, for whoever reads the run."""
    with capsys.disabled():
        print(f"\n{measured}")  # noqa: T201


def memory_mib():
    return int(Path("/proc/self/statm").read_text().split()[1]) * PAGE / 2**20


@pytest_asyncio.fixture
async def patient(platform, settings):
    """The running bot, with its limit for each person."""
    conduct = partial(make_conduct, patience=Patience())
    app = build(settings, conduct, clock=platform.clock, request=InProcessRequest(platform))
    await app.start()
    yield Intake(app, platform, Tables(settings.database))
    await app.stop()


async def test_a_flood_of_one_person_is_answered_once_in_a_while_and_others_at_once(
    patient, room, size, capsys
):
    flooder, other = await room.person("Flo"), await room.person("Ida")
    for person in (flooder, other):
        await person.opens(await room.start_link())
        await person.hears("Hello")
    flood = [patient.text(flooder, "/help", number) for number in range(300 * size)]
    flooding = asyncio.create_task(patient.takes(flood))
    waits: list[float] = []
    while not flooding.done() and len(waits) < BURST // 2:
        asked = perf_counter()
        await other.says("/help")
        await other.hears("Hello")
        waits.append(perf_counter() - asked)
        await asyncio.sleep(0.2)
    await flooding

    answers = [one for one in await flooder.messages if one.from_bot]
    assert len(answers) <= BURST + 2
    assert "That was a lot at once" in answers[-1].text
    assert waits
    say(
        capsys,
        f"{len(flood)} messages of one: {len(answers)} answers; others waited {max(waits):.2f} s at most",
    )


async def test_many_updates_that_wait_at_the_start_are_handled_and_each_is_answered(
    patient, room, size, capsys
):
    people = [await room.person(f"P{number}") for number in range(20)]
    for person in people:
        await person.opens(await room.start_link())
        await person.hears("Hello")
    waiting = [patient.text(person, "/help", number) for number in range(5 * size) for person in people]
    begun, before = perf_counter(), memory_mib()

    await patient.takes(waiting, within=600)
    await eventually(lambda: "waiting" not in patient.tables.states("outbox"), 600)

    took = perf_counter() - begun
    assert patient.failures() == []
    assert memory_mib() - before < 100
    say(
        capsys,
        f"{len(waiting)} waiting updates: {len(waiting) / took:.0f}/s, {memory_mib() - before:+.0f} MiB",
    )


ORDINARY = "AMRAP {n}\n{n} push-ups\n{n} goblet squats @ 16/12 kg\n{n}0 m run\n{n} sit-ups"
LONG = "\n\n".join(f"{n} rounds for time\n{{n}} push-ups\n10 goblet squats @ {n} kg" for n in range(2, 25))


def test_memory_stays_flat_over_many_different_sessions_and_athletes(size, capsys):
    things = catalogue()

    def work(number):
        text = LONG if number % 5 == 0 else ORDINARY
        session = read_session(text.format(n=10 + number), things).session
        own = Equipment(implement="dumbbell", from_kg=2, to_kg=40 + number, step_kg="0.5")
        profile = Profile(name="I", screening=Screening.CLEAR, equipment=(own,), limits=())
        assert session is not None
        version_for(session, profile, things)

    for number in range(10):
        work(number)
    before = memory_mib()
    for number in range(10, 10 + 12 * size):
        work(number)

    say(capsys, f"{12 * size} different sessions: {memory_mib() - before:+.0f} MiB")
    assert memory_mib() - before < 40
