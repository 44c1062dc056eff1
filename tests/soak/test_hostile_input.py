"""Whatever is pressed or written: nothing is parked, nobody's view breaks, and each gets a kind answer."""

import logging
from random import Random

import pytest

from bot.telegram.buttons import CODES
from bot.telegram.seals import Seal
from tests.acceptance.people import SESSION
from tests.soak import hostile


@pytest.fixture
def no_traceback(caplog):
    caplog.set_level(logging.WARNING)
    yield
    broken = [record.getMessage() for record in caplog.records if record.exc_info]
    assert broken == []


async def everybody_is_still_served(crew, ilse):
    await crew.coach.says(SESSION.replace("Tuesday", "Wednesday"))
    await crew.coach.hears("Here's how I read it")
    await ilse.says("/me")
    await ilse.hears("what I know. Only you see this")


async def test_presses_with_true_seals_and_any_fields_end_kindly(
    intake, crew, ilse, bellwether, size, no_traceback
):
    random = Random(5)
    seal = Seal(bellwether.store.press_key)
    presses = [
        intake.press(person, seal.put(hostile.press(random, code, kind), chat))
        for person, chat in intake.chats_of(crew.coach, ilse)
        for code, kind in CODES.items()
        if code != "we"  # erases everything, as it should
        for _ in range(size)
    ]

    await intake.takes(random.sample(presses, len(presses)))

    assert intake.failures() == []
    await everybody_is_still_served(crew, ilse)


async def test_made_up_presses_are_known_at_once(intake, ilse, size):
    before = intake.tables.rows("SELECT * FROM evidence")
    random = Random(6)
    made_up = [
        intake.press(ilse, data + end)
        for code, kind in CODES.items()
        for end in random.sample(["", "~", "~abcd", "~" + "é" * 4], k=min(size, 4))
        for data in [hostile.press(random, code, kind)]
    ]

    await intake.takes(made_up)

    assert intake.failures() == []
    assert intake.tables.rows("SELECT * FROM evidence") == before


async def test_a_made_up_press_gets_the_kind_sentence(crew, ilse):
    version = (await ilse.messages)[-1]

    await ilse.presses_data(version, "ta:1:nothing:5:")

    await ilse.sees_toast("The newest message is the one that counts")


async def test_hostile_texts_break_nothing(intake, crew, ilse, size, no_traceback):
    random = Random(7)
    texts = [
        intake.text(person, hostile.text(random)) for _ in range(9 * size) for person in (crew.coach, ilse)
    ]

    await intake.takes([*(intake.text(ilse, one[:4096]) for one in hostile.TEXTS), *texts])

    assert intake.failures() == []
    await everybody_is_still_served(crew, ilse)
